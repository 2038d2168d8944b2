/**
 * Pitch circles from distances of holes, and back.
 */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { contains, isWithin } from '../../../src/domain/quantity/interval.js';
import { rational } from '../../../src/domain/quantity/rational.js';
import { about, asked } from './asked.js';

const RUNS = { seed: 1618, numRuns: 200 };

const circle = (given: Parameters<typeof asked>[1]) => asked('pitch-circle', given);

const pattern = fc
  .integer({ min: 2, max: 24 })
  .chain((holes) => fc.tuple(fc.constant(holes), fc.integer({ min: 1, max: holes >> 1 })));
const tenths = fc.integer({ min: 400, max: 4000 }).map((value) => value / 10);

describe('a pitch circle', () => {
  test('comes back from the distance on it, in any unit', () => {
    fc.assert(
      fc.property(pattern, tenths, ([holes, steps], diameter) => {
        const out = circle({ holes, steps, pitchCircle: `${diameter} mm` }).set('foundChord');
        const chord = `${about(out).toFixed(9)} mm`;
        const back = circle({ holes, steps, chord }).set('foundPitchCircle');
        expect(about(back)).toBeCloseTo(diameter, 6);
        const inches = circle({ holes, steps, chord: `${(about(out) / 25.4).toFixed(12)} in` });
        expect(about(inches.set('foundPitchCircle'))).toBeCloseTo(diameter, 6);
      }),
      RUNS,
    );
  });

  test('from a measured distance holds that of each distance', () => {
    fc.assert(
      fc.property(pattern, tenths, ([holes, steps], chord) => {
        const range = circle({ holes, steps, chord: `${chord} ±0.3 mm` }).set('foundPitchCircle');
        const one = circle({ holes, steps, chord: `${(chord + 0.2).toFixed(1)} mm` });
        expect(isWithin(one.set('foundPitchCircle'), range)).toBe(true);
      }),
      RUNS,
    );
  });

  test('of five holes has not the factor that is met in print', () => {
    const factor = circle({ holes: 5 }).set('factor');
    expect(contains(factor, rational('1.7012'))).toBe(false);
    expect(about(factor).toFixed(5)).toBe('1.70130');
  });

  test('of opposite holes is their distance', () => {
    const across = circle({ holes: 6, steps: 3, chord: '139.7 mm' });
    expect(about(across.set('foundPitchCircle'))).toBe(139.7);
  });

  test.each([
    ['65.85 mm', 'holds', []],
    ['65.85 ±0.3 mm', 'open', ['measure-closer']],
    ['67.2 mm', 'fails', ['other-pitch-circle']],
  ])('of 112 mm beside a distance of %s: %s', (chord, outcome, warnings) => {
    const both = circle({ holes: 5, chord, pitchCircle: '112 mm' });
    expect(both.outcome('isSame')).toBe(outcome);
    expect(both.warnings).toEqual(warnings);
  });

  test('is not counted beyond the opposite hole', () => {
    expect(() => circle({ holes: 5, steps: 3 })).toThrow(/shorter way/);
    expect(() => circle({ holes: 4, steps: 2 })).not.toThrow();
  });
});
