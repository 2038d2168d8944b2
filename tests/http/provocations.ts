/**
 * What provokes each problem, by the operation that answers with it.
 *
 * Length: one table of all operations, with what several of them have in common.
 */

import { expect } from 'vitest';
import {
  CALCULATE_EXAMPLES,
  CALCULATE_OPERATIONS,
  CALCULATE_REFUSED,
} from '../../src/contract/calculate.js';
import type { ExampleRequest } from '../../src/contract/examples.js';
import { LIMITS } from '../../src/contract/limits.js';
import type { ProblemWire } from '../../src/contract/problem.js';
import type { ProblemCode } from '../../src/contract/problems/problem-type.js';
import { USE_CASES } from '../../src/http/service.js';
import { StoreFault } from '../../src/usecases/errors.js';
import { MemoryKeys, MemoryStore } from '../memory-store.js';
import { type Rig, type RigOptions, rigOf } from './fixture.js';
import { NAMED } from './named-parts.js';

export interface Provocation {
  readonly code: ProblemCode;
  readonly url: string;
  /** Left out, it is GET, or POST where there is a body. */
  readonly method?: string;
  readonly body?: unknown;
  readonly headers?: Readonly<Record<string, string>>;
  readonly rig?: RigOptions;
  readonly isStopping?: true;
  /** What the problem has to say beside its code. */
  readonly says?: Partial<ProblemWire>;
}

/** At a face that the part has not. */
const MEASURED_NOWHERE = {
  on: { part: 'box-a', interface: 'x', parameter: 'y' },
  value: '1 mm',
};

export const LONG = 'x'.repeat(8300);
export const SECRET = 'the disk at bay 7 hums';

class FailingStore extends MemoryStore {
  readonly #error: Error;

  constructor(error: Error) {
    super();
    this.#error = error;
  }

  override latest(): never {
    throw this.#error;
  }

  override editions(): never {
    throw this.#error;
  }

  override edition(): never {
    throw this.#error;
  }
}

export const damaged: RigOptions = {
  documents: [],
  store: new FailingStore(new StoreFault(SECRET, '')),
};
export const failing: RigOptions = {
  documents: [],
  store: new FailingStore(new TypeError(SECRET)),
};
export const empty: RigOptions = { documents: [] };
const broken = (): never => {
  throw new TypeError(SECRET);
};
export const buggy: RigOptions = {
  useCases: Object.fromEntries(Object.keys(USE_CASES).map((name) => [name, broken])),
};

const pointing = (pointer: string): Partial<ProblemWire> => ({
  errors: [expect.objectContaining({ pointer })],
});
const naming = (...parameters: string[]): Partial<ProblemWire> => ({
  errors: parameters.map((parameter) => expect.objectContaining({ parameter })),
});

const tooLarge: Partial<ProblemWire> = { limit: { name: 'bodyBytes', value: 1_000_000 } };

const keys = new MemoryKeys();
const { text: NARROW } = keys.addKey({ name: 'k', scopes: ['report'], origins: [] }, '');

/** What a question refuses of who asks, where it is not open to everybody. */
function guarded(asked: Omit<Provocation, 'code'>): Provocation[] {
  const showing = (key: string) => ({ ...asked.headers, authorization: `Bearer ${key}` });
  return [
    { ...asked, code: 'unknown-key', headers: showing('fy_nobody') },
    { ...asked, code: 'key-needed', rig: { open: [] } },
    { ...asked, code: 'not-granted', headers: showing(NARROW), rig: { open: [], keys } },
  ];
}

const OF_ACCESS: ReadonlySet<string> = new Set(['unknown-key', 'key-needed', 'not-granted']);

/** What every GET below /v1 refuses. */
function gets(url: string): Provocation[] {
  return [
    { code: 'invalid-request', url: `${url}&x=1`, says: naming('x') },
    { code: 'method-not-allowed', url, method: 'DELETE' },
    { code: 'not-acceptable', url, headers: { accept: 'text/html' } },
    {
      code: 'url-too-long',
      url: `${url}&torque=${LONG}`,
      says: { limit: { name: 'urlBytes', value: 8192 } },
    },
    { code: 'store-fault', url, rig: damaged },
    ...guarded({ url }),
  ];
}

/** What every list and every read of one thing refuses. */
function reads(url: string): Provocation[] {
  return [
    ...gets(`${url}?`).map((one) => ({ ...one, url: one.url.replace('?&', '?') })),
    { code: 'internal-error', url, rig: buggy },
    { code: 'no-edition', url, rig: empty },
    { code: 'unknown-edition', url: `${url}?edition=9`, says: naming('edition') },
    { code: 'invalid-request', url: `${url}?edition=0`, says: naming('edition') },
  ];
}

function lists(url: string): Provocation[] {
  return [
    ...reads(url),
    { code: 'invalid-request', url: `${url}?limit=0`, says: naming('limit') },
    { code: 'invalid-request', url: `${url}?limit=201`, says: naming('limit') },
    { code: 'invalid-cursor', url: `${url}?cursor=x`, says: naming('cursor') },
  ];
}

/** What every POST refuses. */
function posts(url: string, body: object): Provocation[] {
  const headers = { 'content-type': 'text/plain' };
  return [
    { code: 'invalid-request', url, body: { ...body, x: 1 }, says: pointing('/x') },
    { code: 'malformed-json', url, body: '{"vehicle": }' },
    { code: 'malformed-request', url, body: endingEarly() },
    {
      code: 'body-too-large',
      url,
      body: '"'.padEnd(LIMITS.bodyBytes.value + 1, 'x'),
      says: tooLarge,
    },
    { code: 'unsupported-media-type', url, body, headers },
    { code: 'method-not-allowed', url, method: 'DELETE' },
    { code: 'not-acceptable', url, body, headers: { accept: 'text/html' } },
    {
      code: 'url-too-long',
      url: `${url}?${LONG}`,
      body,
      says: { limit: { name: 'urlBytes', value: 8192 } },
    },
    { code: 'internal-error', url, body, rig: buggy },
    { code: 'store-fault', url, body, rig: damaged },
    { code: 'no-edition', url, body, rig: empty },
    { code: 'unknown-edition', url, body: { ...body, edition: 9 }, says: pointing('/edition') },
    ...guarded({ url, body }),
  ];
}

/** What every calculator refuses; none of them asks the store. */
function calculators({ operationId, search }: ExampleRequest): [string, Provocation[]][] {
  const operation = CALCULATE_OPERATIONS.find((one) => one.operationId === operationId);
  const refused = CALCULATE_REFUSED[operationId]?.['invalid-question'];
  if (operation === undefined || refused === undefined) return [];
  const { path } = operation;
  const url = `${path}?${search}`;
  return [
    [
      operationId,
      [
        ...gets(url).filter(({ code }) => code !== 'store-fault' && !OF_ACCESS.has(code)),
        { code: 'internal-error', url, rig: buggy },
        { code: 'invalid-question', url: `${path}?${refused.search}` },
      ],
    ],
  ];
}

export function endingEarly(): ReadableStream {
  let isFirst = true;
  return new ReadableStream({
    pull(controller) {
      if (isFirst) controller.enqueue(new TextEncoder().encode('{"vehicle"'));
      else controller.error(new Error('the connection was reset'));
      isFirst = false;
    },
  });
}

const BATCH_URL = '/v1/fit/batch';

/** What a batch refuses before its first line, in either form. */
function batches(type: string, body: string): Provocation[] {
  const url = BATCH_URL;
  const headers = { 'content-type': type };
  const asked = { url, body, headers };
  return [
    { ...asked, code: 'invalid-request', url: `${url}?x=1`, says: naming('x') },
    { ...asked, code: 'invalid-request', url: `${url}?edition=0`, says: naming('edition') },
    { ...asked, code: 'invalid-request', url: `${url}?form=long`, says: naming('form') },
    { ...asked, code: 'malformed-request', headers: { ...headers, 'content-encoding': 'gzip' } },
    {
      ...asked,
      code: 'unsupported-media-type',
      headers: { ...headers, 'content-encoding': 'br' },
    },
    {
      ...asked,
      code: 'unsupported-media-type',
      headers: { 'content-type': `${type}; charset=latin1` },
    },
    { ...asked, code: 'unsupported-media-type', headers: {} },
    { code: 'method-not-allowed', url },
    { ...asked, code: 'not-acceptable', headers: { ...headers, accept: 'application/json' } },
    { ...asked, code: 'url-too-long', url: `${url}?${LONG}` },
    { ...asked, code: 'internal-error', rig: buggy },
    { ...asked, code: 'store-fault', rig: damaged },
    { ...asked, code: 'no-edition', rig: empty },
    { ...asked, code: 'unknown-edition', url: `${url}?edition=9`, says: naming('edition') },
    ...guarded(asked),
  ];
}

export const named: RigOptions = { documents: [NAMED] };

/** What a question about a vehicle or about parts in a body refuses of names. */
function names(url: string, rough: object, several: object): Provocation[] {
  return [
    { code: 'vehicle-replaced', url, body: rough, rig: named, says: pointing('/vehicle') },
    { code: 'ambiguous-part', url, body: several, rig: named },
  ];
}

const FIT = { vehicle: 'cart-1', part: 'box-a' };
const FIT_URL = '/v1/fit?vehicle=cart-1&part=box-a';
const FEED_URL = '/v1/editions/1/fits';
const KITS = { vehicle: 'cart-1' };
const KITS_URL = '/v1/kits?vehicle=cart-1';
const MATE = { a: { part: 'box-a' }, b: { part: 'shaft-a' } };
const MATE_URL = '/v1/mate?a=box-a&b=shaft-a';

export const PROVOCATIONS: Readonly<Record<string, readonly Provocation[]>> = {
  checkFit: [
    ...gets(FIT_URL),
    { code: 'internal-error', url: FIT_URL, rig: buggy },
    { code: 'no-edition', url: FIT_URL, rig: empty },
    { code: 'unknown-edition', url: `${FIT_URL}&edition=9`, says: naming('edition') },
    { code: 'unknown-vehicle', url: '/v1/fit?vehicle=x&part=box-a', says: naming('vehicle') },
    {
      code: 'vehicle-replaced',
      url: '/v1/fit?vehicle=cart-rough&part=box-a',
      rig: named,
      says: naming('vehicle'),
    },
    {
      code: 'ambiguous-part',
      url: '/v1/fit?vehicle=cart-1&part=44%2F10077',
      rig: named,
      says: naming('part'),
    },
    { code: 'unknown-part', url: '/v1/fit?vehicle=cart-1&part=x', says: naming('part') },
    { code: 'unknown-part', url: `${FIT_URL}&fitted.engine=x`, says: naming('fitted.engine') },
    { code: 'unknown-position', url: `${FIT_URL}&with.x=box-a`, says: naming('with.x') },
    { code: 'invalid-question', url: `${FIT_URL}&torque=9`, says: naming('torque') },
    { code: 'invalid-question', url: `${FIT_URL}&adapter.x=box-a`, says: naming('adapter.x') },
  ],
  askFit: [
    ...posts('/v1/fit', FIT),
    ...names('/v1/fit', { ...FIT, vehicle: 'cart-rough' }, { ...FIT, part: 'sku:X' }),
    { code: 'unknown-vehicle', url: '/v1/fit', body: { ...FIT, vehicle: 'x' } },
    { code: 'unknown-part', url: '/v1/fit', body: { ...FIT, part: 'x' }, says: pointing('/part') },
    {
      code: 'unknown-part',
      url: '/v1/fit',
      body: { ...FIT, fitted: { 'wheel-shaft': { left: 'none', right: 'x' } } },
      says: pointing('/fitted/wheel-shaft/right'),
    },
    {
      code: 'unknown-position',
      url: '/v1/fit',
      body: { ...FIT, position: 'x' },
      says: pointing('/position'),
    },
    {
      code: 'invalid-question',
      url: '/v1/fit',
      body: { ...FIT, adapters: { x: ['plate-ab'] } },
      says: pointing('/adapters/x'),
    },
    {
      code: 'unknown-interface',
      url: '/v1/fit',
      body: { ...FIT, measured: [MEASURED_NOWHERE] },
      says: pointing('/measured/0/on/interface'),
    },
  ],
  askFitBatch: [
    ...batches('application/x-ndjson', '{"vehicle":"cart-1","part":"box-a"}\n'),
    ...batches('text/csv', 'vehicle,part\ncart-1,box-a\n'),
    {
      code: 'body-too-large',
      url: BATCH_URL,
      body: 'vehicle,part'.padEnd(LIMITS.batchLineBytes.value + 1, ','),
      headers: { 'content-type': 'text/csv' },
      says: { limit: { name: 'batchLineBytes', value: 65_536 } },
    },
    {
      code: 'invalid-request',
      url: BATCH_URL,
      body: 'ref,colour,ref\n',
      headers: { 'content-type': 'text/csv' },
      says: naming('colour', 'ref', 'vehicle', 'part'),
    },
    {
      code: 'invalid-request',
      url: BATCH_URL,
      body: '',
      headers: { 'content-type': 'text/csv' },
    },
  ],
  exportFits: [
    ...gets(`${FEED_URL}?alone=holds`),
    { code: 'internal-error', url: FEED_URL, rig: buggy },
    { code: 'no-edition', url: '/v1/editions/latest/fits', rig: empty },
    { code: 'unknown-edition', url: '/v1/editions/9/fits', says: naming('number') },
    { code: 'unknown-edition', url: `${FEED_URL}?from=9`, says: naming('from') },
    { code: 'invalid-request', url: '/v1/editions/0/fits', says: naming('number') },
    { code: 'invalid-request', url: `${FEED_URL}?from=0`, says: naming('from') },
    { code: 'invalid-request', url: `${FEED_URL}?form=short`, says: naming('form') },
    { code: 'invalid-request', url: `${FEED_URL}?edition=1`, says: naming('edition') },
    { code: 'invalid-request', url: `${FEED_URL}?alone=fits`, says: naming('alone') },
    {
      code: 'invalid-request',
      url: `${FEED_URL}?form=ranges&vehicle=cart-1`,
      says: naming('form'),
    },
    { code: 'unknown-role', url: `${FEED_URL}?role=x`, says: naming('role') },
    { code: 'unknown-part', url: `${FEED_URL}?part=box-a,x`, says: naming('part') },
    { code: 'unknown-vehicle', url: `${FEED_URL}?vehicle=x`, says: naming('vehicle') },
    {
      code: 'vehicle-replaced',
      url: `${FEED_URL}?vehicle=cart-rough`,
      rig: named,
      says: naming('vehicle'),
    },
    {
      code: 'invalid-question',
      url: `${FEED_URL}?part=x&role=x&vehicle=x`,
      says: naming('role', 'part', 'vehicle'),
    },
  ],
  findKits: [
    ...gets(KITS_URL),
    { code: 'internal-error', url: KITS_URL, rig: buggy },
    { code: 'no-edition', url: KITS_URL, rig: empty },
    { code: 'unknown-edition', url: `${KITS_URL}&edition=9`, says: naming('edition') },
    { code: 'unknown-vehicle', url: '/v1/kits?vehicle=x', says: naming('vehicle') },
    {
      code: 'vehicle-replaced',
      url: '/v1/kits?vehicle=cart-rough',
      rig: named,
      says: naming('vehicle'),
    },
    {
      code: 'ambiguous-part',
      url: `${KITS_URL}&want=44%2F10077`,
      rig: named,
      says: naming('want'),
    },
    { code: 'unknown-part', url: `${KITS_URL}&want=x`, says: naming('want') },
    { code: 'unknown-part', url: `${KITS_URL}&avoid=box-a,x`, says: naming('avoid') },
    { code: 'unknown-position', url: `${KITS_URL}&want=box-b@x`, says: naming('want') },
    { code: 'unknown-position', url: `${KITS_URL}&keep=x`, says: naming('keep') },
    { code: 'invalid-question', url: `${KITS_URL}&want=lot:x`, says: naming('want') },
    { code: 'invalid-question', url: `${KITS_URL}&lots=x`, says: naming('lots') },
    { code: 'invalid-question', url: `${KITS_URL}&ruleset=x`, says: naming('ruleset') },
    {
      code: 'invalid-question',
      url: `${KITS_URL}&limits.cost=cheap&limits.labourHours=few`,
      says: naming('limits.cost', 'limits.labourHours'),
    },
    { code: 'invalid-request', url: `${KITS_URL}&want=box-b@`, says: naming('want') },
    { code: 'invalid-request', url: `${KITS_URL}&prefer=beauty`, says: naming('prefer') },
    { code: 'invalid-request', url: `${KITS_URL}&routes=0`, says: naming('routes') },
    { code: 'invalid-request', url: `${KITS_URL}&steps=all`, says: naming('steps') },
    { code: 'invalid-request', url: `${KITS_URL}&labourRate=60.00`, says: naming('labourRate') },
  ],
  askKits: [
    ...posts('/v1/kits', KITS),
    ...names(
      '/v1/kits',
      { vehicle: 'cart-rough' },
      { ...KITS, want: [{ part: ['box-a', '44/10077'] }] },
    ),
    { code: 'unknown-vehicle', url: '/v1/kits', body: { vehicle: 'x' } },
    {
      code: 'unknown-part',
      url: '/v1/kits',
      body: { ...KITS, want: [{ part: 'box-b' }, { part: ['box-a', 'x'] }] },
      says: pointing('/want/1/part/1'),
    },
    {
      code: 'unknown-part',
      url: '/v1/kits',
      body: { ...KITS, owned: [{ part: 'x' }] },
      says: pointing('/owned/0/part'),
    },
    {
      code: 'unknown-position',
      url: '/v1/kits',
      body: { ...KITS, want: [{ part: 'box-b', position: 'x' }] },
      says: pointing('/want/0/position'),
    },
    {
      code: 'unknown-interface',
      url: '/v1/kits',
      body: {
        ...KITS,
        measured: [MEASURED_NOWHERE],
      },
      says: pointing('/measured/0/on/interface'),
    },
    {
      code: 'invalid-question',
      url: '/v1/kits',
      body: {
        ...KITS,
        want: [{ position: 'gearbox', condition: { all: [{ changed: 'x' }] } }],
      },
      says: pointing('/want/0/condition/all/0/changed'),
    },
    {
      code: 'invalid-request',
      url: '/v1/kits',
      body: { ...KITS, offers: [{ part: 'box-b', lot: 'x', price: '9.00' }] },
    },
    {
      code: 'invalid-request',
      url: '/v1/kits',
      body: { ...KITS, limits: { cost: 2500 } },
      says: pointing('/limits/cost'),
    },
  ],
  driveVehicle: [
    ...posts('/v1/driveline', { vehicle: 'cart-1' }),
    ...names(
      '/v1/driveline',
      { vehicle: 'cart-rough' },
      { vehicle: 'cart-1', lines: [{ position: 'gearbox', part: '44/10077' }] },
    ),
    { code: 'unknown-vehicle', url: '/v1/driveline', body: { vehicle: 'x' } },
    {
      code: 'unknown-part',
      url: '/v1/driveline',
      body: { vehicle: 'cart-1', lines: [{ position: 'gearbox', part: 'x' }] },
      says: pointing('/lines/0'),
    },
    {
      code: 'unknown-position',
      url: '/v1/driveline',
      body: { vehicle: 'cart-1', lines: [{ position: 'x', part: 'box-a' }] },
      says: pointing('/lines/0'),
    },
    {
      code: 'invalid-question',
      url: '/v1/driveline',
      body: { vehicle: 'cart-1', routes: ['k1.!'] },
      says: pointing('/routes/0'),
    },
    {
      code: 'unknown-interface',
      url: '/v1/driveline',
      body: { vehicle: 'cart-1', measured: [MEASURED_NOWHERE] },
      says: pointing('/measured/0/on/interface'),
    },
  ],
  inspectVehicle: [
    ...posts('/v1/inspect', { vehicle: 'cart-1' }),
    ...names(
      '/v1/inspect',
      { vehicle: 'cart-rough' },
      { vehicle: 'cart-1', fitted: { gearbox: '44/10077' } },
    ),
    { code: 'unknown-vehicle', url: '/v1/inspect', body: { vehicle: 'x' } },
    {
      code: 'unknown-part',
      url: '/v1/inspect',
      body: { vehicle: 'cart-1', fitted: { engine: 'x' } },
      says: pointing('/fitted/engine'),
    },
    {
      code: 'unknown-position',
      url: '/v1/inspect',
      body: { vehicle: 'cart-1', fitted: { x: 'none' } },
      says: pointing('/fitted/x'),
    },
    { code: 'invalid-question', url: '/v1/inspect', body: { vehicle: 'cart-1', torque: '9' } },
    {
      code: 'unknown-interface',
      url: '/v1/inspect',
      body: { vehicle: 'cart-1', measured: [MEASURED_NOWHERE] },
      says: pointing('/measured/0/on/interface'),
    },
  ],
  mateFaces: [
    ...gets(MATE_URL),
    { code: 'internal-error', url: MATE_URL, rig: buggy },
    { code: 'no-edition', url: MATE_URL, rig: empty },
    { code: 'unknown-edition', url: `${MATE_URL}&edition=9`, says: naming('edition') },
    { code: 'unknown-part', url: '/v1/mate?a=x&b=shaft-a', says: naming('a') },
    {
      code: 'ambiguous-part',
      url: '/v1/mate?a=shaft-a&b=44%2F10077',
      rig: named,
      says: naming('b'),
    },
    { code: 'unknown-interface', url: `${MATE_URL}&b.face=x`, says: naming('b.face') },
    { code: 'invalid-question', url: `${MATE_URL}&adapter=box-a`, says: naming('adapter') },
  ],
  askMate: [
    ...posts('/v1/mate', MATE),
    {
      code: 'ambiguous-part',
      url: '/v1/mate',
      body: { ...MATE, a: { part: '44/10077' } },
      rig: named,
      says: pointing('/a/part'),
    },
    {
      code: 'unknown-part',
      url: '/v1/mate',
      body: { ...MATE, a: { part: 'x' } },
      says: pointing('/a/part'),
    },
    {
      code: 'unknown-interface',
      url: '/v1/mate',
      body: { ...MATE, a: { part: 'box-a', interface: 'x' } },
      says: pointing('/a/interface'),
    },
    {
      code: 'invalid-question',
      url: '/v1/mate',
      body: { ...MATE, b: { inline: { kind: 'cart-flange', side: 'recess', pattern: 7.5 } } },
      says: pointing('/b/inline/pattern'),
    },
    {
      code: 'invalid-question',
      url: '/v1/mate',
      body: { ...MATE, adapters: ['plate-ab', 'box-a'] },
      says: pointing('/adapters/1'),
    },
  ],
  listFittingParts: [
    ...lists('/v1/vehicles/cart-1/fits'),
    { code: 'unknown-vehicle', url: '/v1/vehicles/x/fits', says: naming('id') },
    { code: 'unknown-vehicle', url: '/v1/vehicles/cart-1/fits?donor=x', says: naming('donor') },
    {
      code: 'vehicle-replaced',
      url: '/v1/vehicles/cart-rough/fits',
      rig: named,
      says: naming('id'),
    },
    { code: 'unknown-position', url: '/v1/vehicles/cart-1/fits?position=x' },
    { code: 'unknown-role', url: '/v1/vehicles/cart-1/fits?role=x', says: naming('role') },
    { code: 'unknown-part', url: '/v1/vehicles/cart-1/fits?with.gearbox=x' },
    {
      code: 'ambiguous-part',
      url: '/v1/vehicles/cart-1/fits?with.gearbox=44%2F10077',
      rig: named,
      says: naming('with.gearbox'),
    },
    { code: 'invalid-question', url: '/v1/vehicles/cart-1/fits?fact.x=y' },
    { code: 'invalid-request', url: '/v1/vehicles/%ff/fits', says: naming('id') },
  ],
  listFittedVehicles: [
    ...lists('/v1/parts/box-a/fits'),
    { code: 'unknown-part', url: '/v1/parts/x/fits', says: naming('id') },
    { code: 'unknown-layout', url: '/v1/parts/box-a/fits?layout=x', says: naming('layout') },
    { code: 'invalid-question', url: '/v1/parts/box-a/fits?fact.x=y' },
    { code: 'invalid-request', url: '/v1/parts/box-a/fits?group=make', says: naming('group') },
  ],
  listParts: [
    ...lists('/v1/parts'),
    { code: 'unknown-role', url: '/v1/parts?role=gearbx', says: naming('role') },
    { code: 'unknown-kind', url: '/v1/parts?kind=x&role=gearbox', says: naming('kind') },
    { code: 'invalid-question', url: '/v1/parts?kind=x&role=x', says: naming('role', 'kind') },
    { code: 'invalid-request', url: '/v1/parts?superseded=yes', says: naming('superseded') },
    { code: 'invalid-request', url: '/v1/parts?text=', says: naming('text') },
  ],
  readPart: [
    ...reads('/v1/parts/box-a'),
    { code: 'unknown-part', url: '/v1/parts/box-aa', says: naming('id') },
    { code: 'invalid-request', url: '/v1/parts/%ff' },
  ],
  listVehicles: [
    ...lists('/v1/vehicles'),
    { code: 'invalid-request', url: '/v1/vehicles?year=04-2', says: naming('year') },
    { code: 'invalid-request', url: '/v1/vehicles?built=2004-13', says: naming('built') },
    { code: 'invalid-request', url: '/v1/vehicles?replaced=yes', says: naming('replaced') },
    { code: 'invalid-request', url: '/v1/vehicles?make=', says: naming('make') },
    { code: 'invalid-question', url: '/v1/vehicles?fact.x=y', says: naming('fact.x') },
    { code: 'unknown-layout', url: '/v1/vehicles?layout=x', says: naming('layout') },
  ],
  identifyPart: [
    ...posts('/v1/parts/identify', { role: 'gearbox' }),
    {
      code: 'unknown-role',
      url: '/v1/parts/identify',
      body: { role: 'box' },
      says: pointing('/role'),
    },
    {
      code: 'unknown-kind',
      url: '/v1/parts/identify',
      body: { measured: [{ on: { kind: 'x', parameter: 'teeth' }, value: '24' }] },
      says: pointing('/measured/0/on/kind'),
    },
    {
      code: 'unknown-vehicle',
      url: '/v1/parts/identify',
      body: { vehicle: 'cart-2' },
      says: pointing('/vehicle'),
    },
    {
      code: 'vehicle-replaced',
      url: '/v1/parts/identify',
      body: { vehicle: 'cart-rough' },
      rig: named,
      says: pointing('/vehicle'),
    },
    {
      code: 'invalid-question',
      url: '/v1/parts/identify',
      body: { measured: [{ on: { interface: 'x', parameter: 'teeth' }, value: '24' }] },
      says: pointing('/measured/0/on/interface'),
    },
    {
      code: 'invalid-cursor',
      url: '/v1/parts/identify',
      body: { cursor: 'x' },
      says: pointing('/cursor'),
    },
  ],
  identifyVehicle: [
    ...posts('/v1/vehicles/identify', { make: 'Tarn' }),
    {
      code: 'invalid-question',
      url: '/v1/vehicles/identify',
      body: { vin: 'short' },
      says: pointing('/vin'),
    },
    { code: 'invalid-question', url: '/v1/vehicles/identify', body: { facts: { x: 'y' } } },
  ],
  readVehicle: [
    ...reads('/v1/vehicles/cart-1'),
    { code: 'unknown-vehicle', url: '/v1/vehicles/cart-2', says: naming('id') },
    {
      code: 'vehicle-replaced',
      url: '/v1/vehicles/cart-rough',
      rig: named,
      says: naming('id'),
    },
    { code: 'invalid-request', url: '/v1/vehicles/%ff' },
  ],
  listRoles: lists('/v1/roles'),
  readRole: [
    ...reads('/v1/roles/gearbox'),
    { code: 'unknown-role', url: '/v1/roles/x', says: naming('id') },
    { code: 'invalid-request', url: '/v1/roles/%ff' },
  ],
  listKinds: lists('/v1/kinds'),
  readKind: [
    ...reads('/v1/kinds/cart-flange'),
    { code: 'unknown-kind', url: '/v1/kinds/x', says: naming('id') },
    { code: 'invalid-request', url: '/v1/kinds/%ff' },
  ],
  listLayouts: lists('/v1/layouts'),
  readLayout: [
    ...reads('/v1/layouts/cart'),
    { code: 'unknown-layout', url: '/v1/layouts/x' },
    { code: 'invalid-request', url: '/v1/layouts/%ff' },
    { code: 'invalid-request', url: '/v1/layouts/%00' },
  ],
  listEditions: [
    ...gets('/v1/editions?').map((one) => ({ ...one, url: one.url.replace('?&', '?') })),
    { code: 'internal-error', url: '/v1/editions', rig: buggy },
    { code: 'invalid-request', url: '/v1/editions?edition=1', says: naming('edition') },
    { code: 'invalid-request', url: '/v1/editions?limit=0', says: naming('limit') },
    { code: 'invalid-request', url: '/v1/editions?limit=201', says: naming('limit') },
    { code: 'invalid-cursor', url: '/v1/editions?cursor=x', says: naming('cursor') },
  ],
  readEdition: [
    ...gets('/v1/editions/1?').map((one) => ({ ...one, url: one.url.replace('?&', '?') })),
    { code: 'internal-error', url: '/v1/editions/1', rig: buggy },
    { code: 'no-edition', url: '/v1/editions/latest', rig: empty },
    { code: 'unknown-edition', url: '/v1/editions/9', says: naming('number') },
    { code: 'unknown-edition', url: '/v1/editions/999999999999999', says: naming('number') },
    { code: 'invalid-request', url: '/v1/editions/0', says: naming('number') },
    { code: 'invalid-request', url: '/v1/editions/first', says: naming('number') },
    { code: 'invalid-request', url: '/v1/editions/01', says: naming('number') },
    { code: 'invalid-request', url: '/v1/editions/%ff', says: naming('number') },
  ],
  listCalculations: [
    { code: 'invalid-request', url: '/v1/calculate?limit=1', says: naming('limit') },
    { code: 'method-not-allowed', url: '/v1/calculate', method: 'DELETE' },
    { code: 'not-acceptable', url: '/v1/calculate', headers: { accept: 'text/html' } },
    { code: 'url-too-long', url: `/v1/calculate?${LONG}` },
  ],
  ...Object.fromEntries(CALCULATE_EXAMPLES.flatMap(calculators)),
  listCodes: [
    { code: 'invalid-request', url: '/v1/codes?group=screws', says: naming('group') },
    { code: 'invalid-request', url: '/v1/codes?limit=1', says: naming('limit') },
    { code: 'method-not-allowed', url: '/v1/codes', method: 'DELETE' },
    { code: 'not-acceptable', url: '/v1/codes', headers: { accept: 'text/html' } },
    { code: 'url-too-long', url: `/v1/codes?${LONG}` },
  ],
  listLimits: [
    { code: 'invalid-request', url: '/v1/limits?limit=1', says: naming('limit') },
    { code: 'method-not-allowed', url: '/v1/limits', method: 'DELETE' },
    { code: 'not-acceptable', url: '/v1/limits', headers: { accept: 'text/html' } },
    { code: 'url-too-long', url: `/v1/limits?${LONG}` },
  ],
  isLive: [
    { code: 'method-not-allowed', url: '/livez', method: 'DELETE' },
    { code: 'not-acceptable', url: '/livez', headers: { accept: 'text/html' } },
    { code: 'url-too-long', url: `/livez?${LONG}` },
  ],
  isReady: [
    { code: 'method-not-allowed', url: '/readyz', method: 'DELETE' },
    { code: 'not-acceptable', url: '/readyz', headers: { accept: 'text/html' } },
    { code: 'url-too-long', url: `/readyz?${LONG}` },
    { code: 'no-edition', url: '/readyz', rig: empty },
    { code: 'store-fault', url: '/readyz', rig: damaged },
    { code: 'stopping', url: '/readyz', isStopping: true },
    {
      code: 'internal-error',
      url: '/readyz',
      rig: failing,
    },
  ],
};

/** Asks it of a service of its own, or of that one. */
export async function provoke(
  { rig: options, url, method, body, headers, isStopping }: Provocation,
  { app }: Rig = rigOf(options),
): Promise<Response> {
  const env = isStopping === undefined ? {} : { lifecycle: { isStopping } };
  if (body === undefined) {
    return app.request(url, { method: method ?? 'GET', headers: headers ?? {} }, env);
  }
  const isRaw = typeof body === 'string' || body instanceof ReadableStream;
  const posted = {
    method: method ?? 'POST',
    headers: { 'content-type': 'application/json', ...headers },
    body: isRaw ? body : JSON.stringify(body),
    duplex: 'half' as const,
  };
  return app.request(url, posted, env);
}
