/**
 * A compiled value as cells: one row, or one for each item of a list or set.
 */

import type { ListItem, Value, ValueSpec, Values } from '../../domain/catalogue/catalogue.js';
import type { Interval } from '../../domain/quantity/interval.js';
import { exactText, type Rational } from '../../domain/quantity/rational.js';
import { baseSymbol } from '../../domain/quantity/unit.js';

export interface ValueRow {
  readonly item: number;
  readonly text: string;
  /** Points are a list of words: no column has room for two numbers. */
  readonly form: Exclude<Value['form'], 'points'>;
  readonly code: string | null;
  readonly low: string | null;
  readonly lowOpen: boolean | null;
  readonly high: string | null;
  readonly highOpen: boolean | null;
  readonly unit: string;
  readonly basis: string;
  readonly tool: string | null;
}

export function valueRows(value: Value): ValueRow[] {
  return itemsOf(value).map((item, index) => {
    const { evidence, tool } = value;
    const form = value.form === 'points' ? 'list' : value.form;
    const { text, code } = item;
    const ends = endsOf(item.interval);
    const unit = item.interval === null ? '' : baseSymbol(value.spec.dimension);
    return { item: index, text, form, code, ...ends, unit, basis: evidence.basis, tool };
  });
}

/** Values by name, such as those of a part. */
export function ownValueRows(values: Values) {
  return [...values].flatMap(([id, value]) =>
    valueRows(value).map((row) => ({ value: id, ...row })),
  );
}

function itemsOf(value: Value): readonly ListItem[] {
  switch (value.form) {
    case 'number':
    case 'range':
      return [{ text: value.text, interval: value.interval, code: null }];
    case 'code':
      return [{ text: value.text, interval: null, code: value.code }];
    case 'points':
      return value.points.map(({ text }) => ({ text, interval: null, code: text }));
    case 'list':
    case 'set':
      return value.items;
  }
}

function endsOf(interval: Interval | null) {
  if (interval === null) return { low: null, lowOpen: null, high: null, highOpen: null };
  const { low, lowOpen, high, highOpen } = interval;
  return { low: textOf(low), lowOpen, high: textOf(high), highOpen };
}

function textOf(end: Rational | null): string | null {
  return end === null ? null : exactText(end);
}

/** The columns of a parameter of a kind, or of a value of a role. */
export function specColumns(spec: ValueSpec, name: string | null) {
  const { type, unit, tool, usual } = spec;
  const ends = { usualLow: textOf(usual?.low ?? null), usualHigh: textOf(usual?.high ?? null) };
  return { name, type, unit, tool, ...ends, baseUnit: baseSymbol(spec.dimension) };
}
