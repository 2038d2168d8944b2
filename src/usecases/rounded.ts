/**
 * Sets of computed values in few digits, for sentences: as many as the set is wide, with one more.
 * What is known is rounded outwards, so that nothing is claimed that is not known; what may be
 * ordered is rounded inwards, so that nothing is ordered that does not suit. Programs get the exact
 * ends.
 */

import { shownUnit } from '../domain/quantity/format.js';
import {
  type Interval,
  interval,
  isPoint,
  scaleInterval,
  width,
} from '../domain/quantity/interval.js';
import {
  absolute,
  compare,
  decimalPlaces,
  divide,
  multiply,
  ONE,
  power,
  type Rational,
  rational,
  roundDown,
  roundUp,
} from '../domain/quantity/rational.js';
import type { Dimension } from '../domain/quantity/unit.js';

/** Of a millimetre a tenth of a micrometre: nobody measures or orders more finely. */
const MOST_PLACES = 4;
const TEN = rational(10);
const THOUSAND = rational(1000);

/** The smallest set with short ends that holds this one. */
export function roundedOutwards(set: Interval, dimension: Dimension): Interval {
  return asShown(set, dimension, (shown) => rounded(shown, roundDown, roundUp));
}

/** The largest set with short ends within this one; the set itself where it holds none. */
export function roundedInwards(set: Interval, dimension: Dimension): Interval {
  return asShown(set, dimension, (shown) => rounded(shown, roundUp, roundDown));
}

/** Digits are those of the unit that people see, not of the one in which numbers are kept. */
function asShown(
  set: Interval,
  dimension: Dimension,
  round: (shown: Interval) => Interval,
): Interval {
  const factor = shownUnit(dimension)?.factor ?? ONE;
  return scaleInterval(round(scaleInterval(set, divide(ONE, factor))), factor);
}

/**
 * The fewest decimals that divide the width ten times or more, or give a single value four digits;
 * null where there is no end, or the value is short as it is.
 */
function placesFor(set: Interval): number | null {
  const whole = width(set);
  if (whole === null || set.low === null) return null;
  if (!isPoint(set)) return placesTo(whole, TEN);
  const places = decimalPlaces(set.low);
  if (places !== null && places <= MOST_PLACES) return null;
  return placesTo(absolute(set.low), THOUSAND);
}

/** The decimals with which the value counts so many steps or more. */
function placesTo(value: Rational, steps: Rational): number {
  let places = 0;
  while (places < MOST_PLACES && compare(multiply(value, power(TEN, places)), steps) < 0) {
    places += 1;
  }
  return places;
}

type Round = (value: Rational, places: number) => Rational;

/** Both ends rounded; the set itself where that has no effect or leaves nothing between them. */
function rounded(set: Interval, roundLow: Round, roundHigh: Round): Interval {
  const places = placesFor(set);
  if (places === null || set.low === null || set.high === null) return set;
  const low = roundLow(set.low, places);
  const high = roundHigh(set.high, places);
  if (compare(low, high) >= 0) return set;
  return interval(low, high, { lowOpen: set.lowOpen, highOpen: set.highOpen });
}
