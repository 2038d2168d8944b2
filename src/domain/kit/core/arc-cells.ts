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
  factor: Factor,
  costs: Float64Array,
  moved: readonly Float64Array[],
  place: number,
  least: Float64Array,
): void {
  const { counts, strides } = factor;
  const count = counts[place] as number;
  const own = moved[place] as Float64Array;
  if (counts.length === 2) {
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
  least.fill(Number.POSITIVE_INFINITY, 0, count);
  walk(factor, costs, moved, (names, left) => {
    const name = names[place] as number;
    if (left < (least[name] as number)) least[name] = left;
  });
}

/** Every cell with what is left of it, and the classes that it is of. */
export function walk(
  { counts }: Factor,
  costs: Float64Array,
  moved: readonly Float64Array[],
  visit: (names: Int32Array, left: number) => void,
): void {
  const names = new Int32Array(counts.length);
  for (let cell = 0; cell < costs.length; cell += 1) {
    let left = costs[cell] as number;
    if (left !== Number.POSITIVE_INFINITY) {
      for (let at = 0; at < names.length; at += 1) {
        left -= (moved[at] as Float64Array)[names[at] as number] as number;
      }
      visit(names, left);
    }
    for (let at = names.length - 1; at >= 0; at -= 1) {
      const next = (names[at] as number) + 1;
      names[at] = next === (counts[at] as number) ? 0 : next;
      if (next !== counts[at]) break;
    }
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
