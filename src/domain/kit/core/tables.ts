/**
 * A problem with all that has been asked of it so far. One is made for each question; its searches
 * and tests share it, so that nothing is asked twice.
 */

import type { Prices, Problem, State, Variable } from './problem.js';
import { Table } from './table.js';

/** A price that has been asked: the value of each decided variable, -1 where none is. */
export interface AskedFloor {
  readonly decided: readonly number[];
  readonly cost: number;
}

export interface AskedExact {
  readonly values: readonly number[];
  readonly cost: number;
}

/** Prices asked. They are kept only where the problem is to be saved: there are many of them. */
export interface PriceLog {
  readonly floors: AskedFloor[];
  readonly exacts: AskedExact[];
}

export class Tables {
  readonly problem: Problem;
  readonly variables: readonly Variable[];
  readonly atLeast: readonly (readonly number[])[];
  /** By relation. */
  readonly tables: readonly Table[];
  /** By variable: the relations that read it. */
  readonly of: readonly (readonly number[])[];
  /** Null where what is asked of the prices is not kept. */
  readonly log: PriceLog | null;
  readonly #prices: Prices;
  readonly #values: number[];
  readonly #decided: boolean[];

  /** @param asked what has been asked of its relations, where something has been. */
  constructor(problem: Problem, keepsPrices = false, asked: readonly Table[] = []) {
    this.problem = problem;
    this.variables = problem.variables;
    this.atLeast = problem.prices.atLeast;
    this.tables = problem.relations.map((relation, index) => asked[index] ?? new Table(relation));
    const of: number[][] = problem.variables.map(() => []);
    problem.relations.forEach(({ scope }, relation) => {
      for (const variable of scope) of[variable]?.push(relation);
    });
    this.of = of;
    this.log = keepsPrices ? { floors: [], exacts: [] } : null;
    this.#prices = problem.prices;
    this.#values = problem.variables.map(() => 0);
    this.#decided = problem.variables.map(() => false);
  }

  /** Some of the relations, at other prices; what has been asked of them is known to both. */
  only(relations: readonly number[], prices: Prices): Tables {
    const tables = relations.map((relation) => this.tables[relation] as Table);
    const own = tables.map(({ relation }) => relation);
    return new Tables({ variables: this.variables, relations: own, prices }, false, tables);
  }

  /** What a relation says where the variables of the problem have these values. */
  stateAt(relation: number, values: ArrayLike<number>): State {
    return (this.tables[relation] as Table).at(values);
  }

  blameAt(relation: number, values: ArrayLike<number>): readonly number[] {
    return (this.tables[relation] as Table).blameAt(values);
  }

  /** The least that an assignment costs with these decided; -1 where a variable is not. */
  floor(decided: Int32Array): number {
    for (let variable = 0; variable < decided.length; variable += 1) {
      const value = decided[variable] as number;
      this.#values[variable] = Math.max(value, 0);
      this.#decided[variable] = value >= 0;
    }
    const cost = this.#prices.floor(this.#values, this.#decided);
    this.log?.floors.push({ decided: [...decided], cost });
    return cost;
  }

  /** What an assignment costs; Infinity where it is beyond a limit. */
  exact(values: readonly number[]): number {
    const cost = this.#prices.exact(values);
    this.log?.exacts.push({ values: [...values], cost });
    return cost;
  }
}
