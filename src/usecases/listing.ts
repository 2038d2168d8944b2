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
  input: PageInput,
): Page<Row> {
  const keyed = [...rows].map((row) => ({ row, key: keyOf(row) }));
  keyed.sort((a, b) => compareKeys(a.key, b.key));
  const { rows: page, ...rest } = pageOfSorted(keyed, ({ key }) => key, input);
  return { rows: page.map(({ row }) => row), ...rest };
}

/** The same of rows that are in the order of their keys. */
export function pageOfSorted<Row>(
  rows: readonly Row[],
  keyOf: (row: Row) => SortKey,
  { limit, after }: PageInput,
): Page<Row> {
  const start = after === null ? 0 : firstAfter(rows, keyOf, after);
  const page = rows.slice(start, start + limit);
  const last = page.at(-1);
  const isEnd = last === undefined || start + limit >= rows.length;
  return { rows: page, next: isEnd ? null : keyOf(last), total: rows.length };
}

/** Where the rows begin whose keys come after this one. */
function firstAfter<Row>(
  rows: readonly Row[],
  keyOf: (row: Row) => SortKey,
  after: readonly string[],
): number {
  let [low, high] = [0, rows.length];
  while (low < high) {
    const middle = Math.floor((low + high) / 2);
    const row = rows[middle];
    if (row !== undefined && compareKeys(keyOf(row), after) <= 0) low = middle + 1;
    else high = middle;
  }
  return low;
}

export function compareKeys(a: readonly string[], b: readonly string[]): number {
  const most = Math.max(a.length, b.length);
  for (let index = 0; index < most; index += 1) {
    const [x = '', y = ''] = [a[index], b[index]];
    if (x !== y) return x < y ? -1 : 1;
  }
  return 0;
}
