/**
 * The one place that writes numbers: sets of values that were computed or converted, and values as
 * somebody recorded them. English writes what `parseQuantity` reads back; other languages are for
 * people alone.
 */

import { type ShownNumbers, type ShownQuantity, shownQuantity } from '../quantity/format.js';
import { type Interval, point } from '../quantity/interval.js';
import { type Notation, readNotation } from '../quantity/notation.js';
import { fitClassOf, isFault } from '../quantity/quantity.js';
import type { Rational } from '../quantity/rational.js';
import { type Dimension, type UnitSystem, unitOf } from '../quantity/unit.js';
import type { NumberWords } from './number-words.js';
import type { ShownValue } from './reason.js';

export interface NumberStyle {
  readonly system: UnitSystem;
  readonly words: NumberWords;
}

/** A value that there is something to say of. */
export interface SaidValue extends ShownValue {
  readonly text: string;
}

/** A set of values: in words for people, its ends exactly for programs. */
export function shownValue(
  interval: Interval,
  dimension: Dimension,
  { system, words }: NumberStyle,
): SaidValue {
  const { numbers, symbol, low, high, unit } = shownQuantity(interval, dimension, system);
  return { text: writeNumbers({ numbers, symbol }, words), low, high, unit };
}

/** Digits with the words between them, and the unit behind them once. */
export function writeNumbers(
  { numbers, symbol }: Pick<ShownQuantity, 'numbers' | 'symbol'>,
  words: NumberWords,
): string {
  const text = numbersText(numbers, words);
  return numbers.form === 'any' ? text : withUnit(text, symbol, words);
}

function numbersText(numbers: ShownNumbers, words: NumberWords): string {
  switch (numbers.form) {
    case 'any':
      return words.any;
    case 'exact':
      return words.digits(numbers.value);
    case 'about':
      return words.about(words.digits(numbers.value));
    case 'at-least':
      return words.atLeast(words.digits(numbers.value));
    case 'above':
      return words.above(words.digits(numbers.value));
    case 'at-most':
      return words.atMost(words.digits(numbers.value));
    case 'below':
      return words.below(words.digits(numbers.value));
    case 'tolerance':
      return `${words.digits(numbers.value)} ±${words.digits(numbers.half)}`;
    case 'range': {
      const [from, to] = [words.digits(numbers.from), words.digits(numbers.to)];
      return words.range(
        numbers.fromOpen ? words.above(from) : from,
        numbers.toOpen ? words.below(to) : to,
      );
    }
  }
}

/** The degree sign follows its number closely, and so does nothing else. */
function withUnit(text: string, symbol: string, { symbols }: NumberWords): string {
  const written = symbols[symbol] ?? symbol;
  if (written === '') return text;
  return written === '°' ? `${text}${written}` : `${text} ${written}`;
}

/**
 * A value as somebody recorded it, with the same digits. What is no quantity, such as a code, stays
 * as it is; so does all of it in a language that writes numbers as records do.
 */
export function writeRecorded(text: string, words: NumberWords): string {
  if (words.isAsRecorded) return text;
  const ends = endsOf(text);
  if (ends !== null) {
    return words.range(writeRecorded(ends[0], words), writeRecorded(ends[1], words));
  }
  const notation = readNotation(text);
  if (isFault(notation)) return text;
  const symbol = symbolOf(notation);
  return symbol === null ? text : withUnit(notationText(notation, words), symbol, words);
}

/** The two ends of a range that one may order, each with its unit; null for any other text. */
function endsOf(text: string): readonly [string, string] | null {
  const [low, high, ...more] = text.split(' to ');
  if (low === undefined || high === undefined || more.length > 0) return null;
  const first = readNotation(low);
  // The one unit of a range that somebody read stands at its end.
  return isFault(first) || first.unit === '' ? null : [low, high];
}

function notationText(notation: Notation, { digits, range }: NumberWords): string {
  switch (notation.form) {
    case 'single':
      return digits(notation.value);
    case 'tolerance':
      return `${digits(notation.value)} ±${digits(notation.half)}`;
    case 'deviations': {
      const { value, first, second } = notation;
      return `${digits(value)} ${digits(first)}/${digits(second)}`;
    }
    case 'range':
      return range(digits(notation.from), digits(notation.to));
  }
}

/** The symbol of the unit; a fit class stands in its place. Null where it is neither. */
function symbolOf(notation: Notation): string | null {
  return unitOf(notation.unit)?.symbol ?? fitClassOf(notation);
}

/** A point as somebody recorded it, with the same digits: across, up, and the unit of both. */
export function writePoint(text: string, words: NumberWords): string {
  const [across, up, ...more] = text.split(/\s*,\s*/);
  if (words.isAsRecorded || across === undefined || up === undefined || more.length > 0)
    return text;
  return words.point(writeRecorded(across, words), writeRecorded(up, words));
}

/** About where a point is. */
export function writePlace(
  { across, up }: { readonly across: Rational; readonly up: Rational },
  dimension: Dimension,
  style: NumberStyle,
): string {
  const { words } = style;
  const x = oneNumber(across, dimension, style);
  const y = oneNumber(up, dimension, style);
  return withUnit(words.about(words.point(x.digits, y.digits)), y.symbol, words);
}

function oneNumber(value: Rational, dimension: Dimension, { system, words }: NumberStyle) {
  const { numbers, symbol } = shownQuantity(point(value), dimension, system);
  if (!('value' in numbers)) throw new Error('one value is shown as one number');
  return { digits: words.digits(numbers.value), symbol };
}

/** In which system somebody recorded a value; null where that makes no difference, or is none. */
export function systemOf(text: string): UnitSystem | null {
  const notation = readNotation(endsOf(text)?.[1] ?? text);
  if (isFault(notation)) return null;
  if (fitClassOf(notation) !== null) return 'metric';
  const system = unitOf(notation.unit)?.system ?? 'both';
  return system === 'both' ? null : system;
}
