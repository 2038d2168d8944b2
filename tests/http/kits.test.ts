/**
 * Kit questions over HTTP: in a URL and in a body they are one question; the answer is of the price
 * and stock list as well, and repeats the question in a form that can be sent again.
 *
 * Left out: what the routes are, for which see the tests of the domain and of the demo.
 */

import { describe, expect, test } from 'vitest';
import { kitAnswerSchema } from '../../src/contract/kit-answer.js';
import { USUAL_STEPS } from '../../src/domain/kit/extent.js';
import { json, publish, rigOf } from './fixture.js';
import { NAMED } from './named-parts.js';

type Answer = ReturnType<typeof kitAnswerSchema.parse>;

const rig = rigOf({ documents: [NAMED] });

async function get(search: string): Promise<Answer> {
  const response = await rig.client.get(`/v1/kits?vehicle=cart-1&${search}`);
  expect([search, response.status, response.status === 200 ? '' : response.text]).toEqual([
    search,
    200,
    '',
  ]);
  return kitAnswerSchema.parse(json(response));
}

async function post(body: object): Promise<Answer> {
  const response = await rig.client.post('/v1/kits').send({ vehicle: 'cart-1', ...body });
  expect([response.status, response.status === 200 ? '' : response.text]).toEqual([200, '']);
  return kitAnswerSchema.parse(json(response));
}

/** What a route puts in. */
function added({ routes }: Answer): (string | null)[] {
  return (routes[0]?.lines ?? []).filter(({ action }) => action === 'add').map(({ part }) => part);
}

describe('a question in a URL', () => {
  test('is the one in a body', async () => {
    const search =
      'want=box-d@gearbox&want=lot:crate&keep=engine,prop-shaft&avoid=box-b,sku:GB-7700' +
      '&lots=none&workUpTo=none&limits.cost=900&limits.changedPositions=3&limits.labourHours=9.5' +
      '&limits.leadDays=9&limits.inStock=true&torque=140%20N.m&use=road&ignorePresent=true' +
      '&unknowns=refuse&from=offered&prefer=capacity&routes=2&undominated=true&steps=99' +
      '&fitted.gearbox=box-c&adapter.box-shaft=plate-ab&lang=de&units=imperial';
    const body = {
      want: [{ part: 'box-d', position: 'gearbox' }, { lot: 'crate' }],
      keep: ['engine', 'prop-shaft'],
      avoid: [{ part: 'box-b' }, { part: 'sku:GB-7700' }],
      lots: 'none',
      workUpTo: 'none',
      limits: { cost: '900', changedPositions: 3, labourHours: '9.5', leadDays: 9, inStock: true },
      torque: '140 N.m',
      use: 'road',
      ignorePresent: true,
      unknowns: 'refuse',
      from: 'offered',
      prefer: 'capacity',
      routes: 2,
      undominated: true,
      steps: 99,
      fitted: { gearbox: 'box-c' },
      adapters: { 'box-shaft': ['plate-ab'] },
      lang: 'de',
      units: 'imperial',
    };
    const [inUrl, inBody] = [await get(search), await post(body)];
    expect(inUrl).toEqual(inBody);
    expect(inUrl.question).toMatchObject({
      want: [{ part: ['box-d'], position: 'gearbox', renew: false }, { lot: 'crate' }],
      keep: ['engine', 'prop-shaft'],
      avoid: [{ part: 'box-b' }, { part: 'strong-box' }],
      limits: { cost: '900.00', changedPositions: 3, labourHours: '9.5', leadDays: 9 },
      steps: 99,
    });
  });

  test('may name a part by any name, to its end where it says itself what it is', async () => {
    for (const name of ['strong-box', 'sku:GB-7700', 'number:44/10 077@Wainer & Söhne']) {
      const { question } = await get(`want=${encodeURIComponent(name)}`);
      expect([name, question.want]).toEqual([name, [{ part: ['strong-box'], renew: false }]]);
    }
  });

  test('has lots by name, or all or none of them', async () => {
    for (const [search, lots] of [
      ['', 'all'],
      ['lots=all', 'all'],
      ['lots=none', 'none'],
      ['lots=crate', ['crate']],
      ['lots=crate&lots=crate', ['crate']],
    ]) {
      expect([search, (await get(String(search))).question.lots]).toEqual([search, lots]);
    }
  });

  test('without a wish mends what is not right, which here is nothing', async () => {
    const { routes, summary } = await get('');
    expect(summary.code).toBe('nothing-to-change');
    expect(routes.map(({ changes, lines }) => [changes, lines])).toEqual([[[], []]]);
  });
});

describe('the answer', () => {
  test('repeats the question, which sent again has the very same answer', async () => {
    const questions = [
      { want: [{ part: 'box-d' }] },
      {
        want: [{ part: ['box-d', 'strong-box'], renew: true }, { lot: 'crate' }],
        avoid: [{ supplier: 'Fennuld' }],
        owned: [{ part: 'number:W9,120' }],
        offers: [
          { part: 'box-d', price: '80', stock: 2, leadDays: 3, pack: '1' },
          { sku: 'C-1', price: '9.5' },
        ],
        offersMode: 'replace',
        measured: [
          { on: { position: 'gearbox', parameter: 'torque' }, value: '210 N.m' },
          {
            on: { part: 'box-d', interface: 'rear', parameter: 'register', hand: null },
            value: '60.04 mm',
            tool: 'caliper',
          },
        ],
        limits: { cost: '900', labourHours: '9.50' },
        labourRate: '60',
        fitted: { 'wheel-shaft': { left: 'wheel-shaft-l', right: 'unknown' } },
        torque: '100 N.m',
      },
      {
        want: [{ position: 'gearbox', condition: { 'at-least': ['gearbox.torque', '250 N.m'] } }],
        avoid: [{ position: 'gearbox', condition: { 'one-of': ['gearbox.part', ['box-b']] } }],
        lang: 'de',
      },
    ];
    for (const question of questions) {
      const first = await post(question);
      const again = await post(first.question);
      expect(again.question).toEqual(first.question);
      const [{ named: _, ...one }, { named: __, ...other }] = [first, again];
      expect(other).toEqual(one);
    }
  });

  test('takes what it asks to have measured, as it asks for it', async () => {
    const wish = { want: [{ part: 'box-c' }] };
    const { routes } = await post(wish);
    const measure = routes.flatMap((route) => route.measure);
    const [fact] = measure;
    expect(fact?.on).toMatchObject({ part: 'box-c', interface: 'rear', parameter: 'register' });
    const answer = await post({ ...wish, measured: [{ on: fact?.on, value: '60.00 ±0.02 mm' }] });
    expect(answer.routes.map(({ grade }) => grade)).toEqual(['proven']);
    expect(added(answer)).toEqual(['box-c']);
  });

  test("has prices of one's own, which nobody else is told", async () => {
    const wish = { want: [{ part: 'strong-box' }] };
    const costs = async (more: object) =>
      (await post({ ...wish, ...more })).routes.map(({ totals }) => totals.cost);
    expect(await costs({})).toEqual(['90.00']);
    expect(await costs({ offers: [{ part: 'strong-box', price: '70.5' }] })).toEqual(['70.50']);
    expect(await costs({})).toEqual(['90.00']);
  });
});

describe('between the service and whoever asks again', () => {
  test('the answer is of the price and stock list, pinned or not', async () => {
    const one = rigOf({ documents: [NAMED] });
    const url = '/v1/kits?vehicle=cart-1&want=strong-box';
    for (const pinned of ['', '&edition=1']) {
      const first = await one.client.get(`${url}${pinned}`).expect(200);
      expect(first.headers['cache-control']).toMatch(/max-age=30\b/);
      const etag = String(first.headers.etag);
      const known = one.client.get(`${url}${pinned}`).set('if-none-match', etag);
      await known.expect(304);
    }
    const before = await one.client.get(url);
    const offers = [{ id: 'o-1', for: 'strong-box', price: '75.00' }];
    publish(one.store, { ...NAMED, offers });
    const after = await one.client.get(url).expect(200);
    expect(json(before)).toMatchObject({ edition: 1, offers: 1 });
    expect(json(after)).toMatchObject({ edition: 1, offers: 2 });
    expect(after.headers.etag).not.toBe(before.headers.etag);
    expect(after.text).toContain('75.00');
  });

  test('what the client has already is not searched again, by QUERY either', async () => {
    const one = rigOf({ documents: [NAMED] });
    const query = (headers: Record<string, string>) =>
      one.app.request('/v1/kits', {
        method: 'QUERY',
        headers: { 'content-type': 'application/json', ...headers },
        body: JSON.stringify({ vehicle: 'cart-1', want: [{ part: 'box-d' }] }),
      });
    const first = await query({});
    const etag = first.headers.get('etag') ?? '';
    const location = first.headers.get('content-location') ?? '';
    expect(location).toBe('/v1/kits?edition=1&lang=en&vehicle=cart-1&view=full&want=box-d');
    expect((await query({ 'if-none-match': etag })).status).toBe(304);
    expect(one.judged.resolveKitQuestion).toBe(1);
    const shared = await one.client.get(location).expect(200);
    expect(shared.text).toBe(await first.text());
  });

  test("nobody keeps an answer with prices of one's own", async () => {
    const one = rigOf({ documents: [NAMED], answerCacheBytes: 1_000_000 });
    const query = (more: object, headers: Record<string, string> = {}) =>
      one.app.request('/v1/kits', {
        method: 'QUERY',
        headers: { 'content-type': 'application/json', ...headers },
        body: JSON.stringify({ vehicle: 'cart-1', want: [{ part: 'strong-box' }], ...more }),
      });
    const own = { offers: [{ part: 'strong-box', price: '70.00' }] };
    for (const more of [own, { labourRate: '60.00' }]) {
      const before = one.judged.resolveKitQuestion;
      const first = await query(more);
      expect(first.headers.get('cache-control')).toBe('no-store');
      await query(more);
      expect(one.judged.resolveKitQuestion).toBe(before + 2);
      const etag = first.headers.get('etag') ?? '';
      expect((await query(more, { 'if-none-match': etag })).status).toBe(304);
    }
    const before = one.judged.resolveKitQuestion;
    for (const _ of [1, 2]) {
      expect((await query({})).headers.get('cache-control')).toMatch(/^public/);
    }
    expect(one.judged.resolveKitQuestion).toBe(before + 1);
  });

  test('the address of a question is one, and only of what a URL can say', async () => {
    const location = async (body: object) => {
      const response = await rig.client.post('/v1/kits').send({ vehicle: 'cart-1', ...body });
      return response.headers['content-location'];
    };
    const at = (search: string) => `/v1/kits?edition=1&lang=en&${search}vehicle=cart-1&view=full`;
    expect(await location({ routes: 3, lots: 'all', prefer: 'cost', steps: USUAL_STEPS })).toBe(
      at(''),
    );
    expect(await location({ lots: ['crate'], limits: { cost: '9' } })).toBe(
      at('limits.cost=9&lots=crate&'),
    );
    const wants = [{ part: 'box-d', position: 'gearbox' }, { lot: 'crate' }];
    expect(await location({ want: wants })).toBe(
      `${at('')}&want=${encodeURIComponent('box-d@gearbox,lot:crate')}`,
    );
    for (const unsaid of [
      { want: [{ part: ['box-a', 'box-d'] }] },
      { want: [{ part: 'box-d', renew: true }] },
      { want: [{ part: '44/10-070@Wainer & Söhne' }] },
      { avoid: [{ supplier: 'Fennuld' }] },
      { owned: [{ part: 'box-d' }] },
      { lots: [] },
      { labourRate: '60.00' },
    ]) {
      expect([unsaid, await location(unsaid)]).toEqual([unsaid, undefined]);
    }
  });
});
