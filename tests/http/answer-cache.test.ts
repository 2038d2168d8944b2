/**
 * Answers that are kept: a question is judged once, whoever asks it and in whatever order, and
 * whatever could make another answer makes another question. Counted by what is judged and loaded.
 */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { ordered } from '../../src/contract/canonical.js';
import { AnswerCache } from '../../src/http/answer-cache.js';
import { keyOf } from '../../src/http/question-key.js';
import type { StoredEdition } from '../../src/usecases/ports.js';
import { CART } from '../cli/catalogue.js';
import { MemoryStore } from '../memory-store.js';
import { FIT, LARGER_CART, publish, type Rig, rigOf, zeros } from './fixture.js';

const keeping = (more: Parameters<typeof rigOf>[0] = {}): Rig =>
  rigOf({ answerCacheBytes: 1_000_000, ...more });

describe('a question that was answered', () => {
  test('is not judged again, in whatever order or door it comes', async () => {
    const { client, judged } = keeping();
    const first = await client.get(`${FIT}&fitted.engine=motor&with.prop-shaft=shaft-a`);
    const inUrl = [
      '/v1/fit?with.prop-shaft=shaft-a&fitted.engine=motor&part=box-c&vehicle=cart-1',
      `${FIT}&fitted.engine=motor&with.prop-shaft=shaft-a&edition=1&lang=en-GB&changes=yes`,
      `${FIT}&fitted.engine=motor&with.prop-shaft=shaft-a&ignorePresent=false`,
    ];
    for (const url of inUrl) {
      const again = await client.get(url).expect(200);
      expect([again.text, again.headers.etag]).toEqual([first.text, first.headers.etag]);
    }
    const body = {
      with: { 'prop-shaft': 'shaft-a' },
      part: 'box-c',
      fitted: { engine: 'motor' },
      vehicle: 'cart-1',
    };
    const posted = await client.post('/v1/fit').send(body).expect(200);
    expect(posted.text).toBe(first.text);
    expect(judged.checkFit).toBe(1);
  });

  test('nor is a vehicle, nor are two faces', async () => {
    const { client, judged } = keeping();
    const fitted = { engine: 'motor', gearbox: 'box-c' };
    const turned = { gearbox: 'box-c', engine: 'motor' };
    await client.post('/v1/inspect').send({ vehicle: 'cart-1', fitted }).expect(200);
    await client.post('/v1/inspect').send({ fitted: turned, vehicle: 'cart-1' }).expect(200);
    const inline = { kind: 'cart-flange', side: 'recess', pattern: 'f1' };
    const { kind, side, pattern } = inline;
    const a = { part: 'box-a', interface: 'rear' };
    await client.post('/v1/mate').send({ a, b: { inline } }).expect(200);
    await client
      .post('/v1/mate')
      .send({ b: { inline: { pattern, side, kind } }, a })
      .expect(200);
    await client.get('/v1/mate?a=box-a&b=shaft-a').expect(200);
    await client.get('/v1/mate?b=shaft-a&a=box-a').expect(200);
    expect(judged).toEqual({ ...zeros(), inspectVehicle: 1, mateFaces: 2 });
  });

  test('is judged again where anything is another', async () => {
    const { client, judged, store } = keeping();
    const asked = [
      FIT,
      '/v1/fit?vehicle=cart-1&part=box-a',
      `${FIT}&position=gearbox`,
      `${FIT}&ignorePresent=true`,
      `${FIT}&torque=90%20N.m`,
      `${FIT}&torque=90.0%20N.m`,
      `${FIT}&use=road`,
      `${FIT}&fitted.engine=unknown`,
      `${FIT}&with.engine=motor`,
      `${FIT}&adapter.box-shaft=plate-ab`,
    ];
    for (const url of asked) await client.get(url).expect(200);
    expect(judged.checkFit).toBe(asked.length);
    publish(store, LARGER_CART);
    const newer = await client.get(FIT).expect(200);
    expect([newer.body.edition, judged.checkFit]).toEqual([2, asked.length + 1]);
    const older = await client.get(`${FIT}&edition=1`).expect(200);
    expect([older.body.edition, judged.checkFit]).toEqual([1, asked.length + 1]);
  });

  test('by an edition that says the same under another number, it is judged anew', async () => {
    const { client, judged } = keeping({ documents: [CART, LARGER_CART, CART] });
    const numbers: unknown[] = [];
    for (const edition of [1, 3]) {
      numbers.push((await client.get(`${FIT}&edition=${edition}`).expect(200)).body.edition);
    }
    expect([numbers, judged.checkFit]).toEqual([[1, 3], 2]);
  });

  test('with nothing to keep answers in, each is judged', async () => {
    const { client, judged } = rigOf({ answerCacheBytes: 0 });
    for (let again = 0; again < 3; again += 1) await client.get(FIT).expect(200);
    expect(judged.checkFit).toBe(3);
  });

  test('a question without an answer is refused each time', async () => {
    const { client, judged } = keeping();
    for (let again = 0; again < 3; again += 1) {
      await client.get('/v1/fit?vehicle=cart-1&part=nope').expect(404);
    }
    expect(judged.checkFit).toBe(3);
  });
});

describe('an edition that is not at hand', () => {
  class CountedStore extends MemoryStore {
    readonly loaded: number[] = [];

    override load(number: number): StoredEdition {
      this.loaded.push(number);
      return super.load(number);
    }
  }

  test('is not loaded for an answer that the client or the service has', async () => {
    const store = new CountedStore();
    const rig = keeping({ store });
    const old = await rig.client.get(`${FIT}&edition=1`).expect(200);
    const etag = old.headers.etag ?? '';
    // As many newer ones as push the first out of memory.
    for (let more = 0; more < 6; more += 1) {
      const parts = [...CART.parts, { id: `more-${more}`, name: 'more', roles: ['gearbox'] }];
      publish(store, { ...CART, parts });
      await rig.client.get(FIT).expect(200);
    }
    store.loaded.splice(0);
    await rig.client.get(`${FIT}&edition=1`).expect(200);
    await rig.client.get(`${FIT}&edition=1`).set('if-none-match', etag).expect(304);
    expect(store.loaded).toEqual([]);
    await rig.client.get('/v1/fit?vehicle=cart-1&part=box-a&edition=1').expect(200);
    expect(store.loaded).toEqual([1]);
  });
});

describe('the memory', () => {
  const text = 'x'.repeat(1000);

  test('holds no more than it may; what was asked for last stays', () => {
    const cache = new AnswerCache(3 * 2500);
    let written = 0;
    const ask = (key: string) =>
      cache.text(key, () => {
        written += 1;
        return text;
      });
    for (const key of ['a', 'b', 'c', 'a', 'd']) expect(ask(key)).toBe(text);
    expect(written).toBe(4);
    ask('a');
    expect(written).toBe(4);
    ask('b');
    expect(written).toBe(5);
  });

  test('does not keep what alone is too large, nor forgets the others for it', () => {
    const cache = new AnswerCache(3 * 2500);
    let written = 0;
    const ask = (key: string, said: string) => {
      cache.text(key, () => {
        written += 1;
        return said;
      });
    };
    ask('small', text);
    ask('large', text.repeat(9));
    ask('large', text.repeat(9));
    ask('small', text);
    expect(written).toBe(3);
  });

  test('keeps nothing of what throws', () => {
    const cache = new AnswerCache(10_000);
    const fail = () => {
      throw new RangeError('no answer');
    };
    expect(() => cache.text('a', fail)).toThrow('no answer');
    expect(cache.text('a', () => text)).toBe(text);
  });
});

describe('the key', () => {
  const base = {
    editionHash: 'sha256-a',
    path: '/v1/fit',
    mediaType: 'application/json',
    view: 'full',
  } as const;
  const key = (input: object) => keyOf({ ...base, input: ordered(input) });

  test('is another one for each thing that decides the answer', () => {
    const keys = new Set([
      keyOf({ ...base, input: {} }),
      keyOf({ ...base, editionHash: 'sha256-b', input: {} }),
      keyOf({ ...base, path: '/v1/mate', input: {} }),
      keyOf({ ...base, mediaType: 'text/plain', input: {} }),
      keyOf({ ...base, view: 'public', input: {} }),
    ]);
    expect(keys.size).toBe(5);
  });

  test('tells apart what JSON does not', () => {
    const values = [null, Number.POSITIVE_INFINITY, Number.NaN, 0, -0, '', '0', [], {}, [null]];
    expect(new Set(values.map((value) => key({ value }))).size).toBe(values.length);
    expect(key({ a: 'b","c":"d' })).not.toBe(key({ a: 'b', c: 'd' }));
  });

  test('and the question that is asked do not depend on the order of names', () => {
    fc.assert(
      fc.property(fc.dictionary(fc.string(), fc.jsonValue()), (input) => {
        const turned = Object.fromEntries(Object.entries(input).reverse());
        expect(JSON.stringify(ordered(turned))).toBe(JSON.stringify(ordered(input)));
        expect(key(turned)).toBe(key(input));
      }),
    );
  });

  test('is the same for the same value alone', () => {
    fc.assert(
      fc.property(fc.jsonValue(), fc.jsonValue(), (one, other) => {
        const isSame = JSON.stringify(ordered({ one })) === JSON.stringify(ordered({ one: other }));
        expect(key({ one }) === key({ one: other })).toBe(isSame);
      }),
    );
  });
});
