/**
 * The least that the variables not yet decided add to the cost, so that along the forest of
 * relations nothing is violated. Relations outside the forest count where all they read but one
 * variable is decided. So it is a bound: no assignment with these decisions costs less.
 *
 * It works outwards from where a change is forced. The message along a way from u to v, for a
 * value of v, is the least that u and all beyond it add: nothing at all if they may stay as they
 * are, and so a relation is asked only near to a change. Where nothing beyond is decided the
 * message is the same in every node, and is kept for the whole search.
 */

import { type Edge, type Forest, forestOf } from './forest.js';
import type { Tables } from './tables.js';

const unknown = -1;
const atRoot = -1;

export class Bound {
  readonly #tables: Tables;
  readonly #forest: Forest;
  /** The least state that a relation may have. */
  readonly #least: number;
  /** By variable: its values, those that add least first. */
  readonly #order: readonly Int32Array[];
  /** By way: messages by value, for those with nothing decided beyond, and for this node. */
  readonly #kept: readonly Float64Array[];
  readonly #fresh: readonly Float64Array[];
  readonly #isFreshIn: Int32Array[];
  /** By edge with joints: its cost by both values, where no middle is decided. */
  readonly #costs: readonly (Float64Array | null)[];
  /** By variable: whether it, or an edge at it, is violated where nothing is changed. */
  readonly #isForced: readonly boolean[];

  // What is seen of the node that is looked at. The values of the undecided are scratch.
  #node = 0;
  #decided: Int32Array = new Int32Array(0);
  readonly #values: Int32Array;
  readonly #seenIn: Int32Array;
  /** By way: whether something beyond it is decided or touched. */
  readonly #isNear: Uint8Array;
  /** By variable: relations outside the forest that read only it beside decided ones. */
  readonly #touching: number[][];

  constructor(tables: Tables, leastState: number) {
    this.#tables = tables;
    this.#least = leastState;
    const forest = forestOf(tables);
    this.#forest = forest;
    const sizes = tables.variables.map(({ size }) => size);
    this.#order = sizes.map((size, variable) => cheapestFirst(size, tables.atLeast[variable]));
    const targets = forest.edges.flatMap(({ ends }) => [sizes[ends[1]] ?? 0, sizes[ends[0]] ?? 0]);
    this.#kept = targets.map((size) => new Float64Array(size).fill(unknown));
    this.#fresh = targets.map((size) => new Float64Array(size));
    this.#isFreshIn = targets.map((size) => new Int32Array(size));
    this.#costs = forest.edges.map(({ ends: [one, other], joints }) => {
      const cells = (sizes[one] ?? 0) * (sizes[other] ?? 0);
      return joints.length === 0 || cells > 1 << 16 ? null : new Float64Array(cells).fill(unknown);
    });
    this.#values = new Int32Array(sizes.length);
    this.#seenIn = new Int32Array(sizes.length);
    this.#isNear = new Uint8Array(targets.length);
    this.#touching = sizes.map(() => []);
    this.#decided = new Int32Array(sizes.length).fill(-1);
    this.#isForced = this.#forced();
  }

  /** What is added at least; Infinity where these decisions come to nothing. -1: undecided. */
  of(decided: Int32Array): number {
    this.#node += 1;
    this.#decided = decided;
    for (let variable = 0; variable < decided.length; variable += 1) {
      const value = decided[variable] as number;
      this.#values[variable] = Math.max(value, 0);
    }
    let cost = this.#decidedCost();
    for (let variable = 0; variable < decided.length && cost < Infinity; variable += 1) {
      cost += this.#costFrom(variable);
    }
    return cost;
  }

  /** Variables that something forces even where nothing is changed. */
  #forced(): boolean[] {
    const forced = this.#values.map((_, variable) => (this.#allows(variable) ? 0 : 1));
    for (let edge = 0; edge < this.#forest.edges.length; edge += 1) {
      if (this.#cost(edge) === 0) continue;
      for (const end of this.#edge(edge).ends) forced[end] = 1;
    }
    return Array.from(forced, (one) => one === 1);
  }

  /** What the relations between decided variables cost; finds what the others touch. */
  #decidedCost(): number {
    for (let variable = 0; variable < this.#decided.length; variable += 1) {
      (this.#touching[variable] as number[]).length = 0;
      if (this.#isDecided(variable) && !this.#allows(variable)) return Infinity;
    }
    for (const relation of this.#forest.outside) {
      if (!this.#touch(relation)) return Infinity;
    }
    let cost = 0;
    const edges = this.#forest.edges;
    for (let edge = 0; edge < edges.length; edge += 1) {
      const [one, other] = (edges[edge] as Edge).ends;
      if (this.#isDecided(one) && this.#isDecided(other)) cost += this.#cost(edge);
    }
    return cost;
  }

  /** False where the relation is violated by what is decided. */
  #touch(relation: number): boolean {
    let open = -1;
    let isChanged = false;
    for (const variable of this.#tables.tables[relation]?.scope ?? []) {
      const value = this.#decided[variable] as number;
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

  /** What the undecided parts of the forest cost that this variable forces a change of. */
  #costFrom(variable: number): number {
    const value = this.#decided[variable] as number;
    // Its edge counts what stands in the middle.
    if (this.#forest.isMiddle[variable] === true) return 0;
    if (value < 0) {
      if (this.#seenIn[variable] === this.#node || !this.#isTrigger(variable)) return 0;
      this.#see(variable, atRoot);
      return this.#leastAt(variable, atRoot);
    }
    if (value === 0 && this.#isForced[variable] === false) return 0;
    let cost = 0;
    for (const way of this.#forest.waysTo[variable] as readonly number[]) {
      const next = this.#from(way);
      if (this.#isDecided(next) || this.#seenIn[next] === this.#node) continue;
      this.#see(next, way);
      cost += this.#message(way, value);
    }
    return cost;
  }

  /** Whether an undecided variable may have to change by itself. */
  #isTrigger(variable: number): boolean {
    if (this.#isForced[variable] === true) return true;
    this.#values[variable] = 0;
    if (!this.#allows(variable)) return true;
    return (this.#forest.waysTo[variable] as readonly number[]).some((way) =>
      this.#edge(way >> 1).joints.some(({ middle }) => (this.#decided[middle] as number) > 0),
    );
  }

  /** Goes once through an undecided part, and says whether anything in or at it is decided. */
  #see(variable: number, way: number): boolean {
    this.#seenIn[variable] = this.#node;
    let isNear = (this.#touching[variable] as number[]).length > 0;
    for (const next of this.#forest.waysTo[variable] as readonly number[]) {
      if (next === (way ^ 1)) continue;
      const isDecided = this.#isDecided(this.#from(next));
      if (isDecided || this.#see(this.#from(next), next)) isNear = true;
      if (isDecided && this.#hasDecidedMiddle(next)) isNear = true;
    }
    if (way !== atRoot) {
      isNear = isNear || this.#hasDecidedMiddle(way);
      this.#isNear[way] = isNear ? 1 : 0;
    }
    return isNear;
  }

  /** The least that is added beyond a way, for a value of the variable that it leads to. */
  #message(way: number, value: number): number {
    const isNear = this.#isNear[way] === 1;
    const messages = (isNear ? this.#fresh[way] : this.#kept[way]) as Float64Array;
    const isFreshIn = this.#isFreshIn[way] as Int32Array;
    const isKnown = isNear ? isFreshIn[value] === this.#node : messages[value] !== unknown;
    if (isKnown) return messages[value] as number;
    const least = this.#leastAt(this.#from(way), way);
    messages[value] = least;
    if (isNear) isFreshIn[value] = this.#node;
    return least;
  }

  /**
   * The least over the values of an undecided variable, and all beyond it. The one that it is
   * reached from has its value already.
   */
  #leastAt(variable: number, way: number): number {
    const atLeast = this.#tables.atLeast[variable] as readonly number[];
    let least = Infinity;
    for (const value of this.#order[variable] as Int32Array) {
      let cost = atLeast[value] as number;
      if (cost >= least) break;
      this.#values[variable] = value;
      if (!this.#allows(variable)) continue;
      if (way !== atRoot) cost += this.#cost(way >> 1);
      for (const next of this.#forest.waysTo[variable] as readonly number[]) {
        if (cost >= least) break;
        if (next === (way ^ 1)) continue;
        cost += this.#isDecided(this.#from(next))
          ? this.#cost(next >> 1)
          : this.#message(next, value);
      }
      if (cost < least) least = cost;
      if (least === 0) break;
    }
    return least;
  }

  /** Whether what reads this variable alone, or beside decided ones, allows its value. */
  #allows(variable: number): boolean {
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
  #cost(edge: number): number {
    const { ends, relations, joints } = this.#edge(edge);
    if (!this.#areKept(relations)) return Infinity;
    if (joints.length === 0) return 0;
    const costs = joints.some(({ middle }) => this.#isDecided(middle)) ? null : this.#costs[edge];
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
    if (this.#isDecided(middle)) return this.#areKept(relations) ? 0 : Infinity;
    for (const value of this.#order[middle] as Int32Array) {
      this.#values[middle] = value;
      const isKept = this.#areKept(this.#forest.alone[middle] as readonly number[]);
      if (isKept && this.#areKept(relations)) return this.#tables.atLeast[middle]?.[value] ?? 0;
    }
    return Infinity;
  }

  #isDecided(variable: number): boolean {
    return (this.#decided[variable] as number) >= 0;
  }

  #hasDecidedMiddle(way: number): boolean {
    return this.#edge(way >> 1).joints.some(({ middle }) => this.#isDecided(middle));
  }

  /** The variable that a way leads from. */
  #from(way: number): number {
    return this.#edge(way >> 1).ends[way & 1] as number;
  }

  #edge(edge: number): Edge {
    return this.#forest.edges[edge] as Edge;
  }
}

function cheapestFirst(size: number, atLeast: readonly number[] = []): Int32Array {
  const values = Array.from({ length: size }, (_, value) => value);
  const costOf = (value: number): number => atLeast[value] ?? 0;
  // Value 0 before all others that add nothing: to leave something as it is comes first.
  values.sort((one, other) =>
    costOf(one) < costOf(other) ? -1 : costOf(one) > costOf(other) ? 1 : one - other,
  );
  return Int32Array.from(values);
}
