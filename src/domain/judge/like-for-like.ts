/**
 * Whether a change leaves a check of the layout as it was: a loop or a load sees values, not the
 * names of the articles that have them.
 */

import type { Check } from '../check/check.js';
import { domainsOf, type Prepared, prepare, type Side } from '../check/evaluate.js';
import type { Environment, Setting } from '../check/evaluator.js';
import { rangeOf, signatureOf } from '../check/polynomial.js';
import type { CodeReading, PointsReading } from '../check/reading.js';
import { isUnrecorded } from '../check/result.js';
import { type Basis, gradeOf } from '../check/state.js';
import { combinationsOf, finiteChoices } from '../check/together.js';
import {
  closed,
  equalIntervals,
  hull,
  type Interval,
  intersect,
  isPoint,
} from '../quantity/interval.js';
import { negate, rational } from '../quantity/rational.js';

/** A check where it is judged after the change. */
export interface After {
  readonly environment: Environment;
}

/**
 * Whether both arrangements give a check the same unknowns and the same exact values, whatever is
 * picked of several. A value that weak evidence has is as unknown as one that nobody has.
 */
export function sameChain(
  check: Check,
  before: Environment,
  { environment }: After,
  setting: Setting,
): boolean {
  const deciding = { ...setting, trusts: (basis: Basis) => gradeOf(basis) === 'decides' };
  const choices = new Map([...choicesIn(check, before), ...choicesIn(check, environment)]);
  const combinations = combinationsOf(choices, new Map());
  if (combinations === null) return false;
  return combinations.every((picks) => {
    const was = chainOf(check, before, { ...deciding, picks });
    return was !== null && was === chainOf(check, environment, { ...deciding, picks });
  });
}

/** Those of its values; what its condition reads has been asked by then. */
function choicesIn(check: Check, environment: Environment): Map<string, number> {
  return finiteChoices({ check: { ...check, when: null }, environment });
}

function chainOf(check: Check, environment: Environment, setting: Setting): string | null {
  const prepared = prepare(check, environment, setting);
  if ('empty' in prepared) return null;
  const sides = [prepared.left, prepared.right].map((side) => {
    if (side === null) return '';
    if (side.is === 'number') return signatureOf(side.polynomial);
    return exactWordsOf(side.reading, setting);
  });
  const codes = prepared.readings.flatMap((reading) =>
    reading.form === 'code' || reading.form === 'points' ? [exactWordsOf(reading, setting)] : [],
  );
  return JSON.stringify([sides, codes]);
}

/** What is no number: codes by name, points by where they are. */
function wordsOf(reading: CodeReading | PointsReading): string {
  const words =
    reading.form === 'code' ? reading.codes : reading.points?.map(({ text }) => text).sort();
  return words?.join(';') ?? `? ${reading.key}`;
}

/** Points that are known only so well are those of one piece, however alike they are written. */
function exactWordsOf(reading: CodeReading | PointsReading, { trusts }: Setting): string {
  if (reading.basis !== null && !trusts(reading.basis)) return `? ${reading.key}`;
  if (reading.form === 'code' || reading.points === null) return wordsOf(reading);
  const isExact = reading.points.every(({ x, y }) => isPoint(x) && isPoint(y));
  return isExact ? wordsOf(reading) : `? ${reading.key}`;
}

/**
 * Whether a check allows the same values on both sides as before, though of other articles: like
 * for like. What one may choose among counts with all that there is to choose from.
 */
export function isAsWide(
  check: Check,
  before: Environment,
  { environment }: After,
  setting: Setting,
): boolean {
  const [was, is] = [before, environment].map((one) => widthOf(check, one, setting));
  if (was == null || is == null || was.codes !== is.codes) return false;
  return was.sides.every((side, at) => {
    const other = is.sides[at];
    return side === null || other == null || equalIntervals(side, other);
  });
}

interface Width {
  /** All numbers that the left and the right side may come to; null of what is no number. */
  readonly sides: readonly (Interval | null)[];
  /** Another coupling sets other limits on the same mismatch; other points meet others. */
  readonly codes: string;
}

/** Null where it does not apply, or there is too much to choose from. */
function widthOf(check: Check, environment: Environment, setting: Setting): Width | null {
  const widths = combinationsOf(choicesIn(check, environment), new Map())?.map((picks) => {
    const prepared = preparedWith(check, environment, { ...setting, trusts: () => true, picks });
    if (prepared === null) return null;
    const { left, right } = prepared;
    const sides = [left, right].map((side) => numbersOf(side, prepared));
    return { sides, codes: codesOf(prepared) };
  });
  const [first, ...others] = widths ?? [];
  if (first == null) return null;
  const sides = first.sides.map((side, at) =>
    others.reduce<Interval | null>((all, other) => {
      const own = other?.sides[at] ?? null;
      return all === null || own === null ? null : hull(all, own);
    }, side),
  );
  const codes = [first, ...others].map((one) => one?.codes ?? '');
  return { sides, codes: [...new Set(codes)].sort().join() };
}

/** Beyond all that is measured on a vehicle, in any base unit. */
const FAR = rational(10n ** 12n);

/**
 * What is not recorded has no end. It is given one, the same before and after, so that it shows
 * what is added to it or multiplies it.
 */
function preparedWith(check: Check, environment: Environment, setting: Setting): Prepared | null {
  const prepared = prepare(check, environment, setting);
  if ('empty' in prepared) return null;
  const ended = [...prepared.unknowns].flatMap(([key, { domain }]) => {
    const isEndless = domain.low === null || domain.high === null;
    const near = isEndless ? intersect(domain, closed(negate(FAR), FAR)) : null;
    return near === null ? [] : [[key, near] as const];
  });
  if (ended.length === 0) return prepared;
  const narrowed = new Map([...setting.narrowed, ...ended]);
  const again = prepare(check, environment, { ...setting, narrowed });
  return 'empty' in again ? null : again;
}

function numbersOf(side: Side | null, { unknowns }: Prepared): Interval | null {
  return side?.is === 'number' ? rangeOf(side.polynomial, domainsOf(unknowns)) : null;
}

function codesOf({ readings }: Prepared): string {
  const words = readings.flatMap((one) =>
    one.form === 'code' || one.form === 'points' ? [isUnrecorded(one) ? null : wordsOf(one)] : [],
  );
  return JSON.stringify(words);
}
