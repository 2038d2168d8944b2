/**
 * Whether anything is valid, against a look at every assignment of small random problems.
 */

import { describe, expect, test } from 'vitest';
import { feasible, freeOfCharge } from '../../../../src/domain/kit/core/feasible.js';
import { type Problem, STATE, type State } from '../../../../src/domain/kit/core/problem.js';
import { Tables } from '../../../../src/domain/kit/core/tables.js';
import { combinations, randomProblem } from './random-problem.js';

const ENOUGH = 1e6;

function isValid({ relations, prices }: Problem, values: readonly number[], least: State) {
  const states = relations.map(
    ({ scope, ask }) => ask(scope.map((variable) => values[variable] ?? 0)).state,
  );
  return states.every((state) => state >= least) && prices.exact(values) < Infinity;
}

/** Steps before it begins again more thoroughly: as usual, soon, and at once. */
const FEW = [undefined, 3, 0] as const;

describe.each([STATE.holds, STATE.open])('all at least %s', (least) => {
  test.each(['as priced', 'free of charge'])('%s', (pricing) => {
    let impossible = 0;
    for (let seed = 1; seed <= 1000; seed += 1) {
      const priced = randomProblem(seed);
      const isFree = pricing === 'free of charge';
      const problem = isFree ? { ...priced, prices: freeOfCharge(priced) } : priced;
      const all = [...combinations(problem.variables.map(({ size }) => size))];
      const isAny = all.some((values) => isValid(problem, values, least));
      if (!isAny) impossible += 1;
      for (const few of FEW) {
        const found = feasible(new Tables(problem), least, { left: ENOUGH }, few);
        expect(found !== null, `seed ${seed}, ${few}`).toBe(isAny);
        if (found != null) expect(isValid(problem, found, least), `seed ${seed}`).toBe(true);
      }
    }
    // Each of the two outcomes must be seen often enough.
    expect(impossible).toBeGreaterThan(20);
    expect(impossible).toBeLessThan(980);
  });
});

test('with some relations left out, what is known of the others is not asked again', () => {
  const problem = randomProblem(3);
  let asked = 0;
  const counting = problem.relations.map((relation) => ({
    ...relation,
    ask: (values: readonly number[]) => {
      asked += 1;
      return relation.ask(values);
    },
  }));
  const tables = new Tables({ ...problem, relations: counting });
  feasible(tables, STATE.holds, { left: ENOUGH });
  const before = asked;
  expect(before).toBeGreaterThan(0);
  feasible(tables.only([...counting.keys()], problem.prices), STATE.holds, { left: ENOUGH });
  expect(asked).toBe(before);
});

test('a budget that ends before it is known tells nothing', () => {
  const problem = randomProblem(3);
  expect(feasible(new Tables(problem), STATE.holds, { left: 0 })).toBeUndefined();
});

test('what it tells before its budget ends is true, wherever that ends', () => {
  let cut = 0;
  for (let seed = 1; seed <= 300; seed += 1) {
    const problem = randomProblem(seed);
    const whole = feasible(new Tables(problem), STATE.holds, { left: ENOUGH });
    for (const left of [0, 1, 2, 3, 5, 8, 13]) {
      const budget = { left };
      const found = feasible(new Tables(problem), STATE.holds, budget, 2);
      expect(budget.left).toBeGreaterThanOrEqual(0);
      if (found === undefined) cut += 1;
      else if (found === null) expect(whole, `seed ${seed}`).toBeNull();
      else expect(isValid(problem, found, STATE.holds), `seed ${seed}`).toBe(true);
    }
  }
  expect(cut).toBeGreaterThan(300);
});
