/**
 * What opening a store takes care of beside the file: the version of SQLite, other programs that
 * use it at the same time, a disk that may only be read, names that SQLite would understand in
 * its own way.
 */

import { copyFileSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { BUNDLED_LIBRARY, type OpenMode, type SqliteLibrary } from '../../src/store/connection.js';
import { openStore } from '../../src/store/sqlite.js';
import { connect, everything, freshPath, open, publish } from './database.js';
import { libraryWith } from './faulty-library.js';
import { cart, changedCart } from './prepared.js';
import { copyOfSeed, older, refusalOf, seed } from './some-files.js';

const EVERY_MODE: readonly OpenMode[] = ['read-only', 'read-write', 'create'];

describe('the version of SQLite', () => {
  const opening = (version: string) =>
    openStore(':memory:', {
      mode: 'create',
      library: { ...BUNDLED_LIBRARY, version: () => version },
    }).close();

  test.each(['3.51.2', '3.50.99', '3.9.0', '2.99.99', '3.51'])('%s is too old', (version) => {
    expect(refusalOf(() => opening(version)).message).toContain(`SQLite ${version} can lose`);
  });

  test.each(['3.51.3', '3.51.10', '3.52.0', '3.100.0', '4.0.0'])('%s is not', (version) => {
    expect(() => opening(version)).not.toThrow();
  });
});

describe('a file that another program is using', () => {
  const soon = libraryWith({ timeout: 50 });
  const busy = {
    message: expect.stringMatching(/^another program is using /),
    remedy: 'try again when it is done; only one program writes at a time',
  };

  test('is refused where the other keeps it to itself', () => {
    const path = copyOfSeed();
    const other = connect(path);
    other.pragma('locking_mode = EXCLUSIVE');
    other.exec('BEGIN EXCLUSIVE; COMMIT');
    for (const mode of EVERY_MODE) {
      const fault = refusalOf(() => openStore(path, { mode, library: soon }));
      expect(fault).toMatchObject(busy);
    }
    other.close();
    expect(open(path, 'read-only').latest()?.number).toBe(1);
  });

  test('can be read while the other writes, and is written when that is done', () => {
    const path = copyOfSeed();
    const other = connect(path);
    other.exec('BEGIN IMMEDIATE');
    const reader = open(path, 'read-only', soon);
    expect(reader.load(1).document).toEqual(cart().content.document);
    const writer = open(path, 'read-write', soon);
    expect(refusalOf(() => publish(writer, changedCart()))).toMatchObject(busy);
    expect(writer.latest()?.number).toBe(1);
    other.exec('ROLLBACK');
    expect(publish(writer, changedCart())).toMatchObject({ isNew: true, edition: { number: 2 } });
  });

  test('is waited for', () => {
    const waits: unknown[] = [];
    const library: SqliteLibrary = {
      ...BUNDLED_LIBRARY,
      open: (path, options) => {
        waits.push(options.timeout);
        return BUNDLED_LIBRARY.open(path, options);
      },
    };
    open(copyOfSeed(), 'read-write', library);
    expect(waits).toEqual([5000]);
  });
});

describe('a file that cannot be written', () => {
  // What SQLite itself does with a file that this user may only read.
  const readOnly = libraryWith({ readonly: true, fileMustExist: true });
  const remedy = 'let this user write the file and its directory, or open it for reading only';

  test('takes no publish', () => {
    const path = copyOfSeed();
    const store = open(path, 'read-only');
    expect(refusalOf(() => publish(store, changedCart()))).toMatchObject({
      message: `${path} is opened for reading only`,
      remedy: 'open it for writing to publish',
    });
    expect(store.load(1).document).toEqual(cart().content.document);
  });

  test('is not brought up to date', () => {
    const path = older();
    const fault = refusalOf(() => openStore(path, { mode: 'read-write', library: readOnly }));
    expect(fault).toMatchObject({ message: `${path} cannot be written`, remedy });
  });

  test('but could be is brought up to date when it is opened for writing', () => {
    const path = older();
    publish(open(path, 'read-write'), cart());
    const fresh = everything(seed);
    expect(everything(path).schema).toEqual(fresh.schema);
    expect(everything(path).parts).toEqual(fresh.parts);
  });

  test('is left as it was by all that reads', () => {
    const path = copyOfSeed();
    const bytes = readFileSync(path);
    const store = open(path, 'read-only');
    store.load(1);
    store.verify();
    store.offers();
    store.close();
    expect(readFileSync(path)).toEqual(bytes);
  });
});

describe('what is named', () => {
  test('is a file, whatever else SQLite would take it for', () => {
    const path = join(dirname(freshPath()), 'file:odd.sqlite?mode=memory');
    const store = open(path);
    publish(store, cart());
    store.close();
    expect(everything(path).editions).toHaveLength(1);
  });

  test('is made only where that is asked for, and is then there', () => {
    const path = freshPath();
    expect(refusalOf(() => openStore(path, { mode: 'read-write' })).message).toContain(path);
    open(path, 'create').close();
    expect(open(path, 'read-write').editions()).toEqual([]);
  });

  test('keeps what is in it when it is opened as if it were new', () => {
    const store = open(copyOfSeed(), 'create');
    expect(store.load(1).document).toEqual(cart().content.document);
  });

  test('is marked as ours', () => {
    const header = readFileSync(seed);
    expect(header.toString('latin1', 68, 72)).toBe('FYNG');
  });
});

test('a database of another program keeps what lies in its log', () => {
  const path = freshPath('foreign.sqlite');
  const other = connect(path);
  other.pragma('journal_mode = WAL');
  other.exec('CREATE TABLE sums (sum INTEGER); INSERT INTO sums VALUES (7)');
  // As that program left it when it died.
  const left = freshPath('left.sqlite');
  copyFileSync(path, left);
  copyFileSync(`${path}-wal`, `${left}-wal`);
  for (const mode of EVERY_MODE) {
    const fault = refusalOf(() => openStore(left, { mode }));
    expect(fault.message).toBe(`${left} belongs to another program`);
    expect(everything(left)).toEqual(everything(path));
  }
});

test('a mistake of the program is not blamed on the file', () => {
  const library: SqliteLibrary = {
    ...BUNDLED_LIBRARY,
    open: () => {
      throw new TypeError('no such thing');
    },
  };
  expect(() => openStore(copyOfSeed(), { mode: 'read-write', library })).toThrow(TypeError);
});

test('a module that was built for another Node says how to build it', () => {
  const library: SqliteLibrary = {
    ...BUNDLED_LIBRARY,
    version: () => {
      throw Object.assign(new Error('The module was compiled against another version.\nMore'), {
        code: 'ERR_DLOPEN_FAILED',
      });
    },
  };
  const fault = refusalOf(() => openStore(copyOfSeed(), { mode: 'read-only', library }));
  expect(fault.message).toContain(`does not load in Node ${process.version}`);
  expect(fault.message).not.toContain('More');
  expect(fault.remedy).toContain('npm rebuild better-sqlite3');
});
