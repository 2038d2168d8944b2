/**
 * A publish is one transaction: whatever fails in it, and wherever, the store is as it was, says
 * so, and goes on. A fault is put before every single statement of a publish; the disk is filled
 * at every page; the commit itself is refused.
 */

import Database from 'better-sqlite3';
import { describe, expect, test } from 'vitest';
import type { SqliteLibrary } from '../../src/store/connection.js';
import { BUNDLED_LIBRARY } from '../../src/store/connection.js';
import { StoreFault } from '../../src/usecases/ports.js';
import { connect, everything, freshPath, open, publish } from './database.js';
import { ioError, watchedLibrary } from './faulty-library.js';
import { cart, changedCart, demo, example, NEXT_DAY } from './prepared.js';
import { copyOfSeed, seed } from './some-files.js';

const first = cart();
const next = changedCart();

const before = everything(seed);

/** What is in a database after the next edition was published without any fault. */
function afterNext(): Record<string, unknown[]> {
  const path = copyOfSeed();
  const store = open(path, 'read-write');
  publish(store, next, { publishedAt: NEXT_DAY });
  store.close();
  return everything(path);
}

const after = afterNext();

/** The statements that a publish of the next edition runs. */
function statementsOf(): string[] {
  const said: string[] = [];
  let isOn = false;
  const library = watchedLibrary((_, sql) => {
    if (isOn) said.push(sql);
  });
  const store = open(copyOfSeed(), 'read-write', library);
  isOn = true;
  publish(store, next, { publishedAt: NEXT_DAY });
  store.close();
  return said;
}

/** Throws before the statement number `wanted` of those that run after `start()`. */
function failingAt(wanted: number, error: () => Error) {
  let number = 0;
  let isOn = false;
  const library: SqliteLibrary = watchedLibrary(() => {
    if (!isOn) return;
    number += 1;
    if (number === wanted) throw error();
  });
  return {
    library,
    start: () => {
      isOn = true;
    },
  };
}

const statements = statementsOf();

test('a publish runs many statements, of every sort', () => {
  expect(statements.length).toBeGreaterThan(50);
  const starts = new Set(statements.map((sql) => /^\w+ (?:into |from )?"\w+"/.exec(sql)?.[0]));
  const expected = [
    'insert into "editions"',
    'insert into "parts"',
    'insert into "interface_parameters"',
    'insert into "statement_vehicles"',
    'insert into "index_columns"',
    'insert into "offers"',
    'delete from "offers"',
    'update "offers_state"',
    'update "parts"',
    'update "part_roles"',
    'update "editions"',
  ];
  expect([...starts]).toEqual(expect.arrayContaining(expected));
  expect(after).not.toEqual(before);
});

describe('a fault before a statement leaves the store as it was', () => {
  test.each([
    ['of the disk', ioError, StoreFault],
    ['of the program', () => new Error('a mistake of the program'), Error],
  ])('a fault %s', (_, error, type) => {
    const path = copyOfSeed();
    for (const [index, sql] of statements.entries()) {
      const { library, start } = failingAt(index + 1, error);
      const store = open(path, 'read-write', library);
      start();
      const run = () => publish(store, next, { publishedAt: NEXT_DAY });
      expect(run, `${index + 1}: ${sql}`).toThrow(type);
      // The same program goes on, and so does any other.
      expect(store.latest()?.number).toBe(1);
      expect(store.offersHead().number).toBe(1);
      expect(everything(path), `${index + 1}: ${sql}`).toEqual(before);
      store.close();
    }
    expect(open(path, 'read-only').verify().disagreements).toEqual([]);
  });

  test('and the same store can publish the same document afterwards', () => {
    for (const wanted of [1, Math.floor(statements.length / 2), statements.length]) {
      const path = copyOfSeed();
      const { library, start } = failingAt(wanted, ioError);
      const store = open(path, 'read-write', library);
      start();
      const run = () => publish(store, next, { publishedAt: NEXT_DAY });
      expect(run).toThrow(StoreFault);
      expect(run()).toMatchObject({ isNew: true, edition: { number: 2 }, offers: { number: 2 } });
      store.close();
      expect(everything(path)).toEqual(after);
    }
  });

  test('also where it is the first publish', () => {
    const counted: string[] = [];
    const empty = open(
      freshPath(),
      'create',
      watchedLibrary((_, sql) => counted.push(sql)),
    );
    const opening = counted.length;
    publish(empty, first);
    const count = counted.length - opening;
    expect(count).toBeGreaterThan(50);
    const path = freshPath();
    open(path).close();
    const nothing = everything(path);
    for (let wanted = 1; wanted <= count; wanted += 1) {
      const { library, start } = failingAt(wanted, ioError);
      const store = open(path, 'read-write', library);
      start();
      expect(() => publish(store, first), `${wanted}`).toThrow(StoreFault);
      expect(store.latest()).toBeNull();
      store.close();
      expect(everything(path), `${wanted}`).toEqual(nothing);
    }
  });
});

test('a disk that is full at any page leaves the store as it was', () => {
  const path = copyOfSeed();
  const upTo = (most: number): SqliteLibrary => ({
    ...BUNDLED_LIBRARY,
    open: (file, options) => {
      const connection = new Database(file, options);
      connection.pragma(`max_page_count = ${most}`);
      return connection;
    },
  });
  const remedy = 'make room and try again; nothing of this change was stored';
  const fewest = connect(path).pragma('page_count', { simple: true }) as number;
  let most = fewest;
  for (let isFull = true; isFull; most += 1) {
    const store = open(path, 'read-write', upTo(most));
    try {
      publish(store, example);
      isFull = false;
    } catch (error) {
      expect(error).toMatchObject({ message: `the disk of ${path} is full`, remedy });
      expect(store.latest()?.number).toBe(1);
    }
    store.close();
    if (isFull) expect(everything(path)).toEqual(before);
  }
  expect(most - fewest).toBeGreaterThan(5);
  expect(open(path, 'read-only').load(2).document).toEqual(example.content.document);
});

test('a commit that is refused leaves the store as it was', () => {
  const path = copyOfSeed();
  const spoilt = connect(path);
  // Deferred: SQLite finds it only when the transaction ends.
  spoilt.exec(`
    CREATE TABLE spoil (number INTEGER REFERENCES editions (number) DEFERRABLE INITIALLY DEFERRED);
    CREATE TRIGGER spoil AFTER INSERT ON editions BEGIN INSERT INTO spoil VALUES (999); END;
  `);
  const asItWas = everything(path);
  const store = open(path, 'read-write');
  const run = () => publish(store, next, { publishedAt: NEXT_DAY });
  expect(run).toThrow(`${path} refuses a row: FOREIGN KEY constraint failed`);
  expect(store.latest()?.number).toBe(1);
  expect(everything(path)).toEqual(asItWas);
  spoilt.exec('DROP TRIGGER spoil');
  expect(run()).toMatchObject({ isNew: true, edition: { number: 2 } });
});

test.each([
  [
    'is not whole',
    `CREATE TRIGGER meddle BEFORE UPDATE OF until_edition ON parts WHEN OLD.id = 'box-c'
     BEGIN SELECT RAISE(IGNORE); END`,
    next,
    'edition 2 has 10 parts, not 9',
  ],
  [
    'does not agree with its hash',
    'SELECT 1',
    { ...next, content: { ...next.content, hash: demo.content.hash } },
    'edition 2 does not agree with its hash',
  ],
])('what is written is read back, and not kept where it %s', (_, meddling, prepared, fault) => {
  const path = copyOfSeed();
  connect(path).exec(meddling);
  const asItWas = everything(path);
  const store = open(path, 'read-write');
  expect(() => publish(store, prepared, { publishedAt: NEXT_DAY })).toThrow(fault);
  expect(store.latest()?.number).toBe(1);
  expect(everything(path)).toEqual(asItWas);
});

test('another program sees the edition before until the new one is whole', () => {
  const path = copyOfSeed();
  const reader = open(path, 'read-only');
  const seen = new Set<number | undefined>();
  let isOn = false;
  const library = watchedLibrary(() => {
    if (!isOn) return;
    seen.add(reader.latest()?.number);
    expect(reader.offersHead().number).toBe(1);
  });
  const store = open(path, 'read-write', library);
  isOn = true;
  publish(store, next, { publishedAt: NEXT_DAY });
  isOn = false;
  expect([...seen]).toEqual([1]);
  expect(reader.latest()?.number).toBe(2);
  expect(reader.offersHead().number).toBe(2);
  expect(reader.load(1).document).toEqual(first.content.document);
});
