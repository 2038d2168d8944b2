/**
 * The page of the database is true: each query on it gives what stands below it, each table is
 * listed once, each link leads somewhere.
 */

import { existsSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { APPLICATION_ID } from '../../src/store/migrations.js';
import { connect, freshPath, open, publish } from './database.js';
import { demo } from './prepared.js';

const url = new URL('../../db/README.md', import.meta.url);
const page = readFileSync(url, 'utf8');

const path = freshPath();
const store = open(path);
publish(store, demo);
store.close();
const connection = connect(path, { readonly: true });

type Cell = string | number | null;

/** Rows as `sqlite3 -header -column` prints them, without the blanks at the end of a line. */
function printed(columns: readonly string[], rows: readonly (readonly Cell[])[]): string {
  const lines = [
    columns,
    ...rows.map((row) => row.map((cell) => (cell === null ? '' : String(cell)))),
  ];
  const widths = columns.map((_, index) => {
    return Math.max(...lines.map((line) => Array.from(line[index] ?? '').length));
  });
  const [head = [], ...body] = lines;
  return [head, widths.map((width) => '-'.repeat(width)), ...body]
    .map((line) => line.map((cell, index) => cell.padEnd(widths[index] ?? 0)).join('  '))
    .map((line) => line.trimEnd())
    .join('\n');
}

const asked = [...page.matchAll(/^(.+\?)\n\n```sql\n([^`]+)```\n\n```text\n([^`]+)\n```/gm)];

describe('the page of the database', () => {
  test('has queries that people ask, each with its answer', () => {
    expect(asked.length).toBeGreaterThanOrEqual(5);
    expect(page.match(/```sql/g)).toHaveLength(asked.length);
  });

  test.each(asked.map(([, question = '', sql = '', answer = '']) => [question, sql, answer]))(
    '%s',
    (_, sql, answer) => {
      const query = connection.prepare(sql).raw();
      const columns = query.columns().map(({ name }) => name);
      const rows = query.all() as Cell[][];
      expect(rows.length).toBeGreaterThan(0);
      expect(printed(columns, rows)).toBe(answer);
    },
  );

  test('lists each table, and no other', () => {
    const named = "SELECT name FROM sqlite_schema WHERE type = 'table' ORDER BY name";
    const listed = [...page.matchAll(/^\| `(\w+)` \| \S/gm)].map(([, table]) => table);
    const tables = connection.prepare(named).pluck().all();
    expect([tables.length, new Set(listed)]).toEqual([listed.length, new Set(tables)]);
  });

  test('names the mark in the header of each file', () => {
    const mark = connection.pragma('application_id', { simple: true });
    expect(mark).toBe(APPLICATION_ID);
    expect(page).toContain(`0x${APPLICATION_ID.toString(16)}`);
  });

  test.each([...page.matchAll(/\]\((?!https:)([^)]+)\)/g)].map(([, link = '']) => link))(
    'links to %s',
    (link) => {
      expect(existsSync(new URL(link, url))).toBe(true);
    },
  );

  test.each([...page.matchAll(/`((?:src|tests)\/[^`]+)`/g)].map(([, named = '']) => named))(
    'names %s, which is there',
    (named) => {
      expect(existsSync(new URL(`../${named}`, url))).toBe(true);
    },
  );
});
