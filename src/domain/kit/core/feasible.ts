/**
 * Whether anything at all is valid: one assignment that violates nothing, whatever it costs and
 * whether or not something in it could be put back.
 *
 * It goes as deep as it can first. A node is cut where its bound says that nothing valid is below
 * it, and divided as the search for the cheapest divides its nodes.
 */

import { Bound } from './bound.js';
import { Brancher } from './branching.js';
import type { Budget, Prices, State } from './problem.js';
import type { Tables } from './tables.js';

/** Prices by which nothing costs anything, and nothing is beyond a limit. */
export function freeOfCharge({ variables }: Pick<Tables, 'variables'>): Prices {
  const atLeast = variables.map(({ size }) => Array.from({ length: size }, () => 0));
  return { atLeast, floor: () => 0, exact: () => 0 };
}

/** Prices by which each change costs one. */
export function byChanges({ variables }: Pick<Tables, 'variables'>): Prices {
  const atLeast = variables.map(({ size }) =>
    Array.from({ length: size }, (_, value) => Math.sign(value)),
  );
  const count = (values: readonly number[]): number => values.filter((value) => value > 0).length;
  return { atLeast, floor: count, exact: count };
}

/**
 * @param leastState what every relation must come to at least.
 * @returns the values of one valid assignment; null where there is none; undefined where the
 * budget ended before that was known.
 */
export function feasible(
  tables: Tables,
  leastState: State,
  budget: Budget,
): readonly number[] | null | undefined {
  return new Descent(tables, leastState, budget).below(
    new Int32Array(tables.variables.length).fill(-1),
  );
}

class Descent {
  readonly #tables: Tables;
  readonly #budget: Budget;
  readonly #bound: Bound;
  readonly #brancher: Brancher;

  constructor(tables: Tables, leastState: State, budget: Budget) {
    this.#tables = tables;
    this.#budget = budget;
    this.#bound = new Bound(tables, leastState);
    this.#brancher = new Brancher(tables, leastState);
  }

  below(decided: Int32Array): readonly number[] | null | undefined {
    if (this.#budget.left <= 0) return undefined;
    this.#budget.left -= 1;
    if (this.#tables.floor(decided) === Infinity) return null;
    if (this.#bound.of(decided) === Infinity) return null;
    const branching = this.#brancher.mending(decided);
    if (branching === null) {
      const values = Array.from(decided, (value) => Math.max(value, 0));
      // More changes never cost less: where these are beyond a limit, so is all below.
      return this.#tables.exact(values) === Infinity ? null : values;
    }
    for (const { variable, value, staying } of branching.choices) {
      const child = decided.slice();
      for (const one of branching.blamed.slice(0, staying)) child[one] = 0;
      child[variable] = value;
      const found = this.below(child);
      if (found !== null) return found;
    }
    return null;
  }
}
