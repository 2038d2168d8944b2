/**
 * What is damaged is never served: a page that is lost, a bit that has turned, a cell that
 * somebody altered past the seals. A load gives what was published or is refused, and a
 * verification finds whatever differs.
 *
 * Left out: what nothing else in the file bears out. That is an edition's date, note and program,
 * how many offers there are and how often they changed, and an index column that is gone, which
 * the program then makes itself.
 */

import { copyFileSync, readFileSync } from 'node:fs';
import { getTableColumns } from 'drizzle-orm';
import { getTableConfig, type SQLiteTable } from 'drizzle-orm/sqlite-core';
import { describe, expect, test } from 'vitest';
import { ALL_ENTITY_TABLES } from '../../src/store/entity-tables.js';
import type { OpenedStore } from '../../src/store/sqlite.js';
import { openStore } from '../../src/store/sqlite.js';
import { editions, indexColumns, offers } from '../../src/store/tables/editions.js';
import { StoreFault } from '../../src/usecases/ports.js';
import { connect, everything, freshPath, open, publish } from './database.js';
import { changedCart } from './prepared.js';
import { copyOfSeed, fileOf, refusalOf } from './some-files.js';

const next = changedCart();

/** A file with two editions, with nothing left in its log. */
function published(): string {
  const path = copyOfSeed();
  const store = open(path, 'read-write');
  publish(store, next);
  store.close();
  return path;
}

const whole = published();
const bytes = readFileSync(whole);
const PAGE = bytes.readUInt16BE(16);

interface Found {
  readonly documents: readonly unknown[];
  readonly hashes: readonly string[];
  readonly offers: unknown;
}

function readAll(store: OpenedStore): Found {
  const loaded = [1, 2].map((number) => store.load(number));
  return {
    documents: loaded.map(({ document }) => document),
    hashes: loaded.map(({ head }) => head.hash),
    offers: store.offers().records,
  };
}

const sound = readAll(open(whole, 'read-only'));

/** What a damaged file gives, and what a verification says of it; a refusal where it opens not. */
function ask(path: string): { read: Found | StoreFault; said: readonly string[] } {
  const faultOr = <Result>(run: () => Result): Result | StoreFault => {
    try {
      return run();
    } catch (error) {
      if (error instanceof StoreFault) return error;
      throw error;
    }
  };
  const store = faultOr(() => openStore(path, { mode: 'read-only' }));
  if (store instanceof StoreFault) return { read: store, said: [store.message] };
  try {
    const read = faultOr(() => readAll(store));
    return { read, said: store.verify().disagreements };
  } finally {
    store.close();
  }
}

/** The rows that a verification answers for. */
function answeredFor(path: string): unknown {
  const { editions: _, offers_state: __, offers: ___, ...rows } = everything(path);
  return rows;
}

test('a sound file is sound', () => {
  expect(ask(whole)).toEqual({ read: sound, said: [] });
  expect(bytes.length / PAGE).toBeGreaterThan(50);
});

test.each([
  ['zeros', 0x00],
  ['ones', 0xff],
])('a page of %s is refused or does not matter, and is found', (_, filling) => {
  let refused = 0;
  for (let page = 0; page < bytes.length / PAGE; page += 1) {
    const spoilt = Buffer.from(bytes);
    spoilt.fill(filling, page * PAGE, (page + 1) * PAGE);
    // An empty first page is no header; all others belong to a table or an index.
    const { read, said } = ask(fileOf(spoilt));
    if (read instanceof StoreFault) refused += 1;
    else expect(read, `page ${page + 1}`).toEqual(sound);
    expect(said.length, `page ${page + 1}`).toBeGreaterThan(0);
  }
  expect(refused).toBeGreaterThan(20);
});

test('a bit that has turned is refused or does not matter, and is found where it does', () => {
  const healthy = answeredFor(whole);
  let refused = 0;
  let found = 0;
  const count = 300;
  for (let index = 0; index < count; index += 1) {
    // Spread over the file, and over the eight bits of a byte.
    const at = 100 + Math.floor(((index + 0.5) * (bytes.length - 100)) / count) + (index % 97);
    const spoilt = Buffer.from(bytes);
    spoilt.writeUInt8(spoilt.readUInt8(at) ^ (1 << (index % 8)), at);
    const path = fileOf(spoilt);
    const { read, said } = ask(path);
    if (read instanceof StoreFault) refused += 1;
    else expect(read, `byte ${at}`).toEqual(sound);
    if (said.length > 0) found += 1;
    else expect(answeredFor(path), `byte ${at}`).toEqual(healthy);
  }
  expect(refused).toBeGreaterThan(10);
  expect(found).toBeGreaterThan(refused);
  // Three hundred files are read whole: most of half a minute where nothing else runs.
}, 120_000);

describe('a cell that was altered past the seals is found', () => {
  const entities = ALL_ENTITY_TABLES.map(({ table }) => table);
  const owned = ALL_ENTITY_TABLES.flatMap((tables) => tables.owned.map(({ table }) => table));
  const tables: readonly SQLiteTable[] = [...entities, ...owned, indexColumns, editions, offers];
  const notBorneOut: Readonly<Record<string, readonly string[]>> = {
    editions: ['published_at', 'note', 'engine'],
    offers: ['from_offers'],
    // Under another name it is not used: the program makes its own.
    index_columns: ['name'],
  };

  /** A copy without a single seal. */
  function unsealed(): string {
    const path = freshPath();
    copyFileSync(whole, path);
    const connection = connect(path);
    const names = connection
      .prepare("SELECT name FROM sqlite_schema WHERE type = 'trigger'")
      .pluck()
      .all() as string[];
    expect(names.length).toBeGreaterThan(90);
    for (const name of names) connection.exec(`DROP TRIGGER "${name}"`);
    connection.close();
    return path;
  }

  const unsealedFile = unsealed();
  const missing = ask(unsealedFile).said;

  test('and so is every seal that is not there', () => {
    expect(missing).toHaveLength(new Set(missing).size);
    expect(missing.length).toBeGreaterThan(90);
    expect(missing).toContain('parts_changed is not as this program made it');
  });

  const cells = tables.flatMap((table) => {
    const { name } = getTableConfig(table);
    return Object.values(getTableColumns(table))
      .filter((column) => column.generated === undefined)
      .filter((column) => !(notBorneOut[name] ?? []).includes(column.name))
      .map((column) => [name, column.name, column.getSQLType()] as const);
  });

  const filled = everything(whole);

  const isFilled = (table: string) => (filled[table] ?? []).length > 0;

  test.each(cells.filter(([table]) => isFilled(table)))('%s.%s', (table, column, type) => {
    const path = freshPath();
    copyFileSync(unsealedFile, path);
    const connection = connect(path);
    connection.pragma('ignore_check_constraints = ON');
    connection.pragma('foreign_keys = OFF');
    const other = {
      text: `coalesce("${column}" || 'x', 'x')`,
      integer: `coalesce("${column}" + 7, 7)`,
      blob: `CAST("${column}" || x'00' AS BLOB)`,
    }[type];
    const changed = connection.prepare(`UPDATE "${table}" SET "${column}" = ${other}`).run();
    expect(changed.changes).toBeGreaterThan(0);
    connection.close();
    const news = ask(path).said.filter((line) => !missing.includes(line));
    expect(news).not.toEqual([]);
  });

  const hashed = [...entities, ...owned, editions].map((table) => getTableConfig(table).name);

  test.each(hashed.filter(isFilled))('%s: a row that is gone', (table) => {
    const path = freshPath();
    copyFileSync(unsealedFile, path);
    const connection = connect(path);
    connection.pragma('foreign_keys = OFF');
    connection.exec(`DELETE FROM "${table}"`);
    connection.close();
    expect(ask(path).said.filter((line) => !missing.includes(line))).not.toEqual([]);
  });
});

test('an edition that was spoilt is refused, the others are not', () => {
  const path = freshPath();
  copyFileSync(whole, path);
  const connection = connect(path);
  connection.exec('DROP TRIGGER parts_changed');
  connection.exec(`UPDATE parts SET record = replace(record, 'box e', 'box f') WHERE id = 'box-e'`);
  const store = open(path, 'read-only');
  expect(store.load(1).document).toEqual(sound.documents[0]);
  const fault = refusalOf(() => store.load(2));
  expect(fault.message).toBe('edition 2 does not agree with its hash');
  expect(fault.remedy).toBe('restore the database from a backup');
});

test('an index of two editions at once is refused', () => {
  const path = freshPath();
  copyFileSync(whole, path);
  const connection = connect(path);
  connection.exec('DROP TRIGGER index_columns_ended');
  connection.pragma('foreign_keys = OFF');
  // The index of edition 1 that ends with edition 3, by one bit.
  const late = 'UPDATE index_columns SET until_edition = 3 WHERE until_edition = 2';
  expect(connection.prepare(late).run().changes).toBeGreaterThan(0);
  const store = open(path, 'read-only');
  expect(refusalOf(() => store.load(2)).message).toBe('edition 2 has an index column twice');
  expect(store.load(1).columns.length).toBeGreaterThan(0);
});
