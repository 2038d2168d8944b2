/**
 * Decides prepared checks, alone or together: for every value of the unknowns, does some value
 * of the choices satisfy all requirements?
 *
 *   holds:  for all u there is c: every requirement(u, c) >= 0
 *   fails:  for no u is there a c
 *   open:   otherwise, or where it cannot be told
 *
 * Choices are eliminated exactly (Fourier-Motzkin: each lower bound is paired with each upper
 * bound), which leaves requirements on the unknowns alone. `holds` asks each of those for its
 * worst value; `fails` asks whether one is never met or, where all are linear, whether the
 * unknowns have no common solution at all. Comparisons of codes (`codes.ts`) may clash too.
 */

import { type Interval, intersect, interval, isPoint } from '../quantity/interval.js';
import { divide, isZero, negate, ONE, type Rational, sign } from '../quantity/rational.js';
import { codeClash } from './codes.js';
import { type Decided, domainsOf, type Prepared, type Requirement } from './evaluate.js';
import type { Unknown } from './evaluator.js';
import {
  constant,
  type Domains,
  linearIn,
  minus,
  type Polynomial,
  plus,
  rangeOf,
  times,
  timesNumber,
  unknownOf,
  unknownsOf,
  withoutPositiveFactors,
} from './polynomial.js';
import { allOf, type Outcome } from './state.js';

/** One requirement and the checks (by index) that it comes from; none for a choice's own ends. */
interface Inequality {
  readonly polynomial: Polynomial;
  readonly reason: string | null;
  readonly from: readonly number[];
}

export interface Decision {
  readonly outcome: Outcome;
  /** The reason code of the requirement that fails first or stays open first. */
  readonly reason: string | null;
  /** The checks (by index) whose requirements decide; two that bound an empty range. */
  readonly from: readonly number[];
  /** For each choice, what may be set or ordered whatever the unknowns are; null if nothing. */
  readonly orders: ReadonlyMap<string, Interval | null>;
  /** What is asked of the unknowns once the choices are eliminated; null where worlds differ. */
  readonly reduced: readonly Polynomial[] | null;
}

const NO_ORDERS: ReadonlyMap<string, null> = new Map();
const HOLDS: Decision = {
  outcome: 'holds',
  reason: null,
  from: [],
  orders: NO_ORDERS,
  reduced: [],
};

/** More inequalities than this are not carried: the answer stays open instead. */
const MOST_INEQUALITIES = 600;

/** Decides checks that stand in one configuration and share one set of unknowns. */
export function decide(prepared: readonly Prepared[]): Decision {
  const unknowns = new Map<string, Unknown>();
  for (const { unknowns: own } of prepared) for (const [key, it] of own) unknowns.set(key, it);
  const domains = domainsOf(unknowns);
  const decisions = worldsOf(prepared).map((world) => decideWorld(world, unknowns, domains));
  const [first, ...others] = decisions;
  if (first === undefined) return HOLDS;
  if (others.length === 0) return first;
  if (others.every((decision) => decision.outcome === first.outcome)) {
    return { ...first, reduced: null };
  }
  const open = decisions.find((decision) => decision.outcome !== 'holds') ?? first;
  return { ...open, outcome: 'open', reduced: null };
}

/** The possible combinations of worlds; each check's open or settled codes come along. */
function worldsOf(prepared: readonly Prepared[]): (readonly PreparedWorld[])[] {
  let combinations: PreparedWorld[][] = [[]];
  for (const [index, { worlds }] of prepared.entries()) {
    combinations = combinations.flatMap((chosen) =>
      worlds.map((world) => {
        const requirements = 'decided' in world ? [] : world.requirements;
        const settled = 'decided' in world ? world : HELD;
        return [...chosen, { ...settled, index, requirements }];
      }),
    );
  }
  return combinations;
}

const HELD: Decided = { decided: 'holds', reason: 'not-equal' };
interface PreparedWorld extends Decided {
  readonly index: number;
  readonly requirements: readonly Requirement[];
}

function decideWorld(
  world: readonly PreparedWorld[],
  unknowns: ReadonlyMap<string, Unknown>,
  domains: Domains,
): Decision {
  const broken = world.find(({ decided }) => decided === 'fails');
  const from = broken === undefined ? codeClash(world.map(({ codes }) => codes)) : [broken.index];
  if (from !== null) {
    const reason = broken?.reason ?? 'not-equal';
    return { outcome: 'fails', reason, from, orders: NO_ORDERS, reduced: null };
  }
  const inequalities = world.flatMap(({ index, requirements }) =>
    requirements.map(({ polynomial, reason }) => ({ polynomial, reason, from: [index] })),
  );
  const decision = decideInequalities(inequalities, unknowns, domains);
  const unsure = world.find(({ decided }) => decided === 'open');
  if (unsure === undefined || decision.outcome !== 'holds') return decision;
  const { index } = unsure;
  return { ...decision, outcome: 'open', reason: 'not-recorded', from: [index], reduced: null };
}

function decideInequalities(
  inequalities: readonly Inequality[],
  unknowns: ReadonlyMap<string, Unknown>,
  domains: Domains,
): Decision {
  const choices = choicesIn(inequalities, unknowns);
  const reduced = eliminateAll(withEnds(inequalities, choices), choices, domains);
  if (reduced === null) {
    const [first] = inequalities;
    const from = first?.from ?? [];
    return { outcome: 'open', reason: 'not-decided', from, orders: NO_ORDERS, reduced: null };
  }
  const outcomes = reduced.map((inequality) => outcomeOf(inequality.polynomial, domains));
  const outcome = allOf(outcomes);
  const orders = new Map<string, Interval | null>();
  if (outcome !== 'fails') {
    for (const choice of choices) {
      orders.set(choice.key, orderOf(choice, choices, inequalities, domains));
    }
  }
  const polynomials = reduced.map(({ polynomial }) => polynomial);
  if (outcome === 'holds') return { ...HOLDS, orders, reduced: polynomials };
  if (outcome === 'open') {
    const clash = infeasible(reduced, unknowns, domains);
    if (clash !== null) {
      return { outcome: 'fails', ...clash, orders: NO_ORDERS, reduced: polynomials };
    }
  }
  const index = outcomes.indexOf(outcome);
  const blamed = reduced[index];
  const from = blamed?.from ?? [];
  return { outcome, reason: blamed?.reason ?? null, from, orders, reduced: polynomials };
}

function choicesIn(
  inequalities: readonly Inequality[],
  unknowns: ReadonlyMap<string, Unknown>,
): Unknown[] {
  const keys = new Set(inequalities.flatMap(({ polynomial }) => unknownsOf(polynomial)));
  return [...keys]
    .sort()
    .flatMap((key) => unknowns.get(key) ?? [])
    .filter(({ isChoice }) => isChoice);
}

function withEnds(inequalities: readonly Inequality[], bounded: readonly Unknown[]): Inequality[] {
  return [...inequalities, ...bounded.flatMap(endsOf)];
}

/** low <= x and x <= high, as two inequalities that no check is blamed for. */
function endsOf({ key, domain }: Unknown): Inequality[] {
  const x = unknownOf(key);
  const ends: Inequality[] = [];
  if (domain.low !== null) {
    const polynomial = minus(x, constant(domain.low));
    ends.push({ polynomial, reason: null, from: [] });
  }
  if (domain.high !== null) {
    const polynomial = minus(constant(domain.high), x);
    ends.push({ polynomial, reason: null, from: [] });
  }
  return ends;
}

function outcomeOf(polynomial: Polynomial, domains: Domains): Outcome {
  const range = rangeOf(withoutPositiveFactors(polynomial, domains), domains);
  if (range.low !== null && sign(range.low) >= 0) return 'holds';
  if (range.high === null) return 'open';
  const top = sign(range.high);
  return top < 0 || (top === 0 && range.highOpen) ? 'fails' : 'open';
}

/** Removes all choices; null where one stands in no linear, signed way, or there are too many. */
function eliminateAll(
  inequalities: readonly Inequality[],
  choices: readonly Unknown[],
  domains: Domains,
): Inequality[] | null {
  let left: Inequality[] | null = [...inequalities];
  for (const { key } of choices) {
    if (left === null) return null;
    left = eliminate(left, key, domains);
  }
  return left;
}

function eliminate(
  inequalities: readonly Inequality[],
  key: string,
  domains: Domains,
): Inequality[] | null {
  const free: Inequality[] = [];
  const lower: (Inequality & Line)[] = [];
  const upper: (Inequality & Line)[] = [];
  for (const inequality of inequalities) {
    const line = linearIn(inequality.polynomial, key);
    if (line === null) return null;
    if (line.slope.length === 0) {
      free.push(inequality);
      continue;
    }
    const slope = rangeOf(line.slope, domains);
    if (slope.low !== null && positive(slope.low, slope.lowOpen)) {
      lower.push({ ...inequality, ...line });
    } else if (slope.high !== null && positive(negate(slope.high), slope.highOpen)) {
      upper.push({ ...inequality, ...line });
    } else return null;
  }
  if (lower.length * upper.length + free.length > MOST_INEQUALITIES) return null;
  return [...free, ...lower.flatMap((low) => upper.map((high) => paired(low, high)))];
}

interface Line {
  readonly slope: Polynomial;
  readonly rest: Polynomial;
}

function positive(value: Rational, isOpen: boolean): boolean {
  return sign(value) > 0 || (isOpen && isZero(value));
}

/** From a x + b >= 0 (a > 0) and -d x + e >= 0 (d > 0): some x exists where a e + d b >= 0. */
function paired(low: Inequality & Line, high: Inequality & Line): Inequality {
  const d = timesNumber(high.slope, negate(ONE));
  const polynomial = plus(times(low.slope, high.rest), times(d, low.rest));
  const reason = low.from.length > 0 ? low.reason : high.reason;
  const from = [...new Set([...low.from, ...high.from])].sort((a, b) => a - b);
  return { polynomial, reason, from };
}

/** The reason and checks of a contradiction among linear requirements, or null if none shows. */
function infeasible(
  inequalities: readonly Inequality[],
  unknowns: ReadonlyMap<string, Unknown>,
  domains: Domains,
): { reason: string | null; from: readonly number[] } | null {
  const keys = new Set(inequalities.flatMap(({ polynomial }) => unknownsOf(polynomial)));
  if (keys.size < 2 && inequalities.length < 2) return null;
  const involved = [...keys].sort().flatMap((key) => unknowns.get(key) ?? []);
  const left = eliminateAll(withEnds(inequalities, involved), involved, domains);
  const clash = left?.find(({ polynomial }) => outcomeOf(polynomial, domains) === 'fails');
  return clash === undefined ? null : { reason: clash.reason, from: clash.from };
}

/** The values of one choice that serve whatever the unknowns are. */
function orderOf(
  choice: Unknown,
  choices: readonly Unknown[],
  inequalities: readonly Inequality[],
  domains: Domains,
): Interval | null {
  const others = choices.filter(({ key }) => key !== choice.key);
  const projected = eliminateAll(withEnds(inequalities, others), others, domains);
  if (projected === null) return null;
  let order: Interval | null = choice.domain;
  for (const { polynomial } of projected) {
    const line = linearIn(polynomial, choice.key);
    if (line === null) return null;
    const bound = boundOf(line, domains);
    if (bound === 'none') continue;
    if (bound === null || order === null) return null;
    order = intersect(order, bound);
  }
  return order;
}

/** The x for which slope x + rest >= 0 whatever the unknowns: a half line, or none at all. */
function boundOf(line: Line, domains: Domains): Interval | 'none' | null {
  if (line.slope.length === 0) return 'none';
  const slope = rangeOf(line.slope, domains);
  if (!isPoint(slope) || slope.low === null) return null;
  const edge = rangeOf(timesNumber(line.rest, divide(negate(ONE), slope.low)), domains);
  if (sign(slope.low) > 0) return edge.high === null ? null : interval(edge.high, null);
  return edge.low === null ? null : interval(null, edge.low);
}
