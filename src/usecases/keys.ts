/**
 * Keys: who may see more than everybody, and ask more. A key is told once, when it is made; kept is
 * only what tells whether one that is shown is it.
 *
 * Left out: people. A key has a name that whoever runs the service gives it, and nothing else is
 * known of who holds it.
 */

import { isOrigin, SCOPES, type Scope } from '../domain/access.js';
import type { Clock, KeyStore } from './ports.js';

export interface KeyRecord {
  /** Eight letters and digits, which the key itself has in it. */
  readonly id: string;
  readonly name: string;
  /** In the order of `SCOPES`. */
  readonly scopes: readonly Scope[];
  /**
   * Of the pages that may use it. A key that has origins can be read by whoever reads the page, so
   * that it opens what is public and no more; empty for one that is kept secret.
   */
  readonly origins: readonly string[];
  /** ISO 8601 instants, UTC. */
  readonly madeAt: string;
  readonly endedAt: string | null;
}

export interface KeyRequest {
  readonly name: string;
  readonly scopes: readonly Scope[];
  readonly origins: readonly string[];
}

/** A key and its text, which nobody can be told again. */
export interface MadeKey {
  readonly key: KeyRecord;
  readonly text: string;
}

/** Why a key cannot be made or ended, as a stable code. */
export type KeyFaultCode =
  | 'no-name'
  | 'no-scope'
  | 'not-an-origin'
  | 'more-than-public'
  | 'unknown-key'
  | 'ended-already';

export class KeyFault extends Error {
  readonly code: KeyFaultCode;

  constructor(code: KeyFaultCode, message: string) {
    super(message);
    this.name = 'KeyFault';
    this.code = code;
  }
}

interface World {
  readonly keys: KeyStore;
  readonly clock: Clock;
}

/** @throws KeyFault where it would be no key. */
export function addKey({ keys, clock }: World, request: KeyRequest): MadeKey {
  const name = request.name.trim();
  const origins = [...new Set(request.origins)];
  if (name === '') throw new KeyFault('no-name', 'A key has a name.');
  if (request.scopes.length === 0) throw new KeyFault('no-scope', 'A key has a scope.');
  for (const origin of origins) {
    if (isOrigin(origin)) continue;
    const text = `"${origin}" is no origin such as https://shop.example.`;
    throw new KeyFault('not-an-origin', text);
  }
  const isPublic = request.scopes.every((scope) => scope === 'public');
  if (origins.length > 0 && !isPublic) {
    const text = 'A key for pages can be read in them, so its only scope is public.';
    throw new KeyFault('more-than-public', text);
  }
  const scopes = SCOPES.filter((scope) => request.scopes.includes(scope));
  return keys.addKey({ name, scopes, origins }, clock());
}

/** From now on it opens nothing. @throws KeyFault where there is none to end. */
export function endKey({ keys, clock }: World, id: string): KeyRecord {
  const key = keys.key(id);
  if (key === null) throw new KeyFault('unknown-key', `There is no key "${id}".`);
  if (key.endedAt !== null) {
    throw new KeyFault('ended-already', `The key "${id}" ended on ${key.endedAt}.`);
  }
  const endedAt = clock();
  keys.endKey(id, endedAt);
  return { ...key, endedAt };
}
