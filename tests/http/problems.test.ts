/**
 * Every problem that a route says it can answer with, provoked on that route, and nothing else:
 * the table here and the contract name the same codes. What is refused before there is a route
 * comes at the end, what never becomes a request is for the server's own test.
 */

import { describe, expect, test } from 'vitest';
import { OPERATIONS } from '../../src/contract/operations.js';
import { type ProblemWire, problemSchema } from '../../src/contract/problem.js';
import { problemsOf } from '../../src/http/openapi.js';
import { BODY_LIMIT, PROBLEM_CODES, PROBLEMS, type ProblemCode } from '../../src/http/problem.js';
import type { UseCases } from '../../src/http/service.js';
import { StoreFault } from '../../src/usecases/errors.js';
import { MemoryStore } from '../memory-store.js';
import { json, type Rig, type RigOptions, rigOf } from './fixture.js';

interface Provocation {
  readonly code: ProblemCode;
  readonly url: string;
  readonly body?: unknown;
  readonly headers?: Readonly<Record<string, string>>;
  readonly rig?: RigOptions;
  readonly isStopping?: true;
  /** What the problem has to say beside its code. */
  readonly says?: Partial<ProblemWire>;
}

const LONG = 'x'.repeat(8300);
const SECRET = 'the disk at bay 7 hums';

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
}

const damaged: RigOptions = { documents: [], store: new FailingStore(new StoreFault(SECRET, '')) };
const empty: RigOptions = { documents: [] };
const broken = (): never => {
  throw new TypeError(SECRET);
};
const buggy: RigOptions = {
  useCases: { checkFit: broken, inspectVehicle: broken, mateFaces: broken } satisfies UseCases,
};

const pointing = (pointer: string): Partial<ProblemWire> => ({
  errors: [expect.objectContaining({ pointer })],
});
const naming = (parameter: string): Partial<ProblemWire> => ({
  errors: [expect.objectContaining({ parameter })],
});

/** What every GET below /v1 refuses. */
function gets(url: string): Provocation[] {
  return [
    { code: 'invalid-request', url: `${url}&x=1`, says: naming('x') },
    { code: 'not-acceptable', url, headers: { accept: 'text/html' } },
    { code: 'url-too-long', url: `${url}&torque=${LONG}`, says: { limit: 8192 } },
    { code: 'store-fault', url, rig: damaged },
  ];
}

/** What every POST refuses. */
function posts(url: string, body: object): Provocation[] {
  const headers = { 'content-type': 'text/plain' };
  return [
    { code: 'invalid-request', url, body: { ...body, x: 1 }, says: pointing('/x') },
    { code: 'malformed-json', url, body: '{"vehicle": }' },
    { code: 'malformed-request', url, body: endingEarly() },
    { code: 'body-too-large', url, body: '"'.padEnd(BODY_LIMIT + 1, 'x'), says: { limit: 1e6 } },
    { code: 'unsupported-media-type', url, body, headers },
    { code: 'not-acceptable', url, body, headers: { accept: 'text/html' } },
    { code: 'url-too-long', url: `${url}?${LONG}`, body, says: { limit: 8192 } },
    { code: 'internal-error', url, body, rig: buggy },
    { code: 'store-fault', url, body, rig: damaged },
    { code: 'no-edition', url, body, rig: empty },
    { code: 'unknown-edition', url, body: { ...body, edition: 9 }, says: pointing('/edition') },
  ];
}

function endingEarly(): ReadableStream {
  let isFirst = true;
  return new ReadableStream({
    pull(controller) {
      if (isFirst) controller.enqueue(new TextEncoder().encode('{"vehicle"'));
      else controller.error(new Error('the connection was reset'));
      isFirst = false;
    },
  });
}

const FIT = { vehicle: 'cart-1', part: 'box-a' };
const FIT_URL = '/v1/fit?vehicle=cart-1&part=box-a';
const MATE = { a: { part: 'box-a' }, b: { part: 'shaft-a' } };
const MATE_URL = '/v1/mate?a=box-a&b=shaft-a';

const PROVOCATIONS: Readonly<Record<string, readonly Provocation[]>> = {
  checkFit: [
    ...gets(FIT_URL),
    { code: 'internal-error', url: FIT_URL, rig: buggy },
    { code: 'no-edition', url: FIT_URL, rig: empty },
    { code: 'unknown-edition', url: `${FIT_URL}&edition=9`, says: naming('edition') },
    { code: 'unknown-vehicle', url: '/v1/fit?vehicle=x&part=box-a', says: naming('vehicle') },
    { code: 'unknown-part', url: '/v1/fit?vehicle=cart-1&part=x', says: naming('part') },
    { code: 'unknown-part', url: `${FIT_URL}&fitted.engine=x`, says: naming('fitted.engine') },
    { code: 'unknown-position', url: `${FIT_URL}&with.x=box-a`, says: naming('with.x') },
    { code: 'invalid-question', url: `${FIT_URL}&torque=9`, says: naming('torque') },
    { code: 'invalid-question', url: `${FIT_URL}&adapter.x=box-a`, says: naming('adapter.x') },
    { code: 'changes-not-supported', url: `${FIT_URL}&changes=yes`, says: naming('changes') },
  ],
  askFit: [
    ...posts('/v1/fit', FIT),
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
    { code: 'changes-not-supported', url: '/v1/fit', body: { ...FIT, changes: 'yes' } },
  ],
  inspectVehicle: [
    ...posts('/v1/inspect', { vehicle: 'cart-1' }),
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
  ],
  mateFaces: [
    ...gets(MATE_URL),
    { code: 'internal-error', url: MATE_URL, rig: buggy },
    { code: 'no-edition', url: MATE_URL, rig: empty },
    { code: 'unknown-edition', url: `${MATE_URL}&edition=9`, says: naming('edition') },
    { code: 'unknown-part', url: '/v1/mate?a=x&b=shaft-a', says: naming('a') },
    { code: 'unknown-interface', url: `${MATE_URL}&b.face=x`, says: naming('b.face') },
    { code: 'invalid-question', url: `${MATE_URL}&adapter=box-a`, says: naming('adapter') },
  ],
  askMate: [
    ...posts('/v1/mate', MATE),
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
  listEditions: [
    ...gets('/v1/editions?').map((one) => ({ ...one, url: one.url.replace('?&', '?') })),
    {
      code: 'internal-error',
      url: '/v1/editions',
      rig: { documents: [], store: new FailingStore(new TypeError(SECRET)) },
    },
  ],
  isLive: [
    { code: 'not-acceptable', url: '/livez', headers: { accept: 'text/html' } },
    { code: 'url-too-long', url: `/livez?${LONG}` },
  ],
  isReady: [
    { code: 'not-acceptable', url: '/readyz', headers: { accept: 'text/html' } },
    { code: 'url-too-long', url: `/readyz?${LONG}` },
    { code: 'no-edition', url: '/readyz', rig: empty },
    { code: 'store-fault', url: '/readyz', rig: damaged },
    { code: 'stopping', url: '/readyz', isStopping: true },
    {
      code: 'internal-error',
      url: '/readyz',
      rig: { documents: [], store: new FailingStore(new TypeError(SECRET)) },
    },
  ],
};

async function ask(rig: Rig, { url, body, headers, isStopping }: Provocation): Promise<Response> {
  const env = isStopping === undefined ? {} : { lifecycle: { isStopping } };
  if (body === undefined) return rig.app.request(url, { headers: headers ?? {} }, env);
  const isRaw = typeof body === 'string' || body instanceof ReadableStream;
  const posted = {
    method: 'POST',
    headers: { 'content-type': 'application/json', ...headers },
    body: isRaw ? body : JSON.stringify(body),
    duplex: 'half',
  };
  return rig.app.request(url, posted, env);
}

describe.each(Object.entries(PROVOCATIONS))('%s', (operationId, provocations) => {
  test.each(provocations.map((one) => [one.code, one.url.slice(0, 60), one] as const))(
    '%s: %s',
    async (code, _, provocation) => {
      const rig = rigOf(provocation.rig);
      const response = await ask(rig, provocation);
      const problem = problemSchema.parse(await response.json());
      const { status, title, retry } = PROBLEMS[code];
      expect(problem).toMatchObject({ code, status, title, retry, ...provocation.says });
      expect(problem.type).toBe(`/problems/${code}`);
      expect(response.status).toBe(status);
      expect(response.headers.get('content-type')).toBe('application/problem+json');
      expect(response.headers.get('x-request-id')).toBe(problem.instance);
      expect(response.headers.get('retry-after')).toBe(status === 503 ? '5' : null);
      expect(JSON.stringify(problem)).not.toContain(SECRET);
      const isLogged = rig.lines.some((line) => JSON.stringify(line).includes(SECRET));
      expect(isLogged).toBe(provocation.rig !== undefined && provocation.rig !== empty);
    },
  );

  test('these are the problems that the contract names', () => {
    const operation = OPERATIONS.find((one) => one.operationId === operationId);
    if (operation === undefined) throw new Error('no such operation');
    const named = new Set(provocations.map(({ code }) => code));
    expect([...named].sort()).toEqual([...problemsOf(operation)].sort());
  });
});

test('every operation is in the table', () => {
  const ids = OPERATIONS.map(({ operationId }) => operationId);
  expect(Object.keys(PROVOCATIONS).sort()).toEqual(ids.sort());
});

describe('whatever path is asked', () => {
  test('one that is not there', async () => {
    const { client } = rigOf();
    for (const path of [
      '/',
      '/v1',
      '/v1/fit/',
      '/V1/fit',
      '/v1/fits',
      '/__proto__',
      '/%00',
      '/%',
    ]) {
      const response = await client.get(path);
      expect([path, response.status]).toEqual([path, 404]);
      expect(problemSchema.parse(json(response)).code).toBe('unknown-path');
    }
    const long = await client.get(`/${LONG}`);
    expect([long.status, json(long).code]).toEqual([414, 'url-too-long']);
  });

  test.each([
    ['put', '/v1/fit', 'GET, HEAD, POST, OPTIONS'],
    ['delete', '/v1/mate', 'GET, HEAD, POST, OPTIONS'],
    ['get', '/v1/inspect', 'POST, OPTIONS'],
    ['patch', '/v1/inspect', 'POST, OPTIONS'],
    ['post', '/v1/editions', 'GET, HEAD, OPTIONS'],
    ['post', '/livez', 'GET, HEAD, OPTIONS'],
    ['trace', '/readyz', 'GET, HEAD, OPTIONS'],
    ['post', '/openapi.json', 'GET, HEAD, OPTIONS'],
    ['post', '/problems', 'GET, HEAD, OPTIONS'],
  ] as const)('a method that it does not take: %s %s', async (method, path, allow) => {
    const { client } = rigOf();
    const response = await client[method](path);
    expect([response.status, response.headers.allow]).toEqual([405, allow]);
    expect(problemSchema.parse(json(response)).code).toBe('method-not-allowed');
    const options = await client.options(path);
    expect([options.status, options.headers.allow, options.text]).toEqual([204, allow, '']);
  });
});

describe('what a type leads to', () => {
  test.each(PROBLEM_CODES)('%s', async (code) => {
    const { client } = rigOf();
    const page = await client.get(`/problems/${code}`).expect(200);
    expect(page.headers['content-type']).toBe('text/plain; charset=utf-8');
    expect(page.text).toContain(PROBLEMS[code].title);
    expect(page.text).toContain(`Code ${code}, status ${PROBLEMS[code].status}.`);
  });

  test('the list names them all', async () => {
    const { client } = rigOf();
    const page = await client.get('/problems').expect(200);
    const lines = page.text.trim().split('\n');
    expect(lines).toEqual(
      PROBLEM_CODES.map((code) => `${PROBLEMS[code].status} /problems/${code}`),
    );
    const response = await client.get('/problems/nope').expect(404);
    expect(problemSchema.parse(json(response)).code).toBe('unknown-problem');
  });
});

test('every type of problem is provoked somewhere', () => {
  const routed = Object.values(PROVOCATIONS).flatMap((some) => some.map(({ code }) => code));
  const here = ['unknown-path', 'method-not-allowed', 'unknown-problem'];
  // What never becomes a request: see the test of the server.
  const early = ['request-timeout', 'expectation-failed', 'headers-too-large'];
  expect([...new Set([...routed, ...here, ...early])].sort()).toEqual([...PROBLEM_CODES].sort());
});
