/**
 * Exact rational numbers, the only arithmetic of the domain.
 *
 * A thread of 28 turns to the inch has a pitch of 25.4/28 mm, and an axle of 43 and 12 teeth
 * a ratio of 43/12: neither is a finite decimal, so neither may pass through floating point.
 * This file alone knows the library underneath. What it leaves out on purpose: numbers with a
 * fractional part (the library would approximate them), exponents, repeating-decimal notation.
 */

import { Fraction } from 'fraction.js';

/** An exact rational, always reduced. Treat it as a value: never assign to its fields. */
export type Rational = Fraction;

const INTEGER_OR_DECIMAL = /^(-?)(\d+)(?:\.(\d+))?$/;
const FRACTION = /^(-?\d+)\/(\d+)$/;

/** Larger exponents would only grow numbers that no part has. */
const LARGEST_EXPONENT = 64;

/**
 * The exact value of an integer or of a text.
 *
 * Texts are an optional minus sign and digits, with a decimal part (`-3.583`) or a denominator
 * (`43/12`).
 *
 * @throws RangeError for a number that is not a safe integer, for any other text, and for a
 *   denominator of zero.
 */
export function rational(value: bigint | number | string): Rational {
  if (typeof value === 'bigint') return new Fraction(value, 1n);
  if (typeof value === 'number') {
    if (!Number.isSafeInteger(value)) {
      throw new RangeError(`Only a safe integer is an exact number, not ${value}`);
    }
    return new Fraction(BigInt(value), 1n);
  }
  return rationalOfText(value);
}

function rationalOfText(text: string): Rational {
  const decimal = INTEGER_OR_DECIMAL.exec(text);
  if (decimal !== null) {
    const [, minus = '', whole = '', places = ''] = decimal;
    return fraction(BigInt(`${minus}${whole}${places}`), 10n ** BigInt(places.length));
  }
  const parts = FRACTION.exec(text);
  if (parts !== null) {
    const [, numerator = '', denominator = ''] = parts;
    return fraction(BigInt(numerator), BigInt(denominator));
  }
  throw new RangeError(`Not a number in the form 7, -3.583 or 43/12: ${text.slice(0, 64)}`);
}

/**
 * `numerator / denominator`, reduced.
 *
 * @throws RangeError when the denominator is zero.
 */
export function fraction(numerator: bigint, denominator: bigint): Rational {
  if (denominator === 0n) throw new RangeError('A fraction cannot have the denominator zero');
  return new Fraction(numerator, denominator);
}

export const ZERO: Rational = rational(0);
export const ONE: Rational = rational(1);
export const HUNDRED: Rational = rational(100);

export function add(a: Rational, b: Rational): Rational {
  return a.add(b);
}

export function subtract(a: Rational, b: Rational): Rational {
  return a.sub(b);
}

export function multiply(a: Rational, b: Rational): Rational {
  return a.mul(b);
}

/** @throws RangeError when the divisor is zero. */
export function divide(a: Rational, b: Rational): Rational {
  if (isZero(b)) throw new RangeError('Division by zero');
  return a.div(b);
}

export function negate(r: Rational): Rational {
  return r.neg();
}

export function absolute(r: Rational): Rational {
  return r.abs();
}

/** -1 when a < b, 0 when they are equal, 1 when a > b. */
export function compare(a: Rational, b: Rational): -1 | 0 | 1 {
  const difference = numeratorOf(a) * b.d - numeratorOf(b) * a.d;
  if (difference === 0n) return 0;
  return difference < 0n ? -1 : 1;
}

export function equals(a: Rational, b: Rational): boolean {
  return compare(a, b) === 0;
}

/**
 * Whole numbers in the same proportion to one another as these, so that many of them can be
 * compared at little cost.
 */
export function inProportion(numbers: readonly Rational[]): bigint[] {
  let common = 1n;
  for (const { d } of numbers) common = (common / greatestDivisor(common, d)) * d;
  return numbers.map((number) => numeratorOf(number) * (common / number.d));
}

function greatestDivisor(a: bigint, b: bigint): bigint {
  let [larger, smaller] = [a, b];
  while (smaller !== 0n) [larger, smaller] = [smaller, larger % smaller];
  return larger;
}

export function isZero(r: Rational): boolean {
  return r.n === 0n;
}

export function sign(r: Rational): -1 | 0 | 1 {
  if (r.n === 0n) return 0;
  return r.s < 0n ? -1 : 1;
}

export function smaller(a: Rational, b: Rational): Rational {
  return compare(a, b) <= 0 ? a : b;
}

export function larger(a: Rational, b: Rational): Rational {
  return compare(a, b) >= 0 ? a : b;
}

/**
 * `r` to an integer exponent from -64 to 64; `r` to the power 0 is 1, also for zero.
 *
 * @throws RangeError for any other exponent, and for zero to a negative one.
 */
export function power(r: Rational, exponent: number): Rational {
  requireExponent(exponent);
  const size = BigInt(Math.abs(exponent));
  const numerator = numeratorOf(r) ** size;
  const denominator = r.d ** size;
  return exponent < 0 ? fraction(denominator, numerator) : fraction(numerator, denominator);
}

/** @throws RangeError unless the exponent is an integer from -64 to 64. */
export function requireExponent(exponent: number): void {
  if (!Number.isInteger(exponent) || Math.abs(exponent) > LARGEST_EXPONENT) {
    throw new RangeError(`Not an exponent from -64 to 64: ${exponent}`);
  }
}

/** The greatest multiple of `1/10^places` that is not above `r`. */
export function roundDown(r: Rational, places: number): Rational {
  const scale = 10n ** BigInt(places);
  return fraction(floorDivide(numeratorOf(r) * scale, r.d), scale);
}

/** The least multiple of `1/10^places` that is not below `r`. */
export function roundUp(r: Rational, places: number): Rational {
  return negate(roundDown(negate(r), places));
}

/**
 * The greatest multiple of `1/10^places` whose square is not above `r`.
 *
 * @throws RangeError below zero.
 */
export function squareRootDown(r: Rational, places: number): Rational {
  if (sign(r) < 0) throw new RangeError('there is no square root of less than zero');
  const scale = 10n ** BigInt(places);
  const square = (r.n * scale * scale) / r.d;
  return fraction(wholeRoot(square), scale);
}

/** The whole part of a square root (Newton's method, from above). */
function wholeRoot(square: bigint): bigint {
  if (square < 2n) return square;
  let root = 1n << BigInt(Math.ceil(square.toString(2).length / 2));
  for (;;) {
    const next = (root + square / root) / 2n;
    if (next >= root) return root;
    root = next;
  }
}

/** The decimals that `r` needs to be written in full, or null when no number of them is enough. */
export function decimalPlaces(r: Rational): number | null {
  let rest = r.d;
  let twos = 0;
  let fives = 0;
  while (rest % 2n === 0n) {
    rest /= 2n;
    twos += 1;
  }
  while (rest % 5n === 0n) {
    rest /= 5n;
    fives += 1;
  }
  return rest === 1n ? Math.max(twos, fives) : null;
}

/** `56.05` when a finite decimal says it in full, else `43/12`. `rational` reads both back. */
export function exactText(r: Rational): string {
  const places = decimalPlaces(r);
  return places === null ? `${numeratorOf(r)}/${r.d}` : decimalText(r, places);
}

/** Exactly `places` decimals, rounded half away from zero; never `-0`. For people to read. */
export function decimalText(r: Rational, places: number): string {
  const scale = 10n ** BigInt(places);
  const rounded = (r.n * scale * 2n + r.d) / (r.d * 2n);
  const digits = rounded.toString().padStart(places + 1, '0');
  const whole = digits.slice(0, digits.length - places);
  const decimals = places === 0 ? '' : `.${digits.slice(digits.length - places)}`;
  const minus = sign(r) < 0 && rounded !== 0n ? '-' : '';
  return `${minus}${whole}${decimals}`;
}

/** As `decimalText`, without zeros at the end: `3.5`, `4`. For people to read. */
export function shortText(r: Rational, maxPlaces = 3): string {
  const text = decimalText(r, maxPlaces);
  return text.includes('.') ? text.replace(/\.?0+$/, '') : text;
}

function numeratorOf(r: Rational): bigint {
  return r.s < 0n ? -r.n : r.n;
}

/** BigInt division cuts towards zero; this one cuts towards minus infinity. */
function floorDivide(numerator: bigint, positive: bigint): bigint {
  const quotient = numerator / positive;
  return numerator < 0n && quotient * positive !== numerator ? quotient - 1n : quotient;
}
