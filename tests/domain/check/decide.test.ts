/**
 * Deciding requirements over unknowns and choices, against a brute-force reading of "for every
 * unknown there is a choice" on a grid that is exact for the integer problems made here: all
 * slopes are -1, 0 or 1 and all bounds are whole, so a choice exists iff a whole one does.
 */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Check } from '../../../src/domain/check/check.js';
import { decide } from '../../../src/domain/check/decide.js';
import type { Prepared } from '../../../src/domain/check/evaluate.js';
import type { Unknown } from '../../../src/domain/check/evaluator.js';
import {
  constant,
  type Polynomial,
  plus,
  timesNumber,
  unknownOf,
} from '../../../src/domain/check/polynomial.js';
import { closed } from '../../../src/domain/quantity/interval.js';
import { rational } from '../../../src/domain/quantity/rational.js';

interface Line {
  readonly u: number;
  readonly v: number;
  readonly c: number;
  readonly rest: number;
}

interface Problem {
  readonly u: readonly [number, number];
  readonly v: readonly [number, number];
  readonly c: readonly [number, number];
  readonly lines: readonly Line[];
}

const slope = fc.integer({ min: -1, max: 1 });
const range = fc
  .tuple(fc.integer({ min: -4, max: 4 }), fc.nat(4))
  .map(([low, width]): [number, number] => [low, low + width]);
const problem: fc.Arbitrary<Problem> = fc.record({
  u: range,
  v: range,
  c: range,
  lines: fc.array(
    fc.record({ u: slope, v: slope, c: slope, rest: fc.integer({ min: -8, max: 8 }) }),
    { minLength: 1, maxLength: 4 },
  ),
});

function prepared({ u, v, c, lines }: Problem): Prepared[] {
  const unknown = (key: string, [low, high]: readonly [number, number], isChoice: boolean) =>
    [
      key,
      { key, domain: closed(rational(low), rational(high)), isChoice, readings: [] } as Unknown,
    ] as const;
  const unknowns = new Map([unknown('u', u, false), unknown('v', v, false), unknown('c', c, true)]);
  return lines.map((line) => {
    let polynomial: Polynomial = constant(rational(line.rest));
    for (const key of ['u', 'v', 'c'] as const) {
      polynomial = plus(polynomial, timesNumber(unknownOf(key), rational(line[key])));
    }
    const worlds = [{ requirements: [{ polynomial, reason: 'too-small' }] }];
    const left = { is: 'number', polynomial } as const;
    return { check: {} as Check, worlds, left, right: null, readings: [], unknowns, points: null };
  });
}

function* whole([low, high]: readonly [number, number]) {
  for (let value = low; value <= high; value += 1) yield value;
}

/** Half steps of the unknowns: a requirement that is met at all whole corners is met between. */
function byHand({ u, v, c, lines }: Problem): 'holds' | 'open' | 'fails' {
  let some = false;
  let all = true;
  for (const a of whole([u[0] * 2, u[1] * 2])) {
    for (const b of whole([v[0] * 2, v[1] * 2])) {
      let found = false;
      for (const chosen of whole([c[0] * 2, c[1] * 2])) {
        found ||= lines.every(
          (line) => line.u * a + line.v * b + line.c * chosen + line.rest * 2 >= 0,
        );
      }
      some ||= found;
      all &&= found;
    }
  }
  return all ? 'holds' : some ? 'open' : 'fails';
}

describe('deciding requirements together', () => {
  const seen = { holds: 0, open: 0, fails: 0 };

  it('comes to what trying everything comes to', () => {
    fc.assert(
      fc.property(problem, (one) => {
        const expected = byHand(one);
        seen[expected] += 1;
        expect(decide(prepared(one)).outcome).toBe(expected);
      }),
      { numRuns: 3000, seed: 20_26 },
    );
    expect(Math.min(seen.holds, seen.open, seen.fails)).toBeGreaterThan(100);
  });

  it('names the two checks that leave nothing between them', () => {
    // c >= 7 and c <= 5, with c from 0 to 10.
    const lines = [
      { u: 0, v: 0, c: 1, rest: -7 },
      { u: 0, v: 0, c: -1, rest: 5 },
    ];
    const one = { u: [0, 0], v: [0, 0], c: [0, 10], lines } as const;
    const { outcome, from } = decide(prepared(one));
    expect(outcome).toBe('fails');
    expect(from).toEqual([0, 1]);
  });

  it('says what to order whatever the unknowns are', () => {
    // u + c >= 10 and u + c <= 14, u from 2 to 4: c from 8 to 10.
    const lines = [
      { u: 1, v: 0, c: 1, rest: -10 },
      { u: -1, v: 0, c: -1, rest: 14 },
    ];
    const one = { u: [2, 4], v: [0, 0], c: [0, 20], lines } as const;
    const order = decide(prepared(one)).orders.get('c');
    expect(order?.low?.toFraction()).toBe('8');
    expect(order?.high?.toFraction()).toBe('10');
  });

  it('names no order where the unknowns must be measured first, though a choice exists', () => {
    // c = 10 - u exactly.
    const lines = [
      { u: 1, v: 0, c: 1, rest: -10 },
      { u: -1, v: 0, c: -1, rest: 10 },
    ];
    const one = { u: [2, 4], v: [0, 0], c: [0, 20], lines } as const;
    const { outcome, orders } = decide(prepared(one));
    expect(outcome).toBe('holds');
    expect(orders.get('c')).toBeNull();
  });
});
