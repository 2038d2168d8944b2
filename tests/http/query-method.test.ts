/**
 * QUERY: a question in a body, by a method that says that nothing is changed. It has the answer
 * that POST has, and besides what only a safe method can have: a validator, and a lifetime.
 */

import { setImmediate } from 'node:timers/promises';
import { describe, expect, test } from 'vitest';
import type { UseCases } from '../../src/http/service.js';
import { json, LARGER_CART, publish, type Rig, rigOf } from './fixture.js';
import { PROVOCATIONS, provoke } from './provocations.js';
import { parts, raw, serve } from './socket.js';

interface Asked {
  readonly path: string;
  readonly useCase: keyof UseCases;
  readonly body: object;
  /** How a URL says the same, with the edition and the language; null where none can. */
  readonly search: string | null;
}

const QUESTIONS: readonly Asked[] = [
  {
    path: '/v1/fit',
    useCase: 'checkFit',
    body: { vehicle: 'cart-1', part: 'box-b' },
    search: 'edition=1&lang=en&part=box-b&vehicle=cart-1',
  },
  {
    path: '/v1/fit',
    useCase: 'checkFit',
    body: {
      vehicle: 'cart-1',
      part: 'box-c',
      changes: 'no',
      fitted: { engine: 'none' },
      torque: '90 N.m',
      ignorePresent: true,
    },
    search:
      'changes=no&edition=1&fitted.engine=none&ignorePresent=true&lang=en&part=box-c&' +
      'torque=90%20N.m&vehicle=cart-1',
  },
  {
    path: '/v1/fit',
    useCase: 'checkFit',
    body: {
      vehicle: 'cart-1',
      part: 'box-c',
      fitted: { 'wheel-shaft': { left: 'wheel-shaft-l', right: 'none' } },
    },
    search: null,
  },
  { path: '/v1/inspect', useCase: 'inspectVehicle', body: { vehicle: 'cart-1' }, search: null },
  {
    path: '/v1/mate',
    useCase: 'mateFaces',
    body: {
      a: { part: 'box-b', interface: 'rear' },
      b: { part: 'shaft-a' },
      adapters: ['plate-ab'],
    },
    search: 'a=box-b&a.face=rear&adapter=plate-ab&b=shaft-a&edition=1&lang=en',
  },
  {
    path: '/v1/mate',
    useCase: 'mateFaces',
    body: { a: { part: 'box-a' }, b: { inline: { kind: 'cart-flange', side: 'recess' } } },
    search: null,
  },
];

async function ask({ app }: Rig, method: string, path: string, body: object, headers: object = {}) {
  // In a turn of its own, as requests come from a line: what is read in one is read once.
  await setImmediate();
  return app.request(path, {
    method,
    headers: { 'content-type': 'application/json', ...headers },
    body: JSON.stringify(body),
  });
}

describe.each(QUESTIONS)('$path $body', ({ path, useCase, body, search }) => {
  test('has the answer of POST', async () => {
    const rig = rigOf();
    const asked = await ask(rig, 'QUERY', path, body);
    const posted = await ask(rig, 'POST', path, body);
    expect([asked.status, posted.status]).toEqual([200, 200]);
    expect(await asked.text()).toBe(await posted.text());
    for (const name of ['content-type', 'content-language', 'content-location', 'vary']) {
      expect([name, asked.headers.get(name)]).toEqual([name, posted.headers.get(name)]);
    }
    expect(posted.headers.get('etag')).toBeNull();
    expect(posted.headers.get('cache-control')).toBe('no-store');
  });

  test('is not judged again where the client has the answer', async () => {
    const rig = rigOf();
    const first = await ask(rig, 'QUERY', path, body);
    const etag = first.headers.get('etag') ?? '';
    expect(etag).toMatch(/^"[\w-]{22}"$/);
    expect(rig.judged[useCase]).toBe(1);
    for (const known of [etag, `W/${etag}`, `"other", ${etag}`]) {
      const again = await ask(rig, 'QUERY', path, body, { 'if-none-match': known });
      expect([again.status, await again.text()]).toEqual([304, '']);
      for (const name of ['etag', 'cache-control', 'content-location', 'vary', 'faying-edition']) {
        expect([name, again.headers.get(name)]).toEqual([name, first.headers.get(name)]);
      }
    }
    expect(rig.judged[useCase]).toBe(1);
    const other = await ask(rig, 'QUERY', path, body, { 'if-none-match': '"other"' });
    expect([other.status, rig.judged[useCase]]).toEqual([200, 2]);
    publish(rig.store, LARGER_CART);
    const newer = await ask(rig, 'QUERY', path, body, { 'if-none-match': etag });
    expect([newer.status, newer.headers.get('faying-edition')]).toEqual([200, '2']);
  });

  test('is at the address of the same question by GET, where there is one', async () => {
    const rig = rigOf();
    const asked = await ask(rig, 'QUERY', path, body);
    const place = asked.headers.get('content-location');
    expect(place).toBe(search === null ? null : `${path}?${search}&view=full`);
    if (place === null) return;
    const got = await rig.app.request(place);
    expect(got.headers.get('content-location')).toBe(place);
    expect(got.headers.get('etag')).toBe(asked.headers.get('etag'));
    expect(await got.text()).toBe(await asked.text());
  });

  test('holds as long as by GET, and differs by what GET differs by', async () => {
    const rig = rigOf();
    const asked = await ask(rig, 'QUERY', path, body);
    expect(asked.headers.get('cache-control')).toContain('max-age=30, stale-while-revalidate=300');
    expect(asked.headers.get('vary')).toBe('Accept-Language');
    const pinned = await ask(rig, 'QUERY', path, { ...body, edition: 1, lang: 'en' });
    // The kit of an answer has prices, and those have no past.
    const hasPrices = path === '/v1/fit' && !('changes' in body);
    const kept = hasPrices ? asked.headers.get('cache-control') : 'public, max-age=86400';
    expect(pinned.headers.get('cache-control')).toBe(kept);
    expect(pinned.headers.get('vary')).toBeNull();
    expect(pinned.headers.get('etag')).toBe(asked.headers.get('etag'));
  });
});

describe('is refused as POST is', () => {
  const asking = ['askFit', 'inspectVehicle', 'askMate'].flatMap((operationId) =>
    (PROVOCATIONS[operationId] ?? [])
      .filter(({ method }) => method === undefined)
      .map((one) => [operationId, one.code, one] as const),
  );

  test.each(asking)('%s: %s', async (_, code, provocation) => {
    const asked = await provoke({ ...provocation, method: 'QUERY' }, rigOf(provocation.rig));
    const problem = await asked.json();
    expect(problem).toMatchObject({ code, ...provocation.says });
    const cached = [404, 409, 410].includes(asked.status) ? 'public, max-age=30' : 'no-store';
    expect(asked.headers.get('cache-control')).toBe(cached);
  });
});

describe('the paths that take it', () => {
  test.each(['/v1/fit', '/v1/inspect', '/v1/mate'])('say so: %s', async (path) => {
    const { client } = rigOf();
    const options = await client.options(path).expect(204);
    expect(options.headers.allow).toContain('POST, QUERY, OPTIONS');
    for (const answer of [options, await client.delete(path), await client.post(path)]) {
      expect(answer.headers['accept-query']).toBe('application/json');
    }
  });

  test.each(['/v1/editions', '/livez', '/openapi.json', '/problems'])('not so %s', async (path) => {
    const { app } = rigOf();
    const refused = await app.request(path, { method: 'QUERY' });
    expect([refused.status, refused.headers.get('allow')]).toEqual([405, 'GET, HEAD, OPTIONS']);
    expect(refused.headers.get('accept-query')).toBeNull();
  });
});

describe('on the line', () => {
  const body = JSON.stringify({ vehicle: 'cart-1' });
  const head = `QUERY /v1/inspect HTTP/1.1\r\nhost: x\r\ncontent-type: application/json\r\n`;
  const close = 'connection: close\r\n\r\n';

  test.each([
    ['with a length', `${head}content-length: ${body.length}\r\n${close}${body}`],
    [
      'in chunks',
      `${head}transfer-encoding: chunked\r\n${close}` +
        `${body.length.toString(16)}\r\n${body}\r\n0\r\n\r\n`,
    ],
  ])('it is read: %s', async (_, bytes) => {
    const { server, rig } = await serve();
    const answer = parts(await raw(server, bytes));
    expect(answer.status).toBe(200);
    expect(json({ text: answer.body })).toMatchObject({ vehicle: 'cart-1' });
    expect(rig.lines.at(-1)).toMatchObject({ method: 'QUERY', route: '/v1/inspect', status: 200 });
  });

  test('and so it is by a client that knows no more of it than its name', async () => {
    const { server } = await serve();
    const headers = { 'content-type': 'application/json' };
    const response = await fetch(`${server.url}/v1/inspect`, { method: 'QUERY', headers, body });
    expect(response.status).toBe(200);
    const etag = response.headers.get('etag') ?? '';
    const known = { ...headers, 'if-none-match': etag };
    const again = await fetch(`${server.url}/v1/inspect`, {
      method: 'QUERY',
      headers: known,
      body,
    });
    expect(again.status).toBe(304);
  });
});
