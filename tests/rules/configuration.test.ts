/**
 * What a configuration is, what in it is changed, and what its constraints come to together.
 */

import { describe, expect, it } from 'vitest';
import { flange, optional, world } from './sketch.js';
import { judged, stateOf } from './world.js';

describe('R1 each place holds a part, nothing, or what nobody recorded', () => {
  const cars = world({
    places: ['box', 'prop?'],
    matings: ['box.rear = prop.front'],
    parts: {
      'box-a': { rear: flange('A') },
      'box-b': { rear: flange('B') },
      'prop-a': { front: flange('A') },
      'stub-ab': { near: flange('A'), far: flange('B') },
    },
    cars: {
      full: { box: 'box-a', prop: 'prop-a' },
      bare: { box: 'box-a', prop: null },
      silent: { box: 'box-a' },
    },
  });

  it.each([
    ['full', 'fails not-equal'],
    ['bare', 'fails needed-empty'],
    ['silent', 'open face-not-recorded'],
  ])('%s: the new box meets what is there: %s', (on, state) => {
    expect(stateOf(judged(cars, { on, put: { box: 'box-b' } }), 'box-prop')).toBe(state);
  });

  it('and each mating is direct or through an adapter', () => {
    const scene = { on: 'full', put: { box: 'box-b' } };
    expect(judged(cars, scene).outcome).toBe('fails');
    const through = judged(cars, { ...scene, between: { 'box-prop': ['stub-ab'] } });
    expect(stateOf(through, 'box-prop')).toBe('holds meets');
    expect(through.outcome).toBe('holds');
  });

  it('and pieces that are all alike are one decision, judged once', () => {
    const wheels = world({
      places: ['hub*2', 'wheel*4'],
      matings: ['hub.face = wheel.face'],
      parts: {
        'hub-a': { face: flange('A') },
        'wheel-a': { face: flange('A') },
        'wheel-b': { face: flange('B') },
      },
      cars: { car: { hub: 'hub-a', wheel: 'wheel-a' } },
    });
    const { constraints } = judged(wheels, { put: { wheel: 'wheel-b' } });
    expect(constraints.map(({ id, hand, state }) => [id, hand, state])).toEqual([
      ['hub-wheel', null, 'fails'],
    ]);
  });

  it('and a left and a right piece are two', () => {
    const shafts = world({
      places: ['axle', 'shaft<>'],
      matings: ['axle.out = shaft.in'],
      parts: {
        'axle-a': { out: flange('A') },
        'shaft-a': { in: flange('A') },
        'shaft-b': { in: flange('B') },
      },
      cars: { car: { axle: 'axle-a', shaft: 'shaft-a' } },
    });
    const one = judged(shafts, { put: { shaft: { left: 'shaft-a', right: 'shaft-b' } } });
    expect(stateOf(one, 'axle-shaft', 'left')).toBe('given meets');
    expect(stateOf(one, 'axle-shaft', 'right')).toBe('fails not-equal');
  });
});

describe('R2 changed is what holds another article than it does now', () => {
  const cars = world({
    places: ['box?', 'prop'],
    matings: ['box.rear = prop.front'],
    parts: {
      'box-a': { rear: optional(flange('A')) },
      'box-b': { rear: optional(flange('A')) },
      'box-c': { rear: optional(flange('A')) },
      'prop-a': { front: optional(flange('A')) },
      'stub-aa': { near: flange('A'), far: flange('A') },
    },
    cars: {
      car: { box: 'box-a', prop: 'prop-a' },
      bare: { box: null, prop: 'prop-a' },
      silent: { prop: 'prop-a' },
    },
    rules: [
      { id: 'seen', when: { changed: 'box' }, note: 'The box is changed.', because: 'Seen.' },
      { id: 'prop-seen', when: { changed: 'prop' }, note: 'And the prop.', because: 'Seen.' },
    ],
  });

  const isSeen = (scene: Parameters<typeof judged>[1]) =>
    stateOf(judged(cars, scene), 'seen') !== 'not judged';

  it.each([
    ['replaced', { put: { box: 'box-b' } }, true],
    ['added', { on: 'bare', put: { box: 'box-b' } }, true],
    ['removed', { put: { box: null } }, true],
    [
      'put in the place of something that nobody recorded',
      { on: 'silent', put: { box: 'box-b' } },
      true,
    ],
    ['the same article bought anew', { put: { box: 'box-a' } }, false],
    ['left alone', {}, false],
    ['left empty', { on: 'bare', put: { box: null } }, false],
    ['what the question says is there', { said: { box: 'box-b' }, put: { box: 'box-b' } }, false],
    [
      'what the works fitted, where something else is said',
      { said: { box: 'box-b' }, put: { box: 'box-a' } },
      true,
    ],
    ['only said', { said: { box: 'box-b' } }, false],
  ] as const)('%s', (_, scene, isChange) => {
    expect(isSeen(scene)).toBe(isChange);
  });

  it('what the question says lies over the record, place by place', () => {
    const { present } = judged(cars, { said: { box: 'box-b' } }).configuration;
    expect([...present.seats].map(([id, seats]) => [id, !seats.hands && seats.seat])).toEqual([
      ['box', { occupant: { is: 'part', part: 'box-b' }, origin: 'said' }],
      ['prop', { occupant: { is: 'part', part: 'prop-a' }, origin: 'works' }],
    ]);
  });

  it('an adapter changes neither place, though its mating is judged anew', () => {
    const one = judged(cars, { between: { 'box-prop': ['stub-aa'] } });
    expect(stateOf(one, 'seen')).toBe('not judged');
    expect(stateOf(one, 'prop-seen')).toBe('not judged');
    expect(stateOf(one, 'box-prop')).toBe('holds meets');
  });
});

describe('R3 a configuration comes to what its constraints come to together', () => {
  const cars = world({
    roles: { box: { length: 'length', torque: 'rating' }, engine: { torque: 'engine' } },
    places: ['engine', 'box', 'prop'],
    matings: ['box.rear = prop.front'],
    checks: [
      { id: 'length', 'at-most': ['box.length', '600 mm'] },
      { id: 'wide-of-it', 'at-most': ['box.length', '500 mm'], severity: 'caution' },
      { id: 'load', carries: 'box.torque', demand: 'engine.torque' },
    ],
    parts: {
      'engine-a': { torque: '300 ±0 N.m' },
      'box-a': { rear: flange('A'), length: '400 mm', torque: '400 N.m' },
      'box-good': { rear: flange('A'), length: '590 mm', torque: '400 N.m' },
      'box-long': { rear: flange('A'), length: '700 mm', torque: '400 N.m' },
      'box-weak': { rear: flange('A'), length: '590 mm', torque: '200 N.m' },
      'box-silent': { rear: flange('A'), torque: '400 N.m' },
      'box-odd': { rear: flange('B'), length: '590 mm' },
      'prop-a': { front: flange('A') },
    },
    cars: { car: { engine: 'engine-a', box: 'box-a', prop: 'prop-a' } },
    rules: [
      {
        id: 'rule',
        when: { 'one-of': ['box.part', ['box-good']] },
        excludes: { changed: 'prop' },
        because: 'The two were never tried.',
      },
    ],
  });

  it('proven, where all hold or are given', () => {
    const one = judged(cars, { put: { box: 'box-good' } });
    const must = one.constraints.filter(({ severity }) => severity === 'must');
    expect(must.map(({ id, state }) => [id, state])).toEqual([
      ['box-prop', 'holds'],
      ['length', 'holds'],
      ['load', 'holds'],
      ['rule', 'holds'],
    ]);
    expect(one.outcome).toBe('holds');
    expect(judged(cars).constraints.every(({ state }) => state === 'given')).toBe(true);
    expect(judged(cars).outcome).toBe('holds');
  });

  it('a caution that does not hold spoils nothing', () => {
    expect(stateOf(judged(cars, { put: { box: 'box-good' } }), 'wide-of-it')).toBe(
      'fails too-large',
    );
  });

  it('open, where none fails and one is open', () => {
    const one = judged(cars, { put: { box: 'box-silent' } });
    expect(stateOf(one, 'length')).toBe('open not-recorded');
    expect(one.outcome).toBe('open');
  });

  it.each([
    ['a mating', 'box-odd', 'box-prop'],
    ['a limit', 'box-long', 'length'],
    ['a load', 'box-weak', 'load'],
  ])('invalid, where %s fails, whatever is open beside it', (_, box, id) => {
    const one = judged(cars, { put: { box } });
    expect(stateOf(one, id)).toMatch(/^fails /);
    expect(one.outcome).toBe('fails');
  });

  it('a rule counts as the rest does', () => {
    const one = judged(cars, { put: { box: 'box-good', prop: '?' } });
    expect(stateOf(one, 'rule')).toBe('fails rule-excludes');
    expect(one.outcome).toBe('fails');
  });
});
