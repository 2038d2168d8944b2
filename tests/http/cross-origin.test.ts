/**
 * Pages of other origins, which a browser lets read only what the service lets them.
 */

import { describe, expect, test } from 'vitest';
import { FIT, rigOf } from './fixture.js';

const SHOP = 'https://shop.example';
const EXPOSED =
  'ETag, Link, Content-Location, Faying-Edition, Faying-View, RateLimit, Retry-After, ' +
  'WWW-Authenticate, X-Request-Id';

describe('a page that may read', () => {
  const { client } = rigOf({ corsOrigins: [SHOP, 'http://localhost:3000'] });

  test.each([
    ['an answer', FIT, 200],
    ['a problem', '/v1/fit?vehicle=cart-1&part=x', 404],
    ['that there is nothing', '/nowhere', 404],
  ])('%s', async (_, url, status) => {
    const response = await client.get(url).set('origin', SHOP).expect(status);
    expect(response.headers).toMatchObject({
      'access-control-allow-origin': SHOP,
      'access-control-expose-headers': EXPOSED,
    });
    expect(response.headers.vary).toContain('Origin');
  });

  test('and that what it has still holds', async () => {
    const { etag = '' } = (await client.get(FIT)).headers;
    const again = await client.get(FIT).set({ origin: SHOP, 'if-none-match': etag }).expect(304);
    expect(again.headers['access-control-allow-origin']).toBe(SHOP);
  });

  test.each([
    ['/v1/fit', 'QUERY', 'GET, HEAD, POST, QUERY, OPTIONS'],
    ['/v1/inspect', 'POST', 'POST, QUERY, OPTIONS'],
    ['/v1/editions', 'GET', 'GET, HEAD, OPTIONS'],
  ])('is told first which methods and headers it may send: %s', async (path, method, allowed) => {
    const response = await client
      .options(path)
      .set({ origin: SHOP, 'access-control-request-method': method })
      .expect(204);
    expect(response.headers).toMatchObject({
      'access-control-allow-origin': SHOP,
      'access-control-allow-methods': allowed,
      'access-control-allow-headers': 'Authorization, Content-Type, If-None-Match, X-Request-Id',
      'access-control-max-age': '86400',
    });
  });
});

describe('a page that may not', () => {
  test.each([
    ['of another origin', { corsOrigins: [SHOP] }, 'https://shop.example.test', 'Origin'],
    ['of none', { corsOrigins: [SHOP] }, 'null', 'Origin'],
    ['where nobody may', {}, SHOP, undefined],
  ])('%s', async (_, options, origin, vary) => {
    const { client } = rigOf(options);
    const preflight = { origin, 'access-control-request-method': 'QUERY' };
    for (const answer of [
      await client.get(`${FIT}&lang=en`).set('origin', origin).expect(200),
      await client.options('/v1/fit').set(preflight).expect(204),
    ]) {
      const named = Object.keys(answer.headers).filter((name) => name.startsWith('access-control'));
      expect([named, answer.headers.vary]).toEqual([[], vary]);
    }
  });
});
