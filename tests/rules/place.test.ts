/**
 * Faces that no mating serves, places that may be empty, counts, sides and shared faces.
 */

import { describe, expect, it } from 'vitest';
import { ABSENT, faultsOf, flange, hole, optional, pin, type Sketch, world } from './sketch.js';
import { fitOf, found, judged, stateOf } from './world.js';

describe('B4 a needed face that no mating of the layout serves', () => {
  const plan: Sketch = {
    places: ['box', 'prop'],
    matings: ['box.rear = prop.front'],
    parts: {
      'box-a': { rear: flange('A') },
      'box-late': { rear: flange('A'), sensor: flange('S') },
      'box-maybe': { rear: flange('A'), sensor: optional(flange('S')) },
      'box-none': { rear: flange('A'), sensor: ABSENT },
      'prop-a': { front: flange('A') },
    },
    cars: { car: { box: 'box-a', prop: 'prop-a' }, late: { box: 'box-late', prop: 'prop-a' } },
  };
  const cars = world(plan);

  it('is open, never silently ignored', () => {
    const one = judged(cars, { put: { box: 'box-late' } });
    expect(stateOf(one, 'box.sensor')).toBe('open no-mating-for-interface');
    expect(one.outcome).toBe('open');
    expect(fitOf(cars, 'box-late')).toMatchObject({ alone: 'open', verdict: 'unknown' });
  });

  it('unless the layout says that such faces do not matter', () => {
    const quiet = world({ ...plan, unmated: 'ignore' });
    const one = judged(quiet, { put: { box: 'box-late' } });
    expect(stateOf(one, 'box.sensor')).toBe('not judged');
    expect(one.outcome).toBe('holds');
  });

  it('an optional one is listed as not checked', () => {
    const answer = fitOf(cars, 'box-maybe');
    expect(answer.verdict).toBe('fits');
    expect(answer.notChecked.map(({ code }) => code)).toContain('face-on-no-mating');
    expect(fitOf(cars, 'box-none').notChecked.map(({ code }) => code)).not.toContain(
      'face-on-no-mating',
    );
  });

  it('and on a part that the works fitted it is given', () => {
    expect(stateOf(judged(cars, { on: 'late' }), 'box.sensor')).toMatch(/^given /);
  });
});

describe('B5 a place may be emptied where the layout lets it be empty', () => {
  const cars = world({
    places: ['box', 'unit?', 'prop', 'lever'],
    matings: ['box.plug = unit.plug', 'box.rear = prop.front'],
    parts: {
      'box-a': { plug: optional(flange('U')), rear: optional(flange('A')) },
      'box-b': { plug: flange('U'), rear: optional(flange('A')) },
      'unit-a': { plug: flange('U') },
      'prop-a': { front: optional(flange('A')) },
      'lever-a': {},
    },
    cars: {
      car: { box: 'box-a', unit: 'unit-a', prop: 'prop-a', lever: 'lever-a' },
      bare: { box: 'box-a', unit: null, prop: null, lever: 'lever-a' },
      silent: { box: 'box-a', unit: 'unit-a', lever: 'lever-a' },
    },
  });

  it('an optional one may, if nothing there is needed', () => {
    const one = judged(cars, { put: { unit: null } });
    expect(stateOf(one, 'box-unit')).toBe('holds nothing-needed');
    expect(one.outcome).toBe('holds');
    expect(judged(cars, { put: { unit: null, box: 'box-b' } }).outcome).toBe('fails');
  });

  it('a required one may not', () => {
    const one = judged(cars, { put: { prop: null } });
    expect(stateOf(one, 'prop')).toBe('fails needed-place-empty');
    expect(one.outcome).toBe('fails');
  });

  it('nor where nobody recorded what stands there', () => {
    const one = judged(cars, { on: 'silent', put: { prop: null } });
    expect(stateOf(one, 'prop')).toBe('fails needed-place-empty');
  });

  it('but it may stay empty where it is known to be empty now', () => {
    const one = judged(cars, { on: 'bare', put: { prop: null, lever: 'lever-a' } });
    expect(stateOf(one, 'prop')).toBe('not judged');
    expect(one.outcome).toBe('holds');
  });

  it('a place that is newly needed is filled where the layout has it', () => {
    const scene = { on: 'bare', put: { box: 'box-b' } };
    expect(stateOf(judged(cars, scene), 'box-unit')).toBe('fails needed-empty');
    const filled = { ...scene, put: { box: 'box-b', unit: 'unit-a' } };
    expect(judged(cars, filled).outcome).toBe('holds');
  });
});

describe('B6 sides, counts and shared faces', () => {
  const plan: Sketch = {
    places: ['box', 'prop', 'lever'],
    matings: ['box.rear = prop.front', 'box.rear = lever.foot'],
    parts: {
      'box-a': { rear: flange('A') },
      'box-b': { rear: flange('B') },
      'prop-a': { front: flange('A') },
      'lever-a': { foot: flange('A') },
    },
    cars: { car: { box: 'box-a', prop: 'prop-a', lever: 'lever-a' } },
  };

  it('a face serves several matings only where all of them say that it is shared', () => {
    expect(faultsOf(plan)).toEqual(['interface-used-twice']);
    const half = ['box.rear = prop.front', 'box.rear = lever.foot shared'];
    expect(faultsOf({ ...plan, matings: half })).toEqual(['interface-used-twice']);
    const both = ['box.rear = prop.front shared', 'box.rear = lever.foot shared'];
    const one = judged(world({ ...plan, matings: both }), { put: { box: 'box-b' } });
    expect(stateOf(one, 'box-prop')).toBe('fails not-equal');
    expect(stateOf(one, 'box-lever')).toBe('fails not-equal');
  });

  it('a kind without sides meets itself, whichever end it is at', () => {
    const cars = world({ ...plan, matings: ['prop.front = box.rear'] });
    expect(stateOf(judged(cars, { put: { prop: 'prop-a', box: 'box-b' } }), 'prop-box')).toBe(
      'fails not-equal',
    );
  });

  it('a kind with sides meets its other side only, whichever end that is at', () => {
    const cars = world({
      places: ['box', 'prop'],
      matings: ['box.rear = prop.front'],
      parts: {
        'box-a': {},
        'box-pin': { rear: pin('20.0 ±0.01 mm') },
        'box-hole': { rear: hole('20.1 ±0.01 mm') },
        'prop-a': {},
        'prop-pin': { front: pin('20.0 ±0.01 mm') },
        'prop-hole': { front: hole('20.1 ±0.01 mm') },
      },
      cars: { car: { box: 'box-a', prop: 'prop-a' } },
    });
    const met = (box: string, prop: string) =>
      stateOf(judged(cars, { put: { box, prop } }), 'box-prop');
    expect(met('box-pin', 'prop-hole')).toBe('holds meets');
    expect(met('box-hole', 'prop-pin')).toBe('holds meets');
    expect(met('box-pin', 'prop-pin')).toBe('fails same-side');
    expect(met('box-hole', 'prop-hole')).toBe('fails same-side');
  });

  it('there are as many joints as the larger of two counts, a multiple of the smaller', () => {
    const counted = (places: readonly string[]): Sketch => ({
      places,
      matings: ['hub.face = wheel.face'],
      parts: { 'hub-a': { face: flange('A') }, 'wheel-a': { face: flange('A') } },
      cars: { car: { hub: 'hub-a', wheel: 'wheel-a' } },
    });
    const quantity = (places: readonly string[]) =>
      world(counted(places)).catalogue.layouts.get('layout')?.matings.get('hub-wheel')?.quantity;
    expect(quantity(['hub', 'wheel'])).toBe(1);
    expect(quantity(['hub*2', 'wheel*4'])).toBe(4);
    expect(quantity(['hub*4', 'wheel*2'])).toBe(4);
    expect(quantity(['hub', 'wheel<>'])).toBe(2);
    expect(faultsOf(counted(['hub*2', 'wheel*3']))).toEqual(['wrong-count']);
  });

  it('on a handed place each hand has its joint, and the worse one counts', () => {
    const cars = world({
      places: ['axle', 'shaft<>', 'hub<>'],
      matings: ['axle.out = shaft.in', 'shaft.out = hub.in'],
      parts: {
        'axle-a': { out: flange('A') },
        'shaft-a': { in: flange('A'), out: flange('H') },
        'shaft-b': { in: flange('A'), out: flange('K') },
        'hub-a': { in: flange('H') },
        'hub-k': { in: flange('K') },
      },
      cars: { car: { axle: 'axle-a', shaft: 'shaft-a', hub: { left: 'hub-k', right: 'hub-a' } } },
    });
    const one = judged(cars, { put: { shaft: 'shaft-b' } });
    expect(found(one, 'axle-shaft', 'left')?.state).toBe('holds');
    expect(stateOf(one, 'shaft-hub', 'left')).toBe('holds meets');
    expect(stateOf(one, 'shaft-hub', 'right')).toBe('fails not-equal');
    expect(one.outcome).toBe('fails');
  });
});
