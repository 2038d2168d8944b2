/**
 * The forest as it is seen from one node: which values a variable may have beside what is decided,
 * and what an edge costs. Relations outside the forest are looked at where all they read but one
 * variable is decided.
 */

import type { Edge, Forest } from './forest.js';
import { unknown } from './message-store.js';
import type { Tables } from './tables.js';

/** A variable that may have some values only. */
export interface Limit {
  readonly variable: number;
  /** By value: 1 where it may. */
  readonly allowed: Uint8Array;
}

export class ForestView {
  /** By variable: its value, -1 where it is not decided. */
  decided: Int32Array;
  readonly #tables: Tables;
  readonly #forest: Forest;
  /** The least state that a relation may have. */
  readonly #least: number;
  /** By variable: its values, those that add least first. */
  readonly #order: readonly Int32Array[];
  /** By edge with joints: its cost by both values, where no middle is decided. */
  readonly #costs: readonly (Float64Array | null)[];
  /** By variable: the values that it is limited to. */
  readonly #allowed: (Uint8Array | null)[];
  #limits: readonly Limit[] = [];
  /** Those of the undecided are what is looked at just now. */
  readonly #values: Int32Array;
  /** By variable: relations outside the forest that read only it beside decided ones. */
  readonly #touching: number[][];

  constructor(tables: Tables, forest: Forest, leastState: number, order: readonly Int32Array[]) {
    this.#tables = tables;
    this.#forest = forest;
    this.#least = leastState;
    this.#order = order;
    const sizes = tables.variables.map(({ size }) => size);
    this.#costs = forest.edges.map(({ ends: [one, other], joints }) => {
      const cells = (sizes[one] ?? 0) * (sizes[other] ?? 0);
      return joints.length === 0 || cells > 1 << 16 ? null : new Float64Array(cells).fill(unknown);
    });
    this.decided = new Int32Array(sizes.length).fill(-1);
    this.#values = new Int32Array(sizes.length);
    this.#allowed = sizes.map(() => null);
    this.#touching = sizes.map(() => []);
  }

  /** Looks at another node; gives what the edges between decided variables cost. */
  start(decided: Int32Array, limits: readonly Limit[]): number {
    for (const { variable } of this.#limits) this.#allowed[variable] = null;
    for (const { variable, allowed } of limits) this.#allowed[variable] = allowed;
    this.#limits = limits;
    this.decided = decided;
    for (let variable = 0; variable < decided.length; variable += 1) {
      this.#values[variable] = Math.max(decided[variable] as number, 0);
    }
    return this.#decidedCost();
  }

  /** What the relations between decided variables cost; finds what the others touch. */
  #decidedCost(): number {
    for (let variable = 0; variable < this.decided.length; variable += 1) {
      (this.#touching[variable] as number[]).length = 0;
      const value = this.decided[variable] as number;
      if (value >= 0 && !this.allows(variable, value)) return Infinity;
    }
    for (const relation of this.#forest.outside) {
      if (!this.#touch(relation)) return Infinity;
    }
    let cost = 0;
    const edges = this.#forest.edges;
    for (let edge = 0; edge < edges.length; edge += 1) {
      const [one, other] = (edges[edge] as Edge).ends;
      if (this.isDecided(one) && this.isDecided(other)) cost += this.cost(edge);
    }
    return cost;
  }

  /** False where the relation is violated by what is decided. */
  #touch(relation: number): boolean {
    let open = -1;
    let isChanged = false;
    for (const variable of this.#tables.tables[relation]?.scope ?? []) {
      const value = this.decided[variable] as number;
      if (value < 0) {
        if (open >= 0) return true;
        open = variable;
      } else if (value > 0) {
        isChanged = true;
      }
    }
    if (open < 0) return this.#tables.stateAt(relation, this.#values) >= this.#least;
    // Where nothing is changed the variable may stay; leaving that out keeps more messages.
    if (isChanged) (this.#touching[open] as number[]).push(relation);
    return true;
  }

  /** Whether what reads this variable alone, or beside decided ones, allows its value. */
  allows(variable: number, value: number): boolean {
    this.#values[variable] = value;
    const allowed = this.#allowed[variable];
    if (allowed && allowed[value] !== 1) {
      return false;
    }
    return (
      this.#areKept(this.#forest.alone[variable] as readonly number[]) &&
      this.#areKept(this.#touching[variable] as readonly number[])
    );
  }

  #areKept(relations: readonly number[]): boolean {
    for (const relation of relations) {
      if (this.#tables.stateAt(relation, this.#values) < this.#least) return false;
    }
    return true;
  }

  /** What an edge costs, its ends having their values: Infinity where it is violated. */
  cost(edge: number): number {
    const { ends, relations, joints } = this.#edge(edge);
    if (!this.#areKept(relations)) return Infinity;
    if (joints.length === 0) return 0;
    const costs = this.isMiddleTouched(edge) ? null : this.#costs[edge];
    const width = this.#order[ends[1]]?.length ?? 0;
    const cell = (this.#values[ends[0]] as number) * width + (this.#values[ends[1]] as number);
    const known = costs?.[cell] ?? unknown;
    if (known !== unknown) return known;
    let cost = 0;
    for (const { middle, relations: read } of joints) cost += this.#middleCost(middle, read);
    if (costs) costs[cell] = cost;
    return cost;
  }

  /** What stands in the middle adds at least; nothing more where it is decided. */
  #middleCost(middle: number, relations: readonly number[]): number {
    if (this.isDecided(middle)) return this.#areKept(relations) ? 0 : Infinity;
    for (const value of this.#order[middle] as Int32Array) {
      if (!this.allows(middle, value) || !this.#areKept(relations)) continue;
      return this.#tables.atLeast[middle]?.[value] ?? 0;
    }
    return Infinity;
  }

  /** What limits an undecided variable besides the forest, as a text. */
  limitsOf(variable: number): string {
    if (!this.#isTouched(variable)) return '';
    let key = this.#allowed[variable]?.join('') ?? '';
    for (const relation of this.#touching[variable] as readonly number[]) {
      key += `r${relation}`;
      for (const read of this.#tables.tables[relation]?.scope ?? []) {
        key += `,${this.decided[read] as number}`;
      }
    }
    return `${key};`;
  }

  middlesOf(edge: number): string {
    let key = '';
    for (const { middle } of this.#edge(edge).joints) {
      if (this.isDecided(middle)) key += `m${middle}=${this.decided[middle] as number}`;
      else if (this.#isTouched(middle)) key += `m${middle}:${this.limitsOf(middle)}`;
    }
    return key;
  }

  isDecided(variable: number): boolean {
    return (this.decided[variable] as number) >= 0;
  }

  /** Whether what stands in the middle of an edge is decided, or something else limits it. */
  isMiddleTouched(edge: number): boolean {
    for (const { middle } of this.#edge(edge).joints) {
      if (this.isDecided(middle) || this.#isTouched(middle)) return true;
    }
    return false;
  }

  #isTouched(variable: number): boolean {
    return (
      this.#allowed[variable] !== null || (this.#touching[variable] as readonly number[]).length > 0
    );
  }

  #edge(edge: number): Edge {
    return this.#forest.edges[edge] as Edge;
  }
}
