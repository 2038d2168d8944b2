/**
 * The listed routes side by side: what all of them have in common, and what each comes to.
 */

import { COMPARED, type Compared } from '../domain/explain/sentence.js';
import { sayCompared } from '../domain/explain/words.js';
import type { Route } from '../domain/kit/route.js';
import { roundDown, shortText } from '../domain/quantity/rational.js';
import type { CompareView, RouteView } from './kit-answer.js';
import { openPoints } from './kit-summary.js';

type Cell = CompareView['rows'][number]['values'][number];

export function compareView(
  routes: readonly Route[],
  views: readonly RouteView[],
  lang: string,
): CompareView {
  const [first, ...others] = views.map(({ lines }) => lines.map(({ key }) => key));
  const same = (first ?? []).filter((key) => others.every((keys) => keys.includes(key)));
  const rows = COMPARED.map((key) => ({
    key,
    name: sayCompared(key, lang),
    values: routes.map((route, index) => cellOf(key, route, views[index])),
  }));
  return { same, rows };
}

function cellOf(row: Compared, { weakest, judgement }: Route, view: RouteView | undefined): Cell {
  if (view === undefined) throw new Error('each route has a view');
  const { totals } = view;
  switch (row) {
    case 'unpriced':
      return totals.unpriced.length;
    case 'openPoints':
      return openPoints(judgement);
    case 'weakest':
      return weakest === null ? null : shortText(roundDown(weakest.margin, MARGIN_PLACES));
    default:
      return totals[row];
  }
}

/** As margins are told everywhere. */
const MARGIN_PLACES = 2;
