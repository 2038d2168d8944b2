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
  /** How many groups are wanted. */
  readonly wanted: number;
  /** One more is looked for, to know whether there is one. */
  readonly looksAhead: boolean;
  readonly budget: Budget;
  /** Whether what changes these places at this cost is passed over. */
  readonly isPassed: (places: string, cost: number) => boolean;
}

/** What is proven and no dearer hides what is open and changes the same places. */
export function hiddenBy(
  proven: readonly { readonly places: readonly number[]; readonly cost: number }[],
  priceOf: (cost: number) => number,
): Gathering['isPassed'] {
  const prices = new Map(proven.map(({ places, cost }) => [places.join(), priceOf(cost)]));
  return (places, cost) => (prices.get(places) ?? Number.POSITIVE_INFINITY) <= priceOf(cost);
}

export interface Groups {
  /** The cheapest first; all that cost as much as the last that is wanted are among them. */
  readonly groups: readonly Group[];
  /** Nothing that belongs among the wanted ones is left out. */
  readonly isComplete: boolean;
  /** There is nothing else. */
  readonly isAll: boolean;
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
  const { wanted, looksAhead, budget, isPassed } = gathering;
  const search = new Search(tables, phase, budget);
  const groups = new Map<string, { places: number[]; cost: number; found: Found[] }>();
  const costs: number[] = [];
  // What ties with the last that is looked for is looked at too.
  const costOf = (count: number): number =>
    count === 0 ? -1 : (costs[count - 1] ?? Number.POSITIVE_INFINITY);
  const sought = looksAhead ? wanted + 1 : wanted;
  while (search.bound <= costOf(sought)) {
    const found = search.next();
    if (found === null) break;
    const places = placesOf(tables.variables, found.values);
    const key = places.join();
    if (isPassed(key, found.cost)) continue;
    const group = groups.get(key);
    if (group !== undefined) {
      if (group.cost === found.cost) group.found.push(found);
      continue;
    }
    groups.set(key, { places, cost: found.cost, found: [found] });
    costs.push(found.cost);
  }
  return {
    groups: [...groups.values()],
    isComplete: search.isExhausted || search.bound > costOf(wanted),
    isAll: search.isExhausted,
    bound: search.bound,
  };
}
