/**
 * One part whole over HTTP: every form of value, evidence as it is recorded and inherited, what is
 * absent, what may be chosen, and what nobody recorded though it is asked for.
 */

import { describe, expect, test } from 'vitest';
import { CART } from '../cli/catalogue.js';
import { json, rigOf } from './fixture.js';

const [flange] = CART.kinds;
const measured = { basis: 'measured', by: 'bench 2', on: '2026-03-01' };

/** The cart with a kind and a role that have a value of every form, and a part that has them. */
const FORMS = {
  ...CART,
  kinds: [
    {
      ...flange,
      parameters: {
        ...flange?.parameters,
        holes: { type: 'points', unit: 'mm', optional: true },
        depth: { type: 'measured', unit: 'mm', of: 'spigot', unless: ['step', 'rise'] },
        step: { type: 'measured', unit: 'mm', optional: true },
        rise: { type: 'measured', unit: 'mm', optional: true },
        lip: { type: 'measured', unit: 'mm', of: 'recess' },
      },
    },
  ],
  roles: [
    ...CART.roles,
    {
      id: 'winch',
      name: 'Winch',
      caution: 'driveline',
      faces: ['front', 'rear', 'top', 'foot'],
      values: {
        gears: { type: 'ratio', list: true },
        first: { term: { max: 'gears' } },
        cable: { type: 'measured', unit: 'mm', name: 'length of the cable' },
        drum: { type: 'designation', unit: 'mm' },
        plug: { type: 'code' },
        weight: { type: 'measured', unit: 'kg' },
      },
    },
  ],
  parts: [
    ...CART.parts,
    {
      id: 'winch-2',
      name: { en: 'hand winch', de: 'Handwinde' },
      roles: ['winch'],
      evidence: { basis: 'drawing', source: 'sheet 7' },
      interfaces: {
        front: {
          kind: 'cart-flange',
          side: 'spigot',
          pattern: { is: 'f1', evidence: measured },
          register: { is: '60.0 mm', tool: 'tape' },
          holes: ['10.0, 0.0 mm', '-10.0, 0.0 mm'],
          evidence: { basis: 'built', times: 3 },
          optional: true,
        },
        rear: {
          kind: 'cart-flange',
          side: 'spigot',
          pattern: 'f2',
          step: '2.0 mm',
          rise: '1.0 mm',
          alternatives: [{ register: '60.0 mm' }, { holes: ['1.0, 2.0 mm'] }],
        },
        top: { absent: true },
      },
      values: {
        gears: ['40/11', '3.2'],
        cable: { choose: ['600 mm', '1900 mm'] },
        drum: { choose: { of: ['80 mm', '100 mm'] } },
        plug: 'c-6',
      },
    },
  ],
};

const rig = rigOf({ documents: [FORMS] });

async function read(path: string) {
  return json(await rig.client.get(path).expect(200));
}

const DRAWN = { basis: 'drawing', by: null, on: null, source: 'sheet 7', times: null };
const BUILT = { ...DRAWN, basis: 'built', source: null, times: 3 };
const NONE = { items: [], points: [], tool: null, toolName: null };
const word = (text: string) => ({ text, low: null, high: null, unit: '' });
const exactly = (text: string, low: string, high = low, unit = 'mm') => ({ text, low, high, unit });

describe('a part whole', () => {
  test('has each of its values in its form, with what it rests on', async () => {
    const { values } = await read('/v1/parts/winch-2');
    expect(values).toEqual([
      {
        ...NONE,
        parameter: 'cable',
        name: 'length of the cable',
        form: 'range',
        value: exactly('600 mm to 1900 mm', '600', '1900'),
        evidence: DRAWN,
      },
      {
        ...NONE,
        parameter: 'drum',
        name: 'drum',
        form: 'set',
        value: word('80 mm or 100 mm'),
        items: [exactly('80 mm', '80'), exactly('100 mm', '100')],
        evidence: DRAWN,
      },
      {
        ...NONE,
        parameter: 'gears',
        name: 'gears',
        form: 'list',
        value: word('40/11, 3.2'),
        items: [exactly('40/11', '40/11', '40/11', ''), exactly('3.2', '3.15', '3.25', '')],
        evidence: DRAWN,
      },
      {
        ...NONE,
        parameter: 'plug',
        name: 'plug',
        form: 'code',
        value: word('c-6'),
        evidence: DRAWN,
      },
    ]);
  });

  test('has its faces; evidence of another basis takes nothing from around it', async () => {
    const { interfaces } = await read('/v1/parts/winch-2');
    const [front, rear, top, ...others] = interfaces as Record<string, unknown>[];
    expect(others).toEqual([]);
    expect(front).toEqual({
      interface: 'front',
      kind: 'cart-flange',
      kindName: 'cart flange',
      side: 'spigot',
      optional: true,
      absent: false,
      alternatives: [
        {
          parameters: [
            {
              ...NONE,
              parameter: 'holes',
              name: 'holes',
              form: 'points',
              value: word('10.0, 0.0 mm; -10.0, 0.0 mm'),
              points: [
                { text: '10.0, 0.0 mm', x: point('9.95', '10.05'), y: point('-0.05', '0.05') },
                { text: '-10.0, 0.0 mm', x: point('-10.05', '-9.95'), y: point('-0.05', '0.05') },
              ],
              evidence: BUILT,
            },
            {
              ...NONE,
              parameter: 'pattern',
              name: 'pattern',
              form: 'code',
              value: word('f1'),
              evidence: { ...measured, source: null, times: null },
            },
            {
              ...NONE,
              parameter: 'register',
              name: 'register',
              form: 'number',
              value: exactly('60.0 mm', '59', '61'),
              tool: 'tape',
              toolName: 'steel tape',
              evidence: BUILT,
            },
          ],
          notRecorded: ['depth'],
        },
      ],
      evidence: BUILT,
    });
    expect(rear).toMatchObject({
      alternatives: [{ notRecorded: [] }, { notRecorded: ['register'] }],
      evidence: DRAWN,
    });
    expect(top).toEqual({
      interface: 'top',
      kind: null,
      kindName: null,
      side: null,
      optional: false,
      absent: true,
      alternatives: [],
      evidence: DRAWN,
    });
  });

  const point = (low: string, high: string) => ({
    text: expect.any(String),
    low,
    high,
    unit: 'mm',
  });

  test('says what is not recorded of it, and which cautions go with it', async () => {
    const { notRecorded, evidence, cautions, name, lang } = await read('/v1/parts/winch-2?lang=de');
    expect([name, lang]).toEqual(['Handwinde', 'de']);
    expect(notRecorded).toEqual({ interfaces: ['foot'], values: ['weight'] });
    expect(evidence).toEqual(DRAWN);
    expect(cautions).toMatchObject([
      { group: 'general', show: 'always', text: expect.stringMatching(/[äöüß]/) },
      { group: 'driveline', show: 'always' },
    ]);
  });

  test('begins as it stands in the list', async () => {
    const { items } = await read('/v1/parts?text=winch-2');
    const whole = await read('/v1/parts/winch-2');
    const [entry] = items as object[];
    expect(whole).toMatchObject(entry ?? {});
  });

  test('is an answer to caches, since the program reads its values', async () => {
    const pinned = await rig.client.get('/v1/parts/winch-2?edition=1');
    expect(pinned.headers['cache-control']).toBe('public, max-age=86400');
    const list = await rig.client.get('/v1/parts?edition=1');
    expect(list.headers['cache-control']).toBe('public, max-age=31536000, immutable');
  });
});

test('nothing of an offer is in a part: no price, no supplier, no stock', async () => {
  const offer = { id: 'o-1', for: 'winch-2', price: '77.70', supplier: 'Fennuld', sku: 'F-9' };
  const { client } = rigOf({ documents: [{ ...FORMS, offers: [offer] }] });
  const { text } = await client.get('/v1/parts/winch-2').expect(200);
  expect(text).not.toMatch(/77\.7|Fennuld|F-9|price|stock/);
});
