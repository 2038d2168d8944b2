/**
 * Lower bounds by moving costs: from variables into the factors that they are in, and back to
 * other variables, so that each assignment costs what it did and as much as possible of it is
 * paid by every assignment. A value that costs too much besides goes, and one that meets nothing
 * in some factor; where a variable has no value left, there is no assignment.
 *
 * All amounts are whole, so that nothing is rounded. A sweep goes along one order of the variables
 * and then back; each variable collects what its factors hold and shares it among those that lead
 * onwards (sequential message passing as it is done on trees, here over classes).
 */

import { type Allowed, aliveOf, allowedOf, give, project, take } from './arc-cells.js';
import { within } from './cost-limit.js';
import type { Factor, Network } from './cost-network.js';

/** What is left of a network after costs were moved; a copy of it is a place to go back to. */
export interface Bounds {
  /** Every assignment costs at least this. */
  base: number;
  /** By variable, by value: what it costs besides; Infinity where it is gone. */
  readonly costs: readonly Float64Array[];
  /** By factor, by place, by class: what was taken out of the factor; -Infinity: no value left. */
  readonly moved: readonly (readonly Float64Array[])[];
}

export class Arcs {
  readonly network: Network;
  /** By factor. */
  readonly allowed: readonly (Allowed | null)[];
  /** Cells looked at. */
  cells = 0;
  readonly #order: Int32Array;
  /** By factor: where in the order its first and its last variable are. */
  readonly #spans: readonly (readonly [number, number])[];
  readonly #scratch: Float64Array;
  readonly #halves: Float64Array;

  constructor(network: Network) {
    this.network = network;
    this.allowed = network.factors.map(allowedOf);
    this.#order = breadthFirst(network);
    const rank = new Int32Array(this.#order.length);
    this.#order.forEach((variable, at) => {
      rank[variable] = at;
    });
    this.#spans = network.factors.map(({ scope }) => {
      const ranks = scope.map((variable) => rank[variable] as number);
      return [Math.min(...ranks), Math.max(...ranks)] as const;
    });
    const most = network.factors.reduce((all, { counts }) => Math.max(all, ...counts), 1);
    this.#scratch = new Float64Array(most);
    const widest = network.costs.reduce((all, own) => Math.max(all, own.length), 1);
    this.#halves = new Float64Array(widest);
  }

  fresh(): Bounds {
    return {
      base: 0,
      costs: this.network.costs.map((own) => Float64Array.from(own)),
      moved: this.network.factors.map(({ counts }) =>
        counts.map((count) => new Float64Array(count)),
      ),
    };
  }

  /** Sweeps on until nothing gets better; false where nothing costs this or less. */
  tighten(bounds: Bounds, most: number, sweeps: number): boolean {
    for (let sweep = 0; sweep < sweeps; sweep += 1) {
      const before = bounds.base;
      const gone = this.#gone(bounds);
      for (const isBack of [false, true]) {
        if (!this.#sweep(bounds, most, isBack)) return false;
      }
      if (!this.#narrow(bounds)) return false;
      if (bounds.base === before && this.#gone(bounds) === gone) break;
    }
    return true;
  }

  #gone({ costs }: Bounds): number {
    let gone = 0;
    for (const own of costs) {
      for (let value = 0; value < own.length; value += 1) {
        if (own[value] === Number.POSITIVE_INFINITY) gone += 1;
      }
    }
    return gone;
  }

  #sweep(bounds: Bounds, most: number, isBack: boolean): boolean {
    const order = this.#order;
    for (let at = 0; at < order.length; at += 1) {
      const rank = isBack ? order.length - 1 - at : at;
      const variable = order[rank] as number;
      if (!this.#collect(bounds, variable, most)) return false;
      this.#share(bounds, variable, rank, isBack);
    }
    return true;
  }

  /** Takes all that the factors of the variable hold; false where no value is left. */
  #collect(bounds: Bounds, variable: number, most: number): boolean {
    const own = bounds.costs[variable] as Float64Array;
    for (const { factor, place } of this.network.places[variable] ?? []) {
      const one = this.network.factors[factor] as Factor;
      if (one.costs === null) continue;
      const moved = bounds.moved[factor] as readonly Float64Array[];
      const allowed = this.allowed[factor] ?? null;
      this.cells += allowed?.costs.length ?? one.costs.length;
      project(one, one.costs, allowed, moved, place, this.#scratch);
      take(own, one.classOf[place] as Int32Array, this.#scratch);
      const taken = moved[place] as Float64Array;
      for (let name = 0; name < taken.length; name += 1) {
        const least = this.#scratch[name] as number;
        if (least === Number.POSITIVE_INFINITY) taken[name] = Number.NEGATIVE_INFINITY;
        else taken[name] = (taken[name] as number) + least;
      }
    }
    let least = Number.POSITIVE_INFINITY;
    for (let value = 0; value < own.length; value += 1) {
      if ((own[value] as number) < least) least = own[value] as number;
    }
    bounds.base += least;
    if (bounds.base > most) return false;
    const spare = most - bounds.base;
    for (let value = 0; value < own.length; value += 1) {
      const cost = (own[value] as number) - least;
      own[value] = cost > spare ? Number.POSITIVE_INFINITY : cost;
    }
    return true;
  }

  /** Gives what the variable costs to its factors that lead on, in equal parts. */
  #share(bounds: Bounds, variable: number, rank: number, isBack: boolean): void {
    const own = bounds.costs[variable] as Float64Array;
    const places = this.network.places[variable] ?? [];
    let onwards = 0;
    let backwards = 0;
    for (const { factor } of places) {
      if (this.network.factors[factor]?.costs === null) continue;
      const [first, last] = this.#spans[factor] as readonly [number, number];
      if (last > rank) onwards += 1;
      if (first < rank) backwards += 1;
    }
    const parts = Math.max(onwards, backwards);
    const portions = this.#halves;
    for (let value = 0; value < own.length; value += 1) {
      portions[value] = Math.floor((own[value] as number) / parts);
    }
    for (const { factor, place } of places) {
      const [first, last] = this.#spans[factor] as readonly [number, number];
      const leadsOn = isBack ? first < rank : last > rank;
      const { classOf, costs } = this.network.factors[factor] as Factor;
      if (costs === null) continue;
      const moved = (bounds.moved[factor] as readonly Float64Array[])[place] as Float64Array;
      give(own, portions, classOf[place] as Int32Array, moved, this.#scratch, leadsOn);
    }
  }

  /** What limits that are not written out leave of the values. */
  #narrow({ costs }: Bounds): boolean {
    for (const { limit, costs: table, scope, classOf, counts } of this.network.factors) {
      if (limit === null || table !== null) continue;
      const isAlive = scope.map((variable, place) =>
        aliveOf(costs[variable] as Float64Array, classOf[place] as Int32Array, counts[place] ?? 0),
      );
      const found = within(limit, isAlive);
      for (let place = 0; place < scope.length; place += 1) {
        const own = costs[scope[place] as number] as Float64Array;
        const classes = classOf[place] as Int32Array;
        let left = 0;
        for (let value = 0; value < own.length; value += 1) {
          if (found[place]?.[classes[value] as number] !== true) {
            own[value] = Number.POSITIVE_INFINITY;
          } else if (own[value] !== Number.POSITIVE_INFINITY) left += 1;
        }
        if (left === 0) return false;
      }
    }
    return true;
  }
}

export function copyOf({ base, costs, moved }: Bounds): Bounds {
  return {
    base,
    costs: costs.map((own) => Float64Array.from(own)),
    moved: moved.map((places) => places.map((own) => Float64Array.from(own))),
  };
}

/** By variable, the values that are left, ascending. */
export function liveOf({ costs }: Bounds): Int32Array[] {
  return costs.map((own) => {
    const live: number[] = [];
    for (let value = 0; value < own.length; value += 1) {
      if (own[value] !== Number.POSITIVE_INFINITY) live.push(value);
    }
    return Int32Array.from(live);
  });
}

/** Variables in the order in which factors lead from one to the next. */
function breadthFirst(network: Network): Int32Array {
  const count = network.costs.length;
  const isSeen = new Uint8Array(count);
  const order: number[] = [];
  for (let start = 0; start < count; start += 1) {
    if (isSeen[start] === 1) continue;
    isSeen[start] = 1;
    order.push(start);
    for (let at = order.length - 1; at < order.length; at += 1) {
      for (const { factor } of network.places[order[at] as number] ?? []) {
        for (const other of network.factors[factor]?.scope ?? []) {
          if (isSeen[other] === 1) continue;
          isSeen[other] = 1;
          order.push(other);
        }
      }
    }
  }
  return Int32Array.from(order);
}
