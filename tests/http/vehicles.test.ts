/**
 * Vehicles as a list: what leaves one in it, what is asked next, and in which words.
 */

import { describe, expect, test } from 'vitest';
import type { Vehicle } from '../../src/domain/catalogue/catalogue.js';
import { VehicleDirectory } from '../../src/usecases/vehicle-directory.js';
import type { AskView, VehicleEntry } from '../../src/usecases/vehicle-view.js';
import { json, publish, rigOf } from './fixture.js';
import { GARAGE } from './garage.js';

const rig = rigOf({ documents: [GARAGE] });

interface Wire {
  readonly items: readonly VehicleEntry[];
  readonly next: string | null;
  readonly counts: { readonly total: number };
  readonly ask: readonly AskView[];
}

async function asked(search: string, { client } = rig): Promise<Wire> {
  const response = await client.get(`/v1/vehicles?${search}`).expect(200);
  return json(response) as unknown as Wire;
}

async function idsOf(search: string): Promise<string[]> {
  const { items, counts } = await asked(search);
  expect(counts.total).toBe(items.length);
  return items.map(({ id }) => id);
}

const T2 = ['t2-any', 't2-early', 't2-late'];
const TARN = encodeURIComponent('tÄRN ');

describe('the list', () => {
  test('is in the order of make, model, months and id, without what was replaced', async () => {
    expect(await idsOf('')).toEqual(['s1', 't2-early', 't2-any', 't2-late', 't3', 'cart-1']);
    expect(await idsOf('replaced=true')).toContain('t2-rough');
    expect(await idsOf('replaced=false')).not.toContain('t2-rough');
  });

  test('says what is recorded of each, and calls it by the language', async () => {
    const [entry] = (await asked('make=tarn&fact.axle-tag=a&variant=early')).items;
    expect(entry).toEqual({
      id: 't2-early',
      label: 'Tärn 200, early, 09/2002 to 08/2005',
      make: 'Tärn',
      model: '200',
      variant: 'early',
      built: ['2002-09', '2005-08'],
      layout: 'cart',
      facts: { 'axle-tag': 'a' },
      replacedBy: [],
    });
    const { items } = await asked('lang=de&replaced=true');
    expect(items.map(({ label }) => label)).toEqual([
      'Ordale Sledge',
      'Tärn 200',
      'Tärn 200, early, 09/2002 bis 08/2005',
      'Tärn 200, 09/2002 bis 01/2008',
      'Tärn 200, late, ab 09/2005',
      'Tärn 300, late, bis 12/1999',
      'Wainer Cart',
    ]);
    expect(items.find(({ id }) => id === 't2-rough')?.replacedBy).toEqual(['t2-early', 't2-late']);
  });
});

describe('what is known leaves those in of which it may be true', () => {
  test.each([
    // Names are compared without case, marks and spaces around them.
    [`make=${TARN}&model=200`, T2],
    ['make=tarn&model=200', T2],
    ['make=tar', []],
    ['model=SLEDGE', ['s1']],
    // Whose variant nobody recorded can be of any.
    ['model=200&variant=LATE', ['t2-any', 't2-late']],
    ['model=200&variant=sport', ['t2-any']],
    // Any month of the year will do; an end that is not known leaves all years open.
    ['make=tarn&year=2002', ['t2-any', 't2-early']],
    ['make=tarn&year=2005', T2],
    ['make=tarn&year=2001', []],
    ['make=tarn&year=2050', ['t2-late']],
    ['make=tarn&year=0', ['t3']],
    ['make=tarn&built=2005-08', ['t2-any', 't2-early']],
    ['make=tarn&built=2005-09', ['t2-any', 't2-late']],
    ['make=wainer&built=1900-01', ['cart-1']],
    // Who does not record a fact may have any value of it.
    ['make=tarn&model=200&fact.axle-tag=a', ['t2-any', 't2-early']],
    ['make=tarn&model=200&fact.axle-tag=c', ['t2-any']],
    ['layout=sledge', ['s1']],
    // Words stand anywhere in the names, in any order.
    ['text=late+tarn', ['t2-late', 't3']],
    ['text=LÄTE', ['t2-late', 't3']],
    ['text=sledge+tarn', []],
    [
      'make=Tarn&year=2005&built=2005-09&fact.axle-tag=b&text=200&layout=cart',
      ['t2-any', 't2-late'],
    ],
  ])('%s', async (search, ids) => {
    expect((await idsOf(search)).sort()).toEqual(ids);
  });

  test('names that nothing has are faults, all of them at once', async () => {
    const response = await rig.client.get('/v1/vehicles?fact.axle-tga=a&layout=sleigh').expect(422);
    expect(json(response).errors).toEqual([
      {
        parameter: 'fact.axle-tga',
        code: 'unknown-fact',
        data: { name: 'axle-tga', meant: 'axle-tag' },
        text: `There is no fact "axle-tga". Did you mean 'axle-tag'?`,
      },
      {
        parameter: 'layout',
        code: 'unknown-layout',
        data: { name: 'sleigh', meant: 'sledge' },
        text: `There is no layout "sleigh". Did you mean 'sledge'?`,
      },
    ]);
    const other = await rig.client.get('/v1/vehicles?fact.axle-tag=d').expect(422);
    expect(json(other).detail).toBe('"axle-tag" cannot be "d".');
  });
});

describe('what to ask next', () => {
  const told = ({ field, fact, values }: AskView) => [
    fact ?? field,
    Object.fromEntries(values.map(({ value, count }) => [value, count])),
  ];

  test('is the make, then the model, then what tells the rest apart', async () => {
    const [make, ...more] = (await asked('')).ask;
    expect(make).toEqual({
      field: 'make',
      fact: null,
      position: null,
      name: 'Make',
      how: null,
      values: [
        { value: 'Ordale', label: 'Ordale', count: 1 },
        { value: 'Tärn', label: 'Tärn', count: 4 },
        { value: 'Wainer', label: 'Wainer', count: 1 },
      ],
    });
    expect(more.map(({ field }) => field)).toEqual(['year']);
    const [model] = (await asked('make=tarn')).ask;
    expect(model).toMatchObject({ field: 'model', name: 'Model' });
    expect((await asked('make=tarn&model=200')).ask.map(told).map(([name]) => name)).toEqual([
      'axle-tag',
      'variant',
      'year',
    ]);
    expect((await asked('make=tarn&model=300')).ask).toEqual([]);
  });

  test('counts who does not record a fact or variant at each of its values', async () => {
    const [tag, variant] = (await asked('make=tarn&model=200')).ask;
    expect(variant && told(variant)).toEqual(['variant', { early: 2, late: 2 }]);
    expect(tag && told(tag)).toEqual(['axle-tag', { a: 2, b: 2, c: 1 }]);
  });

  test('is asked in the language of the answer', async () => {
    const { ask } = await asked('make=tarn&model=200&lang=de');
    expect(ask[1]).toMatchObject({ name: 'Ausführung', how: null });
    expect(ask[0]).toMatchObject({
      fact: 'axle-tag',
      name: 'Schild an der Achse',
      how: 'Das Schild lesen.',
      values: [{ label: 'Buchstabe A' }, { label: 'Buchstabe B' }, { label: 'C' }],
    });
    expect(ask[2]).toMatchObject({ field: 'year', name: 'Baujahr' });
  });

  test('goes on to the year of publication where a vehicle may be built still', async () => {
    const { ask } = await asked('make=tarn&model=200');
    const years = ask.find(({ field }) => field === 'year')?.values ?? [];
    expect([years[0], years.at(-1)]).toEqual([
      { value: '2002', label: '2002', count: 2 },
      { value: '2026', label: '2026', count: 1 },
    ]);
  });

  test('is the month once the year is known, and neither once the month is', async () => {
    const { ask } = await asked('make=tarn&model=200&year=2005&variant=late');
    expect(ask.map(({ field }) => field)).toEqual(['built', 'fact']);
    expect(ask[0]?.values.map(({ value, label, count }) => [value, label, count])).toEqual(
      Array.from({ length: 12 }, (_, index) => {
        const month = String(index + 1).padStart(2, '0');
        return [`2005-${month}`, `${month}/2005`, index < 8 ? 1 : 2];
      }),
    );
    const settled = await asked('make=tarn&model=200&variant=late&built=2005-10');
    expect(settled.ask.map(({ field }) => field)).toEqual(['fact']);
  });

  test('is of the whole list, whatever the page', async () => {
    const whole = await asked('make=tarn');
    const first = await asked('make=tarn&limit=1');
    const second = await asked(`make=tarn&limit=1&cursor=${first.next}`);
    expect([first.ask, second.ask]).toEqual([whole.ask, whole.ask]);
    expect(second.items.map(({ id }) => id)).toEqual(['t2-any']);
  });
});

describe('pages', () => {
  test('have every vehicle once, in order, whatever the limit and what is published', async () => {
    const own = rigOf({ documents: [GARAGE] });
    const whole = (await asked('', own)).items.map(({ id }) => id);
    for (const limit of [1, 2, 3, 5]) {
      const found: string[] = [];
      let cursor = '';
      do {
        const page = await asked(`limit=${limit}${cursor}`, own);
        found.push(...page.items.map(({ id }) => id));
        publish(own.store, { ...GARAGE, vehicles: GARAGE.vehicles.slice(0, limit) });
        cursor = page.next === null ? '' : `&cursor=${page.next}`;
      } while (cursor !== '');
      expect(found).toEqual(whole);
      publish(own.store, GARAGE);
    }
  });

  test('of one filter are refused with another', async () => {
    const { next } = await asked('make=tarn&limit=1');
    await rig.client.get(`/v1/vehicles?make=tarn&cursor=${next}`).expect(200);
    for (const other of [
      '',
      'make=ordale&',
      'make=tarn&year=2002&',
      'make=tarn&fact.axle-tag=a&',
    ]) {
      const response = await rig.client.get(`/v1/vehicles?${other}cursor=${next}`).expect(400);
      expect(json(response).code).toBe('invalid-cursor');
    }
  });
});

describe('caches', () => {
  test('keep it for a day where it is pinned: the program decides what to ask', async () => {
    const { headers } = await rig.client.get('/v1/vehicles?edition=1&make=tarn');
    expect(headers['cache-control']).toBe('public, max-age=86400');
    expect(headers['content-location']).toBe('/v1/vehicles?edition=1&lang=en&make=tarn&view=full');
  });

  test('know one question by one name and validator', async () => {
    const one = await rig.client.get('/v1/vehicles?year=2005&make=tarn&replaced=false');
    const other = await rig.client.get('/v1/vehicles?make=tarn&year=2005');
    for (const header of ['content-location', 'etag']) {
      expect(one.headers[header]).toBe(other.headers[header]);
    }
  });
});

test('names are folded once for each edition, and not for each question', () => {
  let folds = 0;
  const fold = (text: string) => {
    folds += 1;
    return text.toLowerCase();
  };
  const vehicles = Array.from({ length: 5000 }, (_, index) => ({
    id: `v${index}`,
    make: `make ${index % 40}`,
    model: `model ${index % 500}`,
    variant: `variant ${index}`,
    built: [null, null],
    facts: new Map(),
    layout: { id: 'one' },
    replacedBy: [],
  })) as unknown as Vehicle[];
  const directory = new VehicleDirectory(vehicles, fold);
  expect(folds).toBe(15_000);
  const filter = {
    make: 'MAKE 1',
    model: null,
    variant: null,
    text: 'Model 1',
    year: null,
    built: null,
    layout: null,
    facts: new Map(),
  };
  expect(directory.find(filter, { isReplacedToo: false })).toHaveLength(125);
  expect(folds).toBe(15_002);
});
