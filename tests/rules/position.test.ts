/**
 * Places of several roles, places that one part fills together, and left and right ones.
 */

import { describe, expect, it } from 'vitest';
import { flange, optional, type Sketch, world } from './sketch.js';
import { fitOf, found, judged, stateOf } from './world.js';

describe('a place may take several roles', () => {
  const cars = world({
    roles: {
      clutch: { torque: 'rating' },
      converter: { torque: 'rating', lockup: 'code' },
      engine: { lockup: 'code' },
    },
    places: ['engine', 'coupling: clutch, converter'],
    matings: ['engine.rear = coupling.front'],
    checks: [
      { id: 'load', 'at-least': ['coupling.torque', '300 N.m'] },
      {
        id: 'lockup',
        equal: ['coupling.lockup', 'engine.lockup'],
        when: { 'one-of': ['coupling.role', ['converter']] },
      },
    ],
    parts: {
      'engine-a': { rear: flange('A'), lockup: 'l-1' },
      'clutch-a': { front: flange('A'), torque: '320 N.m' },
      'clutch-b': { front: flange('A'), torque: '200 N.m' },
      'converter-a': { front: flange('A'), torque: '400 N.m', lockup: 'l-1' },
      'converter-b': { front: flange('A'), torque: '400 N.m', lockup: 'l-2' },
      'pump-a': { front: flange('A') },
    },
    cars: { car: { engine: 'engine-a', coupling: 'clutch-a' } },
  });

  it('either stands there, and a check reads the value that both have', () => {
    expect(stateOf(judged(cars, { put: { coupling: 'converter-a' } }), 'load')).toBe(
      'holds clears',
    );
    expect(stateOf(judged(cars, { put: { coupling: 'clutch-b' } }), 'load')).toBe(
      'fails too-small',
    );
  });

  it('a check may ask which of them it is', () => {
    expect(stateOf(judged(cars, { put: { coupling: 'clutch-b' } }), 'lockup')).toBe('not judged');
    expect(stateOf(judged(cars, { put: { coupling: 'converter-b' } }), 'lockup')).toBe(
      'fails not-equal',
    );
    expect(judged(cars, { put: { coupling: 'converter-a' } }).outcome).toBe('holds');
  });

  it('where nobody recorded which, such a check is open', () => {
    expect(stateOf(judged(cars, { put: { coupling: '?' } }), 'lockup')).toMatch(/^open /);
  });

  it('a part of none of its roles does not belong there', () => {
    const one = judged(cars, { put: { coupling: 'pump-a' } });
    expect(stateOf(one, 'coupling')).toBe('fails wrong-role');
    expect(one.outcome).toBe('fails');
  });
});

describe('a part may span places', () => {
  const plan: Sketch = {
    roles: { box: { length: 'length' }, transfer: { length: 'length' } },
    places: ['box', 'transfer', 'prop'],
    matings: ['box.rear = transfer.front', 'transfer.rear = prop.front'],
    checks: [
      { id: 'span', 'at-most': [{ sum: ['box.length', 'transfer.length'] }, '900 mm'] },
      {
        id: 'own',
        within: ['box.length', 'transfer.length'],
        tolerance: '0 mm',
        severity: 'caution',
      },
    ],
    parts: {
      'box-a': { rear: flange('A'), length: '500 mm' },
      'box-b': { rear: flange('B'), length: '500 mm' },
      'transfer-a': { front: flange('A'), rear: flange('P'), length: '300 mm' },
      'unit-a': {
        roles: ['box', 'transfer'],
        spans: ['box', 'transfer'],
        rear: flange('P'),
        length: '400 ±1 mm',
      },
      'unit-q': {
        roles: ['box', 'transfer'],
        spans: ['box', 'transfer'],
        rear: flange('Q'),
        length: '400 ±1 mm',
      },
      'prop-a': { front: flange('P') },
    },
    cars: {
      car: { box: 'box-a', transfer: 'transfer-a', prop: 'prop-a' },
      joined: { box: 'unit-a', transfer: 'unit-a', prop: 'prop-a' },
    },
  };
  const cars = world(plan);
  const both = (part: string) => ({ box: part, transfer: part });

  it('it meets nothing between them, and meets the rest with its faces', () => {
    const one = judged(cars, { put: both('unit-a') });
    expect(stateOf(one, 'box-transfer')).toBe('not judged');
    expect(stateOf(one, 'transfer-prop')).toBe('holds meets');
    expect(stateOf(judged(cars, { put: both('unit-q') }), 'transfer-prop')).toBe('fails not-equal');
  });

  it('its length is one unknown wherever it is named', () => {
    expect(stateOf(judged(cars, { put: both('unit-a') }), 'own')).toBe('holds clears');
  });

  it('it needs all of them: another part in one of them is in its way', () => {
    const one = judged(cars, { put: { box: 'unit-a' } });
    expect(stateOf(one, 'box')).toBe('fails span-occupied');
  });

  it('a layout that lacks one of them has no place for it', () => {
    const short = world({
      ...plan,
      places: ['box', 'prop'],
      matings: ['box.rear = prop.front'],
      checks: [],
      cars: { car: { box: 'box-a', prop: 'prop-a' } },
    });
    expect(stateOf(judged(short, { put: { box: 'unit-a' } }), 'box')).toBe(
      'fails no-place-to-span',
    );
  });

  it('asked for, it is put in all of them', () => {
    const answer = fitOf(cars, 'unit-a');
    expect(answer).toMatchObject({ verdict: 'fits', at: ['box'] });
    expect(answer.positions).toHaveLength(1);
    expect(fitOf(cars, 'unit-q')).toMatchObject({ alone: 'fails', verdict: null });
  });

  it('fitted, it is one piece; a part for one of its places leaves the other empty', () => {
    expect(judged(cars, { on: 'joined' }).outcome).toBe('holds');
    const answer = fitOf(cars, 'box-a', { on: 'joined' });
    expect(answer.alone).toBe('fails');
    const places = answer.positions[0]?.places.map(({ code, positions }) => [code, ...positions]);
    expect(places).toEqual([['needed-place-empty', 'transfer']]);
    const mended = fitOf(cars, 'box-a', { on: 'joined', with: { transfer: 'transfer-a' } });
    expect(mended).toMatchObject({ alone: 'holds', verdict: 'fits' });
  });

  it('a vehicle names it at all of its places', () => {
    const fault = () => world({ ...plan, cars: { car: { box: 'unit-a', prop: 'prop-a' } } });
    expect(fault).toThrow(/span-not-filled/);
  });
});

describe('a left and a right place', () => {
  const cars = world({
    roles: { shaft: { length: 'length' }, hub: { reach: 'length' } },
    places: ['axle', 'shaft<>', 'hub<>'],
    matings: ['axle.out = shaft.in', 'shaft.out = hub.in'],
    checks: [{ id: 'reach', 'at-most': ['shaft.length', 'hub.reach'] }],
    parts: {
      'axle-a': { out: flange('A') },
      'shaft-l': { hand: 'left', in: flange('A'), out: flange('H'), length: '500 mm' },
      'shaft-r': { hand: 'right', in: flange('A'), out: flange('H'), length: '600 mm' },
      'shaft-any': { in: flange('A'), out: flange('H'), length: '550 mm' },
      'hub-a': { in: flange('H'), reach: '700 mm' },
      'hub-near': { in: flange('H'), reach: '520 mm' },
      'plug-a': { in: optional(flange('A')) },
    },
    cars: {
      car: { axle: 'axle-a', shaft: { left: 'shaft-l', right: 'shaft-r' }, hub: 'hub-a' },
      near: {
        axle: 'axle-a',
        shaft: { left: 'shaft-l', right: 'shaft-r' },
        hub: { left: 'hub-near', right: 'hub-a' },
      },
    },
  });

  it('a check runs for each hand, and the worse one counts', () => {
    const one = judged(cars, { on: 'near', put: { shaft: 'shaft-any' } });
    expect(found(one, 'reach', 'left')?.state).toBe('fails');
    expect(found(one, 'reach', 'right')?.state).toBe('holds');
    expect(one.outcome).toBe('fails');
  });

  it('a part of the other hand does not go there', () => {
    const one = judged(cars, { put: { shaft: { left: 'shaft-r', right: 'shaft-r' } } });
    expect(stateOf(one, 'shaft:left')).toBe('fails wrong-hand');
    expect(one.outcome).toBe('fails');
  });

  it('a part of one hand is asked for on that hand alone', () => {
    const answer = fitOf(cars, 'shaft-any', {
      fitted: { shaft: { left: 'shaft-l', right: 'shaft-any' } },
    });
    expect(answer.positions[0]?.replaces).toEqual(['shaft-l']);
    const left = fitOf(cars, 'shaft-l', { fitted: { shaft: 'shaft-any' } });
    expect(left).toMatchObject({ verdict: 'fits', present: false });
    expect(left.positions[0]?.matings.map(({ hand, state }) => [hand, state])).toContainEqual([
      'left',
      'holds',
    ]);
  });
});
