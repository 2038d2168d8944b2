/**
 * The way of the brake pedal.
 */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { GivenTexts } from '../../../src/domain/driveline/read-given.js';
import { isWithin } from '../../../src/domain/quantity/interval.js';
import { compare, ZERO } from '../../../src/domain/quantity/rational.js';
import { about, asked } from './asked.js';

const RUNS = { seed: 4090, numRuns: 200 };

// Stroke of the master cylinder: 2 mm for the front and 1 mm for the rear, so 12 mm of pedal.
const SYSTEM = {
  frontPistons: ['20 mm'],
  frontTravel: '2 mm',
  rearPistons: ['10 mm'],
  rearTravel: '4 mm',
  masterBore: '20 mm',
  pedalRatio: '4',
};
const pedal = (given: GivenTexts = {}) => asked('pedal-travel', { ...SYSTEM, ...given });

const tenths = fc.integer({ min: 100, max: 600 }).map((value) => value / 10);

describe('the pedal', () => {
  test('goes as far as its pistons take in, in any unit and order', () => {
    fc.assert(
      fc.property(tenths, tenths, tenths, (a, b, master) => {
        const masterBore = `${master} mm`;
        const metric = pedal({ frontPistons: [`${a} mm`, `${b} mm`], masterBore });
        const other = pedal({
          frontPistons: [`${(b / 10).toFixed(2)} cm`, `${a} mm`],
          frontTravel: '0.2 cm',
          masterBore,
        });
        expect(other.set('pedalTravel')).toEqual(metric.set('pedalTravel'));
        const expected = ((a * a + b * b) * 2 + 400) / (master * master);
        expect(about(metric.set('masterStroke'))).toBeCloseTo(expected, 8);
      }),
      RUNS,
    );
  });

  test('goes less far with a larger master cylinder', () => {
    fc.assert(
      fc.property(tenths, (master) => {
        const small = pedal({ masterBore: `${master} mm` }).set('pedalTravel').low ?? ZERO;
        const large = pedal({ masterBore: `${master + 1} mm` }).set('pedalTravel').low ?? ZERO;
        expect(compare(small, large)).toBe(1);
      }),
      RUNS,
    );
  });

  test('known within limits holds what each value within them gives', () => {
    fc.assert(
      fc.property(fc.integer({ min: 5, max: 8 }), fc.integer({ min: 5, max: 8 }), (f, r) => {
        const limits = '0.5 to 0.8 mm';
        const failing = { split: 'front-rear', deadStroke: '10 mm' };
        const range = pedal({ frontTravel: limits, rearTravel: limits, ...failing });
        const one = pedal({ frontTravel: `0.${f} mm`, rearTravel: `0.${r} mm`, ...failing });
        expect(isWithin(one.set('pedalTravel'), range.set('pedalTravel'))).toBe(true);
        expect(isWithin(one.set('volume'), range.set('volume'))).toBe(true);
        const ranges = range.sets('failedTravel');
        for (const [index, way] of one.sets('failedTravel').entries()) {
          const whole = ranges[index];
          expect(whole !== undefined && isWithin(way, whole)).toBe(true);
        }
      }),
      RUNS,
    );
  });

  test.each([
    ['20 mm', 'holds', []],
    ['19.9 mm', 'fails', ['long-pedal']],
    ['20 ±0.1 mm', 'open', ['long-pedal']],
  ])('with %s to go: %s', (availableTravel, outcome, warnings) => {
    const way = pedal({ availableTravel });
    expect(way.outcome('isWithin')).toBe(outcome);
    expect(way.warnings).toEqual(warnings);
  });
});

describe('one circuit failed', () => {
  const split = { split: 'front-rear', deadStroke: '10 mm' };

  // 48 mm without the rear circuit.
  test.each([
    ['48 mm', 'holds', []],
    ['47.9 mm', 'fails', ['pedal-meets-floor']],
    ['48 ±0.1 mm', 'open', ['pedal-meets-floor']],
  ])('with %s to go: %s', (availableTravel, outcome, warnings) => {
    const way = pedal({ ...split, availableTravel });
    expect(way.outcome('failedIsWithin')).toBe(outcome);
    expect(way.warnings).toEqual(warnings);
  });

  test('leaves half of a diagonal split, and the other axle of the other one', () => {
    const diagonal = pedal({ split: 'diagonal', deadStroke: '10 mm', frontBrakeShare: '0.7' });
    expect(diagonal.sets('failedTravel').map(about)).toEqual([46]);
    expect(diagonal.sets('brakingLeft').map(about)).toEqual([50]);
    const axles = pedal({ ...split, frontBrakeShare: '0.7' });
    expect(axles.sets('failedTravel').map(about)).toEqual([44, 48]);
    expect(axles.sets('brakingLeft').map(about)).toEqual([30, 70]);
  });

  test('is not said where it is not known how far an empty chamber goes', () => {
    expect(pedal({ split: 'diagonal' }).has('failedTravel')).toBe(false);
    expect(pedal({ deadStroke: '10 mm' }).has('failedTravel')).toBe(false);
  });

  test('is warned of a chamber that cannot feed its pistons', () => {
    expect(pedal({ ...split, deadStroke: '2 mm' }).warnings).toEqual([]);
    expect(pedal({ ...split, deadStroke: '1.9 mm' }).warnings).toEqual(['chamber-too-short']);
    expect(pedal({ split: 'diagonal', deadStroke: '1.5 mm' }).warnings).toEqual([]);
  });
});
