/**
 * Editions are numbered 1, 2, 3 without a hole, whoever publishes; none is ever changed or
 * deleted, not even in SQL; the same content twice is one edition; an edition costs what it
 * changes.
 */

import { getTableColumns } from 'drizzle-orm';
import { getTableConfig, type SQLiteTable } from 'drizzle-orm/sqlite-core';
import { describe, expect, test } from 'vitest';
import { ALL_ENTITY_TABLES } from '../../src/store/entity-tables.js';
import { editions, indexColumns } from '../../src/store/tables/editions.js';
import { prepareEdition } from '../../src/usecases/publish-edition.js';
import { sha256 } from '../memory-store.js';
import { connect, everything, freshPath, open, publish } from './database.js';
import { watchedLibrary } from './faulty-library.js';
import { cart, changedCart, demo, FIRST_DAY, NEXT_DAY } from './prepared.js';
import { copyOfSeed } from './some-files.js';

const first = cart();
const next = changedCart();
const numbersOf = (store: { editions(): readonly { number: number }[] }) =>
  store.editions().map(({ number }) => number);

describe('numbers', () => {
  test('follow one another, the newest first', () => {
    const store = open(freshPath());
    for (const state of [first, next, first, demo]) publish(store, state);
    expect(numbersOf(store)).toEqual([4, 3, 2, 1]);
    expect(store.latest()?.number).toBe(4);
  });

  test('have no hole where a publish failed', () => {
    let isFailing = false;
    const library = watchedLibrary((_, sql) => {
      if (isFailing && sql.startsWith('update "editions"')) throw new Error('late in the publish');
    });
    const store = open(freshPath(), 'create', library);
    publish(store, first);
    for (let times = 0; times < 3; times += 1) {
      isFailing = true;
      expect(() => publish(store, next)).toThrow('late in the publish');
      isFailing = false;
      expect(numbersOf(store)).toEqual([1]);
    }
    publish(store, next);
    expect(numbersOf(store)).toEqual([2, 1]);
  });

  test('are one row of numbers for two that publish by turns', () => {
    const path = freshPath();
    const [one, other] = [open(path), open(path)];
    const states = [first, next, demo, first, next, demo];
    for (const [index, state] of states.entries()) {
      const result = publish(index % 2 === 0 ? one : other, state);
      expect(result).toMatchObject({ isNew: true, edition: { number: index + 1 } });
    }
    expect(numbersOf(one)).toEqual([6, 5, 4, 3, 2, 1]);
    expect(one.editions()).toEqual(other.editions());
    expect(other.verify().disagreements).toEqual([]);
  });
});

describe('the same content', () => {
  test('published twice is one edition, with its first date and note', () => {
    const path = freshPath();
    const store = open(path);
    const once = publish(store, first, { note: 'first' });
    const rows = everything(path);
    const twice = publish(store, first, { publishedAt: NEXT_DAY, note: 'again' });
    expect(once).toMatchObject({ isNew: true, edition: { publishedAt: FIRST_DAY, note: 'first' } });
    expect(twice).toEqual({ ...once, isNew: false });
    expect(everything(path)).toEqual(rows);
  });

  test('by another program is one as well', () => {
    const path = freshPath();
    publish(open(path), first);
    expect(publish(open(path), first)).toMatchObject({ isNew: false, edition: { number: 1 } });
  });

  test('after something else is a new edition with the old hash: that is going back', () => {
    const store = open(freshPath());
    const heads = [first, next, first].map((state) => publish(store, state).edition);
    expect(heads.map(({ number }) => number)).toEqual([1, 2, 3]);
    expect(heads[2]?.hash).toBe(heads[0]?.hash);
    expect(heads[1]?.hash).not.toBe(heads[0]?.hash);
    expect(store.load(3).document).toEqual(store.load(1).document);
  });
});

describe('an edition costs what it changes', () => {
  const path = freshPath();
  const store = open(path);
  publish(store, first);
  publish(store, next);
  const connection = connect(path, { readonly: true });
  const rows = (sql: string) => connection.prepare(sql).raw().all();

  test('an entity that is as it was keeps its row', () => {
    const spans = 'SELECT id, from_edition, until_edition FROM parts ORDER BY id, from_edition';
    expect(rows(spans)).toEqual([
      ['box-a', 1, 2],
      ['box-a', 2, null],
      ['box-b', 1, null],
      ['box-c', 1, 2],
      ['box-d', 1, null],
      ['box-e', 2, null],
      ['motor', 1, null],
      ['plate-ab', 1, null],
      ['shaft-a', 1, null],
      ['wheel-shaft-l', 1, null],
      ['wheel-shaft-r', 1, null],
    ]);
    expect(rows('SELECT id FROM vehicles WHERE from_edition = 2')).toEqual([
      ['cart-2'],
      ['cart-3'],
    ]);
  });

  test('and all that belongs to one begins and ends with it', () => {
    for (const { table, owned } of ALL_ENTITY_TABLES) {
      const { name: entity } = getTableConfig(table);
      for (const { table: belonging, owner } of owned) {
        const { name } = getTableConfig(belonging);
        const column = getTableColumns(belonging)[owner]?.name;
        const strays = `SELECT count(*) FROM "${name}" o WHERE NOT EXISTS (
          SELECT 1 FROM "${entity}" e WHERE e.id = o."${column}"
            AND e.from_edition = o.from_edition AND e.until_edition IS o.until_edition)`;
        expect([name, ...rows(strays)]).toEqual([name, [0]]);
      }
    }
    const faces = "SELECT from_edition, until_edition FROM interfaces WHERE part = 'box-a'";
    expect(rows(faces)).toEqual([
      [1, 2],
      [2, null],
    ]);
  });

  test('on disk too', () => {
    const big = freshPath();
    const writer = open(big);
    const record = demo.content.document;
    publish(writer, demo);
    const pages = () => connect(big).pragma('page_count', { simple: true }) as number;
    const whole = pages();
    for (let times = 1; times <= 3; times += 1) {
      const facts = record.facts?.map((fact) => ({ ...fact, name: `${fact.id} ${times}` }));
      publish(writer, prepareEdition({ ...record, facts }, sha256));
    }
    expect(numbersOf(writer)).toHaveLength(4);
    expect(pages()).toBeLessThan(whole * 1.1);
  }, 120_000);
});

describe('in SQL, past the program, an edition is sealed', () => {
  const path = copyOfSeed();
  const store = open(path, 'read-write');
  publish(store, next);
  publish(store, demo);
  store.close();
  const connection = connect(path);
  const asItWas = everything(path);

  const entities = ALL_ENTITY_TABLES.map(({ table }) => table);
  const owned = ALL_ENTITY_TABLES.flatMap((tables) => tables.owned.map(({ table }) => table));
  const spanned: readonly SQLiteTable[] = [...entities, ...owned, indexColumns];
  const named = spanned.map((table) => [getTableConfig(table).name, table] as const);

  /** A statement that is refused by a trigger, and changes nothing. */
  function refused(sql: string): string {
    try {
      connection.exec(sql);
    } catch (error) {
      expect(error).toMatchObject({ code: 'SQLITE_CONSTRAINT_TRIGGER' });
      return (error as Error).message;
    }
    throw new Error(`it was not refused: ${sql}`);
  }

  test.each(named)('%s: no row is changed, in any column', (name, table) => {
    // The same value again: only the seal itself can be what refuses it.
    expect(connection.prepare(`SELECT count(*) FROM "${name}"`).pluck().get()).not.toBe(0);
    for (const column of Object.values(getTableColumns(table))) {
      if (column.generated !== undefined || column.name === 'until_edition') continue;
      const sql = `UPDATE "${name}" SET "${column.name}" = "${column.name}"`;
      expect(refused(sql)).toBe(`${name}: a row never changes`);
    }
    const ends = `UPDATE "${name}" SET until_edition = `;
    for (const end of ['until_edition', 'NULL', '3', '4', 'from_edition + 1']) {
      expect(refused(ends + end)).toContain(`${name}: a row ends once`);
    }
  });

  test.each(named)('%s: no row is deleted', (name) => {
    expect(refused(`DELETE FROM "${name}"`)).toBe(`${name}: a row is never deleted`);
  });

  test.each(named)('%s: no row is added, or put in the place of another', (name, table) => {
    const columns = Object.values(getTableColumns(table))
      .filter((column) => column.generated === undefined)
      .map((column) => `"${column.name}"`);
    const list = columns.join(', ');
    const brought = columns.map((column) => (column === '"from_edition"' ? '3' : column));
    for (const verb of ['INSERT', 'INSERT OR REPLACE', 'INSERT OR IGNORE', 'REPLACE']) {
      for (const cells of [list, brought.join(', ')]) {
        const sql = `${verb} INTO "${name}" (${list}) SELECT ${cells} FROM "${name}" LIMIT 1`;
        expect(refused(sql)).toContain(`${name}: a row is added only to the edition`);
      }
    }
  });

  test.each(Object.values(getTableColumns(editions)).map(({ name }) => name))(
    'editions: %s is not changed',
    (name) => {
      refused(`UPDATE editions SET "${name}" = "${name}"`);
    },
  );

  test('editions: none is deleted, replaced, numbered out of turn, or opened again', () => {
    const row = (number: string, sealed: number) =>
      `SELECT ${number}, hash, published_at, note, engine, counts, ${sealed} FROM editions LIMIT 1`;
    expect(refused('DELETE FROM editions')).toBe('an edition is never deleted');
    expect(refused('UPDATE editions SET sealed = 0')).toBe('an edition is sealed once');
    for (const number of ['0', '-1', '1', '3', '5', 'NULL']) {
      const said = refused(`INSERT OR REPLACE INTO editions ${row(number, 0)}`);
      expect(said).toBe('editions are numbered one after the other');
    }
    refused(`INSERT INTO editions ${row('4', 1)}`);
    connection.exec('BEGIN');
    connection.exec(`INSERT INTO editions ${row('4', 0)}`);
    refused(`INSERT INTO editions ${row('5', 0)}`);
    connection.exec('ROLLBACK');
  });

  test('and all of it is as it was', () => {
    expect(everything(path)).toEqual(asItWas);
  });
});
