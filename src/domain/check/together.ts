/**
 * Judges checks that share choices as one: tries every combination of finite choices (the
 * alternatives of a face, a set of sizes), lets `decide` eliminate the ranges in each.
 *
 *   holds:  some combination holds; or, where all that the combinations ask runs along one
 *           line, their ranges together cover everything the unknowns allow
 *   fails:  every combination fails
 */

import { type Interval, intersect, interval, isWithin } from '../quantity/interval.js';
import { compare, divide, negate, ONE, type Rational, sign, ZERO } from '../quantity/rational.js';
import type { Check } from './check.js';
import { termsWithin } from './check.js';
import { type Decision, decide } from './decide.js';
import { domainsOf, type NotApplying, type Prepared, pickAmong, prepare } from './evaluate.js';
import { type Environment, leavesOf, type Setting, type Unknown } from './evaluator.js';
import { type Polynomial, rangeOf, signatureOf, timesNumber } from './polynomial.js';
import { choicesIn } from './reading.js';
import type { Outcome } from './state.js';

export interface Member {
  readonly check: Check;
  readonly environment: Environment;
  /** Whether the check applies, where it has a condition; asked anew for each combination. */
  readonly applies?: (setting: Setting) => Outcome;
}

export interface Combined extends Decision {
  /** The combination that the decision speaks of. */
  readonly picks: ReadonlyMap<string, number>;
  /** The members as prepared under it; a member that does not apply says so. */
  readonly members: readonly (Prepared | NotApplying)[];
}

/** More combinations than this are not tried: the answer stays open instead. */
const MOST_COMBINATIONS = 4096;

/**
 * The finite choices that a check's values follow, with the number of their options: also which of
 * a few numbers something is set to.
 */
export function finiteChoices({ check, environment }: Member): Map<string, number> {
  const choices = new Map<string, number>();
  if (check.primitive === 'one-of' && 'numbers' in check.options) {
    const [leaf, ...others] = leavesOf(check.left);
    const reading = leaf === undefined ? null : environment.lookup(leaf.reference, leaf.shape);
    if (others.length === 0 && reading?.form === 'range' && reading.key !== null) {
      choices.set(pickAmong(check, reading.key), check.options.numbers.length);
    }
  }
  for (const { reference, shape } of termsWithin(check).flatMap(leavesOf)) {
    for (const { choice, options } of choicesIn(environment.lookup(reference, shape))) {
      choices.set(choice, options.length);
    }
  }
  return choices;
}

/** Decides the members as one constraint. */
export function decideTogether(members: readonly Member[], setting: Setting): Combined {
  const choices = new Map(members.flatMap((member) => [...finiteChoices(member)]));
  const combinations = combinationsOf(choices, setting.picks);
  if (combinations === null) {
    const first = tryPicks(members, setting, new Map());
    return { ...first, outcome: 'open', reason: 'too-many-choices' };
  }
  const tried: Combined[] = [];
  for (const picks of combinations) {
    const combined = tryPicks(members, setting, picks);
    if (combined.outcome === 'holds') return combined;
    tried.push(combined);
  }
  const best = tried.find(({ outcome }) => outcome === 'open') ?? tried[0];
  if (best === undefined) throw new Error('there is always one combination');
  if (best.outcome === 'open' && tried.length > 1 && coverTogether(tried)) {
    return { ...best, outcome: 'holds', reason: null };
  }
  return best;
}

/** Every way of picking one option of each choice; null where there are too many. */
export function combinationsOf(
  choices: ReadonlyMap<string, number>,
  fixed: ReadonlyMap<string, number>,
): ReadonlyMap<string, number>[] | null {
  let combinations: ReadonlyMap<string, number>[] = [fixed];
  for (const [choice, count] of [...choices].sort(([a], [b]) => (a < b ? -1 : 1))) {
    if (fixed.has(choice)) continue;
    if (combinations.length * count > MOST_COMBINATIONS) return null;
    combinations = combinations.flatMap((picks) =>
      Array.from({ length: count }, (_, index) => new Map(picks).set(choice, index)),
    );
  }
  return combinations;
}

function tryPicks(
  members: readonly Member[],
  setting: Setting,
  picks: ReadonlyMap<string, number>,
): Combined {
  const own = { ...setting, picks: new Map([...setting.picks, ...picks]) };
  const prepared = members.map((member) => prepareMember(member, own));
  const applying = prepared.filter((member): member is Prepared => !('empty' in member));
  return { ...decide(applying), picks: own.picks, members: prepared };
}

/** A check that may not apply has a world more, in which nothing is asked. */
function prepareMember(member: Member, setting: Setting): Prepared | NotApplying {
  const applies = member.applies?.(setting) ?? 'holds';
  if (applies === 'fails') return { empty: [] };
  const prepared = prepare(member.check, member.environment, setting);
  if (applies === 'holds' || 'empty' in prepared) return prepared;
  const worlds = [...prepared.worlds, { requirements: [] }];
  return { ...prepared, worlds, mayNotApply: true };
}

/** Whether the combinations, each good for a part of what the unknowns allow, cover all of it. */
function coverTogether(tried: readonly Combined[]): boolean {
  const unknowns = new Map<string, Unknown>();
  for (const { members } of tried) {
    for (const member of members) {
      if ('empty' in member) return false;
      for (const [key, unknown] of member.unknowns) unknowns.set(key, unknown);
    }
  }
  const possible = tried.filter(({ outcome }) => outcome === 'open');
  const asked = possible.map(({ reduced }) => reduced);
  if (asked.some((polynomials) => polynomials === null)) return false;
  const line = commonLine(asked.flatMap((polynomials) => polynomials ?? []));
  if (line === null) return false;
  const domains = domainsOf(unknowns);
  const stretches = asked.flatMap((polynomials) => stretchOf(polynomials ?? [], line) ?? []);
  return covers(stretches, rangeOf(line, domains));
}

/** The moving part of all the polynomials, scaled alike, if they share it; null otherwise. */
function commonLine(polynomials: readonly Polynomial[]): Polynomial | null {
  let line: Polynomial | null = null;
  for (const polynomial of polynomials) {
    const moving = polynomial.filter(({ powers }) => powers.size > 0);
    const [first] = moving;
    if (first === undefined) continue;
    const unit = timesNumber(moving, divide(ONE, first.coefficient));
    if (line !== null && signatureOf(line) !== signatureOf(unit)) return null;
    line = unit;
  }
  return line;
}

/** Where along the line all the polynomials are >= 0; null for nowhere. */
function stretchOf(polynomials: readonly Polynomial[], line: Polynomial): Interval | null {
  let stretch: Interval | null = interval(null, null);
  for (const polynomial of polynomials) {
    const rest = constantOf(polynomial);
    const [moving] = polynomial.filter(({ powers }) => powers.size > 0);
    if (moving === undefined) {
      if (sign(rest) < 0) return null;
      continue;
    }
    const lead = line[0]?.coefficient ?? ONE;
    const slope = divide(moving.coefficient, lead);
    const edge = divide(negate(rest), slope);
    const half = sign(slope) > 0 ? interval(edge, null) : interval(null, edge);
    stretch = stretch === null ? null : intersect(stretch, half);
  }
  return stretch;
}

function constantOf(polynomial: Polynomial): Rational {
  return polynomial.find(({ powers }) => powers.size === 0)?.coefficient ?? ZERO;
}

/** Whether closed stretches, laid side by side, contain the whole range. */
function covers(stretches: readonly Interval[], range: Interval): boolean {
  const sorted = [...stretches].sort((a, b) => orderLow(a.low, b.low));
  let reached: Interval | null = null;
  for (const stretch of sorted) {
    if (reached === null) {
      reached = stretch;
      continue;
    }
    if (reached.high === null) break;
    if (stretch.low !== null && compare(stretch.low, reached.high) > 0) {
      if (range.low === null || compare(range.low, reached.high) <= 0) break;
      reached = stretch;
      continue;
    }
    if (stretch.high === null || compare(stretch.high, reached.high) > 0) {
      reached = interval(reached.low, stretch.high);
    }
  }
  return reached !== null && isWithin(range, reached);
}

function orderLow(a: Rational | null, b: Rational | null): number {
  if (a === null || b === null) return a === b ? 0 : a === null ? -1 : 1;
  return compare(a, b);
}
