/**
 * Limits on products and sums, in whole numbers: every number is brought to the common denominator
 * of its place (of all places, for a sum), so that comparing needs no fraction and nothing is
 * rounded. Left out: numbers other than fractions.
 */

import type { CostLimit, Fraction } from './cost-problem.js';

export interface WholeLimit {
  readonly isProduct: boolean;
  /** By place, by class; no number twice at a place. */
  readonly numbers: readonly (readonly bigint[])[];
  /** Both are allowed still. */
  readonly low: bigint;
  readonly high: bigint;
}

/** One place of a limit for each variable, with all its numbers combined. */
export interface PlacedNumbers {
  readonly variable: number;
  /** By value. */
  readonly numbers: readonly Fraction[];
}

/** The limit in whole numbers, with the class of each value at each place. */
export function wholeLimit(
  limit: CostLimit,
  placed: readonly PlacedNumbers[],
): { limit: WholeLimit; classes: Int32Array[] } {
  const isProduct = limit.combines === 'product';
  const own = placed.map(({ numbers }) => commonDenominator(numbers));
  const all = isProduct
    ? own.reduce((product, one) => product * one, 1n)
    : own.reduce(commonMultiple, 1n);
  const classes: Int32Array[] = [];
  const numbers = placed.map((place, index) => {
    const scale = isProduct ? (own[index] as bigint) : all;
    const names = new Map<bigint, number>();
    classes.push(
      Int32Array.from(place.numbers, ({ numerator, denominator }) => {
        const whole = numerator * (scale / denominator);
        const name = names.get(whole) ?? names.size;
        names.set(whole, name);
        return name;
      }),
    );
    return [...names.keys()];
  });
  const low = -floored(-limit.low.numerator * all, limit.low.denominator);
  const high = floored(limit.high.numerator * all, limit.high.denominator);
  return { limit: { isProduct, numbers, low, high }, classes };
}

/** Only these classes, by place in this order. */
export function withClasses(limit: WholeLimit, kept: readonly Int32Array[]): WholeLimit {
  const numbers = limit.numbers.map((own, place) =>
    Array.from(kept[place] as Int32Array, (name) => own[name] as bigint),
  );
  return { ...limit, numbers };
}

/** 0 for each combination of classes within the limit, Infinity for every other. */
export function tabulated({ isProduct, numbers, low, high }: WholeLimit): Float64Array {
  let combined = [isProduct ? 1n : 0n];
  for (const own of numbers) {
    combined = combined.flatMap((one) =>
      own.map((number) => (isProduct ? one * number : one + number)),
    );
  }
  return Float64Array.from(combined, (one) =>
    low <= one && one <= high ? 0 : Number.POSITIVE_INFINITY,
  );
}

/**
 * Whether each class can be within the limit with the least and the greatest of the others; by
 * place, by class. Only the classes that are alive count, and only they are asked about.
 */
export function within(limit: WholeLimit, isAlive: readonly Uint8Array[]): boolean[][] {
  const { isProduct, numbers, low, high } = limit;
  const ranges = numbers.map((own, place) => rangeOf(own, isAlive[place] as Uint8Array));
  const none: Range = isProduct ? [1n, 1n] : [0n, 0n];
  const combine = isProduct ? productOf : sumOf;
  const before = [none];
  for (const range of ranges) before.push(combine(before.at(-1) as Range, range));
  let after = none;
  const found: boolean[][] = [];
  for (let place = numbers.length - 1; place >= 0; place -= 1) {
    const rest = combine(before[place] as Range, after);
    found[place] = (numbers[place] as readonly bigint[]).map((number) => {
      const [least, greatest] = combine(rest, [number, number]);
      return least <= high && greatest >= low;
    });
    after = combine(ranges[place] as Range, after);
  }
  return found;
}

type Range = readonly [bigint, bigint];

/** A place with no class alive has no range; whoever asks has noticed before. */
function rangeOf(numbers: readonly bigint[], isAlive: Uint8Array): Range {
  return spanOf(numbers.filter((_, name) => isAlive[name] === 1));
}

function productOf([a, b]: Range, [c, d]: Range): Range {
  return spanOf([a * c, a * d, b * c, b * d]);
}

function spanOf(numbers: readonly bigint[]): Range {
  const [first = 0n] = numbers;
  let range: Range = [first, first];
  for (const number of numbers) range = widened(range, number);
  return range;
}

function widened([least, greatest]: Range, number: bigint): Range {
  if (number < least) return [number, greatest];
  return number > greatest ? [least, number] : [least, greatest];
}

function sumOf([a, b]: Range, [c, d]: Range): Range {
  return [a + c, b + d];
}

function commonDenominator(numbers: readonly Fraction[]): bigint {
  let common = 1n;
  for (const { denominator } of numbers) {
    if (common % denominator !== 0n) common = commonMultiple(common, denominator);
  }
  return common;
}

function commonMultiple(a: bigint, b: bigint): bigint {
  let [larger, smaller] = [a, b];
  while (smaller !== 0n) [larger, smaller] = [smaller, larger % smaller];
  return (a / larger) * b;
}

/** The greatest whole number that is not above the quotient. */
function floored(numerator: bigint, denominator: bigint): bigint {
  const quotient = numerator / denominator;
  return numerator < 0n && quotient * denominator !== numerator ? quotient - 1n : quotient;
}
