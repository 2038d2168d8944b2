/**
 * Judges conditions of layouts and rules in one configuration: what is changed, kept, opened or
 * empty is known for certain, what values say may be open.
 */

import type { Condition } from '../check/check.js';
import { termsOf } from '../check/check.js';
import { leavesOf, type Setting } from '../check/evaluator.js';
import type { Hand } from '../check/reading.js';
import { judgeCheck } from '../check/result.js';
import { allOf, anyOf, negation, type Outcome } from '../check/state.js';
import type { Reference } from '../check/term.js';
import type { Member } from '../check/together.js';
import {
  adaptersIn,
  type Configuration,
  handsOf,
  isChanged,
  isOpened,
  seatAt,
} from './configuration.js';
import { LayoutEnvironment } from './environment.js';
import { appliesResult } from './meeting.js';
import type { Scope } from './standing.js';

/** Judges a condition; on handed positions it holds if it holds for some hand. */
export function judgeCondition(
  condition: Condition,
  configuration: Configuration,
  setting: Setting,
): Outcome {
  switch (condition.test) {
    case 'all':
      return allOf(condition.of.map((one) => judgeCondition(one, configuration, setting)));
    case 'any':
      return anyOf(condition.of.map((one) => judgeCondition(one, configuration, setting)));
    case 'not':
      return negation(judgeCondition(condition.of, configuration, setting));
    case 'check':
      return judgeValues(condition, configuration, setting);
    case 'changed':
      return certain(isChanged(configuration, condition.position));
    case 'kept':
      return certain(!isChanged(configuration, condition.position));
    case 'opened':
      return certain(isOpened(configuration, condition.position));
    case 'empty':
      return judgeEmpty(condition.position, configuration);
    case 'adapter': {
      const adapters = adaptersIn(configuration.judged, condition.mating);
      return certain(adapters?.parts.includes(condition.part) ?? false);
    }
  }
}

function certain(isTrue: boolean): Outcome {
  return isTrue ? 'holds' : 'fails';
}

function judgeEmpty(id: string, configuration: Configuration): Outcome {
  const position = configuration.layout.positions.get(id);
  if (position === undefined) return 'fails';
  return allOf(
    handsOf(position).map((hand) => {
      const occupant = seatAt(configuration.judged, id, hand)?.occupant;
      if (occupant === undefined || occupant.is === 'as-found') return 'open';
      return certain(occupant.is === 'empty');
    }),
  );
}

function judgeValues(
  condition: Condition & { test: 'check' },
  configuration: Configuration,
  setting: Setting,
): Outcome {
  const { check } = condition;
  const references = termsOf(check).flatMap(leavesOf);
  const hands = handsRead(
    references.map(({ reference }) => reference),
    configuration,
  );
  return anyOf(
    hands.map((hand) => {
      const environment = new LayoutEnvironment(configuration, configuration.judged, hand, setting);
      const result = judgeCheck({ check, environment }, setting);
      return appliesResult(result) ? result.outcome : 'fails';
    }),
  );
}

/** The checks inside conditions, each with what it reads, hand by hand. */
export function checksIn(
  conditions: readonly Condition[],
  configuration: Configuration,
  setting: Setting,
): Member[] {
  return conditions.flatMap((condition): Member[] => {
    switch (condition.test) {
      case 'all':
      case 'any':
        return checksIn(condition.of, configuration, setting);
      case 'not':
        return checksIn([condition.of], configuration, setting);
      case 'check': {
        const { check } = condition;
        const references = termsOf(check).flatMap(leavesOf).map(referenceOf);
        return handsRead(references, configuration).map((hand) => {
          const { judged } = configuration;
          return {
            check,
            environment: new LayoutEnvironment(configuration, judged, hand, setting),
          };
        });
      }
      default:
        return [];
    }
  });
}

/** The hands for which terms have to be read: both, if they name something handed. */
export function handsRead(
  references: readonly Reference[],
  configuration: Configuration,
): readonly (Hand | null)[] {
  const { positions, matings } = configuration.layout;
  const isHanded = references.some((reference) => {
    if (reference.of === 'adapter') return matings.get(reference.mating)?.isHanded ?? false;
    return 'position' in reference && (positions.get(reference.position)?.isHanded ?? false);
  });
  return isHanded ? ['left', 'right'] : [null];
}

function referenceOf({ reference }: { readonly reference: Reference }): Reference {
  return reference;
}

/** What conditions and references speak of; positions in layout order. */
export function scopeOf(
  conditions: readonly Condition[],
  references: readonly Reference[],
  configuration: Configuration,
): Scope {
  const positions = new Set<string>();
  const matings = new Set<string>();
  const opened = new Set<string>();
  const note = (reference: Reference): void => {
    if (reference.of === 'adapter') matings.add(reference.mating);
    else if ('position' in reference) positions.add(reference.position);
  };
  const visit = (condition: Condition): void => {
    switch (condition.test) {
      case 'all':
      case 'any':
        condition.of.forEach(visit);
        break;
      case 'not':
        visit(condition.of);
        break;
      case 'check':
        termsOf(condition.check).flatMap(leavesOf).map(referenceOf).forEach(note);
        break;
      case 'adapter':
        matings.add(condition.mating);
        break;
      case 'opened':
        opened.add(condition.position);
        break;
      default:
        positions.add(condition.position);
    }
  };
  conditions.forEach(visit);
  references.forEach(note);
  const inOrder = [...configuration.layout.positions.keys()];
  return {
    positions: inOrder.filter((id) => positions.has(id)),
    matings: [...matings],
    opened: inOrder.filter((id) => opened.has(id)),
  };
}

/** The positions that a scope names, with the ends of its matings, in layout order. */
export function positionsOf(
  { positions, matings, opened }: Scope,
  { layout }: Configuration,
): string[] {
  const ends = matings.flatMap((id) =>
    (layout.matings.get(id)?.ends ?? []).map(({ position }) => position),
  );
  const named = new Set([...positions, ...opened, ...ends]);
  return [...layout.positions.keys()].filter((id) => named.has(id));
}
