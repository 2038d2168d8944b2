/**
 * A file that cannot be used is refused when it is opened, with one line that says why and one
 * that says what to do; it is left as it was.
 */

import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { BUNDLED_LIBRARY, type OpenMode, type SqliteLibrary } from '../../src/store/connection.js';
import { openStore } from '../../src/store/sqlite.js';
import { freshPath } from './database.js';
import {
  copyOfSeed,
  cutShort,
  damagedSchema,
  directory,
  fileOf,
  foreign,
  newer,
  older,
  refusalOf,
} from './some-files.js';

const losingLibrary: SqliteLibrary = { ...BUNDLED_LIBRARY, version: () => '3.51.2' };

interface Refusal {
  readonly make: () => string;
  readonly modes?: readonly OpenMode[];
  readonly library?: SqliteLibrary;
  readonly says: RegExp;
  readonly remedy: RegExp;
}

const EVERY_MODE: readonly OpenMode[] = ['read-only', 'read-write', 'create'];

const REFUSALS: readonly (readonly [string, Refusal])[] = [
  [
    'an SQLite that is too old',
    {
      make: copyOfSeed,
      library: losingLibrary,
      says: /^SQLite 3\.51\.2 can lose what it has stored$/,
      remedy: /^install better-sqlite3 with SQLite 3\.51\.3 or newer$/,
    },
  ],
  [
    'a database of another program',
    { make: foreign, says: /belongs to another program$/, remedy: /name a file of your own/ },
  ],
  [
    'one that another program has marked as its own',
    {
      make: () => foreign('PRAGMA application_id = 77'),
      says: /belongs to another program$/,
      remedy: /name a file of your own/,
    },
  ],
  [
    'a schema that is newer',
    {
      make: newer,
      says: /was written by a newer program \(schema \d+, this one \d+\)$/,
      remedy: /^use that program, or a newer one$/,
    },
  ],
  [
    'a schema that is older, where nothing may be written',
    {
      make: older,
      modes: ['read-only'],
      says: /was written by an older program \(schema \d+, this one \d+\)$/,
      remedy: /^open it for writing once/,
    },
  ],
  [
    'a file that is no database',
    {
      make: () => fileOf('part;price\n'.repeat(1000)),
      says: /is no SQLite database$/,
      remedy: /^name the right file, or restore it from a backup$/,
    },
  ],
  [
    'a short text',
    {
      make: () => fileOf('xy'),
      says: /is no SQLite database$/,
      remedy: /^name the right file, or restore it from a backup$/,
    },
  ],
  [
    'an empty file, where nothing may be written',
    {
      make: () => fileOf(''),
      modes: ['read-only'],
      says: /is empty$/,
      remedy: /^publish a catalogue into it first$/,
    },
  ],
  ['a directory', { make: directory, says: /is a directory$/, remedy: /^name a file in it$/ }],
  [
    'a file in a directory that is not there',
    {
      make: () => join(freshPath('nowhere'), 'catalogue.sqlite'),
      says: /^there is no directory /,
      remedy: /^make it, or name another file$/,
    },
  ],
  [
    'a file that is not there',
    {
      make: () => freshPath(),
      modes: ['read-only', 'read-write'],
      says: /^there is no database /,
      remedy: /^name the right file, or publish into it$/,
    },
  ],
  [
    'a damaged schema',
    { make: damagedSchema, says: /is damaged: /, remedy: /^restore it from a backup$/ },
  ],
  [
    'a file that was cut short',
    { make: cutShort, says: /is damaged: /, remedy: /^restore it from a backup$/ },
  ],
  [
    'memory, where nothing may be written',
    {
      make: () => ':memory:',
      modes: ['read-only'],
      says: /^a database in memory has nothing to read$/,
      remedy: /^name a file$/,
    },
  ],
];

const cases = REFUSALS.flatMap(([name, refusal]) =>
  (refusal.modes ?? EVERY_MODE).map((mode) => [name, mode, refusal] as const),
);

describe('is refused', () => {
  test.each(cases)('%s (%s)', (_, mode, { make, library, says, remedy }) => {
    const path = make();
    const bytes = bytesOf(path);
    const options = library === undefined ? { mode } : { mode, library };
    const fault = refusalOf(() => openStore(path, options));
    expect(fault.message).toMatch(says);
    expect(fault.remedy).toMatch(remedy);
    expect(`${fault.message}${fault.remedy}`).not.toContain('\n');
    expect(bytesOf(path)).toEqual(bytes);
  });
});

function bytesOf(path: string): Buffer | null {
  try {
    return readFileSync(path);
  } catch {
    // A directory, or nothing: there is nothing to compare.
    return null;
  }
}
