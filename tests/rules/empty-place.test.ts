/**
 * What becomes of a check where a place that it names is empty, or was never recorded, and of
 * values that are computed from recorded ones.
 */

import { describe, expect, it } from 'vitest';
import { faultsOf, flange, type Sketch, world } from './sketch.js';
import { factsOf, found, judged, stateOf } from './world.js';

describe('C3 a check that names an empty place does not apply', () => {
  const plan: Sketch = {
    roles: {
      engine: { torque: 'engine', limit: 'torque' },
      box: { ratio: 'ratio', coupling: 'code' },
      reducer: { ratio: 'ratio', torque: 'rating' },
      axle: { ratio: 'ratio' },
    },
    places: ['engine', 'box', 'reducer?', 'front: axle', 'rear: axle'],
    terms: { 'to-front': ['box.ratio', 'front.ratio'], 'to-rear': ['reducer.ratio', 'rear.ratio'] },
    checks: [
      { id: 'loop', agree: ['to-front', 'to-rear'], coupling: 'box.coupling' },
      { id: 'load', carries: 'reducer.torque', demand: 'engine.torque' },
      { id: 'size', 'at-most': ['reducer.ratio', '2'] },
    ],
    parts: {
      'engine-a': { torque: '300 ±0 N.m' },
      'box-a': { ratio: '12/11', coupling: 'locked' },
      'box-b': { ratio: '1/1', coupling: 'locked' },
      'reducer-a': { ratio: '12/11', torque: '400 N.m' },
      'reducer-b': { ratio: '24/11', torque: '200 N.m' },
      'reducer-silent': {},
      'axle-a': { ratio: '39/11' },
    },
    cars: {
      car: {
        engine: 'engine-a',
        box: 'box-a',
        reducer: 'reducer-a',
        front: 'axle-a',
        rear: 'axle-a',
      },
      bare: { engine: 'engine-a', box: 'box-a', reducer: null, front: 'axle-a', rear: 'axle-a' },
      silent: { engine: 'engine-a', box: 'box-a', front: 'axle-a', rear: 'axle-a' },
    },
  };
  const cars = world(plan);
  const states = (scene: Parameters<typeof judged>[1]) =>
    ['loop', 'load', 'size'].map((id) => stateOf(judged(cars, scene), id));

  it('where it was empty before', () => {
    const scene = { on: 'bare', put: { box: 'box-b' } };
    expect(states(scene)).toEqual(['not judged', 'not judged', 'not judged']);
    expect(judged(cars, scene).outcome).toBe('holds');
  });

  it('but a change that empties a member breaks the loop; a load and a limit just end', () => {
    const scene = { put: { reducer: null } };
    expect(states(scene)).toEqual(['fails chain-broken', 'not judged', 'not judged']);
    expect(found(judged(cars, scene), 'loop')).toMatchObject({ emptied: 'reducer' });
    expect(judged(cars, scene).outcome).toBe('fails');
  });

  it('also where nobody recorded what was there', () => {
    expect(states({ on: 'silent', put: { reducer: null } })[0]).toBe('fails chain-broken');
  });

  it('unless the loop says which factor stands for nothing', () => {
    const checks = [{ ...(plan.checks?.[0] as object), whenEmpty: { reducer: '12/11' } }];
    const whole = world({ ...plan, checks });
    expect(stateOf(judged(whole, { put: { reducer: null } }), 'loop')).toMatch(/^(given|holds) /);
    const wrong = world({ ...plan, checks: [{ ...checks[0], whenEmpty: { reducer: '1' } }] });
    expect(stateOf(judged(wrong, { put: { reducer: null } }), 'loop')).toBe('fails first-too-slow');
    const bare = judged(whole, { on: 'bare', put: { box: 'box-b' } });
    expect(stateOf(bare, 'loop')).toBe('fails first-too-fast');
  });

  it('whichever of two empty places is named first', () => {
    const two = (front: string, rear: string) =>
      world({
        ...plan,
        places: [...plan.places, 'relay?: reducer'],
        terms: { 'to-front': [front, 'front.ratio'], 'to-rear': [rear, 'rear.ratio'] },
        checks: plan.checks?.slice(0, 1) ?? [],
        cars: { car: { ...plan.cars.car, relay: null } },
      });
    const emptied = { put: { reducer: null } };
    const first = stateOf(judged(two('reducer.ratio', 'relay.ratio'), emptied), 'loop');
    const last = stateOf(judged(two('relay.ratio', 'reducer.ratio'), emptied), 'loop');
    expect(first).toBe(last);
  });

  it('where something is put into an empty place it applies', () => {
    expect(states({ on: 'bare', put: { reducer: 'reducer-b' } })).toEqual([
      'fails first-too-fast',
      'fails too-weak',
      'fails too-large',
    ]);
  });

  it('what nobody recorded may have every value: open', () => {
    const open = ['open not-recorded', 'open not-recorded', 'open not-recorded'];
    expect(states({ put: { reducer: '?' } })).toEqual(open);
    expect(states({ put: { reducer: 'reducer-silent' } })).toEqual(open);
    expect(factsOf(judged(cars, { put: { reducer: 'reducer-silent' } }))).toEqual([
      expect.stringMatching(/^reducer\.ratio to-decide /),
      expect.stringMatching(/^reducer\.torque to-decide /),
    ]);
  });

  it('unless the other values decide already', () => {
    const bounded = world({
      ...plan,
      checks: [
        {
          id: 'load',
          carries: 'reducer.torque',
          demand: { min: ['engine.torque', 'engine.limit'] },
        },
      ],
      parts: { ...plan.parts, 'engine-cut': { limit: '150 ±0 N.m' }, 'engine-silent': {} },
    });
    const load = (engine: string) =>
      stateOf(judged(bounded, { put: { engine, reducer: 'reducer-b' } }), 'load');
    expect(load('engine-cut')).toBe('holds carries');
    expect(load('engine-silent')).toBe('open not-recorded');
  });
});

describe('C4 derived values are terms of the role and are never recorded twice', () => {
  const plan: Sketch = {
    roles: {
      engine: { torque: 'engine' },
      box: {
        gears: 'ratios',
        'first-gear': { term: { max: 'gears' } },
        'gear-count': { term: { count: 'gears' } },
      },
      axle: { torque: 'rating' },
    },
    places: ['engine', 'box', 'axle'],
    checks: [
      { id: 'load', carries: 'axle.torque', demand: ['engine.torque', 'box.first-gear'] },
      { id: 'six', 'at-least': ['box.gear-count', '6'] },
    ],
    parts: {
      'engine-a': { torque: '100 ±0 N.m' },
      'box-5': { gears: ['40/11', '45/19', '3/2', '1/1', '4/5'] },
      'box-6': { gears: ['1/1', '4/1', '3/1', '5/2', '2/1', '4/5'] },
      'box-silent': {},
      'axle-a': { torque: '390 ±0 N.m' },
    },
    cars: { car: { engine: 'engine-a', box: 'box-5', axle: 'axle-a' } },
  };
  const cars = world(plan);

  it('the first gear is the greatest, wherever it stands in the list', () => {
    expect(stateOf(judged(cars, { put: { box: 'box-6' } }), 'load')).toBe('fails too-weak');
    expect(stateOf(judged(cars, { torque: '100 N.m' }), 'load')).toBe('holds carries');
  });

  it('and the number of gears is how many there are', () => {
    expect(stateOf(judged(cars, { put: { box: 'box-6' } }), 'six')).toBe('holds clears');
    const back = judged(cars, { said: { box: 'box-6' }, put: { box: 'box-5' } });
    expect(stateOf(back, 'six')).toBe('fails too-small');
  });

  it('gears that nobody recorded leave both open', () => {
    const one = judged(cars, { put: { box: 'box-silent' } });
    expect(stateOf(one, 'load')).toBe('open not-recorded');
    expect(stateOf(one, 'six')).toBe('open not-recorded');
  });

  it('recording one is a fault', () => {
    const parts = { ...plan.parts, 'box-twice': { gears: ['4/1'], 'first-gear': '4/1' } };
    expect(faultsOf({ ...plan, parts })).toEqual(['derived-value']);
  });
});

describe('B1 an adapter is something that is there', () => {
  const cars = world({
    places: ['box?', 'prop?'],
    matings: ['box.rear = prop.front +1'],
    parts: {
      'box-a': { rear: flange('A') },
      'prop-a': { front: flange('A') },
      'stub-aa': { near: flange('A'), far: flange('A') },
    },
    cars: { car: { box: 'box-a', prop: 'prop-a' } },
  });

  it('and needs what is at its ends: nothing holds it where both are empty', () => {
    const put = { box: null, prop: null };
    expect(stateOf(judged(cars, { put }), 'box-prop')).toBe('not judged');
    const one = judged(cars, { put, between: { 'box-prop': ['stub-aa'] } });
    expect(stateOf(one, 'box-prop')).toBe('fails needed-empty');
  });
});
