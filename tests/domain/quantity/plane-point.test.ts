/**
 * Points in the plane of a face: how they are written, and how far apart two can be.
 */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  type PlanePoint,
  parsePoint,
  squaredDistance,
} from '../../../src/domain/quantity/plane-point.js';
import { isFault } from '../../../src/domain/quantity/quantity.js';
import {
  add,
  compare,
  multiply,
  type Rational,
  rational,
  squareRootDown,
  subtract,
} from '../../../src/domain/quantity/rational.js';

function read(text: string, tool?: string): PlanePoint {
  const point = parsePoint(text, { dimension: 'length', tool });
  if (isFault(point)) throw new Error(point.text);
  return point;
}

function ends({ x, y }: PlanePoint): (number | undefined)[] {
  return [x.low, x.high, y.low, y.high].map((end) => end?.valueOf());
}

describe('a point is read', () => {
  test.each<[string, string | undefined, number[]]>([
    ['120.5, -45.0 mm', undefined, [120.45, 120.55, -45.05, -44.95]],
    ['120.5 mm, -45.0 mm', undefined, [120.45, 120.55, -45.05, -44.95]],
    ['120.5 ±0.2, -45 ±0 mm', undefined, [120.3, 120.7, -45, -45]],
    ['1.00, 2.00 in', undefined, [25.273, 25.527, 50.673, 50.927]],
    ['1 ±0", 2 ±0"', undefined, [25.4, 25.4, 50.8, 50.8]],
    ['120.50,-45.00 mm', 'tape', [119.5, 121.5, -46, -44]],
  ])('%s', (text, tool, expected) => {
    expect(ends(read(text, tool))).toEqual(expected);
  });

  test.each([
    ['120.5 mm', 'malformed'],
    ['1, 2, 3 mm', 'malformed'],
    ['120.5, -45.0', 'missing-unit'],
    ['120.5, up mm', 'malformed'],
    ['120.5 N.m, -45.0 mm', 'wrong-dimension'],
    ['', 'malformed'],
    [',', 'malformed'],
    ['1'.repeat(5000), 'malformed'],
  ])('and %s is refused', (text, code) => {
    const point = parsePoint(text, { dimension: 'length' });
    expect(isFault(point) ? point.code : 'read').toBe(code);
    if (isFault(point)) expect(point.text.length).toBeLessThan(300);
  });
});

test('the distance of two points is that of any two places in them, and no wider', () => {
  const coordinate = fc.record({
    centre: fc.integer({ min: -40, max: 40 }),
    half: fc.integer({ min: 0, max: 9 }),
  });
  const place = fc.tuple(coordinate, coordinate);
  const share = fc.constantFrom(...['0', '1/3', '1/2', '1'].map(rational));
  fc.assert(
    fc.property(place, place, fc.array(share, { minLength: 4, maxLength: 4 }), (a, b, shares) => {
      const [left, right] = [a, b].map(([x, y]) =>
        read(`${x.centre} ±${x.half}, ${y.centre} ±${y.half} mm`),
      );
      if (left === undefined || right === undefined) throw new Error('there are two points');
      const { least, most } = squaredDistance(left, right);
      const [ax, ay, bx, by] = [left.x, left.y, right.x, right.y].map(({ low, high }, index) => {
        const part = shares[index];
        if (low === null || high === null || part === undefined) throw new Error('two ends');
        return add(low, multiply(part, subtract(high, low)));
      });
      if (!ax || !ay || !bx || !by) throw new Error('four coordinates');
      const across = subtract(ax, bx);
      const up = subtract(ay, by);
      const here = add(multiply(across, across), multiply(up, up));
      expect(compare(least, here)).toBeLessThanOrEqual(0);
      expect(compare(here, most)).toBeLessThanOrEqual(0);
      const zero = [a, b].every((one) => one.every(({ half }) => half === 0));
      if (zero) expect(compare(least, most)).toBe(0);
    }),
  );
});

test('a square root is rounded down, and by less than one step', () => {
  const square = (r: Rational) => multiply(r, r);
  fc.assert(
    fc.property(
      fc.bigInt({ min: 0n, max: 10n ** 30n }),
      fc.integer({ min: 1, max: 10_000 }),
      (n, d) => {
        const value = rational(`${n}/${d}`);
        const root = squareRootDown(value, 2);
        expect(compare(square(root), value)).toBeLessThanOrEqual(0);
        expect(compare(square(add(root, rational('0.01'))), value)).toBe(1);
      },
    ),
  );
  expect(() => squareRootDown(rational(-1), 2)).toThrow(RangeError);
});
