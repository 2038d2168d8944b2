/**
 * Brings one check, in one environment, into a form that can be decided: which inequalities
 * must hold (every requirement is `polynomial >= 0`), over which unknowns, in which worlds.
 *
 * A world is one way the codes may be: where a coupling is not recorded, each coupling is a
 * world, and the check comes to what all worlds agree on. Deciding is `decide.ts`.
 *
 * Length: one way of preparing for each primitive, side by side, each of them short.
 */

import { type Interval, isPoint } from '../quantity/interval.js';
import { add, equals, negate, ONE, subtract } from '../quantity/rational.js';
import type {
  AgreeCheck,
  CarriesCheck,
  Check,
  ClearanceCheck,
  CoincideCheck,
  OneOfCheck,
} from './check.js';
import type { CodeComparison } from './codes.js';
import { type Coincidence, coincidence, type OddPoint } from './coincide.js';
import { refusalOf } from './coupling.js';
import {
  EmptyPlace,
  type Environment,
  Evaluator,
  type Setting,
  type Unknown,
  type Value,
} from './evaluator.js';
import {
  constant,
  minus,
  type Polynomial,
  quotient,
  rangeOf,
  timesNumber,
  unknownsOf,
} from './polynomial.js';
import type { CodeReading, PointsReading, Reading } from './reading.js';
import type { Outcome } from './state.js';

export type World = Decided | { readonly requirements: Requirement[] };

/** Settled without any number to solve for; `reason` is the code if it fails. */
export interface Decided {
  readonly decided: Outcome;
  readonly reason: string;
  /** Of codes, where it is open: what others that read the same code may contradict. */
  readonly codes?: CodeComparison;
}

/** Must be >= 0 wherever the check holds; `reason` is the code if it is below. */
export interface Requirement {
  readonly polynomial: Polynomial;
  readonly reason: string;
}

export type Side =
  | { readonly is: 'number'; readonly polynomial: Polynomial }
  | { readonly is: 'code'; readonly reading: CodeReading }
  | { readonly is: 'points'; readonly reading: PointsReading };

export interface Prepared {
  readonly check: Check;
  readonly worlds: readonly World[];
  readonly left: Side;
  readonly right: Side | null;
  /** What the check read, literals left out. */
  readonly readings: readonly Reading[];
  readonly unknowns: ReadonlyMap<string, Unknown>;
  /** Of two sets of points: how far they may be apart, and which has no partner. */
  readonly points: ComparedPoints | null;
  /** Its condition is open: one of its worlds asks nothing. */
  readonly mayNotApply?: true;
}

/** A check that does not apply: its condition fails, or it names places where nothing is. */
export interface NotApplying {
  readonly empty: readonly string[];
}

/** Prepares a check, or says which places it names that are empty. */
export function prepare(
  check: Check,
  environment: Environment,
  setting: Setting,
): Prepared | NotApplying {
  const whenEmpty = check.primitive === 'agree' ? check.whenEmpty : undefined;
  const evaluator = new Evaluator(environment, setting, whenEmpty);
  try {
    const { worlds, left, right, points = null } = worldsOf(check, evaluator, setting);
    const { readings, unknowns } = evaluator;
    return { check, worlds, left, right, readings, unknowns, points };
  } catch (error) {
    if (error instanceof EmptyPlace) return { empty: [error.position] };
    throw error;
  }
}

interface Sides {
  readonly worlds: readonly World[];
  readonly left: Side;
  readonly right: Side | null;
  readonly points?: ComparedPoints;
}

export interface ComparedPoints {
  readonly tolerance: Interval;
  readonly odd: OddPoint | null;
}

function worldsOf(check: Check, evaluator: Evaluator, setting: Setting): Sides {
  const left = sideOf(
    check.primitive === 'carries' ? evaluator.rating(check.left) : evaluator.term(check.left),
  );
  if (check.primitive === 'one-of') {
    return { worlds: oneOf(check, left, evaluator, setting), left, right: null };
  }
  const right = sideOf(evaluator.term(check.right));
  if (check.primitive === 'coincide') return pointsOf(check, left, right, evaluator);
  if (left.is === 'points' || right.is === 'points') throw new Error('points only coincide');
  if (left.is === 'code' || right.is === 'code') {
    if (left.is !== right.is) throw new Error('a code and a number were compiled as a pair');
    const worlds = left.is === 'code' && right.is === 'code' ? [equalCodes(left, right)] : [];
    return { worlds, left, right };
  }
  const l = left.polynomial;
  const r = right.polynomial;
  switch (check.primitive) {
    case 'equal': {
      const difference = minus(l, r);
      return { worlds: [equality(difference)], left, right };
    }
    case 'clearance':
      return { worlds: [clearance(check, minus(l, r), evaluator)], left, right };
    case 'carries':
      return { worlds: [carries(check, minus(l, r))], left, right };
    case 'agree':
      return { worlds: agree(check, l, r, evaluator, setting), left, right };
  }
}

const NOT_RECORDED: Coincidence = { outcome: 'open', odd: null };

function pointsOf(check: CoincideCheck, left: Side, right: Side, evaluator: Evaluator): Sides {
  if (left.is !== 'points' || right.is !== 'points') throw new Error('only points coincide');
  const a = left.reading.points;
  const b = right.reading.points;
  const tolerance = rangeOf(evaluator.number(check.tolerance), evaluator.domains);
  const isRecorded = a !== null && b !== null;
  const { outcome, odd } = isRecorded ? coincidence(a, b, tolerance) : NOT_RECORDED;
  const worlds = [{ decided: outcome, reason: 'points-apart' }];
  return { worlds, left, right, points: { tolerance, odd } };
}

function sideOf(value: Value): Side {
  if (value.is === 'list') throw new Error('a list was compiled as a side of a check');
  return value;
}

/** What codes, and numbers among a few, come to. */
function decided(outcome: Outcome): Decided {
  return { decided: outcome, reason: 'not-equal' };
}

function equality(difference: Polynomial): World {
  return {
    requirements: [
      { polynomial: difference, reason: 'not-equal' },
      { polynomial: timesNumber(difference, negate(ONE)), reason: 'not-equal' },
    ],
  };
}

function equalCodes(
  left: { readonly reading: CodeReading },
  right: { readonly reading: CodeReading },
): World {
  const a = left.reading;
  const b = right.reading;
  const open: Decided = { ...decided('open'), codes: { is: 'equal', sides: [a, b] } };
  if (a.key !== null && a.key === b.key) return decided('holds');
  if (a.codes === null || b.codes === null) return open;
  const common = a.codes.filter((code) => b.codes?.includes(code));
  if (common.length === 0) return decided('fails');
  return a.codes.length === 1 && b.codes.length === 1 ? decided('holds') : open;
}

function oneOf(check: OneOfCheck, left: Side, evaluator: Evaluator, setting: Setting): World[] {
  const { options } = check;
  if ('codes' in options) {
    if (left.is !== 'code') throw new Error('a number was compiled against codes');
    const { reading } = left;
    const among = options.codes;
    const open: Decided = { ...decided('open'), codes: { is: 'one-of', code: reading, among } };
    if (reading.codes === null) return [open];
    const found = reading.codes.filter((code) => among.includes(code)).length;
    if (found === reading.codes.length) return [decided('holds')];
    return [found === 0 ? decided('fails') : open];
  }
  if (left.is !== 'number') throw new Error('a code was compiled against numbers');
  const range = rangeOf(left.polynomial, evaluator.domains);
  const { low, high } = range;
  if (isPoint(range) && low !== null) {
    const hit = options.numbers.some((number) => equals(number, low));
    return [decided(hit ? 'holds' : 'fails')];
  }
  const possible = options.numbers.some(
    (number) =>
      (low === null || number.compare(low) >= (range.lowOpen ? 1 : 0)) &&
      (high === null || number.compare(high) <= (range.highOpen ? -1 : 0)),
  );
  if (!possible) return [decided('fails')];
  const number = options.numbers[pickedOf(check, left.polynomial, evaluator, setting) ?? -1];
  return [
    number === undefined ? decided('open') : equality(minus(left.polynomial, constant(number))),
  ];
}

/** Which of the numbers a value that one may set is tried with; null where none is. */
function pickedOf(
  check: OneOfCheck,
  polynomial: Polynomial,
  { unknowns }: Evaluator,
  { picks }: Setting,
): number | null {
  const [key, ...others] = unknownsOf(polynomial);
  if (key === undefined || others.length > 0 || unknowns.get(key)?.isChoice !== true) return null;
  return picks.get(pickAmong(check, key)) ?? null;
}

/** The name of the choice which of its numbers a check is met with. */
export function pickAmong({ options }: OneOfCheck, key: string): string {
  const among = 'numbers' in options ? options.numbers : options.codes;
  return `${key} among ${among.map(String).join(', ')}`;
}

function clearance(check: ClearanceCheck, difference: Polynomial, evaluator: Evaluator): World {
  const requirements: Requirement[] = [];
  if (check.min !== null) {
    const polynomial = minus(difference, evaluator.number(check.min));
    requirements.push({ polynomial, reason: 'too-small' });
  }
  if (check.max !== null) {
    const polynomial = minus(evaluator.number(check.max), difference);
    requirements.push({ polynomial, reason: 'too-large' });
  }
  return { requirements };
}

function carries(_check: CarriesCheck, reserve: Polynomial): World {
  return { requirements: [{ polynomial: reserve, reason: 'too-weak' }] };
}

/**
 * A loop. With v the speed ratio of the two axles, right over left, it holds where
 * 1 - refuse <= v <= 1 + refuse. Where v is one product, equal factors have cancelled in it, so
 * its range is exact; else both sides are compared as sums, which is exact to the extent that
 * `rangeOf` is. Totals of a driveline are positive, so multiplying through keeps the sense.
 */
function agree(
  check: AgreeCheck,
  left: Polynomial,
  right: Polynomial,
  evaluator: Evaluator,
  setting: Setting,
): World[] {
  const codes = evaluator.coupling(check.coupling).codes ?? [...setting.couplings.keys()];
  const isChosen = [...evaluator.unknowns.values()].some(({ isChoice }) => isChoice);
  const speeds = isChosen ? null : quotient(right, left);
  return codes.map((code) => {
    const band = setting.couplings.get(code);
    if (band === undefined) return decided('open');
    const limit = refusalOf(band, setting.use);
    const most = add(ONE, limit);
    const least = subtract(ONE, limit);
    const above =
      speeds === null ? minus(timesNumber(left, most), right) : minus(constant(most), speeds);
    const below =
      speeds === null ? minus(right, timesNumber(left, least)) : minus(speeds, constant(least));
    return {
      requirements: [
        { polynomial: above, reason: 'first-too-fast' },
        { polynomial: below, reason: 'first-too-slow' },
      ],
    };
  });
}

/** The speed ratio minus 1 of a loop, as an interval; the whole line where it has no bounds. */
export function mismatchOf(prepared: Prepared): Interval | null {
  const { left, right, unknowns } = prepared;
  if (left.is !== 'number' || right?.is !== 'number') return null;
  const speeds = quotient(right.polynomial, left.polynomial);
  if (speeds === null) return null;
  const domains = domainsOf(unknowns);
  return rangeOf(minus(speeds, constant(ONE)), domains);
}

export function domainsOf(unknowns: ReadonlyMap<string, Unknown>): (key: string) => Interval {
  return (key) => {
    const unknown = unknowns.get(key);
    if (unknown === undefined) throw new Error(`unknown without a domain: ${key}`);
    return unknown.domain;
  };
}

/** The unknowns that are left in a prepared check after cancelling. */
export function remainingUnknowns(prepared: Prepared): Unknown[] {
  // One of several numbers, and how far points may be apart, are no requirements to solve.
  const isSettled = prepared.points !== null || prepared.check.primitive === 'one-of';
  const keys = new Set(isSettled ? prepared.unknowns.keys() : []);
  for (const world of prepared.worlds) {
    if ('decided' in world) continue;
    for (const { polynomial } of world.requirements) {
      for (const key of unknownsOf(polynomial)) keys.add(key);
    }
  }
  return [...keys].flatMap((key) => prepared.unknowns.get(key) ?? []);
}
