/**
 * Roots and circular functions: enclosed on both sides, as narrow as they are said to be.
 */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  arcCosineInterval,
  arcTangentInterval,
  cosineInterval,
  overCorners,
  PI,
  rootInterval,
  sineInterval,
  tangentInterval,
} from '../../../src/domain/quantity/enclosure.js';
import {
  closed,
  type Interval,
  isEverything,
  isWithin,
  multiplyIntervals,
  point,
  powerInterval,
  subtractIntervals,
} from '../../../src/domain/quantity/interval.js';
import { compare, exactText, fraction, rational } from '../../../src/domain/quantity/rational.js';

const RUNS = { numRuns: 200, seed: 7 };
/** How much a float may be off. */
const FLOAT = 1e-12;

const degrees = fc
  .tuple(fc.bigInt({ min: -100_000n, max: 100_000n }), fc.bigInt({ min: 1n, max: 97n }))
  .map(([n, d]) => fraction(n, d));

function ends({ low, high }: Interval): [number, number] {
  if (low === null || high === null) throw new Error('the set has no ends');
  expect(compare(low, high)).toBeLessThanOrEqual(0);
  return [low.valueOf(), high.valueOf()];
}

function near(set: Interval, value: number, tolerance = FLOAT): void {
  const [low, high] = ends(set);
  expect(low).toBeGreaterThanOrEqual(value - tolerance);
  expect(high).toBeLessThanOrEqual(value + tolerance);
}

describe('roots', () => {
  test('are exact where they can be', () => {
    const root = rootInterval(closed(rational('9/4'), rational(16)), 2);
    expect([root.low, root.high].map((end) => end && exactText(end))).toEqual(['1.5', '4']);
    expect(exactText(rootInterval(point(rational('27/8')), 3).high ?? rational(0))).toBe('1.5');
  });

  test('hold the value whose power they are of', () => {
    const value = fc.tuple(
      fc.bigInt({ min: 0n, max: 10n ** 12n }),
      fc.bigInt({ min: 1n, max: 999n }),
    );
    fc.assert(
      fc.property(value, fc.integer({ min: 2, max: 12 }), ([n, d], degree) => {
        const of = point(fraction(n, d));
        expect(isWithin(of, powerInterval(rootInterval(of, degree), degree))).toBe(true);
      }),
      RUNS,
    );
  });

  test('are refused of less than zero, and of no such degree', () => {
    expect(() => rootInterval(closed(rational(-1), rational(1)), 2)).toThrow(RangeError);
    expect(() => rootInterval(point(rational(1)), 1)).toThrow(RangeError);
  });
});

describe('circular functions', () => {
  test('agree with the floats of the machine', () => {
    fc.assert(
      fc.property(degrees, (angle) => {
        const radians = (angle.valueOf() * Math.PI) / 180;
        near(cosineInterval(point(angle)), Math.cos(radians));
        near(sineInterval(point(angle)), Math.sin(radians));
      }),
      RUNS,
    );
  });

  test('square to one', () => {
    fc.assert(
      fc.property(degrees, (angle) => {
        const [s, c] = [sineInterval(point(angle)), cosineInterval(point(angle))];
        const one = subtractIntervals(
          powerInterval(s, 2),
          multiplyIntervals(point(rational(-1)), powerInterval(c, 2)),
        );
        expect(isWithin(point(rational(1)), one)).toBe(true);
        near(one, 1, 1e-28);
      }),
      RUNS,
    );
  });

  test('know the turning points between two angles', () => {
    expect(ends(cosineInterval(closed(rational(-10), rational(200))))).toEqual([-1, 1]);
    expect(ends(sineInterval(closed(rational(80), rational(100))))[1]).toBe(1);
    expect(ends(cosineInterval(closed(rational(0), rational(720))))).toEqual([-1, 1]);
    expect(ends(cosineInterval(point(rational(90))))).toEqual([0, 0]);
  });

  test('claim nothing of a tangent at a right angle', () => {
    expect(isEverything(tangentInterval(closed(rational(80), rational(90))))).toBe(true);
    near(tangentInterval(point(rational(45))), 1, 1e-28);
  });

  test('come back from where they went', () => {
    const acute = fc.bigInt({ min: 1n, max: 8999n }).map((n) => fraction(n, 100n));
    fc.assert(
      fc.property(acute, (angle) => {
        const back = [
          arcCosineInterval(cosineInterval(point(angle))),
          arcTangentInterval(tangentInterval(point(angle))),
        ];
        for (const one of back) {
          expect(isWithin(point(angle), one)).toBe(true);
          near(one, angle.valueOf());
        }
      }),
      { ...RUNS, numRuns: 20 },
    );
    expect(ends(arcCosineInterval(point(rational(1))))[0]).toBe(0);
    expect(() => arcCosineInterval(point(rational(2)))).toThrow(RangeError);
  });

  test('begin with a circle', () => {
    near(PI, Math.PI);
  });
});

describe('a box of values', () => {
  test('has its extremes at corners where each value only rises or falls', () => {
    const box = [closed(rational(2), rational(3)), closed(rational(1), rational('3/2'))];
    const difference = overCorners(box, (a = box[0], b = box[1]) =>
      subtractIntervals(a as Interval, b as Interval),
    );
    expect(ends(difference)).toEqual([0.5, 2]);
  });
});
