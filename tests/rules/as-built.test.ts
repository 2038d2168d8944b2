/**
 * What the works fitted together is evidence: for the vehicle itself, where nothing is changed,
 * and for the same two articles anywhere else.
 */

import { describe, expect, it } from 'vitest';
import { measureFor } from '../../src/domain/judge/measure.js';
import { ABSENT, by, flange, from, hole, pin, world } from './sketch.js';
import { computedOf, factsOf, found, inspected, judged, stateOf } from './world.js';

describe('A1 two articles that some works fitted together meet wherever they meet so', () => {
  const plan = {
    places: ['box', 'prop'],
    matings: ['box.rear = prop.front', 'side: box.side = prop.side'],
    unmated: 'ignore',
    parts: {
      'box-a': { rear: flange('A'), side: flange('A') },
      'box-b': { rear: flange(), side: flange() },
      'box-odd': { rear: flange('B'), side: flange('A') },
      'box-none': { rear: ABSENT, side: flange('A') },
      'prop-a': { front: flange('A'), side: flange('A') },
      'stub-aa': { near: flange('A'), far: flange('A') },
    },
    cars: {
      car: { box: 'box-a', prop: 'prop-a' },
      sister: { box: 'box-b', prop: 'prop-a' },
      odd: { box: 'box-odd', prop: 'prop-a' },
      lacking: { box: 'box-none', prop: 'prop-a' },
    },
  } as const;
  const cars = world(plan);

  it('what the records leave open holds then, with the basis of that record', () => {
    const one = judged(cars, { put: { box: 'box-b' } });
    expect(stateOf(one, 'box-prop')).toBe('holds as-built');
    expect(found(one, 'box-prop')).toMatchObject({
      computed: 'open',
      basis: 'maker',
      builtPair: { vehicles: ['sister'], basis: 'maker' },
    });
    expect(one.outcome).toBe('holds');
  });

  it('its basis is that of the vehicle record, and the best of several', () => {
    const cloned = { ...plan, cars: { ...plan.cars, cousin: plan.cars.sister } };
    const built = world({ ...cloned, about: { cousin: by('built'), sister: by('inferred') } });
    const one = judged(built, { put: { box: 'box-b' } });
    expect(found(one, 'box-prop')).toMatchObject({
      state: 'holds',
      basis: 'built',
      builtPair: { vehicles: ['sister', 'cousin'] },
    });
  });

  it.each(['box-odd', 'box-none'])('no check is overruled: %s is a contradiction', (box) => {
    const one = judged(cars, { put: { box } });
    expect(stateOf(one, 'box-prop')).toBe('open contradicts-as-built');
    expect(computedOf(one, 'box-prop')).toBe('fails');
    expect(one.outcome).toBe('open');
  });

  it.each(['inferred', 'reported'])('a record that is %s leaves others open', (basis) => {
    const weak = world({ ...plan, about: { sister: by(basis) } });
    expect(judged(weak, { put: { box: 'box-b' } }).outcome).toBe('open');
    expect(stateOf(judged(weak, { put: { box: 'box-b' } }), 'box-prop')).toMatch(/^open /);
    expect(stateOf(judged(weak, { on: 'sister' }), 'box-prop')).toMatch(/^given /);
  });

  it('the same faces must meet: another face of the same two is no evidence', () => {
    const other = world({
      ...plan,
      cars: { car: plan.cars.car, sister: { box: 'box-b', prop: 'prop-a' } },
      about: { sister: { layout: 'crossed' } },
      layouts: [
        {
          id: 'crossed',
          unmated: 'ignore',
          positions: ['box', 'prop'].map((id) => ({ id, name: id, roles: [id] })),
          matings: [{ id: 'box-prop', between: ['prop.front', 'box.side'] }],
        },
      ],
    });
    expect(judged(other, { put: { box: 'box-b' } }).outcome).toBe('open');
  });

  it('but neither the layout nor the order of its ends matters', () => {
    const other = world({
      ...plan,
      cars: { car: plan.cars.car, sister: { gear: 'box-b', shaft: 'prop-a' } },
      about: { sister: { layout: 'turned' } },
      layouts: [
        {
          id: 'turned',
          positions: [
            { id: 'shaft', name: 'shaft', roles: ['prop'] },
            { id: 'gear', name: 'gear', roles: ['box'] },
          ],
          matings: [
            { id: 'first', between: ['shaft.front', 'gear.rear'] },
            { id: 'second', between: ['gear.side', 'shaft.side'] },
          ],
        },
      ],
    });
    expect(judged(other, { put: { box: 'box-b' } }).outcome).toBe('holds');
  });

  it('both ends must be of the works: what a question says is evidence of nothing', () => {
    const alone = world({ ...plan, cars: { car: plan.cars.car } });
    const scene = { said: { box: 'box-b' }, put: { prop: 'prop-a', box: 'box-b' } };
    expect(stateOf(judged(alone, scene), 'box-prop')).not.toMatch(/as-built/);
    expect(judged(alone, { put: { box: 'box-b' } }).outcome).toBe('open');
  });

  it('what met through an adapter is no evidence that it meets without', () => {
    const through = { ...plan.cars.sister, matings: { 'box-prop': 'stub-aa' } };
    const other = world({ ...plan, cars: { car: plan.cars.car, sister: through } });
    const direct = judged(other, { put: { box: 'box-b' } });
    expect(stateOf(direct, 'box-prop')).toBe('open not-recorded');
    const again = { put: { box: 'box-b' }, between: { 'box-prop': ['stub-aa'] } };
    expect(stateOf(judged(other, again), 'box-prop')).toBe('holds as-built');
  });

  it('what the records prove needs no such evidence', () => {
    const one = judged(cars, { on: 'sister', put: { box: 'box-a' } });
    expect(found(one, 'box-prop')).toMatchObject({ state: 'holds', code: 'meets', basis: 'maker' });
  });

  it('a pair of the left side meets on the right side too', () => {
    const shafts = world({
      places: ['axle', 'shaft<>'],
      matings: ['axle.out = shaft.in'],
      parts: {
        'axle-a': { out: flange('A') },
        'shaft-a': { in: flange('A') },
        'shaft-b': { in: flange() },
      },
      cars: {
        car: { axle: 'axle-a', shaft: 'shaft-a' },
        odd: { axle: 'axle-a', shaft: { left: 'shaft-b', right: 'shaft-a' } },
      },
    });
    expect(judged(shafts, { put: { shaft: 'shaft-b' } }).outcome).toBe('holds');
  });
});

describe('A2 what the works fitted and nothing touches is given, whatever is missing', () => {
  const cars = world({
    roles: {
      engine: { torque: 'engine' },
      clutch: { torque: 'rating' },
      box: { length: 'length' },
    },
    places: ['engine', 'clutch', 'box', 'prop'],
    matings: ['box.rear = prop.front'],
    checks: [
      { id: 'load', carries: 'clutch.torque', demand: 'engine.torque' },
      { id: 'length', 'at-most': ['box.length', '600 mm'] },
    ],
    parts: {
      'engine-a': { torque: '300 ±0 N.m' },
      'clutch-a': { torque: '250 N.m' },
      'box-a': { rear: flange('A'), length: '700 mm', sensor: flange('S') },
      'box-b': { length: '590 mm' },
      'prop-a': { front: flange('B') },
    },
    cars: { car: { engine: 'engine-a', clutch: 'clutch-a', box: 'box-a', prop: 'prop-a' } },
    rules: [
      { id: 'rule', when: { kept: 'box' }, excludes: { kept: 'prop' }, because: 'Never both.' },
    ],
  });
  const ids = ['box-prop', 'load', 'length', 'rule'] as const;

  it('an unmodified vehicle is always valid, and asks for nothing', () => {
    const one = judged(cars);
    expect(one.constraints.map(({ id }) => id)).toEqual(expect.arrayContaining([...ids]));
    for (const { state } of one.constraints) expect(state).toBe('given');
    expect(one.outcome).toBe('holds');
    expect(measureFor(one)).toEqual([]);
  });

  it('what the records come to is shown beside it', () => {
    const one = judged(cars);
    expect(ids.map((id) => computedOf(one, id))).toEqual(['fails', 'fails', 'fails', 'fails']);
    const { state, judged: shown } = inspected(cars);
    expect(state).toBe('holds');
    expect(shown.checks.map(({ id, state: own, computed }) => [id, own, computed])).toEqual([
      ['load', 'given', 'fails'],
      ['length', 'given', 'fails'],
    ]);
  });

  it('a place and a face that nobody recorded, and a face on no mating too', () => {
    const silent = world({
      places: ['box', 'prop'],
      matings: ['box.rear = prop.front', 'side: box.side = prop.side'],
      parts: { 'box-a': { rear: flange('A'), sensor: flange('S') } },
      cars: { car: { box: 'box-a' } },
    });
    const one = judged(silent);
    expect(one.constraints.map(({ id, state, computed }) => [id, state, computed])).toEqual([
      ['box.sensor', 'given', 'open'],
      ['box-prop', 'given', 'open'],
      ['side', 'given', 'open'],
    ]);
    expect(one.outcome).toBe('holds');
  });

  it('a change un-gives what it touches, and no more', () => {
    const one = judged(cars, { put: { box: 'box-b' } });
    expect(ids.map((id) => stateOf(one, id))).toEqual([
      'open face-not-recorded',
      'given too-weak',
      'holds clears',
      'not judged',
    ]);
    expect(factsOf(one)).toEqual(['box.rear to-decide ±?']);
  });

  it('every input counts, the torque of the question too', () => {
    const one = judged(cars, { torque: '300 N.m' });
    expect(stateOf(one, 'load')).toBe('fails too-weak');
    expect(stateOf(one, 'length')).toMatch(/^given /);
    expect(one.outcome).toBe('fails');
  });
});

describe('A6 what was fitted together on a donor meets here too', () => {
  const cars = world({
    places: ['box', 'prop'],
    matings: ['box.rear = prop.front'],
    parts: {
      'box-a': { rear: hole('20.0 ±0.1 mm') },
      'box-d': { rear: hole('20.0 ±0.1 mm') },
      'box-x': { rear: hole('19.0 mm') },
      'prop-a': { front: pin('20.0 ±0.1 mm') },
      'prop-d': { front: pin('20.0 ±0.1 mm') },
      'prop-w': { front: pin(from('inferred', '20.0 ±0 mm')) },
    },
    cars: {
      car: { box: 'box-a', prop: 'prop-a' },
      donor: { box: 'box-d', prop: 'prop-d' },
      other: { box: 'box-x', prop: 'prop-d' },
      third: { box: 'box-d', prop: 'prop-w' },
    },
    about: { donor: by('built') },
  });

  it('both parts of the donor, moved together, meet as they did there', () => {
    const one = judged(cars, { put: { box: 'box-d', prop: 'prop-d' } });
    expect(found(one, 'box-prop')).toMatchObject({
      state: 'holds',
      code: 'as-built',
      basis: 'built',
      builtPair: { vehicles: ['donor'] },
    });
  });

  it('one of them alone does not: the donor says nothing of the part beside it here', () => {
    expect(stateOf(judged(cars, { put: { box: 'box-d' } }), 'box-prop')).toBe(
      'open not-precise-enough',
    );
  });

  it('and where the records deny it, the two contradict', () => {
    expect(stateOf(judged(cars, { put: { box: 'box-x', prop: 'prop-d' } }), 'box-prop')).toBe(
      'open contradicts-as-built',
    );
  });

  it('weak records are settled by it as missing ones are', () => {
    expect(stateOf(judged(cars, { put: { box: 'box-d', prop: 'prop-w' } }), 'box-prop')).toBe(
      'holds as-built',
    );
  });
});
