/**
 * All that fits in ranges of models: which vehicles are one range, and what is said of others of
 * their name.
 */

import { describe, expect, test } from 'vitest';
import type { VehicleRecord } from '../../src/domain/catalogue/document.js';
import { CART } from '../cli/catalogue.js';
import { FEED, type Line, linesOf, middle } from './feed.js';
import { rigOf } from './fixture.js';

describe('ranges', () => {
  const cart = (id: string, built: readonly (string | null)[], gearbox = 'box-a') => {
    const [first] = CART.vehicles as [(typeof CART.vehicles)[number]];
    const fitted = { ...first.fitted, gearbox };
    return { ...first, id, variant: 'plain', built, fitted } as unknown as VehicleRecord;
  };
  const shaftB = {
    ...(CART.parts.find(({ id }) => id === 'shaft-a') as (typeof CART.parts)[number]),
    id: 'shaft-b',
  };

  async function ranges(vehicles: readonly VehicleRecord[], search = ''): Promise<Line[]> {
    const rig = rigOf({ documents: [{ ...CART, parts: [...CART.parts, shaftB], vehicles }] });
    const asked = `${FEED}?form=ranges&part=shaft-b&lang=en${search}`;
    return middle(await linesOf(rig, asked));
  }

  const COMMON = {
    part: 'shaft-b',
    make: 'Wainer',
    model: 'Cart',
    variant: 'plain',
    position: 'prop-shaft',
  };
  const HOLDS = { ...COMMON, alone: 'holds', verdict: 'fits' };

  test('join what was built one after the other, and no more', async () => {
    const found = await ranges([
      cart('a', ['2001-01', '2001-12']),
      cart('b', ['2002-01', '2003-06']),
      cart('c', ['2002-03', '2002-09']),
      cart('d', ['2003-08', null]),
      cart('e', ['2005-01', '2006-01']),
    ]);
    expect(found).toEqual([
      {
        ...HOLDS,
        built: ['2001-01', '2003-06'],
        label: 'Wainer Cart, plain, 01/2001 to 06/2003',
        vehicles: 3,
        mixed: false,
      },
      {
        ...HOLDS,
        built: ['2003-08', null],
        label: 'Wainer Cart, plain, from 08/2003',
        vehicles: 2,
        mixed: false,
      },
    ]);
  });

  test('say where others of the name come to something else, whatever is left out', async () => {
    const vehicles = [
      cart('a', ['2001-01', '2002-12']),
      cart('b', ['2002-06', '2003-12'], 'box-b'),
      cart('c', ['2004-01', '2004-12']),
    ];
    const found = await ranges(vehicles, '&alone=holds');
    expect(found.map(({ built, mixed }) => [built, mixed])).toEqual([
      [['2001-01', '2002-12'], true],
      [['2004-01', '2004-12'], false],
    ]);
    const fails = await ranges(vehicles, '&alone=fails');
    expect(fails).toMatchObject([{ built: ['2002-06', '2003-12'], mixed: true, verdict: null }]);
  });

  test('stand alone where nobody knows when they began', async () => {
    const found = await ranges([
      cart('a', [null, '2001-12']),
      cart('b', ['2001-01', '2001-12']),
      cart('c', [null, null], 'box-b'),
    ]);
    expect(found.map(({ built, alone, mixed }) => [built, alone, mixed])).toEqual([
      [[null, null], 'fails', true],
      [[null, '2001-12'], 'holds', true],
      [['2001-01', '2001-12'], 'holds', true],
    ]);
  });

  test('are rows with the months apart', async () => {
    const documents = [{ ...CART, vehicles: [cart('a', ['2001-01', null])] }];
    const response = await rigOf({ documents }).app.request(
      `${FEED}?form=ranges&part=box-a&lang=en`,
      { headers: { accept: 'text/csv' } },
    );
    const rows = (await response.text()).split('\r\n');
    expect(rows[0]).toBe(
      'kind,part,make,model,variant,builtFrom,builtUntil,label,position,alone,verdict,vehicles,' +
        'mixed,gone,json',
    );
    expect(rows[2]).toBe(
      'fit,box-a,Wainer,Cart,plain,2001-01,,"Wainer Cart, plain, from 01/2001",gearbox,holds,' +
        'fits,1,false,,',
    );
  });
});
