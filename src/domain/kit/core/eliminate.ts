/**
 * Exact elimination: one variable after the other is replaced by a table that says, for the
 * classes of its neighbours, what the best of its values costs. What is left is the least cost,
 * and going back gives the values that have it.
 */

import { type Factor, type Network, stridesOf } from './cost-network.js';
import { type Order, scopesOf } from './eliminate-order.js';
import { minimise, type Operand } from './minimise.js';
import type { Partition, Partitions } from './partitions.js';

export interface Eliminated {
  readonly cost: number;
  /** By variable, its value; for the variable eliminated last the first of those possible. */
  readonly values: readonly number[];
  /** No other assignment costs as little. */
  readonly isUnique: boolean;
}

interface Table {
  readonly variables: readonly number[];
  readonly places: readonly number[];
  readonly parts: readonly Partition[];
  readonly strides: readonly number[];
  readonly costs: Float64Array;
}

/** Null where nothing is allowed. Every limit must have been written out. */
export function eliminated(
  network: Network,
  partitions: Partitions,
  order: Order,
): Eliminated | null {
  const tables: Table[][] = network.costs.map(() => []);
  scopesOf(network, partitions).forEach(({ variables, places }, index) => {
    const factor = network.factors[index] as Factor;
    const { strides, costs } = factor;
    const parts = variables.map((variable, at) =>
      partOf(factor, partitions, variable, at, places[at] as number),
    );
    const table = { variables, places, parts, strides, costs: costs as Float64Array };
    for (const variable of variables) (tables[variable] as Table[]).push(table);
  });
  let cost = 0;
  const buckets: (readonly Table[])[] = [];
  for (const variable of order.variables) {
    const bucket = tables[variable] as Table[];
    const made = without(network, partitions, variable, bucket);
    buckets.push(bucket);
    for (const other of made.variables) {
      const rest = (tables[other] as Table[]).filter((table) => !bucket.includes(table));
      rest.push(made);
      tables[other] = rest;
    }
    if (made.variables.length === 0) cost += made.costs[0] as number;
    if (cost === Number.POSITIVE_INFINITY) return null;
  }
  return { cost, ...wayBack(network, order, buckets) };
}

/** The classes of a factor itself, in the order of its own table. */
function partOf(
  { classOf, counts }: Factor,
  partitions: Partitions,
  variable: number,
  place: number,
  bit: number,
): Partition {
  if (bit !== 0) return partitions.of(variable, bit);
  const own = classOf[place] as Int32Array;
  return { count: counts[place] as number, classOf: own, first: own };
}

/** The table that stands for the variable and all tables that it was in. */
function without(
  network: Network,
  partitions: Partitions,
  variable: number,
  bucket: readonly Table[],
): Table {
  const joined = new Map<number, number>();
  for (const { variables, places } of bucket) {
    variables.forEach((one, at) => {
      joined.set(one, (joined.get(one) ?? 0) | (places[at] as number));
    });
  }
  const own = partitions.of(variable, joined.get(variable) ?? 0);
  joined.delete(variable);
  const variables = [...joined.keys()];
  const places = [...joined.values()];
  const parts = variables.map((one, at) => partitions.of(one, places[at] as number));
  const operands = bucket.map(
    (table): Operand => ({
      costs: table.costs,
      own: offsetsOf(table, variable, own),
      others: variables.map((one, at) => offsetsOf(table, one, parts[at] as Partition)),
    }),
  );
  const unary = cheapest(network.costs[variable] as Float64Array, own);
  const counts = parts.map(({ count }) => count);
  const costs = minimise(counts, unary, operands);
  return { variables, places, parts, strides: stridesOf(counts), costs };
}

/** By class: the least that a value in it costs. */
function cheapest(costs: Float64Array, { count, classOf }: Partition): Float64Array {
  if (count === costs.length) {
    const own = new Float64Array(count);
    for (let value = 0; value < count; value += 1) {
      own[classOf[value] as number] = costs[value] as number;
    }
    return own;
  }
  const least = new Float64Array(count).fill(Number.POSITIVE_INFINITY);
  for (let value = 0; value < costs.length; value += 1) {
    const own = classOf[value] as number;
    least[own] = Math.min(least[own] as number, costs[value] as number);
  }
  return least;
}

/** By class: how far into the table its values lead; null where the table has no such variable. */
function offsetsOf(table: Table, variable: number, finer: Partition): Int32Array | null {
  const at = table.variables.indexOf(variable);
  if (at < 0) return null;
  const { classOf } = table.parts[at] as Partition;
  const stride = table.strides[at] as number;
  const offsets = new Int32Array(finer.count);
  for (let name = 0; name < finer.count; name += 1) {
    offsets[name] = (classOf[finer.first[name] as number] as number) * stride;
  }
  return offsets;
}

/** In the opposite order each variable takes the first of its best values. */
function wayBack(
  network: Network,
  order: Order,
  buckets: readonly (readonly Table[])[],
): { values: number[]; isUnique: boolean } {
  const values = network.costs.map(() => 0);
  let isUnique = true;
  for (let index = order.variables.length - 1; index >= 0; index -= 1) {
    const variable = order.variables[index] as number;
    const costs = Float64Array.from(network.costs[variable] as Float64Array);
    for (const table of buckets[index] as readonly Table[]) add(table, variable, values, costs);
    let best = 0;
    let many = 1;
    for (let value = 1; value < costs.length; value += 1) {
      if ((costs[value] as number) < (costs[best] as number)) {
        best = value;
        many = 1;
      } else if (costs[value] === costs[best]) many += 1;
    }
    if (many > 1) isUnique = false;
    values[variable] = best;
  }
  return { values, isUnique };
}

function add(table: Table, variable: number, values: readonly number[], costs: Float64Array): void {
  let base = 0;
  let own = 0;
  table.variables.forEach((one, at) => {
    if (one === variable) own = at;
    else {
      const { classOf } = table.parts[at] as Partition;
      base += (classOf[values[one] as number] as number) * (table.strides[at] as number);
    }
  });
  const { classOf } = table.parts[own] as Partition;
  const stride = table.strides[own] as number;
  for (let value = 0; value < costs.length; value += 1) {
    const cell = base + (classOf[value] as number) * stride;
    costs[value] = (costs[value] as number) + (table.costs[cell] as number);
  }
}
