/**
 * How far a constraint reaches: what it reads in conditions, in adapters and in what a change
 * opens is part of it, so that a change of any of it is judged and never taken as given.
 */

import { describe, expect, it } from 'vitest';
import { flange, type Sketch, world } from './sketch.js';
import { found, judged, stateOf } from './world.js';

const plan: Sketch = {
  roles: { box: { length: 'length' }, stub: { rating: 'rating' }, engine: { torque: 'engine' } },
  places: ['engine', 'box', 'prop'],
  matings: ['box.rear = prop.front'],
  parts: {
    'engine-a': { torque: '300 ±0 N.m' },
    'engine-b': { torque: '310 ±0 N.m' },
    'box-a': { rear: flange('A'), length: '500 ±0 mm' },
    'box-b': { length: '500 ±0 mm' },
    'prop-a': { front: flange('A') },
    'prop-b': { front: flange('A') },
    'stub-a': { near: flange('A'), far: flange('A') },
    'stub-b': { near: flange('A'), far: flange('A'), rating: '400 ±0 N.m' },
  },
  cars: { car: { engine: 'engine-a', box: 'box-a', prop: 'prop-a' } },
};

function room(when: unknown): Sketch {
  return { ...plan, checks: [{ id: 'room', 'at-most': ['box.length', '400 mm'], when }] };
}

describe('A2 given is only what the change does not reach, its conditions included', () => {
  it('a check that applies because another place is changed', () => {
    const cars = world(room({ changed: 'prop' }));
    expect(stateOf(judged(cars), 'room')).toBe('not judged');
    expect(stateOf(judged(cars, { put: { prop: 'prop-b' } }), 'room')).toBe('fails too-large');
    expect(stateOf(judged(cars, { put: { engine: 'engine-b' } }), 'room')).toBe('not judged');
  });

  it('a check that applies because an adapter is put in', () => {
    const cars = world(room({ mating: 'box-prop', adapter: 'stub-a' }));
    const between = { 'box-prop': ['stub-a'] };
    expect(stateOf(judged(cars, { between }), 'room')).toBe('fails too-large');
  });

  it('but one whose condition came to the same before', () => {
    const cars = world(room({ not: { empty: 'prop' } }));
    expect(stateOf(judged(cars, { put: { prop: 'prop-b' } }), 'room')).toMatch(/^given /);
  });

  it('a rule that names an adapter', () => {
    const rules = [
      {
        id: 'no-stub',
        layouts: ['layout'],
        when: { kept: 'box' },
        excludes: { mating: 'box-prop', adapter: 'stub-a' },
        because: 'The stub needs another gearbox.',
      },
    ];
    const cars = world({ ...plan, rules });
    expect(judged(cars, { between: { 'box-prop': ['stub-a'] } }).outcome).toBe('fails');
    expect(judged(cars).outcome).toBe('holds');
  });

  it('a choice between faces, where only an adapter is put in', () => {
    const cars = world({
      ...plan,
      parts: {
        ...plan.parts,
        'box-a': { rear: { kind: 'flange', alternatives: [{ pattern: 'A' }, { pattern: 'B' }] } },
        'stub-c': { near: flange('C'), far: flange('A') },
      },
    });
    const one = judged(cars, { between: { 'box-prop': ['stub-c'] } });
    expect(stateOf(one, 'box-prop')).toBe('fails not-equal');
    expect(one.constraints.filter(({ form }) => form === 'choice')).toEqual([]);
    const fits = judged(cars, { between: { 'box-prop': ['stub-a'] } });
    expect(fits.outcome).toBe('holds');
  });
});

describe('a rule over a handed place is judged for each hand', () => {
  const rules = (demand: Readonly<Record<string, unknown>>) =>
    world({
      places: ['box', 'shaft<>'],
      parts: { 'box-a': {}, 'box-b': {}, 'shaft-a': {}, 'shaft-b': {} },
      cars: { car: { box: 'box-a', shaft: { left: 'shaft-a', right: 'shaft-b' } } },
      rules: [{ id: 'shafts', when: { changed: 'box' }, because: 'So it is.', ...demand }],
    });
  const state = (demand: Readonly<Record<string, unknown>>) =>
    stateOf(judged(rules(demand), { put: { box: 'box-b' } }), 'shafts');

  it('what it needs, it needs on both', () => {
    expect(state({ needs: { 'one-of': ['shaft.part', ['shaft-a']] } })).toBe('fails rule-needs');
    expect(state({ needs: { 'one-of': ['shaft.part', ['shaft-b']] } })).toBe('fails rule-needs');
    expect(state({ needs: { 'one-of': ['shaft.part', ['shaft-a', 'shaft-b']] } })).toBe(
      'holds rule-met',
    );
  });

  it('what it excludes, it excludes on either', () => {
    expect(state({ excludes: { 'one-of': ['shaft.part', ['shaft-b']] } })).toBe(
      'fails rule-excludes',
    );
  });
});

describe('A1 two articles of one kind met too, unless they are one piece', () => {
  it('the same article at both ends of a mating', () => {
    const cars = world({
      places: ['first: box', 'second: box', 'third: box'],
      matings: ['one: first.rear = second.front', 'two: second.rear = third.front'],
      parts: {
        'box-a': { front: flange('A'), rear: flange('B') },
        'box-b': { front: flange('B'), rear: flange('A') },
      },
      cars: {
        car: { first: 'box-a', second: 'box-b', third: 'box-a' },
        odd: { first: 'box-a', second: 'box-a', third: 'box-a' },
      },
    });
    const one = judged(cars, { put: { second: 'box-a' } });
    expect(stateOf(one, 'one')).toBe('open contradicts-as-built');
  });
});

describe('A11 a statement reaches no adapter that is put in', () => {
  const statement = {
    id: 'list',
    part: 'engine-c',
    vehicles: ['car'],
    position: 'engine',
    verdict: 'fits',
  };
  const cars = world({
    ...plan,
    checks: [{ id: 'load', carries: 'box-prop.adapter.rating', demand: 'engine.torque' }],
    parts: { ...plan.parts, 'engine-c': {} },
    cars: { ...plan.cars, stubbed: { ...plan.cars.car, matings: { 'box-prop': 'stub-b' } } },
    statements: [statement, { ...statement, id: 'too', vehicles: ['stubbed'] }],
  });

  it('so what it leaves open stays open', () => {
    const put = { engine: 'engine-c' };
    const one = judged(cars, { put, between: { 'box-prop': ['stub-a'] } });
    expect(stateOf(one, 'load')).toBe('open not-recorded');
  });

  it('but one that the works put in is part of the vehicle that it names', () => {
    const one = judged(cars, { on: 'stubbed', put: { engine: 'engine-c' } });
    expect(stateOf(one, 'load')).toBe('holds stated');
    expect(found(one, 'load')?.computed).toBe('open');
  });
});
