/**
 * Whether anything at all is valid: one assignment that violates nothing, whatever it costs and
 * whether or not something in it could be put back.
 *
 * At first little is asked: it goes as deep as it can, a node is cut where its bound says that
 * nothing valid is below it, and divided as the search for the cheapest divides its nodes. Where
 * that is not soon done, the relations exclude each other in rings that the bound does not see.
 * Then it begins again, and at each node takes away what is left without partners
 * (`narrowing.ts`); it divides over the variable of which least is left, measured by how often
 * its relations were what left nothing.
 */

import { Bound } from './bound.js';
import { Brancher } from './branching.js';
import { Narrowing } from './narrowing.js';
import type { Budget, Prices, State } from './problem.js';
import type { Tables } from './tables.js';

/** So many steps are made before it begins again. */
const FEW_STEPS = 50;
/** So many combinations looked at are about as much work as a node. */
const LOOKS_IN_STEP = 1000;

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
 * @param few steps before it begins again more thoroughly.
 * @returns the values of one valid assignment; null where there is none; undefined where the
 * budget ended before that was known.
 */
export function feasible(
  tables: Tables,
  leastState: State,
  budget: Budget,
  few = FEW_STEPS,
): readonly number[] | null | undefined {
  const first: Budget = { left: Math.min(few, budget.left) };
  budget.left -= first.left;
  const nothing = new Int32Array(tables.variables.length).fill(-1);
  const found = new Descent(tables, leastState, first).below(nothing);
  budget.left += first.left;
  if (found !== undefined || budget.left === 0) return found;
  return new Division(tables, leastState, budget).found();
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

class Division {
  readonly #tables: Tables;
  readonly #leastState: State;
  readonly #budget: Budget;
  readonly #left: Narrowing;
  readonly #values: number[];
  readonly #decided: Int32Array;
  #looks = 0;

  constructor(tables: Tables, leastState: State, budget: Budget) {
    this.#tables = tables;
    this.#leastState = leastState;
    this.#budget = budget;
    this.#left = new Narrowing(tables, leastState);
    this.#values = tables.variables.map(() => 0);
    this.#decided = new Int32Array(tables.variables.length);
  }

  found(): readonly number[] | null | undefined {
    for (const [variable, own] of this.#tables.atLeast.entries()) {
      for (const [value, cost] of own.entries()) {
        if (cost === Infinity && !this.#left.without(variable, value)) return null;
      }
    }
    return this.#left.all() ? this.#below() : null;
  }

  /** Of what is left; whoever calls puts back what this takes away. */
  #below(): readonly number[] | null | undefined {
    for (;;) {
      if (!this.#pay()) return undefined;
      if (this.#isBeyond()) return null;
      const broken = this.#broken();
      if (broken.length === 0 && this.#tables.exact(this.#values) < Infinity) {
        return [...this.#values];
      }
      const variable = this.#next(broken);
      if (variable === null) return null;
      const value = this.#left.first(variable);
      const { mark } = this.#left;
      const found = this.#left.only(variable, value) ? this.#below() : null;
      if (found !== null) return found;
      this.#left.backTo(mark);
      if (!this.#left.without(variable, value)) return null;
    }
  }

  /** False where the budget is used up. */
  #pay(): boolean {
    if (this.#budget.left <= 0) return false;
    const steps = 1 + Math.floor((this.#left.looks - this.#looks) / LOOKS_IN_STEP);
    this.#looks += (steps - 1) * LOOKS_IN_STEP;
    this.#budget.left = Math.max(0, this.#budget.left - steps);
    return true;
  }

  /** Whether what is decided is beyond a limit. */
  #isBeyond(): boolean {
    for (let variable = 0; variable < this.#decided.length; variable += 1) {
      const first = this.#left.first(variable);
      this.#values[variable] = first;
      this.#decided[variable] = this.#left.count(variable) === 1 ? first : -1;
    }
    return this.#tables.floor(this.#decided) === Infinity;
  }

  /** Relations that are violated where each variable has the first value that is left. */
  #broken(): number[] {
    const all = [...this.#tables.tables.keys()];
    return all.filter((one) => this.#tables.stateAt(one, this.#values) < this.#leastState);
  }

  /**
   * The undecided variable to divide over; null where there is none. Where nothing is violated it
   * is one that has to change: that others change too never costs less.
   */
  #next(broken: readonly number[]): number | null {
    const scopes = broken.map((one) => this.#tables.tables[one]?.scope ?? []);
    const changed = [...this.#values.keys()].filter((one) => this.#values[one] !== 0);
    let best: number | null = null;
    let least = Infinity;
    for (const variable of new Set(broken.length === 0 ? changed : scopes.flat())) {
      const count = this.#left.count(variable);
      if (count === 1) continue;
      const measure = count / this.#weightOf(variable);
      if (measure > least || (measure === least && variable > (best ?? -1))) continue;
      best = variable;
      least = measure;
    }
    return best;
  }

  #weightOf(variable: number): number {
    const relations = this.#tables.of[variable] as readonly number[];
    return relations.reduce((sum, one) => sum + (this.#left.weights[one] as number), 0);
  }
}
