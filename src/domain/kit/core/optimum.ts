/**
 * The exact optimum of a problem of least cost. An estimate of the work, made without doing it,
 * chooses the way: a narrow network is eliminated at once; of a wider one the few most promising
 * values of each variable are, which gives a cost that is possible, and every value whose lower
 * bound is above it goes, until what is left is narrow or is all there is; what stays wide is
 * branched on. Steps are cells of tables, so that the answer is the same on every machine.
 */

import { Arcs, type Bounds, liveOf } from './arc.js';
import { Forest } from './arc-forest.js';
import { Branching, type Meter, prune } from './branch.js';
import { type Compiled, compiledCosts } from './compile-costs.js';
import { type Network, shrunk } from './cost-network.js';
import {
  type CheapestAssignment,
  type CostProblem,
  GREATEST_TOTAL,
  type Optimum,
} from './cost-problem.js';
import { eliminated } from './eliminate.js';
import { cheaperOrder, inOrder, type Order } from './eliminate-order.js';
import { Partitions } from './partitions.js';

/** Up to how many cells of work which way is taken. */
export interface Ways {
  /** Eliminated at once, without bounds. */
  readonly small: number;
  /** Eliminated once bounds have done what they can, before anything is branched on. */
  readonly large: number;
  /** Eliminated between branchings. */
  readonly narrow: number;
}

const WAYS: Ways = { small: 120_000, large: 200_000, narrow: 100_000 };
const SWEEPS = 3;
const FEW = 4;

/** Looks at no more than about so many cells; without a number, until it is done. */
export function optimum(problem: CostProblem, cells = Number.MAX_SAFE_INTEGER): Optimum {
  return optimumOf(compiledCosts(problem), cells);
}

/** Of a problem that was compiled before. */
export function optimumOf(
  { network, constant }: Compiled,
  cells = Number.MAX_SAFE_INTEGER,
  ways = WAYS,
): Optimum {
  const meter: Meter = { cells: 0, branches: 0, most: cells };
  if (network === null || constant === Number.POSITIVE_INFINITY) {
    return { isComplete: true, best: null, work: { cells: 0, branches: 0 } };
  }
  const found = new Search(network, meter, ways).run();
  const best =
    found.best === null ? null : { cost: found.best.cost + constant, values: found.best.values };
  const work = { cells: meter.cells, branches: meter.branches };
  if (!found.isCut) return { isComplete: true, best, work };
  return { isComplete: false, bound: found.bound + constant, best, work };
}

interface Outcome {
  /** Its values are those of the problem. */
  readonly best: CheapestAssignment | null;
  readonly isCut: boolean;
  readonly bound: number;
}

class Search {
  readonly #network: Network;
  readonly #meter: Meter;
  readonly #ways: Ways;
  #best: CheapestAssignment | null = null;
  #isUnique = false;

  constructor(network: Network, meter: Meter, ways: Ways) {
    this.#network = network;
    this.#meter = meter;
    this.#ways = ways;
  }

  run(): Outcome {
    const partitions = new Partitions(this.#network);
    const order = cheaperOrder(this.#network, partitions);
    if (order.work <= this.#ways.small && order.work <= this.#meter.most) {
      this.#eliminate(this.#network, partitions, order);
      return this.#first(null);
    }
    const bounds = new Bounding(this.#network, this.#meter);
    const rest = this.#narrowed(bounds);
    if (rest === null) return this.#first(bounds);
    // What was found is the only one of its cost among few values, not among all.
    this.#isUnique = false;
    const wanted = { most: this.#most, isAnyEnough: false, first: -1 };
    const found = new Branching(rest, wanted, this.#meter, this.#ways.narrow).run();
    if (found.best !== null) this.#best = found.best;
    if (found.isCut) {
      return { best: this.#best, isCut: true, bound: Math.max(found.bound, bounds.base) };
    }
    return this.#first(bounds);
  }

  /** What is not worse than what is known already. */
  get #most(): number {
    return this.#best === null ? GREATEST_TOTAL : this.#best.cost - 1;
  }

  /** Restricts, bounds and prunes; null where that came to the optimum, else what is left. */
  #narrowed(bounds: Bounding): Network | null {
    for (let few = FEW; ; few *= 2) {
      if (!bounds.tighten(this.#best?.cost ?? GREATEST_TOTAL)) return null;
      const rest = bounds.left(Number.POSITIVE_INFINITY);
      if (rest === null || this.#isEliminated(rest, this.#ways.large)) return null;
      if (this.#meter.cells > this.#meter.most) return rest;
      const part = bounds.left(few);
      if (part === null || bounds.widest() <= few) return rest;
      if (!this.#isEliminated(part, this.#ways.large)) return rest;
    }
  }

  /** Whether it was narrow enough; then its best is taken, if it is better. */
  #isEliminated(network: Network, most: number): boolean {
    const partitions = new Partitions(network);
    const order = cheaperOrder(network, partitions);
    if (order.work > Math.min(most, this.#meter.most - this.#meter.cells)) return false;
    this.#eliminate(network, partitions, order);
    return true;
  }

  #eliminate(network: Network, partitions: Partitions, order: Order): void {
    this.#meter.cells += order.work;
    const found = eliminated(network, partitions, order);
    if (found === null || (this.#best !== null && found.cost > this.#best.cost)) return;
    this.#best = { cost: found.cost, values: valuesIn(network, found.values) };
    this.#isUnique = found.isUnique;
  }

  /** Of all that cost as little the first in the order of the values. */
  #first(known: Bounding | null): Outcome {
    if (this.#best === null || this.#isUnique) {
      return { best: this.#best, isCut: false, bound: 0 };
    }
    const { cost } = this.#best;
    const bounds = known ?? new Bounding(this.#network, this.#meter);
    bounds.tighten(cost);
    let rest = bounds.left(Number.POSITIVE_INFINITY);
    const count = this.#network.costs.length;
    for (let variable = 0; rest !== null && variable < count; variable += 1) {
      if (this.#isDescended(rest)) break;
      const values = rest.original[variable] as Int32Array;
      if ((values[0] as number) < (this.#best.values[variable] as number)) {
        const wanted = { most: cost, isAnyEnough: true, first: variable };
        const found = new Branching(rest, wanted, this.#meter, this.#ways.narrow).run();
        if (found.isCut) return { best: this.#best, isCut: true, bound: cost };
        if (found.best !== null) this.#best = found.best;
      }
      rest = withValue(rest, variable, this.#best.values[variable] as number);
    }
    return { best: this.#best, isCut: false, bound: cost };
  }

  /** From the last variable to the first: on the way back each takes its first value in order. */
  #isDescended(network: Network): boolean {
    const partitions = new Partitions(network);
    const order = inOrder(network, partitions, [...network.costs.keys()].reverse());
    const most = Math.min(this.#ways.large, this.#meter.most - this.#meter.cells);
    if (order.work > most) return false;
    this.#eliminate(network, partitions, order);
    return true;
  }
}

/** Bounds on a network, and what they leave of it. */
class Bounding {
  readonly #network: Network;
  readonly #meter: Meter;
  readonly #arcs: Arcs;
  readonly #forest: Forest;
  readonly #bounds: Bounds;
  #least: readonly Float64Array[] = [];

  constructor(network: Network, meter: Meter) {
    this.#network = network;
    this.#meter = meter;
    this.#arcs = new Arcs(network);
    this.#forest = new Forest(this.#arcs);
    this.#bounds = this.#arcs.fresh();
  }

  /** Nothing costs less. */
  get base(): number {
    return this.#bounds.base;
  }

  /** False where nothing costs this or less. */
  tighten(most: number): boolean {
    const before = this.#arcs.cells;
    const isPossible = this.#arcs.tighten(this.#bounds, most, SWEEPS);
    this.#meter.cells += this.#arcs.cells - before + this.#forest.cells;
    if (!isPossible) return false;
    this.#least = this.#forest.leastWith(this.#bounds);
    return prune(this.#bounds, this.#least, most);
  }

  /** The most values that a variable has left. */
  widest(): number {
    return liveOf(this.#bounds).reduce((most, { length }) => Math.max(most, length), 0);
  }

  /** The network with so many of the best values of each variable. */
  left(few: number): Network | null {
    const live = liveOf(this.#bounds).map((values, variable) => {
      if (values.length <= few) return values;
      const least = this.#least[variable] as Float64Array;
      const ranked = [...values].sort(
        (a, b) => (least[a] as number) - (least[b] as number) || a - b,
      );
      return Int32Array.from(ranked.slice(0, few)).sort();
    });
    return shrunk(this.#network, live);
  }
}

function valuesIn(network: Network, values: readonly number[]): number[] {
  return values.map((value, variable) => network.original[variable]?.[value] as number);
}

/** The network in which the variable has this value of the problem. */
function withValue(network: Network, variable: number, value: number): Network | null {
  const live = network.costs.map((own, other) => {
    const all = Int32Array.from(own.keys());
    if (other !== variable) return all;
    return all.filter((one) => network.original[variable]?.[one] === value);
  });
  return shrunk(network, live);
}
