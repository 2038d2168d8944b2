/**
 * Weak evidence: what may decide, and what only opens a question.
 */

import { describe, expect, it } from 'vitest';
import { flange, from, hole, pin, type Sketch, world } from './sketch.js';
import { factsOf, found, judged, stateOf } from './world.js';

describe('A11 evidence too weak may fail a check and never holds it', () => {
  const plan = (basis: string): Sketch => ({
    places: ['box', 'prop'],
    matings: ['box.rear = prop.front'],
    parts: {
      'box-a': { rear: flange('A') },
      'box-b': { rear: flange(from(basis, 'A')) },
      'box-c': { rear: flange(from(basis, 'C')) },
      'prop-a': { front: flange('A') },
    },
    cars: { car: { box: 'box-a', prop: 'prop-a' } },
  });

  it('inferred and equal: open, and asked to be confirmed', () => {
    const one = judged(world(plan('inferred')), { put: { box: 'box-b' } });
    expect(stateOf(one, 'box-prop')).toBe('open evidence-too-weak');
    expect(factsOf(one)).toEqual(['box.rear.pattern to-confirm ±?']);
  });

  it('inferred and unequal: fails', () => {
    const one = judged(world(plan('inferred')), { put: { box: 'box-c' } });
    expect(stateOf(one, 'box-prop')).toBe('fails not-equal');
    expect(found(one, 'box-prop')?.basis).toBe('inferred');
  });

  it.each(['box-b', 'box-c'])('reported: open either way (%s)', (box) => {
    const one = judged(world(plan('reported')), { put: { box } });
    expect(stateOf(one, 'box-prop')).toBe('open evidence-too-weak');
    expect(factsOf(one)).toEqual(['box.rear.pattern to-confirm ±?']);
  });

  it('a measure is to be confirmed too, not to be taken more finely', () => {
    const cars = world({
      places: ['box', 'prop'],
      matings: ['box.rear = prop.front'],
      parts: {
        'box-a': { rear: hole('20.10 ±0.01 mm') },
        'box-b': { rear: hole(from('inferred', '20.10 ±0.01 mm')) },
        'box-c': { rear: hole('20.10 ±0.20 mm') },
        'prop-a': { front: pin('20.00 ±0.01 mm') },
      },
      cars: { car: { box: 'box-a', prop: 'prop-a' } },
    });
    const asked = (box: string) => factsOf(judged(cars, { put: { box } }));
    expect(asked('box-b')).toEqual([expect.stringMatching(/^box\.rear\.dia to-confirm /)]);
    expect(asked('box-c')).toEqual([expect.stringMatching(/^box\.rear\.dia to-decide /)]);
  });

  it('a check has the weakest basis of the values that decided it', () => {
    const cars = world({
      ...plan('drawing'),
      parts: {
        'box-a': { rear: flange('A') },
        'box-b': { rear: flange(from('drawing', 'A')) },
        'prop-a': { front: flange(from('built', 'A')) },
      },
    });
    expect(found(judged(cars, { put: { box: 'box-b' } }), 'box-prop')?.basis).toBe('drawing');
  });
});
