/**
 * The names of parts over HTTP: id, number and order code, in every field that names a part; what
 * several parts are called is never guessed; what another part took the place of says so. An
 * answer that looked up an order code is of the price and stock list too.
 *
 * Length: every field that names a part.
 */

import { setImmediate } from 'node:timers/promises';
import { describe, expect, test } from 'vitest';
import { CART } from '../cli/catalogue.js';
import { json, publish, rigOf } from './fixture.js';
import { NAMED, OFFERED_ANEW } from './named-parts.js';

const rig = rigOf({ documents: [NAMED] });

type Body = Record<string, unknown>;

async function get(path: string, parameters: readonly (readonly [string, string])[], status = 200) {
  const search = parameters.map(([name, value]) => `${name}=${encodeURIComponent(value)}`);
  const response = await rig.client.get(`${path}?${search.join('&')}`);
  expect([search, response.status, response.status === status ? '' : response.text]).toEqual([
    search,
    status,
    '',
  ]);
  return response;
}

const fitting = async (part: string, status = 200): Promise<Body> =>
  json(
    await get(
      '/v1/fit',
      [
        ['vehicle', 'cart-1'],
        ['part', part],
      ],
      status,
    ),
  );

async function ask(path: string, body: object, status = 200): Promise<Body> {
  const response = await rig.client.post(path).send(body);
  expect([response.status, response.status === status ? '' : response.text]).toEqual([status, '']);
  return json(response);
}

/** The answer without what it says of the name. */
function answerOf({ asked: _, resolvedBy: __, offers: ___, ...answer }: Body): Body {
  return answer;
}

describe('a part is found', () => {
  test.each([
    ['strong-box', 'id'],
    ['44/10-070', 'number', 'old-box'],
    ['number:44/10 070', 'number', 'old-box'],
    ['number:44/10.070@wainer & söhne', 'number', 'old-box'],
    ['44/10-077@Wainer & Söhne', 'number'],
    ['w9,120', 'number'],
    ['number:W.9, 120@FENNULD-SPARES', 'number'],
    ['s+7', 'number'],
    ['number:S+7', 'number'],
    ['sku:GB-7700', 'sku'],
  ])('by %s', async (name, by, id = 'strong-box') => {
    const answer = await fitting(name);
    expect(answer).toMatchObject({ asked: name, resolvedBy: by, part: id });
    expect(answerOf(answer)).toEqual(answerOf(await fitting(id)));
  });

  test('with works behind any name, numbers with a plus sign among them', async () => {
    for (const name of [
      'strong-box+polish',
      'S+7+polish',
      'number:44/10 077@Wainer & Söhne+polish',
      'sku:GB-7700+polish',
    ]) {
      expect(await fitting(name)).toMatchObject({ part: 'strong-box+polish', asked: name });
    }
    const { errors } = await fitting('S+7+paint', 422);
    expect(errors).toMatchObject([{ code: 'unknown-work', data: { name: 'paint' } }]);
  });

  test('and says which one took its place, worked or not', async () => {
    expect(await fitting('number:44/10 070')).toMatchObject({ supersededBy: 'strong-box' });
    expect(await fitting('strong-box')).toMatchObject({ supersededBy: null });
  });

  test('in every field of a question about a vehicle', async () => {
    const { named } = await ask('/v1/fit', {
      vehicle: 'cart-1',
      part: 'shaft-a',
      with: { gearbox: 'number:44/10 070' },
      fitted: {
        'wheel-shaft': { left: 'wheel-shaft-l', right: 'unknown' },
        engine: 'none',
        gearbox: 'sku:GB-7700',
      },
      adapters: { 'box-shaft': ['plate-ab'] },
    });
    const old = { part: 'old-box', name: 'old gearbox', supersededBy: 'strong-box' };
    expect(named).toEqual([
      { at: 'with.gearbox', asked: 'number:44/10 070', resolvedBy: 'number', ...old },
      {
        at: 'fitted.gearbox',
        asked: 'sku:GB-7700',
        resolvedBy: 'sku',
        part: 'strong-box',
        name: 'strong gearbox',
        supersededBy: null,
      },
      {
        at: 'fitted.wheel-shaft.left',
        asked: 'wheel-shaft-l',
        resolvedBy: 'id',
        part: 'wheel-shaft-l',
        name: 'left one',
        supersededBy: null,
      },
      expect.objectContaining({ at: 'adapters.box-shaft.0', asked: 'plate-ab' }),
    ]);
  });

  test('on a vehicle as it stands, and where two faces meet', async () => {
    const asked = { gearbox: 'number:44/10-070' };
    const standing = await ask('/v1/inspect', { vehicle: 'cart-1', fitted: asked });
    expect(standing.named).toMatchObject([{ at: 'fitted.gearbox', part: 'old-box' }]);
    const meeting = await ask('/v1/mate', { a: { part: 'S+7' }, b: { part: 'shaft-a' } });
    expect(meeting.named).toMatchObject([
      { at: 'a', asked: 'S+7', part: 'strong-box', resolvedBy: 'number' },
      { at: 'b', asked: 'shaft-a', part: 'shaft-a', resolvedBy: 'id' },
    ]);
    const byId = await ask('/v1/mate', { a: { part: 'strong-box' }, b: { part: 'shaft-a' } });
    expect({ ...meeting, named: [] }).toEqual({ ...byId, named: [] });
  });

  test('in a list of a URL: ids with commas between, any other name alone', async () => {
    const between = [
      ['a', 'strong-box'],
      ['b', 'shaft-a'],
    ] as const;
    const codes = async (...adapters: string[]) => {
      const names = adapters.map((one) => ['adapter', one] as const);
      const { errors } = json(await get('/v1/mate', [...between, ...names], 422));
      return (errors as Body[]).map(({ code, data }) => [code, (data as Body).part]);
    };
    const box = ['not-an-adapter', 'strong-box'];
    expect(await codes('strong-box,plate-ab')).toEqual([box]);
    expect(await codes('number:W.9, 120', 'plate-ab')).toEqual([box]);
    expect(await codes('plate-ab', 'sku:GB-7700')).toEqual([box]);
    expect(await codes('plate-ab', 'strong-box,old-box')).toEqual([
      box,
      ['not-an-adapter', 'old-box'],
    ]);
  });
});

describe('a name of several parts', () => {
  test('is refused, and tells them all with their makers', async () => {
    const problem = await fitting('44/10 077', 409);
    expect(problem).toMatchObject({ code: 'ambiguous-part', retry: 'with-change' });
    expect(problem.errors).toEqual([
      {
        parameter: 'part',
        code: 'ambiguous-part',
        data: {
          name: '44/10 077',
          candidates: [
            { part: 'hook', name: 'hook', maker: 'Fennuld Spares' },
            { part: 'strong-box', name: 'strong gearbox', maker: 'Wainer & Söhne' },
          ],
        },
        text:
          '"44/10 077" is of more than one part: hook (Fennuld Spares), strong-box ' +
          '(Wainer & Söhne). Name the part by its id.',
      },
    ]);
  });

  test('tells them in the language of the question, with the works behind the name', async () => {
    const search = [
      ['vehicle', 'cart-1'],
      ['part', '44/10077+polish'],
      ['lang', 'de'],
    ] as const;
    const { errors } = json(await get('/v1/fit', search, 409));
    const [{ data }] = errors as [{ data: unknown }];
    expect(data).toMatchObject({
      candidates: [
        { part: 'hook+polish', name: 'hook' },
        { part: 'strong-box+polish', name: 'Getriebe, verstärkt' },
      ],
    });
  });

  test('may be an order code; one number twice on one part is one part', async () => {
    expect(await fitting('sku:X', 409)).toMatchObject({ code: 'ambiguous-part' });
    expect(await fitting('number:4410077@Fennuld Spares')).toMatchObject({ part: 'hook' });
  });
});

describe('a name of no part', () => {
  test.each([
    ['strong-bx', 'unknown-part', { name: 'strong-bx', meant: 'strong-box' }],
    ['W.9, 121', 'unknown-part', { name: 'W.9, 121', meant: 'number:W.9, 120' }],
    ['number:S+8', 'unknown-part', { name: 'number:S+8', meant: 'number:S+7' }],
    ['strong-bx+polish', 'unknown-part', { name: 'strong-bx', meant: 'strong-box' }],
    ['number:Q+polish', 'unknown-part', { name: 'number:Q', meant: null }],
    ['number:', 'unknown-part', { name: 'number:', meant: null }],
    ['number:strong-box', 'unknown-part', { name: 'number:strong-box', meant: null }],
    ['44/10-070@Fennuld Spares', 'unknown-part', { name: '44/10-070@Fennuld Spares' }],
    ['sku:GB-7701', 'unknown-part', { name: 'sku:GB-7701', meant: 'sku:GB-7700' }],
    ['sku:gb-7700', 'unknown-part', { name: 'sku:gb-7700', meant: 'sku:GB-7700' }],
    ['SKU:GB-7700', 'unknown-part', { name: 'SKU:GB-7700' }],
    ['none', 'unknown-part', { name: 'none' }],
    ['sku:C-1', 'sku-of-lot', { name: 'sku:C-1', lot: 'crate' }],
    ['sku:P,1+', 'sku-of-work', { name: 'sku:P,1+', work: 'polish' }],
  ])('%s is refused', async (name, code, data) => {
    const problem = await fitting(name, 404);
    expect(problem.code).toBe('unknown-part');
    expect(problem.errors).toMatchObject([{ parameter: 'part', code, data }]);
  });

  test('may be the code of something that the edition has not', async () => {
    const own = rigOf({ documents: [CART, NAMED] });
    const response = await own.client.get('/v1/fit?vehicle=cart-1&part=sku:GB-7700&edition=1');
    expect(response.status).toBe(404);
    expect(json(response).errors).toMatchObject([
      { code: 'unknown-part', data: { name: 'sku:GB-7700', meant: null } },
    ]);
  });

  test('is refused beside the others, each at its field', async () => {
    const body = {
      vehicle: 'cart-1',
      part: 'sku:X',
      fitted: { gearbox: '44/10 077', 'wheel-shaft': { left: 'none', right: 'sku:C-1' } },
    };
    const { code, errors } = await ask('/v1/fit', body, 422);
    expect(code).toBe('invalid-question');
    expect((errors as Body[]).map((one) => [one.pointer, one.code])).toEqual([
      ['/part', 'ambiguous-part'],
      ['/fitted/gearbox', 'ambiguous-part'],
      ['/fitted/wheel-shaft/right', 'sku-of-lot'],
    ]);
  });
});

describe('an answer that looked up an order code', () => {
  const BY_SKU = '/v1/fit?vehicle=cart-1&part=sku:GB-7700&edition=1';
  const BY_ID = '/v1/fit?vehicle=cart-1&part=strong-box&edition=1&changes=no';

  test('is of the list that it was looked up in, and is kept no longer', async () => {
    const own = rigOf({ documents: [NAMED], answerCacheBytes: 1_000_000 });
    const first = await own.client.get(BY_SKU).expect(200);
    expect(json(first)).toMatchObject({ offers: 1, part: 'strong-box' });
    expect(first.headers['cache-control']).toMatch(/^public, max-age=30,/);
    const byId = await own.client.get(BY_ID).expect(200);
    expect(json(byId).offers).toBeNull();
    expect(byId.headers['cache-control']).toBe('public, max-age=86400');

    const known = { 'if-none-match': first.headers.etag ?? '' };
    await own.client.get(BY_SKU).set(known).expect(304);
    expect(own.judged.checkFit).toBe(2);
    publish(own.store, OFFERED_ANEW);
    expect(own.store.editions()).toHaveLength(1);
    const second = await own.client.get(BY_SKU).set(known).expect(200);
    expect(json(second)).toMatchObject({ offers: 2, part: 'old-box' });
    const idAgain = await own.client.get(BY_ID).expect(200);
    expect(idAgain.headers.etag).toBe(byId.headers.etag);
  });

  test('by QUERY too, wherever the code stands', async () => {
    const own = rigOf({ documents: [NAMED] });
    const query = async (body: object) => {
      await setImmediate();
      return own.app.request('/v1/inspect', {
        method: 'QUERY',
        body: JSON.stringify(body),
        headers: { 'content-type': 'application/json' },
      });
    };
    const body = { vehicle: 'cart-1', fitted: { gearbox: 'sku:GB-7700' }, edition: 1 };
    const first = await query(body);
    expect(first.headers.get('cache-control')).toMatch(/^public, max-age=30,/);
    publish(own.store, OFFERED_ANEW);
    const second = await query(body);
    expect(second.headers.get('etag')).not.toBe(first.headers.get('etag'));
    expect(await second.json()).toMatchObject({ offers: 2, named: [{ part: 'old-box' }] });
  });

  test('can be had at the address that it gives', async () => {
    for (const name of ['sku:GB-7700', 'number:W.9, 120', '44/10-077@Wainer & Söhne', 's+7']) {
      const first = await get('/v1/fit', [
        ['vehicle', 'cart-1'],
        ['part', name],
      ]);
      const place = first.headers['content-location'] ?? '';
      const again = await rig.client.get(place).expect(200);
      expect(again.text).toBe(first.text);
    }
  });
});
