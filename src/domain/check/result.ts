/**
 * What judging a check comes to: its outcome, the reason as a code with data, both values, the
 * margin, the evidence behind it, what is ordered to suit, and what to measure while it is open.
 *
 * Evidence is weighed in steps. First only values that may decide count, the rest is taken as
 * not recorded. If that leaves the check open, inferred values join: they may fail it, never
 * hold it. Reported values join last, and only ever leave it open.
 */

import { type Interval, isPoint } from '../quantity/interval.js';
import { cautionOf } from './caution.js';
import type { Check } from './check.js';
import type { OddPoint } from './coincide.js';
import { type NotApplying, type Prepared, remainingUnknowns } from './evaluate.js';
import type { Setting } from './evaluator.js';
import type { Reading } from './reading.js';
import { type Margin, marginOf, type Shown, shownOf } from './shown.js';
import { type Basis, gradeOf, type Outcome, weaker } from './state.js';
import { type Combined, decideTogether, type Member } from './together.js';

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
  /** Of points that do not all lie on one another, the first that has no partner. */
  readonly odd: OddPoint | null;
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
    // By records that decide it may not apply, where weak ones of another check let it.
    const [own] = alone.combined.members;
    return own !== undefined && 'empty' in own ? own : resultOf(member, alone, setting);
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
    odd: prepared.points?.odd ?? null,
  };
}

const HOLDING_CODES: Readonly<Record<Check['primitive'], string>> = {
  equal: 'equal',
  'one-of': 'one-of',
  clearance: 'clears',
  coincide: 'coincides',
  agree: 'agrees',
  carries: 'carries',
};

function codeOf(weighed: Weighed, check?: Check): string {
  const { outcome, isWeak, combined } = weighed;
  if (outcome === 'holds') return check === undefined ? 'suits' : HOLDING_CODES[check.primitive];
  if (isWeak) return 'evidence-too-weak';
  if (outcome === 'fails') {
    if (check?.primitive === 'one-of') return 'not-one-of';
    return combined.reason ?? 'not-equal';
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
    case 'points':
      return reading.points === null;
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
