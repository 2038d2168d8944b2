/**
 * The same problem for solvers of linear programs: one column for each value, exactly one of a
 * variable taken. Where a table only allows or forbids, whoever takes a class needs a partner for
 * it, on both sides. Where it costs something, each allowed pair has a column, and so much of a
 * class is taken as its pairs are. Tables of more than two variables are split into two halves,
 * each with a column for every combination. All of it is exact: no logarithm stands for a product.
 */

import type { Factor, Network } from '../../src/domain/kit/core/cost-network.js';

export interface Column {
  readonly cost: number;
  readonly isWhole: boolean;
}

/** The sum of columns, each so many times, lies between `low` and `high`; null: no such end. */
export interface Row {
  readonly terms: readonly (readonly [column: number, times: number])[];
  readonly low: number | null;
  readonly high: number | null;
}

export interface LinearModel {
  readonly columns: readonly Column[];
  readonly rows: readonly Row[];
  /** By variable: the column of its first value. */
  readonly first: readonly number[];
}

/** Columns of which at most one is taken, one for each class. */
type Side = readonly (readonly number[])[];

export function linearModel(network: Network): LinearModel {
  const columns: Column[] = [];
  const rows: Row[] = [];
  const first = network.costs.map((own) => {
    const start = columns.length;
    for (const cost of own) columns.push({ cost, isWhole: true });
    rows.push({ terms: Array.from(own, (_, value) => [start + value, 1]), low: 1, high: 1 });
    return start;
  });
  for (const factor of network.factors) {
    const sides = factor.scope.map((variable, place) =>
      sideOf(factor, place, first[variable] ?? 0),
    );
    const half = Math.ceil(sides.length / 2);
    const left = joined(sides.slice(0, half), columns, rows);
    const right = joined(sides.slice(half), columns, rows);
    const costs = factor.costs ?? new Float64Array();
    if (costs.some((cost) => cost !== 0 && cost !== Number.POSITIVE_INFINITY)) {
      paired(left, right, costs, columns, rows);
    } else {
      supported(left, right, (a, b) => costs[a * right.length + b] === 0, rows);
      supported(right, left, (b, a) => costs[a * right.length + b] === 0, rows);
    }
  }
  return { columns, rows, first };
}

function sideOf({ classOf, counts }: Factor, place: number, first: number): number[][] {
  const side: number[][] = Array.from({ length: counts[place] ?? 0 }, () => []);
  classOf[place]?.forEach((name, value) => {
    side[name]?.push(first + value);
  });
  return side;
}

/** A column for each combination of the classes of several sides. */
function joined(sides: readonly Side[], columns: Column[], rows: Row[]): Side {
  const [one = [], two, ...more] = sides;
  if (two === undefined) return one;
  const free = new Float64Array(one.length * two.length);
  const pairs = paired(one, two, free, columns, rows);
  return joined([pairs.map((pair) => [pair]), ...more], columns, rows);
}

/** A column for each allowed pair, by pair; the classes of both sides are taken as often as it. */
function paired(
  left: Side,
  right: Side,
  costs: Float64Array,
  columns: Column[],
  rows: Row[],
): number[] {
  const pairs: number[] = [];
  const byLeft: number[][] = left.map(() => []);
  const byRight: number[][] = right.map(() => []);
  costs.forEach((cost, cell) => {
    if (cost === Number.POSITIVE_INFINITY) return;
    const pair = columns.push({ cost, isWhole: false }) - 1;
    pairs[cell] = pair;
    byLeft[Math.floor(cell / right.length)]?.push(pair);
    byRight[cell % right.length]?.push(pair);
  });
  const tie = (side: Side, by: readonly number[][]) => {
    side.forEach((own, name) => {
      const terms = [...times(own, 1), ...times(by[name] ?? [], -1)];
      rows.push({ terms, low: 0, high: 0 });
    });
  };
  tie(left, byLeft);
  tie(right, byRight);
  return pairs;
}

/** Whoever takes a class of `from` takes one of those that it meets. */
function supported(
  from: Side,
  to: Side,
  meets: (one: number, other: number) => boolean,
  rows: Row[],
): void {
  from.forEach((own, name) => {
    const partners = to.filter((_, other) => meets(name, other));
    if (partners.length === to.length) return;
    rows.push({ terms: [...times(own, 1), ...times(partners.flat(), -1)], low: null, high: 0 });
  });
}

function times(columns: readonly number[], factor: number): (readonly [number, number])[] {
  return columns.map((column) => [column, factor]);
}
