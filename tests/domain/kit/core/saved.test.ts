/**
 * A problem that is saved with what was asked of it, and searched again from that alone.
 */

import { describe, expect, test } from 'vitest';
import type { Found, Phase, Problem } from '../../../../src/domain/kit/core/problem.js';
import { replay, save } from '../../../../src/domain/kit/core/saved.js';
import { Search } from '../../../../src/domain/kit/core/search.js';
import { Tables } from '../../../../src/domain/kit/core/tables.js';
import { randomProblem } from './random-problem.js';

interface Run {
  readonly results: readonly Found[];
  readonly steps: number;
  readonly bound: number;
}

function run(problem: Problem | Tables, phase: Phase, steps: number): Run {
  const budget = { left: steps };
  const search = new Search(problem, phase, budget);
  const results: Found[] = [];
  for (let found = search.next(); found !== null; found = search.next()) results.push(found);
  return { results, steps: steps - budget.left, bound: search.bound };
}

describe('a saved problem', () => {
  test('is searched again with the same results, steps and bound', () => {
    for (let seed = 1; seed <= 400; seed += 1) {
      const tables = new Tables(randomProblem(seed), true);
      const steps = seed % 2 === 0 ? 1e6 : 1 + (seed % 40);
      const first = (['proven', 'open'] as const).map((phase) => run(tables, phase, steps));
      const saved = JSON.parse(JSON.stringify(save(tables)));
      const again = new Tables(replay(saved), true);
      const second = (['proven', 'open'] as const).map((phase) => run(again, phase, steps));
      expect(second, `seed ${seed}`).toEqual(first);
      expect(save(again), `seed ${seed}`).toEqual(saved);
    }
  });

  test('says which relation or price it was never asked', () => {
    const problem = randomProblem(1);
    const nothing = replay(save(new Tables(problem, true)));
    const [relation] = nothing.relations;
    const zeros = nothing.variables.map(() => 0);
    expect(() => relation?.ask(relation.scope.map(() => 0))).toThrow(
      /^the saved problem was never asked: r0 at /,
    );
    expect(() => nothing.prices.exact(zeros)).toThrow('exact price at 0,0,0,0');
    expect(() =>
      nothing.prices.floor(
        zeros,
        zeros.map(() => false),
      ),
    ).toThrow('floor at -1,-1');
  });

  test('cannot be saved where the prices were not kept', () => {
    expect(() => save(new Tables(randomProblem(1)))).toThrow('have not kept their prices');
  });
});
