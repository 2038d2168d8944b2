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
import {
  add,
  compare,
  inProportion,
  type Rational,
  sign,
  subtract,
  ZERO,
} from '../quantity/rational.js';
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
  const ways = meetings(left, right, tolerance);
  if (left.length !== right.length) {
    return { outcome: 'fails', odd: oddPoint(left, right, ways) };
  }
  if (hasPairing(ways, (one) => one === 'holds')) return { outcome: 'holds', odd: null };
  const outcome = hasPairing(ways, (one) => one !== 'fails') ? 'open' : 'fails';
  return { outcome, odd: oddPoint(left, right, ways) };
}

/** Whether each point of the left meets each of the right: a row for each of the left. */
type Meetings = readonly (readonly Outcome[])[];

/** The edges of where a point may be, in whole numbers. */
interface Rectangle {
  readonly left: bigint;
  readonly right: bigint;
  readonly bottom: bigint;
  readonly top: bigint;
}

function meetings(
  left: readonly PlanePoint[],
  right: readonly PlanePoint[],
  { low, high }: Interval,
): Meetings {
  const edges = [...left, ...right].flatMap(({ x, y }) => [...endsOf(x), ...endsOf(y)]);
  const whole = inProportion([low ?? ZERO, high ?? ZERO, ...edges]);
  const [least = 0n, most = 0n, ...rest] = whole;
  const limit = {
    sure: low === null || sign(low) < 0 ? null : least * least,
    possible: high === null ? null : most * most,
  };
  const isNever = high !== null && sign(high) < 0;
  const all = [...left, ...right].map((_, index): Rectangle => {
    const [from = 0n, to = 0n, bottom = 0n, top = 0n] = rest.slice(index * 4, index * 4 + 4);
    return { left: from, right: to, bottom, top };
  });
  const others = all.slice(left.length);
  return all
    .slice(0, left.length)
    .map((a) => others.map((b) => (isNever ? 'fails' : nearEnough(a, b, limit))));
}

function endsOf({ low, high }: Interval): readonly [Rational, Rational] {
  if (low === null || high === null) throw new Error('a measured length has two ends');
  return [low, high];
}

interface Limit {
  /** Squares: up to which points surely meet, and beyond which they cannot; null for none. */
  readonly sure: bigint | null;
  readonly possible: bigint | null;
}

function nearEnough(a: Rectangle, b: Rectangle, { sure, possible }: Limit): Outcome {
  const across = gapOf(a.left, a.right, b.left, b.right);
  const up = gapOf(a.bottom, a.top, b.bottom, b.top);
  if (possible !== null && across.least ** 2n + up.least ** 2n > possible) return 'fails';
  return sure !== null && across.most ** 2n + up.most ** 2n <= sure ? 'holds' : 'open';
}

/** How far apart two numbers between these ends can lie, at least and at most. */
function gapOf(aLow: bigint, aHigh: bigint, bLow: bigint, bHigh: bigint) {
  const [over, under] = [aHigh - bLow, bHigh - aLow];
  // One of the two is not negative, since no range has its ends the wrong way round.
  if (over < 0n) return { least: -over, most: under };
  if (under < 0n) return { least: -under, most: over };
  const [, most] = over < under ? [over, under] : [under, over];
  return { least: 0n, most };
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
  ways: Meetings,
): OddPoint | null {
  const isOddLeft = (row: number) => ways[row]?.includes('holds') !== true;
  const isOddRight = (column: number) => !ways.some((row) => row[column] === 'holds');
  const own = left.find((_, row) => isOddLeft(row));
  if (own !== undefined) return { of: 'left', point: own, squaredDistance: nearest(own, right) };
  const other = right.find((_, column) => isOddRight(column));
  if (other === undefined) return null;
  return { of: 'right', point: other, squaredDistance: nearest(other, left) };
}

function nearest(own: PlanePoint, others: readonly PlanePoint[]): Rational | null {
  return others
    .map((other) => squaredDistance(own, other).least)
    .reduce<Rational | null>(
      (known, one) => (known === null || compare(one, known) < 0 ? one : known),
      null,
    );
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
