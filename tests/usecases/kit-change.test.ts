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
  source: null,
};

/** What lines change that have no fault. */
function linesChange(lines: readonly LineInput[], fitted = {}) {
  const faults = new Faults();
  const change = changeOfLines(lines, fitted, faults);
  expect(faults.found).toEqual([]);
  return change;
}

function faultsOf(lines: readonly LineInput[]) {
  const faults = new Faults();
  changeOfLines(lines, {}, faults);
  return faults.found;
}

const add: LineInput = { ...NOTHING, action: 'add', position: 'shaft', part: 'a' };
const work: LineInput = { ...NOTHING, action: 'work', position: 'shaft', part: 'a', work: 'w' };

function keyOf(value: unknown): string {
  return `k1.${Buffer.from(JSON.stringify(value)).toString('base64url')}`;
}

describe('lines', () => {
  test('put in what is added, with the works on it, and take out what nothing replaces', () => {
    const { placed, adapters } = linesChange([
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
    const { placed } = linesChange([
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
    const { adapters } = linesChange([
      { ...NOTHING, action: 'adapter', mating: 'a-b', part: 'one' },
      { ...NOTHING, action: 'adapter', mating: 'a-b', part: 'two' },
      { ...NOTHING, action: 'remove', mating: 'c-d', part: 'three' },
    ]);
    expect(adapters).toEqual({ 'a-b': ['one', 'two'], 'c-d': [] });
  });

  test.each<[string, LineInput[], unknown]>([
    ['both hands', [add, work], [[null, 'a+w']]],
    [
      'one hand of both',
      [add, { ...work, hand: 'left' }],
      [
        ['left', 'a+w'],
        ['right', 'a'],
      ],
    ],
    [
      'both hands, which are told apart',
      [{ ...add, hand: 'left' }, { ...add, hand: 'right' }, work],
      [
        ['left', 'a+w'],
        ['right', 'a+w'],
      ],
    ],
    [
      'the part of one hand',
      [{ ...add, hand: 'left' }, { ...add, hand: 'right', part: 'b' }, work],
      [
        ['left', 'a+w'],
        ['right', 'b'],
      ],
    ],
    [
      'a part without its name',
      [add, { ...work, part: null }, { ...work, work: 'v' }],
      [[null, 'a+w+v']],
    ],
  ])('do a work on %s', (_, lines, placed) => {
    expect(linesChange(lines).placed.map(({ hand, part }) => [hand, part])).toEqual(placed);
  });

  test.each([
    ['a+v', 'present', 'a+v+w'],
    ['a+v', 'offer', 'a+w'],
    ['b+v', 'present', 'a+w'],
    [{ left: 'a+u', right: 'a+u' }, 'present', 'a+u+w'],
  ])('of %j with the source %s make %s', (shaft, source, part) => {
    const { placed } = linesChange([{ ...add, source }, work], { shaft });
    expect(placed.map((one) => one.part)).toEqual([part]);
  });

  test.each<[Partial<LineInput>, string]>([
    [{ action: 'add', part: 'a' }, 'position'],
    [{ action: 'add', position: 'shaft' }, 'part'],
    [{ action: 'adapter', part: 'a' }, 'mating'],
    [{ action: 'adapter', mating: 'a-b' }, 'part'],
    [{ action: 'work', work: 'w' }, 'position'],
    [{ action: 'work', position: 'shaft' }, 'work'],
    [{ action: 'remove' }, 'position'],
  ])('say all of it: %j', (line, needs) => {
    expect(faultsOf([{ ...NOTHING, ...line }])).toEqual([
      { at: 'lines.0', code: 'incomplete-line', data: { action: line.action, needs } },
    ]);
  });

  test.each<[string, LineInput[]]>([
    ['alone', [work]],
    ['on another part', [add, { ...work, part: 'b' }]],
    ['at another place', [add, { ...work, position: 'axle' }]],
    [
      'of the other hand',
      [
        { ...add, hand: 'left' },
        { ...work, hand: 'right' },
      ],
    ],
  ])('have the part that a work is done on: %s', (_, lines) => {
    expect(faultsOf(lines)).toEqual([
      { at: `lines.${lines.length - 1}`, code: 'work-of-no-line', data: { work: 'w' } },
    ]);
  });

  test.each<[boolean, LineInput, LineInput]>([
    [true, add, { ...add, part: 'b' }],
    [true, add, { ...add, hand: 'left', part: 'b' }],
    [false, { ...add, hand: 'right' }, { ...add, hand: 'left', part: 'b' }],
    [false, add, { ...add, position: 'axle', part: 'b' }],
    [false, add, add],
  ])('fill a place twice: %s', (isTwice, one, other) => {
    const fault = { at: 'lines.1', code: 'filled-twice', data: { position: 'shaft' } };
    expect(faultsOf([one, other])).toEqual(isTwice ? [fault] : []);
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
