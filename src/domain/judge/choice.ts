/**
 * Checks that share a choice as one constraint: one length serves every place that it must fit.
 */

import { termsOf } from '../check/check.js';
import { leavesOf } from '../check/evaluator.js';
import type { FactAddress, Reading } from '../check/reading.js';
import type { GroupResult } from '../check/result.js';
import type { Configuration } from './configuration.js';
import type { ChoiceConstraint } from './constraint.js';
import type { Bench } from './judge.js';
import type { PlannedCheck } from './plan.js';
import { standingOf, stateOf } from './standing.js';

export function choiceConstraint(
  index: number,
  group: GroupResult,
  bench: Bench,
): ChoiceConstraint {
  const { configuration, plan } = bench;
  const members = plan.groups[index] ?? [];
  const planned = members.flatMap((member) => plan.checks[member] ?? []);
  const names = planned.map(nameOf);
  const positions = positionsOf(planned, configuration);
  const matings = planned.flatMap(({ matings: own }) => own);
  const hands = new Set(planned.map(({ hand }) => hand));
  const hand = hands.size === 1 ? (planned[0]?.hand ?? null) : null;
  const standing = standingOf(configuration, positions, hand, matings);
  const { ignorePresent } = configuration;
  const { outcome: computed } = group;
  const code = computed === 'fails' && group.bounding.length > 1 ? 'no-common-choice' : group.code;
  const choices = choicesOf(planned, group);
  return {
    form: 'choice',
    id: choices.map(({ address }) => placeOf(address)).join('+'),
    group: index,
    hand,
    positions,
    state: stateOf(computed, standing, { ignorePresent, isAsked: false }),
    computed,
    severity: planned.some(({ check }) => check.severity === 'must') ? 'must' : 'caution',
    code,
    basis: null,
    checks: group.results.flatMap((result) => ('empty' in result ? [] : [result])),
    missing: [],
    choices,
    between: group.bounding.flatMap((member) => names[member] ?? []),
    statement: null,
  };
}

/** `prop-shaft.length`, `rear-hub.wheel`: what is chosen. */
function placeOf({ position, mating, hand, interface: face, parameter }: FactAddress): string {
  const place = position ?? mating ?? '';
  return [place, hand, face, parameter].filter((word) => word !== null).join('.');
}

/** `mating/check` for a check of a kind, the id for one of the layout. */
export function nameOf({ check, joint }: PlannedCheck): string {
  return joint === null ? check.id : `${joint.plan.mating.id}/${check.id}`;
}

function positionsOf(planned: readonly PlannedCheck[], { layout }: Configuration): string[] {
  const ids = new Set<string>();
  for (const { joint, positions } of planned) {
    for (const id of positions) ids.add(id);
    for (const end of joint?.plan.mating.ends ?? []) ids.add(end.position);
  }
  return [...layout.positions.keys()].filter((id) => ids.has(id));
}

function choicesOf(planned: readonly PlannedCheck[], group: GroupResult) {
  const choices = new Map<string, ChoiceConstraint['choices'][number]>();
  for (const reading of planned.flatMap(readingsOf)) {
    if (reading.form === 'range' && reading.key !== null) {
      const order = group.orders.get(reading.key) ?? null;
      const { address, dimension } = reading;
      choices.set(reading.key, { address, order, dimension, pick: null });
    } else if (reading.form === 'choice') {
      const pick = group.picks.get(reading.choice) ?? null;
      const { address } = reading;
      choices.set(reading.choice, { address, order: null, dimension: '1', pick });
    }
  }
  return [...choices.values()];
}

function readingsOf({ check, environment }: PlannedCheck): Reading[] {
  return termsOf(check)
    .flatMap(leavesOf)
    .flatMap(({ reference, shape }) => {
      const reading = environment.lookup(reference, shape);
      return reading.form === 'several' ? [...reading.items] : [reading];
    });
}
