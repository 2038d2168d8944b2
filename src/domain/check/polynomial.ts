/**
 * Polynomials over unknowns, with exact coefficients and whole powers (negative ones too), and
 * the range that such a polynomial takes while its unknowns run through their intervals.
 *
 * Writing a term this way before any interval is formed is what makes equal unknowns cancel:
 * the same article in both driveline paths leaves nothing behind, whatever its ratio.
 *
 * The range is exact where every unknown stands in one place, and for multilinear polynomials
 * of bounded unknowns (the extremes lie at corners). Elsewhere it encloses the true range, so a
 * decision taken from it can stay open too long, but is never wrong.
 */

import {
  addIntervals,
  type Interval,
  interval,
  multiplyIntervals,
  point,
  powerInterval,
  scaleInterval,
} from '../quantity/interval.js';
import {
  add,
  compare,
  divide,
  equals,
  isZero,
  multiply,
  negate,
  ONE,
  power,
  type Rational,
  sign,
  ZERO,
} from '../quantity/rational.js';

export interface Monomial {
  readonly coefficient: Rational;
  /** Unknown to power, never 0. */
  readonly powers: ReadonlyMap<string, number>;
}

/** Sorted by the key of the monomial, without zero coefficients: equal sums look equal. */
export type Polynomial = readonly Monomial[];

export type Domains = (unknown: string) => Interval;

export const NOTHING: Polynomial = [];

export function constant(value: Rational): Polynomial {
  return isZero(value) ? NOTHING : [{ coefficient: value, powers: new Map() }];
}

export function unknownOf(key: string): Polynomial {
  return [{ coefficient: ONE, powers: new Map([[key, 1]]) }];
}

function keyOf(powers: ReadonlyMap<string, number>): string {
  if (powers.size === 0) return '';
  return [...powers.entries()]
    .map(([unknown, exponent]) => `${unknown}^${exponent}`)
    .sort(byCodeUnit)
    .join(' * ');
}

function byCodeUnit(a: string, b: string): number {
  if (a === b) return 0;
  return a < b ? -1 : 1;
}

function normalized(monomials: Iterable<Monomial>): Polynomial {
  const byKey = new Map<string, Monomial>();
  for (const monomial of monomials) {
    const key = keyOf(monomial.powers);
    const known = byKey.get(key);
    const coefficient =
      known === undefined ? monomial.coefficient : add(known.coefficient, monomial.coefficient);
    byKey.set(key, { coefficient, powers: monomial.powers });
  }
  return [...byKey.entries()]
    .filter(([, monomial]) => !isZero(monomial.coefficient))
    .sort(([a], [b]) => byCodeUnit(a, b))
    .map(([, monomial]) => monomial);
}

/** A text that is equal exactly for equal polynomials. */
export function signatureOf(polynomial: Polynomial): string {
  return polynomial
    .map(({ coefficient, powers }) => `${coefficient.toFraction()}*${keyOf(powers)}`)
    .join(' + ');
}

export function plus(a: Polynomial, b: Polynomial): Polynomial {
  return normalized([...a, ...b]);
}

export function times(a: Polynomial, b: Polynomial): Polynomial {
  return normalized(a.flatMap((x) => b.map((y) => product(x, y))));
}

export function timesNumber(a: Polynomial, factor: Rational): Polynomial {
  if (isZero(factor)) return NOTHING;
  return a.map(({ coefficient, powers }) => ({
    coefficient: multiply(coefficient, factor),
    powers,
  }));
}

export function minus(a: Polynomial, b: Polynomial): Polynomial {
  return plus(a, timesNumber(b, negate(ONE)));
}

function product(x: Monomial, y: Monomial): Monomial {
  const powers = new Map(x.powers);
  for (const [unknown, exponent] of y.powers) {
    const sum = (powers.get(unknown) ?? 0) + exponent;
    if (sum === 0) powers.delete(unknown);
    else powers.set(unknown, sum);
  }
  return { coefficient: multiply(x.coefficient, y.coefficient), powers };
}

/** a / b for single monomials, `null` otherwise (or for a divisor of zero). */
export function quotient(a: Polynomial, b: Polynomial): Polynomial | null {
  const [divisor, ...more] = b;
  if (divisor === undefined || more.length > 0) return null;
  const powers = new Map([...divisor.powers].map(([unknown, exponent]) => [unknown, -exponent]));
  const inverse: Monomial = { coefficient: divide(ONE, divisor.coefficient), powers };
  return normalized(a.map((monomial) => product(monomial, inverse)));
}

/** The unknowns that are left, in the order of the monomials. */
export function unknownsOf(polynomial: Polynomial): string[] {
  const seen = new Set<string>();
  for (const { powers } of polynomial) for (const unknown of powers.keys()) seen.add(unknown);
  return [...seen];
}

/** Divided by the positive unknowns that stand in every monomial: the sign is the same. */
export function withoutPositiveFactors(polynomial: Polynomial, domains: Domains): Polynomial {
  const [first, ...others] = polynomial;
  if (first === undefined) return polynomial;
  const common = new Map<string, number>();
  for (const [unknown, exponent] of first.powers) {
    const least = others.reduce(
      (lowest, { powers }) => Math.min(lowest, powers.get(unknown) ?? 0),
      exponent,
    );
    const { low, lowOpen } = domains(unknown);
    const isPositive = low !== null && (sign(low) > 0 || (isZero(low) && lowOpen));
    if (least > 0 && isPositive) common.set(unknown, least);
  }
  if (common.size === 0) return polynomial;
  return quotient(polynomial, [{ coefficient: ONE, powers: common }]) ?? polynomial;
}

/** The coefficient of `unknown` and the rest, when it stands linearly; `null` otherwise. */
export function linearIn(
  polynomial: Polynomial,
  unknown: string,
): { readonly slope: Polynomial; readonly rest: Polynomial } | null {
  const slope: Monomial[] = [];
  const rest: Monomial[] = [];
  for (const monomial of polynomial) {
    const exponent = monomial.powers.get(unknown);
    if (exponent === undefined) rest.push(monomial);
    else if (exponent === 1) {
      const powers = new Map(monomial.powers);
      powers.delete(unknown);
      slope.push({ coefficient: monomial.coefficient, powers });
    } else return null;
  }
  return { slope: normalized(slope), rest: normalized(rest) };
}

/** More corners than this (two to the power of the unknowns) are not enumerated. */
const MOST_CORNERS = 4096;

/** Every value the polynomial can take, exactly or enclosed (see the head of this file). */
export function rangeOf(polynomial: Polynomial, domains: Domains): Interval {
  if (polynomial.length === 0) return point(ZERO);
  const places = new Map<string, number>();
  for (const { powers } of polynomial) {
    for (const unknown of powers.keys()) places.set(unknown, (places.get(unknown) ?? 0) + 1);
  }
  const repeated = [...places.values()].some((count) => count > 1);
  if (!repeated) return enclosure(polynomial, domains);
  return cornerRange(polynomial, [...places.keys()], domains) ?? enclosure(polynomial, domains);
}

function enclosure(polynomial: Polynomial, domains: Domains): Interval {
  let sum = point(ZERO);
  for (const { coefficient, powers } of polynomial) {
    let value = point(ONE);
    for (const [unknown, exponent] of powers) {
      const factor = powerInterval(domains(unknown), exponent);
      value = multiplyIntervals(value, factor);
    }
    sum = addIntervals(sum, scaleInterval(value, coefficient));
  }
  return sum;
}

/** An unknown that stands with power 1 only, or with power -1 only, makes the range monotone. */
function exponentsOf(polynomial: Polynomial, unknown: string): number | null {
  let exponent: number | null = null;
  for (const { powers } of polynomial) {
    const here = powers.get(unknown);
    if (here === undefined) continue;
    if (Math.abs(here) !== 1 || (exponent !== null && exponent !== here)) return null;
    exponent = here;
  }
  return exponent;
}

interface Corner {
  readonly value: Rational;
  readonly isOpen: boolean;
}

/**
 * Extremes at the corners of the box. Monotone in each unknown for any fixed others, so the
 * corners suffice. An end is open only where one single corner attains it and that corner is
 * itself open: two equal corners may be joined by an edge that is attained.
 */
function cornerRange(
  polynomial: Polynomial,
  unknowns: readonly string[],
  domains: Domains,
): Interval | null {
  if (2 ** unknowns.length > MOST_CORNERS) return null;
  let corners: { at: Map<string, Rational>; isOpen: boolean }[] = [
    { at: new Map(), isOpen: false },
  ];
  for (const unknown of unknowns) {
    const domain = domains(unknown);
    const { low, high } = domain;
    const exponent = exponentsOf(polynomial, unknown);
    if (exponent === null || low === null || high === null) return null;
    if (exponent < 0 && sign(low) <= 0 && sign(high) >= 0) return null;
    const ends = equals(low, high)
      ? [{ value: low, isOpen: false }]
      : [
          { value: low, isOpen: domain.lowOpen },
          { value: high, isOpen: domain.highOpen },
        ];
    corners = corners.flatMap((corner) =>
      ends.map((end) => ({
        at: new Map(corner.at).set(unknown, end.value),
        isOpen: corner.isOpen || end.isOpen,
      })),
    );
  }
  const values = corners.map((corner) => ({
    value: valueAt(polynomial, corner.at),
    isOpen: corner.isOpen,
  }));
  const low = extreme(values, -1);
  const high = extreme(values, 1);
  if (equals(low.value, high.value)) return point(low.value);
  return interval(low.value, high.value, { lowOpen: low.isOpen, highOpen: high.isOpen });
}

function extreme(corners: readonly Corner[], direction: 1 | -1): Corner {
  let best: Corner | null = null;
  for (const corner of corners) {
    const order = best === null ? 1 : compare(corner.value, best.value) * direction;
    if (order > 0) best = corner;
    else if (order === 0) best = { value: corner.value, isOpen: false };
  }
  if (best === null) throw new Error('a box has at least one corner');
  return best;
}

/** The value of the polynomial where its unknowns are known. */
export function valueAt(polynomial: Polynomial, values: ReadonlyMap<string, Rational>): Rational {
  let sum = ZERO;
  for (const { coefficient, powers } of polynomial) {
    let value = coefficient;
    for (const [unknown, exponent] of powers) {
      const known = values.get(unknown);
      if (known === undefined) throw new Error(`no value for ${unknown}`);
      value = multiply(value, power(known, exponent));
    }
    sum = add(sum, value);
  }
  return sum;
}
