/**
 * The least that the variables not yet decided add to the cost, so that along the forest of
 * relations nothing is violated. Relations outside the forest count where all they read but one
 * variable is decided. So it is a bound: no assignment with these decisions costs less.
 *
 * It works outwards from where a change is forced. The message along a way from u to v, for a
 * value of v, is the least that u and all beyond it add: nothing at all if they may stay as they
 * are, and so a relation is asked only near to a change. A message is the same wherever the same
 * is decided beyond, and is kept (`message-store.ts`).
 */

import { type Edge, type Forest, forestOf } from './forest.js';
import { ForestView } from './forest-view.js';
import type { Limit } from './limits.js';
import { MessageStore, nothingDecided, unknown } from './message-store.js';
import type { Tables } from './tables.js';

const none = new Float64Array(0);
const atRoot = -1;

export class Bound {
  readonly #tables: Tables;
  readonly #forest: Forest;
  /** By variable: its values, those that add least first. */
  readonly #order: readonly Int32Array[];
  readonly #kept: MessageStore;
  /** By variable: whether it, or an edge at it, is violated where nothing is changed. */
  readonly #isForced: readonly boolean[];

  // What is seen of the node that is looked at.
  readonly #view: ForestView;
  #node = 0;
  readonly #seenIn: Int32Array;
  /** By way: its messages by value. */
  readonly #messages: Float64Array[];

  constructor(tables: Tables, leastState: number) {
    this.#tables = tables;
    const forest = forestOf(tables);
    this.#forest = forest;
    const sizes = tables.variables.map(({ size }) => size);
    this.#order = sizes.map((size, variable) => cheapestFirst(size, tables.atLeast[variable]));
    const targets = forest.edges.flatMap(({ ends }) => [sizes[ends[1]] ?? 0, sizes[ends[0]] ?? 0]);
    this.#kept = new MessageStore(targets);
    this.#messages = targets.map(() => none);
    this.#seenIn = new Int32Array(sizes.length);
    this.#view = new ForestView(tables, forest, leastState, this.#order);
    this.#isForced = this.#forced();
  }

  /**
   * What is added at least; Infinity where these decisions come to nothing. -1: undecided. Some
   * of the undecided may be told which values they are limited to.
   */
  of(decided: Int32Array, limits: readonly Limit[] = []): number {
    this.#node += 1;
    let cost = this.#view.start(decided, limits);
    for (let variable = 0; variable < decided.length && cost < Infinity; variable += 1) {
      cost += this.#costFrom(variable);
    }
    return cost;
  }

  /** The same, by value of one undecided variable. */
  byValue(decided: Int32Array, variable: number, values: readonly number[]): number[] {
    if (this.#forest.isMiddle[variable] === true) return this.#byMiddle(decided, variable, values);
    this.#node += 1;
    let others = this.#view.start(decided, []);
    this.#see(variable, atRoot);
    for (let other = 0; other < decided.length && others < Infinity; other += 1) {
      others += this.#costFrom(other);
    }
    if (others === Infinity) return values.map(() => Infinity);
    return values.map((value) => others + this.#costAt(variable, value, atRoot, Infinity));
  }

  /** What stands in the middle of an edge is no part of the forest by itself. */
  #byMiddle(decided: Int32Array, variable: number, values: readonly number[]): number[] {
    const atLeast = this.#tables.atLeast[variable] as readonly number[];
    const more = decided.slice();
    return values.map((value) => {
      more[variable] = value;
      return (atLeast[value] as number) + this.of(more);
    });
  }

  /** Variables that something forces even where nothing is changed. */
  #forced(): boolean[] {
    const forced = this.#order.map((_, variable) => !this.#view.allows(variable, 0));
    for (let edge = 0; edge < this.#forest.edges.length; edge += 1) {
      if (this.#view.cost(edge) === 0) continue;
      for (const end of this.#edge(edge).ends) forced[end] = true;
    }
    return forced;
  }

  /** What the undecided parts of the forest cost that this variable forces a change of. */
  #costFrom(variable: number): number {
    const value = this.#view.decided[variable] as number;
    // Its edge counts what stands in the middle.
    if (this.#forest.isMiddle[variable] === true) return 0;
    if (value < 0) {
      if (this.#seenIn[variable] === this.#node || !this.#isTrigger(variable)) return 0;
      this.#see(variable, atRoot);
      return this.#leastFrom(variable);
    }
    if (value === 0 && this.#isForced[variable] === false) return 0;
    let cost = 0;
    for (const way of this.#forest.waysTo[variable] as readonly number[]) {
      const next = this.#from(way);
      if (this.#view.isDecided(next) || this.#seenIn[next] === this.#node) continue;
      this.#see(next, way);
      cost += this.#message(way, value);
    }
    return cost;
  }

  /** Whether an undecided variable may have to change by itself. */
  #isTrigger(variable: number): boolean {
    if (this.#isForced[variable] === true) return true;
    if (!this.#view.allows(variable, 0)) return true;
    for (const way of this.#forest.waysTo[variable] as readonly number[]) {
      if (this.#view.isEdgeTouched(way >> 1)) return true;
    }
    return false;
  }

  /**
   * Goes once through an undecided part, and finds for each way what is known of it. What is
   * beyond a way is told by a text of all that is decided or limited in it or at it.
   */
  #see(variable: number, way: number): number {
    this.#seenIn[variable] = this.#node;
    let key = this.#view.limitsOf(variable);
    for (const next of this.#forest.waysTo[variable] as readonly number[]) {
      if (next === (way ^ 1)) continue;
      const from = this.#from(next);
      if (this.#view.isDecided(from)) {
        const value = this.#view.decided[from] as number;
        key += `${next}=${value}${this.#view.edgeLimitsOf(next >> 1)};`;
      } else {
        const beyond = this.#see(from, next);
        if (beyond !== nothingDecided) key += `${next}>${beyond};`;
      }
    }
    if (way === atRoot) return nothingDecided;
    key += this.#view.edgeLimitsOf(way >> 1);
    const { number, messages } = this.#kept.of(way, key);
    this.#messages[way] = messages;
    return number;
  }

  /** The least that is added beyond a way, for a value of the variable that it leads to. */
  #message(way: number, value: number): number {
    const messages = this.#messages[way] as Float64Array;
    const known = messages[value] as number;
    if (known !== unknown) return known;
    const least = this.#leastAlong(way, value);
    messages[value] = least;
    return least;
  }

  /** The least over the values of a variable that begins an undecided part, and beyond. */
  #leastFrom(variable: number): number {
    const atLeast = this.#tables.atLeast[variable] as readonly number[];
    let least = Infinity;
    for (const value of this.#order[variable] as Int32Array) {
      if ((atLeast[value] as number) >= least) break;
      least = Math.min(least, this.#costAt(variable, value, atRoot, least));
    }
    return least;
  }

  /** The least over the values of the variable that a way leads from, and beyond. */
  #leastAlong(way: number, to: number): number {
    const variable = this.#from(way);
    const atLeast = this.#tables.atLeast[variable] as readonly number[];
    let least = Infinity;
    for (let place = 0; ; place += 1) {
      const value = this.#view.partner(way, to, place, least);
      if (value < 0 || (atLeast[value] as number) >= least) break;
      least = Math.min(least, this.#costAt(variable, value, way, least));
    }
    return least;
  }

  /** The same at one value; anything not below `below` where that is not reached. */
  #costAt(variable: number, value: number, way: number, below: number): number {
    if (!this.#view.allows(variable, value)) return Infinity;
    let cost = this.#tables.atLeast[variable]?.[value] ?? 0;
    if (way !== atRoot) cost += this.#view.cost(way >> 1);
    for (const next of this.#forest.waysTo[variable] as readonly number[]) {
      if (cost >= below) break;
      if (next === (way ^ 1)) continue;
      cost += this.#view.isDecided(this.#from(next))
        ? this.#view.cost(next >> 1)
        : this.#message(next, value);
    }
    return cost;
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
