/**
 * An SQLite that fails at a chosen moment, or tells when each statement runs. Everything is the
 * real thing but the one call that fails.
 */

import Database from 'better-sqlite3';
import type { SqliteLibrary } from '../../src/store/connection.js';
import { BUNDLED_LIBRARY } from '../../src/store/connection.js';

/** What a disk says that can no longer be written; only the code counts. */
export function ioError(): Error {
  return new Database.SqliteError('disk I/O error', 'SQLITE_IOERR_WRITE');
}

/**
 * Calls `before` ahead of every statement that the store runs, with its number and its text. An
 * error that `before` throws comes out of the statement; BEGIN and COMMIT are not among them.
 */
export function watchedLibrary(before: (number: number, sql: string) => void): SqliteLibrary {
  let number = 0;
  return {
    ...BUNDLED_LIBRARY,
    open: (path, options) => {
      const connection = new Database(path, options);
      const prepare = connection.prepare.bind(connection);
      const watch = (statement: Database.Statement, sql: string) => {
        for (const name of ['run', 'get', 'all'] as const) {
          const call: (...values: unknown[]) => unknown = statement[name].bind(statement);
          Object.defineProperty(statement, name, {
            value: (...values: unknown[]) => {
              number += 1;
              before(number, sql);
              return call(...values);
            },
          });
        }
        return statement;
      };
      const watched = (sql: string) => watch(prepare(sql), sql);
      return Object.defineProperty(connection, 'prepare', { value: watched });
    },
  };
}

/** The bundled library with other options: a short wait, a file that cannot be written. */
export function libraryWith(more: Database.Options): SqliteLibrary {
  return {
    ...BUNDLED_LIBRARY,
    open: (path, options) => new Database(path, { ...options, ...more }),
  };
}
