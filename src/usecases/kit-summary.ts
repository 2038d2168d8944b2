/**
 * One sentence for a route, and one for all of them. The first is called the cheapest only where
 * that is certain: asked for by cost, searched to the end, and with nothing that has no price.
 */

import type { ReasonData } from '../domain/explain/reason.js';
import type { Judgement } from '../domain/judge/judge.js';
import type { Conflict } from '../domain/kit/conflict.js';
import { moneyText } from '../domain/kit/money.js';
import type { KitQuestion } from '../domain/kit/question.js';
import type { Kits, Route } from '../domain/kit/route.js';
import type { SaidReason } from './answer.js';
import type { RouteView } from './kit-answer.js';
import type { Speaker } from './speaker.js';

/** What must be known before it is certain that everything goes together. */
export function openPoints({ constraints }: Judgement): number {
  return constraints.filter(({ severity, state }) => severity === 'must' && state === 'open')
    .length;
}

/** @param facts how many things have to be found out about it. */
export function routeSummary(route: Route, facts: number, speaker: Speaker): SaidReason {
  const { grade, basket, changes } = route;
  if (changes.length === 0 && basket.lines.length === 0)
    return speaker.said('nothing-to-change', {});
  const { signOff } = basket.totals;
  const data = {
    ...comesTo(route, facts, speaker),
    ...(signOff === null ? {} : { text: signOff }),
  };
  return speaker.said(grade === 'proven' ? 'route-proven' : 'route-open', data);
}

export function kitsSummary(
  kits: Kits,
  conflict: Conflict | null,
  views: readonly RouteView[],
  { prefer }: Pick<KitQuestion, 'prefer'>,
  speaker: Speaker,
): SaidReason {
  const { routes, isComplete, hasMore } = kits;
  const [first] = routes;
  const [view] = views;
  if (first === undefined || view === undefined) {
    const count = conflict?.demands.length ?? 0;
    if (count > 1) return speaker.said('no-way-together', { count });
    return speaker.said(isComplete ? 'no-way' : 'no-way-so-far', {});
  }
  if (first.changes.length === 0 && first.basket.lines.length === 0) {
    return speaker.said('nothing-to-change', {});
  }
  const isPriced = routes.every(({ basket }) => basket.totals.unpriced.length === 0);
  const isCheapest = prefer === 'cost' && isComplete && isPriced && first.grade === 'proven';
  const data: ReasonData = {
    count: routes.length,
    ...comesTo(first, deciding(view), speaker),
    ...(hasMore ? { more: true } : {}),
    ...(isCheapest ? { cheapest: true } : {}),
  };
  if (!isComplete) return speaker.said('ways-so-far', data);
  return speaker.said(first.grade === 'proven' ? 'ways-proven' : 'ways-open', data);
}

/** The facts that decide an open point; what is only measured before ordering is none. */
export function deciding({ measure }: Pick<RouteView, 'measure'>): number {
  return measure.filter(({ purpose }) => purpose !== 'to-order').length;
}

/** What a route costs and changes, and how much there is to find out. */
export function comesTo({ basket }: Route, facts: number, speaker: Speaker): ReasonData {
  const { cost, unpriced, changedPositions: places } = basket.totals;
  const { currency } = speaker.catalogue;
  const isPriced = cost > 0 || unpriced.length === 0;
  return {
    places,
    ...(isPriced ? { price: speaker.values.money(moneyText(cost), currency) } : {}),
    ...(unpriced.length === 0 ? {} : { unpriced: unpriced.length }),
    ...(facts === 0 ? {} : { facts }),
  };
}
