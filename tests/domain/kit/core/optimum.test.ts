/**
 * The exact optimum against every assignment of small problems, whichever way is taken, and
 * against two general solvers on larger ones, wide ones and ones without an assignment included.
 */

import { beforeAll, describe, expect, test } from 'vitest';
import { instance, type Shape as KitShape } from '../../../../scripts/benchmark/instance.js';
import { linearModel } from '../../../../scripts/benchmark/linear-model.js';
import { loadedHighs, type Opponent, yalps } from '../../../../scripts/benchmark/opponents.js';
import { compiledCosts } from '../../../../src/domain/kit/core/compile-costs.js';
import {
  type CostLimit,
  type CostProblem,
  GREATEST_TOTAL,
} from '../../../../src/domain/kit/core/cost-problem.js';
import { optimum, optimumOf, type Ways } from '../../../../src/domain/kit/core/optimum.js';
import { byLookingAtAll, costOf, randomProblem, type Shape } from './random-costs.js';
import { chance } from './random-problem.js';

/** Each forces another way to be taken. */
const ways: readonly (readonly [string, Ways])[] = [
  ['elimination at once', { small: 1e9, large: 1e9, narrow: 1e9 }],
  ['elimination after bounds', { small: 0, large: 1e9, narrow: 1e9 }],
  ['the best few values first', { small: 0, large: 60, narrow: 60 }],
  ['branching to the end', { small: 0, large: 0, narrow: 0 }],
];

const tens = Array.from({ length: 10 }, (_, ten) => ten);

describe.each(ways)('by %s', (_, way) => {
  test.each(tens)('every small problem of bundle %i has the optimum of all assignments', (ten) => {
    const seen = { allowed: 0, none: 0, branches: 0 };
    for (let seed = ten * 100; seed < ten * 100 + 100; seed += 1) {
      const random = chance(seed);
      const problem = randomProblem(smallShape(random), random);
      const want = byLookingAtAll(problem);
      const { isComplete, best, work } = optimumOf(compiledCosts(problem), undefined, way);
      expect({ seed, isComplete, best }).toEqual({ seed, isComplete: true, best: want });
      seen[want === null ? 'none' : 'allowed'] += 1;
      seen.branches += work.branches;
    }
    expect(seen.allowed).toBeGreaterThan(10);
    expect(seen.none).toBeGreaterThan(10);
    if (way.narrow === 0) expect(seen.branches).toBeGreaterThan(0);
    if (way.large === 1e9) expect(seen.branches).toBe(0);
  });
});

describe('a limit over too many combinations to be written out', () => {
  const cases = Array.from({ length: 4 }, (_, seed) => seed);
  test.each(cases)('is kept to, seed %i', (seed) => {
    const random = chance(seed);
    const problem = wideLimit(random, seed % 3 === 0);
    const { network } = compiledCosts(problem);
    expect(network?.factors.some(({ costs }) => costs === null)).toBe(true);
    const want = byLookingAtAll(problem);
    expect(want === null).toBe(seed % 3 === 0);
    for (const [, way] of ways.slice(1)) {
      const got = optimumOf({ network, constant: 0 }, undefined, way);
      expect(got).toMatchObject({ isComplete: true, best: want });
    }
  });
});

describe('with fewer steps than it takes', () => {
  test.each(tens)('the bound is not above the optimum, bundle %i', (ten) => {
    let cut = 0;
    for (let seed = ten * 10; seed < ten * 10 + 10; seed += 1) {
      const random = chance(seed);
      const problem = randomProblem({ ...smallShape(random), allowed: 0.8 }, random);
      const want = byLookingAtAll(problem);
      const compiled = compiledCosts(problem);
      for (let cells = 0; cells < 3000; cells += 1 + Math.floor(cells / 3)) {
        for (const [, way] of ways) {
          const got = optimumOf(compiled, cells, way);
          if (got.isComplete) {
            expect({ seed, cells, best: got.best }).toEqual({ seed, cells, best: want });
            continue;
          }
          cut += 1;
          expect(got.bound).toBeLessThanOrEqual(want?.cost ?? GREATEST_TOTAL + 1);
          if (got.best !== null) expect(costOf(problem, got.best.values)).toBe(got.best.cost);
        }
      }
    }
    expect(cut).toBeGreaterThan(10);
  });
});

describe('the answer', () => {
  test('is the first in the order of the values of all that cost as little', () => {
    const apart = [0, Number.POSITIVE_INFINITY, Number.POSITIVE_INFINITY, 0];
    const table = (scope: readonly number[], costs: readonly number[]) => {
      return { scope, classes: scope.map(() => [0, 1]), counts: scope.map(() => 2), costs };
    };
    const variables = [{ costs: [0, 0] }, { costs: [3, 3] }, { costs: [0, 0] }];
    const same = { variables, tables: [table([0, 2], apart)], limits: [] };
    expect(optimum(same)).toMatchObject({ best: { cost: 3, values: [0, 0, 0] } });
    const dear = { ...same, tables: [table([2, 0], [1, 1, 0, 0]), table([1, 0], apart.reverse())] };
    expect(optimum(dear)).toMatchObject({ best: { cost: 3, values: [0, 0, 1] } });
  });

  test('does not depend on the order of the tables', () => {
    for (let seed = 0; seed < 200; seed += 1) {
      const random = chance(seed);
      const problem = randomProblem({ ...smallShape(random), dearest: 1 }, random);
      const { tables, limits } = problem;
      const turned = { ...problem, tables: tables.toReversed(), limits: limits.toReversed() };
      expect(optimum(turned)).toMatchObject(bestOf(optimum(problem)));
    }
  });

  test.each([1.5, -1, Number.NaN, 2 ** 60])('is refused for the cost %d', (cost) => {
    const problem = { variables: [{ costs: [0, cost] }], tables: [], limits: [] };
    expect(() => optimum(problem)).toThrow(RangeError);
  });
});

describe('larger problems', () => {
  let highs: Opponent;
  beforeAll(async () => {
    highs = await loadedHighs();
  });

  const plain = { positions: 20, parts: 30, extra: 3, allowed: 0.25 };
  const shapes: KitShape[] = (['few', 'rand', 'full'] as const).flatMap((sort) => [
    { ...plain, sort, positions: 10, isPlanted: true, isPriced: true },
    { ...plain, sort, extra: 8, isPlanted: true, isPriced: true },
    { ...plain, sort, isPlanted: true, isPriced: false },
    { ...plain, sort, extra: 8, allowed: 0.14, isPlanted: false, isPriced: true },
  ]);

  test.each(shapes)(
    '$sort, $positions positions, $extra joints more, $allowed allowed',
    (shape) => {
      for (let seed = 1; seed <= 2; seed += 1) {
        const problem = instance(shape, seed);
        const compiled = compiledCosts(problem);
        const model = linearModel(compiled.network as NonNullable<typeof compiled.network>);
        const want = highs(model, 20).cost;
        // Where nothing costs anything it goes round in circles, on some others for minutes.
        const others = shape.isPriced ? [yalps(model, 0.5).cost] : [];
        const equal = others.filter((cost) => cost !== 'gave up');
        expect(equal).toEqual(equal.map(() => want));
        for (const [, way] of [['as estimated', undefined] as const, ...ways.slice(2)]) {
          const { best } = optimumOf(compiled, undefined, way);
          expect({ seed, cost: best?.cost ?? null }).toEqual({ seed, cost: want });
          if (best !== null) expect(costOf(problem, best.values)).toBe(best.cost);
        }
      }
    },
  );
});

function smallShape(random: () => number): Shape {
  const below = (count: number) => Math.floor(random() * count);
  return {
    variables: 1 + below(6),
    values: 1 + below(5),
    tables: below(8),
    limits: below(3),
    allowed: 0.4 + random() * 0.6,
    dearest: [1, 3, 50][below(3)]!,
  };
}

/** Five variables of ten values, of whose product or sum there is one limit. */
function wideLimit(random: () => number, isImpossible: boolean): CostProblem {
  const below = (count: number) => Math.floor(random() * count);
  const scope = [0, 1, 2, 3, 4];
  const fraction = (number: number) => ({ numerator: BigInt(number), denominator: 7n });
  const variables = scope.map(() => ({ costs: Array.from({ length: 10 }, () => below(20)) }));
  // Only even numbers: their product or sum is never the odd one that is impossible.
  const numbers = scope.map(() => Array.from({ length: 10 }, (_, at) => fraction(4 + 2 * at)));
  const combines: CostLimit['combines'] = below(2) === 0 ? 'product' : 'sum';
  const all = scope.map(() => 4 + 2 * below(10));
  const start = combines === 'product' ? 1 : 0;
  const total = all.reduce((sum, one) => (combines === 'product' ? sum * one : sum + one), start);
  const value = {
    numerator: BigInt(total + (isImpossible ? 1 : 0)),
    denominator: combines === 'product' ? 7n ** 5n : 7n,
  };
  return { variables, tables: [], limits: [{ combines, scope, numbers, low: value, high: value }] };
}

function bestOf({ best }: ReturnType<typeof optimum>): object {
  return { best };
}
