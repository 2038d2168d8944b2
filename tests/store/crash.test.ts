/**
 * A program that is killed while it publishes, and a machine that loses power, leave the edition
 * before or the new one, never anything between; the next program finds it and goes on.
 *
 * Three ways to find out: a real process with a real SIGKILL; the files as they are on disk at
 * each statement, which is what a killed program leaves; and the write-ahead log cut off at each
 * frame and within it, which is what a log that was not written whole leaves.
 */

import { spawn } from 'node:child_process';
import { copyFileSync, existsSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type Database from 'better-sqlite3';
import { describe, expect, test } from 'vitest';
import { BUNDLED_LIBRARY, type SqliteLibrary } from '../../src/store/connection.js';
import { everything, freshPath, open, publish } from './database.js';
import { watchedLibrary } from './faulty-library.js';
import { cart, changedCart, demo, NEXT_DAY } from './prepared.js';
import { copyOfSeed, seed } from './some-files.js';

const program = fileURLToPath(new URL('crash-publisher.ts', import.meta.url));
const first = cart();
const next = changedCart();

/** The log holds what is not yet in the database itself. */
const logOf = (path: string) => `${path}-wal`;

const before = everything(seed);

/** What lies on the disk of a database that is in use; the memory that it shares is lost. */
function imageOf(path: string): string {
  const image = freshPath('image.sqlite');
  copyFileSync(path, image);
  if (existsSync(logOf(path))) copyFileSync(logOf(path), logOf(image));
  return image;
}

interface Ended {
  readonly signal: NodeJS.Signals | null;
  readonly out: string;
  readonly err: string;
}

function runUntil(path: string, statement: number): Promise<Ended> {
  const words = ['--import', 'tsx', program, path, String(statement)];
  const child = spawn(process.execPath, words, { env: { PATH: process.env.PATH } });
  const said = { out: '', err: '' };
  for (const [name, stream] of [
    ['out', child.stdout],
    ['err', child.stderr],
  ] as const) {
    stream.setEncoding('utf8').on('data', (text: string) => {
      said[name] += text;
    });
  }
  return new Promise((resolve) => {
    child.on('close', (_, signal) => resolve({ signal, ...said }));
  });
}

test('a process that is killed leaves the edition before', async () => {
  const whole = await runUntil(copyOfSeed(), 0);
  expect(whole).toMatchObject({ signal: null, err: '' });
  const count = Number(/after (\d+) statements/.exec(whole.out)?.[1]);
  expect(count).toBeGreaterThan(500);
  let longest = 0;
  for (const share of [0.3, 0.9, 1]) {
    const path = copyOfSeed();
    const statement = Math.floor(count * share);
    expect(await runUntil(path, statement)).toEqual({ signal: 'SIGKILL', out: '', err: '' });
    longest = Math.max(longest, statSync(logOf(path)).size);
    const store = open(path, 'read-write');
    expect(store.latest()?.number).toBe(1);
    expect(store.load(1).document).toEqual(first.content.document);
    expect(store.verify().disagreements).toEqual([]);
    expect(everything(path)).toEqual(before);
    expect(publish(store, demo)).toMatchObject({ isNew: true, edition: { number: 2 } });
    expect(store.load(2).document).toEqual(demo.content.document);
    store.close();
  }
  // Much of the new edition was on disk by then.
  expect(longest).toBeGreaterThan(100_000);
}, 60_000);

test('so do the files at each statement of a publish', () => {
  const path = copyOfSeed();
  const images: string[] = [];
  let isOn = false;
  const watched = watchedLibrary(() => {
    if (isOn) images.push(imageOf(path));
  });
  const library: SqliteLibrary = {
    ...watched,
    open: (file, options) => {
      const connection = watched.open(file, options);
      connection.pragma('cache_size = 2');
      return connection;
    },
  };
  const store = open(path, 'read-write', library);
  isOn = true;
  publish(store, next, { publishedAt: NEXT_DAY });
  isOn = false;
  expect(images.length).toBeGreaterThan(50);
  const last = images.at(-1) ?? '';
  expect(statSync(logOf(last)).size).toBeGreaterThan(4096 * 10);
  for (const [index, image] of images.entries()) {
    expect(everything(image), `statement ${index + 1}`).toEqual(before);
    const survivor = open(image, 'read-write');
    expect(survivor.verify().disagreements).toEqual([]);
    expect(publish(survivor, next)).toMatchObject({ isNew: true, edition: { number: 2 } });
    survivor.close();
  }
  expect(store.latest()?.number).toBe(2);
  // What was acknowledged is on the disk, though the program never closed the file.
  expect(everything(imageOf(path))).toEqual(everything(path));
});

describe('a log that is cut off', () => {
  const path = copyOfSeed();
  const store = open(path, 'read-write');
  publish(store, next, { publishedAt: NEXT_DAY });
  const image = imageOf(path);
  const log = readFileSync(logOf(image));
  const after = everything(path);
  // Header and frame of the log: sqlite.org/fileformat2, section 4.1.
  const header = 32;
  const page = log.readUInt32BE(8);
  const frame = 24 + page;
  const frames = (log.length - header) / frame;

  function cut(bytes: Buffer): string {
    const copy = freshPath('cut.sqlite');
    copyFileSync(image, copy);
    writeFileSync(logOf(copy), bytes);
    return copy;
  }

  test('leaves the edition before, until its last frame is whole', () => {
    expect(frames).toBeGreaterThan(10);
    expect(Number.isInteger(frames)).toBe(true);
    for (let whole = 0; whole <= frames; whole += 1) {
      for (const more of whole < frames ? [0, 10, 24, frame - 1] : [0]) {
        const found = everything(cut(log.subarray(0, header + whole * frame + more)));
        expect(found, `${whole} frames, ${more} bytes`).toEqual(whole < frames ? before : after);
      }
    }
  });

  test('and so does one in which a frame was never written', () => {
    for (let lost = 0; lost < frames; lost += 1) {
      const torn = Buffer.from(log);
      torn.fill(0, header + lost * frame, header + (lost + 1) * frame);
      expect(everything(cut(torn)), `frame ${lost + 1}`).toEqual(before);
    }
  });

  test('or a single bit has turned', () => {
    for (let turned = 0; turned < frames; turned += 1) {
      const torn = Buffer.from(log);
      const at = header + turned * frame + 24 + ((turned * 397) % page);
      torn.writeUInt8(torn.readUInt8(at) ^ 0x10, at);
      const copy = cut(torn);
      const survivor = open(copy, 'read-write');
      expect(survivor.latest()?.number, `frame ${turned + 1}`).toBe(1);
      expect(survivor.verify().disagreements).toEqual([]);
      survivor.close();
    }
  });
});

test('what was acknowledged waits for the disk', () => {
  const connections: Database.Database[] = [];
  const store = open(copyOfSeed(), 'read-write', {
    ...BUNDLED_LIBRARY,
    open: (file, options) => {
      const connection = BUNDLED_LIBRARY.open(file, options);
      connections.push(connection);
      return connection;
    },
  });
  publish(store, next);
  const setting = (name: string) => connections[0]?.pragma(name, { simple: true });
  expect(setting('journal_mode')).toBe('wal');
  // FULL; less would only keep the file whole: sqlite.org/pragma.html#pragma_synchronous.
  expect(setting('synchronous')).toBe(2);
  expect(setting('foreign_keys')).toBe(1);
  expect(setting('trusted_schema')).toBe(0);
});
