/**
 * What comes of two ends of a mating: faces that are recorded, absent or not recorded, and
 * places that are empty or that nobody recorded.
 */

import { describe, expect, it } from 'vitest';
import { ABSENT, flange, hole, optional, type Sketch, world } from './sketch.js';
import { factsOf, judged, stateOf } from './world.js';

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

  it('a face that a role does not list is absent, one that it lists is not recorded', () => {
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
