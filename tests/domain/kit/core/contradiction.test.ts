/**
 * Smallest contradictions and ways out of them, against a look at every set of demands; and the
 * sets that they are made of, against a look at every set of members.
 */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  contradictionOf,
  type DemandSolver,
} from '../../../../src/domain/kit/core/contradiction.js';
import { comesFirst, smallestHittingSet } from '../../../../src/domain/kit/core/hitting-set.js';
import { leastDoing } from '../../../../src/domain/kit/core/quick-xplain.js';

type Members = readonly number[];

/** Every set of members below a number, small ones first, then those whose members come first. */
function everySet(count: number): Members[] {
  const sets = Array.from({ length: 2 ** count }, (_, bits) =>
    Array.from({ length: count }, (_, member) => member).filter((member) => (bits >> member) & 1),
  );
  return sets.sort((a, b) => (comesFirst(a, b) ? -1 : 1));
}

const isWithin = (small: Members, large: Members): boolean =>
  small.every((one) => large.includes(one));

const hits = (set: Members, others: readonly Members[]): boolean =>
  others.every((other) => other.some((one) => set.includes(one)));

/** Sets of members below a number, none of them empty. */
const setsBelow = (count: number, most: number) =>
  fc.array(fc.subarray([...Array(count).keys()], { minLength: 1, maxLength: Math.min(count, 4) }), {
    maxLength: most,
  });

describe('the smallest set that hits others', () => {
  test('is the first that does, of all there are', () => {
    const cases = fc.integer({ min: 1, max: 8 }).chain((count) =>
      fc.record({
        count: fc.constant(count),
        sets: setsBelow(count, 8),
        passed: setsBelow(count, 4),
      }),
    );
    fc.assert(
      fc.property(cases, ({ count, sets, passed }) => {
        const first = everySet(count).find(
          (set) => hits(set, sets) && !passed.some((one) => isWithin(one, set)),
        );
        expect(smallestHittingSet(sets, passed)).toEqual(first ?? null);
      }),
      { numRuns: 2000 },
    );
  });
});

/** Demands that can hold together unless one of these conflicts is among them. */
function solverOf(count: number, conflicts: readonly Members[], budget = Infinity) {
  let solves = 0;
  const solver: DemandSolver = {
    count,
    met: (demands) => {
      solves += 1;
      if (solves > budget) return undefined;
      const some = [...demands].sort((a, b) => a - b);
      return conflicts.some((one) => isWithin(one, some)) ? null : demands;
    },
  };
  return { solver, solves: () => solves };
}

const contradictions = fc.integer({ min: 1, max: 8 }).chain((count) =>
  fc.record({
    count: fc.constant(count),
    conflicts: fc.array(fc.subarray([...Array(count).keys()], { minLength: 1 }), {
      minLength: 1,
      maxLength: 7,
    }),
  }),
);

/** What must be found, by a look at every set. */
function expected(count: number, conflicts: readonly Members[]) {
  const sets = everySet(count);
  const all = [...Array(count).keys()];
  const isPossible = (set: Members) => !conflicts.some((one) => isWithin(one, set));
  const conflict = sets.find((set) => !isPossible(set)) ?? [];
  const waysOut = sets.filter((set) => isPossible(all.filter((one) => !set.includes(one))));
  const least = waysOut.filter(
    (set) => !waysOut.some((other) => other.length < set.length && isWithin(other, set)),
  );
  return { conflict, least };
}

describe('demands that cannot hold together', () => {
  test('the smallest conflict, every smallest way out, and one with each of its demands', () => {
    fc.assert(
      fc.property(contradictions, ({ count, conflicts }) => {
        const found = contradictionOf(solverOf(count, conflicts).solver);
        const { conflict, least } = expected(count, conflicts);
        expect(found).toMatchObject({ conflict, isSmallest: true, isAllSmallest: true });
        const size = least[0]?.length;
        const smallest = least.filter(({ length }) => length === size);
        expect(found.corrections.slice(0, smallest.length)).toEqual(smallest);
        for (const way of found.corrections) expect(least).toContainEqual(way);
        for (const demand of conflict) {
          const sizes = least.filter((way) => way.includes(demand)).map(({ length }) => length);
          const own = found.corrections.filter((way) => way.includes(demand));
          expect(Math.min(...own.map(({ length }) => length))).toBe(Math.min(...sizes));
        }
      }),
      { numRuns: 2000 },
    );
  });

  test('what is told after the work was cut short is true as far as it goes', () => {
    const cut = fc.tuple(contradictions, fc.integer({ min: 0, max: 30 }));
    let cutShort = 0;
    fc.assert(
      fc.property(cut, ([{ count, conflicts }, budget]) => {
        const found = contradictionOf(solverOf(count, conflicts, budget).solver);
        const { least } = expected(count, conflicts);
        expect(conflicts.some((one) => isWithin(one, found.conflict))).toBe(true);
        for (const way of found.corrections) expect(least).toContainEqual(way);
        if (found.isSmallest) {
          expect(found.conflict).toEqual(expected(count, conflicts).conflict);
        } else cutShort += 1;
      }),
      { numRuns: 2000 },
    );
    expect(cutShort).toBeGreaterThan(100);
  });

  test('dropping one of two demands may free nothing', () => {
    // Want a gearbox, keep the final drive; want large hubs, keep the wheels, avoid other wheels.
    const conflicts = [
      [0, 1],
      [2, 3, 4],
    ];
    const found = contradictionOf(solverOf(5, conflicts).solver);
    expect(found.conflict).toEqual([0, 1]);
    expect(found.corrections).toEqual([
      [0, 2],
      [0, 3],
      [0, 4],
      [1, 2],
      [1, 3],
      [1, 4],
    ]);
  });

  test('what can hold together is no contradiction', () => {
    expect(() => contradictionOf(solverOf(3, []).solver)).toThrow('all demands can hold together');
  });

  test('eleven demands take few solves', () => {
    const { solver, solves } = solverOf(11, [[0, 4]]);
    expect(contradictionOf(solver).conflict).toEqual([0, 4]);
    expect(solves()).toBeLessThan(40);
  });
});

describe('the least part of a list that still does it', () => {
  const lists = fc.record({
    count: fc.integer({ min: 0, max: 12 }),
    needed: fc.array(fc.array(fc.nat(11), { maxLength: 4 }), { minLength: 1, maxLength: 4 }),
  });

  test('does it, and nothing of it can be left out', () => {
    let cited = 0;
    fc.assert(
      fc.property(lists, ({ count, needed }) => {
        const items = [...Array(count).keys()];
        const does = (some: Members) => needed.some((one) => isWithin(one, some));
        fc.pre(does(items));
        const least = leastDoing(items, does) ?? [];
        expect(does(least)).toBe(true);
        for (const one of least) expect(does(least.filter((other) => other !== one))).toBe(false);
        expect(least).toEqual([...least].sort((a, b) => a - b));
        if (least.length > 1) cited += 1;
      }),
      { numRuns: 2000 },
    );
    expect(cited).toBeGreaterThan(50);
  });

  test('the earlier ones are kept rather', () => {
    const does = (some: Members) => some.includes(1) && (some.includes(3) || some.includes(5));
    expect(leastDoing([0, 1, 2, 3, 4, 5], does)).toEqual([1, 3]);
  });

  test('nothing is told where nobody can tell', () => {
    expect(leastDoing([0, 1, 2], (some) => (some.length === 0 ? false : undefined))).toBeNull();
  });
});
