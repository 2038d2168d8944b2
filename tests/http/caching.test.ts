/**
 * What caches are told: validators that are made before any work, addresses that stay the same
 * for the same question, and for how long an answer holds.
 */

import { describe, expect, test } from 'vitest';
import { CART } from '../cli/catalogue.js';
import { FIT, LARGER_CART, publish, rigOf } from './fixture.js';
import { NAMED } from './named-parts.js';

describe('an answer that the client has already', () => {
  test('is not judged again', async () => {
    const { client, judged } = rigOf();
    const first = await client.get(FIT).expect(200);
    const etag = first.headers.etag ?? '';
    expect(etag).toMatch(/^"[\w-]{22}"$/);
    expect(judged.checkFit).toBe(1);
    for (const known of [etag, `W/${etag}`, `"other", ${etag}`]) {
      const again = await client.get(FIT).set('if-none-match', known).expect(304);
      expect(again.text).toBe('');
      for (const name of ['etag', 'cache-control', 'content-location', 'vary', 'faying-edition']) {
        expect(again.headers[name]).toBe(first.headers[name]);
      }
    }
    expect(judged.checkFit).toBe(1);
    await client.get(FIT).set('if-none-match', '"other"').expect(200);
    expect(judged.checkFit).toBe(2);
  });

  test('`*` asks whether there is one, which only answering tells', async () => {
    const { client } = rigOf();
    await client.get(FIT).set('if-none-match', '*').expect(304);
    await client.get('/v1/fit?vehicle=cart-1&part=x').set('if-none-match', '*').expect(404);
  });

  test('nor are two faces', async () => {
    const { client, judged } = rigOf();
    const url = '/v1/mate?a=box-a&b=shaft-a';
    const etag = (await client.get(url)).headers.etag ?? '';
    await client.get(url).set('if-none-match', etag).expect(304);
    expect(judged.mateFaces).toBe(1);
  });

  test('a faulty question is refused whatever the client has', async () => {
    const { client } = rigOf();
    await client.get('/v1/fit?vehicle=cart-1').set('if-none-match', '*').expect(400);
  });
});

describe('the validator', () => {
  const etagOf = async (url: string, rig = rigOf()) => (await rig.client.get(url)).headers.etag;

  test('is the same for the same question in another order, with what is so anyway', async () => {
    const etag = await etagOf(FIT);
    const others = [
      '/v1/fit?part=box-c&vehicle=cart-1',
      `${FIT}&changes=yes`,
      `${FIT}&ignorePresent=false`,
      `${FIT}&edition=1`,
      `${FIT}&lang=en`,
      `${FIT}&lang=xx`,
      '/v1/fit?vehicle=cart%2D1&part=box-c',
    ];
    for (const url of others) expect([url, await etagOf(url)]).toEqual([url, etag]);
  });

  test('is another one for another question', async () => {
    const urls = [
      FIT,
      '/v1/fit?vehicle=cart-1&part=box-a',
      `${FIT}&position=gearbox`,
      `${FIT}&ignorePresent=true`,
      `${FIT}&torque=90%20N.m`,
      `${FIT}&use=road`,
      `${FIT}&fitted.engine=unknown`,
      `${FIT}&with.engine=motor`,
      `${FIT}&adapter.box-shaft=plate-ab`,
    ];
    const rig = rigOf();
    const etags = new Set<string | undefined>();
    for (const url of urls) etags.add(await etagOf(url, rig));
    expect(etags.has(undefined)).toBe(false);
    expect(etags.size).toBe(urls.length);
  });

  test('and another one once something was published', async () => {
    const rig = rigOf();
    const before = await etagOf(FIT, rig);
    publish(rig.store, LARGER_CART);
    const after = await rig.client
      .get(FIT)
      .set('if-none-match', before ?? '')
      .expect(200);
    expect(after.headers['faying-edition']).toBe('2');
    expect(await etagOf(`${FIT}&edition=1`, rig)).toBe(before);
  });

  test('an older state that is published again is another edition', async () => {
    const { CART } = await import('../cli/catalogue.js');
    const rig = rigOf({ documents: [CART, LARGER_CART, CART] });
    expect(await etagOf(`${FIT}&edition=1`, rig)).not.toBe(await etagOf(`${FIT}&edition=3`, rig));
  });

  test('of the list of editions changes with them', async () => {
    const rig = rigOf();
    const before = (await etagOf('/v1/editions', rig)) ?? '';
    await rig.client.get('/v1/editions').set('if-none-match', before).expect(304);
    publish(rig.store, LARGER_CART);
    await rig.client.get('/v1/editions').set('if-none-match', before).expect(200);
  });
});

describe('where and for how long', () => {
  test('Content-Location pins the edition and the language, and answers the same', async () => {
    const { client } = rigOf();
    const url = `${FIT}&torque=90%20N.m&fitted.engine=motor`;
    const floating = await client.get(url);
    const place = floating.headers['content-location'] ?? '';
    expect(place).toBe(
      '/v1/fit?edition=1&fitted.engine=motor&lang=en&part=box-c&torque=90%20N.m&vehicle=cart-1' +
        '&view=full',
    );
    const pinned = await client.get(place).expect(200);
    expect(pinned.text).toBe(floating.text);
    expect(pinned.headers.etag).toBe(floating.headers.etag);
    expect(pinned.headers['content-location']).toBe(place);
  });

  test('a pinned answer holds for a day, a floating one for half a minute', async () => {
    const { client } = rigOf();
    const floating = (await client.get(FIT)).headers['cache-control'];
    const pinned = (await client.get(`${FIT}&edition=1&changes=no`)).headers['cache-control'];
    expect(floating).toBe('public, max-age=30, stale-while-revalidate=300, stale-if-error=86400');
    expect(pinned).toBe('public, max-age=86400');
  });

  test('an answer with prices is of their list too, and is kept no longer', async () => {
    const { client, store } = rigOf();
    const url = `${FIT}&edition=1`;
    const first = (await client.get(url)).headers;
    expect(first['cache-control']).toMatch(/^public, max-age=30,/);
    const offer = { id: 'o-1', for: 'box-a', price: '90.00' };
    publish(store, { ...CART, currency: 'EUR', offers: [offer] });
    expect((await client.get(url)).headers.etag).not.toBe(first.etag);
    const alone = `${url}&changes=no`;
    const before = (await client.get(alone)).headers.etag;
    publish(store, { ...CART, currency: 'EUR', offers: [{ ...offer, price: '91.00' }] });
    expect((await client.get(alone)).headers.etag).toBe(before);
  });

  test('what is missing may be there in half a minute; other problems are not kept', async () => {
    const { client } = rigOf();
    const header = async (url: string) => (await client.get(url)).headers['cache-control'];
    expect(await header('/v1/fit?vehicle=cart-1&part=nope')).toBe('public, max-age=30');
    expect(await header('/nope')).toBe('public, max-age=30');
    expect(await header('/v1/fit')).toBe('no-store');
    const { client: other } = rigOf({ documents: [NAMED] });
    for (const url of ['/v1/fit?vehicle=cart-rough&part=box-a', '/v1/mate?a=sku:X&b=shaft-a']) {
      expect((await other.get(url)).headers['cache-control']).toBe('public, max-age=30');
    }
    const posted = await client.post('/v1/fit').send({ vehicle: 'cart-1', part: 'nope' });
    expect([posted.status, posted.headers['cache-control']]).toEqual([404, 'no-store']);
  });
});

test('a path of another spelling has the same answer, under the one address', async () => {
  const { client } = rigOf();
  for (const [plain, escaped] of [
    [FIT, FIT.replace('fit', '%66it')],
    ['/problems/unknown-part', '/problems/%75nknown%2Dpart'],
  ] as const) {
    const one = await client.get(plain).expect(200);
    const other = await client.get(escaped).expect(200);
    expect(other.text).toBe(one.text);
    expect(other.headers['content-location']).toBe(one.headers['content-location']);
    expect(other.headers.etag).toBe(one.headers.etag);
  }
});

describe('the language', () => {
  test('Vary names it only where the question does not', async () => {
    const { client } = rigOf();
    expect((await client.get(FIT)).headers.vary).toBe('Accept-Language');
    expect((await client.get(`${FIT}&lang=en`)).headers.vary).toBeUndefined();
  });

  test('is said in the body and in the header, also where another one was wished for', async () => {
    const { client } = rigOf();
    for (const lang of ['en', 'en-GB', 'EN', 'tlh']) {
      const response = await client.get(`${FIT}&lang=${lang}`).expect(200);
      expect(response.body.lang).toBe('en');
      expect(response.headers['content-language']).toBe('en');
    }
    await client
      .get(FIT)
      .set('accept-language', 'xx;q=1, *;q=0.1')
      .expect('content-language', 'en');
  });
});
