/**
 * What the judge makes of what a document can say beyond parts and faces: works options whose
 * fact is not known, vehicles that are like another, and rules that demand nothing.
 */

import { describe, expect, test } from 'vitest';
import { sayFault } from '../../src/contract/problems/words.js';
import { checkFit } from '../../src/usecases/check-fit.js';
import { QuestionError } from '../../src/usecases/errors.js';
import { inspectVehicle } from '../../src/usecases/inspect-vehicle.js';
import { CART } from '../cli/catalogue.js';
import { libraryOf } from '../memory-store.js';

const gate = (id: string) => ({ id, name: id });

const library = libraryOf({
  ...CART,
  parts: [
    ...CART.parts,
    {
      id: 'shaft-b',
      name: 'long shaft b',
      roles: ['shaft'],
      interfaces: {
        front: { kind: 'cart-flange', side: 'recess', pattern: 'f1', register: '60.10 ±0.01 mm' },
      },
    },
  ],
  facts: [
    {
      id: 'gate',
      name: 'Gate',
      values: [gate('wide'), gate('narrow'), gate('round')],
      how: 'Look at the lever.',
    },
  ],
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

const COMMON = {
  edition: null,
  lang: 'en',
  units: 'recorded' as const,
  torque: null,
  use: null,
  ignorePresent: false,
  facts: {},
  measured: [],
};

const inspect = (vehicle: string) =>
  inspectVehicle(library, { ...COMMON, vehicle, fitted: {}, adapters: {} });

function put(vehicle: string, part: string) {
  const question = { ...COMMON, vehicle, part, fitted: {}, adapters: {}, with: {} };
  return checkFit(library, { ...question, position: null, changes: 'no' });
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

describe('a fact that the question tells', () => {
  const told = (part: string, facts: Readonly<Record<string, string>>) =>
    checkFit(library, {
      ...COMMON,
      vehicle: 'cart-2',
      part,
      fitted: {},
      adapters: {},
      measured: [],
      with: {},
      position: null,
      changes: 'no',
      facts,
    });

  test('settles a works option, and is asked for where it is not told', () => {
    expect(told('box-a', { gate: 'narrow' })).toMatchObject({ present: true, alone: 'holds' });
    expect(told('box-a', { gate: 'wide' })).toMatchObject({ present: false });
    expect(told('box-a', { gate: 'wide' }).positions[0]).toMatchObject({ replaces: ['box-b'] });
    const { measure, positions } = told('shaft-a', {});
    expect(positions[0]?.alone).toBe('holds');
    expect(measure).toEqual([]);
    const other = told('shaft-b', {});
    expect(other.measure.map(({ code, on, text }) => [code, on.fact, text])).toEqual([
      ['ask-fact', 'gate', 'Find out: Gate. Look at the lever.'],
    ]);
    expect(told('shaft-b', { gate: 'narrow' }).measure).toEqual([]);
  });

  test('wins over what is recorded, also of what the works fitted for it', () => {
    const told = (part: string, facts: Readonly<Record<string, string>>) => {
      const asked = {
        ...COMMON,
        vehicle: 'cart-3',
        part,
        fitted: {},
        adapters: {},
        measured: [],
        with: {},
      };
      return checkFit(library, { ...asked, position: null, changes: 'no', facts });
    };
    expect(told('box-a', {}).present).toBe(true);
    expect(told('box-a', { gate: 'narrow' }).present).toBe(true);
    expect(told('box-a', { gate: 'wide' }).present).toBe(false);
    expect(told('box-d', { gate: 'wide' }).positions[0]?.replaces).toEqual(['box-b']);
    expect(told('box-d', { gate: 'round' }).positions[0]?.replaces).toEqual([]);
    expect(told('box-a', {}).present).toBe(true);
  });

  test('with a value that the option does not list, what stands there is as found', () => {
    const { measure } = told('shaft-b', { gate: 'round' });
    expect(measure.map(({ code, on }) => [code, on.position])).toEqual([['identify', 'gearbox']]);
  });

  test('that there is not, or that cannot be so, is a fault of the question', () => {
    const faultsOf = (facts: Readonly<Record<string, string>>) => {
      try {
        told('box-a', facts);
      } catch (error) {
        if (error instanceof QuestionError) {
          return error.faults.map((fault) => [fault.at, sayFault(fault, 'en')]);
        }
        throw error;
      }
      return [];
    };
    expect(faultsOf({ gatt: 'wide', gate: 'wid' })).toEqual([
      ['facts.gatt', 'There is no fact "gatt". Did you mean \'gate\'?'],
      ['facts.gate', '"gate" cannot be "wid". Did you mean \'wide\'?'],
    ]);
  });
});

describe('a rule that only recommends something or uses something up', () => {
  test('is no constraint; one that says something as well is', () => {
    const rules = put('cart-1', 'box-d').positions[0]?.rules.map(({ id }) => id);
    expect(rules).toEqual(['bolts-said']);
  });
});
