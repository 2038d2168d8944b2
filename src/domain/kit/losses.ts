/**
 * What a vehicle has before a change and no more after it, so that nobody finds out on the road.
 *
 * Told are places that become empty; joints of two recorded faces where afterwards nothing meets,
 * such as a sensor that finds no ring any more; and, at places that change, ratings and counts
 * (the number of gears) that become less, and ratings that nobody knows any more. Less is what is
 * recorded as less: of two sets of values, the one whose lower end is lower. Left out: every other
 * value, since of a ratio or a length nobody can say which way is a loss; what is not recorded as
 * it is now; values that are made to order.
 */

import type { Mating, Position } from '../catalogue/catalogue.js';
import type { Setting } from '../check/evaluator.js';
import type { Hand, NumberReading } from '../check/reading.js';
import {
  type Arrangement,
  type Configuration,
  handsOf,
  isChanged,
  isSeatChanged,
  partAt,
  seatAt,
} from '../judge/configuration.js';
import type { End } from '../judge/constraint.js';
import { LayoutEnvironment } from '../judge/environment.js';
import { settingOf } from '../judge/judge.js';
import { planMating } from '../judge/mating.js';
import { compare } from '../quantity/rational.js';

export type Loss =
  | {
      readonly is: 'place-emptied';
      readonly position: string;
      readonly hand: Hand | null;
      readonly part: string;
    }
  /** Both ends as they are now. */
  | {
      readonly is: 'joint-lost';
      readonly hand: Hand | null;
      readonly ends: readonly [End, End];
    }
  | {
      readonly is: 'value-lower' | 'rating-unknown';
      readonly before: NumberReading;
      readonly after: NumberReading;
    };

/** In the order of the layout: places, then joints, then values. */
export function lossesOf(configuration: Configuration): Loss[] {
  const setting = settingOf(configuration);
  const { positions, matings } = configuration.layout;
  const changed = [...positions.values()].filter(({ id }) => isChanged(configuration, id));
  return [
    ...changed.flatMap((position) => emptied(configuration, position)),
    ...[...matings.values()].flatMap((mating) => jointsLost(configuration, mating, setting)),
    ...changed.flatMap((position) => lessened(configuration, position, setting)),
  ];
}

function emptied(configuration: Configuration, position: Position): Loss[] {
  const { present, judged } = configuration;
  const found = handsOf(position).flatMap((hand): Loss[] => {
    const now = seatAt(present, position.id, hand)?.occupant;
    const then = seatAt(judged, position.id, hand)?.occupant;
    if (now?.is !== 'part' || then?.is !== 'empty') return [];
    return [{ is: 'place-emptied', position: position.id, hand, part: now.part }];
  });
  return found;
}

function jointsLost(configuration: Configuration, mating: Mating, setting: Setting): Loss[] {
  const { present, judged } = configuration;
  const isTouched = mating.ends.some(({ position }) => isChanged(configuration, position));
  if (!isTouched) return [];
  const hands: readonly (Hand | null)[] = mating.isHanded ? ['left', 'right'] : [null];
  return hands.flatMap((hand): Loss[] => {
    // An emptied place is told by itself.
    const isEmptied = mating.ends.some(
      ({ position }) => seatAt(judged, position, hand)?.occupant.is === 'empty',
    );
    if (isEmptied) return [];
    const before = planMating(configuration, present, mating, hand, setting);
    const after = planMating(configuration, judged, mating, hand, setting);
    if (before === null || after === null) return [];
    const met = before.joints.every(({ is }) => is === 'checks');
    const needsNothing = after.joints.some(
      (joint) => joint.is === 'settled' && joint.code === 'nothing-needed',
    );
    return met && needsNothing ? [{ is: 'joint-lost', hand, ends: before.ends }] : [];
  });
}

function lessened(configuration: Configuration, position: Position, setting: Setting): Loss[] {
  return handsOf(position).flatMap((hand) => {
    if (!isSeatChanged(configuration, position.id, hand)) return [];
    return valuesTold(configuration, position, hand).flatMap(({ value, isRating }): Loss[] => {
      const [before, after] = [configuration.present, configuration.judged].map((arrangement) =>
        numberAt(configuration, arrangement, position.id, value, hand, setting),
      );
      const [was, becomes] = [before?.domain.low ?? null, after?.domain.low ?? null];
      if (before?.recorded !== true || was === null) return [];
      if (after === undefined || after === null) return [];
      if (!after.recorded) return isRating ? [{ is: 'rating-unknown', before, after }] : [];
      const isLess = becomes !== null && compare(becomes, was) < 0;
      return isLess ? [{ is: 'value-lower', before, after }] : [];
    });
  });
}

/** Ratings and counts, as the roles of the part that is there now declare them. */
function valuesTold(
  configuration: Configuration,
  position: Position,
  hand: Hand | null,
): { readonly value: string; readonly isRating: boolean }[] {
  const part = partAt(configuration, seatAt(configuration.present, position.id, hand));
  if (part === null) return [];
  const { roles } = configuration.catalogue;
  return part.roles.flatMap((role) =>
    [...(roles.get(role)?.values.values() ?? [])].flatMap(({ id, isRating, isList, term }) =>
      isList || !(isRating || term?.op === 'count') ? [] : [{ value: id, isRating }],
    ),
  );
}

function numberAt(
  configuration: Configuration,
  arrangement: Arrangement,
  position: string,
  value: string,
  hand: Hand | null,
  setting: Setting,
): NumberReading | null {
  const environment = new LayoutEnvironment(configuration, arrangement, hand, setting);
  const reference = { of: 'value', position, value } as const;
  const reading = environment.lookup(reference, { is: 'number', dimension: '1' });
  return reading.form === 'number' ? reading : null;
}
