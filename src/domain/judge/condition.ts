/**
 * Judges conditions of layouts and rules in one configuration: what is changed, kept, opened or
 * empty is known for certain, what values say may be open.
 */

import { madeFrom } from '../catalogue/trade.js';
import type { Check, Condition } from '../check/check.js';
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

/**
 * Judges a condition for one hand: its checks read handed positions there. Without a hand, a
 * check in it holds if it does for either.
 */
export function judgeCondition(
  condition: Condition,
  configuration: Configuration,
  setting: Setting,
  hand: Hand | null,
): Outcome {
  const judgeOne = (one: Condition) => judgeCondition(one, configuration, setting, hand);
  switch (condition.test) {
    case 'all':
      return allOf(condition.of.map(judgeOne));
    case 'any':
      return anyOf(condition.of.map(judgeOne));
    case 'not':
      return negation(judgeOne(condition.of));
    case 'check':
      return judgeValues(condition.check, configuration, setting, hand);
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
      const parts = adapters?.parts ?? [];
      if (parts.includes(condition.part)) return 'holds';
      // What is said of an adapter may or may not be true of what a work has made of it.
      return parts.some((part) => madeFrom(part).includes(condition.part)) ? 'open' : 'fails';
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
  check: Check,
  configuration: Configuration,
  setting: Setting,
  hand: Hand | null,
): Outcome {
  const hands = hand === null ? handsRead(referencesIn(check), configuration) : [hand];
  return anyOf(
    hands.map((one) => {
      const environment = new LayoutEnvironment(configuration, configuration.judged, one, setting);
      const result = judgeCheck({ check, environment }, setting);
      return appliesResult(result) ? result.outcome : 'fails';
    }),
  );
}

function referencesIn(check: Check): Reference[] {
  return termsOf(check)
    .flatMap(leavesOf)
    .map(({ reference }) => reference);
}

/** The hands for which conditions are judged: both, if a check in them reads a handed place. */
export function handsOfConditions(
  conditions: readonly Condition[],
  configuration: Configuration,
): readonly (Hand | null)[] {
  return handsRead(valueChecks(conditions).flatMap(referencesIn), configuration);
}

/** The checks of values that conditions are made of. */
export function valueChecks(conditions: readonly Condition[]): Check[] {
  return conditions.flatMap((condition): Check[] => {
    switch (condition.test) {
      case 'all':
      case 'any':
        return valueChecks(condition.of);
      case 'not':
        return valueChecks([condition.of]);
      case 'check':
        return [condition.check];
      default:
        return [];
    }
  });
}

/** The checks inside conditions, each with what it reads, hand by hand. */
export function checksIn(
  conditions: readonly Condition[],
  configuration: Configuration,
  setting: Setting,
): Member[] {
  const { judged } = configuration;
  return valueChecks(conditions).flatMap((check) =>
    handsRead(referencesIn(check), configuration).map((hand) => {
      return { check, environment: new LayoutEnvironment(configuration, judged, hand, setting) };
    }),
  );
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
        referencesIn(condition.check).forEach(note);
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
