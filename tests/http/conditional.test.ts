/**
 * A client that asks again with the validator it has: nothing is judged, no edition is loaded, and
 * of the store nothing is read but one head. And the validator tells answers apart: where two are
 * equal the bytes are, whatever the questions were.
 */

import { setImmediate } from 'node:timers/promises';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { EditionHead, StoredEdition } from '../../src/usecases/ports.js';
import { demoDocument, MemoryStore } from '../memory-store.js';
import { FIT, LARGER_CART, publish, type Rig, rigOf } from './fixture.js';

/** A store that writes down what is read of it. */
class WatchedStore extends MemoryStore {
  readonly reads: string[] = [];

  override latest(): EditionHead | null {
    this.reads.push('latest');
    return super.latest();
  }

  override edition(number: number): EditionHead | null {
    this.reads.push(`edition ${number}`);
    return super.edition(number);
  }

  override editions(): readonly EditionHead[] {
    this.reads.push('editions');
    return super.editions();
  }

  override load(number: number): StoredEdition {
    this.reads.push(`load ${number}`);
    return super.load(number);
  }
}

interface Asked {
  readonly method?: 'QUERY';
  readonly url: string;
  readonly body?: object;
}

const CART = { vehicle: 'cart-1' };
const ENDS = { a: { part: 'box-a' }, b: { part: 'shaft-a' } };

/** A question by each door that has validators, and the one read that finds its edition. */
const QUESTIONS: readonly (readonly [string, Asked, string])[] = [
  ['a part, the newest', { url: FIT }, 'latest'],
  ['a part, pinned', { url: `${FIT}&edition=1` }, 'edition 1'],
  [
    'a part, by QUERY',
    { method: 'QUERY', url: '/v1/fit', body: { ...CART, part: 'box-c' } },
    'latest',
  ],
  ['a vehicle, by QUERY', { method: 'QUERY', url: '/v1/inspect', body: CART }, 'latest'],
  [
    'a vehicle, pinned, by QUERY',
    { method: 'QUERY', url: '/v1/inspect', body: { ...CART, edition: 1 } },
    'edition 1',
  ],
  ['two faces', { url: '/v1/mate?a=box-a&b=shaft-a' }, 'latest'],
  ['two faces, by QUERY', { method: 'QUERY', url: '/v1/mate', body: ENDS }, 'latest'],
  ['a list', { url: '/v1/layouts' }, 'latest'],
  ['a page of a list, pinned', { url: '/v1/roles?limit=2&edition=1' }, 'edition 1'],
  ['one thing of a list', { url: '/v1/layouts/cart' }, 'latest'],
  ['one vehicle, pinned', { url: '/v1/vehicles/cart-1?edition=1' }, 'edition 1'],
  ['the editions', { url: '/v1/editions' }, 'latest'],
];

/** In a turn of its own, as requests come from a line: what is read in one is read once. */
async function ask({ app }: Rig, { method, url, body }: Asked, headers: object = {}) {
  await setImmediate();
  const type = body === undefined ? {} : { 'content-type': 'application/json' };
  const sent = body === undefined ? {} : { body: JSON.stringify(body) };
  return app.request(url, { method: method ?? 'GET', headers: { ...type, ...headers }, ...sent });
}

describe('asking again with the validator', () => {
  test.each(QUESTIONS)('%s: reads one head and judges nothing', async (_, question, read) => {
    const store = new WatchedStore();
    const first = await ask(rigOf({ store }), question);
    const etag = first.headers.get('etag') ?? '';
    expect([first.status, etag]).toEqual([200, expect.stringMatching(/^"[\w-]{22}"$/)]);
    // Another replica, just started: it has neither an edition nor an answer in memory.
    const cold = rigOf({ documents: [], store });
    store.reads.splice(0);
    for (const known of [etag, `W/${etag}`, `"a", W/"b,c" ,${etag}`]) {
      const again = await ask(cold, question, { 'if-none-match': known });
      expect([again.status, await again.text()]).toEqual([304, '']);
      expect(store.reads.splice(0)).toEqual([read]);
      for (const name of ['etag', 'cache-control', 'content-location', 'vary', 'faying-edition']) {
        expect([name, again.headers.get(name)]).toEqual([name, first.headers.get(name)]);
      }
    }
    expect(Object.values(cold.judged).every((count) => count === 0)).toBe(true);
  });

  test.each([
    'W/"other"',
    '"other", "another"',
    'rubbish',
    '""',
    'W/',
    ',,',
    '*, "other"',
    'w/"case"',
  ])('with one that it is not, is answered: %s', async (known) => {
    const rig = rigOf();
    const answer = await ask(rig, { url: FIT }, { 'if-none-match': known });
    expect([answer.status, rig.judged.checkFit]).toEqual([200, 1]);
  });

  test('is answered by the edition that is published next', async () => {
    for (const [, question] of QUESTIONS) {
      const rig = rigOf();
      const etag = (await ask(rig, question)).headers.get('etag') ?? '';
      publish(rig.store, LARGER_CART);
      const again = await ask(rig, question, { 'if-none-match': etag });
      const isPinned = `${question.url}${JSON.stringify(question.body)}`.includes('edition');
      const isOne = isPinned && question.url !== '/v1/editions';
      expect([question, again.status]).toEqual([question, isOne ? 304 : 200]);
    }
  });

  test('by POST is judged: POST does not say that nothing is changed', async () => {
    const rig = rigOf();
    const { method: _, ...posted } = { method: 'POST', url: '/v1/inspect', body: CART };
    const init = { method: 'POST', headers: { 'content-type': 'application/json' } };
    const body = JSON.stringify(posted.body);
    for (const known of ['*', '"a"']) {
      const headers = { ...init.headers, 'if-none-match': known };
      const answer = await rig.app.request(posted.url, { ...init, headers, body });
      expect([answer.status, answer.headers.get('etag')]).toEqual([200, null]);
    }
    expect(rig.judged.inspectVehicle).toBe(2);
  });
});

describe('HEAD', () => {
  test.each([FIT, `${FIT}&lang=en`, '/v1/layouts', '/v1/editions', '/livez', '/problems'])(
    'has the headers of GET: %s',
    async (url) => {
      const { client } = rigOf({ corsOrigins: ['https://shop.example'] });
      const sent = { origin: 'https://shop.example', 'x-request-id': 'one' };
      const got = await client.get(url).set(sent).expect(200);
      const head = await client.head(url).set(sent).expect(200);
      // RFC 9110 section 9.3.2: those that only the content tells may be left out, not be wrong.
      const { date: _, connection: __, 'content-length': length, ...expected } = got.headers;
      expect(head.headers).toMatchObject(expected);
      expect([undefined, length]).toContain(head.headers['content-length']);
      const { etag } = got.headers;
      if (etag === undefined) return;
      await client.head(url).set('if-none-match', etag).expect(304);
    },
  );

  test('of what is refused is refused alike', async () => {
    const { client } = rigOf();
    for (const url of [
      '/v1/fit',
      `${FIT}&x=1`,
      '/v1/fit?vehicle=cart-1&part=x',
      '/no',
      '/v1/inspect',
    ]) {
      const got = await client.get(url);
      const head = await client.head(url);
      expect([url, head.status, head.text || null]).toEqual([url, got.status, null]);
      for (const name of ['content-type', 'cache-control', 'allow']) {
        expect([url, name, head.headers[name]]).toEqual([url, name, got.headers[name]]);
      }
    }
  });
});

describe('of any two questions', () => {
  const rig = rigOf({ documents: [demoDocument()], answerCacheBytes: 50_000_000 });
  const fields = fc.record(
    {
      vehicle: fc.constantFrom('lirren-1', 'lirren-2'),
      part: fc.constantFrom('linkage-cables', 'bracket-20', 'front-hub-used', 'control-centre'),
      'fitted.gearbox': fc.constantFrom('unknown', 'gearbox-6-late'),
      use: fc.constantFrom('road', 'competition'),
      torque: fc.constantFrom('400 N.m', '400.0 N.m'),
      ignorePresent: fc.constantFrom('true', 'false'),
      edition: fc.constant('1'),
      lang: fc.constantFrom('en', 'en-GB', 'tlh'),
    },
    { requiredKeys: ['vehicle', 'part'] },
  );
  /** Looking for changes would take long, and ask nothing else of validators. */
  const ALONE = 'changes=no';
  type Fields = Readonly<Record<string, string>>;
  type Pairs = readonly (readonly [string, string])[];

  /** Two questions: one and another, itself turned round, or itself with one thing changed. */
  const pair: fc.Arbitrary<readonly [Pairs, Pairs]> = fc
    .tuple(fields, fields, fc.nat(), fc.constantFrom('other', 'turned', 'changed'))
    .map(([a, b, at, how]) => {
      const [one, other] = [a as Fields, b as Fields];
      const names = Object.keys({ ...other, ...one });
      const name = names[at % names.length] ?? '';
      const { [name]: was, ...rest } = one;
      const now = other[name] ?? was;
      const isDropped = other[name] === undefined && name !== 'vehicle' && name !== 'part';
      const changed = isDropped || now === undefined ? rest : { ...rest, [name]: now };
      const pairs = Object.entries(one);
      if (how === 'turned') return [pairs, pairs.toReversed()];
      return [pairs, Object.entries(how === 'other' ? other : changed)];
    });

  async function answer(pairs: Pairs) {
    const search = pairs.map(([name, value]) => `${name}=${encodeURIComponent(value)}`).join('&');
    const response = await rig.app.request(`/v1/fit?${search}&${ALONE}`);
    expect([search, response.status]).toEqual([search, 200]);
    const { headers } = response;
    return {
      etag: headers.get('etag'),
      place: headers.get('content-location'),
      bytes: await response.text(),
    };
  }

  test('the validators are equal where the questions are, and then the bytes are', async () => {
    const counts = { same: 0, other: 0, otherBytes: 0 };
    await fc.assert(
      fc.asyncProperty(pair, async ([a, b]) => {
        const [one, other] = [await answer(a), await answer(b)];
        const isSame = one.etag === other.etag;
        expect(one.place === other.place).toBe(isSame);
        if (isSame) expect(one.bytes).toBe(other.bytes);
        else counts.otherBytes += one.bytes === other.bytes ? 0 : 1;
        counts[isSame ? 'same' : 'other'] += 1;
      }),
      { numRuns: 200 },
    );
    expect(Math.min(counts.same, counts.otherBytes)).toBeGreaterThan(20);
  });
});
