/**
 * What lines of a kit and keys of routes change on a vehicle.
 */

import { describe, expect, test } from 'vitest';
import { Faults } from '../../src/usecases/faults.js';
import { changeOfKey, changeOfLines, type LineInput } from '../../src/usecases/kit-change.js';
import { routeOfKey } from '../../src/usecases/route-key.js';

const NOTHING: LineInput = {
  action: 'open',
  position: null,
  mating: null,
  hand: null,
  part: null,
  work: null,
};

function keyOf(value: unknown): string {
  return `k1.${Buffer.from(JSON.stringify(value)).toString('base64url')}`;
}

describe('lines', () => {
  test('put in what is added, with the works on it, and take out what nothing replaces', () => {
    const { placed, adapters } = changeOfLines([
      { ...NOTHING, action: 'add', position: 'axle', part: 'axle-a' },
      { ...NOTHING, action: 'work', position: 'axle', part: 'axle-a', work: 'set-43-12' },
      { ...NOTHING, action: 'remove', position: 'axle', part: 'axle-b' },
      { ...NOTHING, action: 'remove', position: 'bracket', part: 'bracket-a' },
      { ...NOTHING, action: 'lot', part: null },
      { ...NOTHING, action: 'extra', part: 'oil' },
      { ...NOTHING, position: 'shaft' },
    ]);
    expect(placed).toEqual([
      { at: 'lines.3', position: 'bracket', hand: null, part: null },
      { at: 'lines.0', position: 'axle', hand: null, part: 'axle-a+set-43-12' },
    ]);
    expect(adapters).toEqual({});
  });

  test('tell left from right', () => {
    const { placed } = changeOfLines([
      { ...NOTHING, action: 'add', position: 'shaft', hand: 'left', part: 'shaft-l' },
      { ...NOTHING, action: 'remove', position: 'shaft', hand: 'left', part: 'old-l' },
      { ...NOTHING, action: 'remove', position: 'shaft', hand: 'right', part: 'old-r' },
    ]);
    expect(placed.map(({ hand, part }) => [hand, part])).toEqual([
      ['right', null],
      ['left', 'shaft-l'],
    ]);
  });

  test('put adapters in a row, and take them out', () => {
    const { adapters } = changeOfLines([
      { ...NOTHING, action: 'adapter', mating: 'a-b', part: 'one' },
      { ...NOTHING, action: 'adapter', mating: 'a-b', part: 'two' },
      { ...NOTHING, action: 'remove', mating: 'c-d', part: 'three' },
    ]);
    expect(adapters).toEqual({ 'a-b': ['one', 'two'], 'c-d': [] });
  });
});

describe('keys', () => {
  const route = {
    question: { vehicle: 'cart-1' },
    changes: [
      ['shaft', 'left', 'shaft-l'],
      ['bracket', null, null],
    ],
    adapters: [['a-b', 'one']],
  };

  test('say what is changed', () => {
    const faults = new Faults();
    expect(changeOfKey(keyOf(route), 'cart-1', 'routes.0', faults)).toEqual({
      placed: [
        { at: 'routes.0', position: 'shaft', hand: 'left', part: 'shaft-l' },
        { at: 'routes.0', position: 'bracket', hand: null, part: null },
      ],
      adapters: { 'a-b': ['one'] },
    });
    expect(faults.found).toEqual([]);
  });

  test('are of one vehicle', () => {
    const faults = new Faults();
    expect(changeOfKey(keyOf(route), 'cart-2', 'routes.0', faults)).toBeNull();
    expect(faults.found).toEqual([
      { at: 'routes.0', code: 'route-of-another-vehicle', data: { vehicle: 'cart-1' } },
    ]);
  });

  test.each([
    ['of another beginning', 'k2.e30'],
    ['of other letters', 'k1.e3!'],
    ['of half a byte', 'k1.e'],
    ['of no text', `k1.${Buffer.from([0xff, 0xfe]).toString('base64url')}`],
    ['of no JSON', `k1.${Buffer.from('{').toString('base64url')}`],
    ['of no question', keyOf({ changes: [], adapters: [] })],
    ['of no vehicle', keyOf({ ...route, question: {} })],
    ['of no changes', keyOf({ ...route, changes: null })],
    ['of a change of two', keyOf({ ...route, changes: [['a', null]] })],
    ['of a third hand', keyOf({ ...route, changes: [['a', 'middle', 'b']] })],
    ['of adapters without a mating', keyOf({ ...route, adapters: [[]] })],
    ['that is too long', `k1.${'a'.repeat(2000)}`],
  ])('are none where they are %s', (_, key) => {
    expect(routeOfKey(key)).toBeNull();
  });
});
