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
  const open = live.filter((value) => costs[value] !== Number.POSITIVE_INFINITY);
  let groups = new Int32Array(open.length);
  let count = Math.min(open.length, 1);
  for (const { factor, place } of network.places[variable] as Place[]) {
    if (count === open.length) return open;
    const { classOf, counts } = network.factors[factor] as Factor;
    const classes = classOf[place] as Int32Array;
    const finer = refined(
      groups,
      count,
      (at) => classes[open[at] as number] as number,
      counts[place],
    );
    groups = finer.groups;
    count = finer.count;
  }
  const best = new Int32Array(count).fill(-1);
  for (let at = 0; at < open.length; at += 1) {
    const group = groups[at] as number;
    const other = best[group] as number;
    const value = open[at] as number;
    if (other < 0 || (costs[value] as number) < (costs[other] as number)) best[group] = value;
  }
  return best.sort();
}

/** Groups split by the class of each member. */
function refined(
  groups: Int32Array,
  count: number,
  classAt: (at: number) => number,
  classes = 1,
): { groups: Int32Array<ArrayBuffer>; count: number } {
  const seen = new Int32Array(count * classes).fill(-1);
  const finer = new Int32Array(groups.length);
  let found = 0;
  for (let at = 0; at < groups.length; at += 1) {
    const key = (groups[at] as number) * classes + classAt(at);
    if ((seen[key] as number) < 0) {
      seen[key] = found;
      found += 1;
    }
    finer[at] = seen[key] as number;
  }
  return { groups: finer, count: found };
}

function cutDown(factor: Factor, kept: readonly Int32Array[]): Factor {
  const { scope, classOf, counts } = factor;
  /** By place, by new class: the old one. */
  const old: Int32Array[] = [];
  const classes: Int32Array[] = [];
  scope.forEach((variable, place) => {
    const values = kept[variable] as Int32Array;
    const own = classOf[place] as Int32Array;
    const renamed = new Int32Array(counts[place] as number).fill(-1);
    const names: number[] = [];
    classes.push(
      values.map((value) => {
        const name = own[value] as number;
        if ((renamed[name] as number) < 0) renamed[name] = names.push(name) - 1;
        return renamed[name] as number;
      }),
    );
    old.push(Int32Array.from(names));
  });
  return { ...withTable(factor, old), scope, classOf: classes };
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
  old.forEach((names, place) => {
    const stride = strides[place] as number;
    const next = new Int32Array(offsets.length * names.length);
    let at = 0;
    for (const offset of offsets) {
      for (const name of names) {
        next[at] = offset + name * stride;
        at += 1;
      }
    }
    offsets = next;
  });
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
  return at.map((index) => (from as Int32Array)[index] as number);
}
