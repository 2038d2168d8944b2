/**
 * What the judge makes of what a document can say beyond parts and faces: works options whose
 * fact is not known, vehicles that are like another, and rules that demand nothing.
 */

import { describe, expect, test } from 'vitest';
import { checkFit } from '../../src/usecases/check-fit.js';
import { inspectVehicle } from '../../src/usecases/inspect-vehicle.js';
import { CART } from '../cli/catalogue.js';
import { libraryOf } from '../memory-store.js';

const gate = (id: string) => ({ id, name: id });

const library = libraryOf({
  ...CART,
  facts: [{ id: 'gate', name: 'Gate', values: [gate('wide'), gate('narrow')] }],
  vehicles: [
    ...CART.vehicles,
    {
      id: 'cart-2',
      make: 'Wainer',
      model: 'Cart with a gate',
      like: 'cart-1',
      fitted: { gearbox: { by: 'gate', wide: 'box-b', narrow: 'box-a' } },
    },
    {
      id: 'cart-3',
      make: 'Wainer',
      model: 'Cart with a narrow gate',
      like: 'cart-2',
      facts: { gate: 'narrow' },
    },
  ],
  rules: [
    {
      id: 'bolts',
      when: { opened: 'gearbox' },
      recommends: { part: 'plate-ab', quantity: '2' },
      consumes: { part: 'plate-ab', quantity: '1' },
      because: 'The bolts stretch.',
    },
    {
      id: 'bolts-said',
      when: { opened: 'gearbox' },
      consumes: { part: 'plate-ab', quantity: '1' },
      note: 'Take new bolts.',
      because: 'The bolts stretch.',
    },
  ],
});

const COMMON = { edition: null, lang: 'en', torque: null, use: null, ignorePresent: false };

const inspect = (vehicle: string) =>
  inspectVehicle(library, { ...COMMON, vehicle, fitted: {}, adapters: {} });

function put(vehicle: string, part: string) {
  const question = { ...COMMON, vehicle, part, fitted: {}, adapters: {}, with: {} };
  return checkFit(library, { ...question, position: null, changes: null });
}

describe('a works option', () => {
  test('is as found as long as its fact is not known: never taken for either', () => {
    const unknown = inspect('cart-2').notChecked.map(({ data }) => data.part?.position);
    expect(unknown).toEqual(['gearbox']);
    expect(put('cart-2', 'box-d').positions[0]).toMatchObject({ replaces: [], present: false });
  });

  test('is the part that the fact tells, where it is known', () => {
    expect(inspect('cart-3').notChecked.map(({ data }) => data.part?.position)).toEqual([]);
    expect(put('cart-3', 'box-a')).toMatchObject({ present: true, alone: 'holds' });
    expect(put('cart-3', 'box-d').positions[0]).toMatchObject({ replaces: ['box-a'] });
    expect(put('cart-2', 'box-a')).toMatchObject({ present: false });
  });
});

describe('a rule that only recommends something or uses something up', () => {
  test('is no constraint; one that says something as well is', () => {
    const rules = put('cart-1', 'box-d').positions[0]?.rules.map(({ id }) => id);
    expect(rules).toEqual(['bolts-said']);
  });
});
