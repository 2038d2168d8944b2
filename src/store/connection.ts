/**
 * Opens a database file, or says in one line why not: another program's file, a newer schema, a
 * damaged file, an SQLite that loses data.
 *
 * Durable by WAL with `synchronous=FULL`: what was acknowledged survives a power cut
 * (sqlite.org/wal.html). Left out: SQLite's URI names, and files on network disks, where WAL
 * does not work.
 */

import { existsSync, statSync } from 'node:fs';
import { dirname, resolve } from 'node:path';
import Database from 'better-sqlite3';
import { StoreFault } from '../usecases/ports.js';
import { APPLICATION_ID, migrate, schemaVersion, shippedMigrations } from './migrations.js';
import { withStoreFaults } from './store-fault.js';

/** `create` makes the file where there is none; `read-only` changes nothing in it. */
export type OpenMode = 'read-write' | 'read-only' | 'create';

const IN_MEMORY = ':memory:';

/** The binding, and what it says of itself; tests put another in its place. */
export interface SqliteLibrary {
  open(path: string, options: Database.Options): Database.Database;
  version(): string;
}

export const BUNDLED_LIBRARY: SqliteLibrary = {
  open: (path, options) => new Database(path, options),
  version: () => {
    const connection = new Database(IN_MEMORY);
    try {
      return connection.prepare('SELECT sqlite_version()').pluck().get() as string;
    } finally {
      connection.close();
    }
  },
};

/** Before it a write that meets a checkpoint can lose commits: sqlite.org/releaselog/3_51_3. */
const OLDEST_SQLITE = '3.51.3';
/** How long a writer waits for another. */
const BUSY_MS = 5000;

/** @throws StoreFault */
export function openConnection(
  path: string,
  mode: OpenMode,
  library: SqliteLibrary = BUNDLED_LIBRARY,
): Database.Database {
  checkPath(path, mode);
  return withStoreFaults(path, () => {
    // Before the file is opened: that alone would make one where there is none.
    checkLibrary(library.version());
    const options = {
      readonly: mode === 'read-only',
      fileMustExist: mode !== 'create' && path !== IN_MEMORY,
      timeout: BUSY_MS,
    };
    // In full, since SQLite takes a name that begins with "file:" for more than a name.
    const connection = library.open(path === IN_MEMORY ? path : resolve(path), options);
    try {
      prepare(connection, path, mode);
    } catch (error) {
      connection.close();
      throw error;
    }
    return connection;
  });
}

function checkPath(path: string, mode: OpenMode): void {
  if (path === IN_MEMORY) {
    if (mode !== 'read-only') return;
    throw new StoreFault('a database in memory has nothing to read', 'name a file');
  }
  // The binding cuts blanks off, and makes a passing database where no name is left.
  if (path.trim() === '') throw new StoreFault('no database is named', 'name a file');
  if (path !== path.trim()) {
    throw new StoreFault(`"${path}" begins or ends with a blank`, 'name the file without it');
  }
  const directory = dirname(resolve(path));
  if (!existsSync(directory)) {
    throw new StoreFault(`there is no directory ${directory}`, 'make it, or name another file');
  }
  if (!existsSync(path)) {
    if (mode === 'create') return;
    throw new StoreFault(`there is no database ${path}`, 'name the right file, or publish into it');
  }
  const found = statSync(path);
  if (found.isDirectory()) throw new StoreFault(`${path} is a directory`, 'name a file in it');
  // Opening a pipe would wait for whoever writes into it.
  if (!found.isFile()) throw new StoreFault(`${path} is no ordinary file`, 'name one that is');
}

function checkLibrary(version: string): void {
  if (!isOlder(version, OLDEST_SQLITE)) return;
  throw new StoreFault(
    `SQLite ${version} can lose what it has stored`,
    `install better-sqlite3 with SQLite ${OLDEST_SQLITE} or newer`,
  );
}

function isOlder(version: string, than: string): boolean {
  const parts = version.split('.').map(Number);
  for (const [index, wanted] of than.split('.').map(Number).entries()) {
    const part = parts[index] ?? 0;
    if (part !== wanted) return part < wanted;
  }
  return false;
}

function prepare(connection: Database.Database, path: string, mode: OpenMode): void {
  const migrations = shippedMigrations();
  const isEmpty = checkOwner(connection, path);
  const version = schemaVersion(connection);
  if (version > migrations.length) {
    throw new StoreFault(
      `${path} was written by a newer program (schema ${version}, this one ${migrations.length})`,
      'use that program, or a newer one',
    );
  }
  connection.pragma('trusted_schema = OFF');
  if (mode !== 'read-only') {
    makeDurable(connection, path);
    // Only then, so that opening does not wait for a program that publishes.
    if (version < migrations.length) migrate(connection, migrations);
  } else if (isEmpty) {
    throw new StoreFault(`${path} is empty`, 'publish a catalogue into it first');
  } else if (version < migrations.length) {
    throw new StoreFault(
      `${path} was written by an older program (schema ${version}, this one ${migrations.length})`,
      'open it for writing once, so that it is brought up to date',
    );
  }
  connection.pragma('foreign_keys = ON');
}

/** True where nothing is in it yet; a file of another program is left alone. */
function checkOwner(connection: Database.Database, path: string): boolean {
  const objects = connection.prepare('SELECT count(*) FROM sqlite_schema').pluck().get();
  const owner = connection.pragma('application_id', { simple: true });
  if (owner === APPLICATION_ID) return objects === 0;
  if (objects === 0 && owner === 0) return true;
  throw new StoreFault(
    `${path} belongs to another program`,
    'name a file of your own; nothing in this one was changed',
  );
}

function makeDurable(connection: Database.Database, path: string): void {
  const journal = connection.pragma('journal_mode = WAL', { simple: true });
  if (journal !== 'wal' && path !== IN_MEMORY) {
    throw new StoreFault(
      `${path} cannot keep a write-ahead log (journal mode ${String(journal)})`,
      'put it on a local disk',
    );
  }
  connection.pragma('synchronous = FULL');
}
