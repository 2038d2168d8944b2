/**
 * The loops in which bounds spend their time: over the cells of one factor, and over the values of
 * one variable by the class that the factor sees.
 */

import type { Factor } from './cost-network.js';

/** By class: whether a value of it is left. */
export function aliveOf(costs: Float64Array, classes: Int32Array, count: number): Uint8Array {
  const isAlive = new Uint8Array(count);
  for (let value = 0; value < costs.length; value += 1) {
    if (costs[value] !== Number.POSITIVE_INFINITY) isAlive[classes[value] as number] = 1;
  }
  return isAlive;
}

/** Into `least`, by class at the place: the least that is left of its cells in the factor. */
export function project(
  { counts, strides }: Factor,
  costs: Float64Array,
  allowed: Allowed | null,
  moved: readonly Float64Array[],
  place: number,
  least: Float64Array,
): void {
  const count = counts[place] as number;
  const own = moved[place] as Float64Array;
  if (allowed === null) {
    const other = moved[1 - place] as Float64Array;
    const step = strides[1 - place] as number;
    const stride = strides[place] as number;
    for (let name = 0; name < count; name += 1) {
      let best = Number.POSITIVE_INFINITY;
      let cell = name * stride;
      for (let mate = 0; mate < other.length; mate += 1) {
        const cost = (costs[cell] as number) - (other[mate] as number);
        if (cost < best) best = cost;
        cell += step;
      }
      least[name] = best - (own[name] as number);
    }
    return;
  }
  leastOf(allowed, moved, null, place, least);
}

/**
 * The cells of a factor of more than two variables that are allowed at all: often few, since a
 * limit on a product is kept by few combinations.
 */
export interface Allowed {
  readonly costs: Float64Array;
  /** By place, by cell: its class. */
  readonly names: readonly Int32Array[];
  /** By cell, what is being added up. */
  readonly sums: Float64Array;
}

/** Null where the factor is better looked at whole, or is not written out. */
export function allowedOf({ counts, strides, costs }: Factor): Allowed | null {
  if (costs === null || counts.length === 2) return null;
  const cells: number[] = [];
  for (let cell = 0; cell < costs.length; cell += 1) {
    if (costs[cell] !== Number.POSITIVE_INFINITY) cells.push(cell);
  }
  return {
    costs: Float64Array.from(cells, (cell) => costs[cell] as number),
    names: counts.map((count, place) =>
      Int32Array.from(cells, (cell) => Math.floor(cell / (strides[place] as number)) % count),
    ),
    sums: new Float64Array(cells.length),
  };
}

/** Into `least`, by class at the place: the least of what is left, with the other sides added. */
export function leastOf(
  { costs, names, sums }: Allowed,
  moved: readonly Float64Array[],
  sides: readonly Float64Array[] | null,
  place: number,
  least: Float64Array,
): void {
  sums.set(costs);
  for (let at = 0; at < names.length; at += 1) {
    change(sums, names[at] as Int32Array, moved[at] as Float64Array, -1);
    if (sides !== null && at !== place) {
      change(sums, names[at] as Int32Array, sides[at] as Float64Array, 1);
    }
  }
  const own = names[place] as Int32Array;
  least.fill(Number.POSITIVE_INFINITY, 0, (moved[place] as Float64Array).length);
  for (let cell = 0; cell < sums.length; cell += 1) {
    const name = own[cell] as number;
    if ((sums[cell] as number) < (least[name] as number)) least[name] = sums[cell] as number;
  }
}

function change(sums: Float64Array, names: Int32Array, by: Float64Array, sign: 1 | -1): void {
  for (let cell = 0; cell < sums.length; cell += 1) {
    sums[cell] = (sums[cell] as number) + sign * (by[names[cell] as number] as number);
  }
}

/** Every value pays what its class does. */
export function take(own: Float64Array, classes: Int32Array, least: Float64Array): void {
  for (let value = 0; value < own.length; value += 1) {
    own[value] = (own[value] as number) + (least[classes[value] as number] as number);
  }
}

/** A class without a value left is marked; of the others the least portion goes, where asked. */
export function give(
  own: Float64Array,
  portions: Float64Array,
  classes: Int32Array,
  moved: Float64Array,
  least: Float64Array,
  leadsOn: boolean,
): void {
  least.fill(Number.POSITIVE_INFINITY, 0, moved.length);
  for (let value = 0; value < own.length; value += 1) {
    const name = classes[value] as number;
    if ((portions[value] as number) < (least[name] as number)) {
      least[name] = portions[value] as number;
    }
  }
  for (let name = 0; name < moved.length; name += 1) {
    if (least[name] === Number.POSITIVE_INFINITY) moved[name] = Number.NEGATIVE_INFINITY;
    else if (leadsOn) moved[name] = (moved[name] as number) - (least[name] as number);
  }
  if (!leadsOn) return;
  for (let value = 0; value < own.length; value += 1) {
    if (own[value] === Number.POSITIVE_INFINITY) continue;
    own[value] = (own[value] as number) - (least[classes[value] as number] as number);
  }
}
