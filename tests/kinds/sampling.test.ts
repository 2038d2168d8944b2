/**
 * What a check says of intervals, tried on the values in them: a check that holds does so for
 * every value that the records allow, and one that fails fails for every one.
 *
 * Faces are drawn from the fixtures, with values moved, widened, swapped or left out; then exact
 * values are drawn from what is recorded, and any value at all for what is not, and judged again.
 */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { InterfaceRecord } from '../../src/domain/catalogue/document.js';
import type { BuiltInKind } from '../../src/domain/kinds/kind.js';
import { BUILT_IN_KINDS } from '../../src/domain/kinds/registry.js';
import { closed, middle } from '../../src/domain/quantity/interval.js';
import type { PlanePoint } from '../../src/domain/quantity/plane-point.js';
import {
  absolute,
  add,
  exactText,
  fraction,
  multiply,
  type Rational,
  rational,
  subtract,
} from '../../src/domain/quantity/rational.js';
import { type Meeting, meet } from './bench.js';
import { allFixtures, type Fixture } from './fixture.js';
import { exactly, numbersOf, pointsOf, type Recorded, spread } from './restating.js';

type Pick = <T>(options: readonly T[]) => T;
type Faces = readonly [InterfaceRecord, InterfaceRecord];

/** Moves and half-widths that land inside, on and outside the limits of the kinds. */
const MOVES = ['-0.5', '-0.1', '-0.02', '0', '0', '0', '0.02', '0.1', '0.5'].map(rational);
const HALVES = ['0', '0', '0.01', '0.05', '0.1', '1'].map(rational);
const SAMPLES = 4;

const files = await allFixtures();

describe.each(BUILT_IN_KINDS.map((kind) => [kind.id, kind] as const))('%s', (id, kind) => {
  const fixtures = files.filter((file) => file.kind === id).flatMap((file) => file.fixtures);

  test('a check decides for each single value as for all of them', () => {
    const seen = { holds: 0, open: 0, fails: 0 };
    fc.assert(
      fc.property(fc.gen(), (gen) => {
        const pick: Pick = (options) => gen(fc.constantFrom<unknown[]>, ...options) as never;
        const faces = pick(fixtures).faces.map((face) => disturbed(kind, face, fixtures, pick));
        const [left, right] = faces;
        if (left === undefined || right === undefined) throw new Error('there are two faces');
        const meeting = meet(left, right);
        for (const { outcome } of meeting.checks.values()) seen[outcome] += 1;
        for (let sample = 0; sample < SAMPLES; sample += 1) {
          const exact = pointsIn(kind, [left, right], fixtures, pick);
          compare(meeting, meet(...exact));
        }
      }),
      { numRuns: 60 },
    );
    // The generator must really reach all three outcomes, or the property says nothing.
    expect(Math.min(seen.holds, seen.open, seen.fails)).toBeGreaterThan(10);
  });
});

function compare(meeting: Meeting, exact: Meeting): void {
  // Where exact values lead to another pick, the checks are of other values: only the whole counts.
  const isSamePick = meeting.picks.join() === exact.picks.join();
  for (const [check, { outcome }] of isSamePick ? meeting.checks : []) {
    const sampled = exact.checks.get(check)?.outcome;
    if (outcome === 'fails') expect([check, sampled]).toEqual([check, 'fails']);
    // A condition that was open may turn out not to apply, which breaks nothing.
    if (outcome === 'holds') expect(['holds', undefined]).toContain(sampled);
  }
  if (meeting.outcome !== 'open') expect(exact.outcome).toBe(meeting.outcome);
  expect(exact.outcome).not.toBe('open');
}

/** The values that the fixtures record for a parameter. */
function pool(parameter: string, fixtures: readonly Fixture[]): unknown[] {
  const values = fixtures.flatMap(({ faces }) => faces.map((face) => face[parameter]));
  return [...new Set(values.filter((value) => value !== undefined))];
}

/** A face with numbers moved and widened, and some values swapped or not recorded. */
function disturbed(
  kind: BuiltInKind,
  face: InterfaceRecord,
  fixtures: readonly Fixture[],
  pick: Pick,
): InterfaceRecord {
  const changed: Record<string, unknown> = { ...face };
  for (const { parameter, type, unit, interval } of numbersOf(kind, face)) {
    const centre = middle(interval);
    if (type === 'count' || centre === null) continue;
    const { value, half } = type === 'ratio' ? scaled(centre, pick) : shifted(centre, pick);
    changed[parameter] = spread(closed(subtract(value, half), add(value, half)), unit);
  }
  for (const { parameter, points } of pointsOf(kind, face)) {
    changed[parameter] = points.map((one) => textOf(moved(one, pick)));
  }
  for (const parameter of Object.keys(kind.parameters)) {
    if (face[parameter] === undefined) continue;
    const fate = pick(['kept', 'kept', 'kept', 'kept', 'kept', 'kept', 'lost', 'swapped']);
    if (fate === 'lost') delete changed[parameter];
    if (fate === 'swapped') changed[parameter] = pick(pool(parameter, fixtures));
  }
  return changed;
}

function shifted(centre: Rational, pick: Pick): { value: Rational; half: Rational } {
  return { value: absolute(add(centre, pick(MOVES))), half: pick(HALVES) };
}

/** A ratio stays above zero: it is moved and widened by shares of itself. */
function scaled(centre: Rational, pick: Pick): { value: Rational; half: Rational } {
  const value = multiply(centre, add(rational(1), multiply(rational('0.1'), pick(MOVES))));
  return { value, half: multiply(value, multiply(rational('0.1'), pick(HALVES))) };
}

/** A point moved and widened in both directions. */
function moved({ text, x, y }: PlanePoint, pick: Pick): PlanePoint {
  const half = pick(HALVES);
  const [across, up] = [x, y].map((range) => {
    const centre = middle(range);
    if (centre === null) throw new Error('a recorded interval has two ends');
    const value = add(centre, pick(MOVES));
    return closed(subtract(value, half), add(value, half));
  });
  if (across === undefined || up === undefined) throw new Error('a point has two coordinates');
  return { text, x: across, y: up };
}

function textOf({ x, y }: PlanePoint): string {
  return `${spread(x, '').trim()}, ${spread(y, 'mm')}`;
}

/** One exact value for each that a face records, and for each that it would have to record. */
function pointsIn(
  kind: BuiltInKind,
  faces: Faces,
  fixtures: readonly Fixture[],
  pick: Pick,
): [InterfaceRecord, InterfaceRecord] {
  const [left, right] = faces.map((face) => {
    const exact: Record<string, unknown> = { ...face };
    for (const [parameter, { optional, of, unless }] of Object.entries(kind.parameters)) {
      const isElsewhere = of !== undefined && of !== face.side;
      if (optional === true || isElsewhere || face[parameter] !== undefined) continue;
      if (unless?.every((other) => isRecorded(kind, faces, other))) continue;
      exact[parameter] = pick(pool(parameter, fixtures));
    }
    for (const { parameter, points } of pointsOf(kind, exact)) {
      exact[parameter] = points.map(({ x, y }) => {
        const [across, up] = [x, y].map((interval) => exactText(valueIn({ interval }, pick)));
        return `${across} ±0, ${up} ±0 mm`;
      });
    }
    for (const number of numbersOf(kind, exact)) {
      exact[number.parameter] = exactly(number, valueIn(number, pick));
    }
    return exact;
  });
  if (left === undefined || right === undefined) throw new Error('there are two faces');
  return [left, right];
}

/** Whether all the ends that have this parameter record it. */
function isRecorded(kind: BuiltInKind, faces: Faces, parameter: string): boolean {
  const of = kind.parameters[parameter]?.of;
  return faces.every((face) => {
    return face[parameter] !== undefined || (of !== undefined && of !== face.side);
  });
}

/** An end of the interval, its middle, or some value between. */
function valueIn({ interval }: { readonly interval: Recorded['interval'] }, pick: Pick): Rational {
  const { low, high } = interval;
  if (low === null || high === null) throw new Error('a recorded interval has two ends');
  const share = pick([0n, 0n, 500n, 1000n, 1000n, 137n, 861n]);
  return add(low, multiply(subtract(high, low), fraction(share, 1000n)));
}
