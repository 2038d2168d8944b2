/**
 * A naive second judge: one configuration in, the state of every constraint out, found by trying
 * values. It shares no code with the judge of the program, only the form of documents.
 *
 * Left out: parts that fill several positions, the reasons and what to measure.
 */

import type { CatalogueDocument } from '../../src/domain/catalogue/document.js';
import { builtPairs, type Pairs, pairName } from './built-pair.js';
import { about, type Finding, type Verdict } from './finding.js';
import { findCheck, planLayoutChecks } from './layout-check.js';
import { endsOf, type MatingPlan, planMating, planMatings } from './mating.js';
import { numberOf } from './memory.js';
import {
  type Basis,
  canDecide,
  isFirstHand,
  OUTCOMES,
  type Outcome,
  weakest,
  worst,
} from './outcome.js';
import { findPlaces } from './place.js';
import { basisOfCheck, type Group, groupsOf, judgeAlone, type PlannedCheck } from './planned.js';
import { findRules } from './rule.js';
import { isDonorName, type Question, Scene } from './scene.js';
import { standingOf, stateOf } from './standing.js';
import { applyStatements } from './statement.js';
import { findingsOver, isToldAt, scenesOf } from './supposed.js';

export interface OracleAnswer {
  readonly findings: readonly Finding[];
  readonly outcome: Outcome;
}

export function askOracle(document: CatalogueDocument, question: Question): OracleAnswer {
  return judgeScene(new Scene(document, question));
}

/** As one of all that the vehicle may be, one after the other, and what they come to together. */
export function judgeScene(scene: Scene): OracleAnswer {
  const scenes = scenesOf(scene);
  if (scenes.length === 0) return judgeAsTold(scene);
  const findings = findingsOver(scenes.map((one) => judgeAsTold(one).findings));
  return { findings, outcome: outcomeOf(findings) };
}

function judgeAsTold(scene: Scene): OracleAnswer {
  const pairs = builtPairs(scene.document);
  const matings = planMatings(scene);
  const layoutChecks = planLayoutChecks(scene);
  const planned = layoutChecks.flatMap((check) => check.planned ?? []);
  const groups = groupsOf([...matings.flatMap(({ checks }) => checks), ...planned], scene);
  const found = [
    ...findPlaces(scene),
    ...matings.map((plan) => findMating(plan, groups, pairs, scene)),
    ...layoutChecks.map((check) => {
      const outcomes = check.planned === null ? [] : outcomesOf(check.planned, groups);
      const name = `found ${numberOf(check)} ${outcomes.join()}`;
      return scene.memory.once(name, () => findCheck(check, outcomes));
    }),
    ...groups.map((group) => findChoice(group, matings, pairs, scene)),
    ...findRules(scene),
  ];
  const findings = applyStatements(scene, found);
  return { findings, outcome: outcomeOf(findings) };
}

function outcomeOf(findings: readonly Finding[]): Outcome {
  const states = findings
    .filter(({ severity }) => severity === 'must')
    .map(({ verdicts: [first] }) => first?.state ?? 'holds');
  return worst(states.map((state) => (state === 'given' ? 'holds' : state)));
}

/** What one check may be shown to come to: as it does alone, or worse beside others. */
function outcomesOf(check: PlannedCheck, groups: readonly Group[]): Outcome[] {
  const alone = judgeAlone(check).outcome;
  const group = groups.find(({ checks }) => checks.includes(check));
  return between(group?.hasOptions === true ? group.outcome : alone, alone);
}

/** All outcomes from a worse to a better one, the best first. */
function between(worse: Outcome, better: Outcome): Outcome[] {
  const from = OUTCOMES.indexOf(worse);
  return OUTCOMES.slice(from, OUTCOMES.indexOf(better) + 1).reverse();
}

function findMating(
  plan: MatingPlan,
  groups: readonly Group[],
  pairs: Pairs,
  scene: Scene,
): Finding {
  const checks = plan.checks.filter(({ severity }) => severity === 'must');
  const range = checks.map((check) => outcomesOf(check, groups));
  const name = `found ${numberOf(plan)} ${range.map((outcomes) => outcomes.join()).join(' ')}`;
  return scene.memory.once(name, () => findMatingIn(plan, checks, range, pairs, scene));
}

/** @param range what each of its checks may be shown to come to, best first. */
function findMatingIn(
  { mating, hand, positions, settled, ...plan }: MatingPlan,
  checks: readonly PlannedCheck[],
  range: readonly (readonly Outcome[])[],
  pairs: Pairs,
  scene: Scene,
): Finding {
  const best = worst([...settled, ...range.flatMap(([first]) => first ?? [])]);
  const least = worst([...settled, ...range.flatMap((outcomes) => outcomes.at(-1) ?? [])]);
  const judged = checks.map((check) => ({ check, weighed: judgeAlone(check) }));
  const bases = judged.map(({ check, weighed }) => basisOfCheck(check, weighed));
  const failsFirstHand = judged.some(
    ({ weighed }, index) => weighed.outcome === 'fails' && isFirstHand(bases[index] ?? null),
  );
  const basis = weakest(bases.filter((one) => one !== null));
  const built = builtBasis({ mating, hand, ...plan }, pairs, scene);
  const names = about(positions, [mating.id]);
  const verdicts = between(least, best).map((computed) =>
    stand(weighBuilt({ computed, basis, failsFirstHand }, built), scene, names, hand),
  );
  return { form: 'mating', id: mating.id, hand, severity: 'must', names, verdicts };
}

/** Whether a mating fails as it is, whatever else there is on the vehicle. */
export function failsAlone(scene: Scene, id: string): boolean {
  const [mating] = (scene.layout.matings ?? []).filter((one) => one.id === id);
  if (mating === undefined) throw new Error(`there is no ${id}`);
  const pairs = builtPairs(scene.document);
  // What may be one of several is for the whole to say.
  const isTold = mating.between.every((end) => isToldAt(end.split('.')[0] ?? '', scene));
  if (!isTold) return false;
  const findings = planMating(mating, scene).map((plan) => findMating(plan, [], pairs, scene));
  // A statement may stand against the records.
  const stated = (scene.document.statements ?? []).map(({ position }) => position);
  return findings.some(({ names, verdicts: [first] }) => {
    const isStated = names.positions.some((position) => stated.includes(position));
    return first?.state === 'fails' && !isStated;
  });
}

type Computed = Omit<Verdict, 'state'>;

/** With what as-built evidence makes of it; `computed` stays what the records alone say. */
type Settled = Computed & { readonly outcome: Outcome };

function stand(
  { outcome, ...computed }: Settled,
  scene: Scene,
  names: Finding['names'],
  hand: Finding['hand'],
): Verdict {
  const { ignorePresent } = scene.question;
  return {
    ...computed,
    state: stateOf(outcome, standingOf(scene, names, hand), { ignorePresent }),
  };
}

/** The strongest record of a vehicle on which the same two articles meet there, or null. */
function builtBasis(
  { mating, hand, adapters }: Pick<MatingPlan, 'mating' | 'hand' | 'adapters'>,
  pairs: Pairs,
  scene: Scene,
): Basis | null {
  const [a, b] = endsOf(mating).map(([id, face]) => {
    const { holds } = scene.seat('judged', id, hand);
    if (typeof holds === 'object') return `${holds.id}.${face}`;
    return isDonorName(holds) ? `${holds}.${face}` : null;
  });
  if (a === undefined || a === null || b === undefined || b === null) return null;
  return pairs.get(pairName(a, b, adapters)) ?? null;
}

/** What the works built settles what is open, contradicts what fails, and overrules nothing. */
function weighBuilt(computed: Computed, built: Basis | null): Settled {
  const { computed: outcome } = computed;
  if (built === null || outcome === 'holds') return { ...computed, outcome };
  if (outcome === 'open' && canDecide(built))
    return { ...computed, outcome: 'holds', basis: built };
  return { ...computed, outcome: 'open' };
}

/** Checks that share a choice; where all stand in one mating, what was built is evidence too. */
function findChoice(
  { checks, outcome, weighed }: Group,
  matings: readonly MatingPlan[],
  pairs: Pairs,
  scene: Scene,
): Finding {
  const hands = [...new Set(checks.map(({ hand }) => hand))];
  const hand = hands.length === 1 ? (hands[0] ?? null) : null;
  const names = {
    positions: [...new Set(checks.flatMap(({ positions }) => positions))],
    matings: [...new Set(checks.flatMap((check) => check.matings))],
    opened: [...new Set(checks.flatMap(({ opened }) => opened))],
  };
  const plan = matings.find((one) => checks.every((check) => one.checks.includes(check)));
  const built = plan === undefined ? null : builtBasis(plan, pairs, scene);
  const basis = weakest(checks.flatMap((check) => basisOfCheck(check, weighed) ?? []));
  const computed = { computed: outcome, basis, failsFirstHand: isFirstHand(basis) };
  const verdicts = [stand(weighBuilt(computed, built), scene, names, hand)];
  const id = checks.map(({ name }) => name).join('+');
  return { form: 'choice', id, hand, severity: 'must', names, verdicts };
}
