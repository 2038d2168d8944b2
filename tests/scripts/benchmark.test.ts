/**
 * A tiny run of the benchmark: everybody agrees on every answer, and what is counted is the same
 * at each run. How long anything takes is not asked.
 */

import { beforeAll, describe, expect, test } from 'vitest';
import {
  conflictCells,
  explained,
  measuredConflicts,
  proofOf,
} from '../../scripts/benchmark/conflict-cells.js';
import { conflictInstance } from '../../scripts/benchmark/conflict-instance.js';
import { instance } from '../../scripts/benchmark/instance.js';
import { loadedHighs, type Opponent, yalps } from '../../scripts/benchmark/opponents.js';
import { type Cell, measuredCell, optimumCells } from '../../scripts/benchmark/optimum-cells.js';
import { measuredRoutes, routeCells } from '../../scripts/benchmark/route-cells.js';
import { routeInstance } from '../../scripts/benchmark/route-instance.js';

const extent = { seeds: 2, rounds: 1, seconds: 5 };
const plain = { parts: 10, extra: 2, allowed: 0.25, isPlanted: true, isPriced: true } as const;

let highs: Opponent;
beforeAll(async () => {
  highs = await loadedHighs();
});

describe('the least cost', () => {
  const cells = (['few', 'rand', 'full'] as const).map((sort): Cell => {
    const problem = (seed: number) => instance({ ...plain, sort, positions: 7 }, seed);
    return { name: sort, group: sort, isQuick: true, without: null, problem };
  });

  test.each(cells)('$name: all agree', (cell) => {
    const opponents = new Map([
      ['YALPS', yalps],
      ['HiGHS', highs],
    ]);
    const { mismatches, opponents: others, cells: looked } = measuredCell(cell, extent, opponents);
    expect(mismatches).toEqual([]);
    expect(others.map(({ agreed }) => agreed)).toEqual([2, 2]);
    expect(looked).toBe(measuredCell(cell, extent, new Map()).cells);
  });

  test('an opponent that says something else is a mismatch', () => {
    const wrong: Opponent = () => ({ cost: 1, taken: () => 0 });
    const { mismatches } = measuredCell(cells[0]!, extent, new Map([['wrong', wrong]]));
    expect(mismatches).toHaveLength(2);
  });
});

test('the first ten routes cost what ten least costs with cuts do', () => {
  const shape = { positions: 7, parts: 5, extra: 2, allowed: 0.4 };
  const cell = {
    name: 'tiny',
    isQuick: true,
    instance: (seed: number) => routeInstance(shape, seed),
  };
  const { mismatches, highs: other, found } = measuredRoutes(cell, extent, highs);
  expect(mismatches).toEqual([]);
  expect(other).toMatchObject({ agreed: 2, unfinished: 0 });
  expect(found[0]).toBeGreaterThan(1);
});

describe('demands that cannot hold together', () => {
  const shape = { positions: 14, parts: 6, extra: 5, allowed: 0.25 };
  const cell = (isUnplanted: boolean) => {
    return { name: 'tiny', isQuick: true, shape: { ...shape, isUnplanted } };
  };

  test.each([false, true])('are agreed on, and how many must go; unplanted: %s', (isUnplanted) => {
    const result = measuredConflicts(cell(isUnplanted), extent, highs);
    expect(result.mismatches).toEqual([]);
    expect(result).toMatchObject({ cut: 0, highs: { agreed: 4, gaveUp: 0 } });
    expect(result.possible).toBeLessThan(2);
    expect(result.solves[0]).toBeGreaterThan(10);
  });

  test('an opponent that says something else is a mismatch', () => {
    const wrong: Opponent = () => ({ cost: 7, taken: () => 0 });
    const { mismatches } = measuredConflicts(cell(false), extent, wrong);
    expect(mismatches).toHaveLength(4);
  });

  test('take few solves and steps where they exclude each other in many rings', () => {
    const wide = { positions: 40, parts: 50, extra: 60, allowed: 0.25, isUnplanted: true };
    const one = conflictInstance(wide, 1);
    const { isPossible, steps } = proofOf(one);
    expect(isPossible).toBe(false);
    // Each bound is about twice what it takes.
    expect(steps).toBeLessThanOrEqual(190);
    const { contradiction, ...work } = explained(one);
    expect(contradiction).toMatchObject({ isSmallest: true, isAllSmallest: true });
    expect(work.solves).toBeLessThanOrEqual(160);
    expect(work.steps).toBeLessThanOrEqual(18_000);
  });
});

test('every cell has its own name, and some are quick', () => {
  for (const cells of [optimumCells(), routeCells(), conflictCells()]) {
    expect(new Set(cells.map(({ name }) => name)).size).toBe(cells.length);
    expect(cells.some(({ isQuick }) => isQuick)).toBe(true);
  }
});
