/**
 * Pages of a list. The order is that of the entries' keys, text by text in the order of code units,
 * so a page goes on after a key whether or not that entry is still there.
 */

import type { AnswerHead } from './answer.js';
import type { CommonInput } from './question.js';

export type SortKey = readonly [string, ...string[]];

export interface PageInput {
  readonly limit: number;
  /** The key of the last entry that was given; null for the first page. */
  readonly after: readonly string[] | null;
}

export interface ListInput extends CommonInput, PageInput {}

export interface Page<Row> {
  readonly rows: readonly Row[];
  /** The key of the last of them; null where nothing comes after it. */
  readonly next: SortKey | null;
  readonly total: number;
}

export interface ListAnswer<Entry> extends AnswerHead {
  items: Entry[];
  /** The key after which the list goes on; a door makes a cursor of it. */
  next: SortKey | null;
  counts: { total: number };
}

export function pageOf<Row>(
  rows: Iterable<Row>,
  keyOf: (row: Row) => SortKey,
  { limit, after }: PageInput,
): Page<Row> {
  const keyed = [...rows].map((row) => ({ row, key: keyOf(row) }));
  keyed.sort((a, b) => compareKeys(a.key, b.key));
  const rest = after === null ? keyed : keyed.filter(({ key }) => compareKeys(key, after) > 0);
  const page = rest.slice(0, limit);
  return {
    rows: page.map(({ row }) => row),
    next: rest.length > limit ? (page.at(-1)?.key ?? null) : null,
    total: keyed.length,
  };
}

export function compareKeys(a: readonly string[], b: readonly string[]): number {
  const most = Math.max(a.length, b.length);
  for (let index = 0; index < most; index += 1) {
    const [x = '', y = ''] = [a[index], b[index]];
    if (x !== y) return x < y ? -1 : 1;
  }
  return 0;
}
