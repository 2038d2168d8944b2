/**
 * Limits and fits beyond their check values.
 */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { toleranceFactor } from '../../../src/domain/driveline/fit.js';
import { isWithin, subtractIntervals } from '../../../src/domain/quantity/interval.js';
import { about, asked } from './asked.js';

/** As it is written: `H7/g6`. */
function fitted(size: string, fit: string) {
  const [hole = '', shaft = ''] = fit.split('/');
  return asked('fit', { size, hole, shaft });
}

const RUNS = { numRuns: 200, seed: 7 };
const sizes = fc.integer({ min: 2, max: 500 });

describe('a fit', () => {
  test.each([
    ['H7/g6', 'clearance', 'holds'],
    ['H7/h6', 'clearance', 'holds'],
    ['H7/k6', 'transition', 'open'],
    ['H7/s6', 'interference', 'fails'],
  ])('%s of 50 mm is of the sort %s', (fit, sort, slides) => {
    const result = fitted('50 mm', fit);
    expect([result.word('sort'), result.outcome('slides')]).toEqual([sort, slides]);
  });

  test('of one class alone has no play', () => {
    const shaft = asked('fit', { size: '2 in', shaft: 'g6' });
    expect(['holeSizes', 'clearance', 'sort'].map((output) => shaft.has(output))).toEqual([
      false,
      false,
      false,
    ]);
    expect(about(shaft.set('shaftSizes'))).toBeCloseTo(50.8 - 0.0195, 6);
  });

  test.each(['?/g6', 'g6/g6', 'H/g6', '50/g6'])('%s has no class of a hole', (fit) => {
    expect(() => fitted('50 mm', fit)).toThrow('no class of a hole');
  });

  test.each(['H7/?', 'H7/H6', 'H7/g'])('%s has no class of a shaft', (fit) => {
    expect(() => fitted('50 mm', fit)).toThrow('no class of a shaft');
  });

  test('of a class that the standard has not is refused', () => {
    expect(() => asked('fit', { size: '50 mm', hole: 'Z99' })).toThrow('no fit class');
  });

  test('of a size that was measured takes its middle, and says so', () => {
    const read = asked('fit', { size: '50 ±0.5 mm', hole: 'H7' });
    expect(read.warnings).toEqual(['size-not-exact']);
    const exact = asked('fit', { size: '50 mm', hole: 'H7' });
    expect(read.set('holeSizes')).toEqual(exact.set('holeSizes'));
  });

  test('has the play of its hole less its shaft, whatever the size', () => {
    const classes = fc.constantFrom('H7/g6', 'H8/f7', 'H7/k6', 'H7/p6', 'K7/h6', 'P7/h6');
    fc.assert(
      fc.property(sizes, classes, (size, fit) => {
        const result = fitted(`${size} mm`, fit);
        const [hole, shaft] = [result.set('holeSizes'), result.set('shaftSizes')];
        expect(isWithin(result.set('clearance'), subtractIntervals(hole, shaft))).toBe(true);
      }),
      RUNS,
    );
  });
});

describe('standard tolerances', () => {
  test('fit-04 (ISO 286-1/-2): grow as 7, 10, 16, 25, 40, 64, 100 times the factor', () => {
    const multiples = [7, 10, 16, 25, 40, 64, 100];
    fc.assert(
      fc.property(sizes, (size) => {
        const result = asked('fit', { size: `${size} mm`, hole: 'H7' });
        const tolerances = result.sets('tolerances').map(about);
        const factor = about(result.set('toleranceFactor'));
        for (const [index, tolerance] of tolerances.entries()) {
          expect(tolerance).toBeGreaterThan(tolerances[index - 1] ?? 0);
          const share = tolerance / (factor * (multiples[index] ?? 0));
          // The smallest are rounded to whole micrometres: up to a sixth.
          expect(Math.abs(share - 1)).toBeLessThan(0.16);
        }
      }),
      RUNS,
    );
  });

  test('of the smallest sizes follow from the mean of 1 and 3', () => {
    const factor = toleranceFactor([0, 3]);
    expect(factor === null ? 0 : about(factor)).toBeCloseTo(0.000542, 6);
  });
});
