/**
 * The service as the examples of the contract ask it: over the demo catalogue, and in the states
 * in which it refuses what it would answer otherwise. What it says is the same on any day.
 */

import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import type { Logger } from 'pino';
import { EXAMPLE_KEYS } from '../src/contract/example-keys.js';
import { readNdjson } from '../src/contract/ndjson-text.js';
import { OPERATIONS } from '../src/contract/operations.js';
import { type RefusedRequest, refusalsOf, type ServiceState } from '../src/contract/refusals.js';
import { type AskedRequest, type SentRequest, sentRequest } from '../src/contract/sent-request.js';
import type { Scope } from '../src/domain/access.js';
import { createApp } from '../src/http/app.js';
import type { App } from '../src/http/mount.js';
import { problemsOf } from '../src/http/openapi-responses.js';
import { USE_CASES, type UseCases } from '../src/http/service.js';
import { openStore } from '../src/store/sqlite.js';
import { StoreFault } from '../src/usecases/errors.js';
import { Library } from '../src/usecases/library.js';
import { type EditionPublished, editionPublished } from '../src/usecases/notify-edition.js';
import type { EditionStore, KeyStore } from '../src/usecases/ports.js';
import { prepareEdition, publishEdition } from '../src/usecases/publish-edition.js';

export interface ExampleService {
  /** The application itself, in that state; null where all is well. */
  readonly appIn: (state: ServiceState | null) => App;
  readonly ask: (request: AskedRequest & Pick<RefusedRequest, 'service'>) => Promise<Response>;
  /** What a receiver is told of the edition. */
  readonly event: () => EditionPublished;
  readonly close: () => void;
}

export interface ExampleOptions {
  readonly log: Logger;
  readonly corsOrigins?: readonly string[];
}

const DEMO = new URL('../db/demo/catalogue.ndjson', import.meta.url);

/** A fixed instant, so that the same catalogue gives the same bytes on any day. */
const PUBLISHED_AT = '2026-01-01T00:00:00.000Z';

const REQUEST_ID = '00000000-0000-4000-8000-000000000001';

export function exampleService({ log, corsOrigins = [] }: ExampleOptions): ExampleService {
  const store = openStore(':memory:', { mode: 'create' });
  const none = openStore(':memory:', { mode: 'create' });
  const digest = (text: string) => createHash('sha256').update(text, 'utf8').digest('hex');
  publishEdition(
    { store, clock: () => PUBLISHED_AT },
    prepareEdition(demoCatalogue(), digest),
    null,
  );
  const over = (
    by: EditionStore,
    {
      useCases = USE_CASES,
      open = ['full', 'batch'],
    }: Partial<Pick<Over, 'useCases' | 'open'>> = {},
  ): App =>
    createApp({
      useCases,
      library: new Library(by, digest),
      keys: exampleKeys(),
      log,
      config: { corsOrigins, open, answerCacheBytes: 0 },
      newRequestId: () => REQUEST_ID,
    });
  const whole = over(store);
  const apps: Readonly<Record<ServiceState, App>> = {
    empty: over(none),
    unreadable: over(failing(new StoreFault('a page of the database is damaged', 'restore it'))),
    faulty: over(failing(MISTAKE), { useCases: mistaken() }),
    stopping: whole,
    guarded: over(store, { open: [] }),
  };
  const appIn = (state: ServiceState | null) => (state === null ? whole : apps[state]);
  return {
    appIn,
    ask: async (request) => {
      const { service = null } = request;
      return appIn(service).request(...requestOf(request), {
        lifecycle: { isStopping: service === 'stopping' },
      });
    },
    event: () => editionPublished(new Library(store, digest), null, 'https://fits.example'),
    close: () => {
      store.close();
      none.close();
    },
  };
}

interface Over {
  readonly useCases: UseCases;
  /** What is open to everybody. */
  readonly open: readonly Scope[];
}

/** The keys of the examples, which open nothing that nobody can be shown. */
function exampleKeys(): KeyStore {
  const fail = (): never => {
    throw new Error('examples make no keys');
  };
  return {
    keys: () => [],
    key: () => null,
    pages: () => [],
    addKey: fail,
    endKey: fail,
    recognise: (text) => {
      const scopes = EXAMPLE_KEYS.get(text);
      if (scopes === undefined) return null;
      return { id: 'examples', name: text, scopes, origins: [], madeAt: '', endedAt: null };
    },
  };
}

/** A request for each problem that the contract names. */
export function refusedRequests(): RefusedRequest[] {
  return OPERATIONS.flatMap((operation) => refusalsOf(operation, problemsOf(operation)));
}

const MISTAKE = new TypeError('a mistake of the program');

/** Use-cases of which none can do anything. */
function mistaken(): UseCases {
  const fail = (): never => {
    throw MISTAKE;
  };
  return new Proxy(USE_CASES, { get: () => fail });
}

/** A store that cannot do anything. */
function failing(error: Error): EditionStore {
  const fail = (): never => {
    throw error;
  };
  return {
    latest: fail,
    edition: fail,
    editions: fail,
    load: fail,
    publish: fail,
    offersHead: fail,
    offers: fail,
  };
}

function requestOf(request: AskedRequest): [string, RequestInit] {
  const sent = sentRequest(request);
  const { method, target, headers, body } = sent;
  if (body === null) return [target, { method, headers }];
  // Node asks that a body which comes bit by bit says so; the types of browsers know no such field.
  const init = { method, headers, body: bodyOf(body, sent), duplex: 'half' };
  return [target, init];
}

/** The body, or as much of it as comes before the connection breaks off. */
function bodyOf(body: string, { stops }: SentRequest): string | ReadableStream {
  if (stops === undefined) return body;
  let isFirst = true;
  return new ReadableStream({
    pull(controller) {
      if (isFirst) controller.enqueue(new TextEncoder().encode(body.slice(0, stops.after)));
      else controller.error(new Error('the connection was reset'));
      isFirst = false;
    },
  });
}

/** The demo catalogue as it is written. */
export function demoCatalogue(): object {
  const { value, faults } = readNdjson(readFileSync(DEMO, 'utf8'));
  const [first] = faults;
  if (first === undefined) return value;
  throw new Error(`demo catalogue, line ${first.line ?? 'none'}: ${first.text}`);
}
