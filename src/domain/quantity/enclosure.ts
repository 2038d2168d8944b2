/**
 * Functions whose values are no rationals: roots and circular functions.
 *
 * Each gives an interval that holds every value of the function on the set, with rational ends that
 * lie at most some 10^-30 outside: a formula through them is as exact as its inputs, and a verdict
 * taken at an end is never wrong. Angles are in degrees, in which workshops measure and in which
 * a full turn is exact. What it leaves out: sets without both ends, of which nothing is claimed.
 */

import {
  closed,
  EVERYTHING,
  type Interval,
  intersect,
  isPoint,
  multiplyIntervals,
  point,
  subtractIntervals,
} from './interval.js';
import {
  add,
  compare,
  divide,
  equals,
  fraction,
  larger,
  multiply,
  negate,
  ONE,
  type Rational,
  rational,
  roundDown,
  roundUp,
  sign,
  smaller,
  subtract,
  ZERO,
} from './rational.js';

/** Decimals to which ends are kept. */
const PLACES = 30;
/** Steps of the last of these decimals, in which series are summed with room to round. */
const SCALE = 10n ** 40n;

/** The circumference of a circle over its diameter, cut off after 40 decimals and one more. */
export const PI: Interval = closed(
  rational('3.1415926535897932384626433832795028841971'),
  rational('3.1415926535897932384626433832795028841972'),
);

const RIGHT_ANGLE = rational(90);
const HALF_TURN = rational(180);
const FULL_TURN = rational(360);
const TWO = rational(2);

/**
 * The root of each value: `degree` 2 is the square root, 3 the cube root.
 *
 * @throws RangeError for a degree that is no whole number from 2 to 12, and for a value below zero.
 */
export function rootInterval(set: Interval, degree: number): Interval {
  if (!Number.isInteger(degree) || degree < 2 || degree > 12) {
    throw new RangeError(`There is no root of degree ${degree} here`);
  }
  if (set.low === null || sign(set.low) < 0) {
    throw new RangeError('There is no root of less than zero');
  }
  const low = rootOf(set.low, degree).low;
  const high = set.high === null ? null : rootOf(set.high, degree).high;
  return { low, lowOpen: false, high, highOpen: high === null };
}

/** The root between two neighbouring decimals; a single value where it is one of them. */
function rootOf(value: Rational, degree: number): { low: Rational; high: Rational } {
  const scale = 10n ** BigInt(PLACES);
  const scaled = (value.n * scale ** BigInt(degree)) / value.d;
  const whole = wholeRoot(scaled, degree);
  const low = fraction(whole, scale);
  const isExact = equals(power(low, degree), value);
  return { low, high: isExact ? low : fraction(whole + 1n, scale) };
}

function power(base: Rational, exponent: number): Rational {
  let result = ONE;
  for (let index = 0; index < exponent; index += 1) result = multiply(result, base);
  return result;
}

/** The whole part of a root (Newton's method, from above). */
function wholeRoot(value: bigint, degree: number): bigint {
  if (value < 2n) return value;
  const n = BigInt(degree);
  let root = 1n << BigInt(Math.ceil(value.toString(2).length / degree));
  for (;;) {
    const next = ((n - 1n) * root + value / root ** (n - 1n)) / n;
    if (next >= root) return root;
    root = next;
  }
}

/** The sine of each angle. */
export function sineInterval(degrees: Interval): Interval {
  return cosineInterval(subtractIntervals(point(RIGHT_ANGLE), degrees));
}

/** The cosine of each angle. */
export function cosineInterval({ low, high }: Interval): Interval {
  if (low === null || high === null) return closed(negate(ONE), ONE);
  if (compare(subtract(high, low), FULL_TURN) >= 0) return closed(negate(ONE), ONE);
  const ends = [cosineOf(low), cosineOf(high)];
  return closed(
    hasTurn(low, high, HALF_TURN) ? negate(ONE) : least(ends.map((end) => end.low)),
    hasTurn(low, high, ZERO) ? ONE : greatest(ends.map((end) => end.high)),
  );
}

/** Whether an angle from `low` to `high` is `at`, or whole turns from it. */
function hasTurn(low: Rational, high: Rational, at: Rational): boolean {
  const turns = roundUp(divide(subtract(low, at), FULL_TURN), 0);
  return compare(add(at, multiply(turns, FULL_TURN)), high) <= 0;
}

/**
 * The tangent of each angle; EVERYTHING where one of them is a right angle or beyond, since then
 * nothing may be claimed.
 */
export function tangentInterval(degrees: Interval): Interval {
  const { low, high } = degrees;
  const isWithin =
    low !== null &&
    high !== null &&
    compare(low, negate(RIGHT_ANGLE)) > 0 &&
    compare(high, RIGHT_ANGLE) < 0;
  if (!isWithin) return EVERYTHING;
  return closed(tangentOf(low).low, tangentOf(high).high);
}

function tangentOf(angle: Rational): Ends {
  const sine = sineOf(angle);
  const cosine = cosineOf(angle);
  const quotients = [sine.low, sine.high].flatMap((s) => [
    divide(s, cosine.low),
    divide(s, cosine.high),
  ]);
  return { low: roundDown(least(quotients), PLACES), high: roundUp(greatest(quotients), PLACES) };
}

/**
 * The angle from 0 to 180 degrees that has each cosine.
 *
 * @throws RangeError for a value that is certainly no cosine.
 */
export function arcCosineInterval(set: Interval): Interval {
  const within = intersect(set, closed(negate(ONE), ONE));
  if (within === null) throw new RangeError('A cosine lies from -1 to 1');
  // The cosine falls all along the way.
  const low = within.high === null ? ZERO : inverse(cosineOf, within.high, [HALF_TURN, ZERO]).low;
  const high =
    within.low === null ? HALF_TURN : inverse(cosineOf, within.low, [HALF_TURN, ZERO]).high;
  return closed(low, high);
}

/** The angle between -90 and 90 degrees that has each tangent. */
export function arcTangentInterval({ low, high }: Interval): Interval {
  const range = [negate(RIGHT_ANGLE), RIGHT_ANGLE] as const;
  return closed(
    low === null ? range[0] : inverse(tangentOf, low, range).low,
    high === null ? range[1] : inverse(tangentOf, high, range).high,
  );
}

interface Ends {
  readonly low: Rational;
  readonly high: Rational;
}

/** Halvings after which a range of 180 degrees is some 10^-19 of a degree wide. */
const HALVINGS = 70;

/**
 * Where a function that rises steadily from the first to the second argument takes a value: the
 * last argument found at which it is certainly less, and the first at which it is certainly more.
 */
function inverse(
  rising: (argument: Rational) => Ends,
  value: Rational,
  range: readonly [Rational, Rational],
): Ends {
  const [less] = narrowed(range, (argument) => compare(rising(argument).high, value) < 0);
  const [, more] = narrowed(range, (argument) => compare(rising(argument).low, value) <= 0);
  return { low: smaller(less, more), high: larger(less, more) };
}

/** A range halved again and again around the place up to which something is so. */
function narrowed(
  [from, to]: readonly [Rational, Rational],
  isSo: (argument: Rational) => boolean,
): readonly [Rational, Rational] {
  let [below, above] = [from, to];
  for (let step = 0; step < HALVINGS; step += 1) {
    const between = divide(add(below, above), TWO);
    if (isSo(between)) below = between;
    else above = between;
  }
  return [below, above];
}

function sineOf(angle: Rational): Ends {
  return cosineOf(subtract(RIGHT_ANGLE, angle));
}

/** By symmetry of an angle from 0 to 45 degrees, where the series converge fast. */
function cosineOf(angle: Rational): Ends {
  const turns = roundDown(divide(angle, FULL_TURN), 0);
  const once = subtract(angle, multiply(turns, FULL_TURN));
  const upper = compare(once, HALF_TURN) > 0 ? subtract(FULL_TURN, once) : once;
  if (compare(upper, RIGHT_ANGLE) > 0) {
    const { low, high } = cosineOf(subtract(HALF_TURN, upper));
    return { low: negate(high), high: negate(low) };
  }
  if (sign(upper) === 0) return { low: ONE, high: ONE };
  if (equals(upper, RIGHT_ANGLE)) return { low: ZERO, high: ZERO };
  return compare(upper, rational(45)) > 0
    ? series(subtract(RIGHT_ANGLE, upper), 'sine')
    : series(upper, 'cosine');
}

/** Taylor's series, summed in whole steps; what is cut off or rounded stays within `room`. */
function series(angle: Rational, of: 'sine' | 'cosine'): Ends {
  const x = multiplyIntervals(point(divide(angle, HALF_TURN)), PI);
  const middle = divide(add(x.low ?? ZERO, x.high ?? ZERO), TWO);
  const step = (middle.n * SCALE) / middle.d;
  const square = (step * step) / SCALE;
  let term = of === 'sine' ? step : SCALE;
  let sum = 0n;
  // The first factors that divide the next term: 2 x 3 of a sine, 1 x 2 of a cosine.
  let factor = of === 'sine' ? 2n : 1n;
  while (term !== 0n) {
    sum += term;
    term = (-term * square) / SCALE / (factor * (factor + 1n));
    factor += 2n;
  }
  const room = 1_000_000n;
  return {
    low: roundDown(fraction(sum - room, SCALE), PLACES),
    high: roundUp(fraction(sum + room, SCALE), PLACES),
  };
}

function least(values: readonly Rational[]): Rational {
  return values.reduce((best, one) => (compare(one, best) < 0 ? one : best));
}

function greatest(values: readonly Rational[]): Rational {
  return values.reduce((best, one) => (compare(one, best) > 0 ? one : best));
}

/**
 * What a function of several values takes over a box of intervals, where along each of them alone
 * it only rises or only falls: then its extremes lie at corners, however often a value stands in
 * its formula. The caller answers for that.
 */
export function overCorners(
  box: readonly Interval[],
  formula: (...corner: Interval[]) => Interval,
): Interval {
  const ends = box.map((set) => {
    if (isPoint(set)) return [set];
    if (set.low === null || set.high === null) return [null];
    return [point(set.low), point(set.high)];
  });
  const values = cornersOf(ends).map((corner) => {
    const known = corner.filter((one) => one !== null);
    return known.length === corner.length ? formula(...known) : EVERYTHING;
  });
  const lows = values.map(({ low }) => low);
  const highs = values.map(({ high }) => high);
  const [low, high] = [lows, highs].map((all) => all.every((one) => one !== null));
  return {
    low: low ? least(lows.filter((one) => one !== null)) : null,
    lowOpen: !low,
    high: high ? greatest(highs.filter((one) => one !== null)) : null,
    highOpen: !high,
  };
}

function cornersOf<End>(sides: readonly (readonly End[])[]): End[][] {
  return sides.reduce<End[][]>(
    (corners, side) => corners.flatMap((corner) => side.map((end) => [...corner, end])),
    [[]],
  );
}
