/**
 * For each value, the least that an assignment with it can cost, exactly as far as a forest of the
 * factors goes; what the other factors add is left out, so it is a lower bound. Costs that were
 * moved before make it the sharper, since the other factors then have little left to add.
 */

import type { Arcs, Bounds } from './arc.js';
import { type Allowed, leastOf } from './arc-cells.js';
import type { Factor, Network } from './cost-network.js';

interface Child {
  readonly variable: number;
  readonly place: number;
}

/** A factor of the forest, seen from where it hangs. */
interface Branch {
  readonly factor: number;
  readonly parent: Child;
  readonly children: readonly Child[];
}

export class Forest {
  readonly #network: Network;
  readonly #allowed: readonly (Allowed | null)[];
  /** From the roots to the leaves. */
  readonly #branches: readonly Branch[];
  /** By variable: its tree; and by tree, its root. */
  readonly #treeOf: Int32Array;
  readonly #roots: readonly number[];
  /** Cells that are looked at each time. */
  readonly cells: number;

  constructor({ network, allowed }: Arcs) {
    this.#network = network;
    this.#allowed = allowed;
    const chosen = spanning(network);
    const { branches, treeOf, roots } = hung(network, chosen);
    this.#branches = branches;
    this.#treeOf = treeOf;
    this.#roots = roots;
    this.cells = chosen.reduce(
      (sum, factor) => sum + 2 * (network.factors[factor]?.costs?.length ?? 0),
      0,
    );
  }

  /** By variable, by value: no assignment with it costs less. Infinity where there is none. */
  leastWith({ base, costs, moved }: Bounds): Float64Array[] {
    const totals = costs.map((own) => Float64Array.from(own));
    const ups: Float64Array[] = [];
    const sides: Float64Array[][] = [];
    for (let at = this.#branches.length - 1; at >= 0; at -= 1) {
      const { factor, parent, children } = this.#branches[at] as Branch;
      const one = this.#network.factors[factor] as Factor;
      const allowed = this.#allowed[factor] ?? null;
      const side = one.counts.map((count) => new Float64Array(count));
      for (const { variable, place } of children) {
        leastByClass(totals[variable], one.classOf[place], side[place] as Float64Array);
      }
      const up = joined(one, allowed, moved[factor] as readonly Float64Array[], side, parent.place);
      addByClass(totals[parent.variable], one.classOf[parent.place], up);
      ups[at] = up;
      sides[at] = side;
    }
    this.#branches.forEach(({ factor, parent, children }, at) => {
      const one = this.#network.factors[factor] as Factor;
      const allowed = this.#allowed[factor] ?? null;
      const side = sides[at] as Float64Array[];
      const up = ups[at] as Float64Array;
      const above = side[parent.place] as Float64Array;
      leastByClass(totals[parent.variable], one.classOf[parent.place], above);
      for (let name = 0; name < above.length; name += 1) {
        if (up[name] !== Number.POSITIVE_INFINITY) {
          above[name] = (above[name] as number) - (up[name] as number);
        }
      }
      for (const { variable, place } of children) {
        const down = joined(one, allowed, moved[factor] as readonly Float64Array[], side, place);
        addByClass(totals[variable], one.classOf[place], down);
      }
    });
    return this.#withOtherTrees(base, totals);
  }

  #withOtherTrees(base: number, totals: Float64Array[]): Float64Array[] {
    const best = this.#roots.map((root) => smallest(totals[root] as Float64Array));
    const all = best.reduce((sum, one) => sum + one, base);
    totals.forEach((own, variable) => {
      const others = all - (best[this.#treeOf[variable] as number] as number);
      const rest = Number.isNaN(others) ? Number.POSITIVE_INFINITY : others;
      for (let value = 0; value < own.length; value += 1)
        own[value] = (own[value] as number) + rest;
    });
    return totals;
  }
}

/** By class at the place: the least of its cells together with what the other sides cost. */
function joined(
  factor: Factor,
  allowed: Allowed | null,
  moved: readonly Float64Array[],
  sides: readonly Float64Array[],
  place: number,
): Float64Array {
  const { counts, strides } = factor;
  const costs = factor.costs as Float64Array;
  const least = new Float64Array(counts[place] as number).fill(Number.POSITIVE_INFINITY);
  if (allowed !== null) {
    leastOf(allowed, moved, sides, place, least);
    return least;
  }
  const other = 1 - place;
  const step = strides[other] as number;
  const side = sides[other] as Float64Array;
  const taken = moved[other] as Float64Array;
  const own = moved[place] as Float64Array;
  for (let name = 0; name < least.length; name += 1) {
    let best = Number.POSITIVE_INFINITY;
    let cell = name * (strides[place] as number);
    for (let mate = 0; mate < side.length; mate += 1) {
      const cost = (costs[cell] as number) - (taken[mate] as number) + (side[mate] as number);
      if (cost < best) best = cost;
      cell += step;
    }
    least[name] = best - (own[name] as number);
  }
  return least;
}

function leastByClass(
  costs: Float64Array | undefined,
  classes: Int32Array | undefined,
  least: Float64Array,
): void {
  const own = costs as Float64Array;
  least.fill(Number.POSITIVE_INFINITY);
  for (let value = 0; value < own.length; value += 1) {
    const name = (classes as Int32Array)[value] as number;
    if ((own[value] as number) < (least[name] as number)) least[name] = own[value] as number;
  }
}

function addByClass(
  costs: Float64Array | undefined,
  classes: Int32Array | undefined,
  more: Float64Array,
): void {
  const own = costs as Float64Array;
  for (let value = 0; value < own.length; value += 1) {
    own[value] =
      (own[value] as number) + (more[(classes as Int32Array)[value] as number] as number);
  }
}

function smallest(costs: Float64Array): number {
  return costs.reduce((least, cost) => Math.min(least, cost), Number.POSITIVE_INFINITY);
}

/** Factors that close no circle, those of two variables before the larger. */
function spanning({ costs, factors }: Network): number[] {
  const group = Int32Array.from(costs.keys());
  const groupOf = (variable: number): number => {
    let one = variable;
    while (group[one] !== one) one = group[one] as number;
    group[variable] = one;
    return one;
  };
  const all = factors.flatMap((factor, index) => (factor.costs === null ? [] : [index]));
  const arity = (index: number) => factors[index]?.scope.length ?? 0;
  return all
    .sort((a, b) => arity(a) - arity(b) || a - b)
    .filter((index) => {
      const groups = (factors[index] as Factor).scope.map(groupOf);
      if (new Set(groups).size < groups.length) return false;
      for (const one of groups) group[one] = groups[0] as number;
      return true;
    });
}

function hung(
  network: Network,
  chosen: readonly number[],
): { branches: Branch[]; treeOf: Int32Array; roots: number[] } {
  const isLeft = new Set(chosen);
  const treeOf = new Int32Array(network.costs.length).fill(-1);
  const roots: number[] = [];
  const branches: Branch[] = [];
  for (let root = 0; root < treeOf.length; root += 1) {
    if ((treeOf[root] as number) >= 0) continue;
    const tree = roots.push(root) - 1;
    treeOf[root] = tree;
    const queue = [root];
    for (const variable of queue) {
      for (const { factor, place } of network.places[variable] ?? []) {
        if (!isLeft.delete(factor)) continue;
        const { scope } = network.factors[factor] as Factor;
        const children = scope.flatMap((other, at) =>
          at === place ? [] : [{ variable: other, place: at }],
        );
        branches.push({ factor, parent: { variable, place }, children });
        for (const child of children) {
          treeOf[child.variable] = tree;
          queue.push(child.variable);
        }
      }
    }
  }
  return { branches, treeOf, roots };
}
