/**
 * A conflict in words: each demand as the question made it, each step with what would stand where,
 * and each way out with what it comes to. Nothing is decided here.
 */

import type { Conflict } from '../domain/kit/conflict.js';
import type { Changed, Step } from '../domain/kit/conflict-path.js';
import { STATE } from '../domain/kit/core/problem.js';
import type { Want } from '../domain/kit/question.js';
import type { Relaxation } from '../domain/kit/relaxations.js';
import type { SaidReason } from './answer.js';
import { measureViews } from './asides.js';
import type {
  ConflictView,
  PathPartView,
  PathStepView,
  RelaxationView,
} from './conflict-answer.js';
import { type DemandTelling, demandView, droppedView } from './demand-views.js';
import { totalsView } from './kit-lines.js';
import { comesTo } from './kit-summary.js';
import type { Speaker } from './speaker.js';
import { reasonOf } from './views.js';

export function conflictView(
  conflict: Conflict,
  telling: DemandTelling,
  speaker: Speaker,
): ConflictView {
  const { demands, isSmallest, path, relaxations, hasMore } = conflict;
  const own = speaker.of(conflict.catalogue);
  const wanted = new Set(telling.question.wants.flatMap(articlesOf));
  return {
    demands: demands.map((demand) => demandView(demand, telling, speaker)),
    smallest: isSmallest,
    path: path === null ? null : path.map((step) => stepView(step, wanted, own)),
    relaxations: relaxations.map((one) => relaxationView(one, telling, speaker)),
    more: hasMore,
  };
}

function articlesOf(want: Want): readonly string[] {
  return want.is === 'part' ? want.parts : [];
}

/** What would stand where is told but for what is wanted anyway. */
function stepView(
  { relation, judged, changed }: Step,
  wanted: ReadonlySet<string>,
  speaker: Speaker,
): PathStepView {
  const parts = changed.flatMap((one) => partsOf(one, speaker));
  const others = parts.filter(({ part }) => !wanted.has(part));
  const [constraint] = judged.constraints;
  const because = constraint === undefined ? null : brokenBy(reasonOf(constraint, speaker));
  const data = {
    ...(because === null ? {} : { because }),
    ...(others.length === 0 ? {} : { names: [...new Set(others.map(({ name }) => name))] }),
  };
  const state = judged.state === STATE.open ? 'open' : 'fails';
  return {
    constraint: constraint?.id ?? relation.id,
    state,
    changed: parts,
    ...speaker.said(state === 'open' ? 'in-the-way-open' : 'in-the-way-fails', data),
  };
}

/** A rule in its own words: that it is broken is said by where it stands. */
function brokenBy({ code, data, text }: SaidReason): string {
  const isBroken = code === 'rule-needs' || code === 'rule-excludes';
  return isBroken ? (data.because ?? text) : text;
}

function partsOf({ position, mating, articles }: Changed, speaker: Speaker): PathPartView[] {
  return articles.map((part) => ({
    position,
    mating,
    part,
    name: speaker.partName(part) ?? part,
  }));
}

function relaxationView(
  { dropped, route }: Relaxation,
  telling: DemandTelling,
  speaker: Speaker,
): RelaxationView {
  const drop = dropped.map((demand) => droppedView(demand, route, telling, speaker));
  const names = drop.map(({ text }) => text);
  if (route === null) {
    const said = speaker.said('way-out-so-far', { names });
    return { drop, grade: null, changes: [], totals: null, ...said };
  }
  const { grade, changes, basket, judgement } = route;
  const { configuration } = judgement;
  const facts = measureViews([judgement], speaker.of(configuration.catalogue)).filter(
    ({ purpose }) => purpose !== 'to-order',
  );
  const data = { names, ...comesTo(route, facts.length, speaker) };
  return {
    drop,
    grade,
    changes: [...changes],
    totals: totalsView(basket.totals),
    ...speaker.said(grade === 'proven' ? 'way-out-proven' : 'way-out-open', data),
  };
}
