/**
 * What one relation has answered: its state by combination of classes, asked the first time it is
 * wanted and never again.
 *
 * A combination is numbered by its classes, the first place of the scope counting most. Small
 * tables are arrays of bytes, large ones maps; where the numbers would be too large to be exact,
 * combinations are numbered as they come.
 */

import type { Answer, Relation, State } from './problem.js';

const denseCells = 1 << 16;

export interface Asked extends Answer {
  /** By place in the scope: the first value of its class. */
  readonly values: readonly number[];
}

export class Table {
  readonly relation: Relation;
  readonly scope: readonly number[];
  /** By place in the scope, by value: its class, counted from 0 in order of first values. */
  readonly classes: readonly (readonly number[])[];
  /** By place in the scope, by class: its first value, which is asked for all of them. */
  readonly #firsts: readonly (readonly number[])[];
  /** By place in the scope, by value: what it adds to the number of the combination. */
  readonly #adds: readonly (readonly number[])[];
  /** Numbers by combination, where they cannot be computed. */
  readonly #named: Map<string, number> | null;
  /** One more than the state; 0 where it has not been asked. */
  readonly #dense: Uint8Array | null;
  readonly #sparse = new Map<number, State>();
  /** Only where it is not the whole scope. */
  readonly #blame = new Map<number, readonly number[]>();
  readonly #asked: (readonly number[])[] = [];

  constructor(relation: Relation) {
    this.relation = relation;
    this.scope = relation.scope;
    const firsts = relation.classes.map((of) => [...firstValues(of).values()]);
    this.#firsts = firsts;
    this.classes = relation.classes.map((of) => {
      const numbers = new Map([...firstValues(of).keys()].map((key, number) => [key, number]));
      return of.map((key) => numbers.get(key) ?? 0);
    });
    let cells = 1;
    const steps = firsts.toReversed().map(({ length }) => {
      const step = cells;
      cells *= length;
      return step;
    });
    steps.reverse();
    this.#adds = this.classes.map((of, place) => of.map((number) => number * (steps[place] ?? 0)));
    this.#named = cells > Number.MAX_SAFE_INTEGER ? new Map() : null;
    this.#dense = cells <= denseCells ? new Uint8Array(cells) : null;
  }

  /** What it says where the variables of the problem have these values. */
  at(values: ArrayLike<number>): State {
    const cell = this.#cell(values);
    if (this.#dense !== null) {
      const known = this.#dense[cell] as number;
      return known === 0 ? this.#ask(cell, values) : ((known - 1) as State);
    }
    return this.#sparse.get(cell) ?? this.#ask(cell, values);
  }

  /** The variables of which one must change before this state can. */
  blameAt(values: ArrayLike<number>): readonly number[] {
    this.at(values);
    return this.#blame.get(this.#cell(values)) ?? this.scope;
  }

  /** How many combinations have been asked. */
  get countAsked(): number {
    return this.#asked.length;
  }

  /** Everything that has been asked, in the order of the questions. */
  answers(): Asked[] {
    const whole: number[] = [];
    return this.#asked.map((values) => {
      this.scope.forEach((variable, place) => {
        whole[variable] = values[place] ?? 0;
      });
      return { values, state: this.at(whole), blame: this.blameAt(whole) };
    });
  }

  #cell(values: ArrayLike<number>): number {
    if (this.#named !== null) return this.#nameOf(this.#named, values);
    const scope = this.scope;
    let cell = 0;
    for (let place = 0; place < scope.length; place += 1) {
      const value = values[scope[place] as number] as number;
      cell += (this.#adds[place] as readonly number[])[value] as number;
    }
    return cell;
  }

  #nameOf(names: Map<string, number>, values: ArrayLike<number>): number {
    const text = this.#representatives(values).join();
    const known = names.get(text) ?? names.size;
    names.set(text, known);
    return known;
  }

  #representatives(values: ArrayLike<number>): number[] {
    return this.scope.map((variable, place) => {
      const number = this.classes[place]?.[values[variable] ?? 0] ?? 0;
      return this.#firsts[place]?.[number] ?? 0;
    });
  }

  #ask(cell: number, values: ArrayLike<number>): State {
    const asked = this.#representatives(values);
    const { state, blame } = this.relation.ask(asked);
    this.#asked.push(asked);
    if (this.#dense === null) this.#sparse.set(cell, state);
    else this.#dense[cell] = state + 1;
    if (blame.length < this.scope.length) this.#blame.set(cell, [...blame]);
    return state;
  }
}

/** By class: the first value that has it. */
function firstValues(classes: readonly number[]): Map<number, number> {
  const first = new Map<number, number>();
  classes.forEach((key, value) => {
    if (!first.has(key)) first.set(key, value);
  });
  return first;
}
