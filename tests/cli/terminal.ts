/**
 * Runs the program in a world of the test's own: its streams are texts, its files are given, its
 * clock stands, its database is a real one in a folder that is removed afterwards.
 */

import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll } from 'vitest';
import { openOutputFile } from '../../src/cli/output-file.js';
import { runProgram } from '../../src/cli/program.js';
import type { OpenStore, Output, ServiceRequest, World } from '../../src/cli/world.js';
import { openStore } from '../../src/store/sqlite.js';
import { sha256 } from '../memory-store.js';
import { cartText } from './catalogue.js';

export const NOW = '2026-05-04T03:02:01.000Z';

const folder = mkdtempSync(join(tmpdir(), 'faying-'));
afterAll(() => rmSync(folder, { recursive: true }));
let databases = 0;

/** A path where no database is yet. */
export function freshDatabase(): string {
  databases += 1;
  return join(folder, `${databases}.sqlite`);
}

export interface Setting {
  /** The real file, whatever the command calls it; a fresh one where left out. */
  readonly database?: string;
  /** Texts by path; each is encoded in UTF-8. */
  readonly files?: Readonly<Record<string, string | Uint8Array>>;
  readonly input?: string;
  readonly env?: Readonly<Record<string, string>>;
  readonly isTerminal?: boolean;
  readonly columns?: number;
  /** Stands in for parts of the world. */
  readonly world?: Partial<World>;
}

export interface Run {
  readonly code: number;
  readonly out: string;
  readonly err: string;
  /** Every opening of the store, as `path mode`. */
  readonly opened: readonly string[];
  /** How many of them were not closed again. */
  readonly leftOpen: number;
  /** Every service that was asked for. */
  readonly services: readonly ServiceRequest[];
  /** Texts that were written, by path. */
  readonly written: Readonly<Record<string, string>>;
}

export async function run(words: readonly string[], setting: Setting = {}): Promise<Run> {
  const { database = freshDatabase(), files = {}, input = '', env = {} } = setting;
  const texts = { out: '', err: '' };
  const opened: string[] = [];
  let closed = 0;
  const services: ServiceRequest[] = [];
  const written: Record<string, string> = {};
  const stream = (to: 'out' | 'err'): Output => ({
    write: (text) => {
      texts[to] += text;
    },
    isTerminal: setting.isTerminal ?? false,
    columns: setting.columns ?? null,
  });
  const world: World = {
    version: '9.9.9',
    env,
    out: stream('out'),
    err: stream('err'),
    readFile: async (path) => bytesOf(files[path] ?? missing(path)),
    writeFile: async (path, text) => {
      written[path] = text;
    },
    openOutput: openOutputFile,
    readInput: async () => bytesOf(input),
    openInput: async (path) => {
      const bytes = bytesOf(path === '-' ? input : (files[path] ?? missing(path)));
      return { bytes: bytes.length, chunks: piecesOf(bytes), close: () => undefined };
    },
    writeOut: async (text) => {
      texts.out += text;
    },
    openStore: (path, mode) => {
      const store = openStore(database, { mode: mode === 'read' ? 'read-only' : 'create' });
      opened.push(`${path} ${mode}`);
      return closing(store, () => {
        closed += 1;
      });
    },
    startService: async (request) => {
      services.push(request);
      return { url: 'http://127.0.0.1:4242', edition: 1, stop: async () => undefined };
    },
    openNotifier: async () => null,
    untilStopped: async () => 'SIGTERM',
    clock: () => NOW,
    digest: sha256,
    ...setting.world,
  };
  const code = await runProgram(words, world);
  return { code, ...texts, opened, leftOpen: opened.length - closed, services, written };
}

function closing(store: OpenStore, onClose: () => void): OpenStore {
  const close = store.close.bind(store);
  return Object.assign(store, {
    close: () => {
      close();
      onClose();
    },
  });
}

/** A few bytes at a time, as a slow line has them. */
async function* piecesOf(bytes: Uint8Array): AsyncGenerator<Uint8Array> {
  for (let at = 0; at < bytes.length; at += 100) yield bytes.subarray(at, at + 100);
}

function bytesOf(content: string | Uint8Array): Uint8Array {
  return typeof content === 'string' ? new TextEncoder().encode(content) : content;
}

function missing(path: string): never {
  throw Object.assign(new Error(`ENOENT: no such file, open '${path}'`), { code: 'ENOENT' });
}

/** A database with the cart published in it. */
export async function cartDatabase(): Promise<string> {
  const database = freshDatabase();
  const { code, err } = await run(['publish', '-'], { database, input: cartText() });
  if (code !== 0) throw new Error(err);
  return database;
}
