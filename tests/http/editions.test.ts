/**
 * The editions as a list that grows at its beginning, and each by its number.
 */

import { describe, expect, test } from 'vitest';
import { cursorText, readCursor } from '../../src/contract/cursor.js';
import { editionAnswerSchema, editionsAnswerSchema } from '../../src/contract/editions.js';
import { CART } from '../cli/catalogue.js';
import { json, publish, type Rig, rigOf } from './fixture.js';

/** The cart in so many states, one after the other. */
const states = (count: number) =>
  Array.from({ length: count }, (_, index) => ({ ...CART, currency: ['EUR', 'SEK'][index % 2] }));

async function listed({ client }: Rig, search = '') {
  const response = await client.get(`/v1/editions${search}`).expect(200);
  return editionsAnswerSchema.parse(json(response));
}

const numbersIn = ({ items }: Awaited<ReturnType<typeof listed>>) =>
  items.map(({ number }) => number);

describe('the list', () => {
  test('has the newest first, whatever the limit', async () => {
    const rig = rigOf({ documents: states(7) });
    for (const limit of [1, 2, 3, 7, 8]) {
      const found: number[] = [];
      for (let search = `?limit=${limit}`; search !== ''; ) {
        const page = await listed(rig, search);
        expect([page.edition, page.counts.total]).toEqual([7, 7]);
        found.push(...numbersIn(page));
        search = page.next === null ? '' : `?limit=${limit}&cursor=${page.next}`;
      }
      expect(found).toEqual([7, 6, 5, 4, 3, 2, 1]);
    }
  });

  test('goes on as it was, though more has been published', async () => {
    const rig = rigOf({ documents: states(4) });
    const first = await listed(rig, '?limit=2');
    publish(rig.store, { ...CART, currency: 'NOK' });
    const second = await listed(rig, `?limit=1&cursor=${first.next}`);
    publish(rig.store, CART);
    const third = await listed(rig, `?limit=9&cursor=${second.next}`);
    expect([first, second, third].map(numbersIn)).toEqual([[4, 3], [2], [1]]);
    expect([second, third].map(({ edition, counts }) => [edition, counts.total])).toEqual([
      [4, 4],
      [4, 4],
    ]);
    expect(third.next).toBeNull();
    expect(numbersIn(await listed(rig))).toEqual([6, 5, 4, 3, 2, 1]);
  });

  test('is empty before anything was published', async () => {
    const { client } = rigOf({ documents: [] });
    const response = await client.get('/v1/editions').expect(200);
    expect(response.headers['faying-edition']).toBeUndefined();
    expect(editionsAnswerSchema.parse(json(response))).toMatchObject({
      edition: null,
      items: [],
      next: null,
      counts: { total: 0 },
    });
  });

  test('takes no cursor of another store, of another list, or that was made up', async () => {
    const rig = rigOf({ documents: states(3) });
    const { next } = await listed(rig, '?limit=1');
    const cursor = readCursor(next ?? '');
    if (cursor === null) throw new Error('the list has one page only');
    const bad = [
      cursorText({ ...cursor, edition: 2 }),
      cursorText({ ...cursor, edition: 9 }),
      cursorText({ ...cursor, hash: '0123456789abcdef' }),
      cursorText({ ...cursor, list: '/v1/layouts?{}' }),
      cursorText({ ...cursor, after: ['-1'] }),
      cursorText({ ...cursor, after: ['x'] }),
      'x',
    ];
    for (const text of bad) {
      const response = await rig.client.get(`/v1/editions?cursor=${text}`);
      expect([text, response.status, json(response).code]).toEqual([text, 400, 'invalid-cursor']);
    }
    const other = rigOf({ documents: states(2).reverse() });
    await other.client.get(`/v1/editions?cursor=${next}`).expect(400);
  });
});

describe('one edition', () => {
  test('by its number never changes, and says what the list says', async () => {
    const rig = rigOf({ documents: states(2) });
    const [newest, first] = (await listed(rig)).items;
    for (const head of [newest, first]) {
      const path = `/v1/editions/${head?.number}`;
      const response = await rig.client.get(path).expect(200);
      const { edition, engine: _, ...answer } = editionAnswerSchema.parse(json(response));
      expect(answer).toEqual(head);
      expect(edition).toBe(head?.number);
      expect(response.headers).toMatchObject({
        'cache-control': 'public, max-age=31536000, immutable',
        'content-location': path,
        'faying-edition': String(head?.number),
      });
    }
  });

  test('by the word latest is the newest, for half a minute', async () => {
    const rig = rigOf({ documents: states(1) });
    const ask = () => rig.client.get('/v1/editions/latest');
    const before = await ask().expect(200);
    expect(before.headers['cache-control']).toMatch(/^public, max-age=30,/);
    expect(before.headers['content-location']).toBe('/v1/editions/1');
    await ask().set('if-none-match', String(before.headers.etag)).expect(304);
    publish(rig.store, { ...CART, currency: 'NOK' });
    const after = await ask().set('if-none-match', String(before.headers.etag)).expect(200);
    expect(json(after)).toMatchObject({ edition: 2, number: 2 });
    const pinned = await rig.client.get('/v1/editions/2').expect(200);
    expect(pinned.text).toBe(after.text);
  });

  test('that is to come is not there yet, for half a minute', async () => {
    const { client } = rigOf();
    const response = await client.get('/v1/editions/2').expect(404);
    expect(json(response)).toMatchObject({ code: 'unknown-edition', retry: 'with-change' });
    expect(response.headers['cache-control']).toBe('public, max-age=30');
  });
});
