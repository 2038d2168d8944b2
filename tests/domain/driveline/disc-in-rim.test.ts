/**
 * Brakes in wheels.
 */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { GivenTexts } from '../../../src/domain/driveline/read-given.js';
import { negate, ZERO } from '../../../src/domain/quantity/rational.js';
import { asked } from './asked.js';

const RUNS = { seed: 3172, numRuns: 200 };
const SPOKES = { spokeFace: '48 mm', caliperFace: '44 mm' };
const room = (given: GivenTexts) => asked('disc-in-rim', { caliperRadius: '172 mm', ...given });

describe('around a caliper of 172 mm', () => {
  test.each([
    ['175 mm', 'holds'],
    ['174.9 mm', 'fails'],
    ['175 ±0.5 mm', 'open'],
  ])('a rim of %s inside: %s', (rimInnerRadius, outcome) => {
    expect(room({ rimInnerRadius }).outcome('clearsRim')).toBe(outcome);
  });

  test('a gap is wanted as wide as is told', () => {
    const rimInnerRadius = '176 mm';
    expect(room({ rimInnerRadius, gapNeeded: '4 mm' }).outcome('clearsRim')).toBe('holds');
    expect(room({ rimInnerRadius, gapNeeded: '0.5 cm' }).outcome('clearsRim')).toBe('fails');
  });

  test('the gap turns its sign with the two turned round', () => {
    const radius = fc.integer({ min: 100, max: 250 });
    fc.assert(
      fc.property(radius, radius, (a, b) => {
        const gap = (caliper: number, rim: number) =>
          room({ caliperRadius: `${caliper} mm`, rimInnerRadius: `${rim / 10} cm` }).set(
            'radialGap',
          );
        expect(gap(a, b).low).toEqual(negate(gap(b, a).low ?? ZERO));
      }),
      RUNS,
    );
  });

  test.each([
    ['47 mm', 'holds', []],
    ['46.9 mm', 'fails', []],
    ['44 mm', 'fails', ['touches']],
    ['47 ±1 mm', 'open', []],
  ])('spokes at %s: %s', (spokeFace, outcome, warnings) => {
    const beside = room({ ...SPOKES, spokeFace, rimInnerRadius: '178 mm' });
    expect(beside.outcome('clearsSpokes')).toBe(outcome);
    expect(beside.warnings).toEqual(warnings);
  });

  test('touching and unknown spokes are warned of', () => {
    expect(room({ rimInnerRadius: '178 mm' }).warnings).toEqual(['spokes-unknown']);
    expect(room({ ...SPOKES, rimInnerRadius: '172 mm' }).warnings).toEqual(['touches']);
  });

  test('a disc does not stand out beyond it', () => {
    const given = { ...SPOKES, rimInnerRadius: '178 mm' };
    expect(() => room({ ...given, discDiameter: '344 mm' })).toThrow(/half of the disc/);
    expect(() => room({ ...given, discDiameter: '343.9 mm' })).not.toThrow();
  });
});
