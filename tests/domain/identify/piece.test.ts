/**
 * Which parts a piece can be: what leaves one out, what does not, and in which order they stand.
 */

import { describe, expect, test } from 'vitest';
import { asked, leftBy, read, saidOf } from './bench.js';

const BOXES = ['box-a', 'box-b', 'box-c'];

const inputTeeth = read({ interface: 'input', parameter: 'teeth' }, '24');

describe('nothing that is not recorded leaves a part out', () => {
  test('no question leaves all of them, in the order of their ids', () => {
    const { items, counts, excluded } = asked({});
    const ids = items.map(({ id }) => id);
    expect(ids).toEqual(ids.toSorted());
    expect(counts.total).toBe(9);
    expect(excluded).toEqual([]);
  });

  test('a face without the parameter, a role without the value, a role without faces', () => {
    expect(leftBy({ role: 'box', measured: [inputTeeth] })).toEqual(['box-a', 'box-c']);
    const length = read({ parameter: 'length' }, '600 mm');
    expect(saidOf('shaft-a', { measured: [length] })).toEqual(['value-not-recorded']);
    expect(saidOf('odd-a', { measured: [inputTeeth] })).toEqual(['told-face-not-recorded']);
  });

  test('a side that is not recorded, and what is only reported', () => {
    expect(leftBy({ role: 'box', hand: 'right' })).toEqual(['box-b', 'box-c']);
    const length = [read({ parameter: 'length' }, '100 mm')];
    expect(saidOf('box-c', { measured: length })).toEqual(['value-only-reported']);
    expect(saidOf('box-a', { measured: length })).toEqual(['value-differs']);
  });

  test('what the works fitted puts a part first, and no more', () => {
    const { items } = asked({ role: 'box', vehicle: 'car' });
    expect(items.map(({ id, agreeing }) => [id, agreeing])).toEqual([
      ['box-a', 2],
      ['box-b', 1],
      ['box-c', 1],
    ]);
  });
});

describe('a reading', () => {
  test.each([
    ['99.6 mm', 'caliper', []],
    ['99.96 mm', 'caliper', ['box-a', 'box-b']],
    ['99.96 mm', 'tape', ['box-a', 'box-b']],
    ['99.96 mm', null, []],
    ['109.99 mm', 'caliper', ['box-b']],
    ['100 ±20 mm', null, BOXES],
  ])('of a name of a size, %s with %s, leaves %j', (value, tool, left) => {
    const pcd = read({ interface: 'rear', parameter: 'pcd' }, value, tool);
    expect(leftBy({ role: 'box', measured: [pcd] }).toSorted()).toEqual(left);
  });

  test('of what is inferred can leave out, and never agrees', () => {
    const pcd = (value: string) => [read({ interface: 'rear', parameter: 'pcd' }, value)];
    expect(saidOf('box-c', { measured: pcd('120 mm') })).toEqual(['value-only-inferred']);
    expect(saidOf('box-c', { measured: pcd('100 mm') })).toEqual(['value-differs']);
  });

  test('of what follows from recorded values', () => {
    const count = [read({ parameter: 'gear-count' }, '4', 'count')];
    expect(leftBy({ role: 'box', measured: count })).toEqual(['box-b', 'box-c']);
    expect(saidOf('box-c', { measured: count })).toEqual(['value-not-recorded']);
    const gears = [read({ parameter: 'gears' }, ['3', '2', '1'])];
    expect(leftBy({ role: 'box', measured: gears })).toEqual(['box-a', 'box-c']);
  });

  test('of another side or kind than is recorded', () => {
    const on = { interface: 'input', parameter: 'teeth' };
    expect(saidOf('box-a', { measured: [read({ ...on, side: 'hub' }, '24')] })).toEqual([
      'other-side',
    ]);
    const ring = read({ interface: 'input', kind: 'ring', parameter: 'pcd' }, '24 mm');
    expect(saidOf('box-a', { measured: [ring] })).toEqual(['other-kind']);
  });
});

describe('a face', () => {
  test('that there is not', () => {
    const none = [read({ interface: 'plug' }, 'none')];
    expect(leftBy({ role: 'box', measured: none })).toEqual(['box-a']);
    expect(saidOf('odd-a', { measured: none })).toEqual(['told-face-not-recorded']);
    expect(saidOf('shaft-a', { measured: none })).toEqual(['face-absent']);
    const teeth = [read({ interface: 'plug', parameter: 'teeth' }, '9')];
    expect(leftBy({ role: 'box', measured: teeth })).toEqual(['box-b', 'box-c']);
  });

  const teeth = (value: string, which: number | null = null) =>
    read({ kind: 'spline', parameter: 'teeth', which }, value);

  test('by its kind is any of that kind', () => {
    expect(leftBy({ role: 'shaft', measured: [teeth('30')] })).toHaveLength(3);
    expect(leftBy({ role: 'shaft', measured: [teeth('25')] })).toEqual([]);
    expect(saidOf('odd-a', { measured: [teeth('25')] })).toEqual(['told-face-not-recorded']);
  });

  test('and several of a kind are as many faces', () => {
    expect(leftBy({ role: 'shaft', measured: [teeth('30', 1), teeth('24', 2)] })).toHaveLength(3);
    expect(leftBy({ role: 'shaft', measured: [teeth('24', 1), teeth('24', 2)] })).toEqual([]);
    const three = [teeth('24', 1), teeth('30', 2), teeth('24', 3)];
    expect(leftBy({ role: 'shaft', measured: three })).toEqual([]);
  });

  test('by its kind may be one that was told by its name', () => {
    const near = read({ interface: 'near', parameter: 'teeth' }, '24');
    expect(leftBy({ role: 'shaft', measured: [near, teeth('24')] })).toHaveLength(3);
  });
});

describe('what is left out', () => {
  test('counts once, where it is first left out, and is named where that is asked', () => {
    const told = { role: 'box', hand: 'left' as const, measured: [inputTeeth] };
    const { excluded, counts } = asked(told);
    expect(excluded.map(({ field, count, parts }) => [field, count, parts])).toEqual([
      ['role', 6, []],
      ['hand', 1, []],
    ]);
    expect(counts.total).toBe(2);
    const [, hand] = asked({ ...told, nameExcluded: true }).excluded;
    expect(hand?.parts).toMatchObject([{ id: 'box-b', code: 'other-hand' }]);
  });

  test('where none is left, the nearest are told with all that is said of them', () => {
    const { items, nearest, summary } = asked({
      role: 'box',
      measured: [inputTeeth, read({ interface: 'plug', parameter: 'teeth' }, '10')],
    });
    expect([items, summary.code]).toEqual([[], 'no-part-left']);
    const [first] = nearest;
    expect([first?.id, first?.agreeing, first?.failing]).toEqual(['box-a', 2, 1]);
    expect(first?.why.map(({ state }) => state)).toEqual(['holds', 'holds', 'fails']);
  });
});

test('pages go on where they ended', () => {
  const told = { role: 'box', vehicle: 'car', limit: 2 };
  const first = asked(told);
  expect(first.items.map(({ id }) => id)).toEqual(['box-a', 'box-b']);
  const second = asked({ ...told, after: first.next });
  expect(second.items.map(({ id }) => id)).toEqual(['box-c']);
  expect([first.counts.total, second.counts.total, second.next]).toEqual([3, 3, null]);
});
