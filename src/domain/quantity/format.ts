/**
 * A set of values in words: exactly for programs, and in few digits for people.
 *
 * Where the exact digits are few, the text for people is exact and reads back as the same set.
 * Where they are many, the ends of a set are rounded outwards, so that the text never claims
 * more than is known, and a single value is marked with "about", which does not read back.
 */

import type { Interval } from './interval.js';
import { isEverything, isPoint, middle, width } from './interval.js';
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
  rational,
  roundDown,
  roundUp,
  shortText,
} from './rational.js';
import type { Dimension, Unit, UnitSystem } from './unit.js';
import { baseSymbol, baseUnit, fromBase, unitOf } from './unit.js';

export interface FormattedQuantity {
  /** For people, in the system that was asked for. */
  readonly text: string;
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

/** Longest exact number that is shown to people. */
const LONGEST_EXACT = 12;
/** Longest fraction of a pure number: tooth counts say more than their quotient. */
const LONGEST_RATIO = 24;
/** Decimals of rounded numbers: a ten-thousandth of an inch is 2.5 micrometres. */
const ROUNDED_PLACES = 4;
/** A tolerance is written with ± only up to this part of its value; wider sets as a range. */
const WIDEST_TOLERANCE = rational('0.1');
const TWO = rational(2);
const PURE: Dimension = '1';

/**
 * Writes a set of values.
 *
 * @param interval in the base unit of the dimension.
 * @param options.system changes `text` only; dimensions without an imperial unit stay metric.
 */
export function formatQuantity(
  interval: Interval,
  dimension: Dimension,
  options: { readonly system: UnitSystem } = { system: 'metric' },
): FormattedQuantity {
  const metric = displayUnit(dimension, 'metric');
  const shown = displayUnit(dimension, options.system);
  const exact = convert(interval, metric.unit);
  return {
    text: wordsOf(convert(interval, shown.unit), shown.symbol, {
      longestFraction: longestFraction(dimension),
    }),
    low: exact.low === null ? null : exactText(exact.low),
    high: exact.high === null ? null : exactText(exact.high),
    unit: metric.symbol,
  };
}

/** The unit that people are shown, in the metric system. */
export function shownUnit(dimension: Dimension): Unit | undefined {
  return displayUnit(dimension, 'metric').unit;
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

function wordsOf(shown: Interval, symbol: string, limits: Limits): string {
  if (isEverything(shown)) return 'any';
  const words = numbersOf(shown, limits);
  return symbol === '' ? words : `${words} ${symbol}`;
}

function numbersOf(shown: Interval, limits: Limits): string {
  const { low, high } = shown;
  if (low !== null && isPoint(shown)) return shortExact(low, limits) ?? `about ${aboutText(low)}`;
  const lowText = low === null ? '' : (shortExact(low, limits) ?? roundedText(low, roundDown));
  const highText = high === null ? '' : (shortExact(high, limits) ?? roundedText(high, roundUp));
  if (low === null) return `${shown.highOpen ? 'below' : 'at most'} ${highText}`;
  if (high === null) return `${shown.lowOpen ? 'above' : 'at least'} ${lowText}`;
  const tolerance = toleranceText(shown);
  if (tolerance !== null) return tolerance;
  const [above, below] = [shown.lowOpen ? 'above ' : '', shown.highOpen ? 'below ' : ''];
  return `${above}${lowText} to ${below}${highText}`;
}

/** `56.10 ±0.05`, if that says it exactly and with no more decimals than the two ends need. */
function toleranceText(shown: Interval): string | null {
  const [centre, whole] = [middle(shown), width(shown)];
  if (centre === null || whole === null || shown.lowOpen || shown.highOpen) return null;
  const half = divide(whole, TWO);
  if (compare(half, multiply(absolute(centre), WIDEST_TOLERANCE)) > 0) return null;
  const places = placesOf(centre, half);
  const placesOfEnds = placesOf(shown.low, shown.high);
  if (places === null || placesOfEnds === null || places > placesOfEnds) return null;
  const text = decimalText(centre, places);
  return text.length > LONGEST_EXACT ? null : `${text} ±${decimalText(half, places)}`;
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

/** Rounded to the nearest, with as many decimals as it takes not to read zero. */
function aboutText(r: Rational): string {
  let places = ROUNDED_PLACES;
  while (isZero(roundDown(absolute(r), places))) places += ROUNDED_PLACES;
  return shortText(r, places);
}
