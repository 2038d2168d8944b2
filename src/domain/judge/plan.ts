/**
 * Lays out everything that has to be judged in a configuration: the joints of all matings, the
 * checks of the layout, hand by hand, and which of them share a choice.
 */

import type { Part } from '../catalogue/catalogue.js';
import type { Check } from '../check/check.js';
import { termsOf } from '../check/check.js';
import { type Environment, leavesOf, type Setting } from '../check/evaluator.js';
import type { Hand } from '../check/reading.js';
import type { Outcome } from '../check/state.js';
import { handsRead, judgeCondition, positionsRead } from './condition.js';
import {
  type Arrangement,
  adaptersIn,
  type Configuration,
  handsOf,
  partAt,
  seatAt,
} from './configuration.js';
import { LayoutEnvironment } from './environment.js';
import { type MatingPlan, planMating } from './mating.js';
import { standingOf } from './standing.js';

/** One check to judge, with whether it applies. */
export interface PlannedCheck {
  readonly check: Check;
  readonly environment: Environment;
  readonly applies: (setting: Setting) => Outcome;
  /** The mating and joint it belongs to, or null for a check of the layout. */
  readonly joint: { readonly plan: MatingPlan; readonly index: number } | null;
  readonly hand: Hand | null;
  /** The positions it reads, for checks of the layout. */
  readonly positions: readonly string[];
  readonly matings: readonly string[];
}

export interface Plan {
  readonly matings: readonly MatingPlan[];
  readonly checks: readonly PlannedCheck[];
  /** Indices of checks that share a choice, in groups of two or more. */
  readonly groups: readonly (readonly number[])[];
}

export function planConfiguration(
  configuration: Configuration,
  arrangement: Arrangement,
  setting: Setting,
): Plan {
  const matings = planMatings(configuration, arrangement, setting);
  const checks = [
    ...matings.flatMap(jointChecks),
    ...layoutChecks(configuration, arrangement, setting),
  ];
  return { matings, checks, groups: offersChoice(configuration) ? sharedGroups(checks) : [] };
}

/** Whether any part of the configuration leaves something to choose; most do not. */
function offersChoice(configuration: Configuration): boolean {
  const { catalogue, judged, layout } = configuration;
  const seated = [...layout.positions.values()].flatMap((position) =>
    handsOf(position).map((hand) => partAt(configuration, seatAt(judged, position.id, hand))),
  );
  const between = [...judged.adapters.values()].flatMap(({ parts }) =>
    parts.map((id) => catalogue.parts.get(id) ?? null),
  );
  return [...seated, ...between].some((part) => part !== null && hasChoice(part));
}

function planMatings(
  configuration: Configuration,
  arrangement: Arrangement,
  setting: Setting,
): MatingPlan[] {
  const plans: MatingPlan[] = [];
  for (const mating of configuration.layout.matings.values()) {
    const hands: readonly (Hand | null)[] = mating.isHanded ? ['left', 'right'] : [null];
    const positions = mating.ends.map(({ position }) => position);
    for (const hand of hands) {
      if (isSkipped(configuration, positions, hand, [mating.id])) continue;
      const plan = planMating(configuration, arrangement, mating, hand, setting);
      if (plan !== null) plans.push(plan);
    }
  }
  return plans;
}

function jointChecks(plan: MatingPlan): PlannedCheck[] {
  return plan.joints.flatMap((joint, index) => {
    if (joint.is === 'settled') return [];
    const { environment, checks, applies: appliesIn } = joint.joint;
    const { hand } = plan;
    return checks.map((check) => {
      const applies = (setting: Setting): Outcome => appliesIn(check.when, setting);
      const own = { check, environment, applies, hand, positions: [], matings: [] };
      return { ...own, joint: { plan, index } };
    });
  });
}

/** The checks of the layout that apply, hand by hand where they name something handed. */
export function layoutChecks(
  configuration: Configuration,
  arrangement: Arrangement,
  setting: Setting,
): PlannedCheck[] {
  return configuration.layout.checks.flatMap((check) => {
    const outcome =
      check.when === null ? 'holds' : judgeCondition(check.when, configuration, setting);
    if (outcome === 'fails') return [];
    const applies = () => outcome;
    const references = termsOf(check)
      .flatMap(leavesOf)
      .map(({ reference }) => reference);
    const positions = positionsRead([], references, configuration);
    const matings = references.flatMap((reference) =>
      reference.of === 'adapter' ? [reference.mating] : [],
    );
    const hands = handsRead(references, configuration).filter(
      (hand) => !isSkipped(configuration, positions, hand, matings),
    );
    return hands.map((hand) => {
      const environment = new LayoutEnvironment(configuration, arrangement, hand, setting);
      return { check, environment, applies, joint: null, hand, positions, matings };
    });
  });
}

/**
 * Whether something need not be judged: all of it is as the works built it, so it is given. A
 * part with a choice is looked at all the same, since its choice must serve every place.
 */
function isSkipped(
  configuration: Configuration,
  positions: readonly string[],
  hand: Hand | null,
  matings: readonly string[],
): boolean {
  const { skipsGiven, torque, judged, layout } = configuration;
  if (skipsGiven !== true || torque !== null) return false;
  if (standingOf(configuration, positions, hand, matings) !== 'works') return false;
  if (matings.some((mating) => adaptersIn(judged, mating) !== null)) return false;
  return positions.every((id) => {
    const position = layout.positions.get(id);
    const own = position === undefined ? [null] : handsOf(position);
    return own.every((one) => {
      const part = partAt(configuration, seatAt(judged, id, one));
      return part === null || !hasChoice(part);
    });
  });
}

const choosable = new WeakMap<Part, boolean>();

/** Whether something of a part may be set, ordered or picked. */
function hasChoice(part: Part): boolean {
  let known = choosable.get(part);
  if (known === undefined) {
    const values = [part.values, ...[...part.faces.values()].flatMap((face) => face.alternatives)];
    known =
      [...part.faces.values()].some(({ alternatives }) => alternatives.length > 1) ||
      values.some((own) =>
        [...own.values()].some(({ form }) => form === 'range' || form === 'set'),
      );
    choosable.set(part, known);
  }
  return known;
}

/** The choices that a check's values follow, ranges and finite ones alike. */
function choicesOf({ check, environment }: PlannedCheck): string[] {
  return termsOf(check)
    .flatMap(leavesOf)
    .flatMap(({ reference, shape }) => {
      const reading = environment.lookup(reference, shape);
      if (reading.form === 'choice') return [reading.choice];
      if (reading.form === 'range') return reading.key === null ? [] : [reading.key];
      if (reading.form !== 'several') return [];
      return reading.items.flatMap((item) =>
        item.form === 'range' && item.key !== null ? [item.key] : [],
      );
    });
}

/** Joins checks that share a choice, directly or through others. */
function sharedGroups(checks: readonly PlannedCheck[]): number[][] {
  const byChoice = new Map<string, number[]>();
  for (const [index, planned] of checks.entries()) {
    // A caution that a choice cannot suit as well must not make the choice fail.
    if (planned.check.severity !== 'must') continue;
    for (const choice of new Set(choicesOf(planned))) {
      byChoice.set(choice, [...(byChoice.get(choice) ?? []), index]);
    }
  }
  const groups: Set<number>[] = [];
  for (const members of byChoice.values()) {
    const touching = groups.filter((group) => members.some((member) => group.has(member)));
    const merged = new Set([...touching.flatMap((group) => [...group]), ...members]);
    for (const group of touching) groups.splice(groups.indexOf(group), 1);
    groups.push(merged);
  }
  return groups.filter(({ size }) => size > 1).map((group) => [...group].sort((a, b) => a - b));
}
