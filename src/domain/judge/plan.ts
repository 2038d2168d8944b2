/**
 * Lays out everything that has to be judged in a configuration: the joints of all matings, the
 * checks of the layout, hand by hand, and which of them share a choice.
 */

import type { Mating, Part } from '../catalogue/catalogue.js';
import type { Check } from '../check/check.js';
import { termsOf, termsWithin } from '../check/check.js';
import { type Environment, leavesOf, type Setting } from '../check/evaluator.js';
import type { Hand } from '../check/reading.js';
import type { Outcome } from '../check/state.js';
import { finiteChoices } from '../check/together.js';
import { handsRead, judgeCondition, scopeOf } from './condition.js';
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
import { NO_SCOPE, type Scope, standingOf } from './standing.js';

/** One check to judge, with whether it applies. */
export interface PlannedCheck {
  readonly check: Check;
  readonly environment: Environment;
  readonly applies: (setting: Setting) => Outcome;
  /** The mating and joint it belongs to, or null for a check of the layout. */
  readonly joint: { readonly plan: MatingPlan; readonly index: number } | null;
  readonly hand: Hand | null;
  readonly scope: Scope;
}

export interface Plan {
  readonly matings: readonly MatingPlan[];
  readonly checks: readonly PlannedCheck[];
  /** Indices of checks that share a choice; one check alone where it picks among several. */
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
    const scope = scopeOfMating(mating);
    for (const hand of hands) {
      if (isSkipped(configuration, scope, hand)) continue;
      const plan = planMating(configuration, arrangement, mating, hand, setting);
      if (plan !== null) plans.push(plan);
    }
  }
  return plans;
}

function scopeOfMating({ id, ends }: Mating): Scope {
  return { ...NO_SCOPE, positions: ends.map(({ position }) => position), matings: [id] };
}

function jointChecks(plan: MatingPlan): PlannedCheck[] {
  const scope = scopeOfMating(plan.mating);
  return plan.joints.flatMap((joint, index) => {
    if (joint.is === 'settled') return [];
    const { environment, checks, applies: appliesIn } = joint.joint;
    const { hand } = plan;
    return checks.map((check) => {
      const applies = (setting: Setting): Outcome => appliesIn(check, setting);
      return { check, environment, applies, hand, scope, joint: { plan, index } };
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
    const references = termsOf(check)
      .flatMap(leavesOf)
      .map(({ reference }) => reference);
    const scope = scopeOf(check.when === null ? [] : [check.when], references, configuration);
    const hands = handsRead(references, configuration).filter(
      (hand) => !isSkipped(configuration, scope, hand),
    );
    return hands.flatMap((hand): PlannedCheck[] => {
      const { when } = check;
      const outcome = when === null ? 'holds' : judgeCondition(when, configuration, setting, hand);
      if (outcome === 'fails') return [];
      const applies = () => outcome;
      const environment = new LayoutEnvironment(configuration, arrangement, hand, setting);
      return [{ check, environment, applies, joint: null, hand, scope }];
    });
  });
}

/**
 * Whether something need not be judged: all of it is as the works built it, so it is given. A
 * part with a choice is looked at all the same, since its choice must serve every place.
 */
function isSkipped(configuration: Configuration, scope: Scope, hand: Hand | null): boolean {
  const { skipsGiven, torque, judged, layout } = configuration;
  const { positions, matings } = scope;
  if (skipsGiven !== true || torque !== null) return false;
  if (standingOf(configuration, scope, hand) !== 'works') return false;
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
export function hasChoice(part: Part): boolean {
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
  return termsWithin(check)
    .flatMap(leavesOf)
    .flatMap(({ reference, shape }) => {
      const reading = environment.lookup(reference, shape);
      const items = reading.form === 'several' ? reading.items : [reading];
      return items.flatMap((item) => {
        if (item.form === 'choice') return [item.choice];
        return item.form === 'range' && item.key !== null ? [item.key] : [];
      });
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
  return groups
    .map((group) => [...group].sort((a, b) => a - b))
    .filter((group) => group.length > 1 || group.some((index) => picksAmong(checks[index])));
}

function picksAmong(planned: PlannedCheck | undefined): boolean {
  return planned !== undefined && finiteChoices(planned).size > 0;
}
