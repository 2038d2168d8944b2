/**
 * The migrations make the tables that the program declares, and nothing else; each table keeps to
 * its types, and is sealed column by column. A database is brought up to date whole, or not at all.
 */

import { readFileSync } from 'node:fs';
import Database from 'better-sqlite3';
import { generateSQLiteDrizzleJson, generateSQLiteMigration } from 'drizzle-kit/api';
import { afterAll, describe, expect, test } from 'vitest';
import {
  APPLICATION_ID,
  alteredObjects,
  migrate,
  schemaVersion,
  shippedMigrations,
} from '../../src/store/migrations.js';
import * as editions from '../../src/store/tables/editions.js';
import * as keys from '../../src/store/tables/keys.js';
import * as layouts from '../../src/store/tables/layouts.js';
import * as parts from '../../src/store/tables/parts.js';
import * as trade from '../../src/store/tables/trade.js';
import * as vehicles from '../../src/store/tables/vehicles.js';
import * as vocabulary from '../../src/store/tables/vocabulary.js';

const folder = new URL('../../db/migrations/', import.meta.url);
const read = (name: string): string => readFileSync(new URL(name, folder), 'utf8');
const tables = { ...editions, ...keys, ...layouts, ...parts, ...trade, ...vehicles, ...vocabulary };

/** What the shipped migrations make. */
const made = migrated(shippedMigrations());
afterAll(() => made.close());

function migrated(migrations: readonly string[]): Database.Database {
  const connection = new Database(':memory:');
  migrate(connection, migrations);
  return connection;
}

/** SQL of each table and index by its name, as far as drizzle can say it. */
function declared(connection: Database.Database): Map<string, string> {
  const asked =
    "SELECT name, sql FROM sqlite_schema WHERE type IN ('table', 'index') AND sql IS NOT NULL";
  const rows = connection.prepare(asked).raw().all() as [string, string][];
  return new Map(rows.map(([name, sql]) => [name, asDrizzleSays(sql)]));
}

/**
 * Without what drizzle cannot write; in one line, with one sort of quotes, since SQLite writes a
 * column that a migration adds or renames in its own way.
 */
function asDrizzleSays(sql: string): string {
  const bare = sql.replace(/\) STRICT(, WITHOUT ROWID)?$/, ')');
  return bare.replace(/\s+/g, ' ').replaceAll('`', '"');
}

function names(type: 'table' | 'trigger'): string[] {
  const asked = 'SELECT name FROM sqlite_schema WHERE type = ? ORDER BY name';
  return made.prepare(asked).pluck().all(type) as string[];
}

describe('the migrations', () => {
  test('make the tables and indexes that are declared, word for word', async () => {
    const empty = await generateSQLiteDrizzleJson({});
    const today = await generateSQLiteDrizzleJson(tables);
    const wanted = migrated(await generateSQLiteMigration(empty, today));
    expect(declared(wanted).size).toBeGreaterThan(20);
    expect(declared(made)).toEqual(declared(wanted));
    wanted.close();
  });

  test('have a last snapshot from which drizzle would change nothing', async () => {
    const journal = JSON.parse(read('meta/_journal.json')) as { entries: { idx: number }[] };
    const last = String(Math.max(...journal.entries.map(({ idx }) => idx))).padStart(4, '0');
    const snapshot = JSON.parse(read(`meta/${last}_snapshot.json`));
    const today = await generateSQLiteDrizzleJson(tables);
    expect(await generateSQLiteMigration(snapshot, today)).toEqual([]);
    // And it would, were a table not declared any more.
    const less = await generateSQLiteDrizzleJson({ ...tables, offers: undefined });
    expect(await generateSQLiteMigration(snapshot, less)).toEqual(['DROP TABLE `offers`;']);
  });

  test('make every table strict', () => {
    const strict = made.pragma('table_list') as { name: string; strict: number }[];
    const ours = strict.filter(({ name }) => names('table').includes(name));
    expect(ours.length).toBe(names('table').length);
    expect(ours.filter(({ strict: is }) => is !== 1)).toEqual([]);
  });

  test('delete nothing by way of a key', () => {
    const keys = names('table').flatMap((table) => {
      return made.pragma(`foreign_key_list(${table})`) as { on_delete: string }[];
    });
    expect(keys.length).toBeGreaterThan(20);
    expect(keys.filter(({ on_delete }) => on_delete !== 'NO ACTION')).toEqual([]);
  });
});

describe('the seals', () => {
  // Keys are of no edition; what holds of them, `keys.test.ts` says.
  const open = ['keys', 'offers', 'offers_state'];
  const sealed = names('table').filter((table) => !open.includes(table));
  const sqlOf = (name: string) => {
    const asked = "SELECT sql FROM sqlite_schema WHERE type = 'trigger' AND name = ?";
    return made.prepare(asked).pluck().get(name) as string | undefined;
  };

  test.each(sealed)('of %s refuse to change any column of a row', (table) => {
    const columns = made.pragma(`table_xinfo(${table})`) as { name: string; hidden: number }[];
    const own = new Set(columns.filter(({ hidden }) => hidden === 0).map(({ name }) => name));
    const [, listed = ''] = /BEFORE UPDATE OF (.+) ON/.exec(sqlOf(`${table}_changed`) ?? '') ?? [];
    const guarded = [...listed.matchAll(/`(\w+)`/g)].map(([, column]) => column);
    const ends = table === 'editions' ? 'sealed' : 'until_edition';
    expect(new Set([...guarded, ends])).toEqual(own);
    const ending = sqlOf(`${table}_${table === 'editions' ? 'sealed' : 'ended'}`);
    expect(ending).toContain(`BEFORE UPDATE OF \`${ends}\` ON \`${table}\``);
  });

  test.each(sealed)('of %s look at each row that comes or goes', (table) => {
    expect(sqlOf(`${table}_added`)).toContain(`BEFORE INSERT ON \`${table}\``);
    const deleting = sqlOf(`${table}_deleted`);
    expect(deleting).toContain(`BEFORE DELETE ON \`${table}\`\nBEGIN`);
  });
});

describe('a database that is brought up to date', () => {
  const [first = '', ...others] = shippedMigrations();

  test('is marked as ours, and counts its migrations', () => {
    expect(made.pragma('application_id', { simple: true })).toBe(APPLICATION_ID);
    expect(schemaVersion(made)).toBe(1 + others.length);
    expect(alteredObjects(made)).toEqual([]);
  });

  test('runs only what has not run', () => {
    const older = migrated([first]);
    expect(schemaVersion(older)).toBe(1);
    expect(alteredObjects(older).length).toBeGreaterThan(20);
    migrate(older, [first, ...others]);
    expect(schemaVersion(older)).toBe(1 + others.length);
    expect(alteredObjects(older)).toEqual([]);
    migrate(older, [first, ...others]);
    older.close();
  });

  test('stays as it was where one of them fails', () => {
    const older = migrated([first]);
    const before = declared(older);
    const broken = ['CREATE TABLE extra (id text) STRICT;', 'CREATE TABLE editions (id text);'];
    expect(() => migrate(older, [first, ...broken])).toThrow('already exists');
    expect(declared(older)).toEqual(before);
    expect(schemaVersion(older)).toBe(1);
    expect(older.pragma('foreign_keys', { simple: true })).toBe(1);
    older.close();
  });

  test('keeps the rows that point to a table which is rebuilt', () => {
    const pair = 'CREATE TABLE a (id integer PRIMARY KEY); INSERT INTO a VALUES (1);';
    const child = 'CREATE TABLE b (a integer REFERENCES a ON DELETE CASCADE);';
    const older = migrated([`${pair} ${child} INSERT INTO b VALUES (1);`]);
    const rebuilt =
      'CREATE TABLE c (id integer PRIMARY KEY); INSERT INTO c SELECT id FROM a;' +
      'DROP TABLE a; ALTER TABLE c RENAME TO a;';
    migrate(older, ['', rebuilt]);
    expect(older.prepare('SELECT a FROM b').pluck().all()).toEqual([1]);
    older.close();
  });

  test('refuses a migration that would leave rows pointing to nothing', () => {
    const older = migrated([
      'CREATE TABLE a (id integer PRIMARY KEY); CREATE TABLE b (a integer REFERENCES a);' +
        'INSERT INTO a VALUES (1); INSERT INTO b VALUES (1);',
    ]);
    expect(() => migrate(older, ['', 'DELETE FROM a;'])).toThrow('of b pointing to nothing');
    expect(older.prepare('SELECT count(*) FROM a').pluck().get()).toBe(1);
    expect(schemaVersion(older)).toBe(1);
    older.close();
  });
});
