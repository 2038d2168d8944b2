/**
 * The short way through the compiled index comes to what the judge comes to, for joints of every
 * layout, adapters and pairs built by the works among them.
 */

import { expect, test } from 'vitest';
import { CompiledIndex } from '../../../src/domain/index/compiled-index.js';
import type { KitProblem } from '../../../src/domain/kit/kit-problem.js';
import type { KitQuestion } from '../../../src/domain/kit/question.js';
import { problemOf } from '../../../src/domain/kit/sweep.js';
import { demoQuestion, demoWishes } from './demo-question.js';

/** So many combinations of each joint are tried, spread over all of them. */
const TRIED = 25;

test.each(['lirren-1', 'hulvane', 'ordale-1', 'vessimer-20', 'gallivet'])(
  'joints of %s',
  (vehicle) => {
    const wish = demoWishes(1).find((one) => one.vehicle === vehicle);
    if (wish === undefined) throw new Error(`nothing is wished for ${vehicle}`);
    const question = demoQuestion(wish);
    const index = new CompiledIndex(question.catalogue);
    const quick = joints({ ...question, index });
    // Another catalogue object keeps apart what is kept of the first.
    const slow = joints({ ...question, pairsOf: { ...question.pairsOf } });
    const states = new Set<number>();
    for (const [at, relation] of quick.entries()) {
      for (const values of combinations(relation.sizes)) {
        const state = relation.ask(values).state;
        expect(state, `${relation.name} ${values.join()}`).toBe(slow[at]?.ask(values).state);
        states.add(state);
      }
    }
    expect(index.judged).toBeGreaterThan(0);
    expect(states.size).toBeGreaterThan(1);
  },
);

function joints(question: KitQuestion) {
  const { problem }: { problem: KitProblem } = problemOf(question);
  return problem.relations
    .filter(({ sort }) => sort === 'mating')
    .map(({ name, scope, ask }) => {
      const sizes = scope.map((variable) => problem.variables[variable]?.size ?? 1);
      return { name, sizes, ask };
    });
}

function combinations(sizes: readonly number[]): number[][] {
  const all = sizes.reduce((product, size) => product * size, 1);
  const step = Math.max(1, Math.floor(all / TRIED));
  const found: number[][] = [];
  for (let number = 0; number < all; number += step) {
    let rest = number;
    found.push(
      sizes.map((size) => {
        const value = rest % size;
        rest = Math.floor(rest / size);
        return value;
      }),
    );
  }
  return found;
}
