/**
 * Lists: one envelope, pages of one edition whatever is published between them, cursors that are
 * good for their own list alone.
 */

import { describe, expect, test } from 'vitest';
import { type Cursor, cursorText, readCursor } from '../../src/contract/cursor.js';
import { CART } from '../cli/catalogue.js';
import { json, publish, type Rig, rigOf } from './fixture.js';

const [LAYOUT] = CART.layouts;

/** The cart with layouts of these ids beside its own. */
function withLayouts(...ids: readonly string[]) {
  return { ...CART, layouts: [...CART.layouts, ...ids.map((id) => ({ ...LAYOUT, id }))] };
}

interface ListWire {
  readonly edition: number;
  readonly items: readonly { readonly id: string }[];
  readonly next: string | null;
  readonly counts: { readonly total: number };
}

async function list({ client }: Rig, url: string): Promise<ListWire> {
  const response = await client.get(url).expect(200);
  return json(response) as unknown as ListWire;
}

const idsIn = ({ items }: ListWire) => items.map(({ id }) => id);

describe('pages', () => {
  test('have every entry once, in order, whatever the limit', async () => {
    const rig = rigOf({ documents: [withLayouts('zeta', 'alpha', 'b-1', 'b')] });
    const whole = await list(rig, '/v1/layouts');
    expect(idsIn(whole)).toEqual(['alpha', 'b', 'b-1', 'cart', 'zeta']);
    expect(whole).toMatchObject({ next: null, counts: { total: 5 } });
    for (const limit of [1, 2, 3, 4, 5]) {
      const found: string[] = [];
      let url = `/v1/layouts?limit=${limit}`;
      for (;;) {
        const page = await list(rig, url);
        expect(page.counts.total).toBe(5);
        found.push(...idsIn(page));
        if (page.next === null) break;
        expect(page.items).toHaveLength(limit);
        url = `/v1/layouts?limit=${limit}&cursor=${page.next}`;
      }
      expect(found).toEqual(idsIn(whole));
    }
  });

  test('stay with the edition of the first one', async () => {
    const rig = rigOf({ documents: [withLayouts('alpha', 'zeta')] });
    const first = await list(rig, '/v1/layouts?limit=2');
    publish(rig.store, withLayouts('beta', 'gamma', 'zeta'));
    const second = await list(rig, `/v1/layouts?limit=2&cursor=${first.next}`);
    expect([first, second].map((page) => [page.edition, idsIn(page)])).toEqual([
      [1, ['alpha', 'cart']],
      [1, ['zeta']],
    ]);
    expect((await list(rig, '/v1/layouts')).edition).toBe(2);
  });
});

describe('a cursor', () => {
  async function made(rig: Rig): Promise<Cursor> {
    const { next } = await list(rig, '/v1/layouts?limit=1');
    const cursor = readCursor(next ?? '');
    if (cursor === null) throw new Error('the list has one page only');
    return cursor;
  }

  test('is refused with another edition, list, hash, and when it was made up', async () => {
    const rig = rigOf({ documents: [withLayouts('alpha'), withLayouts('alpha', 'beta')] });
    const cursor = await made(rig);
    const good = cursorText(cursor);
    const bad = [
      `${good}&edition=1`,
      cursorText({ ...cursor, edition: 1 }),
      cursorText({ ...cursor, edition: 7 }),
      cursorText({ ...cursor, hash: '0123456789abcdef' }),
      cursorText({ ...cursor, list: '/v1/parts?{}' }),
      good.slice(0, -3),
      `${good}x`,
      'W10',
      'x',
      '%F0%9F%92%A5',
      btoa(JSON.stringify([1, 2, 3, 4])),
    ];
    for (const text of bad) {
      const response = await rig.client.get(`/v1/layouts?cursor=${text}`);
      expect([text, response.status, json(response).code]).toEqual([text, 400, 'invalid-cursor']);
    }
    await rig.client.get(`/v1/layouts?cursor=${good}&edition=2`).expect(200);
  });

  test('of another store is refused, though the edition has the same number', async () => {
    const cursor = cursorText(await made(rigOf({ documents: [withLayouts('alpha')] })));
    const other = rigOf({ documents: [withLayouts('alpha', 'beta')] });
    const response = await other.client.get(`/v1/layouts?cursor=${cursor}`).expect(400);
    expect(json(response).code).toBe('invalid-cursor');
  });
});

describe('caches', () => {
  test('keep what an edition records for ever, the newest for half a minute', async () => {
    const { client } = rigOf({ documents: [withLayouts('alpha')] });
    const floating = 'public, max-age=30, stale-while-revalidate=300, stale-if-error=86400';
    for (const path of ['/v1/layouts', '/v1/layouts/cart']) {
      const newest = await client.get(path);
      expect(newest.headers['cache-control']).toBe(floating);
      expect(newest.headers['content-location']).toBe(`${path}?edition=1&lang=en&view=full`);
      const pinned = await client.get(`${path}?edition=1`);
      expect(pinned.headers['cache-control']).toBe('public, max-age=31536000, immutable');
      expect(pinned.headers.etag).toBe(newest.headers.etag);
    }
    const page = json(await client.get('/v1/layouts?limit=1'));
    const next = await client.get(`/v1/layouts?limit=1&cursor=${String(page.next)}`);
    expect(next.headers['cache-control']).toBe('public, max-age=31536000, immutable');
  });

  test('what the client has already is not even listed', async () => {
    const { client, judged } = rigOf();
    for (const path of ['/v1/layouts', '/v1/layouts/cart']) {
      const { headers } = await client.get(path).expect(200);
      await client.get(path).set('if-none-match', String(headers.etag)).expect(304);
    }
    expect(judged).toMatchObject({ listLayouts: 1, readLayout: 1 });
  });
});
