/**
 * The exact search: every irredundant assignment that is valid, the cheapest first.
 *
 * A node decides some variables and leaves the others as they are. The node with the least bound
 * is looked at first. Where its assignment violates a relation it is divided over what could mend
 * that (`branching.ts`). Where nothing is violated its assignment is a result, and whatever changes
 * more could put the rest back. Only in the phase `open` may more be worth while there: it can
 * make hold what is open, and so it is divided over what could do that.
 *
 * Nothing is left out: a result below a node is below just one of its children, or is its own
 * assignment, or has a group of changes that can be put back.
 */

import { Bound } from './bound.js';
import { Brancher, type Branching } from './branching.js';
import { Children } from './children.js';
import { isIrredundant, isNeedless } from './irredundance.js';
import { PassedSet } from './passed-set.js';
import { type Budget, type Found, type Phase, type Problem, STATE } from './problem.js';
import { Queue } from './queue.js';
import { Tables } from './tables.js';

/** No variable. */
const nothing = -1;

/** What comes first of two entries with the same bound. */
const RANK = { result: 0, node: 1, children: 2 } as const;

interface Entry {
  /** Nothing that comes of it costs less. */
  readonly bound: number;
  readonly rank: (typeof RANK)[keyof typeof RANK];
  /** By variable: its value, -1 where it is not decided. */
  readonly decided: Int32Array;
  readonly countDecided: number;
  readonly floor: number;
  /** What it changes and its parent does not, until it is known that this is not needless. */
  untested: number;
  /** The children of the node that are still to be made. */
  readonly children: Children | null;
  /** How many of the sets passed over its bound takes account of. */
  passed: number;
}

export class Search {
  readonly #tables: Tables;
  readonly #phase: Phase;
  readonly #budget: Budget;
  readonly #floor: Bound;
  readonly #brancher: Brancher;
  readonly #queue = new Queue<Entry>(compare);
  /** By changed places: the cost of what has been found with them. */
  readonly #costs = new Map<string, number>();
  /** The same sets of places, in the order of their costs. */
  readonly #passed: PassedSet[] = [];
  #isBegun = false;

  /** Searches that are given the same tables ask nothing twice. */
  constructor(problem: Problem | Tables, phase: Phase, budget: Budget) {
    this.#tables = problem instanceof Tables ? problem : new Tables(problem);
    this.#phase = phase;
    this.#budget = budget;
    const leastState = phase === 'proven' ? STATE.holds : STATE.open;
    this.#floor = new Bound(this.#tables, leastState);
    this.#brancher = new Brancher(this.#tables, leastState);
  }

  /** Nothing is left out. */
  get isExhausted(): boolean {
    return this.#isBegun && this.#queue.least === undefined;
  }

  /** No result still to come costs less; Infinity where there is none. */
  get bound(): number {
    if (!this.#isBegun) return 0;
    return this.#queue.least?.bound ?? Infinity;
  }

  /**
   * The next valid, irredundant assignment, never cheaper than the one before. Once one has been
   * given, dearer ones that change the same places are passed over. Null where there is no more,
   * or the budget is used up: then more budget goes on from there.
   */
  next(): Found | null {
    while (!this.isExhausted && this.#budget.left > 0) {
      const entry = this.#queue.pop();
      if (entry === undefined) {
        this.#begin();
      } else if (entry.rank === RANK.result) {
        const found = this.#accept(entry);
        if (found !== null) return found;
      } else if (!this.#test(entry) && !this.#raise(entry)) {
        if (entry.children !== null) this.#makeChild(entry, entry.children);
        else this.#divide(entry);
      }
    }
    return null;
  }

  #begin(): void {
    this.#isBegun = true;
    this.#look(new Int32Array(this.#tables.variables.length).fill(-1), nothing, 0, 0);
  }

  /** Makes the child with the least bound, and leaves the others for when theirs is the least. */
  #makeChild(entry: Entry, children: Children): void {
    if (!children.isPriced) {
      this.#budget.left -= 1;
      children.price();
      this.#pushChildren(entry, children);
      return;
    }
    const { bound } = children;
    const child = children.take();
    this.#pushChildren(entry, children);
    const countDecided = entry.countDecided + child.countMore;
    this.#look(child.decided, child.latest, countDecided, Math.max(entry.bound, bound));
  }

  /** Looks at a node for the first time: it goes into the queue with its bound. */
  #look(decided: Int32Array, latest: number, countDecided: number, atLeast: number): void {
    this.#budget.left -= 1;
    const floor = this.#tables.floor(decided);
    if (floor === Infinity) return;
    const bound = Math.max(atLeast, floor + this.#floor.of(decided));
    if (bound === Infinity) return;
    this.#queue.push({
      bound,
      rank: RANK.node,
      decided,
      countDecided,
      floor,
      untested: latest,
      children: null,
      passed: 0,
    });
  }

  /**
   * Drops a node where all that is below has something in it that can be put back. True where it
   * has been dropped, or has gone back into the queue.
   */
  #test(entry: Entry): boolean {
    if (entry.untested === nothing) return false;
    const isDropped = isNeedless(this.#tables, entry.decided, entry.untested, this.#budget);
    if (isDropped !== null) entry.untested = nothing;
    if (isDropped !== true) this.#queue.push(entry);
    return true;
  }

  /** Raises the bound by what has been given since it was computed, and puts the entry back. */
  #raise(entry: Entry): boolean {
    let { passed } = entry;
    const enough = entry.bound - entry.floor;
    let least = enough;
    for (; passed < this.#passed.length; passed += 1) {
      const set = this.#passed[passed] as PassedSet;
      // Others that cost the same are still wanted.
      if (set.cost >= entry.bound) break;
      least = Math.max(least, set.least(entry.decided, this.#floor, least));
    }
    if (passed === entry.passed) return false;
    this.#budget.left -= 1;
    entry.passed = passed;
    const bound = Math.max(entry.bound, entry.floor + least);
    if (bound < Infinity) this.#queue.push({ ...entry, bound });
    return true;
  }

  #divide(entry: Entry): void {
    const mending = this.#brancher.mending(entry.decided);
    if (mending !== null) {
      this.#branch(entry, mending);
      return;
    }
    const values = valuesOf(entry.decided);
    const open = this.#openAt(values);
    if (this.#phase === 'open' && open.length === 0) return;
    const cost = this.#tables.exact(values);
    if (cost < Infinity) this.#queue.push({ ...entry, bound: cost, rank: RANK.result });
    if (open.length === 0) return;
    const blamed = open.flatMap((relation) => this.#tables.blameAt(relation, values));
    this.#branch(entry, this.#brancher.over(entry.decided, new Set(blamed)));
  }

  #branch(entry: Entry, branching: Branching): void {
    const { decided, floor } = entry;
    this.#pushChildren(entry, new Children(this.#tables, this.#floor, decided, floor, branching));
  }

  #pushChildren(entry: Entry, children: Children): void {
    const bound = Math.max(entry.bound, children.bound);
    if (bound < Infinity) this.#queue.push({ ...entry, bound, rank: RANK.children, children });
  }

  #accept(entry: Entry): Found | null {
    const values = valuesOf(entry.decided);
    const places = this.#changedPlaces(values);
    const known = this.#costs.get(places);
    if (known !== undefined && known < entry.bound) return null;
    const stays = isIrredundant(this.#tables, values, this.#budget);
    // Without a budget it is not known yet: it stays in the queue.
    if (stays === null) this.#queue.push(entry);
    if (stays !== true) return null;
    if (known === undefined) this.#pass(values, places, entry.bound);
    return { values, cost: entry.bound, open: this.#openAt(values) };
  }

  #pass(values: readonly number[], places: string, cost: number): void {
    this.#costs.set(places, cost);
    const changed = [...values.keys()].filter((one) => values[one] !== 0);
    const set = changed.filter((one) => this.#tables.variables[one]?.isPlace === true);
    this.#passed.push(new PassedSet(this.#tables, new Set(set), cost));
  }

  #openAt(values: readonly number[]): number[] {
    const relations = [...this.#tables.tables.keys()];
    return relations.filter((one) => this.#tables.stateAt(one, values) === STATE.open);
  }

  #changedPlaces(values: readonly number[]): string {
    const { variables } = this.#tables;
    const places = [...values.keys()];
    return places.filter((one) => values[one] !== 0 && variables[one]?.isPlace === true).join();
  }
}

/** Least bound first, then what is nearest to a result, then what it has decided: a total order. */
function compare(one: Entry, other: Entry): number {
  if (one.bound !== other.bound) return one.bound < other.bound ? -1 : 1;
  if (one.rank !== other.rank) return one.rank - other.rank;
  if (one.countDecided !== other.countDecided) return other.countDecided - one.countDecided;
  for (let variable = 0; variable < one.decided.length; variable += 1) {
    const difference = (one.decided[variable] as number) - (other.decided[variable] as number);
    if (difference !== 0) return difference;
  }
  return 0;
}

function valuesOf(decided: Int32Array): number[] {
  return Array.from(decided, (value) => Math.max(value, 0));
}
