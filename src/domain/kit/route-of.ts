/**
 * Makes a route of what was found: its configuration judged as a whole, its lines, and why each
 * of them is there.
 */

import { type SimpleCondition, testsIn } from '../check/check.js';
import type { Load } from '../driveline/loads.js';
import { isChanged } from '../judge/configuration.js';
import type { Judgement } from '../judge/judge.js';
import type { Line } from './basket.js';
import { type Cause, cascade, causeOf, causesWithout } from './cascade.js';
import type { Candidate } from './finder.js';
import { insteadOf } from './instead.js';
import type { KitProblem, Solved } from './kit-problem.js';
import { type Recommended, recommendedLines } from './recommended.js';
import type { LoadView, Route, Why } from './route.js';
import { sparesAdapter } from './spared-adapter.js';

export function routeOf(candidate: Candidate): Omit<Route, 'beatenBy'> {
  const { solved } = candidate;
  const { problem } = solved;
  const { grade, basket, weakest } = candidate;
  const recommended = recommendedLines(solved, candidate);
  return {
    grade,
    judgement: judgedAs(solved, candidate),
    changes: changesOf(solved, candidate),
    basket,
    why: new Map([...whyOf(solved, candidate), ...whyRecommended(solved, candidate, recommended)]),
    ...insteadOf(solved, candidate),
    recommended: recommended.map(({ line }) => line),
    loads: loadViews(problem, candidate.loads),
    weakest,
  };
}

/** A new piece of the article that is there already is bought, but changes nothing. */
function changesOf({ problem }: Solved, { values, places }: Candidate): string[] {
  const { configuration } = problem.wholeAt(values);
  const names = places.map((variable) => problem.scene.nameOf(variable));
  return names.filter((id) => isChanged(configuration, id));
}

/** The judge has the last word: of the whole it must say what its parts were found to be. */
function judgedAs({ problem }: Solved, { values, grade }: Candidate): Judgement {
  const { judgement } = problem.wholeAt(values);
  const isBorneOut =
    judgement.outcome === 'holds' || (judgement.outcome === 'open' && grade === 'open');
  if (!isBorneOut) {
    const at = judgement.constraints
      .filter(
        ({ state, severity }) => severity === 'must' && state !== 'given' && state !== 'holds',
      )
      .map(({ id, state }) => `${id} ${state}`);
    throw new Error(`a route found to be ${grade} is not: ${at.join(', ')}`);
  }
  return judgement;
}

/** Why each line is there: the change that it belongs to, and what each of these mends. */
function whyOf(solved: Solved, candidate: Candidate): Map<string, Why[]> {
  const { problem, tables } = solved;
  const { lines } = candidate.basket;
  const causes = cascade(problem, tables, candidate.values);
  const order = causes.map(({ variable }) => variable);
  const keyOf = (variable: number): string | null =>
    mainLine(problem, lines, variable)?.key ?? null;
  const why = new Map<string, Why[]>();
  for (const cause of causes) {
    const before = order.slice(0, order.indexOf(cause.variable));
    const reasons = reasonsFor(solved, candidate, cause, before, keyOf);
    const main = mainLine(problem, lines, cause.variable);
    for (const line of linesOf(problem, lines, cause.variable)) {
      // What makes room has no reason of its own.
      const isRoom = line.action === 'remove' && line !== main && main !== null;
      const ofWork = line.work === null ? [] : workReasons(solved, candidate, cause, before, keyOf);
      const own = ofWork.length > 0 ? ofWork : reasons;
      const told: readonly Why[] = isRoom
        ? [{ ...NO_REASON, code: 'taken-out', after: main.key }]
        : own;
      why.set(line.key, [...(why.get(line.key) ?? []), ...told]);
    }
  }
  for (const line of lines) {
    if (!why.has(line.key)) why.set(line.key, sideReasons(problem, candidate, line, lines));
  }
  return why;
}

function reasonsFor(
  solved: Solved,
  { values }: Candidate,
  { variable, code, after, constraint }: Cause,
  before: readonly number[],
  keyOf: (variable: number) => string | null,
): Why[] {
  const isSpared = code === 'mating-fails' && sparesAdapter(solved, values, variable);
  const first = whyOfCause({ code: isSpared ? 'adapter-avoided' : code, after, constraint }, keyOf);
  const others = causesWithout(solved, values, variable, before)
    .filter((one) => !(one.code === code && one.constraint?.id === constraint?.id))
    .map((one) => whyOfCause(one, keyOf));
  return [first, ...others];
}

function whyOfCause(
  { code, after, constraint }: Omit<Cause, 'variable'>,
  keyOf: (variable: number) => string | null,
): Why {
  return { code, after: after === null ? null : keyOf(after), constraint, name: null };
}

/** Why the part is worked: what does not hold of it without its last work. */
function workReasons(
  { problem, tables }: Solved,
  { values }: Candidate,
  { variable }: Cause,
  before: readonly number[],
  keyOf: (variable: number) => string | null,
): Why[] {
  const plain = problem.withoutWork(variable, values[variable] ?? 0);
  if (plain === null) return [];
  const unworked = values.with(variable, plain);
  return problem.relations.flatMap((relation, index): Why[] => {
    if (!relation.scope.includes(variable)) return [];
    if (tables.stateAt(index, unworked) >= tables.stateAt(index, values)) return [];
    const after = before.findLast((one) => relation.scope.includes(one)) ?? null;
    return [whyOfCause(causeOf(problem, relation, unworked, after), keyOf)];
  });
}

/** The lines of a change: what is added and taken out at its place, and what is worked there. */
function linesOf(problem: KitProblem, lines: readonly Line[], variable: number): Line[] {
  const name = problem.scene.nameOf(variable);
  const isPlace = variable < problem.scene.places.length;
  return lines.filter(({ position, mating, action }) => {
    if (action === 'open' || action === 'extra') return false;
    return isPlace ? position === name : mating === name;
  });
}

/** The line that stands for a change: what is put in, or else what is taken out. */
function mainLine(problem: KitProblem, lines: readonly Line[], variable: number): Line | null {
  const own = linesOf(problem, lines, variable);
  return own.find(({ action }) => action === 'add' || action === 'adapter') ?? own[0] ?? null;
}

const NO_REASON = { constraint: null, name: null } as const;

/** Why a line is there that is no change of its own. */
function sideReasons(
  problem: KitProblem,
  candidate: Candidate,
  line: Line,
  lines: readonly Line[],
): Why[] {
  if (line.action !== 'extra') return [sideReason(problem, candidate, line, lines)];
  const { consumed } = problem.billing.bill(problem.sceneValues(candidate.values));
  const rules = consumed.flatMap(({ part, rule }) => (part === line.part ? rule : []));
  return rules.map((name) => {
    const after = setOffBy(problem, name, lines)?.key ?? null;
    return { ...NO_REASON, code: 'consumed', after, name };
  });
}

/** By key of a recommended line: the rule, and the line that sets it off. */
function whyRecommended(
  { problem }: Solved,
  { basket }: Candidate,
  recommended: readonly Recommended[],
): [string, Why[]][] {
  return recommended.map(({ line, rule }) => {
    const after = setOffBy(problem, rule, basket.lines)?.key ?? null;
    return [line.key, [{ ...NO_REASON, code: 'recommended', after, name: rule }]];
  });
}

/** The first line by which a place is changed or opened that the rule speaks of. */
function setOffBy({ scene }: KitProblem, name: string, lines: readonly Line[]): Line | undefined {
  const { catalogue, question } = scene;
  const rules = catalogue.rules.get(question.vehicle.layout.id) ?? [];
  const rule = rules.find(({ id }) => id === name);
  const touched = new Set(rule === undefined ? [] : testsIn(rule.when).flatMap(touchedBy));
  return lines.find(
    ({ action, position }) => action !== 'extra' && position !== null && touched.has(position),
  );
}

function touchedBy(one: SimpleCondition): string[] {
  return one.test === 'changed' || one.test === 'opened' ? [one.position] : [];
}

function sideReason(
  problem: KitProblem,
  { places }: Candidate,
  line: Line,
  lines: readonly Line[],
): Why {
  if (line.action === 'lot') {
    const wanted = problem.scene.question.wants.some(
      (want) => want.is === 'lot' && want.lot === line.lot,
    );
    if (wanted) return { ...NO_REASON, code: 'wanted', after: null };
    const used = lines.find(({ fromLot }) => fromLot === line.lot);
    return { ...NO_REASON, code: 'donor-content', after: used?.key ?? null, name: line.lot };
  }
  if (line.action === 'open') {
    const { scene } = problem;
    const before = places.find((variable) =>
      scene.openedBy(new Set([scene.nameOf(variable)])).some(({ id }) => id === line.position),
    );
    const after = before === undefined ? null : mainLine(problem, lines, before);
    return { ...NO_REASON, code: 'in-the-way', after: after?.key ?? null };
  }
  return { ...NO_REASON, code: 'consumed', after: null };
}

/** The loads that a route leaves, beside those of the vehicle as it is. */
function loadViews(problem: KitProblem, loads: readonly Load[]): LoadView[] {
  const now = problem.wholeAt(problem.variables.map(() => 0)).loads;
  const before = new Map(now.map((load) => [load.check, load.margin] as const));
  return loads.map(({ check, position, margin, dimension }) => {
    return { check, position, dimension, before: before.get(check) ?? null, after: margin };
  });
}
