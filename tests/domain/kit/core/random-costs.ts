/**
 * Small random problems of least cost with every feature on and off, and their answer by looking
 * at every assignment. It shares no code with what it tests, and is written to be read.
 */

import type {
  CheapestAssignment,
  CostLimit,
  CostProblem,
  CostTable,
  CostVariable,
  Fraction,
} from '../../../../src/domain/kit/core/cost-problem.js';

export interface Shape {
  readonly variables: number;
  readonly values: number;
  readonly tables: number;
  readonly limits: number;
  /** How many cells of a table are allowed. */
  readonly allowed: number;
  /** Costs are below this; 1: everything is free. */
  readonly dearest: number;
}

export function randomProblem(shape: Shape, random: () => number): CostProblem {
  const below = (count: number) => Math.floor(random() * count);
  const variables = Array.from({ length: shape.variables }, (): CostVariable => {
    const count = 1 + below(shape.values);
    const cost = () => (random() < 0.05 ? Number.POSITIVE_INFINITY : below(shape.dearest));
    return { costs: Array.from({ length: count }, cost) };
  });
  const scopeOf = (count: number) => Array.from({ length: count }, () => below(variables.length));
  const sizes = (scope: readonly number[]) => scope.map((one) => variables[one]!.costs.length);
  const tables = Array.from({ length: shape.tables }, (): CostTable => {
    const scope = scopeOf(random() < 0.75 ? 2 : below(4));
    const counts = scope.map(() => 1 + below(3));
    const classes = sizes(scope).map((size, place) =>
      Array.from({ length: size }, () => below(counts[place]!)),
    );
    const cells = counts.reduce((product, count) => product * count, 1);
    const dear = random() < 0.3 ? shape.dearest : 1;
    const costs = Array.from({ length: cells }, () =>
      random() < shape.allowed ? below(dear) : Number.POSITIVE_INFINITY,
    );
    return { scope, classes, counts, costs };
  });
  const fraction = (): Fraction => ({
    numerator: BigInt(below(9) - (random() < 0.2 ? 4 : 0)),
    denominator: BigInt(1 + below(4)),
  });
  const limits = Array.from({ length: shape.limits }, (): CostLimit => {
    const scope = scopeOf(random() < 0.05 ? 0 : 2 + below(3));
    const numbers = sizes(scope).map((size) => Array.from({ length: size }, fraction));
    const combines = random() < 0.7 ? 'product' : 'sum';
    const low = BigInt(below(6));
    return {
      combines,
      scope,
      numbers,
      low: { numerator: low, denominator: 2n },
      high: { numerator: low + BigInt(below(40)), denominator: 2n },
    };
  });
  return { variables, tables, limits };
}

/** Every assignment in the order of the values; the first of the cheapest. */
export function byLookingAtAll(problem: CostProblem): CheapestAssignment | null {
  let best: CheapestAssignment | null = null;
  const values = problem.variables.map(() => 0);
  for (;;) {
    const cost = costOf(problem, values);
    if (cost < (best?.cost ?? Number.POSITIVE_INFINITY)) best = { cost, values: [...values] };
    let at = values.length - 1;
    while (at >= 0 && values[at] === problem.variables[at]!.costs.length - 1) {
      values[at] = 0;
      at -= 1;
    }
    if (at < 0) return best;
    values[at] = values[at]! + 1;
  }
}

/** What an assignment costs; Infinity where it is not allowed. */
export function costOf(problem: CostProblem, values: readonly number[]): number {
  let cost = 0;
  problem.variables.forEach(({ costs }, variable) => {
    cost += costs[values[variable]!]!;
  });
  for (const { scope, classes, counts, costs } of problem.tables) {
    let cell = 0;
    scope.forEach((variable, place) => {
      cell = cell * counts[place]! + classes[place]![values[variable]!]!;
    });
    cost += costs[cell]!;
  }
  return problem.limits.every((limit) => isWithin(limit, values)) ? cost : Number.POSITIVE_INFINITY;
}

function isWithin(limit: CostLimit, values: readonly number[]): boolean {
  let [numerator, denominator] = limit.combines === 'product' ? [1n, 1n] : [0n, 1n];
  limit.scope.forEach((variable, place) => {
    const one = limit.numbers[place]![values[variable]!]!;
    numerator =
      limit.combines === 'product'
        ? numerator * one.numerator
        : numerator * one.denominator + one.numerator * denominator;
    denominator *= one.denominator;
  });
  const isNotAbove = (a: bigint, b: bigint, c: bigint, d: bigint) => a * d <= c * b;
  const { low, high } = limit;
  return (
    isNotAbove(low.numerator, low.denominator, numerator, denominator) &&
    isNotAbove(numerator, denominator, high.numerator, high.denominator)
  );
}
