/**
 * Depth-first branch and bound, for networks too wide to be eliminated at once: bounds by moved
 * costs at each step, one variable halved into its most promising value and the rest, and
 * elimination as soon as what is left has become narrow enough.
 */

import { Arcs, type Bounds, copyOf, liveOf } from './arc.js';
import { Forest } from './arc-forest.js';
import { type Network, shrunk } from './cost-network.js';
import type { CheapestAssignment } from './cost-problem.js';
import { eliminated } from './eliminate.js';
import { cheaperOrder } from './eliminate-order.js';
import { Partitions } from './partitions.js';

/** Counts what is done, and ends it. */
export interface Meter {
  cells: number;
  branches: number;
  /** Nothing more is begun once the cells have passed this. */
  readonly most: number;
}

const SWEEPS_FIRST = 10;
const SWEEPS_LATER = 2;

export interface Wanted {
  /** Only what costs this or less. */
  readonly most: number;
  /** The first that is found will do. */
  readonly isAnyEnough: boolean;
  /** Branched on before all others, its values in ascending order; none: -1. */
  readonly first: number;
}

export class Branching {
  readonly #network: Network;
  readonly #arcs: Arcs;
  readonly #forest: Forest;
  readonly #meter: Meter;
  readonly #wanted: Wanted;
  readonly #narrow: number;
  #most: number;
  #best: CheapestAssignment | null = null;
  #isCut = false;
  #bound = 0;

  /** Whatever can be eliminated looking at `narrow` cells is. */
  constructor(network: Network, wanted: Wanted, meter: Meter, narrow: number) {
    this.#network = network;
    this.#arcs = new Arcs(network);
    this.#forest = new Forest(this.#arcs);
    this.#meter = meter;
    this.#wanted = wanted;
    this.#narrow = narrow;
    this.#most = wanted.most;
  }

  /** The values are those of the problem; `isCut` where the meter ended it. */
  run(): { best: CheapestAssignment | null; isCut: boolean; bound: number } {
    const bounds = this.#arcs.fresh();
    this.#descend(bounds, SWEEPS_FIRST, 0);
    return { best: this.#best, isCut: this.#isCut, bound: this.#bound };
  }

  get #isDone(): boolean {
    return this.#isCut || (this.#wanted.isAnyEnough && this.#best !== null);
  }

  /** Looks through everything that these bounds allow; they are used up by it. */
  #descend(bounds: Bounds, sweeps: number, depth: number): void {
    let sweepsNow = sweeps;
    for (;;) {
      if (this.#meter.cells > this.#meter.most) this.#isCut = true;
      if (this.#isDone || !this.#bounded(bounds, sweepsNow)) return;
      sweepsNow = SWEEPS_LATER;
      const least = this.#forest.leastWith(bounds);
      this.#meter.cells += this.#forest.cells;
      if (!prune(bounds, least, this.#most)) return;
      if (depth === 0 && this.#bound === 0) this.#bound = bounds.base;
      if (this.#eliminate(bounds)) return;
      const variable = this.#chosen(bounds);
      const value = this.#valueOf(bounds, least, variable);
      this.#meter.branches += 1;
      const with_ = copyOf(bounds);
      (with_.costs[variable] as Float64Array).fill(Number.POSITIVE_INFINITY);
      (with_.costs[variable] as Float64Array)[value] = bounds.costs[variable]?.[value] as number;
      this.#descend(with_, SWEEPS_LATER, depth + 1);
      (bounds.costs[variable] as Float64Array)[value] = Number.POSITIVE_INFINITY;
    }
  }

  #bounded(bounds: Bounds, sweeps: number): boolean {
    const before = this.#arcs.cells;
    const isPossible = this.#arcs.tighten(bounds, this.#most, sweeps);
    this.#meter.cells += this.#arcs.cells - before;
    return isPossible;
  }

  /** Whether what is left was narrow enough; then it is done with. */
  #eliminate(bounds: Bounds): boolean {
    const live = liveOf(bounds);
    const { first } = this.#wanted;
    // A variable that must have its least value has it last, when all others are eliminated.
    const left = shrunk(this.#network, live);
    if (left === null) return true;
    const partitions = new Partitions(left);
    const order = cheaperOrder(left, partitions, first);
    // With one value each there is a cell for each variable, and nothing left to branch on.
    if (order.work > Math.max(this.#narrow, live.length)) return false;
    this.#meter.cells += order.work;
    const found = eliminated(left, partitions, order);
    if (found === null || found.cost > this.#most) return true;
    this.#best = {
      cost: found.cost,
      values: found.values.map((value, variable) => left.original[variable]?.[value] as number),
    };
    this.#most = found.cost - 1;
    return true;
  }

  /** The variable with the fewest values left for the factors that it is in. */
  #chosen({ costs }: Bounds): number {
    const { first } = this.#wanted;
    let best = -1;
    let bestScore = Number.POSITIVE_INFINITY;
    costs.forEach((own, variable) => {
      let left = 0;
      for (const cost of own) if (cost !== Number.POSITIVE_INFINITY) left += 1;
      if (left < 2) return;
      const places = this.#network.places[variable] ?? [];
      const score = variable === first ? 0 : left / places.length ** 2;
      if (score < bestScore) {
        best = variable;
        bestScore = score;
      }
    });
    return best;
  }

  #valueOf({ costs }: Bounds, least: readonly Float64Array[], variable: number): number {
    const own = costs[variable] as Float64Array;
    const bounds = least[variable] as Float64Array;
    let best = -1;
    for (let value = 0; value < own.length; value += 1) {
      if (own[value] === Number.POSITIVE_INFINITY) continue;
      if (best < 0) best = value;
      else if (variable !== this.#wanted.first && isLess(bounds, value, best)) best = value;
    }
    return best;
  }
}

function isLess(bounds: Float64Array, one: number, other: number): boolean {
  return (bounds[one] as number) < (bounds[other] as number);
}

/** Takes out the values with which nothing costs this or less; false where one has none left. */
export function prune(bounds: Bounds, least: readonly Float64Array[], most: number): boolean {
  for (let variable = 0; variable < least.length; variable += 1) {
    const own = bounds.costs[variable] as Float64Array;
    const limits = least[variable] as Float64Array;
    let left = 0;
    for (let value = 0; value < own.length; value += 1) {
      if ((limits[value] as number) > most) own[value] = Number.POSITIVE_INFINITY;
      else left += 1;
    }
    if (left === 0) return false;
  }
  return true;
}
