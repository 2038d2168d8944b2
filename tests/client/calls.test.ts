/**
 * The client against the service as it runs: answers, problems, pages, one edition, the language,
 * the key, and giving up.
 */

import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { FayingClient, FayingProblem, UnexpectedAnswer } from '../../src/client/client.js';
import { CART } from '../cli/catalogue.js';
import { LARGER_CART, publish } from '../http/fixture.js';
import { type RunningService, runningService, serving } from './running-service.js';

let service: RunningService;
let client: FayingClient;

beforeAll(async () => {
  service = await runningService();
  client = new FayingClient({ baseUrl: service.url });
});
afterAll(() => service.stop());

const LINKAGE = { vehicle: 'lirren-1', part: 'linkage-cables' };

/** What a promise that must be rejected is rejected with. */
async function thrown(asked: Promise<unknown>): Promise<unknown> {
  const nothing = Symbol('nothing');
  const error = await asked.then(
    () => nothing,
    (reason: unknown) => reason,
  );
  if (error === nothing) throw new Error('there was an answer');
  return error;
}

describe('an answer', () => {
  test('comes back as it is', async () => {
    const query = { vehicle: 'lirren-1', part: 'bracket-20' };
    const answer = await client.get('/v1/fit', { params: { query } });
    expect(answer).toMatchObject({ verdict: 'fits', alone: 'holds', edition: 1, lang: 'en' });
  });

  test('is that of the same question in a body', async () => {
    const posted = await client.post('/v1/fit', { body: { ...LINKAGE, changes: 'no' } });
    const query = { ...LINKAGE, changes: 'no' } as const;
    const got = await client.get('/v1/fit', { params: { query } });
    expect(posted).toEqual(got);
  });

  test('is to what was asked, places and facts and several parts among it', async () => {
    const asked = await recorded(async (fetch) => {
      const told = new FayingClient({ baseUrl: 'http://nowhere.example', fetch });
      await told.get('/v1/vehicles/{id}/fits', {
        params: {
          path: { id: 'a b/c' },
          query: {
            part: ['bracket-20', 'number:44/10 077'],
            with: { 'with.clutch': 'clutch-late', 'with.linkage': 'none' },
            fact: { 'fact.axle-tag': 'b' },
          },
        },
      });
    });
    expect(asked.map(({ url }) => url)).toEqual([
      'http://nowhere.example/v1/vehicles/a%20b%2Fc/fits' +
        '?part=bracket-20&part=number%3A44%2F10%20077' +
        '&with.clutch=clutch-late&with.linkage=none&fact.axle-tag=b',
    ]);
  });
});

describe('a problem', () => {
  test('is thrown, with its code, where and what to do', async () => {
    const query = { vehicle: 'liren-1', part: 'bracket-20' };
    const error = await thrown(client.get('/v1/fit', { params: { query } }));
    expect(error).toBeInstanceOf(FayingProblem);
    if (!(error instanceof FayingProblem)) return;
    expect(error).toMatchObject({
      name: 'FayingProblem',
      code: 'unknown-vehicle',
      status: 404,
      retry: 'with-change',
      retryAfterMs: null,
      ask: [],
      message: 'There is no vehicle "liren-1". Did you mean \'lirren-1\'?',
    });
    expect(error.errors).toMatchObject([{ parameter: 'vehicle', code: 'unknown-vehicle' }]);
  });

  test('that no program knows yet is one all the same', async () => {
    const problem = {
      type: '/problems/tide-too-low',
      title: 'Tide',
      status: 409,
      detail: 'The tide is low.',
      code: 'tide-too-low',
      retry: 'at-high-tide',
      errors: [],
      lang: 'en',
      instance: '1',
    };
    const fetch = async () => Response.json(problem, { status: 409 });
    const told = new FayingClient({ baseUrl: 'http://nowhere.example', fetch });
    const error = await thrown(told.get('/livez'));
    expect(error).toMatchObject({ name: 'FayingProblem', code: 'tide-too-low', status: 409 });
  });

  test.each([
    ['a page', '<h1>Bad gateway</h1>', '<h1>Bad gateway</h1>'],
    ['something else', '{"error":"bad gateway"}', { error: 'bad gateway' }],
  ])('that is %s is none of the service', async (_, sent, body) => {
    const fetch = async () => new Response(sent, { status: 502 });
    const told = new FayingClient({ baseUrl: 'http://nowhere.example', fetch });
    const error = await thrown(told.get('/livez'));
    expect(error).toBeInstanceOf(UnexpectedAnswer);
    expect(error).toMatchObject({ status: 502, body });
  });
});

describe('a list', () => {
  test('is read page after page', async () => {
    const counts: number[] = [];
    const params = { query: { limit: 4 } };
    for await (const page of client.pages('/v1/vehicles', { params })) {
      counts.push(page.items.length);
      expect(page.counts.total).toBeGreaterThan(4);
    }
    expect(counts.length).toBeGreaterThan(2);
    expect(counts.slice(0, -1).every((count) => count === 4)).toBe(true);
  });

  test('is read entry after entry, with its filters on every page', async () => {
    const all: string[] = [];
    const params = { query: { make: 'Corrablyn', limit: 1 } };
    for await (const { id, make } of client.items('/v1/vehicles', { params })) {
      expect(make).toBe('Corrablyn');
      all.push(id);
    }
    const query = { make: 'Corrablyn', limit: 200 };
    const { items } = await client.get('/v1/vehicles', { params: { query } });
    expect(all).toEqual(items.map(({ id }) => id));
    expect(all.length).toBeGreaterThan(1);
  });

  test('is read no further than it is looked at', async () => {
    const asked = await recorded(async (fetch) => {
      const counted = new FayingClient({ baseUrl: service.url, fetch });
      for await (const _ of counted.items('/v1/kinds', { params: { query: { limit: 2 } } })) break;
    }, globalThis.fetch);
    expect(asked).toHaveLength(1);
  });
});

describe('one edition', () => {
  test('answers whatever is published meanwhile', async () => {
    const own = await runningService(CART);
    try {
      const floating = new FayingClient({ baseUrl: own.url });
      const pinned = await floating.pinned();
      publish(own.store, LARGER_CART);
      expect(pinned.edition).toBe(1);
      const query = { vehicle: 'cart-1', part: 'box-c' };
      const fit = await pinned.get('/v1/fit', { params: { query } });
      const kits = await pinned.post('/v1/kits', {
        body: { vehicle: 'cart-1', want: [{ part: 'box-c' }] },
      });
      const { edition } = await pinned.get('/v1/roles');
      const batch = pinned.askBatch([query]);
      for await (const _ of batch);
      expect([fit.edition, kits.edition, edition, batch.start?.edition]).toEqual([1, 1, 1, 1]);
      const newest = await floating.get('/v1/fit', { params: { query } });
      expect([floating.edition, newest.edition]).toEqual([null, 2]);
      // What is of no edition can be asked of a pinned client as well.
      expect(await pinned.get('/v1/limits')).toMatchObject({ items: expect.any(Array) });
      const next = { ...query, edition: 2 };
      expect(await pinned.get('/v1/fit', { params: { query: next } })).toMatchObject({
        edition: 2,
      });
    } finally {
      await own.stop();
    }
  });

  test('that is not there is a problem', async () => {
    const error = await thrown(client.at(99).get('/v1/roles'));
    expect(error).toMatchObject({ code: 'unknown-edition' });
  });
});

describe('what the client is told', () => {
  test('the language goes into each question that takes one', async () => {
    const german = new FayingClient({ baseUrl: service.url, lang: 'de' });
    const query = { vehicle: 'lirren-1', part: 'bracket-20' };
    const got = await german.get('/v1/fit', { params: { query } });
    const posted = await german.post('/v1/fit', { body: query });
    expect([got.lang, posted.lang, posted.summary.text]).toEqual(['de', 'de', got.summary.text]);
    const error = await thrown(german.get('/v1/fit', { params: { query: { part: 'x' } } }));
    expect(error).toMatchObject({ problem: { lang: 'de' } });
    const english = { ...query, lang: 'en' };
    expect(await german.get('/v1/fit', { params: { query: english } })).toMatchObject({
      lang: 'en',
    });
  });

  test('goes in a header where the question has no place for it', async () => {
    const asked = await recorded(async (fetch) => {
      const german = new FayingClient({ baseUrl: 'http://nowhere.example', lang: 'de', fetch });
      await german.get('/v1/editions');
      await german.get('/v1/roles');
    });
    expect(asked.map(({ url, headers }) => [url, headers.get('accept-language')])).toEqual([
      ['http://nowhere.example/v1/editions', 'de'],
      ['http://nowhere.example/v1/roles?lang=de', null],
    ]);
  });

  test('the key goes with every request', async () => {
    const asked = await recorded(async (fetch) => {
      const keyed = new FayingClient({ baseUrl: 'http://nowhere.example', key: 'k-1', fetch });
      await keyed.get('/v1/roles');
      await keyed.at(3).post('/v1/fit', { body: LINKAGE });
      await new FayingClient({ baseUrl: 'http://nowhere.example', fetch }).get('/v1/roles');
    });
    const keys = asked.map(({ headers }) => headers.get('authorization'));
    expect(keys).toEqual(['Bearer k-1', 'Bearer k-1', null]);
  });
});

describe('who waits no longer', () => {
  test('is told at once that it was ended', async () => {
    const silent = await serving(() => undefined);
    try {
      const given = new AbortController();
      const told = new FayingClient({ baseUrl: silent.url });
      const asked = thrown(told.get('/livez', { signal: given.signal }));
      const reason = new Error('the page was left');
      given.abort(reason);
      expect(await asked).toBe(reason);
    } finally {
      await silent.stop();
    }
  });

  test('for nothing has an end by itself', async () => {
    const silent = await serving(() => undefined);
    try {
      const told = new FayingClient({ baseUrl: silent.url, retry: { totalMs: 40 } });
      expect(await thrown(told.get('/livez'))).toMatchObject({ name: 'TimeoutError' });
    } finally {
      await silent.stop();
    }
  });
});

/** The requests that were made, each answered by an empty list or by whoever is given. */
async function recorded(
  ask: (fetch: (request: Request) => Promise<Response>) => Promise<void>,
  answer: (request: Request) => Promise<Response> = async () =>
    Response.json({ items: [], next: null }),
): Promise<Request[]> {
  const asked: Request[] = [];
  await ask((request) => {
    asked.push(request);
    return answer(request);
  });
  return asked;
}
