/**
 * Who is answered what: without a key, with one, with one that has ended, from a page and from
 * elsewhere; and what views take away from an answer, which is whole fields and nothing else.
 *
 * Length: one table of who is answered what.
 */

import { describe, expect, test } from 'vitest';
import { canonicalText } from '../../src/contract/canonical.js';
import { cursorText } from '../../src/contract/cursor.js';
import type { Scope } from '../../src/domain/access.js';
import { CART } from '../cli/catalogue.js';
import { MemoryKeys } from '../memory-store.js';
import { FIT, json, LARGER_CART, type RigOptions, rigOf } from './fixture.js';

const SHOP = 'https://shop.example';
const KITS = '/v1/kits?vehicle=cart-1&want=box-c';

interface Asked {
  readonly open?: readonly Scope[];
  /** Of the key that is shown; none where left out. */
  readonly scopes?: readonly Scope[];
  readonly origins?: readonly string[];
  readonly headers?: Readonly<Record<string, string>>;
  readonly rig?: RigOptions;
}

function rigFor({ open = ['public'], scopes, origins = [], headers, rig }: Asked) {
  const keys = new MemoryKeys();
  const key = scopes === undefined ? null : keys.addKey({ name: 'k', scopes, origins }, '');
  const shown = key === null ? {} : { authorization: `Bearer ${key.text}` };
  const { client, judged } = rigOf({ open, keys, ...rig });
  const get = (url: string) => client.get(url).set({ ...shown, ...headers });
  return { client, keys, key, get, judged };
}

describe('without a key', () => {
  test('the public is answered, and told what it is shown', async () => {
    const { get } = rigFor({});
    const answer = await get(FIT).expect(200);
    expect(answer.headers['faying-view']).toBe('public');
    expect(answer.headers['content-location']).toContain('view=public');
    expect(answer.headers.vary).toContain('Authorization');
    expect(answer.headers['cache-control']).toMatch(/^public/);
    const body = json(answer);
    expect(body).toMatchObject({ verdict: expect.any(String), summary: { text: /./ } });
    expect(body).not.toHaveProperty('measure');
    expect(body).not.toHaveProperty(['summary', 'data']);
    expect(body).not.toHaveProperty(['positions', 0, 'matings']);
  });

  test.each([
    ['/v1/mate?a=box-a&b=motor', 'trade'],
    ['/v1/kinds', 'trade'],
    ['/v1/layouts', 'trade'],
    ['/v1/editions', 'trade'],
    [`${FIT}&view=trade`, 'trade'],
    [`${FIT}&view=full`, 'full'],
  ])('%s takes one with the scope %s', async (url, scope) => {
    const { get, judged } = rigFor({});
    const refused = await get(url).expect(401);
    expect(refused.headers['www-authenticate']).toBe(`Bearer realm="faying", scope="${scope}"`);
    expect(refused.headers['cache-control']).toBe('no-store');
    expect(json(refused)).toMatchObject({
      code: 'key-needed',
      errors: [{ code: 'no-key', data: { scope } }],
    });
    expect(Object.values(judged).every((count) => count === 0)).toBe(true);
  });

  test('nothing but the program itself is told where nothing is open', async () => {
    const { get } = rigFor({ open: [] });
    await get(FIT).expect(401);
    await get('/v1/parts').expect(401);
    for (const url of ['/v1/codes', '/v1/limits', '/v1/calculate', '/livez', '/openapi.json']) {
      await get(url).expect(200);
    }
  });

  test('a batch takes one with the scope for it', async () => {
    const { client } = rigFor({ open: ['full'] });
    const ask = client.post('/v1/fit/batch').set('content-type', 'text/csv');
    const refused = await ask.send('vehicle,part\ncart-1,box-a\n').expect(401);
    expect(json(refused)).toMatchObject({ errors: [{ data: { scope: 'batch' } }] });
  });

  test('old editions are not open, and the newest is, by its number too', async () => {
    const { get } = rigFor({ rig: { documents: [CART, LARGER_CART] } });
    await get(`${FIT}&edition=2`).expect(200);
    const refused = await get(`${FIT}&edition=1`).expect(403);
    expect(json(refused)).toMatchObject({
      errors: [{ parameter: 'edition', code: 'edition-not-in-view', data: { edition: 1 } }],
    });
    // What nobody has published is not kept from anybody.
    await get(`${FIT}&edition=3`).expect(404);
  });

  test('a list that was begun goes on, whatever is published meanwhile', async () => {
    const { get } = rigFor({ rig: { documents: [CART] } });
    const first = json(await get('/v1/parts?limit=1').expect(200));
    await get(`/v1/parts?limit=1&cursor=${String(first.next)}`).expect(200);
  });

  test('vehicles of a part are told one by one', async () => {
    const { get } = rigFor({});
    const refused = await get('/v1/parts/box-a/fits').expect(403);
    expect(json(refused)).toMatchObject({ errors: [{ code: 'list-not-in-view' }] });
    await get('/v1/parts/box-a/fits?vehicle=cart-1').expect(200);
  });
});

describe('with a key', () => {
  test.each([
    ['trade', 'trade'],
    ['full', 'full'],
    ['batch', 'public'],
  ] as const)('of the scope %s the view is %s', async (scope, view) => {
    const { get } = rigFor({ scopes: [scope] });
    const answer = await get(FIT).expect(200);
    expect(answer.headers['faying-view']).toBe(view);
    expect(answer.headers['cache-control']).toMatch(/^private/);
  });

  test('less can be wished for, and more is refused with the scope that it takes', async () => {
    const { get } = rigFor({ scopes: ['trade'] });
    const less = await get(`${FIT}&view=public`).expect(200);
    expect(less.headers['faying-view']).toBe('public');
    const refused = await get(`${FIT}&view=full`).expect(403);
    const said = 'Bearer realm="faying", error="insufficient_scope", scope="full"';
    expect(refused.headers['www-authenticate']).toBe(said);
    expect(json(refused)).toMatchObject({
      code: 'not-granted',
      errors: [{ parameter: 'view', code: 'scope-not-granted', data: { scope: 'full' } }],
    });
  });

  test('a view that has nothing of the question is refused, with the one that has', async () => {
    const { get } = rigFor({ scopes: ['full'] });
    const refused = await get('/v1/mate?a=box-a&b=motor&view=public').expect(403);
    expect(json(refused)).toMatchObject({
      errors: [{ code: 'question-not-in-view', data: { view: 'public', least: 'trade' } }],
    });
  });

  test.each([
    ['Bearer nobody'],
    ['Bearer'],
    ['Basic dXNlcjpwYXNz'],
    ['bearer fy_a fy_b'],
    ['Bearer \u00e4'],
  ])('that is none, %j, even the public is refused', async (authorization) => {
    const { get } = rigFor({ headers: { authorization } });
    const refused = await get(FIT).expect(401);
    expect(refused.headers['www-authenticate']).toMatch(/error="invalid_(token|request)"/);
    expect(json(refused)).toMatchObject({ code: 'unknown-key' });
    // What is told of the program is told to everybody.
    await get('/v1/codes').expect(200);
  });

  test('that has ended, the same', async () => {
    const { get, keys, key } = rigFor({ scopes: ['full'] });
    await get(FIT).expect(200);
    keys.endKey(key?.key.id ?? '', '2026-01-01T00:00:00.000Z');
    await get(FIT).expect(401);
  });

  test('the scheme may be written in any case', async () => {
    const { client, key } = rigFor({ scopes: ['full'] });
    const authorization = `bEARER   ${key?.text}`;
    const answer = await client.get(FIT).set({ authorization }).expect(200);
    expect(answer.headers['faying-view']).toBe('full');
  });

  test('it opens what it opens over GraphQL too', async () => {
    const query =
      '{ edition { fit(vehicle: "cart-1", part: "box-c") { verdict measure { id } } } }';
    const { client, key } = rigFor({ scopes: ['trade'] });
    const ask = () => client.post('/graphql').send({ query });
    const shut = json(await ask());
    expect(shut).toMatchObject({
      errors: [{ path: ['edition', 'fit', 'measure'], extensions: { code: 'not-granted' } }],
      data: { edition: { fit: { verdict: expect.any(String), measure: null } } },
    });
    const open = json(await ask().set('authorization', `Bearer ${key?.text}`));
    expect(open).not.toHaveProperty('errors');
    expect(open).toMatchObject({ data: { edition: { fit: { measure: expect.any(Array) } } } });
    const none = json(await ask().set('authorization', 'Bearer nobody'));
    expect(none).toMatchObject({ errors: [{ extensions: { code: 'unknown-key' } }] });
  });

  test('a view can be wished for in GraphQL', async () => {
    const { client, key } = rigFor({ scopes: ['full'] });
    const fit = 'fit(vehicle: "cart-1", part: "box-c") { measure { id } }';
    const query = `{ edition(view: PUBLIC) { ${fit} } }`;
    const ask = client.post('/graphql').set('authorization', `Bearer ${key?.text}`);
    expect(json(await ask.send({ query }))).toMatchObject({
      errors: [{ extensions: { code: 'not-granted' } }],
    });
  });
});

describe('what the public cannot find out', () => {
  test('is an older edition, by its number or by a cursor of it', async () => {
    const { get } = rigFor({ rig: { documents: [CART, LARGER_CART, CART] } });
    const cursor = (edition: number, hash: string) =>
      cursorText({ edition, hash, list: `/v1/roles?${canonicalText({})}`, after: ['a'] });
    const full = rigFor({ scopes: ['full'], rig: { documents: [CART, LARGER_CART, CART] } });
    const hashOf = async (edition: number) =>
      String(json(await full.get(`/v1/editions/${edition}`).expect(200)).hash);
    await get(`/v1/roles?cursor=${cursor(3, await hashOf(3))}`).expect(200);
    // A list that was begun just before a publication may be read to its end.
    await get(`/v1/roles?cursor=${cursor(2, await hashOf(2))}`).expect(200);
    await get(`/v1/roles?cursor=${cursor(1, await hashOf(1))}`).expect(403);
    await get('/v1/editions/1').expect(403);
    await get('/v1/editions/latest').expect(200);
  });

  test.each([
    ['limits.cost=9', 'limits'],
    ['want=load:clutch-load=1.5', 'want'],
  ])('is what a kit question with %s would tell', async (search, field) => {
    const { get, judged } = rigFor({});
    const refused = await get(`/v1/kits?vehicle=cart-1&${search}`).expect(403);
    expect(json(refused)).toMatchObject({
      errors: [{ parameter: field, code: 'wish-not-in-view', data: { view: 'public', field } }],
    });
    expect(judged.resolveKitQuestion).toBe(0);
  });

  test.each([
    [{ offers: [{ part: 'box-c', price: '1.00' }] }, '/offers'],
    [{ labourRate: '60.00' }, '/labourRate'],
    [{ avoid: [{ supplier: 'Fennuld' }] }, '/avoid'],
    [{ want: [{ position: 'gearbox', condition: { has: ['x'] } }] }, '/want'],
  ])('and with %j', async (more, pointer) => {
    const { client } = rigFor({});
    const refused = await client
      .post('/v1/kits')
      .send({ vehicle: 'cart-1', ...more })
      .expect(403);
    expect(json(refused)).toMatchObject({ errors: [{ pointer, code: 'wish-not-in-view' }] });
  });

  test('is what was answered to a key that has ended', async () => {
    const { client, keys, key } = rigFor({
      scopes: ['full'],
      rig: { answerCacheBytes: 1_000_000 },
    });
    const query = '{ edition { part(id: "box-a") { notRecorded { values } } } }';
    const ask = () =>
      client.post('/graphql').set('authorization', `Bearer ${key?.text}`).send({ query });
    expect(json(await ask())).not.toHaveProperty('errors');
    expect(json(await ask())).not.toHaveProperty('errors');
    keys.endKey(key?.key.id ?? '', '2026-01-01T00:00:00.000Z');
    expect(json(await ask())).toMatchObject({ errors: [{ extensions: { code: 'unknown-key' } }] });
  });
});

describe('a key for pages', () => {
  const page = { open: [], scopes: ['public'], origins: [SHOP] } as const;

  test('is good in its pages, which may read the answer', async () => {
    const { get } = rigFor({ ...page, headers: { origin: SHOP } });
    const answer = await get(FIT).expect(200);
    expect(answer.headers['access-control-allow-origin']).toBe(SHOP);
    expect(answer.headers['access-control-expose-headers']).toContain('Faying-View');
    expect(answer.headers.vary).toContain('Origin');
  });

  test.each([['https://elsewhere.example'], [null]])('and not at %s', async (origin) => {
    const headers = origin === null ? {} : { origin };
    const { get } = rigFor({ ...page, headers });
    const refused = await get(FIT).expect(403);
    expect(refused.headers).not.toHaveProperty('access-control-allow-origin');
    expect(json(refused)).toMatchObject({ errors: [{ code: 'origin-not-granted' }] });
  });

  test('lets its pages ask before they show it, until it ends', async () => {
    const { client, keys, key } = rigFor(page);
    const ask = () =>
      client
        .options('/v1/fit')
        .set({ origin: SHOP, 'access-control-request-method': 'GET' })
        .expect(204);
    const allowed = (await ask()).headers;
    expect(allowed['access-control-allow-origin']).toBe(SHOP);
    expect(allowed['access-control-allow-headers']).toContain('Authorization');
    keys.endKey(key?.key.id ?? '', '2026-01-01T00:00:00.000Z');
    await new Promise(setImmediate);
    expect((await ask()).headers).not.toHaveProperty('access-control-allow-origin');
  });
});

describe('a validator', () => {
  test('is another one for each view', async () => {
    const { get } = rigFor({ scopes: ['full'] });
    const tags = await Promise.all(
      ['public', 'trade', 'full'].map(async (view) => (await get(`${FIT}&view=${view}`)).headers),
    );
    expect(new Set(tags.map(({ etag }) => etag)).size).toBe(3);
  });

  test('of a wider view leads to nothing in a narrower one', async () => {
    const { get, client } = rigFor({ scopes: ['full'] });
    const { etag } = (await get(FIT)).headers;
    await get(FIT).set('if-none-match', String(etag)).expect(304);
    const other = await client.get(FIT).set('if-none-match', String(etag)).expect(200);
    expect(other.headers['faying-view']).toBe('public');
  });
});

/** Whether nothing of a value is other than in the whole one: what is missing is missing whole. */
function isPartOf(part: unknown, whole: unknown): boolean {
  if (Array.isArray(part) && Array.isArray(whole)) {
    return part.length === whole.length && part.every((one, at) => isPartOf(one, whole[at]));
  }
  if (typeof part === 'object' && part !== null && typeof whole === 'object' && whole !== null) {
    return Object.entries(part).every(
      ([name, value]) => name in whole && isPartOf(value, (whole as Record<string, unknown>)[name]),
    );
  }
  return Object.is(part, whole);
}

describe('a view', () => {
  const { get } = rigFor({ scopes: ['full'] });
  const urls = [
    FIT,
    `${FIT}&changes=no`,
    '/v1/fit?make=Wainer&part=box-c',
    KITS,
    '/v1/parts',
    '/v1/parts/box-a',
    '/v1/roles/gearbox',
    '/v1/vehicles',
    '/v1/vehicles/cart-1',
    '/v1/vehicles/cart-1/fits',
    '/v1/parts/box-a/fits?vehicle=cart-1,nowhere',
  ];

  test.each(urls)('takes fields of %s away and changes none', async (url) => {
    const at = (view: string) => get(`${url}${url.includes('?') ? '&' : '?'}view=${view}`);
    const [open, trade, full] = await Promise.all([at('public'), at('trade'), at('full')]);
    expect([open.status, trade.status, full.status]).toEqual([200, 200, 200]);
    expect(isPartOf(json(open), json(trade))).toBe(true);
    expect(isPartOf(json(trade), json(full))).toBe(true);
    expect(open.text.length).toBeLessThanOrEqual(full.text.length);
  });

  test('shows the public no price, margin or measured value anywhere', async () => {
    const words = /"(price|unitPrice|cost|margin|left|right|supplier|stock|evidence|measure)":/;
    for (const url of urls) {
      const answer = await get(`${url}${url.includes('?') ? '&' : '?'}view=public`);
      expect([url, words.exec(answer.text)?.[0]]).toEqual([url, undefined]);
    }
    expect((await get(KITS)).text).toMatch(words);
  });
});
