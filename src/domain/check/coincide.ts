/**
 * Whether two sets of points lie on one another: each point of one has a point of the other of
 * its own, no farther away than a tolerance. In what order somebody wrote them down is no matter.
 *
 * Two points meet for certain, never, or perhaps, since each is a rectangle of places where it
 * may be. The sets coincide if pairs can be formed of points that meet for certain, and do not if
 * none can be formed even with those that perhaps meet; else it is open. Points that lie farther
 * apart than they are uncertain, as bolt holes do, lose nothing by this.
 */

import { closed, type Interval, intersect, middle } from '../quantity/interval.js';
import { type PlanePoint, squaredDistance } from '../quantity/plane-point.js';
import { add, compare, multiply, type Rational, sign, subtract } from '../quantity/rational.js';
import type { Outcome } from './state.js';

export interface Coincidence {
  readonly outcome: Outcome;
  /** The first point without a partner, where that can be told, and the squared distance to the
   * nearest point of the other set. */
  readonly odd: OddPoint | null;
}

export interface OddPoint {
  readonly of: 'left' | 'right';
  readonly point: PlanePoint;
  /** At least; null where the other set is empty. */
  readonly squaredDistance: Rational | null;
}

export function coincidence(
  left: readonly PlanePoint[],
  right: readonly PlanePoint[],
  tolerance: Interval,
): Coincidence {
  if (left.length !== right.length) {
    return { outcome: 'fails', odd: oddPoint(left, right, tolerance) };
  }
  const outcomes = left.map((a) => right.map((b) => nearEnough(a, b, tolerance)));
  if (hasPairing(outcomes, (one) => one === 'holds')) return { outcome: 'holds', odd: null };
  const outcome = hasPairing(outcomes, (one) => one !== 'fails') ? 'open' : 'fails';
  return { outcome, odd: oddPoint(left, right, tolerance) };
}

function nearEnough(a: PlanePoint, b: PlanePoint, tolerance: Interval): Outcome {
  const { low, high } = tolerance;
  if (high !== null && sign(high) < 0) return 'fails';
  const { least, most } = squaredDistance(a, b);
  if (high !== null && compare(least, multiply(high, high)) > 0) return 'fails';
  const isSure = low !== null && sign(low) >= 0 && compare(most, multiply(low, low)) <= 0;
  return isSure ? 'holds' : 'open';
}

/** Whether each row can be given a column of its own that passes (augmenting paths). */
function hasPairing(
  table: readonly (readonly Outcome[])[],
  passes: (outcome: Outcome) => boolean,
): boolean {
  const rowOf = new Map<number, number>();
  const place = (row: number, seen: Set<number>): boolean => {
    for (const [column, outcome] of (table[row] ?? []).entries()) {
      if (seen.has(column) || !passes(outcome)) continue;
      seen.add(column);
      const other = rowOf.get(column);
      if (other !== undefined && !place(other, seen)) continue;
      rowOf.set(column, row);
      return true;
    }
    return false;
  };
  return table.every((_, row) => place(row, new Set()));
}

/** A point that is far from all others: what a person would look at first. */
function oddPoint(
  left: readonly PlanePoint[],
  right: readonly PlanePoint[],
  tolerance: Interval,
): OddPoint | null {
  for (const [of, points, others] of [
    ['left', left, right],
    ['right', right, left],
  ] as const) {
    for (const own of points) {
      if (others.some((other) => nearEnough(own, other, tolerance) === 'holds')) continue;
      const distances = others.map((other) => squaredDistance(own, other).least);
      const nearest = distances.reduce<Rational | null>(
        (known, one) => (known === null || compare(one, known) < 0 ? one : known),
        null,
      );
      return { of, point: own, squaredDistance: nearest };
    }
  }
  return null;
}

/** The points as they would be if each was known to so much about its best estimate, or better. */
export function knownTo(points: readonly PlanePoint[], half: Rational): PlanePoint[] {
  return points.map(({ text, x, y }) => ({ text, x: around(x, half), y: around(y, half) }));
}

function around(range: Interval, half: Rational): Interval {
  const centre = middle(range);
  if (centre === null) return range;
  return intersect(range, closed(subtract(centre, half), add(centre, half))) ?? range;
}
