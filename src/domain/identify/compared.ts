/**
 * A measured value beside recorded ones: whether the two can be one.
 *
 * Of points in the plane of a face only the number is compared: from where somebody measured them,
 * nobody knows.
 */

import type { ListItem, Value, ValueSpec } from '../catalogue/catalogue.js';
import { gradeOf } from '../check/state.js';
import { overlaps } from '../quantity/interval.js';

/**
 * What was read, as a value of each form that one of its name can have: a count here, a length
 * there. See `formOf`.
 */
export type ToldValue = ReadonlyMap<string, Value>;

export interface ToldReading {
  /** Which of the readings of the question it is, counted from 0. */
  readonly index: number;
  /** Id of a parameter of a face, or of a value of the part itself. */
  readonly id: string;
  readonly value: ToldValue;
}

export type ValueCode =
  | 'value-agrees'
  | 'value-not-recorded'
  | 'value-only-inferred'
  | 'value-only-reported'
  | 'value-differs';

export interface Compared {
  readonly code: ValueCode;
  readonly parameter: string;
  /** Null where nothing is recorded to compare it with. */
  readonly both: { readonly measured: Value; readonly recorded: Value } | null;
}

/** Values of the same form can be compared. */
export function formOf({ type, dimension, isList }: ValueSpec): string {
  return `${type} ${dimension}${isList ? ' list' : ''}`;
}

/**
 * @param recorded one for each way in which the face can be: what was read may be of any of them.
 * Undefined where nobody recorded it.
 */
export function comparedWith(
  { id: parameter, value }: ToldReading,
  recorded: readonly (Value | undefined)[],
): Compared {
  let worst: Compared | null = null;
  for (const one of recorded) {
    const compared = comparedWithOne(parameter, value, one);
    if (worst === null || RANK.indexOf(compared.code) < RANK.indexOf(worst.code)) worst = compared;
  }
  return worst ?? { code: 'value-not-recorded', parameter, both: null };
}

/** Of several ways the first of these counts: only if all of them differ, none can be. */
const RANK: readonly ValueCode[] = [
  'value-agrees',
  'value-only-inferred',
  'value-only-reported',
  'value-not-recorded',
  'value-differs',
];

function comparedWithOne(
  parameter: string,
  told: ToldValue,
  recorded: Value | undefined,
): Compared {
  const measured = recorded === undefined ? undefined : told.get(formOf(recorded.spec));
  if (recorded === undefined || measured === undefined) {
    return { code: 'value-not-recorded', parameter, both: null };
  }
  return { code: codeOf(measured, recorded), parameter, both: { measured, recorded } };
}

function codeOf(measured: Value, recorded: Value): ValueCode {
  const grade = gradeOf(recorded.evidence.basis);
  if (grade === 'opens-only') return 'value-only-reported';
  if (!canBeOne(measured, recorded)) return 'value-differs';
  return grade === 'decides' ? 'value-agrees' : 'value-only-inferred';
}

/** Whether two sets of values have one in common. */
export function canBeOne(a: Value, b: Value): boolean {
  if (a.form === 'points' || b.form === 'points') {
    return a.form === 'points' && b.form === 'points' && a.points.length === b.points.length;
  }
  if (a.form === 'list' || b.form === 'list') {
    if (a.form !== 'list' || b.form !== 'list' || a.items.length !== b.items.length) return false;
    return a.items.every((item, index) => canItemsBeOne(item, b.items[index]));
  }
  return itemsOf(a).some((one) => itemsOf(b).some((other) => canItemsBeOne(one, other)));
}

export type Item = Pick<ListItem, 'interval' | 'code'>;

/** The values that one may be: any of a set that one chooses from, all of an interval. */
export function itemsOf(value: Value): readonly Item[] {
  switch (value.form) {
    case 'number':
    case 'range':
      return [{ interval: value.interval, code: null }];
    case 'code':
      return [{ interval: null, code: value.code }];
    case 'set':
    case 'list':
      return value.items;
    case 'points':
      return [];
  }
}

function canItemsBeOne(a: Item, b: Item | undefined): boolean {
  if (b === undefined) return false;
  if (a.interval !== null && b.interval !== null) return overlaps(a.interval, b.interval);
  return a.code !== null && a.code === b.code;
}
