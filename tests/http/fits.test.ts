/**
 * What fits what over HTTP: lists of parts for a vehicle and of vehicles for a part say of each
 * what the fit question of that one says.
 */

import { describe, expect, test } from 'vitest';
import { LIMITS } from '../../src/contract/limits.js';
import { demoDocument } from '../memory-store.js';
import { json, rigOf } from './fixture.js';

const rig = rigOf({ documents: [demoDocument()] });

interface Entry {
  readonly part?: string;
  readonly vehicle?: string;
  readonly asked?: string;
  readonly label?: string;
  readonly alone: string;
  readonly verdict: string | null;
  readonly at: readonly string[];
  readonly ambiguous: boolean;
  readonly error?: { readonly code: string };
  readonly donor?: readonly { readonly position: string }[];
  readonly kit?: { readonly comesWith: readonly { readonly part: string }[] } | null;
  readonly counts?: Counts;
}

type Counts = Readonly<Record<'total' | 'holds' | 'open' | 'fails', number>>;

interface Wire {
  readonly items: readonly Entry[];
  readonly next: string | null;
  readonly counts: Counts;
}

async function asked(path: string): Promise<Wire> {
  return json(await rig.client.get(path).expect(200)) as unknown as Wire;
}

async function fitOf(vehicle: string, part: string, more = ''): Promise<Entry> {
  const question = `/v1/fit?vehicle=${vehicle}&part=${part}&changes=no${more}`;
  return json(await rig.client.get(question).expect(200)) as unknown as Entry;
}

/** What both lists and the fit question say. */
function said({ alone, verdict, at, ambiguous }: Entry) {
  return { alone, verdict, at, ambiguous };
}

describe('the parts for a vehicle', () => {
  test('are in the order of their ids, each as the fit question has it', async () => {
    const { items, counts, next } = await asked(
      '/v1/vehicles/gallivet/fits?position=front-hub&limit=200',
    );
    expect(items.length).toBeGreaterThan(3);
    const ids = items.map(({ part }) => part ?? '');
    expect(ids).toEqual(ids.toSorted((a, b) => (a < b ? -1 : 1)));
    for (const item of items) {
      expect(said(item)).toEqual(said(await fitOf('gallivet', item.part ?? '')));
    }
    expect(next).toBeNull();
    expect(counts.total).toBe(items.length);
    expect(counts.holds + counts.open + counts.fails).toBe(counts.total);
  });

  test('on all pages are those of one', async () => {
    const whole = await asked('/v1/vehicles/lirren-1/fits?limit=200');
    const found: Entry[] = [];
    let page = await asked('/v1/vehicles/lirren-1/fits?limit=7');
    found.push(...page.items);
    while (page.next !== null) {
      page = await asked(`/v1/vehicles/lirren-1/fits?limit=7&cursor=${page.next}`);
      expect(page.counts).toEqual(whole.counts);
      found.push(...page.items);
    }
    expect(found).toEqual(whole.items);
    expect(found.length).toBeGreaterThan(20);
  });

  test('can be those of some outcomes; the counts are of all', async () => {
    const whole = await asked('/v1/vehicles/lirren-1/fits?limit=200');
    const some = await asked('/v1/vehicles/lirren-1/fits?limit=200&alone=holds,open');
    expect(some.items).toEqual(whole.items.filter(({ alone }) => alone !== 'fails'));
    expect(some.counts).toEqual({ ...whole.counts, total: some.items.length });
  });

  test('can be those at one place, with other parts and facts told', async () => {
    const more = '&position=linkage&with.gearbox=gearbox-6-late';
    const { items } = await asked(`/v1/vehicles/lirren-1/fits?limit=50${more}`);
    expect(items.length).toBeGreaterThan(1);
    for (const item of items) {
      expect(said(item)).toEqual(said(await fitOf('lirren-1', item.part ?? '', more)));
    }
    const told = '&fact.subframe-ears=low';
    for (const item of (await asked(`/v1/vehicles/gallivet/fits?limit=200${told}`)).items) {
      if (item.alone === 'fails') continue;
      expect(said(item)).toEqual(said(await fitOf('gallivet', item.part ?? '', told)));
    }
  });

  test('can be named by any name; one that nobody knows takes nothing from others', async () => {
    const names = 'part=sku%3AF-1001&part=bracket-20&part=gearbox-9&part=wheel-15-117';
    const { items, counts } = await asked(`/v1/vehicles/lirren-1/fits?${names}`);
    expect(items.map((item) => item.part ?? item.error?.code)).toEqual([
      'gearbox-6-late',
      'bracket-20',
      'unknown-part',
      'wheel-15-117',
    ]);
    expect(items[0]).toMatchObject({ asked: 'sku:F-1001', resolvedBy: 'sku' });
    expect(counts.total).toBe(4);
    for (const item of items.filter(({ part }) => part !== undefined)) {
      expect(said(item)).toEqual(said(await fitOf('lirren-1', item.part ?? '')));
    }
  });

  test('named at a place that takes no such part are judged there all the same', async () => {
    const { items } = await asked('/v1/vehicles/lirren-1/fits?part=bracket-20&position=gearbox');
    expect(items.map(said)).toEqual([
      said(await fitOf('lirren-1', 'bracket-20', '&position=gearbox')),
    ]);
  });

  test('with changes say what the fit question says with changes', async () => {
    const path = '/v1/vehicles/lirren-1/fits?part=front-hub-117&part=bracket-20&changes=yes';
    const { items } = await asked(path);
    expect(items.map(({ verdict }) => verdict)).toEqual(['fits-with-changes', 'fits']);
  });

  test('of a donor are what the works fitted to it, and say what comes with each', async () => {
    const { items } = await asked('/v1/vehicles/lirren-1/fits?donor=lirren-2&limit=200');
    expect(items.every(({ donor }) => (donor ?? []).length > 0)).toBe(true);
    expect(items.every(({ kit }) => kit === null)).toBe(true);
    const path = '/v1/vehicles/lirren-1/fits?donor=lirren-2&position=starter&changes=yes';
    const [starter] = (await asked(path)).items;
    expect(starter).toMatchObject({ part: 'starter-late', verdict: 'fits-with-changes' });
    const along = starter?.kit?.comesWith.map(({ part }) => part) ?? [];
    const own = new Set(items.map(({ part }) => part));
    expect(along).toContain('flywheel-late');
    expect(along.filter((part) => !own.has(part))).toEqual([]);
  });

  test.each([
    ['/v1/vehicles/lirren-9/fits', 404, 'unknown-vehicle', 'id'],
    ['/v1/vehicles/lirren/fits', 410, 'vehicle-replaced', 'id'],
    ['/v1/vehicles/lirren-1/fits?position=x', 422, 'unknown-position', 'position'],
    ['/v1/vehicles/lirren-1/fits?role=x', 404, 'unknown-role', 'role'],
    ['/v1/vehicles/lirren-1/fits?donor=x', 404, 'unknown-vehicle', 'donor'],
    ['/v1/vehicles/lirren-1/fits?with.gearbox=x', 404, 'unknown-part', 'with.gearbox'],
    [
      '/v1/vehicles/lirren-1/fits?position=gearbox&with.gearbox=gearbox-6-late',
      422,
      'place-of-the-part',
      'with.gearbox',
    ],
    ['/v1/vehicles/lirren-1/fits?part=bracket-20&role=gearbox', 400, 'not-beside-names', 'role'],
    ['/v1/vehicles/lirren-1/fits?changes=yes&limit=21', 400, 'too-large', 'limit'],
    ['/v1/vehicles/lirren-1/fits?alone=fits', 400, 'not-one-of', 'alone'],
    ['/v1/vehicles/%ff/fits', 400, 'malformed-encoding', 'id'],
  ])('%s is refused', async (path, status, code, parameter) => {
    const problem = json(await rig.client.get(path).expect(status));
    expect(problem.errors).toMatchObject([{ code, parameter }]);
  });
});

describe('the vehicles for a part', () => {
  test('are in the order of vehicles, each as the fit question has it', async () => {
    const { items, counts } = await asked('/v1/parts/gearbox-6-late/fits');
    expect(items.length).toBeGreaterThan(2);
    for (const item of items) {
      expect(said(item)).toEqual(said(await fitOf(item.vehicle ?? '', 'gearbox-6-late')));
    }
    const { items: vehicles } = await asked('/v1/vehicles?limit=200');
    const order = vehicles.map((one) => (one as unknown as { id: string }).id);
    const places = items.map(({ vehicle }) => order.indexOf(vehicle ?? ''));
    expect(places).toEqual(places.toSorted((a, b) => a - b));
    expect(counts.total).toBe(items.length);
  });

  test('can be narrowed, and told facts of', async () => {
    const { items } = await asked('/v1/parts/bracket-20/fits?make=corrablyn&year=2003');
    expect(items.map(({ vehicle }) => vehicle)).toEqual(['lirren-1']);
    const fact = 'fact.subframe-ears=low';
    const told = await asked(`/v1/parts/gearbox-6-late/fits?${fact}`);
    for (const item of told.items) {
      const one = await fitOf(item.vehicle ?? '', 'gearbox-6-late', `&${fact}`);
      expect(said(item)).toEqual(said(one));
    }
  });

  test('can be named; one that is not there, or replaced, is an error of its item', async () => {
    const { items } = await asked('/v1/parts/bracket-20/fits?vehicle=lirren-2,lirren,nobody');
    expect(items.map((item) => item.vehicle ?? item.error?.code)).toEqual([
      'lirren-2',
      'vehicle-replaced',
      'unknown-vehicle',
    ]);
  });

  test('can be told model by model', async () => {
    const { items, counts } = await asked('/v1/parts/gearbox-6-late/fits?group=model');
    const whole = await asked('/v1/parts/gearbox-6-late/fits');
    expect(counts).toEqual({ ...whole.counts, total: items.length });
    const sum = items.reduce((all, item) => all + (item.counts?.total ?? 0), 0);
    expect(sum).toBe(whole.items.length);
    expect(items.map(({ label }) => label)).toEqual([
      'Brundivale Hulvane',
      'Corrablyn Lirren, 09/2005 to 12/2010',
    ]);
    const first = await asked('/v1/parts/gearbox-6-late/fits?group=model&limit=1');
    const rest = await asked(
      `/v1/parts/gearbox-6-late/fits?group=model&limit=1&cursor=${first.next}`,
    );
    expect([...first.items, ...rest.items]).toEqual(items);
  });

  test.each([
    ['/v1/parts/nothing/fits', 404, 'unknown-part', 'id'],
    ['/v1/parts/gearbox-6-late/fits?layout=x', 404, 'unknown-layout', 'layout'],
    ['/v1/parts/gearbox-6-late/fits?fact.x=y', 422, 'unknown-fact', 'fact.x'],
    ['/v1/parts/gearbox-6-late/fits?vehicle=lirren-1&make=x', 400, 'not-beside-vehicle', 'make'],
  ])('%s is refused', async (path, status, code, parameter) => {
    const problem = json(await rig.client.get(path).expect(status));
    expect(problem.errors).toMatchObject([{ code, parameter }]);
  });

  test.each([
    ['vehicle', '/v1/parts/gearbox-6-late/fits', 'lirren-1'],
    ['part', '/v1/vehicles/lirren-1/fits', 'bracket-20'],
  ])('changes are looked for on a page of names and no more: %s', async (field, path, name) => {
    const names = Array.from({ length: LIMITS.fitsSolved.value + 1 }, () => `${field}=${name}`);
    const target = `${path}?changes=yes&${names.join('&')}`;
    const problem = json(await rig.client.get(target).expect(400));
    expect(problem.errors).toMatchObject([{ parameter: field, data: { limit: 'fitsSolved' } }]);
  });

  test('are answered once: what a client has already is not judged', async () => {
    const before = rig.judged.listFittedVehicles;
    const first = await rig.client.get('/v1/parts/bracket-20/fits').expect(200);
    const etag = first.headers.etag ?? '';
    await rig.client.get('/v1/parts/bracket-20/fits').set('if-none-match', etag).expect(304);
    expect(rig.judged.listFittedVehicles).toBe(before + 1);
  });
});
