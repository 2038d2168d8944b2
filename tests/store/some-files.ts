/**
 * Files that a store may be asked to open: one of ours, and all that is not.
 */

import { copyFileSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import Database from 'better-sqlite3';
import { expect } from 'vitest';
import { migrate, schemaVersion, shippedMigrations } from '../../src/store/migrations.js';
import { StoreFault } from '../../src/usecases/ports.js';
import { connect, freshPath, open, publish } from './database.js';
import { cart } from './prepared.js';

/** A database of ours with one edition, closed. */
function published(): string {
  const path = freshPath();
  const store = open(path);
  publish(store, cart());
  store.close();
  return path;
}

export const seed = published();

export function copyOfSeed(): string {
  const path = freshPath();
  copyFileSync(seed, path);
  return path;
}

/** As the program before the last migration left it. */
export function older(): string {
  const path = freshPath('older.sqlite');
  const connection = connect(path);
  connection.pragma('journal_mode = WAL');
  migrate(connection, shippedMigrations().slice(0, -1));
  connection.close();
  return path;
}

export function newer(): string {
  const path = copyOfSeed();
  const connection = connect(path);
  connection.pragma(`user_version = ${schemaVersion(connection) + 1}`);
  connection.close();
  return path;
}

/** A file in which some other program keeps its own. */
export function foreign(
  setUp = 'CREATE TABLE sums (sum INTEGER); INSERT INTO sums VALUES (7);',
): string {
  const path = freshPath('foreign.sqlite');
  const connection = new Database(path);
  connection.exec(setUp);
  connection.close();
  return path;
}

export function fileOf(bytes: Buffer | string): string {
  const path = freshPath('some.bin');
  writeFileSync(path, bytes);
  return path;
}

export function directory(): string {
  const path = freshPath('folder');
  mkdirSync(path);
  return path;
}

/** The first page holds the header and the schema; what is after the header is lost. */
export function damagedSchema(): string {
  const bytes = readFileSync(seed);
  bytes.fill(0xff, 100, 600);
  return fileOf(bytes);
}

export function cutShort(): string {
  return fileOf(readFileSync(seed).subarray(0, 5000));
}

/** The fault with which something is refused. */
export function refusalOf(run: () => unknown): StoreFault {
  try {
    run();
  } catch (error) {
    expect(error).toBeInstanceOf(StoreFault);
    return error as StoreFault;
  }
  throw new Error('it was not refused');
}
