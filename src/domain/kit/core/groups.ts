/**
 * What a search finds, gathered by what it changes: the cheapest for each set of changed places.
 */

import type { Budget, Found, Phase, Variable } from './problem.js';
import { Search } from './search.js';
import type { Tables } from './tables.js';

/** The cheapest results that change the same places; several where they cost the same. */
export interface Group {
  /** Variables, ascending. */
  readonly places: readonly number[];
  readonly cost: number;
  readonly found: readonly Found[];
}

export interface Gathering {
  /** How many groups are wanted; one more is looked for, to know whether there is one. */
  readonly wanted: number;
  readonly budget: Budget;
  /** Sets of places that are passed over where they cost no less than this. */
  readonly passed: ReadonlyMap<string, number>;
}

export interface Groups {
  /** The cheapest first; all that cost as much as the last that is wanted are among them. */
  readonly groups: readonly Group[];
  readonly isComplete: boolean;
  /** Nothing that is not among them costs less. */
  readonly bound: number;
}

/** Which places a result changes. */
export function placesOf(variables: readonly Variable[], values: readonly number[]): number[] {
  return values.flatMap((value, variable) =>
    value !== 0 && variables[variable]?.isPlace === true ? [variable] : [],
  );
}

export function gatherGroups(tables: Tables, phase: Phase, gathering: Gathering): Groups {
  const { wanted, budget, passed } = gathering;
  const search = new Search(tables, phase, budget);
  const groups = new Map<string, { places: number[]; cost: number; found: Found[] }>();
  // What ties with the one after the last that is wanted is looked at too.
  let limit = Number.POSITIVE_INFINITY;
  while (search.bound <= limit) {
    const found = search.next();
    if (found === null) break;
    const places = placesOf(tables.variables, found.values);
    const key = places.join();
    if ((passed.get(key) ?? Number.POSITIVE_INFINITY) <= found.cost) continue;
    const group = groups.get(key);
    if (group === undefined) groups.set(key, { places, cost: found.cost, found: [found] });
    else if (group.cost === found.cost) group.found.push(found);
    if (groups.size === wanted + 1 && group === undefined) limit = found.cost;
  }
  return {
    groups: [...groups.values()],
    isComplete: search.isExhausted || search.bound > limit,
    bound: search.bound,
  };
}
