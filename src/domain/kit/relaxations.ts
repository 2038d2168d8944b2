/**
 * What could be taken back where demands contradict each other, and what is possible then.
 */

import type { Contradiction } from './core/contradiction.js';
import type { Budget } from './core/problem.js';
import { type Demand, without } from './demands.js';
import type { KitQuestion } from './question.js';
import { resolveKits } from './resolve.js';
import type { Route } from './route.js';

/** So many ways out are told. */
const MOST_RELAXATIONS = 12;

/** What could be taken back, and what is possible then. */
export interface Relaxation {
  readonly dropped: readonly Demand[];
  /** Null where the search for it ended before it found one. */
  readonly route: Route | null;
}

export interface Relaxations {
  readonly relaxations: readonly Relaxation[];
  /** There are others that are as small, or for some demand of the conflict none was found. */
  readonly hasMore: boolean;
}

export function relaxationsOf(
  question: KitQuestion,
  demands: readonly Demand[],
  { corrections, isAllSmallest }: Contradiction,
  budget: Budget,
): Relaxations {
  const told = corrections.slice(0, MOST_RELAXATIONS);
  const relaxations = told.map((set, order) => {
    const dropped = set.map((index) => demands[index] as Demand);
    return { dropped, route: bestWithout(question, dropped, budget), order };
  });
  relaxations.sort(
    (a, b) =>
      a.dropped.length - b.dropped.length || compareCosts(a.route, b.route) || a.order - b.order,
  );
  return {
    relaxations: relaxations.map(({ dropped, route }) => ({ dropped, route })),
    hasMore: !isAllSmallest || told.length < corrections.length,
  };
}

/** Where one limit is taken back, the route that passes it least; else the best as asked for. */
function bestWithout(
  question: KitQuestion,
  dropped: readonly Demand[],
  budget: Budget,
): Route | null {
  const limits = dropped.filter(({ is }) => is === 'limit').map(({ name }) => name);
  const [only, ...others] = limits;
  const measure = only === undefined || others.length > 0 ? undefined : MEASURES[only];
  const asked = {
    ...without(question, dropped),
    routes: 1,
    steps: budget.left,
    onlyUndominated: false,
    ...(measure === undefined ? {} : { prefer: measure }),
  };
  const { routes, steps } = resolveKits(asked, { looksAhead: false });
  budget.left -= steps;
  return routes[0] ?? null;
}

/** What is asked for first where the least that breaks a limit is wanted. */
const MEASURES: Readonly<Record<string, KitQuestion['prefer'] | undefined>> = {
  cost: 'cost',
  changedPositions: 'changed-positions',
  labourHours: 'labour-hours',
  leadDays: 'lead-days',
};

/** What is not known to cost anything certain comes last. */
function compareCosts(a: Route | null, b: Route | null): number {
  const ranks = [a, b].map((route) =>
    route === null ? 2 : Math.min(1, route.basket.totals.unpriced.length),
  );
  const [x = 0, y = 0] = ranks;
  return x - y || (a?.basket.totals.cost ?? 0) - (b?.basket.totals.cost ?? 0);
}
