/**
 * Finds the routes of a kit question: every way of doing the conversion that leaves nothing out
 * and has nothing in it that could be left out, the best first.
 *
 * Proven routes come first; what is open is searched only where too few are proven.
 */

import { compare, type Rational } from '../quantity/rational.js';
import { LIMITED } from './basket.js';
import { type Gathering, hiddenBy } from './core/groups.js';
import type { Budget } from './core/problem.js';
import { type Candidate, compareMargins, type Gathered, leadOf, openPointsOf } from './finder.js';
import type { Solved } from './kit-problem.js';
import { priceIn } from './lanes.js';
import type { KitQuestion } from './question.js';
import type { Kits, Route, RouteGrade } from './route.js';
import { routeOf } from './route-of.js';
import { orderOf, problemOf, sweep } from './sweep.js';

/** Where what is beaten is left out, so many are compared. */
const MOST_COMPARED = 20;

/**
 * @param looksAhead whether one more route is looked for than is asked for, to know whether there
 * is one. Who wants no more than the first need not wait for that.
 */
export function resolveKits(question: KitQuestion, { looksAhead = true } = {}): Kits {
  const solved = problemOf(question);
  const budget: Budget = { left: question.steps };
  const wanted = question.onlyUndominated ? MOST_COMPARED : question.routes;
  const options = { looksAhead, budget, wanted };
  const { candidates, isComplete, isAll, bound } = search(solved, options);
  const routes = candidates.slice(0, wanted).map((candidate) => routeOf(candidate));
  const weighed = routes.map((route, index): Route => {
    return { ...route, beatenBy: beatenBy(routes, candidates, index) };
  });
  const listed = question.onlyUndominated
    ? weighed.filter((route) => route.beatenBy === null)
    : weighed;
  return {
    routes: listed.slice(0, question.routes),
    isComplete,
    hasMore: listed.length > question.routes || candidates.length > wanted || !isAll,
    bound,
    steps: question.steps - budget.left,
  };
}

interface Searched {
  /** One more than wanted, where there is one. */
  readonly candidates: readonly Candidate[];
  readonly isComplete: boolean;
  readonly isAll: boolean;
  readonly bound: Kits['bound'];
}

function search(solved: Solved, options: Omit<Gathering, 'isPassed'>): Searched {
  const { question } = solved.problem.scene;
  const { looksAhead, wanted } = options;
  const limits = LIMITED.filter((limit) => question.limits[limit] !== null);
  // Proven is what is known to keep the limits, too.
  const known = limits.length === 0 ? solved : problemOf(question, { mustKnow: new Set(limits) });
  const proven = sweep(known, 'proven', { ...options, isPassed: () => false });
  const sought = looksAhead ? wanted + 1 : wanted;
  const isEnough = proven.candidates.length >= sought || question.refusesUnknowns;
  if (isEnough || !proven.isComplete) {
    return { ...proven, bound: boundOf(solved, proven, 'proven') };
  }
  const { priceLane } = solved.problem.priceList;
  const isPassed = hiddenBy(proven.candidates, (cost) => priceIn(cost, priceLane));
  const left = { ...options, wanted: wanted - proven.candidates.length, isPassed };
  const doubtful = sweep(solved, 'open', left);
  const open =
    limits.length === 0
      ? doubtful
      : merged(question, left.wanted, [sweep(solved, 'proven', left), doubtful]);
  return {
    candidates: [...proven.candidates, ...open.candidates],
    isComplete: open.isComplete,
    isAll: open.isAll,
    bound: boundOf(solved, open, 'open'),
  };
}

/**
 * Open routes that were found apart: those of which only a limit is not known to be kept, and those
 * of which something else is open. The better one of each set of changed places.
 */
function merged(
  { prefer }: KitQuestion,
  wanted: number,
  apart: readonly [Gathered, Gathered],
): Gathered {
  const all = apart.flatMap(({ candidates }) => candidates).sort(orderOf(prefer));
  const byPlaces = new Map<string, Candidate>();
  for (const candidate of all) {
    const key = candidate.places.join();
    if (!byPlaces.has(key)) byPlaces.set(key, candidate);
  }
  return {
    candidates: [...byPlaces.values()].slice(0, wanted + 1),
    isComplete: apart.every(({ isComplete }) => isComplete),
    isAll: apart.every(({ isAll }) => isAll) && byPlaces.size <= wanted + 1,
    bound: Math.min(...apart.map(({ bound }) => bound)),
  };
}

function boundOf(
  { problem }: Solved,
  { isComplete, bound }: { readonly isComplete: boolean; readonly bound: number },
  grade: RouteGrade,
): Kits['bound'] {
  if (isComplete) return null;
  return { grade, cost: problem.priceList.lanesOf(bound).money };
}

/** The first listed route that is no worse than this one on any count, and better on one. */
function beatenBy(
  routes: readonly Omit<Route, 'beatenBy'>[],
  candidates: readonly Candidate[],
  index: number,
): number | null {
  const own = candidates[index];
  const found = routes.findIndex((_, other) => {
    const rival = candidates[other];
    return other !== index && own !== undefined && rival !== undefined && beats(rival, own);
  });
  return found < 0 ? null : found;
}

function beats(a: Candidate, b: Candidate): boolean {
  const orders = countsOf(a, b);
  return orders.every((order) => order >= 0) && orders.some((order) => order > 0);
}

/** On each count: above zero where the first is better, below where it is worse. */
function countsOf(a: Candidate, b: Candidate): number[] {
  const [x, y] = [a.basket.totals, b.basket.totals];
  const isPriced = x.labour !== null;
  const isTimed = isKnownOf(x.untimed, y.untimed);
  const checks = new Set([...a.loads, ...b.loads].map(({ check }) => check));
  return [
    gradeOf(a) - gradeOf(b),
    y.unpriced.length - x.unpriced.length,
    isKnownOf(x.unpriced, y.unpriced) && (isTimed || !isPriced) ? y.cost - x.cost : -1,
    y.changedPositions - x.changedPositions,
    openPointsOf(b) - openPointsOf(a),
    isTimed ? compare(y.labourHours, x.labourHours) : -1,
    leadOf(b) - leadOf(a),
    ...[...checks].map((check) => compareMargins(marginOf(a, check), marginOf(b, check))),
  ];
}

/**
 * Whether all that is not known of the first is not known of the second either: else what is known
 * of it may be the smaller part, and it cannot be told that it is no worse.
 */
function isKnownOf(unknown: readonly string[], others: readonly string[]): boolean {
  return unknown.every((key) => others.includes(key));
}

function gradeOf({ grade }: Candidate): number {
  return grade === 'proven' ? 1 : 0;
}

function marginOf({ loads }: Candidate, check: string): Rational | null {
  return loads.find((load) => load.check === check)?.margin ?? null;
}
