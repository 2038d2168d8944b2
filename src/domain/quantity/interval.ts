/**
 * Sets of numbers without gaps: what a record allows a value to be.
 *
 * Each operation gives exactly the set of results for values taken freely from its operands: no
 * result is missed, none is added, and an end belongs to the set only if some values reach it.
 * So "every value fits" and "no value fits" can both be decided at the ends. The one exception is
 * division by a set that contains zero, see `divideIntervals`. What it leaves out: operands that
 * depend on each other. Two names for one unknown must be cancelled before they come here.
 *
 * Length: whether an end belongs to a result is one rule, read in one place.
 */

import type { Rational } from './rational.js';
import {
  absolute,
  add,
  compare,
  divide,
  equals,
  fraction,
  isZero,
  multiply,
  negate,
  ONE,
  power,
  requireExponent,
  sign,
  subtract,
  ZERO,
} from './rational.js';

/**
 * A set without gaps, never empty. An end that is null is unbounded, and then its flag is true;
 * an open end is not itself in the set. Make one with `point`, `closed` or `interval`.
 */
export interface Interval {
  readonly low: Rational | null;
  readonly lowOpen: boolean;
  readonly high: Rational | null;
  readonly highOpen: boolean;
}

/** Exactly one value. */
export function point(r: Rational): Interval {
  return { low: r, lowOpen: false, high: r, highOpen: false };
}

/** All values from `low` to `high`, both included. @throws RangeError when low > high. */
export function closed(low: Rational, high: Rational): Interval {
  return interval(low, high);
}

/**
 * All values between two ends; null is unbounded, and an end is included unless said to be open.
 *
 * @throws RangeError when no value is left.
 */
export function interval(
  low: Rational | null,
  high: Rational | null,
  ends: { readonly lowOpen?: boolean; readonly highOpen?: boolean } = {},
): Interval {
  const made = intervalOrNull(low, high, ends.lowOpen ?? false, ends.highOpen ?? false);
  if (made === null) throw new RangeError('An interval cannot be empty');
  return made;
}

function intervalOrNull(
  low: Rational | null,
  high: Rational | null,
  lowOpen: boolean,
  highOpen: boolean,
): Interval | null {
  if (low !== null && high !== null) {
    const order = compare(low, high);
    if (order > 0 || (order === 0 && (lowOpen || highOpen))) return null;
  }
  return { low, lowOpen: lowOpen || low === null, high, highOpen: highOpen || high === null };
}

/** What a missing value allows. */
export const EVERYTHING: Interval = interval(null, null);
/** All values above zero. */
export const POSITIVE: Interval = interval(ZERO, null, { lowOpen: true });
/** Zero and all values above it. */
export const NON_NEGATIVE: Interval = interval(ZERO, null);

const ZERO_POINT = point(ZERO);
const TWO = fraction(2n, 1n);

export function isPoint(i: Interval): boolean {
  return i.low !== null && i.high !== null && equals(i.low, i.high);
}

export function isEverything(i: Interval): boolean {
  return i.low === null && i.high === null;
}

export function contains(i: Interval, r: Rational): boolean {
  if (i.low !== null) {
    const order = compare(r, i.low);
    if (order < 0 || (order === 0 && i.lowOpen)) return false;
  }
  if (i.high !== null) {
    const order = compare(r, i.high);
    if (order > 0 || (order === 0 && i.highOpen)) return false;
  }
  return true;
}

/** Whether each value of `inner` is in `outer`. */
export function isWithin(inner: Interval, outer: Interval): boolean {
  return compareLows(inner, outer) >= 0 && compareHighs(inner, outer) <= 0;
}

export function overlaps(a: Interval, b: Interval): boolean {
  return intersect(a, b) !== null;
}

/** The values in both, or null when there is none. */
export function intersect(a: Interval, b: Interval): Interval | null {
  const low = compareLows(a, b) >= 0 ? a : b;
  const high = compareHighs(a, b) <= 0 ? a : b;
  return intervalOrNull(low.low, high.high, low.lowOpen, high.highOpen);
}

/** The smallest interval with all values of both (and those in a gap between them). */
export function hull(a: Interval, b: Interval): Interval {
  const low = compareLows(a, b) <= 0 ? a : b;
  const high = compareHighs(a, b) >= 0 ? a : b;
  return { low: low.low, lowOpen: low.lowOpen, high: high.high, highOpen: high.highOpen };
}

export function equalIntervals(a: Interval, b: Interval): boolean {
  return compareLows(a, b) === 0 && compareHighs(a, b) === 0;
}

/** -1 when the set of `a` begins earlier; of two equal ends the closed one is earlier. */
function compareLows(a: Interval, b: Interval): -1 | 0 | 1 {
  if (a.low === null) return b.low === null ? 0 : -1;
  if (b.low === null) return 1;
  const order = compare(a.low, b.low);
  if (order !== 0 || a.lowOpen === b.lowOpen) return order;
  return a.lowOpen ? 1 : -1;
}

/** -1 when the set of `a` ends earlier; of two equal ends the open one is earlier. */
function compareHighs(a: Interval, b: Interval): -1 | 0 | 1 {
  if (a.high === null) return b.high === null ? 0 : 1;
  if (b.high === null) return -1;
  const order = compare(a.high, b.high);
  if (order !== 0 || a.highOpen === b.highOpen) return order;
  return a.highOpen ? -1 : 1;
}

export function addIntervals(a: Interval, b: Interval): Interval {
  return {
    low: a.low === null || b.low === null ? null : add(a.low, b.low),
    lowOpen: a.lowOpen || b.lowOpen,
    high: a.high === null || b.high === null ? null : add(a.high, b.high),
    highOpen: a.highOpen || b.highOpen,
  };
}

export function subtractIntervals(a: Interval, b: Interval): Interval {
  return addIntervals(a, negateInterval(b));
}

export function negateInterval(i: Interval): Interval {
  return {
    low: i.high === null ? null : negate(i.high),
    lowOpen: i.highOpen,
    high: i.low === null ? null : negate(i.low),
    highOpen: i.lowOpen,
  };
}

/** Each value times `r`. */
export function scaleInterval(i: Interval, r: Rational): Interval {
  if (isZero(r)) return ZERO_POINT;
  const turned = sign(r) < 0 ? negateInterval(i) : i;
  const size = absolute(r);
  return {
    ...turned,
    low: turned.low === null ? null : multiply(turned.low, size),
    high: turned.high === null ? null : multiply(turned.high, size),
  };
}

/** A corner of the box of two factors: a finite product, or beyond all numbers on one side. */
interface Corner {
  readonly value: Rational | 'below' | 'above';
  readonly open: boolean;
}

/**
 * Each value of `a` times each of `b`.
 *
 * A product changes steadily along each side of the box a x b, so its extremes lie at corners.
 * It is constant along a side only where the other factor is zero: so the end zero belongs to
 * the set exactly when zero is in `a` or in `b`, however open or unbounded the other one is.
 */
export function multiplyIntervals(a: Interval, b: Interval): Interval {
  const zeroReached = contains(a, ZERO) || contains(b, ZERO);
  const corners: Corner[] = [];
  for (const x of endsOf(a)) {
    for (const y of endsOf(b)) corners.push(cornerOf(x, y, zeroReached));
  }
  const low = corners.reduce((best, next) => (compareCorners(next, best) < 0 ? next : best));
  const high = corners.reduce((best, next) => (compareCorners(best, next) < 0 ? next : best));
  const lowOpen = corners.every((c) => c.open || compareCorners(c, low) !== 0);
  const highOpen = corners.every((c) => c.open || compareCorners(c, high) !== 0);
  return {
    low: typeof low.value === 'string' ? null : low.value,
    lowOpen,
    high: typeof high.value === 'string' ? null : high.value,
    highOpen,
  };
}

function endsOf(i: Interval): readonly [Corner, Corner] {
  return [
    { value: i.low ?? 'below', open: i.lowOpen },
    { value: i.high ?? 'above', open: i.highOpen },
  ];
}

function cornerOf(x: Corner, y: Corner, zeroReached: boolean): Corner {
  const direction = signOf(x) * signOf(y);
  // Zero times an unbounded end: the products nearby run through all values of one side, whose
  // far end another corner gives, so this one only stands for the zero.
  if (direction === 0) return { value: ZERO, open: !zeroReached };
  if (typeof x.value === 'string' || typeof y.value === 'string') {
    return { value: direction < 0 ? 'below' : 'above', open: true };
  }
  return { value: multiply(x.value, y.value), open: x.open || y.open };
}

function signOf(end: Corner): -1 | 0 | 1 {
  if (end.value === 'below') return -1;
  return end.value === 'above' ? 1 : sign(end.value);
}

function compareCorners(a: Corner, b: Corner): -1 | 0 | 1 {
  if (a.value === b.value) return 0;
  if (a.value === 'below' || b.value === 'above') return -1;
  if (a.value === 'above' || b.value === 'below') return 1;
  return compare(a.value, b.value);
}

/**
 * Each value of `a` by each of `b`. When `b` contains zero the quotient does not exist for one of
 * the values that are possible, so nothing may be claimed of it: the result is EVERYTHING, never
 * the half line that would leave the zero out.
 */
export function divideIntervals(a: Interval, b: Interval): Interval {
  return contains(b, ZERO) ? EVERYTHING : multiplyIntervals(a, reciprocalInterval(b));
}

/**
 * One by each value; an open end at zero becomes an unbounded one: (0, 4] gives [1/4, infinite).
 *
 * @throws RangeError when zero is in the set.
 */
export function reciprocalInterval(i: Interval): Interval {
  if (contains(i, ZERO)) throw new RangeError('The reciprocal of zero does not exist');
  if (i.low === null || sign(i.low) < 0) {
    return negateInterval(reciprocalInterval(negateInterval(i)));
  }
  return {
    low: i.high === null ? ZERO : divide(ONE, i.high),
    lowOpen: i.highOpen,
    high: isZero(i.low) ? null : divide(ONE, i.low),
    highOpen: i.lowOpen,
  };
}

/**
 * Each value to an integer exponent from -64 to 64. To the power 0 each value is 1. A negative
 * exponent of a set that contains zero gives EVERYTHING, as dividing by it does.
 *
 * @throws RangeError for any other exponent.
 */
export function powerInterval(i: Interval, exponent: number): Interval {
  requireExponent(exponent);
  if (exponent === 0) return point(ONE);
  if (exponent < 0) {
    return contains(i, ZERO) ? EVERYTHING : reciprocalInterval(powerInterval(i, -exponent));
  }
  // Only now does the power rise with the value all along the set.
  const rising = exponent % 2 === 0 ? absoluteInterval(i) : i;
  return {
    ...rising,
    low: rising.low === null ? null : power(rising.low, exponent),
    high: rising.high === null ? null : power(rising.high, exponent),
  };
}

/** The size of each value without its sign. */
export function absoluteInterval(i: Interval): Interval {
  if (isWithin(i, NON_NEGATIVE)) return i;
  const turned = negateInterval(i);
  if (isWithin(turned, NON_NEGATIVE)) return turned;
  const high = compareHighs(i, turned) >= 0 ? i : turned;
  return { low: ZERO, lowOpen: false, high: high.high, highOpen: high.highOpen };
}

/** The smaller of two values, for each pair of values. */
export function minimumInterval(a: Interval, b: Interval): Interval {
  const low = compareLows(a, b) <= 0 ? a : b;
  const high = compareHighs(a, b) <= 0 ? a : b;
  return { low: low.low, lowOpen: low.lowOpen, high: high.high, highOpen: high.highOpen };
}

/** The larger of two values, for each pair of values. */
export function maximumInterval(a: Interval, b: Interval): Interval {
  const low = compareLows(a, b) >= 0 ? a : b;
  const high = compareHighs(a, b) >= 0 ? a : b;
  return { low: low.low, lowOpen: low.lowOpen, high: high.high, highOpen: high.highOpen };
}

/** High end less low end, or null when a side is unbounded. */
export function width(i: Interval): Rational | null {
  return i.low === null || i.high === null ? null : subtract(i.high, i.low);
}

/** The value half way between the ends, or null when a side is unbounded. */
export function middle(i: Interval): Rational | null {
  return i.low === null || i.high === null ? null : divide(add(i.low, i.high), TWO);
}

/** Whether every value is `r` or more. */
export function alwaysAtLeast(i: Interval, r: Rational): boolean {
  return i.low !== null && compare(i.low, r) >= 0;
}

/** Whether no value is `r` or more. */
export function neverAtLeast(i: Interval, r: Rational): boolean {
  if (i.high === null) return false;
  const order = compare(i.high, r);
  return order < 0 || (order === 0 && i.highOpen);
}
