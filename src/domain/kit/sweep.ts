/**
 * The routes of one grade in the order of the preference. Costs that add up are left to the
 * search. Lead days and capacity do not add up, the worst piece decides: for them it is searched
 * under one limit after the other, each time for the cheapest.
 */

import type { Rational } from '../quantity/rational.js';
import { compare } from '../quantity/rational.js';
import type { Limited } from './basket.js';
import type { Gathering } from './core/groups.js';
import type { Phase } from './core/problem.js';
import { Tables } from './core/tables.js';
import {
  type Candidate,
  compareCandidates,
  compareMargins,
  type Gathered,
  gather,
  leadOf,
} from './finder.js';
import { groundOf } from './ground.js';
import { KitProblem, type Solved } from './kit-problem.js';
import { PriceList } from './price.js';
import type { KitQuestion, Preference } from './question.js';

export interface Demanded {
  /** Every load must leave more than this; null where it need not. */
  readonly moreThan?: Rational | null;
  /** Limits of which it must be known that they are kept. */
  readonly mustKnow?: ReadonlySet<Limited>;
}

/** The problem of a question, with nothing asked of it yet. */
export function problemOf(
  question: KitQuestion,
  { moreThan = null, mustKnow = new Set() }: Demanded = {},
): Solved {
  const ground = groundOf(question);
  const priceList = new PriceList({ ...question, catalogue: ground.scene.catalogue }, mustKnow);
  const problem = new KitProblem(ground, priceList, moreThan);
  return { problem, tables: new Tables(problem) };
}

export function sweep(solved: Solved, phase: Phase, options: Gathering): Gathered {
  const { question } = solved.problem.scene;
  switch (question.prefer) {
    case 'lead-days':
      return sweepLeadDays(solved, phase, options);
    case 'capacity':
      return sweepCapacity(solved, phase, options);
    default:
      return gather(solved, phase, options);
  }
}

/** With ever more time: what is found first with some changes needs the least. */
function sweepLeadDays({ problem }: Solved, phase: Phase, options: Gathering): Gathered {
  const { question } = problem.scene;
  const { mustKnow } = problem.priceList;
  // What is not known to be there by then is found later, with more time.
  const inTime = new Set<Limited>([...mustKnow, 'leadDays']);
  const { limits, offers } = question;
  const days = offers.flatMap(({ record }) => record.leadDays ?? []);
  const most = limits.leadDays ?? Number.POSITIVE_INFINITY;
  const steps = [...new Set([0, ...days])].filter((day) => day <= most).sort((a, b) => a - b);
  const known = new Map<string, Candidate>();
  let last: Gathered = NOTHING;
  for (const leadDays of [...steps, limits.leadDays]) {
    if (known.size > options.wanted || !last.isComplete) break;
    const asked = { ...question, limits: { ...limits, leadDays } };
    const demanded = { mustKnow: leadDays === limits.leadDays ? mustKnow : inTime };
    last = gather(problemOf(asked, demanded), phase, options);
    for (const candidate of last.candidates) {
      const key = candidate.places.join();
      if (!known.has(key)) known.set(key, candidate);
    }
  }
  const candidates = [...known.values()].sort(orderOf('lead-days')).slice(0, options.wanted + 1);
  return { ...last, candidates, isAll: last.isAll && known.size === candidates.length };
}

/** What comes first of two routes of one grade. */
export function orderOf(prefer: Preference): (a: Candidate, b: Candidate) => number {
  return (a, b) => {
    if (prefer === 'lead-days') return leadOf(a) - leadOf(b) || compareCandidates(a, b);
    if (prefer !== 'capacity') return compareCandidates(a, b);
    return compareMargins(marginOf(b), marginOf(a)) || compareCandidates(a, b);
  };
}

const NOTHING: Gathered = {
  candidates: [],
  isComplete: true,
  isAll: true,
  bound: Number.POSITIVE_INFINITY,
};

/** For ever more capacity, until nothing leaves more. */
function sweepCapacity(solved: Solved, phase: Phase, options: Gathering): Gathered {
  const { question } = solved.problem.scene;
  const { mustKnow } = solved.problem.priceList;
  const { wanted } = options;
  const known = new Map<string, Candidate>();
  const order = orderOf('capacity');
  let last = gather(solved, phase, options);
  let moreThan: Rational | null = null;
  while (last.candidates.length > 0) {
    for (const candidate of last.candidates) {
      const key = candidate.places.join();
      const other = known.get(key);
      if (other === undefined || order(candidate, other) < 0) known.set(key, candidate);
    }
    const next = nextMargin([...known.values()].sort(order), last.candidates, wanted);
    if (next === null || !last.isComplete) break;
    if (moreThan !== null && compare(next, moreThan) <= 0) break;
    moreThan = next;
    last = gather(problemOf(question, { moreThan, mustKnow }), phase, options);
  }
  const candidates = [...known.values()].sort(order).slice(0, wanted + 1);
  return { ...last, candidates, isAll: last.isAll && known.size === candidates.length };
}

/**
 * What the next must leave more than: the last that would be listed, where more were found than
 * are wanted; else the least of what was found. Null where that is not known.
 */
function nextMargin(
  known: readonly Candidate[],
  found: readonly Candidate[],
  wanted: number,
): Rational | null {
  const last = found.length > wanted ? known[wanted - 1] : undefined;
  if (last !== undefined) return marginOf(last);
  const margins = found.map(marginOf).filter((margin) => margin !== null);
  return margins.reduce<Rational | null>(
    (least, margin) => (least === null || compare(margin, least) < 0 ? margin : least),
    null,
  );
}

function marginOf({ weakest }: Candidate): Rational | null {
  return weakest?.margin ?? null;
}
