/**
 * The routes that were found, as the answer shows them: with names, values and sentences. Nothing
 * is decided here.
 */

import type { State } from '../domain/check/state.js';
import type { Conflict } from '../domain/kit/conflict.js';
import { moneyText } from '../domain/kit/money.js';
import type { KitQuestion } from '../domain/kit/question.js';
import type { Kits, LoadView, Route } from '../domain/kit/route.js';
import { point } from '../domain/quantity/interval.js';
import type { Rational } from '../domain/quantity/rational.js';
import type { CheckView, JudgedView, MeasureView, ShownValue } from './answer.js';
import { measureViews, notCheckedViews, orderViews } from './asides.js';
import type { AskedKit } from './asked-kit.js';
import { cautionViews } from './cautions.js';
import { conflictView } from './conflict-views.js';
import { routeDriveline } from './figure-views.js';
import type {
  BoundView,
  KitAnswer,
  KitMeasureView,
  LoadMarginView,
  RouteView,
  WeakestView,
} from './kit-answer.js';
import { compareView } from './kit-compare.js';
import { lineView, type SkusOf, skusOf, totalsView } from './kit-lines.js';
import { lossViews } from './kit-losses.js';
import { deciding, kitsSummary, routeSummary } from './kit-summary.js';
import type { Digest } from './ports.js';
import { type Origins, routeDigest, routeKey } from './route-key.js';
import type { Speaker } from './speaker.js';
import { judgedView } from './views.js';

export interface Telling {
  readonly question: KitQuestion;
  /** In its one form. */
  readonly asked: AskedKit;
  readonly origins: Origins;
  readonly digest: Digest;
}

export type KitBody = Pick<
  KitAnswer,
  'summary' | 'complete' | 'more' | 'bound' | 'routes' | 'compare' | 'conflict'
>;

export function kitBody(
  kits: Kits,
  conflict: Conflict | null,
  context: Telling,
  speaker: Speaker,
): KitBody {
  const routes = routeViews(kits, context, speaker);
  return {
    summary: kitsSummary(kits, conflict, routes, context.question, speaker),
    complete: kits.isComplete,
    more: kits.hasMore,
    bound: boundView(kits),
    routes,
    compare: compareView(kits.routes, routes, speaker.lang),
    conflict: conflict === null ? null : conflictView(conflict, context, speaker),
  };
}

function boundView({ bound }: Kits): BoundView | null {
  return bound === null ? null : { grade: bound.grade, cost: moneyText(bound.cost) };
}

function routeViews(kits: Kits, telling: Telling, speaker: Speaker): RouteView[] {
  const views = new RouteViews(kits, telling, speaker);
  return kits.routes.map((_, index) => views.at(index));
}

/** One of the routes, as it stands among all of them. */
export function routeView(
  kits: Kits,
  index: number,
  telling: Telling,
  speaker: Speaker,
): RouteView {
  return new RouteViews(kits, telling, speaker).at(index);
}

/** What a fact would settle is told of all routes that are listed. */
class RouteViews {
  readonly #routes: readonly Route[];
  readonly #telling: Telling;
  readonly #speaker: Speaker;
  readonly #skus: SkusOf;
  readonly #measured: readonly (readonly MeasureView[])[];

  constructor({ routes }: Kits, telling: Telling, speaker: Speaker) {
    this.#routes = routes;
    this.#telling = telling;
    this.#speaker = speaker;
    this.#skus = skusOf(telling.question);
    this.#measured = routes.map((route) => measureViews([route.judgement], this.#speakerOf(route)));
  }

  at(index: number): RouteView {
    const route = this.#routes[index];
    if (route === undefined) throw new RangeError(`there is no route ${index}`);
    const measure = ranked(
      (this.#measured[index] ?? []).map((one) => ({
        ...one,
        settlesRoutes: this.#routes.flatMap((other, at) =>
          settles(one, other, this.#measured[at] ?? []) ? [at] : [],
        ),
      })),
    );
    const telling = { ...this.#telling, skus: this.#skus };
    return viewOf(route, measure, telling, this.#speakerOf(route));
  }

  #speakerOf({ judgement }: Route): Speaker {
    return this.#speaker.of(judgement.configuration.catalogue);
  }
}

/**
 * What settles most routes first, then what bears on most of this one, then by the layout; what is
 * only measured to order something comes last. They are numbered as they then stand.
 */
function ranked(measure: readonly KitMeasureView[]): KitMeasureView[] {
  const touches = ({ settles: own, helps }: KitMeasureView): number => own.length + helps.length;
  const isLater = ({ purpose }: KitMeasureView): number => (purpose === 'to-order' ? 1 : 0);
  return measure
    .toSorted(
      (a, b) =>
        isLater(a) - isLater(b) ||
        b.settlesRoutes.length - a.settlesRoutes.length ||
        touches(b) - touches(a),
    )
    .map((one, index) => ({ ...one, id: `m${index + 1}` }));
}

/** Whether a fact is all that a route still lacks, and decides everything that is open in it. */
function settles(fact: MeasureView, { judgement }: Route, all: readonly MeasureView[]): boolean {
  const wanted = all.filter(({ purpose }) => purpose !== 'to-order');
  const [only, ...others] = wanted;
  if (only === undefined || others.length > 0) return false;
  if (JSON.stringify(only.on) !== JSON.stringify(fact.on)) return false;
  const settled = new Set(only.settles);
  const open = judgement.constraints.filter(
    ({ severity, state }) => severity === 'must' && state === 'open',
  );
  return open.length > 0 && open.every(({ id }) => settled.has(id));
}

function viewOf(
  route: Route,
  measure: KitMeasureView[],
  { asked, origins, digest, skus }: Telling & { readonly skus: SkusOf },
  speaker: Speaker,
): RouteView {
  const { judgement, basket } = route;
  const { configuration, constraints } = judgement;
  const touched = constraints.filter(({ state }) => state !== 'given');
  const view = {
    grade: route.grade,
    beatenBy: route.beatenBy,
    summary: routeSummary(route, deciding({ measure }), speaker),
    changes: [...route.changes],
    lines: basket.lines.map((line) => lineView(line, route, skus, speaker)),
    recommended: route.recommended.map((line) => lineView(line, route, skus, speaker)),
    totals: totalsView(basket.totals),
    ...sparing(judgedView(touched, speaker)),
    weakest: weakestView(route, speaker),
    loads: route.loads.map((load) => loadView(load, speaker)),
    driveline: routeDriveline(route, speaker),
    loses: lossViews(configuration, speaker),
    order: orderViews(judgement, speaker),
    measure,
    notChecked: notCheckedViews(judgement, speaker),
    cautions: cautionViews([judgement], speaker),
  };
  return {
    key: routeKey(configuration, asked, origins),
    digest: routeDigest(view, configuration.vehicle.id, origins, digest),
    ...view,
  };
}

/**
 * Of what holds, that it does: its single checks only where they warn of something. A route has
 * hundreds of them; whoever wants to see them all asks about the vehicle with the route on it.
 */
function sparing(judged: JudgedView): JudgedView {
  const brief = <Judged extends { state: State; checks: CheckView[] }>(one: Judged): Judged => {
    if (one.state !== 'holds') return one;
    const checks = one.checks.filter(({ state, caution }) => state !== 'holds' || caution !== null);
    return { ...one, checks };
  };
  return { ...judged, matings: judged.matings.map(brief) };
}

function weakestView({ weakest }: Route, speaker: Speaker): WeakestView | null {
  if (weakest === null) return null;
  const { position, margin } = weakest;
  const positionName = speaker.positionName(position);
  return { position, positionName, margin: speaker.values.share(point(margin), 'ratio') };
}

function loadView({ check, position, before, after }: LoadView, speaker: Speaker): LoadMarginView {
  const share = (margin: Rational | null): ShownValue | null =>
    margin === null ? null : speaker.values.share(point(margin), 'ratio');
  const positionName = speaker.positionName(position);
  return { check, position, positionName, before: share(before), after: share(after) };
}
