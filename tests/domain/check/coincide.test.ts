/**
 * Two sets of points, against every way of pairing them.
 */

import fc from 'fast-check';
import { expect, test } from 'vitest';
import { coincidence, knownTo } from '../../../src/domain/check/coincide.js';
import { closed, point } from '../../../src/domain/quantity/interval.js';
import type { PlanePoint } from '../../../src/domain/quantity/plane-point.js';
import { rational } from '../../../src/domain/quantity/rational.js';

interface Place {
  readonly x: number;
  readonly y: number;
  readonly half: number;
}

const place = fc.record({
  x: fc.integer({ min: 0, max: 4 }),
  y: fc.integer({ min: 0, max: 4 }),
  half: fc.constantFrom(0, 0, 0, 1),
});
const places = fc.array(place, { minLength: 1, maxLength: 4 });

function pointAt({ x, y, half }: Place): PlanePoint {
  const range = (centre: number) => closed(rational(centre - half), rational(centre + half));
  return { text: `${x}, ${y} mm`, x: range(x), y: range(y) };
}

/** All orders of a list. */
function orders<Item>(items: readonly Item[]): Item[][] {
  if (items.length === 0) return [[]];
  return items.flatMap((item, index) =>
    orders(items.filter((_, other) => other !== index)).map((rest) => [item, ...rest]),
  );
}

/** The least and greatest squared distance, by trying the corners and the overlap. */
function distances(a: Place, b: Place): { least: number; most: number } {
  const gap = (p: number, q: number, half: number) => {
    const apart = Math.abs(p - q);
    return { least: Math.max(0, apart - half), most: apart + half };
  };
  const [across, up] = [gap(a.x, b.x, a.half + b.half), gap(a.y, b.y, a.half + b.half)];
  return {
    least: across.least ** 2 + up.least ** 2,
    most: across.most ** 2 + up.most ** 2,
  };
}

test('coincide as the best of all pairings does', () => {
  const seen = { holds: 0, open: 0, fails: 0 };
  const tolerance = fc.constantFrom(0, 1, 2, 3);
  fc.assert(
    fc.property(places, places, tolerance, fc.boolean(), (left, right, limit, isSame) => {
      const others = isSame ? [...left].reverse() : right;
      const { outcome, odd } = coincidence(
        left.map(pointAt),
        others.map(pointAt),
        point(rational(limit)),
      );
      const pairings = left.length === others.length ? orders(others) : [];
      const all = (test: (a: Place, b: Place) => boolean) =>
        pairings.some((order) =>
          order.every((other, index) => {
            const own = left[index];
            return own !== undefined && test(own, other);
          }),
        );
      const isSure = all((a, b) => distances(a, b).most <= limit ** 2);
      const isPossible = all((a, b) => distances(a, b).least <= limit ** 2);
      expect(outcome).toBe(isSure ? 'holds' : isPossible ? 'open' : 'fails');
      if (outcome === 'holds') expect(odd).toBeNull();
      seen[outcome] += 1;
    }),
    { numRuns: 600 },
  );
  expect(Math.min(seen.holds, seen.open, seen.fails)).toBeGreaterThan(30);
});

test('a tolerance below zero, of a bolt that is thicker than its hole, lets nothing pass', () => {
  const points = [pointAt({ x: 1, y: 1, half: 0 })];
  expect(coincidence(points, points, point(rational(-1))).outcome).toBe('fails');
  expect(coincidence(points, points, closed(rational(-1), rational(1))).outcome).toBe('open');
});

test('the point without a partner is named, with the distance to the nearest', () => {
  const a = pointAt({ x: 0, y: 0, half: 0 });
  const b = pointAt({ x: 10, y: 0, half: 0 });
  const c = pointAt({ x: 13, y: 4, half: 0 });
  const limit = point(rational(1));
  const moved = coincidence([a, b], [a, c], limit);
  expect([moved.odd?.of, moved.odd?.point.text]).toEqual(['left', '10, 0 mm']);
  expect(moved.odd?.squaredDistance?.valueOf()).toBe(25);
  const more = coincidence([a], [a, c], limit);
  expect([more.outcome, more.odd?.of, more.odd?.point.text]).toEqual([
    'fails',
    'right',
    '13, 4 mm',
  ]);
  expect(coincidence([a], [], limit).odd?.squaredDistance).toBeNull();
});

test('points known more finely are squares about their best estimates', () => {
  const known = [pointAt({ x: 3, y: 4, half: 2 }), pointAt({ x: 3, y: 4, half: 0 })];
  const [fine, exact] = knownTo(known, rational('0.1'));
  expect([fine?.x.low?.valueOf(), fine?.y.high?.valueOf()]).toEqual([2.9, 4.1]);
  expect([exact?.x.low?.valueOf(), exact?.y.high?.valueOf()]).toEqual([3, 4]);
});
