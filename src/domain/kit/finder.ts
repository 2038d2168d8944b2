/**
 * Gathers what the search finds into routes-to-be: one for each set of changed places and grade,
 * the best of its set, in the order in which routes are shown.
 */

import { type Load, weakestOf } from '../driveline/loads.js';
import { compare, type Rational } from '../quantity/rational.js';
import type { Basket } from './basket.js';
import { type Gathering, type Group, gatherGroups, placesOf } from './core/groups.js';
import type { Found, Phase } from './core/problem.js';
import { nameOf, type Solved } from './kit-problem.js';
import type { RouteGrade } from './route.js';

/** One way of doing it, weighed. */
export interface Candidate {
  readonly solved: Solved;
  readonly grade: RouteGrade;
  /** Of the problem. */
  readonly values: readonly number[];
  readonly cost: number;
  readonly open: readonly number[];
  readonly basket: Basket;
  readonly loads: readonly Load[];
  readonly weakest: { readonly position: string; readonly margin: Rational } | null;
  /** The changed places, by index in the layout. */
  readonly places: readonly number[];
  /** The articles by place, then by mating: the last word between equals. */
  readonly names: string;
}

export function candidateOf(solved: Solved, found: Found, grade: RouteGrade): Candidate {
  const { problem } = solved;
  const { scene, billing, priceList } = problem;
  const values = problem.sceneValues(found.values);
  const basket = priceList.basket(billing.bill(values));
  if (basket === null) throw new Error('what was found can be bought within the limits');
  const { loads } = problem.wholeAt(found.values);
  const isKnown = basket.totals.unknownLimits.length === 0;
  return {
    solved,
    grade: isKnown ? grade : 'open',
    values: found.values,
    cost: found.cost,
    open: found.open,
    basket,
    loads,
    weakest: weakestOf(loads),
    places: placesOf(problem.variables, found.values),
    names: JSON.stringify(values.map((value, variable) => nameOf(scene, variable, value))),
  };
}

/** What is not known: relations that are open, and limits. */
export function openPointsOf({ open, basket }: Candidate): number {
  return open.length + basket.totals.unknownLimits.length;
}

/** The order of routes of one grade: the cheapest first, by the preference; total. */
export function compareCandidates(a: Candidate, b: Candidate): number {
  return (
    a.cost - b.cost ||
    openPointsOf(a) - openPointsOf(b) ||
    compareMargins(b.weakest?.margin ?? null, a.weakest?.margin ?? null) ||
    compare(a.basket.totals.labourHours, b.basket.totals.labourHours) ||
    leadOf(a) - leadOf(b) ||
    compareLists(a.places, b.places) ||
    (a.names < b.names ? -1 : a.names > b.names ? 1 : 0)
  );
}

/** A margin that is not known is less than any. */
export function compareMargins(a: Rational | null, b: Rational | null): number {
  if (a === null || b === null) return a === b ? 0 : a === null ? -1 : 1;
  return compare(a, b);
}

/** What is not known may be never. */
export function leadOf({ basket }: Candidate): number {
  return basket.totals.leadDays ?? Number.MAX_SAFE_INTEGER;
}

function compareLists(a: readonly number[], b: readonly number[]): number {
  for (const [index, left] of a.entries()) {
    const right = b[index];
    if (right === undefined) return 1;
    if (left !== right) return left - right;
  }
  return a.length - b.length;
}

export interface Gathered {
  /** In order; one more than wanted, where there is one. */
  readonly candidates: readonly Candidate[];
  /** None that is wanted is left out. */
  readonly isComplete: boolean;
  /** There is nothing else. */
  readonly isAll: boolean;
  /** Nothing that is not among them costs less. */
  readonly bound: number;
}

/** The routes of one phase: as many as wanted and one more, if there are so many. */
export function gather(solved: Solved, phase: Phase, gathering: Gathering): Gathered {
  const { groups, isComplete, isAll, bound } = gatherGroups(solved.tables, phase, gathering);
  const candidates = groups
    .map((group) => best(solved, group, phase))
    .sort(compareCandidates)
    .slice(0, gathering.wanted + 1);
  return { candidates, isComplete, isAll, bound };
}

function best(solved: Solved, { found }: Group, grade: RouteGrade): Candidate {
  const [first, ...others] = found
    .map((one) => candidateOf(solved, one, grade))
    .sort(compareCandidates);
  if (first === undefined) throw new Error(`a group of ${others.length} has its first`);
  return first;
}
