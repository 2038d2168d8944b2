/**
 * What a record says at one place, as the evaluator sees it: the set of values it allows, who
 * says so, and which unknown it is. Two readings with one `key` are the same unknown, so they
 * cancel and correlate; `key` is `null` where the value is exact and nothing can correlate.
 */

import type { Interval } from '../quantity/interval.js';
import type { PlanePoint } from '../quantity/plane-point.js';
import type { Dimension } from '../quantity/unit.js';
import type { Basis } from './state.js';

/** Where a value stands in the catalogue or in the question: what a person would measure. */
export interface FactAddress {
  readonly position: string | null;
  readonly hand: Hand | null;
  readonly part: string | null;
  readonly interface: string | null;
  readonly parameter: string | null;
  readonly fact: string | null;
  readonly mating: string | null;
}

export type Hand = 'left' | 'right';

export const NOWHERE: FactAddress = {
  position: null,
  hand: null,
  part: null,
  interface: null,
  parameter: null,
  fact: null,
  mating: null,
};

interface ReadingBase {
  readonly key: string | null;
  /** `null` for literals, which no record has to vouch for. */
  readonly basis: Basis | null;
  readonly address: FactAddress;
  /** As recorded, for people; `null` where nothing is recorded. */
  readonly text: string | null;
  readonly tool: string | null;
}

/** A number known to lie in `domain`; `recorded: false` when that is merely its natural range. */
export interface NumberReading extends ReadingBase {
  readonly form: 'number';
  readonly domain: Interval;
  /** Every value it could have if nobody had recorded it. */
  readonly natural: Interval;
  readonly dimension: Dimension;
  readonly recorded: boolean;
  /** The question named it, instead of what is recorded. */
  readonly isAsked?: true;
  /** What it is computed from, where it is a derived value: that is what a person measures. */
  readonly behind?: readonly Reading[];
}

/** A number that one may set or order anywhere in `domain` (closed). */
export interface RangeReading extends ReadingBase {
  readonly form: 'range';
  readonly domain: Interval;
  /** Every value it could have if nobody had recorded what may be set. */
  readonly natural: Interval;
  readonly dimension: Dimension;
}

/** A code known by name; `codes: null` is any code at all. */
export interface CodeReading extends ReadingBase {
  readonly form: 'code';
  readonly codes: readonly string[] | null;
}

/** Points in the plane of a face; `null` where they are not recorded. */
export interface PointsReading extends ReadingBase {
  readonly form: 'points';
  readonly points: readonly PlanePoint[] | null;
  readonly dimension: Dimension;
}

/** One of several: the evaluator asks again with the index that it tries. */
export interface ChoiceReading extends ReadingBase {
  readonly form: 'choice';
  /** The choice this value follows; all values of one choice share the index. */
  readonly choice: string;
  readonly options: readonly (NumberReading | RangeReading | CodeReading | PointsReading)[];
}

/** A list of numbers (the gears of a gearbox); `null` where it is not recorded. */
export interface ListReading extends ReadingBase {
  readonly form: 'list';
  readonly items: readonly NumberReading[] | null;
  readonly natural: Interval;
  readonly dimension: Dimension;
}

/** The values of all adapters in a mating, which add up; none of them is 0. */
export interface SeveralReading {
  readonly form: 'several';
  readonly items: readonly (NumberReading | RangeReading | ChoiceReading)[];
}

/** Nothing is there: the position is empty, or no adapter sits in the mating. */
export interface EmptyReading {
  readonly form: 'empty';
  readonly position: string;
}

export type Reading =
  | NumberReading
  | RangeReading
  | CodeReading
  | PointsReading
  | ChoiceReading
  | ListReading
  | SeveralReading
  | EmptyReading;

/** The finite choices that a reading follows. */
export function choicesIn(reading: Reading): readonly ChoiceReading[] {
  if (reading.form === 'choice') return [reading];
  if (reading.form !== 'several') return [];
  return reading.items.filter((item): item is ChoiceReading => item.form === 'choice');
}
