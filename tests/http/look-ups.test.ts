/**
 * Names of parts that are looked up at once: each is answered by itself, and one that leads
 * nowhere takes nothing from the others.
 */

import { describe, expect, test } from 'vitest';
import { itemProblemSchema } from '../../src/contract/problem.js';
import { json, publish, rigOf } from './fixture.js';
import { NAMED, OFFERED_ANEW } from './named-parts.js';

const rig = rigOf({ documents: [NAMED] });

interface Item {
  readonly asked: string;
  readonly id?: string;
  readonly resolvedBy?: string;
  readonly error?: unknown;
}

function url(names: readonly string[], more = ''): string {
  return `/v1/parts?${names.map((name) => `part=${encodeURIComponent(name)}`).join('&')}${more}`;
}

async function lookUp(names: readonly string[], more = '') {
  const response = await rig.client.get(url(names, more)).expect(200);
  return json(response) as unknown as { items: Item[]; counts: object; next: null; offers: number };
}

describe('names that are looked up', () => {
  test('lead to parts in the order of the question, one twice', async () => {
    const { items, counts, next, offers } = await lookUp([
      'hook,box-a',
      'sku:GB-7700',
      'number:W.9, 120',
      'hook',
    ]);
    expect(items.map(({ asked, id, resolvedBy }) => [asked, id, resolvedBy])).toEqual([
      ['hook', 'hook', 'id'],
      ['box-a', 'box-a', 'id'],
      ['sku:GB-7700', 'strong-box', 'sku'],
      ['number:W.9, 120', 'strong-box', 'number'],
      ['hook', 'hook', 'id'],
    ]);
    expect([counts, next, offers]).toEqual([{ total: 5 }, null, 1]);
  });

  test('are entries as the list has them', async () => {
    const { items } = await lookUp(['44/10-070']);
    const list = json(await rig.client.get('/v1/parts?text=old-box').expect(200));
    const [entry] = list.items as [object];
    expect(items).toEqual([{ asked: '44/10-070', resolvedBy: 'number', ...entry }]);
    expect(list.offers).toBeNull();
  });

  test('are worked where works stand behind them', async () => {
    const { items } = await lookUp(['sku:GB-7700+polish', '44/10-070+polish']);
    expect(items).toMatchObject([
      { id: 'strong-box+polish', name: 'strong gearbox, polished', supersededBy: null },
      { error: { code: 'invalid-question', errors: [{ code: 'work-not-for-part' }] } },
    ]);
  });

  test('and that lead nowhere are problems of their own', async () => {
    const { items } = await lookUp(['44/10 077', 'hok', 'sku:C-1', 'hook'], '&lang=de');
    const [several, none, lot, hook] = items;
    expect(several).toMatchObject({
      asked: '44/10 077',
      error: { code: 'ambiguous-part', status: 409, lang: 'de', errors: [{ parameter: 'part' }] },
    });
    expect(none).toMatchObject({ asked: 'hok', error: { status: 404, retry: 'with-change' } });
    expect(lot).toMatchObject({ error: { errors: [{ code: 'sku-of-lot' }] } });
    expect(hook).toMatchObject({ id: 'hook' });
    for (const item of [several, none, lot]) {
      expect(Object.keys(item ?? {})).toEqual(['asked', 'error']);
      expect(itemProblemSchema.parse(item?.error)).toEqual(item?.error);
    }
  });

  test('are no filters, and stand beside none', async () => {
    const response = await rig.client.get(url(['hook'], '&role=plate&limit=2')).expect(400);
    expect(json(response).errors).toMatchObject([
      { parameter: 'role', code: 'not-beside-names' },
      { parameter: 'limit', code: 'not-beside-names' },
    ]);
  });

  test('are at most so many', async () => {
    const names = Array.from({ length: 200 }, (_, index) => `p${index}`);
    expect((await lookUp(names)).items).toHaveLength(200);
    const response = await rig.client.get(url([...names, 'one-more'])).expect(400);
    expect(json(response).errors).toMatchObject([
      { parameter: 'part', code: 'too-many-items', data: { most: 200 } },
    ]);
    await rig.client.get('/v1/parts?part=').expect(400);
  });

  test('are guessed for the first fifty that lead nowhere', async () => {
    const { items } = await lookUp([...Array.from({ length: 60 }, () => 'hok'), 'hook']);
    const meant = items.slice(0, 60).map(({ error }) => itemProblemSchema.parse(error).errors[0]);
    const texts = meant.map((fault) => fault?.data);
    expect(texts.slice(0, 50)).toEqual(Array(50).fill({ name: 'hok', meant: 'hook' }));
    expect(texts.slice(50)).toEqual(Array(10).fill({ name: 'hok', meant: null }));
    expect(items[60]).toMatchObject({ id: 'hook' });
  });

  test('are kept like answers, and no longer than the price and stock list', async () => {
    const own = rigOf({ documents: [NAMED] });
    const byId = await own.client.get(url(['hook'], '&edition=1')).expect(200);
    expect(byId.headers['cache-control']).toBe('public, max-age=86400');
    const bySku = await own.client.get(url(['hook', 'sku:GB-7700'], '&edition=1')).expect(200);
    expect(bySku.headers['cache-control']).toMatch(/^public, max-age=30,/);
    const again = await own.client.get(bySku.headers['content-location'] ?? '').expect(200);
    expect(again.text).toBe(bySku.text);
    const known = { 'if-none-match': bySku.headers.etag ?? '' };
    await own.client
      .get(url(['hook', 'sku:GB-7700'], '&edition=1'))
      .set(known)
      .expect(304);
    publish(own.store, OFFERED_ANEW);
    const anew = await own.client.get(url(['hook', 'sku:GB-7700'], '&edition=1')).set(known);
    expect([anew.status, json(anew).offers]).toEqual([200, 2]);
    expect(own.judged).toMatchObject({ lookUpParts: 4, listParts: 0 });
  });
});
