/**
 * Values as answers show them: a text in the language and in the units that the question wishes,
 * beside the ends, which neither of the two changes.
 *
 * Records are told as they were written wherever their unit is wished or none is. What has to be
 * converted, or was computed, is written in few digits, rounded so that it never looks better than
 * it is. Sizes that are names (designations, such as the 15 in of a rim), codes, counts and ratios
 * are the same in all units.
 */

import type { NumberWords } from '../domain/explain/number-words.js';
import {
  type SaidValue,
  shownValue,
  systemOf,
  writeNumbers,
  writePlace,
  writePoint,
  writeRecorded,
} from '../domain/explain/numbers.js';
import type { ShownPoint, ShownValue } from '../domain/explain/reason.js';
import { numbersIn } from '../domain/explain/words.js';
import { shownUnit } from '../domain/quantity/format.js';
import { closed, type Interval, isPoint, middle, point } from '../domain/quantity/interval.js';
import type { PlanePoint } from '../domain/quantity/plane-point.js';
import type { ValueType } from '../domain/quantity/quantity.js';
import {
  exactText,
  negate,
  type Rational,
  roundDown,
  roundUp,
  shortText,
  sign,
} from '../domain/quantity/rational.js';
import type { Dimension, ShownUnits, UnitSystem } from '../domain/quantity/unit.js';
import { roundedBelow, roundedInwards, roundedOutwards, shortened } from './rounded.js';

/** A value as somebody wrote it down, and the set of values that it allows, where it is one. */
export interface Recorded {
  readonly text: string;
  readonly interval: Interval | null;
  readonly dimension: Dimension;
  /** Null where nothing declares it. */
  readonly type: ValueType | null;
  /** One may set or order any value that is in it. */
  readonly isRange?: boolean;
}

export class ValueWriter {
  readonly units: ShownUnits;
  readonly #system: UnitSystem;
  readonly #words: NumberWords;

  constructor({ lang, units }: { readonly lang: string; readonly units: ShownUnits }) {
    this.units = units;
    this.#system = units === 'imperial' ? 'imperial' : 'metric';
    this.#words = numbersIn(lang);
  }

  /** A set with exact ends; in other units than those of the ends, in few digits. */
  interval(set: Interval, dimension: Dimension): SaidValue {
    const said = this.#isConverted(dimension) ? shortened(set, dimension, this.#system) : set;
    return this.#saying(said, set, dimension);
  }

  /** What is usual of values of a type: of names of sizes in the units of the names. */
  usual(set: Interval, { type, dimension }: Pick<Recorded, 'dimension'> & { type: ValueType }) {
    const style = { system: 'metric', words: this.#words } as const;
    return type === 'designation'
      ? shownValue(set, dimension, style)
      : this.interval(set, dimension);
  }

  /** What is left in reserve: one value is for people never more than there is. */
  reserve(set: Interval, dimension: Dimension): SaidValue {
    const isOne = set.low !== null && isPoint(set);
    return isOne ? this.least(set.low, dimension) : this.known(set, dimension);
  }

  /** What was computed, in no more digits than it is known to. */
  known(set: Interval, dimension: Dimension): SaidValue {
    // Tooth counts say more than their quotient.
    const isQuotient = dimension === '1' && isPoint(set);
    const said = isQuotient ? set : roundedOutwards(set, dimension, this.#system);
    return this.#saying(said, set, dimension);
  }

  /** What to order: exactly all that suits, and for people never wider than that. */
  order(set: Interval, dimension: Dimension): SaidValue {
    return this.#saying(roundedInwards(set, dimension, this.#system), set, dimension);
  }

  /** One value, for people never more than there is. */
  least(value: Rational, dimension: Dimension): SaidValue {
    const said = point(roundedBelow(value, dimension, this.#system));
    return this.#saying(said, point(value), dimension);
  }

  /** How far something may be off to either side, for people never further than it may. */
  within(half: Rational, dimension: Dimension): SaidValue {
    const { text } = this.least(half, dimension);
    return { ...this.interval(closed(negate(half), half), dimension), text: `±${text}` };
  }

  #saying(said: Interval, set: Interval, dimension: Dimension): SaidValue {
    const style = { system: this.#system, words: this.#words };
    const { text } = shownValue(said, dimension, style);
    return { ...shownValue(set, dimension, style), text };
  }

  /**
   * In hundredths, of what has no unit of its own: a ratio, or so many per cent that something is
   * out. Each end is rounded towards the worse: a ratio down, what is out away from nothing.
   */
  share({ low, high }: Interval, unit: 'ratio' | '%'): ShownValue {
    const [from = '…', to = '…'] = [low, high].map((end) => {
      if (end === null) return undefined;
      const isDown = unit === 'ratio' || sign(end) < 0;
      return shortText(isDown ? roundDown(end, 2) : roundUp(end, 2), 2);
    });
    const numbers =
      from === to
        ? ({ form: 'exact', value: from } as const)
        : ({ form: 'range', from, to, fromOpen: false, toOpen: false } as const);
    const text = writeNumbers({ numbers, symbol: unit === '%' ? '%' : '' }, this.#words);
    return { text, low: exact(low), high: exact(high), unit };
  }

  /** An amount of money, as a decimal text. */
  money(amount: string, currency: string | null): SaidValue {
    const symbol = currency ?? '';
    const text = writeNumbers({ numbers: { form: 'exact', value: amount }, symbol }, this.#words);
    return { text, low: amount, high: amount, unit: symbol };
  }

  /** A value that has no ends: a code, or nothing. */
  word(text: string | null): ShownValue {
    return { text, low: null, high: null, unit: '' };
  }

  /** What may be ordered, picked or measured has its ends beside. */
  recorded(value: Recorded): ShownValue {
    const { interval, dimension } = value;
    const text = this.recordedText(value);
    return interval === null ? this.word(text) : { ...this.interval(interval, dimension), text };
  }

  recordedText({ text, interval, dimension, type, isRange = false }: Recorded): string {
    const isName = type === 'designation';
    if (type === 'code' || (isName && dimension === '1')) return text;
    const isConverted = !isName && interval !== null && this.#isForeign(text, dimension);
    if (!isConverted) return writeRecorded(text, this.#words);
    // Nobody is told to order what is not to be had.
    return (isRange ? this.order(interval, dimension) : this.interval(interval, dimension)).text;
  }

  /** Whether it was recorded in units of another system than it is to be shown in. */
  #isForeign(text: string, dimension: Dimension): boolean {
    const system = this.units === 'recorded' ? null : systemOf(text);
    const shown = shownUnit(dimension, this.#system)?.system ?? 'both';
    return system !== null && shown !== 'both' && system !== shown;
  }

  /** Whether people are shown another unit than that of the ends. */
  #isConverted(dimension: Dimension): boolean {
    const [shown, own] = [this.#system, 'metric' as const].map((one) => shownUnit(dimension, one));
    return shown?.symbol !== own?.symbol;
  }

  point(at: PlanePoint, dimension: Dimension): ShownPoint {
    const [x, y] = [this.interval(at.x, dimension), this.interval(at.y, dimension)];
    return { text: this.pointText(at, dimension), x, y };
  }

  /** As recorded; converted, about where it is: its two lengths tell how exactly that is known. */
  pointText({ text, x, y }: PlanePoint, dimension: Dimension): string {
    // The unit of both stands behind the second.
    const isConverted = this.#isForeign(text.slice(text.indexOf(',') + 1).trim(), dimension);
    const [across, up] = [middle(x), middle(y)];
    if (!isConverted || across === null || up === null) return writePoint(text, this.#words);
    return writePlace({ across, up }, dimension, { system: this.#system, words: this.#words });
  }

  pointsText(points: readonly PlanePoint[], dimension: Dimension): string {
    return points.map((one) => this.pointText(one, dimension)).join('; ');
  }

  list(texts: readonly string[]): string {
    return this.#words.list(texts);
  }

  oneOf(texts: readonly string[]): string {
    return this.#words.oneOf(texts);
  }
}

function exact(end: Rational | null): string | null {
  return end === null ? null : exactText(end);
}
