/**
 * What values are left of each variable once those are taken away that no relation has a place
 * for, whatever is left of the other variables. It can be taken back as far as it was taken.
 *
 * A relation is looked at by classes: one lives as long as one of its values does. For each the
 * combination that was last found to hold is remembered, so that most of what is looked at again
 * is not asked again. A relation of many variables is looked at where few combinations are left.
 */

import type { State } from './problem.js';
import type { Table } from './table.js';
import type { Tables } from './tables.js';

/** Of more combinations of the other variables none is looked for. */
const MOST_PARTNERS = 4096;

/** A variable in the scope of a relation. */
interface Place {
  readonly table: number;
  readonly variable: number;
  readonly classOf: readonly number[];
  /** By class: its values. */
  readonly members: readonly (readonly number[])[];
  /** By class: how many of its values are left. */
  readonly left: Int32Array;
  /** How many classes are left. */
  classes: number;
  /** By class: the classes, by place, of a combination that was found to hold. */
  readonly found: (Int32Array | null)[];
}

export class Narrowing {
  /** Combinations looked at. */
  looks = 0;
  /** By relation: how often it left nothing of a variable, and one. */
  readonly weights: Float64Array;
  readonly #tables: Tables;
  readonly #least: State;
  /** By variable, by value: 1 where it is left. */
  readonly #isLeft: readonly Uint8Array[];
  readonly #counts: Int32Array;
  /** By relation, in the order of its scope. */
  readonly #places: readonly (readonly Place[])[];
  /** By variable. */
  readonly #placesOf: readonly Place[][];
  /** What was taken away, variable and value in turns. */
  readonly #taken: number[] = [];
  readonly #queue: number[] = [];
  readonly #isQueued: Uint8Array;
  readonly #values: Int32Array;

  constructor(tables: Tables, leastState: State) {
    this.#tables = tables;
    this.#least = leastState;
    const sizes = tables.variables.map(({ size }) => size);
    this.#isLeft = sizes.map((size) => new Uint8Array(size).fill(1));
    this.#counts = Int32Array.from(sizes);
    this.#values = new Int32Array(sizes.length);
    this.#places = tables.tables.map(placesOf);
    const of: Place[][] = sizes.map(() => []);
    for (const place of this.#places.flat()) of[place.variable]?.push(place);
    this.#placesOf = of;
    this.#isQueued = new Uint8Array(tables.tables.length);
    this.weights = new Float64Array(tables.tables.length).fill(1);
  }

  /** A place to go back to. */
  get mark(): number {
    return this.#taken.length;
  }

  count(variable: number): number {
    return this.#counts[variable] as number;
  }

  isLeft(variable: number, value: number): boolean {
    return (this.#isLeft[variable] as Uint8Array)[value] === 1;
  }

  /** The first value that is left. */
  first(variable: number): number {
    return (this.#isLeft[variable] as Uint8Array).indexOf(1);
  }

  backTo(mark: number): void {
    while (this.#taken.length > mark) {
      const value = this.#taken.pop() as number;
      const variable = this.#taken.pop() as number;
      (this.#isLeft[variable] as Uint8Array)[value] = 1;
      this.#counts[variable] = this.count(variable) + 1;
      for (const place of this.#placesOf[variable] as Place[]) {
        const own = place.classOf[value] as number;
        if (place.left[own] === 0) place.classes += 1;
        place.left[own] = (place.left[own] as number) + 1;
      }
    }
  }

  /** Looks at every relation; false where nothing is left of a variable. */
  all(): boolean {
    for (let table = 0; table < this.#places.length; table += 1) this.#enqueue(table);
    return this.#run();
  }

  /** Leaves only this value; false where nothing is left of another variable. */
  only(variable: number, value: number): boolean {
    const isLeft = this.#isLeft[variable] as Uint8Array;
    for (let other = 0; other < isLeft.length; other += 1) {
      if (other !== value && isLeft[other] === 1) this.#take(variable, other);
    }
    return this.#run();
  }

  /** Takes this value away; false where nothing is left of a variable. */
  without(variable: number, value: number): boolean {
    this.#take(variable, value);
    return this.count(variable) > 0 ? this.#run() : this.#stop();
  }

  #take(variable: number, value: number): void {
    (this.#isLeft[variable] as Uint8Array)[value] = 0;
    this.#counts[variable] = this.count(variable) - 1;
    this.#taken.push(variable, value);
    for (const place of this.#placesOf[variable] as Place[]) {
      const own = place.classOf[value] as number;
      place.left[own] = (place.left[own] as number) - 1;
      if (place.left[own] !== 0) continue;
      place.classes -= 1;
      this.#enqueue(place.table);
    }
  }

  #enqueue(table: number): void {
    if (this.#isQueued[table] === 1) return;
    this.#isQueued[table] = 1;
    this.#queue.push(table);
  }

  #run(): boolean {
    for (let at = 0; at < this.#queue.length; at += 1) {
      const table = this.#queue[at] as number;
      this.#isQueued[table] = 0;
      if (this.#revise(table)) continue;
      this.weights[table] = (this.weights[table] as number) + 1;
      return this.#stop();
    }
    this.#queue.length = 0;
    return true;
  }

  #stop(): false {
    for (const table of this.#queue) this.#isQueued[table] = 0;
    this.#queue.length = 0;
    return false;
  }

  /** Takes away what has no partners in this relation; false where nothing is left. */
  #revise(table: number): boolean {
    const places = this.#places[table] as readonly Place[];
    for (const [at, place] of places.entries()) {
      const partners = places.reduce((product, { classes }, other) => {
        return other === at ? product : product * classes;
      }, 1);
      if (partners > MOST_PARTNERS) continue;
      for (let own = 0; own < place.left.length; own += 1) {
        if (place.left[own] === 0 || this.#isFound(places, place, at, own)) continue;
        for (const value of place.members[own] as readonly number[]) {
          if (this.isLeft(place.variable, value)) this.#take(place.variable, value);
        }
      }
      if (this.count(place.variable) === 0) return false;
    }
    return true;
  }

  /** Whether a combination that is left holds with this class at this place. */
  #isFound(places: readonly Place[], place: Place, at: number, own: number): boolean {
    const before = place.found[own];
    if (before && places.every(({ left }, other) => left[before[other] as number] !== 0)) {
      return true;
    }
    const chosen = new Int32Array(places.length);
    const isFound = this.#search(places, at, own, 0, chosen);
    if (isFound) place.found[own] = chosen;
    return isFound;
  }

  #search(
    places: readonly Place[],
    at: number,
    own: number,
    depth: number,
    chosen: Int32Array,
  ): boolean {
    const place = places[depth];
    if (place === undefined) {
      this.looks += 1;
      return this.#tables.stateAt((places[at] as Place).table, this.#values) >= this.#least;
    }
    const from = depth === at ? own : 0;
    const to = depth === at ? own + 1 : place.left.length;
    for (let one = from; one < to; one += 1) {
      if (place.left[one] === 0) continue;
      chosen[depth] = one;
      this.#values[place.variable] = place.members[one]?.[0] ?? 0;
      if (this.#search(places, at, own, depth + 1, chosen)) return true;
    }
    return false;
  }
}

function placesOf({ scope, classes }: Table, table: number): Place[] {
  return scope.map((variable, at) => {
    const classOf = classes[at] as readonly number[];
    const members = Array.from({ length: Math.max(...classOf) + 1 }, (): number[] => []);
    for (const [value, own] of classOf.entries()) members[own]?.push(value);
    return {
      table,
      variable,
      classOf,
      members,
      left: Int32Array.from(members, ({ length }) => length),
      classes: members.length,
      found: members.map(() => null),
    };
  });
}
