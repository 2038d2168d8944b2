/**
 * The keys of the service in SQLite: made here, out of 256 bits of randomness, and known again by
 * their digests. That much randomness nobody guesses, so that a slow digest, as passwords need one,
 * would only cost time.
 */

import { createHash, randomBytes, timingSafeEqual } from 'node:crypto';
import type Database from 'better-sqlite3';
import { and, asc, eq, isNull, sql } from 'drizzle-orm';
import { drizzle } from 'drizzle-orm/better-sqlite3';
import { SCOPES } from '../domain/access.js';
import type { KeyRecord, KeyRequest, MadeKey } from '../usecases/ports.js';
import { insertInto } from './edition-writer.js';
import { PreparedQuery } from './prepared-query.js';
import { damaged } from './store-fault.js';
import { keys } from './tables/keys.js';

interface KeyRow {
  readonly id: string;
  readonly name: string;
  readonly scopes: string;
  readonly origins: string;
  readonly made_at: string;
  readonly ended_at: string | null;
  readonly sha256: Uint8Array;
}

/** `fy_`, or `fyp_` where pages may have it, then the id, then what nobody guesses. */
const KEY = /^fyp?_([a-z2-7]{8})_[A-Za-z0-9_-]{43}$/;

const ID_LETTERS = 'abcdefghijklmnopqrstuvwxyz234567';

const ID_LENGTH = 8;
const SECRET_BYTES = 32;

export class KeyTable {
  readonly #all: PreparedQuery<KeyRow>;
  readonly #one: PreparedQuery<KeyRow>;
  readonly #pages: PreparedQuery<Pick<KeyRow, 'id' | 'origins'>>;
  readonly #insert: PreparedQuery;
  readonly #end: PreparedQuery;

  constructor(connection: Database.Database) {
    const db = drizzle(connection);
    const named = eq(keys.id, sql.placeholder('id'));
    const select = () => db.select().from(keys);
    this.#all = new PreparedQuery(connection, select().orderBy(asc(keys.madeAt), asc(keys.id)));
    this.#one = new PreparedQuery(connection, select().where(named));
    const isOfPages = and(isNull(keys.endedAt), sql`${keys.origins} <> '[]'`);
    this.#pages = new PreparedQuery(
      connection,
      db.select({ id: keys.id, origins: keys.origins }).from(keys).where(isOfPages),
    );
    this.#insert = new PreparedQuery(connection, insertInto(db, keys));
    const ended = { endedAt: sql`${sql.placeholder('endedAt')}` };
    this.#end = new PreparedQuery(connection, db.update(keys).set(ended).where(named));
  }

  keys(): KeyRecord[] {
    return this.#all.all().map(recordOf);
  }

  key(id: string): KeyRecord | null {
    const row = this.#one.get({ id });
    return row === undefined ? null : recordOf(row);
  }

  pages(): string[] {
    return this.#pages.all().flatMap(({ id, origins }) => textsIn(origins, id));
  }

  addKey({ name, scopes, origins }: KeyRequest, madeAt: string): MadeKey {
    const id = idOf(randomBytes(ID_LENGTH));
    const secret = randomBytes(SECRET_BYTES).toString('base64url');
    const text = `${origins.length === 0 ? 'fy' : 'fyp'}_${id}_${secret}`;
    const key = { id, name, scopes, origins, madeAt, endedAt: null };
    const lists = { scopes: JSON.stringify(scopes), origins: JSON.stringify(origins) };
    this.#insert.run({ ...key, ...lists, sha256: digestOf(text) });
    return { key, text };
  }

  endKey(id: string, endedAt: string): void {
    this.#end.run({ id, endedAt });
  }

  recognise(text: string): KeyRecord | null {
    const [, id] = KEY.exec(text) ?? [];
    if (id === undefined) return null;
    const row = this.#one.get({ id });
    if (row === undefined || row.ended_at !== null) return null;
    return timingSafeEqual(row.sha256, digestOf(text)) ? recordOf(row) : null;
  }
}

function digestOf(text: string): Buffer {
  return createHash('sha256').update(text, 'utf8').digest();
}

/** Five bits of each byte, which makes all letters alike often. */
function idOf(bytes: Uint8Array): string {
  return Array.from(bytes, (byte) => ID_LETTERS.charAt(byte % ID_LETTERS.length)).join('');
}

/** @throws StoreFault where a row is none that this program wrote. */
function recordOf({ id, name, scopes, origins, made_at, ended_at }: KeyRow): KeyRecord {
  const open = textsIn(scopes, id);
  return {
    id,
    name,
    // One of a program to come opens nothing here.
    scopes: SCOPES.filter((scope) => open.includes(scope)),
    origins: textsIn(origins, id),
    madeAt: made_at,
    endedAt: ended_at,
  };
}

function textsIn(json: string, id: string): string[] {
  const list: unknown = JSON.parse(json);
  if (Array.isArray(list) && list.every((one) => typeof one === 'string')) return list;
  throw damaged(`the key ${id} has something else where a list belongs`);
}
