/**
 * From a problem of least cost as it is said to the network that is computed with: scopes that
 * name a variable twice are merged, tables of one variable become its costs, limits whole numbers,
 * and values that nothing tells apart the cheapest of them.
 */

import { type PlacedNumbers, wholeLimit } from './cost-limit.js';
import {
  type Factor,
  type Network,
  placesOf,
  shrunk,
  stridesOf,
  subTable,
  writtenOut,
} from './cost-network.js';
import {
  type CostLimit,
  type CostProblem,
  type CostTable,
  type Fraction,
  GREATEST_TOTAL,
} from './cost-problem.js';

export interface Compiled {
  /** Null where a variable has no value left. */
  readonly network: Network | null;
  /** What every assignment costs; Infinity where none is allowed. */
  readonly constant: number;
}

/**
 * @throws RangeError for a cost that is no whole number from 0, and where all the greatest
 *   together pass what can be added exactly.
 */
export function compiledCosts(problem: CostProblem): Compiled {
  const costs = problem.variables.map((variable) => new Float64Array(variable.costs));
  const factors: Factor[] = [];
  let constant = 0;
  let total = costs.reduce((sum, own) => sum + greatestOf(own), 0);
  for (const table of problem.tables) {
    total += greatestOf(table.costs);
    const factor = factorOf(table);
    if (factor === null) constant += table.costs[0] as number;
    else take(factor, costs, factors);
  }
  for (const limit of problem.limits) {
    const factor = limitFactor(limit, problem);
    if (factor !== null) take(factor, costs, factors);
    else if (!holdsEmpty(limit)) constant = Number.POSITIVE_INFINITY;
  }
  if (total > GREATEST_TOTAL)
    throw new RangeError(`Costs add up to ${total}, too much to be exact`);
  const network: Network = {
    costs,
    original: costs.map(({ length }) => upTo(length)),
    factors,
    places: placesOf(costs.length, factors),
  };
  return { network: shrunk(network, network.original), constant };
}

function upTo(count: number): Int32Array {
  const values = new Int32Array(count);
  for (let value = 0; value < count; value += 1) values[value] = value;
  return values;
}

/** A factor of one variable is its costs. */
function take(factor: Factor, costs: readonly Float64Array[], factors: Factor[]): void {
  const { scope, classOf } = factor;
  if (scope.length > 1 || factor.costs === null) {
    factors.push(factor);
    return;
  }
  const own = costs[scope[0] as number] as Float64Array;
  const classes = classOf[0] as Int32Array;
  for (let value = 0; value < own.length; value += 1) {
    own[value] = (own[value] as number) + (factor.costs[classes[value] as number] as number);
  }
}

function greatestOf(costs: ArrayLike<number>): number {
  let greatest = 0;
  for (let at = 0; at < costs.length; at += 1) {
    const cost = costs[at] as number;
    if (cost === Number.POSITIVE_INFINITY) continue;
    if (!Number.isSafeInteger(cost) || cost < 0) throw new RangeError(`${cost} is no whole cost`);
    if (cost > greatest) greatest = cost;
  }
  return greatest;
}

/** Null where the table names no variable. */
function factorOf(table: CostTable): Factor | null {
  if (table.scope.length === 0) return null;
  const { counts, costs } = table;
  const isOnce = table.scope.every((variable, place) => table.scope.indexOf(variable) === place);
  if (!isOnce) return mergedFactor(table);
  return {
    scope: table.scope,
    classOf: table.classes.map((classes) => new Int32Array(classes)),
    counts,
    strides: stridesOf(counts),
    costs: new Float64Array(costs),
    limit: null,
  };
}

/** A variable that is named more than once stands in one place, with the classes of all. */
function mergedFactor(table: CostTable): Factor {
  const strides = stridesOf(table.counts);
  const names: Int32Array[] = [];
  const classOf: Int32Array[] = [];
  const scope = [...new Set(table.scope)];
  for (const variable of scope) {
    const offsets = offsetsOf(table, strides, variable);
    const renamed = new Int32Array(table.costs.length).fill(-1);
    const own: number[] = [];
    for (let value = 0; value < offsets.length; value += 1) {
      const offset = offsets[value] as number;
      if ((renamed[offset] as number) < 0) renamed[offset] = own.push(offset) - 1;
      offsets[value] = renamed[offset] as number;
    }
    names.push(Int32Array.from(own));
    classOf.push(offsets);
  }
  const counts = names.map(({ length }) => length);
  const costs = subTable(
    table.costs,
    scope.map(() => 1),
    names,
  );
  return { scope, classOf, counts, strides: stridesOf(counts), costs, limit: null };
}

/** By value: how far into the table the classes at all places of the variable lead. */
function offsetsOf(table: CostTable, strides: readonly number[], variable: number): Int32Array {
  const size = table.classes[table.scope.indexOf(variable)]?.length ?? 0;
  const offsets = new Int32Array(size);
  table.scope.forEach((other, place) => {
    if (other !== variable) return;
    const classes = table.classes[place] as readonly number[];
    const stride = strides[place] as number;
    for (let value = 0; value < size; value += 1) {
      offsets[value] = (offsets[value] as number) + (classes[value] as number) * stride;
    }
  });
  return offsets;
}

function limitFactor(limit: CostLimit, { variables }: CostProblem): Factor | null {
  if (limit.scope.length === 0) return null;
  const scope = [...new Set(limit.scope)];
  const placed = scope.map((variable): PlacedNumbers => {
    const places = limit.scope.flatMap((other, place) => (other === variable ? [place] : []));
    const [first = [], ...others] = places.map((place) => limit.numbers[place] ?? []);
    const numbers = (variables[variable]?.costs ?? []).map((_, value) =>
      others.reduce(
        (all, own) => combined(limit.combines, all, own[value] as Fraction),
        first[value] as Fraction,
      ),
    );
    return { variable, numbers };
  });
  const { limit: whole, classes } = wholeLimit(limit, placed);
  const counts = whole.numbers.map(({ length }) => length);
  return {
    scope,
    classOf: classes,
    counts,
    strides: stridesOf(counts),
    costs: writtenOut(whole, counts),
    limit: whole,
  };
}

function combined(combines: CostLimit['combines'], a: Fraction, b: Fraction): Fraction {
  const denominator = a.denominator * b.denominator;
  if (combines === 'product') return { numerator: a.numerator * b.numerator, denominator };
  return { numerator: a.numerator * b.denominator + b.numerator * a.denominator, denominator };
}

/** Whether a limit that names no variable holds. */
function holdsEmpty({ combines, low, high }: CostLimit): boolean {
  const nothing = combines === 'product' ? 1n : 0n;
  return low.numerator <= nothing * low.denominator && nothing * high.denominator <= high.numerator;
}
