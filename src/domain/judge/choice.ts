/**
 * Checks that share a choice as one constraint: one length serves every place that it must fit.
 */

import { termsWithin } from '../check/check.js';
import { leavesOf } from '../check/evaluator.js';
import type { FactAddress, Reading } from '../check/reading.js';
import type { GroupResult } from '../check/result.js';
import { positionsOf } from './condition.js';
import type { ChoiceConstraint } from './constraint.js';
import type { Bench } from './judge.js';
import type { PlannedCheck } from './plan.js';
import { type Scope, standingOf, stateOf } from './standing.js';

export function choiceConstraint(
  index: number,
  group: GroupResult,
  bench: Bench,
): ChoiceConstraint {
  const { configuration, plan } = bench;
  const members = plan.groups[index] ?? [];
  const planned = members.flatMap((member) => plan.checks[member] ?? []);
  const names = planned.map(nameOf);
  const scopes = planned.map((one) => one.scope);
  const scope: Scope = {
    positions: scopes.flatMap((own) => own.positions),
    matings: [...new Set(scopes.flatMap((own) => own.matings))],
    opened: scopes.flatMap((own) => own.opened),
  };
  const hands = new Set(planned.map(({ hand }) => hand));
  const hand = hands.size === 1 ? (planned[0]?.hand ?? null) : null;
  const standing = standingOf(configuration, scope, hand);
  const { ignorePresent } = configuration;
  const { outcome: computed } = group;
  const code = computed === 'fails' && group.bounding.length > 1 ? 'no-common-choice' : group.code;
  const choices = choicesOf(planned, group);
  return {
    form: 'choice',
    id: choices.map(({ address }) => placeOf(address)).join('+'),
    group: index,
    members: names.filter((_, member) => !('empty' in (group.results[member] ?? { empty: [] }))),
    hand,
    positions: positionsOf(scope, configuration),
    matings: scope.matings,
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

function choicesOf(planned: readonly PlannedCheck[], group: GroupResult) {
  const choices = new Map<string, ChoiceConstraint['choices'][number]>();
  for (const reading of planned.flatMap((one) => readingsOf(one, group))) {
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

/** What it reads, and of each choice what was picked. */
function readingsOf({ check, environment }: PlannedCheck, { picks }: GroupResult): Reading[] {
  return termsWithin(check)
    .flatMap(leavesOf)
    .flatMap(({ reference, shape }) => {
      const reading = environment.lookup(reference, shape);
      const items = reading.form === 'several' ? reading.items : [reading];
      return items.flatMap((item): Reading[] => {
        if (item.form !== 'choice') return [item];
        const picked = item.options[picks.get(item.choice) ?? 0];
        return picked === undefined ? [item] : [item, picked];
      });
    });
}
