/**
 * What comes of two ends of a mating: faces that are recorded, absent or not recorded, and
 * places that are empty or that nobody recorded.
 */

import { describe, expect, it } from 'vitest';
import {
  ABSENT,
  factsOf,
  faultsOf,
  fitOf,
  flange,
  found,
  hole,
  judged,
  optional,
  pin,
  type Sketch,
  stateOf,
  world,
} from './world.js';

/** Each sort of end, as a part that is put there; `empty` and `found` are no parts. */
const ENDS = {
  needed: { face: flange('A') },
  optional: { face: optional(flange('A')) },
  odd: { face: optional(flange('B')) },
  absent: { face: ABSENT },
  unrecorded: {},
};

function tableWorld(places: readonly string[]) {
  const parts = Object.entries(ENDS).flatMap(([sort, faces]) => [
    [`left-${sort}`, faces],
    [`right-${sort}`, faces],
  ]);
  return world({
    places,
    matings: ['left.face = right.face'],
    parts: { ...Object.fromEntries(parts), 'left-old': {}, 'right-old': {} },
    cars: { car: { left: 'left-old', right: 'right-old' } },
  });
}

function placed(side: string, sort: string): string | null {
  if (sort === 'empty') return null;
  return sort === 'found' ? '?' : `${side}-${sort}`;
}

describe('B1 two ends that are recorded', () => {
  const table = tableWorld(['left?', 'right?']);

  const rows = [
    ['needed', 'needed', 'holds meets'],
    ['needed', 'optional', 'holds meets'],
    ['optional', 'optional', 'holds meets'],
    ['needed', 'odd', 'fails not-equal'],
    ['optional', 'odd', 'fails not-equal'],
    ['needed', 'empty', 'fails needed-empty'],
    ['optional', 'empty', 'holds nothing-needed'],
    ['absent', 'needed', 'fails needed-absent'],
    ['absent', 'optional', 'holds nothing-needed'],
    ['absent', 'absent', 'holds nothing-needed'],
    ['absent', 'empty', 'holds nothing-needed'],
    ['empty', 'empty', 'not judged'],
  ] as const;

  it.each(rows)('%s against %s: %s', (left, right, state) => {
    const there = { left: placed('left', left), right: placed('right', right) };
    const back = { left: placed('left', right), right: placed('right', left) };
    expect(stateOf(judged(table, { put: there }), 'left-right')).toBe(state);
    expect(stateOf(judged(table, { put: back }), 'left-right')).toBe(state);
  });

  it('a face of another kind does not meet', () => {
    const cars = world({
      places: ['box', 'prop'],
      matings: ['box.rear = prop.front'],
      parts: {
        'box-a': { rear: flange('A') },
        'box-b': { rear: hole('20.1 mm') },
        'prop-a': { front: flange('A') },
      },
      cars: { car: { box: 'box-a', prop: 'prop-a' } },
    });
    const one = judged(cars, { put: { box: 'box-b' } });
    expect(stateOf(one, 'box-prop')).toBe('fails different-kinds');
  });
});

describe('B2 an end that nobody recorded leaves a mating open', () => {
  const table = tableWorld(['left', 'right']);

  it.each([
    ['unrecorded', 'needed'],
    ['unrecorded', 'optional'],
    ['unrecorded', 'absent'],
    ['unrecorded', 'unrecorded'],
    ['found', 'needed'],
    ['found', 'optional'],
    ['found', 'absent'],
    ['found', 'unrecorded'],
  ] as const)('%s against %s', (left, right) => {
    const there = judged(table, {
      put: { left: placed('left', left), right: placed('right', right) },
    });
    const back = judged(table, {
      put: { left: placed('left', right), right: placed('right', left) },
    });
    expect(stateOf(there, 'left-right')).toBe('open face-not-recorded');
    expect(stateOf(back, 'left-right')).toBe('open face-not-recorded');
    expect(there.outcome).toBe('open');
  });

  it('what would decide is to record the face, or to identify what stands there', () => {
    const face = judged(table, { put: { left: 'left-unrecorded', right: 'right-needed' } });
    expect(factsOf(face)).toEqual(['left.face to-decide ±?']);
    const article = judged(table, { put: { left: '?', right: 'right-needed' } });
    expect(factsOf(article)).toEqual(['left to-decide ±?']);
  });
});

describe('B3 a face that nobody recorded, against nothing', () => {
  const plan: Sketch = {
    places: ['box', 'unit?', 'prop'],
    matings: ['box.plug = unit.plug', 'box.rear = prop.front'],
    parts: {
      'box-old': { rear: optional(flange('A')) },
      'box-b': { rear: optional(flange('A')) },
      'box-late': { rear: optional(flange('A')), plug: flange('U') },
      'unit-a': { plug: flange('U') },
      'prop-a': { front: optional(flange('A')) },
      'prop-b': {},
    },
    cars: { car: { box: 'box-old', unit: null, prop: 'prop-a' } },
  };
  const cars = world(plan);

  it('holds where the place is optional: an old box needs no control unit', () => {
    const one = judged(cars, { put: { box: 'box-b' } });
    expect(stateOf(one, 'box-unit')).toBe('holds nothing-needed');
    expect(one.outcome).toBe('holds');
  });

  it('and is counted as a doubt of the catalogue', () => {
    expect(cars.warnings).toContain('unrecorded-faces');
    const { 'box-late': late, 'unit-a': unit, 'prop-a': prop } = plan.parts;
    const told = world({
      ...plan,
      cars: { car: {} },
      parts: { 'box-late': late!, 'unit-a': unit!, 'prop-a': prop! },
    });
    expect(told.warnings).not.toContain('unrecorded-faces');
  });

  it('so does what nobody identified, at the same place', () => {
    expect(
      stateOf(
        judged(cars, { said: { unit: 'unit-a' }, put: { box: '?', unit: null } }),
        'box-unit',
      ),
    ).toBe('holds nothing-needed');
  });

  it('is open where the place is not optional', () => {
    const one = judged(cars, { said: { box: null }, put: { prop: 'prop-b' } });
    expect(stateOf(one, 'box-prop')).toBe('open face-not-recorded');
  });

  it('a recorded need of it fails there', () => {
    expect(stateOf(judged(cars, { put: { box: 'box-late' } }), 'box-unit')).toBe(
      'fails needed-empty',
    );
  });

  it('a face that a listing role does not list is absent, one that it lists is not recorded', () => {
    const listed = world({
      ...plan,
      places: ['box: box, reducer', 'unit?', 'prop'],
      faces: { box: ['rear', 'plug'], reducer: ['rear'] },
      parts: { ...plan.parts, 'reducer-a': { rear: optional(flange('A')) } },
    });
    const withUnit = (box: string) =>
      stateOf(judged(listed, { put: { box, unit: 'unit-a' } }), 'box-unit');
    expect(withUnit('box-b')).toBe('open face-not-recorded');
    expect(withUnit('reducer-a')).toBe('fails needed-absent');
  });
});

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
      ...{ places: ['box', 'prop'], matings: ['box.rear = prop.front'] },
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
