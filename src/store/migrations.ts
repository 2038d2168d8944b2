/**
 * Brings the schema of a database up to this program's. `PRAGMA user_version` counts the
 * migrations that have run.
 *
 * Foreign keys are off while they run: a table that is rebuilt would else take the rows with it
 * that point to it, and SQLite ignores the pragma inside a transaction. All keys are checked
 * before the transaction ends. Left out: going back; an older program refuses a newer schema.
 */

import { existsSync, readFileSync } from 'node:fs';
import Database from 'better-sqlite3';
import { StoreFault } from '../usecases/ports.js';

/** "FYNG" in ASCII, in the header of each file that is ours. */
export const APPLICATION_ID = 0x46594e47;

const FOLDER = new URL('../../db/migrations/', import.meta.url);

interface Journal {
  readonly entries: readonly { readonly idx: number; readonly tag: string }[];
}

/** The SQL of each migration that comes with the program, in order. */
export function shippedMigrations(): readonly string[] {
  const journal = new URL('meta/_journal.json', FOLDER);
  if (!existsSync(journal)) {
    throw new StoreFault(
      'the migrations of the database do not lie beside the program',
      'install the program again, with its folder db/',
    );
  }
  const { entries } = JSON.parse(readFileSync(journal, 'utf8')) as Journal;
  return entries
    .toSorted((a, b) => a.idx - b.idx)
    .map(({ tag }) => readFileSync(new URL(`${tag}.sql`, FOLDER), 'utf8'));
}

export function schemaVersion(connection: Database.Database): number {
  return connection.pragma('user_version', { simple: true }) as number;
}

/**
 * The tables, indexes and triggers of ours that are not as the migrations make them. What somebody
 * has added, such as a view of their own, is theirs.
 */
export function alteredObjects(connection: Database.Database): string[] {
  const found = new Map(schemaOf(connection));
  const fresh = new Database(':memory:');
  try {
    migrate(fresh, shippedMigrations());
    const ours = schemaOf(fresh);
    return ours.filter(([name, sql]) => found.get(name) !== sql).map(([name]) => name);
  } finally {
    fresh.close();
  }
}

/** Name and SQL of everything but SQLite's own. */
function schemaOf(connection: Database.Database): [string, string][] {
  const named = "SELECT name, sql FROM sqlite_schema WHERE name NOT LIKE 'sqlite\\_%' ESCAPE '\\'";
  return connection.prepare(named).raw().all() as [string, string][];
}

/** Runs the migrations that have not run: all of them, or none. Foreign keys are on afterwards. */
export function migrate(connection: Database.Database, migrations: readonly string[]): void {
  connection.pragma('foreign_keys = OFF');
  try {
    connection.transaction(runMissing).immediate(connection, migrations);
  } finally {
    connection.pragma('foreign_keys = ON');
  }
}

function runMissing(connection: Database.Database, migrations: readonly string[]): void {
  // Read in the transaction: another program may have been quicker.
  const done = schemaVersion(connection);
  if (done >= migrations.length) return;
  for (const migration of migrations.slice(done)) connection.exec(migration);
  const broken = connection.pragma('foreign_key_check') as readonly { readonly table: string }[];
  const [first] = broken;
  if (first !== undefined) {
    throw new StoreFault(
      `the migration would leave ${broken.length} rows of ${first.table} pointing to nothing`,
      'the database is as it was: restore it from a backup, or keep the older program',
    );
  }
  connection.pragma(`application_id = ${APPLICATION_ID}`);
  connection.pragma(`user_version = ${migrations.length}`);
}
