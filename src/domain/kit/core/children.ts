/**
 * The children of a node that are still to be made, the one with the least bound first.
 *
 * What a choice adds by itself is known at once; what it brings with it has to be computed, and
 * for that relations have to be asked. So only those are priced that might be the least: the
 * choices stand in the order of what they add by themselves, and are priced from the front. Each
 * time as many are priced as have been before, so that it happens seldom.
 */

import type { Bound } from './bound.js';
import type { Branching, Choice } from './branching.js';
import type { Tables } from './tables.js';

const fewest = 4;

interface Priced {
  readonly choice: Choice;
  readonly bound: number;
}

export interface Child {
  readonly decided: Int32Array;
  /** How many more are decided than in the node. */
  readonly countMore: number;
  /** The variable that is changed, and is not in the node. */
  readonly latest: number;
}

export class Children {
  readonly #tables: Tables;
  readonly #forest: Bound;
  readonly #decided: Int32Array;
  /** What the decided variables of the node cost. */
  readonly #floor: number;
  readonly #branching: Branching;
  #countPriced = 0;
  /** Priced and not yet taken, the least last. */
  #priced: Priced[] = [];

  constructor(
    tables: Tables,
    forest: Bound,
    decided: Int32Array,
    floor: number,
    branching: Branching,
  ) {
    this.#tables = tables;
    this.#forest = forest;
    this.#decided = decided;
    this.#floor = floor;
    this.#branching = branching;
  }

  /** No child costs less; Infinity where there is none. */
  get bound(): number {
    return Math.min(this.#priced.at(-1)?.bound ?? Infinity, this.#unpriced);
  }

  /** Whether the least is among those that have been priced. */
  get isPriced(): boolean {
    return (this.#priced.at(-1)?.bound ?? Infinity) <= this.#unpriced;
  }

  price(): void {
    const { choices } = this.#branching;
    const count = Math.max(fewest, this.#countPriced);
    const chosen = choices.slice(this.#countPriced, this.#countPriced + count);
    this.#countPriced += chosen.length;
    const decided = this.#decided.slice();
    this.#branching.blamed.forEach((variable, staying) => {
      const own = chosen.filter((choice) => choice.variable === variable);
      if (own.length > 0) this.#priceOf(decided, variable, own);
      // Those after it are the first to change only where it stays.
      if (staying < this.#branching.blamed.length) decided[variable] = 0;
    });
    this.#priced.sort(dearestFirst);
  }

  /** The values of the child with the least bound. */
  take(): Child {
    const least = this.#priced.pop();
    if (least === undefined) throw new Error('no child of the node has been priced');
    const { variable, value, staying } = least.choice;
    const decided = this.#decided.slice();
    for (const stays of this.#branching.blamed.slice(0, staying)) decided[stays] = 0;
    decided[variable] = value;
    return { decided, countMore: staying + 1, latest: variable };
  }

  #priceOf(decided: Int32Array, variable: number, choices: readonly Choice[]): void {
    const values = choices.map(({ value }) => value);
    const added = this.#forest.byValue(decided, variable, values);
    choices.forEach((choice, index) => {
      const bound = this.#floor + (added[index] ?? Infinity);
      if (bound < Infinity) this.#priced.push({ choice, bound });
    });
  }

  /** The least that a choice costs that has not been priced. */
  get #unpriced(): number {
    const choice = this.#branching.choices[this.#countPriced];
    if (choice === undefined) return Infinity;
    return this.#floor + (this.#tables.atLeast[choice.variable]?.[choice.value] ?? 0);
  }
}

/** In reverse of: the least bound, then the choice that keeps fewer as they are. */
function dearestFirst(one: Priced, other: Priced): number {
  if (one.bound !== other.bound) return other.bound - one.bound;
  if (one.choice.staying !== other.choice.staying) return other.choice.staying - one.choice.staying;
  return other.choice.value - one.choice.value;
}
