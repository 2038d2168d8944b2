/**
 * The service over a small catalogue, with everything counted and written down that tests ask
 * about: how often a question was judged, and what the log says.
 */

import { createAdaptorServer } from '@hono/node-server';
import { type Logger, pino } from 'pino';
import supertest from 'supertest';
import { expect } from 'vitest';
import { problemSchema } from '../../src/contract/problem.js';
import type { Scope } from '../../src/domain/access.js';
import { createApp } from '../../src/http/app.js';
import type { App } from '../../src/http/mount.js';
import { USE_CASES, type UseCases } from '../../src/http/service.js';
import { Library } from '../../src/usecases/library.js';
import type { EditionStore, KeyStore } from '../../src/usecases/ports.js';
import { prepareEdition, publishEdition } from '../../src/usecases/publish-edition.js';
import { CART } from '../cli/catalogue.js';
import { MemoryKeys, MemoryStore, sha256 } from '../memory-store.js';

export interface Rig {
  readonly app: App;
  readonly client: ReturnType<typeof supertest>;
  readonly store: EditionStore;
  /** How often each question was judged. */
  readonly judged: Record<keyof UseCases, number>;
  /** The lines of the log, read back. */
  readonly lines: Record<string, unknown>[];
  readonly log: Logger;
}

export interface RigOptions {
  /** Documents to publish, one after the other; the cart where left out. */
  readonly documents?: readonly unknown[];
  readonly store?: EditionStore;
  readonly corsOrigins?: readonly string[];
  /** What everybody may do; all that there is where left out. */
  readonly open?: readonly Scope[];
  /** None are known where left out. */
  readonly keys?: KeyStore;
  /** None are kept where left out, so that each question is judged. */
  readonly answerCacheBytes?: number;
  readonly useCases?: Partial<UseCases>;
}

export function rigOf(options: RigOptions = {}): Rig {
  const { documents = [CART], store = new MemoryStore(), useCases } = options;
  const { corsOrigins = [], open = ['full', 'batch'], answerCacheBytes = 0 } = options;
  for (const document of documents) publish(store, document);
  const lines: Record<string, unknown>[] = [];
  const log: Logger = pino(
    { level: 'info' },
    { write: (line: string) => lines.push(JSON.parse(line)) },
  );
  const judged = zeros();
  const asked: UseCases = { ...USE_CASES, ...useCases };
  const counted = Object.fromEntries(
    NAMES.map((name) => [
      name,
      (...both: Parameters<UseCases[typeof name]>) => {
        judged[name] += 1;
        return Reflect.apply(asked[name], null, both);
      },
    ]),
  ) as unknown as UseCases;
  const library = new Library(store, sha256);
  const config = { corsOrigins, open, answerCacheBytes };
  const { keys = new MemoryKeys() } = options;
  const app = createApp({ library, keys, log, config, useCases: counted });
  const client = supertest(createAdaptorServer({ fetch: app.fetch }));
  return { app, client, store, judged, lines, log };
}

const NAMES = Object.keys(USE_CASES) as readonly (keyof UseCases)[];

/** What a rig has judged that nobody has asked. */
export function zeros(): Record<keyof UseCases, number> {
  return Object.fromEntries(NAMES.map((name) => [name, 0])) as Record<keyof UseCases, number>;
}

export function publish(store: EditionStore, raw: unknown): void {
  const clock = () => '2026-01-01T00:00:00.000Z';
  publishEdition({ store, clock }, prepareEdition(raw, sha256), null);
}

/** The cart with one more part, so that it is another edition. */
export const LARGER_CART = {
  ...CART,
  parts: [...CART.parts, { id: 'box-e', name: 'box e', roles: ['gearbox'] }],
};

/** A question that the cart has an answer to. */
export const FIT = '/v1/fit?vehicle=cart-1&part=box-c';

/** The body of an answer, whatever media type it says it has. */
export function json(response: { readonly text: string }): Record<string, unknown> {
  return JSON.parse(response.text) as Record<string, unknown>;
}

/** The problem that an answer is, and how many characters it has. */
export async function refused(response: Response) {
  const text = await response.text();
  const problem = problemSchema.parse(JSON.parse(text));
  expect(response.headers.get('content-type')).toBe('application/problem+json');
  return { ...problem, size: text.length };
}
