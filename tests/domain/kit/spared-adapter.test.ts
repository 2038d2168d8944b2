/**
 * Why a shaft is changed: since it does not meet the gearbox; or instead of an adapter, where one
 * would have done with everything else as it is.
 */

import { expect, test } from 'vitest';
import { flange, type Sketch, world } from '../../rules/sketch.js';
import { kitsOf } from '../../rules/world.js';

const SKETCH = {
  roles: { prop: { length: 'length' }, plate: { thickness: 'length' } },
  places: ['box', 'prop'],
  matings: ['box.rear = prop.front +1'],
  parts: {
    'box-a': { rear: flange('A') },
    'box-b': { rear: flange('B') },
    'prop-a': { front: flange('A'), length: '1000 ±1 mm' },
    'prop-b': { front: flange('B'), length: '1000 ±1 mm' },
    'plate-ab': { one: flange('A'), two: flange('B'), thickness: '20 ±0.1 mm' },
  },
  cars: { car: { box: 'box-a', prop: 'prop-a' } },
} satisfies Sketch;

/** The reasons of the new shaft, in the way that has it. */
function whyOfShaft(sketch: Sketch): string[] {
  const { routes } = kitsOf(world(sketch), ['box-b']);
  const lines = routes.flatMap((route) => route.lines);
  return (lines.find(({ key }) => key === 'add:prop:prop-b')?.why ?? []).map(({ code }) => code);
}

test('a plate between would have done', () => {
  expect(whyOfShaft(SKETCH)).toEqual(['adapter-avoided']);
});

test('there is no plate', () => {
  const { 'plate-ab': _left, ...parts } = SKETCH.parts;
  expect(whyOfShaft({ ...SKETCH, parts })).toEqual(['mating-fails']);
});

test('with a plate it would be too long', () => {
  const span = [{ sum: ['prop.length', 'box-prop.adapter.thickness'] }, '1010 mm'];
  const checks = [{ id: 'room', 'at-most': span }];
  expect(whyOfShaft({ ...SKETCH, checks })).toEqual(['mating-fails']);
});
