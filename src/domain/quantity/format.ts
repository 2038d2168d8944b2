/**
 * A set of values to be shown: exactly for programs, and in few digits for people. The words
 * between the digits are for each language to find.
 *
 * Where the exact digits are few, people are shown them, and what they read is the same set.
 * Where they are many, the ends of a set are rounded outwards, so that nothing is claimed that
 * is not known, and a single value is marked as being about so much.
 */

import type { Interval } from './interval.js';
import { isPoint, middle, width } from './interval.js';
import type { Rational } from './rational.js';
import {
  absolute,
  compare,
  decimalPlaces,
  decimalText,
  divide,
  exactText,
  isZero,
  multiply,
  power,
  rational,
  roundDown,
  roundUp,
  shortText,
} from './rational.js';
import type { Dimension, Unit, UnitSystem } from './unit.js';
import { baseSymbol, baseUnit, fromBase, nameOf, unitOf } from './unit.js';

/** Digits to be shown, with a point, and how they belong together. */
export type ShownNumbers =
  | { readonly form: 'any' }
  | { readonly form: 'exact' | 'about'; readonly value: string }
  | {
      readonly form: 'at-least' | 'above' | 'at-most' | 'below';
      readonly value: string;
    }
  | { readonly form: 'tolerance'; readonly value: string; readonly half: string }
  | {
      readonly form: 'range';
      readonly from: string;
      readonly to: string;
      /** Whether the ends are left out. */
      readonly fromOpen: boolean;
      readonly toOpen: boolean;
    };

export interface ShownQuantity {
  /** For people, in the system that was asked for. */
  readonly numbers: ShownNumbers;
  /** Symbol of the unit of these numbers; empty for a pure number. */
  readonly symbol: string;
  /** The lowest value exactly, a decimal or a fraction in `unit`; null when there is none. */
  readonly low: string | null;
  /** The highest value, as `low`. */
  readonly high: string | null;
  /** Symbol of the metric unit of `low` and `high`; empty for a pure number. */
  readonly unit: string;
}

/** Shown in another unit than the base unit, in which their numbers would be tiny. */
const METRIC_SYMBOLS: Readonly<Record<Dimension, string>> = { 'length^-1': '1/km' };

const IMPERIAL_SYMBOLS: Readonly<Record<Dimension, string>> = {
  length: 'in',
  'length^2': 'in2',
  mass: 'lb',
  force: 'lbf',
  torque: 'lbf.ft',
  pressure: 'psi',
  power: 'hp',
  speed: 'mph',
};

/** What is shown in an imperial unit, and in which; everything else stays metric. */
export const IMPERIAL_UNITS = Object.entries(IMPERIAL_SYMBOLS).map(
  ([dimension, symbol]) => [nameOf(dimension).replace(/^an? /, ''), symbol] as const,
);

/** Longest exact number that is shown to people. */
const LONGEST_EXACT = 12;
/** Longest fraction of a pure number: tooth counts say more than their quotient. */
const LONGEST_RATIO = 24;
/** Decimals of rounded numbers: a ten-thousandth of an inch is 2.5 micrometres. */
const ROUNDED_PLACES = 4;
/** A number of five digits counts so many steps of its last digit. */
const LEAST_STEPS = rational(10_000);
/** A tolerance is written with ± only up to this part of its value; wider sets as a range. */
const WIDEST_TOLERANCE = rational('0.1');
const TWO = rational(2);
const TEN = rational(10);
const PURE: Dimension = '1';

/**
 * A set of values as it is to be shown.
 *
 * @param interval in the base unit of the dimension.
 * @param system changes `numbers` and `symbol` only; dimensions without an imperial unit stay
 *   metric.
 */
export function shownQuantity(
  interval: Interval,
  dimension: Dimension,
  system: UnitSystem,
): ShownQuantity {
  const metric = displayUnit(dimension, 'metric');
  const shown = displayUnit(dimension, system);
  const exact = convert(interval, metric.unit);
  return {
    numbers: numbersOf(convert(interval, shown.unit), {
      longestFraction: longestFraction(dimension),
    }),
    symbol: shown.symbol,
    low: exact.low === null ? null : exactText(exact.low),
    high: exact.high === null ? null : exactText(exact.high),
    unit: metric.symbol,
  };
}

/** The unit that people are shown; a product of dimensions has none. */
export function shownUnit(dimension: Dimension, system: UnitSystem): Unit | undefined {
  return displayUnit(dimension, system).unit;
}

interface Limits {
  /** Longest fraction that is shown, in characters. */
  readonly longestFraction: number;
}

interface DisplayUnit {
  /** Undefined for a product of dimensions, which is shown in base units. */
  readonly unit: Unit | undefined;
  readonly symbol: string;
}

function displayUnit(dimension: Dimension, system: UnitSystem): DisplayUnit {
  const imperial = system === 'imperial' ? IMPERIAL_SYMBOLS[dimension] : undefined;
  const symbol = imperial ?? METRIC_SYMBOLS[dimension];
  const unit = symbol === undefined ? baseUnit(dimension) : unitOf(symbol);
  return { unit, symbol: unit?.symbol ?? baseSymbol(dimension) };
}

function convert(interval: Interval, unit: Unit | undefined): Interval {
  if (unit === undefined) return interval;
  return {
    ...interval,
    low: interval.low === null ? null : fromBase(interval.low, unit),
    high: interval.high === null ? null : fromBase(interval.high, unit),
  };
}

/** Nobody reads inches or newton metres in fractions such as 1121/508; tooth counts one does. */
function longestFraction(dimension: Dimension): number {
  return dimension === PURE ? LONGEST_RATIO : 0;
}

function numbersOf(shown: Interval, limits: Limits): ShownNumbers {
  const { low, high, lowOpen: fromOpen, highOpen: toOpen } = shown;
  if (low === null && high === null) return { form: 'any' };
  if (low !== null && isPoint(shown)) {
    const exact = shortExact(low, limits);
    return exact === null
      ? { form: 'about', value: aboutText(low) }
      : { form: 'exact', value: exact };
  }
  const from = low === null ? '' : (shortExact(low, limits) ?? roundedText(low, roundDown));
  const to = high === null ? '' : (shortExact(high, limits) ?? roundedText(high, roundUp));
  if (low === null) return { form: toOpen ? 'below' : 'at-most', value: to };
  if (high === null) return { form: fromOpen ? 'above' : 'at-least', value: from };
  return toleranceOf(shown) ?? { form: 'range', from, to, fromOpen, toOpen };
}

/** `56.10 ±0.05`, if that says it exactly and with no more decimals than the two ends need. */
function toleranceOf(shown: Interval): ShownNumbers | null {
  const [centre, whole] = [middle(shown), width(shown)];
  if (centre === null || whole === null || shown.lowOpen || shown.highOpen) return null;
  const half = divide(whole, TWO);
  if (compare(half, multiply(absolute(centre), WIDEST_TOLERANCE)) > 0) return null;
  const places = placesOf(centre, half);
  const placesOfEnds = placesOf(shown.low, shown.high);
  if (places === null || placesOfEnds === null || places > placesOfEnds) return null;
  const value = decimalText(centre, places);
  if (value.length > LONGEST_EXACT) return null;
  return { form: 'tolerance', value, half: decimalText(half, places) };
}

/** Decimals that both numbers need, or null when one of them has no finite decimal. */
function placesOf(a: Rational | null, b: Rational | null): number | null {
  const first = a === null ? null : decimalPlaces(a);
  const second = b === null ? null : decimalPlaces(b);
  return first === null || second === null ? null : Math.max(first, second);
}

/** The exact number if it is short enough to be read, else null. */
function shortExact(r: Rational, limits: Limits): string | null {
  const text = exactText(r);
  const longest = text.includes('/') ? limits.longestFraction : LONGEST_EXACT;
  return text.length <= longest ? text : null;
}

function roundedText(r: Rational, round: typeof roundDown): string {
  return shortText(round(r, ROUNDED_PLACES), ROUNDED_PLACES);
}

/** Rounded to the nearest, in five digits, or as many decimals as it takes not to read zero. */
function aboutText(r: Rational): string {
  const size = absolute(r);
  let places = 0;
  while (places < ROUNDED_PLACES && compare(multiply(size, power(TEN, places)), LEAST_STEPS) < 0) {
    places += 1;
  }
  while (isZero(roundDown(size, places))) places += ROUNDED_PLACES;
  return shortText(r, places);
}
