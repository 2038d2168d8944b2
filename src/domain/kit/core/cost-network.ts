/**
 * A problem of least cost as it is computed with: every variable at most once in a scope, costs of
 * single variables apart, values that nothing tells apart replaced by the cheapest of them.
 *
 * A factor sees classes of values, not values, so that its table stays as small as what it
 * compares: eight kinds of flange, not two hundred gearboxes.
 */

import { tabulated, type WholeLimit, withClasses } from './cost-limit.js';

export interface Factor {
  /** Each variable once. */
  readonly scope: readonly number[];
  /** By place, by value: its class. */
  readonly classOf: readonly Int32Array[];
  /** By place: how many classes there are, each with a value. */
  readonly counts: readonly number[];
  /** By place: how far apart in `costs` two neighbouring classes are. */
  readonly strides: readonly number[];
  /** Null for a limit over too many combinations to be written out. */
  readonly costs: Float64Array | null;
  readonly limit: WholeLimit | null;
}

/** Where a variable stands in a factor. */
export interface Place {
  readonly factor: number;
  readonly place: number;
}

export interface Network {
  /** By variable, by value. */
  readonly costs: readonly Float64Array[];
  /** By variable, by value: which value of the problem it stands for; ascending. */
  readonly original: readonly Int32Array[];
  readonly factors: readonly Factor[];
  /** By variable. */
  readonly places: readonly (readonly Place[])[];
}

/** Limits over more combinations of classes than this stay unwritten. */
const MOST_WRITTEN = 1 << 16;

export function sizeOf(network: Network, variable: number): number {
  return (network.costs[variable] as Float64Array).length;
}

export function placesOf(count: number, factors: readonly Factor[]): Place[][] {
  const places: Place[][] = Array.from({ length: count }, () => []);
  factors.forEach(({ scope }, factor) => {
    scope.forEach((variable, place) => {
      (places[variable] as Place[]).push({ factor, place });
    });
  });
  return places;
}

export function stridesOf(counts: readonly number[]): number[] {
  const strides = counts.map(() => 1);
  let stride = 1;
  for (let place = counts.length - 1; place >= 0; place -= 1) {
    strides[place] = stride;
    stride *= counts[place] as number;
  }
  return strides;
}

/**
 * The same with these values left (by variable, ascending), and of those that no factor tells
 * apart only the cheapest, the first of equals. Null where a variable has none left.
 */
export function shrunk(network: Network, live: readonly Int32Array[]): Network | null {
  const { costs, factors, places } = network;
  const kept: Int32Array[] = [];
  for (let variable = 0; variable < costs.length; variable += 1) {
    const values = representatives(network, variable, live[variable] as Int32Array);
    if (values.length === 0) return null;
    kept.push(values);
  }
  const cut = factors.map((factor) => cutDown(factor, kept));
  return {
    costs: kept.map((values, variable) => gathered(costs[variable] as Float64Array, values)),
    original: kept.map((values, variable) => picked(network.original[variable], values)),
    factors: cut,
    places,
  };
}

/** Values of one variable, one for each way in which its factors see them. */
function representatives(network: Network, variable: number, live: Int32Array): Int32Array {
  const costs = network.costs[variable] as Float64Array;
  const open = allowed(costs, live);
  if (open.length < 2) return open;
  const groups = new Int32Array(open.length);
  let count = 1;
  for (const { factor, place } of network.places[variable] as readonly Place[]) {
    if (count === open.length) return open;
    const { classOf, counts } = network.factors[factor] as Factor;
    count = refine(groups, count, open, classOf[place] as Int32Array, counts[place] as number);
  }
  if (count === open.length) return open;
  const best = new Int32Array(count).fill(-1);
  for (let at = 0; at < open.length; at += 1) {
    const group = groups[at] as number;
    const other = best[group] as number;
    const value = open[at] as number;
    if (other < 0 || (costs[value] as number) < (costs[other] as number)) best[group] = value;
  }
  return best.sort();
}

function allowed(costs: Float64Array, live: Int32Array): Int32Array {
  const open = new Int32Array(live.length);
  let count = 0;
  for (let at = 0; at < live.length; at += 1) {
    const value = live[at] as number;
    if (costs[value] === Number.POSITIVE_INFINITY) continue;
    open[count] = value;
    count += 1;
  }
  return count === live.length ? open : open.subarray(0, count);
}

/** Splits groups by the class of each member; how many there are then. */
function refine(
  groups: Int32Array,
  count: number,
  open: Int32Array,
  classOf: Int32Array,
  classes: number,
): number {
  const seen = new Int32Array(count * classes);
  let found = 0;
  for (let at = 0; at < groups.length; at += 1) {
    const key = (groups[at] as number) * classes + (classOf[open[at] as number] as number);
    let group = seen[key] as number;
    if (group === 0) {
      found += 1;
      group = found;
      seen[key] = group;
    }
    groups[at] = group - 1;
  }
  return found;
}

function cutDown(factor: Factor, kept: readonly Int32Array[]): Factor {
  const { scope, classOf, counts } = factor;
  /** By place, by new class: the old one, ascending. */
  const old: Int32Array[] = [];
  const classes: Int32Array[] = [];
  let isSame = true;
  for (let place = 0; place < scope.length; place += 1) {
    const values = kept[scope[place] as number] as Int32Array;
    const own = picked(classOf[place], values);
    const names = namesIn(own, counts[place] as number);
    if (names.length < (counts[place] as number)) isSame = false;
    classes.push(own);
    old.push(names);
  }
  if (isSame) return { ...factor, classOf: classes };
  return { ...withTable(factor, old), scope, classOf: classes };
}

/** The classes that there are still; in `own` each is replaced by where it is among them. */
function namesIn(own: Int32Array, count: number): Int32Array {
  const renamed = new Int32Array(count);
  for (let at = 0; at < own.length; at += 1) renamed[own[at] as number] = 1;
  const names = new Int32Array(count);
  let found = 0;
  for (let name = 0; name < count; name += 1) {
    if (renamed[name] === 0) continue;
    names[found] = name;
    renamed[name] = found;
    found += 1;
  }
  if (found === count) return names;
  for (let at = 0; at < own.length; at += 1) own[at] = renamed[own[at] as number] as number;
  return names.subarray(0, found);
}

function withTable(factor: Factor, old: readonly Int32Array[]): Omit<Factor, 'scope' | 'classOf'> {
  const counts = old.map(({ length }) => length);
  const strides = stridesOf(counts);
  const limit = factor.limit === null ? null : withClasses(factor.limit, old);
  if (factor.costs !== null) {
    return { counts, strides, limit, costs: subTable(factor.costs, factor.strides, old) };
  }
  return { counts, strides, limit, costs: limit === null ? null : writtenOut(limit, counts) };
}

/** The table of a limit, where it is not too large. */
export function writtenOut(limit: WholeLimit, counts: readonly number[]): Float64Array | null {
  const cells = counts.reduce((product, count) => product * count, 1);
  return cells <= MOST_WRITTEN ? tabulated(limit) : null;
}

/** The cells of these classes, by place the old ones in their new order. */
export function subTable(
  costs: ArrayLike<number>,
  strides: readonly number[],
  old: readonly Int32Array[],
): Float64Array {
  let offsets = new Int32Array(1);
  for (let place = 0; place < old.length; place += 1) {
    const names = old[place] as Int32Array;
    const stride = strides[place] as number;
    const next = new Int32Array(offsets.length * names.length);
    let cell = 0;
    for (let at = 0; at < offsets.length; at += 1) {
      const offset = offsets[at] as number;
      for (let name = 0; name < names.length; name += 1) {
        next[cell] = offset + (names[name] as number) * stride;
        cell += 1;
      }
    }
    offsets = next;
  }
  return gathered(costs, offsets);
}

function gathered(from: ArrayLike<number>, at: Int32Array): Float64Array {
  const found = new Float64Array(at.length);
  for (let index = 0; index < at.length; index += 1) {
    found[index] = from[at[index] as number] as number;
  }
  return found;
}

function picked(from: Int32Array | undefined, at: Int32Array): Int32Array {
  const found = new Int32Array(at.length);
  for (let index = 0; index < at.length; index += 1) {
    found[index] = (from as Int32Array)[at[index] as number] as number;
  }
  return found;
}
