/**
 * The forest as it is seen from one node: which values a variable may have beside what is decided,
 * and what an edge costs. Relations outside the forest are looked at where all they read but one
 * variable is decided.
 */

import type { Edge, Forest } from './forest.js';
import { type Limit, Limits, type Worse } from './limits.js';
import { unknown } from './message-store.js';
import { STATE } from './problem.js';
import type { Tables } from './tables.js';

/** Of larger edges nothing is noted; their relations have tables of their own. */
const mostCells = 1 << 16;
const kept = 1;
const violated = 2;

/** Values that go with one of another variable, as far as they have been looked for. */
interface Partners {
  readonly values: number[];
  countSeen: number;
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
  /** By edge: what its own relations say of both values; 0 where it is not known yet. */
  readonly #pairs: readonly (Uint8Array | null)[];
  /** By way, by value of the variable that it leads to. */
  readonly #partners: readonly Partners[][];
  readonly #limits: Limits;
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
    const cells = forest.edges.map(({ ends: [one, other] }) => {
      const count = (sizes[one] ?? 0) * (sizes[other] ?? 0);
      return count > mostCells ? 0 : count;
    });
    this.#costs = forest.edges.map(({ joints }, edge) =>
      joints.length === 0 || cells[edge] === 0
        ? null
        : new Float64Array(cells[edge] ?? 0).fill(unknown),
    );
    this.#pairs = forest.edges.map(({ relations }, edge) =>
      relations.length === 0 || cells[edge] === 0 ? null : new Uint8Array(cells[edge] ?? 0),
    );
    this.#limits = new Limits(sizes.length, forest);
    this.#partners = forest.edges.flatMap(() => [[], []]);
    this.decided = new Int32Array(sizes.length).fill(-1);
    this.#values = new Int32Array(sizes.length);
    this.#touching = sizes.map(() => []);
  }

  /**
   * The value at this place among those of the variable that a way leads from which go with a
   * value of the one that it leads to, the cheapest first; -1 where none is left that adds less
   * than `below`. What else limits them is not looked at.
   */
  partner(way: number, value: number, place: number, below: number): number {
    const edge = way >> 1;
    const from = this.#edge(edge).ends[way & 1] as number;
    const order = this.#order[from] as Int32Array;
    // A touched edge is another one; and what is limited need not be looked for.
    if (this.isEdgeTouched(edge) || this.#isTouched(from)) return order[place] ?? -1;
    const lists = this.#partners[way] as Partners[];
    const list = lists[value] ?? { values: [], countSeen: 0 };
    lists[value] = list;
    while (list.values.length <= place) {
      const next = order[list.countSeen];
      if (next === undefined || (this.#tables.atLeast[from]?.[next] ?? 0) >= below) return -1;
      list.countSeen += 1;
      this.#values[from] = next;
      if (this.cost(edge) < Infinity) list.values.push(next);
    }
    return list.values[place] as number;
  }

  /** Looks at another node; gives what the edges between decided variables cost. */
  start(decided: Int32Array, limits: readonly Limit[]): number {
    this.#limits.set(limits);
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
    const allowed = this.#limits.allowed[variable];
    if (allowed && allowed[value] !== 1) {
      return false;
    }
    const alone = this.#forest.alone[variable] as readonly number[];
    if (alone.length > 0 && !this.#areKept(alone)) return false;
    const touching = this.#touching[variable] as readonly number[];
    return touching.length === 0 || this.#areKept(touching);
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
    const width = (this.#order[ends[1]] as Int32Array).length;
    const cell = (this.#values[ends[0]] as number) * width + (this.#values[ends[1]] as number);
    if (relations.length > 0 && !this.#isKept(edge, cell)) return Infinity;
    for (const worse of this.#limits.worse[edge] as readonly Worse[]) {
      if (relations.includes(worse.relation) && !this.#isWorse(worse)) return Infinity;
    }
    if (joints.length === 0) return 0;
    const costs = this.isEdgeTouched(edge) ? null : this.#costs[edge];
    const known = costs?.[cell] ?? unknown;
    if (known !== unknown) return known;
    let cost = 0;
    for (const { middle, relations: read } of joints) cost += this.#middleCost(edge, middle, read);
    if (costs) costs[cell] = cost;
    return cost;
  }

  /** Whether the relations between both ends alone allow their values. */
  #isKept(edge: number, cell: number): boolean {
    const pairs = this.#pairs[edge] as Uint8Array | null;
    const known = pairs === null ? 0 : pairs[cell];
    if (known !== 0) return known === kept;
    const isKept = this.#areKept(this.#edge(edge).relations);
    if (pairs !== null) pairs[cell] = isKept ? kept : violated;
    return isKept;
  }

  /** What stands in the middle adds at least; nothing more where it is decided. */
  #middleCost(edge: number, middle: number, relations: readonly number[]): number {
    const worse = (this.#limits.worse[edge] as readonly Worse[]).filter((one) =>
      relations.includes(one.relation),
    );
    const isKept = (): boolean =>
      this.#areKept(relations) && worse.every((one) => this.#isWorse(one));
    if (this.isDecided(middle)) return isKept() ? 0 : Infinity;
    for (const value of this.#order[middle] as Int32Array) {
      if (!this.allows(middle, value) || !isKept()) continue;
      return this.#tables.atLeast[middle]?.[value] ?? 0;
    }
    return Infinity;
  }

  #isWorse({ relation, outside }: Worse): boolean {
    const values = outside.map((variable) => this.#values[variable] as number);
    for (const variable of outside) this.#values[variable] = 0;
    // What is open may be open in the result too; that is left out.
    const isWorse = this.#tables.stateAt(relation, this.#values) < STATE.holds;
    outside.forEach((variable, index) => {
      this.#values[variable] = values[index] as number;
    });
    return isWorse;
  }

  /** What limits an undecided variable besides the forest, as a text. */
  limitsOf(variable: number): string {
    if (!this.#isTouched(variable)) return '';
    let key = this.#limits.allowed[variable]?.join('') ?? '';
    for (const relation of this.#touching[variable] as readonly number[]) {
      key += `r${relation}`;
      for (const read of this.#tables.tables[relation]?.scope ?? []) {
        key += `,${this.decided[read] as number}`;
      }
    }
    return `${key};`;
  }

  /** What is decided or limited of an edge besides its ends, as a text. */
  edgeLimitsOf(edge: number): string {
    let key = '';
    for (const { relation, outside } of this.#limits.worse[edge] as readonly Worse[]) {
      key += `w${relation}:${outside.join()};`;
    }
    for (const { middle } of this.#edge(edge).joints) {
      if (this.isDecided(middle)) key += `m${middle}=${this.decided[middle] as number}`;
      else if (this.#isTouched(middle)) key += `m${middle}:${this.limitsOf(middle)}`;
    }
    return key;
  }

  isDecided(variable: number): boolean {
    return (this.decided[variable] as number) >= 0;
  }

  /** Whether something limits an edge besides its ends, or what is in its middle is decided. */
  isEdgeTouched(edge: number): boolean {
    if ((this.#limits.worse[edge] as readonly Worse[]).length > 0) return true;
    for (const { middle } of this.#edge(edge).joints) {
      if (this.isDecided(middle) || this.#isTouched(middle)) return true;
    }
    return false;
  }

  #isTouched(variable: number): boolean {
    return (
      this.#limits.allowed[variable] !== null ||
      (this.#touching[variable] as readonly number[]).length > 0
    );
  }

  #edge(edge: number): Edge {
    return this.#forest.edges[edge] as Edge;
  }
}
