/**
 * How a node of the search is divided. Where a relation is violated, one of the undecided
 * variables that it blames has to change in every result below; the first of them that does tells
 * the children apart: that one has some other value, and those before it stay as they are. So no
 * assignment is below two children.
 */

import type { Tables } from './tables.js';

/** One child of a node, as it differs from it. */
export interface Choice {
  readonly variable: number;
  readonly value: number;
  /** How many of the blamed variables stay as they are: those before it. */
  readonly staying: number;
}

export interface Branching {
  /** Undecided variables of which one must change. */
  readonly blamed: readonly number[];
  /** What adds least first. */
  readonly choices: readonly Choice[];
}

export class Brancher {
  readonly #tables: Tables;
  /** The least state that a relation may have. */
  readonly #least: number;
  readonly #values: Int32Array;
  readonly #isDecided: Uint8Array;

  constructor(tables: Tables, leastState: number) {
    this.#tables = tables;
    this.#least = leastState;
    this.#values = new Int32Array(tables.variables.length);
    this.#isDecided = new Uint8Array(tables.variables.length);
  }

  /** The division with the fewest children that a violated relation gives; null: none is. */
  mending(decided: Int32Array): Branching | null {
    this.#start(decided);
    const groups: (readonly number[])[] = [];
    for (let relation = 0; relation < this.#tables.tables.length; relation += 1) {
      if (this.#tables.stateAt(relation, this.#values) >= this.#least) continue;
      groups.push(this.#undecided(this.#tables.blameAt(relation, this.#values)));
    }
    return this.#fewest(groups);
  }

  #fewest(groups: (readonly number[])[]): Branching | null {
    let best: Branching | null = null;
    groups.sort((one, other) => this.#countAtMost(one) - this.#countAtMost(other));
    for (const blamed of groups) {
      const most = best?.choices.length ?? Infinity;
      if (most === 0) break;
      const choices = this.#choices(blamed, most);
      if (choices !== null) best = { blamed, choices };
    }
    if (best === null) return null;
    return { blamed: best.blamed, choices: this.#sorted(best.choices) };
  }

  /** The division by which one of these changes, nothing being violated. */
  over(decided: Int32Array, variables: Iterable<number>): Branching {
    this.#start(decided);
    const blamed = this.#undecided(variables);
    return { blamed, choices: this.#sorted(this.#choices(blamed, Infinity) ?? []) };
  }

  #start(decided: Int32Array): void {
    for (let variable = 0; variable < decided.length; variable += 1) {
      const value = decided[variable] as number;
      this.#values[variable] = Math.max(value, 0);
      this.#isDecided[variable] = value < 0 ? 0 : 1;
    }
  }

  #undecided(variables: Iterable<number>): number[] {
    return [...variables].filter((variable) => this.#isDecided[variable] === 0).sort(ascending);
  }

  #countAtMost(variables: readonly number[]): number {
    return variables.reduce((sum, one) => sum + (this.#tables.variables[one]?.size ?? 0) - 1, 0);
  }

  /** The choices that nothing decided rules out; null where they are not fewer than that. */
  #choices(blamed: readonly number[], fewerThan: number): Choice[] | null {
    const choices: Choice[] = [];
    let staying = 0;
    for (const variable of blamed) {
      this.#isDecided[variable] = 1;
      const readers = this.#readersDecided(variable);
      const size = this.#tables.variables[variable]?.size ?? 0;
      for (let value = 1; value < size && choices.length < fewerThan; value += 1) {
        this.#values[variable] = value;
        if (this.#areKept(readers)) choices.push({ variable, value, staying });
      }
      this.#values[variable] = 0;
      staying += 1;
      // Where it may not stay, none of those after it can be the first to change.
      if (choices.length >= fewerThan || !this.#areKept(readers)) break;
    }
    for (const variable of blamed.slice(0, staying)) this.#isDecided[variable] = 0;
    return choices.length < fewerThan ? choices : null;
  }

  /** The relations of a variable that read nothing undecided. */
  #readersDecided(variable: number): number[] {
    return (this.#tables.of[variable] as readonly number[]).filter((relation) => {
      const scope = this.#tables.tables[relation]?.scope ?? [];
      for (const read of scope) if (this.#isDecided[read] === 0) return false;
      return true;
    });
  }

  #areKept(relations: readonly number[]): boolean {
    for (const relation of relations) {
      if (this.#tables.stateAt(relation, this.#values) < this.#least) return false;
    }
    return true;
  }

  #sorted(choices: readonly Choice[]): Choice[] {
    const costOf = ({ variable, value }: Choice): number =>
      this.#tables.atLeast[variable]?.[value] ?? 0;
    const finite = choices.filter((choice) => costOf(choice) < Infinity);
    return finite.sort(
      (one, other) =>
        costOf(one) - costOf(other) || one.staying - other.staying || one.value - other.value,
    );
  }
}

function ascending(one: number, other: number): number {
  return one - other;
}
