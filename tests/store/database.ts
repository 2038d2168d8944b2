/**
 * Databases of the tests' own, in a folder that is removed afterwards: made, published into, and
 * written out whole so that two states of one can be compared.
 */

import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import Database from 'better-sqlite3';
import { afterAll } from 'vitest';
import type { SqliteLibrary } from '../../src/store/connection.js';
import { type OpenedStore, type OpenMode, openStore } from '../../src/store/sqlite.js';
import type { PublishResult } from '../../src/usecases/ports.js';
import type { PreparedEdition } from '../../src/usecases/publish-edition.js';
import { FIRST_DAY } from './prepared.js';

const folder = mkdtempSync(join(tmpdir(), 'faying-store-'));
const opened: OpenedStore[] = [];
const connections: Database.Database[] = [];
let files = 0;

afterAll(() => {
  for (const store of opened) store.close();
  for (const connection of connections) connection.close();
  rmSync(folder, { recursive: true });
});

/** A path where no file is yet. */
export function freshPath(name = 'catalogue.sqlite'): string {
  files += 1;
  return join(folder, `${files}-${name}`);
}

/** Closed after the tests, if not before. */
export function open(
  path: string,
  mode: OpenMode = 'create',
  library?: SqliteLibrary,
): OpenedStore {
  const store = openStore(path, library === undefined ? { mode } : { mode, library });
  opened.push(store);
  return store;
}

/** A connection past the store, as an operator's own program has it. */
export function connect(path: string, options: Database.Options = {}): Database.Database {
  const connection = new Database(path, options);
  connections.push(connection);
  return connection;
}

export function publish(
  store: OpenedStore,
  { content }: PreparedEdition,
  { publishedAt = FIRST_DAY, note = null }: { publishedAt?: string; note?: string | null } = {},
): PublishResult {
  return store.publish({ ...content, publishedAt, note });
}

/** Every row of every table, and every table, index and trigger itself. */
export function everything(path: string): Record<string, unknown[]> {
  const connection = new Database(path, { readonly: true });
  try {
    const names = connection
      .prepare("SELECT name FROM sqlite_schema WHERE type = 'table' ORDER BY name")
      .pluck()
      .all() as string[];
    const rows = names.map((name): [string, unknown[]] => {
      const lines = connection.prepare(`SELECT * FROM "${name}"`).raw().all();
      return [name, lines.map((cells) => JSON.stringify(cells)).sort()];
    });
    const schema = connection.prepare('SELECT type, name, sql FROM sqlite_schema').all();
    return { ...Object.fromEntries(rows), schema };
  } finally {
    connection.close();
  }
}
