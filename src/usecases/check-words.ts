/**
 * What a check and a choice say in sentences: both sides with their values, what is missing, and
 * what is set, ordered or picked so that it suits. Nothing is decided here.
 */

import type { OddPoint } from '../domain/check/coincide.js';
import type { FactAddress } from '../domain/check/reading.js';
import { type CheckResult, isUnrecorded } from '../domain/check/result.js';
import type { Shown } from '../domain/check/shown.js';
import type { NamedValue, ReasonData, ShownValue } from '../domain/explain/reason.js';
import { sayPoints } from '../domain/explain/words.js';
import type { ChoiceConstraint } from '../domain/judge/constraint.js';
import { squareRootDown } from '../domain/quantity/rational.js';
import type { Speaker } from './speaker.js';

export function checkData(result: CheckResult, speaker: Speaker): ReasonData {
  const { check, left, right, margin, code, basis } = result;
  const worst = margin === null ? null : speaker.worstOf(margin);
  const missing = missingIn(result, speaker);
  const choices = choicesIn(result, speaker);
  return {
    left: namedSide(left, result, speaker),
    ...(right === null ? {} : { right: namedSide(right, result, speaker) }),
    ...(isSaid(result) && check.text !== null ? { says: speaker.text(check.text) } : {}),
    ...(worst === null ? {} : { margin: worst }),
    ...(missing.length === 0 ? {} : { missing }),
    ...(result.odd === null ? {} : { odd: oddPoint(result, result.odd, speaker) }),
    ...(choices.length === 0 ? {} : { choices }),
    ...(code === 'evidence-too-weak' && basis !== null ? { basis } : {}),
  };
}

/** The text of a caution tells what is the matter: of what holds it would be false. */
function isSaid({ check, outcome }: CheckResult): boolean {
  return check.severity !== 'caution' || outcome !== 'holds';
}

/** A side as sentences name it: what nobody recorded has no value, whatever it could be. */
function namedSide(side: Shown, { readings }: CheckResult, speaker: Speaker): NamedValue {
  const { address, term } = side;
  const isMissing = readings.some(
    (reading) => isUnrecorded(reading) && 'address' in reading && isSame(reading.address, address),
  );
  return speaker.namedValue(address, isMissing ? null : spokenValue(side, speaker), term);
}

/** As recorded; a computed value is said in no more digits than it is known to. */
function spokenValue(side: Shown, speaker: Speaker): ShownValue | null {
  const { text, interval, dimension, codes, points } = side;
  const { values } = speaker;
  if (points !== null) return values.word(sayPoints(points.points.length, speaker.lang));
  if (text !== null || interval === null || dimension === null || codes !== null) {
    const value = speaker.value(side);
    return value.text === null ? null : value;
  }
  return values.known(interval, dimension);
}

/** The point that has no partner; how far the nearest is, in no more digits than are known. */
function oddPoint(
  { readings }: CheckResult,
  odd: OddPoint,
  speaker: Speaker,
): NonNullable<ReasonData['odd']> {
  const { of, point: at, squaredDistance } = odd;
  const dimension = readings.find((reading) => reading.form === 'points')?.dimension;
  if (dimension === undefined) throw new Error('points that do not meet are read from somewhere');
  const shown = { of, point: speaker.values.point(at, dimension) };
  if (squaredDistance === null) return shown;
  // A root is cut off, and the points are known only so well: it is so far at least.
  const distance = squareRootDown(squaredDistance, DISTANCE_PLACES);
  return { ...shown, apart: { ...speaker.values.least(distance, dimension), high: null } };
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
    const value = order === null ? null : speaker.values.order(order, reading.dimension);
    return [speaker.namedValue(reading.address, value, null)];
  });
}

/**
 * What is picked or ordered; where nothing suits, what the checks that clash say. Where one check
 * alone decides, whatever is picked, both of its sides.
 */
export function choiceData(constraint: ChoiceConstraint, speaker: Speaker): ReasonData {
  const { between, checks, code } = constraint;
  const choices = constraint.choices.flatMap((choice) => namedChoices(choice, speaker));
  const clashing = checks.filter(({ check }) =>
    between.some((name) => name === check.id || name.endsWith(`/${check.id}`)),
  );
  const [first, ...others] =
    clashing.length > 0 ? clashing : checks.filter((one) => one.code === code);
  const alone = others.length === 0 && first?.outcome !== 'holds' ? first : undefined;
  const says = clashing.flatMap(({ check: { text } }) => (text === null ? [] : speaker.text(text)));
  return {
    ...(alone === undefined ? {} : checkData(alone, speaker)),
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
  const value = order === null ? null : speaker.values.order(order, dimension);
  return [speaker.namedValue(address, value, null)];
}

/** The values in which the picked alternative of a face, or the picked size, differs. */
function pickedValues(address: FactAddress, pick: number, speaker: Speaker): NamedValue[] {
  const { part: id, interface: name, parameter } = address;
  const part = id === null ? undefined : speaker.catalogue.parts.get(id);
  if (name === null) {
    const value = part?.values.get(parameter ?? '');
    const item = value?.form === 'set' ? value.items[pick] : undefined;
    if (item === undefined || value === undefined) return [];
    const shown = speaker.values.recorded({ ...item, ...value.spec });
    return [speaker.namedValue(address, shown, null)];
  }
  const alternatives = part?.faces.get(name)?.alternatives ?? [];
  return [...(alternatives[pick] ?? [])].flatMap(([key, value]) => {
    const { text, spec } = value;
    if (alternatives.every((other) => other.get(key)?.text === text)) return [];
    const interval = value.form === 'number' ? value.interval : null;
    const shown = speaker.values.recorded({ ...spec, text, interval });
    return [speaker.namedValue({ ...address, parameter: key }, shown, null)];
  });
}
