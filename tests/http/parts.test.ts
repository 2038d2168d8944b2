/**
 * The list of parts over HTTP: what each filter keeps, that several are one question, and that a
 * role or kind that is not there is no empty list.
 */

import { describe, expect, test } from 'vitest';
import { CART } from '../cli/catalogue.js';
import { json, rigOf } from './fixture.js';

/** The cart with parts as a trade has them: makers, numbers, names in two languages. */
const TRADE = {
  ...CART,
  parts: [
    ...CART.parts,
    {
      id: 'strong-box',
      roles: ['gearbox'],
      name: { en: 'strong gearbox', de: 'Getriebe, verstärkt' },
      maker: 'Wainer & Söhne',
      numbers: [
        { number: '44/10-077', of: 'maker' },
        { number: 'W.9 120', of: 'Fennuld Spares' },
      ],
      built: ['2003-04', null],
      interfaces: { rear: { kind: 'cart-flange', side: 'spigot', pattern: 'f9' } },
    },
    {
      id: 'old-box',
      roles: ['gearbox', 'plate'],
      name: 'Café gearbox',
      maker: 'WAINER & SÖHNE',
      numbers: [{ number: '44/10-070', of: 'maker' }],
      supersededBy: 'strong-box',
      spans: ['gearbox', 'prop-shaft'],
    },
    { id: 'hook', roles: ['plate'], name: 'hook', hand: 'left', maker: 'Fennuld Spares' },
  ],
};

const rig = rigOf({ documents: [TRADE] });

async function list(search: string) {
  const response = await rig.client.get(`/v1/parts?${search}`);
  expect([search, response.status, json(response).detail]).toEqual([search, 200, undefined]);
  return json(response) as unknown as { items: { id: string }[]; counts: unknown; next: unknown };
}

const idsOf = async (search: string) => (await list(search)).items.map(({ id }) => id);

describe('an entry', () => {
  test('says what is recorded of the part as an article', async () => {
    const { items } = await list('number=44/10-077');
    expect(items).toEqual([
      {
        id: 'strong-box',
        name: 'strong gearbox',
        roles: ['gearbox'],
        maker: 'Wainer & Söhne',
        numbers: [
          { number: '44/10-077', of: 'maker' },
          { number: 'W.9 120', of: 'Fennuld Spares' },
        ],
        hand: null,
        spans: [],
        built: ['2003-04', null],
        supersededBy: null,
      },
    ]);
    expect((await list('text=old-box')).items).toEqual([
      expect.objectContaining({
        spans: ['gearbox', 'prop-shaft'],
        built: [null, null],
        supersededBy: 'strong-box',
      }),
    ]);
    expect((await list('text=hook')).items).toMatchObject([{ hand: 'left', numbers: [] }]);
    expect((await list('text=strong-box&lang=de')).items).toMatchObject([
      { name: 'Getriebe, verstärkt' },
    ]);
  });
});

describe('a filter keeps', () => {
  test.each([
    ['role=gearbox', ['box-a', 'box-b', 'box-c', 'box-d', 'old-box', 'strong-box']],
    ['role=engine', ['motor']],
    ['kind=cart-flange&role=plate', ['plate-ab']],
    ['kind=wheel-mount', []],
    ['maker=wainer%26s%C3%B6hne', ['old-box', 'strong-box']],
    ['maker=nobody', []],
    ['maker=Fennuld-Spares&role=plate', ['hook']],
    ['number=44/10.077', ['strong-box']],
    ['number=44/10%20077%40wainer%26s%C3%B6hne', ['strong-box']],
    ['number=w9-120', ['strong-box']],
    ['number=w9-120%40wainer', []],
    ['number=44/10', []],
    ['number=44/10-077&role=plate', []],
    ['text=gearbox', ['old-box', 'strong-box']],
    ['text=GETRIEBE', ['strong-box']],
    ['text=verstarkt', ['strong-box']],
    ['text=cafe%20wainer', ['old-box']],
    ['text=44/10', ['old-box', 'strong-box']],
    ['text=box%20strong%20077', ['strong-box']],
    ['text=gearboxcaf', []],
    ['superseded=true', ['old-box']],
    ['superseded=false&role=plate', ['hook', 'plate-ab']],
    ['superseded=true&maker=Fennuld Spares', []],
  ])('%s', async (search, ids) => {
    expect(await idsOf(search)).toEqual(ids);
    expect(await list(search)).toMatchObject({ counts: { total: ids.length }, next: null });
  });

  test('nothing out, where none is named', async () => {
    expect(await idsOf('')).toEqual(TRADE.parts.map(({ id }) => id).sort());
  });

  test('the same on every page, which its cursor holds to', async () => {
    const first = await list('role=gearbox&superseded=false&limit=3');
    expect(first).toMatchObject({ counts: { total: 5 } });
    const rest = `limit=3&cursor=${String(first.next)}`;
    expect(await idsOf(`role=gearbox&superseded=false&${rest}`)).toEqual(['box-d', 'strong-box']);
    const other = await rig.client.get(`/v1/parts?role=gearbox&${rest}`).expect(400);
    expect(json(other).code).toBe('invalid-cursor');
  });
});

describe('a role or kind that is not there', () => {
  test.each([
    ['role=gearbx', 404, 'unknown-role', `There is no role "gearbx". Did you mean 'gearbox'?`],
    ['kind=cart-flang', 404, 'unknown-kind', `There is no kind "cart-flang". Did you mean`],
  ])('%s is said, with what was meant', async (search, status, code, text) => {
    const response = await rig.client.get(`/v1/parts?${search}`).expect(status);
    expect(json(response)).toMatchObject({
      code,
      errors: [{ parameter: search.split('=')[0], code, text: expect.stringContaining(text) }],
    });
  });
});
