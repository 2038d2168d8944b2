/**
 * A box, a shaft and an axle in a row: a world small enough to work out by hand which kits there
 * are. Their ends meet where they are alike, and a plate makes an `a` of a `b`:
 *
 *   box-a   …a        shaft-aa  a…a     axle-a  a…
 *   box-b   …b        shaft-ba  b…a     axle-b  b…
 *                     shaft-bb  b…b
 *
 * The vehicle has box-a, shaft-aa and axle-a. Whoever wants box-b can put the plate behind it, or
 * take shaft-ba, or shaft-bb with the plate behind that, or shaft-bb with axle-b.
 */

import type { CatalogueDocument, PartRecord } from '../../src/domain/catalogue/document.js';
import { type KitAsk, NOTHING_ASKED } from './kit-ask.js';

export function part(
  id: string,
  role: string,
  ends: Readonly<Record<string, string | null>>,
): PartRecord {
  const interfaces = Object.entries(ends).map(([name, pattern]) => {
    return [name, { kind: 'joint', ...(pattern === null ? {} : { pattern }) }] as const;
  });
  return { id, name: id, roles: [role], interfaces: Object.fromEntries(interfaces) };
}

export function priced(prices: Readonly<Record<string, string>>) {
  return Object.entries(prices).map(([id, price]) => ({ id: `of-${id}`, for: id, price }));
}

const VALUES = { load: { type: 'measured', unit: 'N.m', rating: true } } as const;

export const ROW: CatalogueDocument = {
  catalogue: 1,
  lang: 'en',
  currency: 'EUR',
  evidence: { basis: 'maker' },
  kinds: [
    {
      id: 'joint',
      parameters: { pattern: { type: 'code' } },
      checks: [{ id: 'pattern', equal: 'pattern' }],
    },
  ],
  roles: [
    { id: 'box', name: 'box', faces: ['rear'], values: VALUES },
    { id: 'shaft', name: 'shaft', faces: ['front', 'rear'] },
    { id: 'axle', name: 'axle', faces: ['front'] },
    { id: 'plate', name: 'plate', faces: ['one', 'two'] },
    { id: 'used-up', name: 'used up', faces: [] },
  ],
  parts: [
    part('box-a', 'box', { rear: 'a' }),
    part('box-b', 'box', { rear: 'b' }),
    part('shaft-aa', 'shaft', { front: 'a', rear: 'a' }),
    part('shaft-ba', 'shaft', { front: 'b', rear: 'a' }),
    part('shaft-bb', 'shaft', { front: 'b', rear: 'b' }),
    part('axle-a', 'axle', { front: 'a' }),
    part('axle-b', 'axle', { front: 'b' }),
    part('plate', 'plate', { one: 'a', two: 'b' }),
    part('grease', 'used-up', {}),
  ],
  layouts: [
    {
      id: 'row',
      positions: [
        { id: 'box', name: 'Box', roles: ['box'], labour: '1 h', access: '0.5 h' },
        { id: 'shaft', name: 'Shaft', roles: ['shaft'], labour: '20 min', behind: ['box'] },
        { id: 'axle', name: 'Axle', roles: ['axle'] },
      ],
      matings: [
        { id: 'box-shaft', between: ['box.rear', 'shaft.front'] },
        { id: 'shaft-axle', between: ['shaft.rear', 'axle.front'] },
      ],
    },
  ],
  vehicles: [
    {
      id: 'cart',
      make: 'Marl',
      model: 'Cart',
      layout: 'row',
      fitted: { box: 'box-a', shaft: 'shaft-aa', axle: 'axle-a' },
    },
  ],
  offers: priced({
    'box-b': '100.00',
    'shaft-ba': '50.00',
    'shaft-bb': '30.00',
    'axle-b': '40.00',
    plate: '15.00',
  }),
};

export const BOX_B = {
  is: 'part',
  position: 'box',
  hand: null,
  parts: ['box-b'],
  renews: false,
} as const;

export const ASK: KitAsk = { ...NOTHING_ASKED, vehicle: 'cart', wants: [BOX_B] };
