/**
 * What a question says is on the vehicle, over its record: said, and not proven.
 */

import { describe, expect, it } from 'vitest';
import { ABSENT, flange, world } from './sketch.js';
import { computedOf, factsOf, found, inspected, judged, stateOf } from './world.js';

describe('A3 an override is said, not proven', () => {
  const cars = world({
    roles: { box: { length: 'length' } },
    places: ['box', 'prop', 'unit?', 'wheel'],
    matings: ['box.rear = prop.front', 'box.plug = unit.plug', 'hub: prop.rear = wheel.face'],
    checks: [{ id: 'length', 'at-most': ['box.length', '600 mm'] }],
    parts: {
      'box-a': { rear: flange('A'), plug: ABSENT, length: '700 mm' },
      'box-same': { rear: flange('A'), plug: ABSENT, length: '590 mm' },
      'box-new': { rear: flange('N'), plug: ABSENT, length: '590 mm' },
      'box-silent': { rear: flange(), plug: ABSENT },
      'box-known': { rear: flange(), plug: ABSENT, length: '590 mm' },
      'box-unit': { rear: flange('A'), plug: flange('U'), length: '590 mm' },
      'prop-a': { front: flange('A'), rear: flange('W') },
      'prop-n': { front: flange('N'), rear: flange('W') },
      'unit-a': { plug: flange('U') },
      'wheel-a': { face: flange('W') },
      'wheel-b': { face: flange('W') },
    },
    cars: {
      car: { box: 'box-a', prop: 'prop-a', unit: null, wheel: 'wheel-a' },
      sister: { box: 'box-known', prop: 'prop-a', unit: null, wheel: 'wheel-a' },
    },
  });

  it('a pair with it is computed from the records', () => {
    const one = judged(cars, { said: { box: 'box-same' } });
    expect(stateOf(one, 'box-prop')).toBe('holds meets');
    expect(stateOf(one, 'length')).toBe('holds clears');
    expect(one.outcome).toBe('holds');
  });

  it('or from what the works of another vehicle fitted', () => {
    expect(stateOf(judged(cars, { said: { box: 'box-known' } }), 'box-prop')).toBe(
      'holds as-built',
    );
  });

  it('where it is open and untouched it is as found on the car: given, and shown', () => {
    const one = judged(cars, { said: { box: 'box-silent' } });
    expect(stateOf(one, 'box-prop')).toMatch(/^given /);
    expect(stateOf(one, 'length')).toMatch(/^given /);
    expect(one.outcome).toBe('holds');
    expect(factsOf(one)).toEqual([]);
    const { state, judged: shown } = inspected(cars, { fitted: { box: 'box-silent' } });
    expect(state).toBe('holds');
    expect(shown.matings.find(({ mating }) => mating === 'box-prop')).toMatchObject({
      state: 'given',
      computed: 'open',
    });
  });

  it('where it fails, it must be mended: the statement or the data is wrong', () => {
    const one = judged(cars, { said: { box: 'box-new' } });
    expect(stateOf(one, 'box-prop')).toBe('fails not-equal');
    expect(one.outcome).toBe('fails');
  });

  it('so with the new box in already, other wheels alone are not enough', () => {
    const scene = { said: { box: 'box-new' }, put: { wheel: 'wheel-b' } };
    expect(judged(cars, scene).outcome).toBe('fails');
    const mended = { ...scene, put: { wheel: 'wheel-b', prop: 'prop-n' } };
    expect(judged(cars, mended).outcome).toBe('holds');
  });

  it('unless the question leaves the present alone', () => {
    const scene = { said: { box: 'box-new' }, put: { wheel: 'wheel-b' }, ignorePresent: true };
    const one = judged(cars, scene);
    expect(stateOf(one, 'box-prop')).toBe('given not-equal');
    expect(one.outcome).toBe('holds');
    expect(judged(cars, { ...scene, put: { prop: 'prop-a' } }).outcome).toBe('holds');
  });

  it('leaving the present alone excuses no change', () => {
    const scene = { put: { box: 'box-new' }, ignorePresent: true };
    expect(judged(cars, scene).outcome).toBe('fails');
  });

  it('with another part changed beside it, what is open is open', () => {
    const scene = { said: { box: 'box-silent' }, put: { prop: 'prop-n' } };
    expect(stateOf(judged(cars, scene), 'box-prop')).toBe('open not-recorded');
    expect(stateOf(judged(cars, scene), 'length')).toMatch(/^given /);
  });

  it('that a place is empty can be said, and what needs something there fails', () => {
    expect(judged(cars, { said: { box: 'box-unit' } }).outcome).toBe('fails');
    expect(judged(cars, { said: { box: 'box-unit', unit: 'unit-a' } }).outcome).toBe('holds');
    expect(judged(cars, { said: { prop: null } }).outcome).toBe('fails');
  });

  it('that nobody knows what stands there can be said too: open, so given', () => {
    const one = judged(cars, { said: { prop: '?' } });
    expect(stateOf(one, 'box-prop')).toBe('given face-not-recorded');
    expect(one.outcome).toBe('holds');
  });

  it('saying what the record says anyway makes no difference', () => {
    const one = judged(cars, { said: { box: 'box-a', prop: 'prop-a' } });
    expect(one.outcome).toBe('holds');
  });
});

describe('A4 adapters belong to what is fitted, in records and in questions', () => {
  const plan = {
    places: ['box', 'prop'],
    matings: ['box.rear = prop.front'],
    parts: {
      'box-a': { rear: flange('A') },
      'box-b': { rear: flange('B') },
      'prop-a': { front: flange('A') },
      'prop-a2': { front: flange('A') },
      'stub-ab': { near: flange('A'), far: flange('B') },
    },
    cars: {
      car: { box: 'box-a', prop: 'prop-a' },
      stubbed: { box: 'box-b', prop: 'prop-a', matings: { 'box-prop': 'stub-ab' } },
    },
  } as const;
  const cars = world(plan);

  it('a vehicle that the works gave one is unmodified with it', () => {
    const one = judged(cars, { on: 'stubbed' });
    expect(found(one, 'box-prop')).toMatchObject({ state: 'given', adapters: ['stub-ab'] });
    expect(computedOf(one, 'box-prop')).toBe('holds');
  });

  it('and keeps it where a part beside it is changed', () => {
    const one = judged(cars, { on: 'stubbed', put: { prop: 'prop-a2' } });
    expect(found(one, 'box-prop')).toMatchObject({ state: 'holds', adapters: ['stub-ab'] });
  });

  it('taking it out is a change of the mating', () => {
    const one = judged(cars, { on: 'stubbed', between: { 'box-prop': [] } });
    expect(stateOf(one, 'box-prop')).toBe('fails not-equal');
  });

  it('a question can say that one is fitted: the kit asked again changes nothing', () => {
    const change = { put: { box: 'box-b' }, between: { 'box-prop': ['stub-ab'] } };
    expect(judged(cars, change).outcome).toBe('holds');
    expect(judged(cars, { said: { box: 'box-b' } }).outcome).toBe('fails');
    const applied = { said: { box: 'box-b' }, saidBetween: { 'box-prop': ['stub-ab'] } };
    expect(judged(cars, applied).outcome).toBe('holds');
    expect(judged(cars, { ...applied, ...change }).outcome).toBe('holds');
  });

  it('a question can say that it is gone', () => {
    const one = judged(cars, { on: 'stubbed', saidBetween: { 'box-prop': [] } });
    expect(stateOf(one, 'box-prop')).toBe('fails not-equal');
  });
});
