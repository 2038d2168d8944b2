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
  point,
  scaleInterval,
  width,
} from '../domain/quantity/interval.js';
import {
  absolute,
  compare,
  decimalPlaces,
  divide,
  isZero,
  multiply,
  ONE,
  power,
  type Rational,
  rational,
  roundDown,
  roundUp,
} from '../domain/quantity/rational.js';
import type { Dimension, UnitSystem } from '../domain/quantity/unit.js';

/** Of a millimetre a tenth of a micrometre: nobody measures or orders more finely. */
const MOST_PLACES = 4;
/** Where that would leave nothing of what suits, or of a precision, more are written. */
const FINEST_PLACES = 9;
const TEN = rational(10);
const THOUSAND = rational(1000);

/** The smallest set with short ends that holds this one. */
export function roundedOutwards(set: Interval, dimension: Dimension, system: UnitSystem): Interval {
  return asShown(set, dimension, system, outwards);
}

/** The same where the ends are too long to be read; else, and of a single value, the set itself. */
export function shortened(set: Interval, dimension: Dimension, system: UnitSystem): Interval {
  return asShown(set, dimension, system, (shown) => {
    const isReadable = isPoint(shown) || !(isLong(shown.low) || isLong(shown.high));
    return isReadable ? shown : outwards(shown);
  });
}

/** The largest set with short ends within this one; the set itself where it is a single value. */
export function roundedInwards(set: Interval, dimension: Dimension, system: UnitSystem): Interval {
  return asShown(set, dimension, system, (shown) => {
    let places = placesFor(shown);
    if (places === null) return shown;
    while (places <= FINEST_PLACES) {
      const inner = rounded(shown, places, roundUp, roundDown);
      if (inner !== null) return inner;
      places += 1;
    }
    return shown;
  });
}

/** One value in few digits, never above it, and never zero unless it is. */
export function roundedBelow(value: Rational, dimension: Dimension, system: UnitSystem): Rational {
  const { low } = asShown(point(value), dimension, system, (shown) => {
    const places = placesFor(shown);
    if (places === null || shown.low === null) return shown;
    let cut = roundDown(shown.low, places);
    for (let finer = places; isZero(cut) && finer <= FINEST_PLACES; finer += 1) {
      cut = roundDown(shown.low, finer);
    }
    return point(cut);
  });
  return low ?? value;
}

/** Digits are those of the unit that people see, not of the one in which numbers are kept. */
function asShown(
  set: Interval,
  dimension: Dimension,
  system: UnitSystem,
  round: (shown: Interval) => Interval,
): Interval {
  const factor = shownUnit(dimension, system)?.factor ?? ONE;
  return scaleInterval(round(scaleInterval(set, divide(ONE, factor))), factor);
}

function outwards(shown: Interval): Interval {
  const places = placesFor(shown);
  return (places === null ? null : rounded(shown, places, roundDown, roundUp)) ?? shown;
}

/** Whether a number has more decimals than anybody measures. */
function isLong(value: Rational | null): boolean {
  if (value === null) return false;
  const places = decimalPlaces(value);
  return places === null || places > MOST_PLACES;
}

/**
 * The fewest decimals that divide the width ten times or more, or give a single value or a single
 * end four digits; null where there is no end, or the one number is short as it is.
 */
function placesFor(set: Interval): number | null {
  const whole = width(set);
  if (whole !== null && !isPoint(set)) return placesTo(whole, TEN);
  const only = set.low ?? set.high;
  return only === null || !isLong(only) ? null : placesTo(absolute(only), THOUSAND);
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

/** Both ends rounded; null where that leaves nothing between them. */
function rounded(
  set: Interval,
  places: number,
  roundLow: Round,
  roundHigh: Round,
): Interval | null {
  const low = set.low === null ? null : roundLow(set.low, places);
  const high = set.high === null ? null : roundHigh(set.high, places);
  if (low !== null && high !== null && compare(low, high) >= 0) return null;
  return interval(low, high, { lowOpen: set.lowOpen, highOpen: set.highOpen });
}
