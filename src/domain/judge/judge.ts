/**
 * The heart: one configuration in, every constraint with its state out.
 *
 * Fit, inspect and mate are readings of what comes out here. Nothing is decided elsewhere.
 */

import type { Check } from '../check/check.js';
import { type NotApplying, prepare } from '../check/evaluate.js';
import type { Setting } from '../check/evaluator.js';
import { type CheckResult, type GroupResult, judgeCheck, judgeGroup } from '../check/result.js';
import { allOf, type Outcome } from '../check/state.js';
import { choiceConstraint } from './choice.js';
import { judgeCondition, positionsOf } from './condition.js';
import type { Configuration } from './configuration.js';
import { adaptersIn, seatAt } from './configuration.js';
import type { CheckConstraint, ChoiceConstraint, Constraint } from './constraint.js';
import { LayoutEnvironment } from './environment.js';
import { type BuiltPairs, builtPairs } from './evidence.js';
import { judgeMating } from './judge-mating.js';
import { isAsWide, sameChain } from './like-for-like.js';
import { judgePlaces } from './place.js';
import { type Plan, type PlannedCheck, planConfiguration } from './plan.js';
import { judgeRules } from './rule.js';
import { type Standing, standingOf, stateOf } from './standing.js';
import { applyStatements } from './statement.js';
import { supposalsOf } from './supposed.js';
import { constraintsOver, judgedForEach, type Supposition } from './supposed-constraints.js';

/** A configuration as judged. */
export interface Judgement {
  readonly configuration: Configuration;
  readonly constraints: readonly Constraint[];
  /** AND of all constraints of severity `must`; `given` counts as `holds`. */
  readonly outcome: Outcome;
  /** What it was judged with, for those who ask what would decide an open point. */
  readonly bench: Bench;
  /** As each value of the facts that nobody told has it; none where all is told. */
  readonly suppositions: readonly (Supposition & Pick<Judgement, 'bench' | 'configuration'>)[];
}

export type Judged = CheckResult | NotApplying;

/** What judging one configuration needs at hand. */
export interface Bench {
  readonly configuration: Configuration;
  readonly setting: Setting;
  readonly plan: Plan;
  /** The result of each planned check, in the order of the plan. */
  readonly results: readonly Judged[];
  readonly pairs: BuiltPairs;
}

export function judge(configuration: Configuration): Judgement {
  const { constraints: plain, bench } = judgeAsTold(configuration);
  const suppositions = supposalsOf(configuration).map(({ facts, configuration: one }) => {
    return { facts, configuration: one, ...judgeAsTold(one) };
  });
  const constraints = suppositions.length === 0 ? plain : constraintsOver(plain, suppositions);
  return { configuration, constraints, outcome: outcomeOfAll(constraints), bench, suppositions };
}

/** With nothing supposed. */
function judgeAsTold(configuration: Configuration) {
  const { bench, met } = meetingsOf(configuration);
  const found: Constraint[] = [
    ...judgePlaces(configuration, [...configuration.layout.positions.values()]),
    ...met,
    ...judgeRules(configuration, bench.setting),
  ];
  return { constraints: applyStatements(configuration, found), bench };
}

/**
 * The matings and checks of the layout alone, with what is stated of them. A layout of few of them
 * asks for these alone: none of them hangs on another but through a choice that they share.
 */
export function judgeMeetings(configuration: Configuration): readonly Constraint[] {
  return judgedForEach(configuration, (one) => applyStatements(one, meetingsOf(one).met));
}

function meetingsOf(configuration: Configuration): { bench: Bench; met: Constraint[] } {
  const setting = settingOf(configuration);
  const plan = planConfiguration(configuration, configuration.judged, setting);
  const { results, groups } = judgePlanned(plan, setting);
  const pairs = builtPairs(configuration.pairsOf);
  const bench: Bench = { configuration, setting, plan, results, pairs };
  const met = [
    ...plan.matings.map((mating) => judgeMating(mating, bench)),
    ...judgeLayoutChecks(bench),
    ...groups.flatMap((group, index) => choiceOf(index, group, bench)),
  ];
  return { bench, met };
}

/** How questions look at the records when nothing is tried out. */
export function settingOf(configuration: Configuration): Setting {
  const { catalogue, use } = configuration;
  const { couplings } = catalogue;
  return { couplings, use, trusts: () => true, picks: new Map(), narrowed: new Map() };
}

export function outcomeOfAll(constraints: readonly Constraint[]): Outcome {
  return allOf(
    constraints
      .filter(({ severity }) => severity === 'must')
      .map(({ state }) => (state === 'given' ? 'holds' : state)),
  );
}

function judgePlanned(plan: Plan, setting: Setting): { results: Judged[]; groups: GroupResult[] } {
  const results: Judged[] = [];
  const groups = plan.groups.map((members) => {
    const planned = members.flatMap((index) => plan.checks[index] ?? []);
    const group = judgeGroup(planned, setting);
    for (const [at, index] of members.entries()) {
      const result = group.results[at];
      if (result !== undefined) results[index] = result;
    }
    return group;
  });
  // What a shared choice has settled on holds for cautions too, which are no part of it.
  const picks = new Map([...setting.picks, ...groups.flatMap((group) => [...group.picks])]);
  for (const [index, planned] of plan.checks.entries()) {
    results[index] ??= judgeCheck(planned, { ...setting, picks });
  }
  return { results, groups };
}

/** Of one check alone the choice is told where it suits: else the check says it all itself. */
function choiceOf(index: number, group: GroupResult, bench: Bench): ChoiceConstraint[] {
  const applying = group.results.filter((result) => !('empty' in result));
  if (applying.length === 0 || (applying.length === 1 && group.outcome !== 'holds')) return [];
  return [choiceConstraint(index, group, bench)];
}

function judgeLayoutChecks(bench: Bench): CheckConstraint[] {
  return bench.plan.checks.flatMap((planned, index) => {
    const result = bench.results[index];
    if (planned.joint !== null || result === undefined) return [];
    return layoutConstraint(planned, result, bench) ?? [];
  });
}

function layoutConstraint(
  planned: PlannedCheck,
  result: Judged,
  bench: Bench,
): CheckConstraint | null {
  const { configuration } = bench;
  const { check, hand, scope } = planned;
  const { severity } = check;
  const standing = standingOf(configuration, scope, hand);
  const positions = positionsOf(scope, configuration);
  const { matings } = scope;
  const base = { form: 'check', id: check.id, hand, positions, matings, severity } as const;
  if ('empty' in result) {
    const emptied = emptiedBy(check, result, bench, planned);
    if (emptied === null) return null;
    const broken = { state: 'fails', computed: 'fails', code: 'chain-broken' } as const;
    return { ...base, ...broken, basis: null, checks: [], missing: [], emptied, statement: null };
  }
  const { outcome: computed, code, basis } = result;
  const common = { ...base, computed, checks: [result], missing: [], emptied: null };
  const settled = settleChain(planned, result, standing, bench);
  return { ...common, code, basis, ...settled, statement: null };
}

/** A loop that applied and that a change has broken by emptying a position; that, or null. */
function emptiedBy(
  check: Check,
  { empty }: NotApplying,
  { configuration, setting }: Bench,
  { hand }: PlannedCheck,
): string | null {
  if (check.primitive !== 'agree') return null;
  const before = new LayoutEnvironment(configuration, configuration.present, hand, setting);
  return 'empty' in prepare(check, before, setting) ? null : (empty[0] ?? null);
}

/**
 * The state of a check of the layout. Where the change leaves the same values of the same
 * articles in it, or values recorded as exactly equal, nothing in it is new and it is given. A
 * check that fails with values as wide as those the works fitted, and fails with those too,
 * tells of bad records: it is open.
 */
function settleChain(
  planned: PlannedCheck,
  result: CheckResult,
  standing: Standing,
  bench: Bench,
): Pick<CheckConstraint, 'state'> & { readonly code?: string } {
  const { configuration, setting } = bench;
  const { ignorePresent } = configuration;
  const isAsked = readsAsked(result);
  const { outcome } = result;
  if (standing !== 'changed')
    return { state: stateOf(outcome, standing, { ignorePresent, isAsked }) };
  if (outcome === 'holds' || isAsked) return { state: outcome };
  if (!appliedBefore(planned, bench)) return { state: outcome };
  const { check, hand } = planned;
  const before = new LayoutEnvironment(configuration, configuration.present, hand, setting);
  if (sameChain(check, before, planned, setting)) return { state: 'given' };
  if (outcome !== 'fails') return { state: outcome };
  const present = judgeCheck({ check, environment: before }, setting);
  if ('empty' in present || present.outcome !== 'fails') return { state: 'fails' };
  const isAsBuilt = isWorks(planned, configuration);
  if (!isAsBuilt || !isAsWide(check, before, planned, setting)) return { state: 'fails' };
  return { state: 'open', code: 'fails-as-built-too' };
}

/** Whether its condition, if it has one, came to the same before the change. */
function appliedBefore({ check, applies, hand }: PlannedCheck, bench: Bench): boolean {
  if (check.when === null) return true;
  const { configuration, setting } = bench;
  const unchanged = { ...configuration, judged: configuration.present };
  return judgeCondition(check.when, unchanged, setting, hand) === applies(setting);
}

function readsAsked({ readings }: CheckResult): boolean {
  return readings.some((reading) => reading.form === 'number' && reading.isAsked === true);
}

function isWorks({ scope, hand }: PlannedCheck, configuration: Configuration) {
  const { positions, matings } = scope;
  const { present, layout } = configuration;
  const seats = positions.map((id) =>
    seatAt(present, id, layout.positions.get(id)?.isHanded ? hand : null),
  );
  const adapters = matings.map((mating) => adaptersIn(present, mating));
  return [...seats, ...adapters].every((one) => one === null || one?.origin !== 'said');
}
