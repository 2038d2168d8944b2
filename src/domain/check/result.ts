/**
 * What judging a check comes to: its outcome, the reason as a code with data, both values, the
 * margin, the evidence behind it, what is ordered to suit, and what to measure while it is open.
 *
 * Evidence is weighed in steps. First only values that may decide count, the rest is taken as
 * not recorded. If that leaves the check open, inferred values join: they may fail it, never
 * hold it. Reported values join last, and only ever leave it open.
 */

import {
  divideIntervals,
  type Interval,
  isPoint,
  minimumInterval,
  scaleInterval,
} from '../quantity/interval.js';
import { compare, HUNDRED, negate, type Rational } from '../quantity/rational.js';
import type { Dimension } from '../quantity/unit.js';
import type { Check } from './check.js';
import type { Band } from './coupling.js';
import {
  domainsOf,
  mismatchOf,
  type NotApplying,
  type Prepared,
  remainingUnknowns,
  type Side,
} from './evaluate.js';
import { Evaluator, type Setting } from './evaluator.js';
import { rangeOf } from './polynomial.js';
import { type FactAddress, NOWHERE, type Reading } from './reading.js';
import { type Basis, gradeOf, type Outcome, weaker } from './state.js';
import { shapeOf, type Term } from './term.js';
import { type Combined, decideTogether, type Member } from './together.js';

/** One side of a check, for people and programs. */
export interface Shown {
  /** As recorded, when the side is one recorded value. */
  readonly text: string | null;
  readonly interval: Interval | null;
  readonly dimension: Dimension | null;
  readonly codes: readonly string[] | null;
  /** Whose value it is, when the side is one value. */
  readonly address: FactAddress;
  /** The name of a layout's term, when the side is one. */
  readonly term: string | null;
}

export interface Margin {
  readonly interval: Interval;
  /** `ratio` for loads, `%` for loops, else the dimension that was compared. */
  readonly measure: Dimension;
}

export interface CheckResult {
  readonly check: Check;
  readonly outcome: Outcome;
  readonly code: string;
  /** Something to say although it holds, as a code. */
  readonly caution: string | null;
  readonly left: Shown;
  readonly right: Shown | null;
  readonly margin: Margin | null;
  readonly basis: Basis | null;
  /** The readings that the outcome rests on. */
  readonly readings: readonly Reading[];
  /** What may be ordered or set, by the key of the choice; null where it must be measured. */
  readonly orders: ReadonlyMap<string, Interval | null>;
}

/** Several checks judged as one because they share a choice. */
export interface GroupResult {
  readonly outcome: Outcome;
  readonly code: string;
  readonly results: readonly (CheckResult | NotApplying)[];
  /** The members (by index) that bound the range, two where it is empty. */
  readonly bounding: readonly number[];
  readonly picks: ReadonlyMap<string, number>;
  readonly orders: ReadonlyMap<string, Interval | null>;
}

interface Weighed {
  readonly combined: Combined;
  readonly outcome: Outcome;
  /** True where weak evidence keeps it open. */
  readonly isWeak: boolean;
  readonly trusts: (basis: Basis) => boolean;
}

const LEVELS = [
  { trusts: (basis: Basis) => gradeOf(basis) === 'decides', keeps: ['holds', 'fails'] },
  { trusts: (basis: Basis) => gradeOf(basis) !== 'opens-only', keeps: ['fails'] },
  { trusts: () => true, keeps: [] },
] as const;

function weigh(members: readonly Member[], setting: Setting): Weighed {
  let previous: Combined | null = null;
  let last: Weighed | null = null;
  for (const { trusts, keeps } of LEVELS) {
    if (previous !== null && !readsUntrusted(previous, last?.trusts)) break;
    const level = (basis: Basis) => setting.trusts(basis) && trusts(basis);
    const combined = decideTogether(members, { ...setting, trusts: level });
    const kept = keeps.some((outcome) => outcome === combined.outcome);
    const isWeak = !kept && combined.outcome !== 'open';
    last = { combined, outcome: kept ? combined.outcome : 'open', isWeak, trusts: level };
    if (combined.outcome !== 'open') return last;
    previous = combined;
  }
  if (last === null) throw new Error('there is always a first level');
  return last;
}

function readsUntrusted(combined: Combined, trusts?: (basis: Basis) => boolean): boolean {
  if (trusts === undefined) return false;
  return combined.members
    .filter((member): member is Prepared => !('empty' in member))
    .flatMap(({ readings }) => readings)
    .some((reading) => 'basis' in reading && reading.basis !== null && !trusts(reading.basis));
}

/** Judges one check where no other check shares its choices. */
export function judgeCheck(member: Member, setting: Setting): CheckResult | NotApplying {
  const { results } = judgeGroup([member], setting);
  const [only] = results;
  if (only === undefined) throw new Error('one check gives one result');
  return only;
}

/** Judges checks that share choices together, and each of them alone under the same picks. */
export function judgeGroup(members: readonly Member[], setting: Setting): GroupResult {
  const weighed = weigh(members, setting);
  const { combined } = weighed;
  const results = members.map((member, index) => {
    const prepared = combined.members[index];
    if (prepared === undefined) throw new Error('each member is prepared');
    if ('empty' in prepared) return prepared;
    const alone =
      members.length === 1 ? weighed : weigh([member], { ...setting, picks: combined.picks });
    return resultOf(member, alone, setting);
  });
  const { outcome } = weighed;
  const code = codeOf(weighed);
  const { from: bounding, picks, orders } = combined;
  return { outcome, code, results, bounding, picks, orders };
}

function resultOf(member: Member, weighed: Weighed, setting: Setting): CheckResult {
  const [prepared] = weighed.combined.members;
  if (prepared === undefined || 'empty' in prepared) throw new Error('the check applies');
  const { check } = member;
  const { outcome } = weighed;
  const seeing = { ...setting, trusts: () => true, picks: weighed.combined.picks };
  const readings = decidingReadings(prepared);
  const holding = outcome === 'holds' ? cautionOf(prepared, setting) : null;
  const code = outcome === 'fails' && check.code !== null ? check.code : codeOf(weighed, check);
  return {
    check,
    outcome,
    code,
    caution: holding,
    left: shownOf('left', member, prepared.left, seeing),
    right: prepared.right === null ? null : shownOf('right', member, prepared.right, seeing),
    margin: marginOf(prepared),
    basis: outcome === 'open' && !weighed.isWeak ? null : basisOf(readings),
    readings,
    orders: weighed.combined.orders,
  };
}

const HOLDING_CODES: Readonly<Record<Check['primitive'], string>> = {
  equal: 'equal',
  'one-of': 'one-of',
  clearance: 'clears',
  agree: 'agrees',
  carries: 'carries',
};

function codeOf(weighed: Weighed, check?: Check): string {
  const { outcome, isWeak, combined } = weighed;
  if (outcome === 'holds') return check === undefined ? 'suits' : HOLDING_CODES[check.primitive];
  if (isWeak) return 'evidence-too-weak';
  if (outcome === 'fails') {
    if (check?.primitive === 'one-of') return 'not-one-of';
    const reason = combined.reason ?? 'not-equal';
    return reason === 'out-of-choice' ? 'out-of-range' : reason;
  }
  const { reason } = combined;
  if (reason === 'not-decided' || reason === 'too-many-choices') return reason;
  const read = combined.members.flatMap((member) =>
    'empty' in member ? [] : decidingReadings(member),
  );
  if (read.some(isUnrecorded)) return 'not-recorded';
  const isConditional = combined.members.some((one) => 'mayNotApply' in one && one.mayNotApply);
  return isConditional ? 'may-not-apply' : 'not-precise-enough';
}

export function isUnrecorded(reading: Reading): boolean {
  switch (reading.form) {
    case 'number':
      return !reading.recorded;
    case 'code':
      return reading.codes === null;
    case 'list':
      return reading.items === null;
    default:
      return false;
  }
}

/** The readings left after cancelling: exact ones, and those whose unknown still stands. */
export function decidingReadings(prepared: Prepared): Reading[] {
  const left = new Set(remainingUnknowns(prepared).flatMap(({ readings }) => readings));
  return prepared.readings.filter((reading) => {
    if (reading.form !== 'number' && reading.form !== 'range') return true;
    return isPoint(reading.domain) || left.has(reading);
  });
}

function basisOf(readings: readonly Reading[]): Basis | null {
  let basis: Basis | null = null;
  for (const reading of readings) {
    if ('basis' in reading) basis = weaker(basis, reading.basis);
  }
  return basis;
}

/** Where a loop passes only with a word of caution: by the band that its mismatch reaches. */
function cautionOf(prepared: Prepared, setting: Setting): string | null {
  if (prepared.check.primitive !== 'agree') return null;
  const mismatch = mismatchOf(prepared);
  const band = bandOf(prepared, setting);
  if (mismatch === null || band === null) return null;
  if (exceeds(mismatch, band.warn) === 'always') return 'off-road-only';
  if (exceeds(mismatch, band.warn) === 'may') return 'may-be-off-road-only';
  const pass = exceeds(mismatch, band.pass);
  if (pass === 'never') return null;
  return pass === 'always' ? 'winds-up' : 'may-wind-up';
}

/** The band of the one coupling, or the narrowest where the coupling is not recorded. */
function bandOf(prepared: Prepared, setting: Setting): Band | null {
  const reading = prepared.readings.findLast((item) => item.form === 'code');
  const codes = reading?.form === 'code' ? reading.codes : null;
  const bands = (codes ?? [...setting.couplings.keys()]).flatMap(
    (code) => setting.couplings.get(code) ?? [],
  );
  return bands.reduce<Band | null>(
    (least, band) => (least === null || compare(band.pass, least.pass) < 0 ? band : least),
    null,
  );
}

function exceeds(mismatch: Interval, limit: Rational): 'always' | 'may' | 'never' {
  const { low, high } = mismatch;
  const above = (end: Rational | null) => end === null || compare(end, limit) > 0;
  const below = (end: Rational | null) => end === null || compare(negate(end), limit) > 0;
  if (low !== null && compare(low, limit) > 0) return 'always';
  if (high !== null && compare(negate(high), limit) > 0) return 'always';
  return above(high) || below(low) ? 'may' : 'never';
}

function marginOf(prepared: Prepared): Margin | null {
  const { check, left, right, unknowns } = prepared;
  if (left.is !== 'number' || right?.is !== 'number') return null;
  // A margin that one may still choose is none.
  if ([...unknowns.values()].some(({ isChoice }) => isChoice)) return null;
  const domains = domainsOf(unknowns);
  if (check.primitive === 'agree') {
    const mismatch = mismatchOf(prepared);
    return mismatch === null ? null : { interval: scaleInterval(mismatch, HUNDRED), measure: '%' };
  }
  const l = rangeOf(left.polynomial, domains);
  const r = rangeOf(right.polynomial, domains);
  if (check.primitive === 'carries') {
    return { interval: divideIntervals(l, r), measure: 'ratio' };
  }
  if (check.primitive !== 'clearance') return null;
  const [world] = prepared.worlds;
  if (world === undefined || 'decided' in world) return null;
  const reserves = world.requirements.map(({ polynomial }) => rangeOf(polynomial, domains));
  const [first, ...others] = reserves;
  if (first === undefined) return null;
  const shape = shapeOf(check.left);
  const measure = shape.is === 'code' ? '1' : shape.dimension;
  return { interval: others.reduce(minimumInterval, first), measure };
}

function shownOf(
  which: 'left' | 'right',
  { check, environment }: Member,
  side: Side,
  setting: Setting,
): Shown {
  const term = which === 'left' || !('right' in check) ? check.left : check.right;
  const single = term.op === 'reference' ? environment.lookup(term.reference, term.shape) : null;
  const reading = single?.form === 'choice' ? single.options[pickOf(single, setting)] : single;
  const address =
    reading !== null && reading !== undefined && 'address' in reading ? reading.address : NOWHERE;
  const text = reading !== null && reading !== undefined && 'text' in reading ? reading.text : null;
  const name = term.op === 'named' ? term.name : null;
  if (side.is === 'code') {
    const { codes } = side.reading;
    return { text, interval: null, dimension: null, codes, address, term: name };
  }
  const shape = shapeOf(term);
  const dimension = shape.is === 'code' ? '1' : shape.dimension;
  const evaluator = new Evaluator(environment, setting, emptyFactors(check));
  const interval = rangeOf(evaluator.number(term), evaluator.domains);
  return { text, interval, dimension, codes: null, address, term: name };
}

function emptyFactors(check: Check): ReadonlyMap<string, Term> {
  return check.primitive === 'agree' ? check.whenEmpty : new Map();
}

function pickOf(reading: { readonly choice: string }, setting: Setting): number {
  return setting.picks.get(reading.choice) ?? 0;
}
