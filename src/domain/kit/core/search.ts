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
 * assignment, or has a group of changes that can be put back. Two things keep the search from
 * going through what nobody wants: a node is dropped where every result below has something
 * needless in it (`irredundance.ts`), and what has been given raises the bounds of all nodes that
 * would only bring other ways of changing the same places (`passed-set.ts`, `apart.ts`).
 */

import { leastApart } from './apart.js';
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

/** So many bounds of one node are about as much work as looking at a new one. */
const looksInStep = 16;

/** What comes first of two entries with the same bound. */
const RANK = { result: 0, node: 1, children: 2 } as const;

/** Something to be looked at; it is changed only while it is not in the queue. */
class Entry {
  /** Nothing that comes of it costs less. */
  bound: number;
  rank: (typeof RANK)[keyof typeof RANK];
  /** By variable: its value, -1 where it is not decided. */
  readonly decided: Int32Array;
  readonly countDecided: number;
  /** What the decided variables cost. */
  readonly floor: number;
  /** What it changes and its parent does not, until it is known that this is not needless. */
  untested: number;
  /** How many of the sets passed over its bound takes account of. */
  passed = 0;
  /** Those that are still to be made; null where it has not been divided. */
  children: Children | null = null;

  constructor(
    bound: number,
    rank: Entry['rank'],
    node: Pick<Entry, 'decided' | 'countDecided' | 'floor' | 'untested'>,
  ) {
    this.bound = bound;
    this.rank = rank;
    this.decided = node.decided;
    this.countDecided = node.countDecided;
    this.floor = node.floor;
    this.untested = node.untested;
  }
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
      this.#putBack(entry, children);
      return;
    }
    const bound = Math.max(entry.bound, children.bound);
    const child = children.take();
    this.#putBack(entry, children);
    this.#look(child.decided, child.latest, entry.countDecided + child.countMore, bound);
  }

  /** Looks at a node for the first time: it goes into the queue with its bound. */
  #look(decided: Int32Array, latest: number, countDecided: number, atLeast: number): void {
    this.#budget.left -= 1;
    const floor = this.#tables.floor(decided);
    if (floor === Infinity) return;
    const bound = Math.max(atLeast, floor + this.#floor.of(decided));
    if (bound === Infinity) return;
    const node = { decided, countDecided, floor, untested: latest };
    this.#queue.push(new Entry(bound, RANK.node, node));
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
    // Others that cost the same as a set did are still wanted.
    while ((this.#passed[passed]?.cost ?? Infinity) < entry.bound) passed += 1;
    if (passed === entry.passed) return false;
    entry.passed = passed;
    const borders = this.#passed.slice(0, passed).flatMap((set) => set.borders);
    const known = entry.bound - entry.floor;
    const { least, looks } = leastApart(borders, entry.decided, this.#floor, known);
    this.#budget.left = Math.max(0, this.#budget.left - 1 - Math.floor(looks / looksInStep));
    entry.bound = entry.floor + least;
    if (entry.bound < Infinity) this.#queue.push(entry);
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
    if (cost < Infinity) this.#queue.push(new Entry(cost, RANK.result, entry));
    if (open.length === 0) return;
    const blamed = open.flatMap((relation) => this.#tables.blameAt(relation, values));
    this.#branch(entry, this.#brancher.over(entry.decided, new Set(blamed)));
  }

  #branch(entry: Entry, branching: Branching): void {
    const { decided, floor } = entry;
    entry.rank = RANK.children;
    entry.children = new Children(this.#tables, this.#floor, decided, floor, branching);
    this.#putBack(entry, entry.children);
  }

  /** Puts a divided node back, with the bound of the children that are left. */
  #putBack(entry: Entry, children: Children): void {
    entry.bound = Math.max(entry.bound, children.bound);
    if (entry.bound < Infinity) this.#queue.push(entry);
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
