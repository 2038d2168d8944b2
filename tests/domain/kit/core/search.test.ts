/**
 * The search against a look at every assignment, over small random problems: the same results in
 * the order of their costs, a bound that is never too high, whatever the budget, and whatever the
 * order in which the problem is written down.
 */

import { describe, expect, test } from 'vitest';
import {
  type Budget,
  type Found,
  type Phase,
  STATE,
} from '../../../../src/domain/kit/core/problem.js';
import { Search } from '../../../../src/domain/kit/core/search.js';
import { Tables } from '../../../../src/domain/kit/core/tables.js';
import { everyResult } from './every-assignment.js';
import { randomProblem } from './random-problem.js';
import { reordered } from './reordered.js';

const PHASES: readonly Phase[] = ['proven', 'open'];
const ENOUGH = 1e6;

/** By cost, then as the values stand: for comparing alone, the search has its own order. */
function ordered(results: readonly Found[]): string {
  const sorted = results.toSorted((one, other) => {
    if (one.cost !== other.cost) return one.cost - other.cost;
    return one.values.join() < other.values.join() ? -1 : 1;
  });
  return sorted
    .map(({ values, cost, open }) => `${cost}: ${values.join(' ')} (${open.join(' ')})`)
    .join('\n');
}

/** All that comes until there is no more, or no budget; the bound is never above what comes. */
function searched(search: Search): Found[] {
  const results: Found[] = [];
  for (;;) {
    const { bound } = search;
    const found = search.next();
    if (found === null) return results;
    if (bound > found.cost) throw new Error(`the bound was ${bound}, then came ${found.cost}`);
    if (found.cost < (results.at(-1)?.cost ?? 0)) throw new Error('cheaper than the one before');
    results.push(found);
  }
}

describe('finds just what a look at every assignment finds', () => {
  test.each(PHASES)('in the phase %s', (phase) => {
    let several = 0;
    for (let seed = 1; seed <= 2000; seed += 1) {
      const problem = randomProblem(seed);
      const search = new Search(problem, phase, { left: ENOUGH });
      const results = searched(search);
      expect(ordered(results), `seed ${seed}`).toBe(ordered(everyResult(problem, phase)));
      expect(search.isExhausted && search.bound === Infinity, `seed ${seed}`).toBe(true);
      if (results.length > 2) several += 1;
    }
    // Problems with hardly a result would show little.
    expect(several).toBeGreaterThan(60);
  });

  test('where both phases share what has been asked', () => {
    for (let seed = 1; seed <= 500; seed += 1) {
      const problem = randomProblem(seed);
      const tables = new Tables(problem);
      for (const phase of PHASES) {
        const results = searched(new Search(tables, phase, { left: ENOUGH }));
        expect(ordered(results), `seed ${seed}`).toBe(ordered(everyResult(problem, phase)));
      }
    }
  });
});

describe('with any budget', () => {
  test.each(PHASES)('what is found is right, and so is the bound, in the phase %s', (phase) => {
    for (let seed = 1; seed <= 250; seed += 1) {
      const problem = randomProblem(seed);
      const budget: Budget = { left: ENOUGH };
      const all = searched(new Search(problem, phase, budget));
      const steps = ENOUGH - budget.left;
      for (let left = 0; left <= Math.min(steps + 1, 120); left += 1) {
        const short: Budget = { left };
        const search = new Search(problem, phase, short);
        const results = searched(search);
        const what = `seed ${seed}, ${left} of ${steps} steps`;
        expect(results, what).toEqual(all.slice(0, results.length));
        expect(search.bound <= (all[results.length]?.cost ?? Infinity), what).toBe(true);
        expect(search.isExhausted, what).toBe(search.bound === Infinity);
        if (left > steps) expect(search.isExhausted, what).toBe(true);
        if (!search.isExhausted) expect(short.left, what).toBe(0);
        // More budget goes on where it ended.
        short.left = ENOUGH;
        expect([...results, ...searched(search)], what).toEqual(all);
      }
    }
  });

  test('no budget gives nothing, and says so', () => {
    const search = new Search(randomProblem(1), 'proven', { left: 0 });
    expect(search.next()).toBeNull();
    expect(search.isExhausted).toBe(false);
    expect(search.bound).toBe(0);
  });
});

test('however the problem is written down, the same is found', () => {
  for (let seed = 1; seed <= 1000; seed += 1) {
    const problem = randomProblem(seed);
    const other = reordered(problem, seed);
    for (const phase of PHASES) {
      const results = searched(new Search(problem, phase, { left: ENOUGH }));
      const others = searched(new Search(other.problem, phase, { left: ENOUGH }));
      expect(ordered(others.map(other.named)), `seed ${seed}`).toBe(ordered(results));
    }
  }
});

test('the same problem is searched in the same way again', () => {
  for (let seed = 1; seed <= 300; seed += 1) {
    for (const phase of PHASES) {
      const [one, other] = [{ left: ENOUGH }, { left: ENOUGH }];
      const tables = new Tables(randomProblem(seed));
      const first = searched(new Search(tables, phase, one));
      expect(searched(new Search(tables, phase, other))).toEqual(first);
      expect(other).toEqual(one);
    }
  }
});

test('without variables there is one assignment', () => {
  const prices = { atLeast: [], floor: () => 0, exact: () => 0 };
  const empty = { variables: [], relations: [], prices };
  expect(searched(new Search(empty, 'proven', { left: 9 }))).toEqual([
    { values: [], cost: 0, open: [] },
  ]);
  const never = {
    name: 'never',
    scope: [],
    classes: [],
    ask: () => ({ state: STATE.open, blame: [] }),
  };
  const open = { ...empty, relations: [never] };
  expect(searched(new Search(open, 'proven', { left: 9 }))).toEqual([]);
  expect(searched(new Search(open, 'open', { left: 9 }))).toEqual([
    { values: [], cost: 0, open: [0] },
  ]);
});
