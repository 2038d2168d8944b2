/**
 * What a check and a choice say in sentences: both sides with their values, what is missing, and
 * what is set, ordered or picked so that it suits. Nothing is decided here.
 */

import type { OddPoint } from '../domain/check/coincide.js';
import type { FactAddress } from '../domain/check/reading.js';
import { type CheckResult, isUnrecorded } from '../domain/check/result.js';
import type { Shown } from '../domain/check/shown.js';
import type { NamedValue, ReasonData } from '../domain/explain/reason.js';
import { sayPoints } from '../domain/explain/words.js';
import type { ChoiceConstraint } from '../domain/judge/constraint.js';
import { type Interval, point } from '../domain/quantity/interval.js';
import { squareRootDown } from '../domain/quantity/rational.js';
import { roundedInwards, roundedOutwards } from './rounded.js';
import type { Speaker } from './speaker.js';

export function checkData(result: CheckResult, speaker: Speaker): ReasonData {
  const { check, left, right, margin, code, basis } = result;
  const word = speaker.marginWord(margin);
  const missing = missingIn(result, speaker);
  const choices = choicesIn(result, speaker);
  return {
    left: namedSide(left, result, speaker),
    ...(right === null ? {} : { right: namedSide(right, result, speaker) }),
    ...(check.text === null ? {} : { says: speaker.text(check.text) }),
    ...(word === undefined ? {} : { margin: word }),
    ...(missing.length === 0 ? {} : { missing }),
    ...(result.odd === null ? {} : { odd: oddPoint(result, result.odd, speaker) }),
    ...(choices.length === 0 ? {} : { choices }),
    ...(code === 'evidence-too-weak' && basis !== null ? { basis } : {}),
  };
}

/** A side as sentences name it: what nobody recorded has no value, whatever it could be. */
function namedSide(side: Shown, { readings }: CheckResult, speaker: Speaker): NamedValue {
  const { address, term } = side;
  const isMissing = readings.some(
    (reading) => isUnrecorded(reading) && 'address' in reading && isSame(reading.address, address),
  );
  return speaker.namedValue(address, isMissing ? null : spokenText(side, speaker), term);
}

/** As recorded; a computed value in no more digits than it is known to. */
function spokenText(side: Shown, speaker: Speaker): string | null {
  const { text, interval, dimension, codes, points } = side;
  if (points !== null) return sayPoints(points, speaker.lang);
  if (text !== null || interval === null || dimension === null || codes !== null) {
    return speaker.value(side).text;
  }
  // Tooth counts say more than their quotient.
  const known = dimension === '1' ? interval : roundedOutwards(interval, dimension);
  return speaker.interval(known, dimension).text;
}

/** The point that has no partner; how far the nearest is, in no more digits than are known. */
function oddPoint(
  { readings }: CheckResult,
  odd: OddPoint,
  speaker: Speaker,
): NonNullable<ReasonData['odd']> {
  const { of, point: at, squaredDistance } = odd;
  const dimension = readings.find((reading) => reading.form === 'points')?.dimension;
  if (squaredDistance === null || dimension === undefined) return { of, point: at.text };
  const distance = point(squareRootDown(squaredDistance, DISTANCE_PLACES));
  const apart = speaker.interval(distance, dimension).text;
  return { of, point: at.text, ...(apart === null ? {} : { apart }) };
}

/** Hundredths of a millimetre: bolt holes are placed no more finely. */
const DISTANCE_PLACES = 2;

function isSame(a: FactAddress, b: FactAddress): boolean {
  return JSON.stringify(a) === JSON.stringify(b);
}

function missingIn({ outcome, readings }: CheckResult, speaker: Speaker): NamedValue[] {
  if (outcome !== 'open') return [];
  const recorded = readings.flatMap((reading) =>
    reading.form === 'number' ? (reading.behind ?? [reading]) : [reading],
  );
  return recorded.flatMap((reading) =>
    isUnrecorded(reading) && 'address' in reading
      ? [speaker.namedValue(reading.address, null, null)]
      : [],
  );
}

/** What may be ordered so that the check holds. */
function choicesIn({ outcome, readings, orders }: CheckResult, speaker: Speaker): NamedValue[] {
  if (outcome !== 'holds') return [];
  return readings.flatMap((reading) => {
    if (reading.form !== 'range' || reading.key === null) return [];
    const order = orders.get(reading.key);
    if (order === undefined) return [];
    const text = order === null ? null : orderText(order, reading.dimension, speaker);
    return [speaker.namedValue(reading.address, text, null)];
  });
}

/** What to order, for people: never wider than what suits. */
export function orderText(order: Interval, dimension: string, speaker: Speaker): string | null {
  return speaker.interval(roundedInwards(order, dimension), dimension).text;
}

/** What is picked or ordered; where nothing suits, what the checks that clash say. */
export function choiceData(constraint: ChoiceConstraint, speaker: Speaker): ReasonData {
  const { between, checks } = constraint;
  const choices = constraint.choices.flatMap((choice) => namedChoices(choice, speaker));
  const clashing = checks.filter(({ check }) =>
    between.some((name) => name === check.id || name.endsWith(`/${check.id}`)),
  );
  const says = clashing.flatMap(({ check: { text } }) => (text === null ? [] : speaker.text(text)));
  return {
    between,
    ...(choices.length === 0 ? {} : { choices }),
    ...(says.length === 0 ? {} : { says: [...new Set(says)].join(' ') }),
  };
}

function namedChoices(
  { address, order, dimension, pick }: ChoiceConstraint['choices'][number],
  speaker: Speaker,
): NamedValue[] {
  if (pick !== null) return pickedValues(address, pick, speaker);
  const text = order === null ? null : orderText(order, dimension, speaker);
  return [speaker.namedValue(address, text, null)];
}

/** The values in which the picked alternative of a face, or the picked size, differs. */
function pickedValues(address: FactAddress, pick: number, speaker: Speaker): NamedValue[] {
  const { part: id, interface: name, parameter } = address;
  const part = id === null ? undefined : speaker.catalogue.parts.get(id);
  if (name === null) {
    const value = part?.values.get(parameter ?? '');
    const item = value?.form === 'set' ? value.items[pick] : undefined;
    return item === undefined ? [] : [speaker.namedValue(address, item.text, null)];
  }
  const alternatives = part?.faces.get(name)?.alternatives ?? [];
  return [...(alternatives[pick] ?? [])].flatMap(([key, { text }]) => {
    if (alternatives.every((other) => other.get(key)?.text === text)) return [];
    return [speaker.namedValue({ ...address, parameter: key }, text, null)];
  });
}
