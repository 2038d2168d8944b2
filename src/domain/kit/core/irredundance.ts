/**
 * Whether something of an assignment can be put back: a group of changed variables that may return
 * to value 0 together so that nothing fails, and nothing is open that is not open anyway.
 *
 * Single variables are too few to look at: two needless changes may justify each other. Each
 * changed variable is put back in turn, those before it kept. Whatever relation is then worse than
 * it was names the variables of which one more must go back; where it names none that may, this
 * way is closed.
 */

import type { Budget } from './problem.js';
import type { Tables } from './tables.js';

/** What the test has come to; null where the budget ended before it did. */
export type IsIrredundant = boolean | null;

export function isIrredundant(
  tables: Tables,
  values: readonly number[],
  budget: Budget,
): IsIrredundant {
  const test = new Reversions(tables, values, budget);
  for (const variable of test.changed) {
    const can = test.canPutBack(variable);
    if (can !== false) return can === null ? null : false;
    test.keep(variable);
  }
  return true;
}

class Reversions {
  readonly changed: readonly number[];
  readonly #tables: Tables;
  readonly #budget: Budget;
  /** The relations that read a changed variable, and the state that each must keep. */
  readonly #relations: readonly number[];
  readonly #atLeast: readonly number[];
  readonly #chosen: readonly number[];
  readonly #values: number[];
  readonly #isKept: boolean[];

  constructor(tables: Tables, values: readonly number[], budget: Budget) {
    this.#tables = tables;
    this.#budget = budget;
    this.#chosen = values;
    this.#values = [...values];
    this.#isKept = values.map(() => false);
    this.changed = [...values.keys()].filter((variable) => values[variable] !== 0);
    const relations = new Set(this.changed.flatMap((variable) => tables.of[variable] ?? []));
    this.#relations = [...relations];
    this.#atLeast = this.#relations.map((relation) => tables.stateAt(relation, values));
  }

  keep(variable: number): void {
    this.#isKept[variable] = true;
  }

  /** Whether it can go back, alone or with others that are not kept; null: no budget is left. */
  canPutBack(variable: number): boolean | null {
    if (this.#budget.left <= 0) return null;
    this.#budget.left -= 1;
    this.#values[variable] = 0;
    const can = this.#canMend();
    this.#values[variable] = this.#chosen[variable] ?? 0;
    return can;
  }

  /** Whether what is worse now can be mended by putting back more. */
  #canMend(): boolean | null {
    const needed = this.#needed();
    if (needed === null) return true;
    const kept: number[] = [];
    let can: boolean | null = false;
    for (const variable of needed) {
      can = this.canPutBack(variable);
      if (can !== false) break;
      this.#isKept[variable] = true;
      kept.push(variable);
    }
    for (const variable of kept) this.#isKept[variable] = false;
    return can;
  }

  /** Variables of which one more must go back, as few as any relation names; null: none must. */
  #needed(): readonly number[] | null {
    let fewest: readonly number[] | null = null;
    for (const [index, relation] of this.#relations.entries()) {
      if (this.#tables.stateAt(relation, this.#values) >= (this.#atLeast[index] ?? 0)) continue;
      const blamed = this.#tables
        .blameAt(relation, this.#values)
        .filter((variable) => this.#values[variable] !== 0 && this.#isKept[variable] === false);
      if (fewest === null || blamed.length < fewest.length) fewest = blamed;
      if (blamed.length === 0) break;
    }
    return fewest;
  }
}
