/**
 * Shows what a formula gave: for programs its ends, for people one number where it is one but for
 * the arithmetic.
 *
 * Through roots and angles even exact inputs have two ends, some 10^-20 apart and hundreds of
 * digits long, of which all but the first dozen tell of the arithmetic alone. Such ends are rounded
 * outwards; ends that can be written exactly stay as they are.
 */

import type { ShownValue } from '../domain/explain/reason.js';
import {
  type Interval,
  isEverything,
  isPoint,
  middle,
  point,
  width,
} from '../domain/quantity/interval.js';
import {
  absolute,
  add,
  compare,
  decimalPlaces,
  exactText,
  isZero,
  multiply,
  power,
  type Rational,
  rational,
  roundDown,
  roundUp,
} from '../domain/quantity/rational.js';
import type { Dimension } from '../domain/quantity/unit.js';
import type { ValueWriter } from './value-writer.js';

/** Longest end that is written exactly, in characters: of one value, and of a set. */
const LONGEST_EXACT = 40;
const LONGEST_END = 20;
/** Digits of an end that is not. */
const DIGITS = 15;
/** Sets that are narrower than this part of their size are one number to people. */
const NARROW = power(rational(10), -12);
const TEN = rational(10);

interface Shape {
  readonly dimension: Dimension;
  readonly percent?: boolean;
  readonly decimal?: boolean;
}

export function computed(
  set: Interval,
  { dimension, percent = false, decimal = false }: Shape,
  values: ValueWriter,
): ShownValue {
  const ends = written(set);
  // Where nothing can be said there are no ends to write a sign behind.
  if (percent && !isEverything(set)) return values.share(ends, '%');
  const shown = values.interval(ends, dimension);
  const only = onlyNumber(set, decimal);
  const { text } = only === null ? values.known(ends, dimension) : values.interval(only, dimension);
  return { ...shown, text };
}

/** The one number that a set is to people; null where it is more than one. */
function onlyNumber(set: Interval, isDecimal: boolean): Interval | null {
  const [centre, whole] = [middle(set), width(set)];
  if (centre === null || whole === null) return null;
  const isOne = compare(whole, multiply(absolute(centre), NARROW)) <= 0;
  if (!isOne) return null;
  // Rounded to what can be told at all, so that a number such as 3.5 does not read as about 3.5.
  const near = roundTo(centre, isDecimal ? DIGITS : DIGITS - 3);
  const isExact = isZero(whole) && !isDecimal;
  return point(decimalPlaces(centre) === null && isExact ? centre : near);
}

function written(set: Interval): Interval {
  const longest = isPoint(set) ? LONGEST_EXACT : LONGEST_END;
  return {
    ...set,
    low: set.low === null ? null : shortEnd(set.low, longest, roundDown),
    high: set.high === null ? null : shortEnd(set.high, longest, roundUp),
  };
}

function shortEnd(end: Rational, longest: number, round: typeof roundDown): Rational {
  return exactText(end).length <= longest ? end : round(end, placesFor(end, DIGITS));
}

function roundTo(value: Rational, digits: number): Rational {
  const places = placesFor(value, digits);
  const half = multiply(rational('0.5'), power(TEN, -places));
  return roundDown(add(value, half), places);
}

/** Decimals with which a number has so many digits that count; never fewer than none. */
function placesFor(value: Rational, digits: number): number {
  const size = absolute(value);
  let places = digits;
  if (isZero(size)) return places;
  for (let one = rational(1); compare(size, one) >= 0 && places > 0; one = multiply(one, TEN)) {
    places -= 1;
  }
  for (
    let one = rational('0.1');
    compare(size, one) < 0 && places < 60;
    one = multiply(one, rational('0.1'))
  ) {
    places += 1;
  }
  return places;
}
