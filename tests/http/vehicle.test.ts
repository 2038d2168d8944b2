/**
 * One vehicle whole over HTTP: what the works fitted at each place, what a fact tells of it, what
 * is not recorded; its facts, adapters, numbers and evidence, and for how long caches may keep it.
 */

import { describe, expect, test } from 'vitest';
import { vehicleAnswerSchema } from '../../src/contract/vehicle.js';
import type { VehicleAnswer } from '../../src/usecases/vehicle-view.js';
import { demoDocument } from '../memory-store.js';
import { json, rigOf } from './fixture.js';
import { GARAGE } from './garage.js';

const FACT = {
  id: 'boot-tag',
  name: { en: 'Tag in the boot', de: 'Schild im Kofferraum' },
  how: { en: 'Look into the boot.', de: 'In den Kofferraum sehen.' },
  values: [
    { id: 'long', name: { en: 'long shaft', de: 'lange Welle' } },
    { id: 'bare', name: { en: 'no shaft', de: 'keine Welle' } },
    { id: 'lost', name: { en: 'lost', de: 'verloren' } },
  ],
};

const TORQUE = { type: 'measured', unit: 'N.m', askedAs: 'torque' };

/** The garage with a vehicle that has one of everything, and one that knows next to nothing. */
const YARD = {
  ...GARAGE,
  facts: [...GARAGE.facts, FACT],
  roles: [
    { id: 'engine', name: 'Engine', values: { torque: TORQUE } },
    ...GARAGE.roles.filter(({ id }) => id !== 'engine'),
  ],
  rules: [
    {
      id: 'tag-c',
      when: { 'one-of': ['fact.axle-tag', ['c']] },
      needs: { not: { empty: 'gearbox' } },
      because: 'By the tag.',
    },
  ],
  vehicles: [
    ...GARAGE.vehicles,
    {
      id: 'y1',
      make: 'Tärn',
      model: '400',
      built: ['2002-09', null],
      layout: 'cart',
      vin: ['YX1AAAAA*********', { pattern: 'YX1BBBBB*********', from: '000100', to: '000299' }],
      evidence: { by: 'works list 3', on: '2026-02-01' },
      fitted: {
        engine: 'motor',
        gearbox: 'box-b',
        'prop-shaft': { by: 'boot-tag', long: 'shaft-a', bare: null },
        'wheel-shaft': { left: 'wheel-shaft-l', right: null },
        matings: { 'box-shaft': 'plate-ab' },
      },
    },
    { id: 'y2', make: 'Tärn', model: '400', like: 'y1', facts: { 'boot-tag': 'long' } },
    { id: 'y3', make: 'Tärn', model: '400', like: 'y1', facts: { 'boot-tag': 'lost' } },
    { id: 'y4', make: 'Tärn', model: '500', layout: 'cart', fitted: {} },
  ],
};

const rig = rigOf({ documents: [YARD] });

async function read(id: string, search = ''): Promise<VehicleAnswer> {
  const response = await rig.client.get(`/v1/vehicles/${id}${search}`).expect(200);
  return vehicleAnswerSchema.parse(json(response));
}

const at = ({ positions }: VehicleAnswer, position: string, hand: string | null = null) =>
  positions.find((one) => one.position === position && one.hand === hand);

describe('what the works fitted', () => {
  test('stands at each position, and for each hand of it', async () => {
    const whole = await read('y1');
    expect(whole.positions.map(({ position, hand }) => [position, hand])).toEqual([
      ['engine', null],
      ['gearbox', null],
      ['prop-shaft', null],
      ['wheel-shaft', 'left'],
      ['wheel-shaft', 'right'],
    ]);
    expect(at(whole, 'gearbox')).toEqual({
      position: 'gearbox',
      name: 'Gearbox',
      hand: null,
      cautionGroups: ['driveline'],
      occupant: 'part',
      part: 'box-b',
      partName: 'box b',
      option: null,
    });
    expect(at(whole, 'engine')?.cautionGroups).toEqual([]);
    expect(at(whole, 'wheel-shaft', 'left')?.part).toBe('wheel-shaft-l');
    expect(at(whole, 'wheel-shaft', 'right')).toMatchObject({ occupant: 'empty', part: null });
  });

  test('is not said where a fact would tell it and is open: what it would tell is', async () => {
    const by = [
      { value: 'bare', valueName: 'no shaft', occupant: 'empty', part: null, partName: null },
      {
        value: 'long',
        valueName: 'long shaft',
        occupant: 'part',
        part: 'shaft-a',
        partName: 'long shaft a',
      },
    ];
    const option = { fact: 'boot-tag', by };
    const found = { occupant: 'as-found', part: null, partName: null, option };
    expect(at(await read('y1'), 'prop-shaft')).toMatchObject(found);
    expect(at(await read('y2'), 'prop-shaft')).toMatchObject({
      occupant: 'part',
      part: 'shaft-a',
      partName: 'long shaft a',
      option,
    });
    // Of that value the record does not say what goes with it.
    expect(at(await read('y3'), 'prop-shaft')).toMatchObject(found);
  });

  test('is open where nobody recorded it, which is not empty', async () => {
    const { positions, values, adapters, vin } = await read('y4');
    expect(positions.map(({ occupant, option }) => [occupant, option])).toEqual(
      Array.from({ length: 5 }, () => ['as-found', null]),
    );
    expect([adapters, vin]).toEqual([[], []]);
    expect(values).toMatchObject([{ position: 'engine', part: null, recorded: null }]);
  });

  test('comes with the adapters and the torque that a question may take the place of', async () => {
    const { adapters, values } = await read('y1');
    expect(adapters).toEqual([
      {
        mating: 'box-shaft',
        between: ['gearbox.rear', 'prop-shaft.front'],
        adapters: [{ part: 'plate-ab', name: 'plate f2 to f1' }],
      },
    ]);
    expect(values).toMatchObject([
      {
        position: 'engine',
        hand: null,
        part: 'motor',
        partName: 'motor',
        parameter: 'torque',
        name: 'torque',
        askedAs: 'torque',
        recorded: { form: 'number', value: { text: '150 N.m' }, evidence: { basis: 'measured' } },
      },
    ]);
  });
});

describe('the rest of the record', () => {
  test('has the facts that have a say, with how to find out what is open', async () => {
    const { namedFacts, facts } = await read('y1');
    expect(facts).toEqual({});
    expect(namedFacts).toMatchObject([
      { fact: 'axle-tag', how: 'Read the tag.', value: null, valueName: null, positions: [] },
      { fact: 'boot-tag', how: 'Look into the boot.', value: null, positions: ['prop-shaft'] },
    ]);
    const told = (await read('y2')).namedFacts[1];
    expect(told).toMatchObject({ value: 'long', valueName: 'long shaft' });
    expect(told?.values).toEqual([
      { value: 'long', name: 'long shaft' },
      { value: 'bare', name: 'no shaft' },
      { value: 'lost', name: 'lost' },
    ]);
    // The rule speaks of its layout too; the tag in the boot tells nothing of it.
    expect((await read('s1')).namedFacts.map(({ fact }) => fact)).toEqual(['axle-tag']);
  });

  test('has numbers, evidence, likeness and what took its place', async () => {
    const whole = await read('y2');
    expect(whole).toMatchObject({
      like: 'y1',
      layoutName: null,
      evidence: { basis: 'measured', by: 'works list 3', on: '2026-02-01', source: null },
      vin: [],
    });
    expect((await read('y1')).vin).toEqual([
      { pattern: 'YX1AAAAA*********', serial: [] },
      { pattern: 'YX1BBBBB*********', serial: ['000100', '000299'] },
    ]);
    const groups = whole.cautions.map(({ group }) => group);
    expect(groups).toEqual(['general', 'driveline']);
  });

  test('begins as it stands in the list', async () => {
    const response = await rig.client.get('/v1/vehicles').expect(200);
    const { items } = json(response) as { items: { id: string }[] };
    expect(items.length).toBeGreaterThan(9);
    for (const entry of items) expect(await read(entry.id)).toMatchObject(entry);
  });

  test('speaks the language of the question, and the catalogue where that has none', async () => {
    const whole = await read('y2', '?lang=de');
    expect(whole).toMatchObject({ lang: 'de', textLang: ['en'], label: 'Tärn 400' });
    expect(whole.namedFacts[1]).toMatchObject({
      name: 'Schild im Kofferraum',
      how: 'In den Kofferraum sehen.',
      valueName: 'lange Welle',
    });
    expect(whole.cautions[0]?.text).toMatch(/[äöüß]/);
  });
});

describe('over HTTP', () => {
  test('an id that there is not is answered with the one that is near', async () => {
    const response = await rig.client.get('/v1/vehicles/t2-lat').expect(404);
    expect(json(response)).toMatchObject({
      code: 'unknown-vehicle',
      errors: [{ parameter: 'id', data: { name: 't2-lat', meant: 't2-late' } }],
    });
  });

  test('is an answer to caches, by its edition; asked again, nothing is read', async () => {
    const { headers } = await rig.client.get('/v1/vehicles/y1?edition=1').expect(200);
    expect(headers['cache-control']).toBe('public, max-age=86400');
    expect(headers['content-location']).toBe('/v1/vehicles/y1?edition=1&lang=en&view=full');
    const before = rig.judged.readVehicle;
    const again = rig.client.get('/v1/vehicles/y1?edition=1');
    await again.set('if-none-match', headers.etag ?? '').expect(304);
    expect(rig.judged.readVehicle).toBe(before);
  });
});

test('every vehicle of the demo is what the contract says, and all of it has a name', async () => {
  const { client } = rigOf({ documents: [demoDocument()] });
  const list = json(await client.get('/v1/vehicles?limit=200').expect(200));
  const { items } = list as { items: { id: string }[] };
  expect(items.length).toBeGreaterThan(8);
  const open = new Map<string, number>();
  for (const { id } of items) {
    const answer = json(await client.get(`/v1/vehicles/${id}`).expect(200));
    const whole = vehicleAnswerSchema.parse(answer);
    expect(whole).toEqual(answer);
    open.set(id, whole.positions.filter(({ occupant }) => occupant === 'as-found').length);
    for (const { part, partName } of whole.positions) expect(partName === null).toBe(part === null);
  }
  expect([open.get('lirren-1'), open.get('hulvane'), open.get('gallivet-4')]).toEqual([0, 6, 2]);
});
