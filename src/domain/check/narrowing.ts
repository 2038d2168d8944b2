/**
 * What to measure: the smallest set of facts that, known exactly, would decide an open check, and
 * how finely each has to be known.
 *
 * A fact decides if the check is decided at its best estimate, the middle of what is recorded,
 * whatever the others are. One without an estimate decides if it has a value for which the check
 * holds; that is the question that a choice answers, so the fact is supposed to be one. How
 * finely: as far as the best estimate lies from the edge of the values that decide. Near the
 * edge no tolerance helps for certain; then none is named, and the check may stay open.
 */

import { type Interval, interval, isPoint, middle, point, width } from '../quantity/interval.js';
import type { PlanePoint } from '../quantity/plane-point.js';
import {
  add,
  compare,
  divide,
  fraction,
  larger,
  multiply,
  type Rational,
  rational,
  sign,
  smaller,
  subtract,
  ZERO,
} from '../quantity/rational.js';
import { coincidence, knownTo } from './coincide.js';
import { type Prepared, remainingUnknowns } from './evaluate.js';
import type { Setting, Unknown } from './evaluator.js';
import type { Reading } from './reading.js';
import { decidingReadings, isUnrecorded } from './result.js';
import { type Basis, gradeOf } from './state.js';
import { type Combined, decideTogether, type Member } from './together.js';

export type Purpose = 'to-decide' | 'to-order' | 'to-confirm';

/** What may be set counts where only weak evidence says that it may. */
type Fact = Exclude<Reading, { form: 'empty' | 'several' | 'choice' }>;

export interface NarrowingFact {
  readonly reading: Fact;
  readonly purpose: Purpose;
  /** Half-width in the base unit at which the best estimate decides; null if none is certain. */
  readonly needed: Rational | null;
}

/** Sets of more facts than this are not searched for the smallest: all are named. */
const MOST_FACTS = 6;

const decides = (basis: Basis) => gradeOf(basis) === 'decides';

/** The facts that would decide members judged together, where they are open. */
export function narrow(members: readonly Member[], setting: Setting): NarrowingFact[] {
  const trusting = {
    ...setting,
    trusts: (basis: Basis) => setting.trusts(basis) && decides(basis),
  };
  const combined = decideTogether(members, trusting);
  if (combined.outcome !== 'open') return [];
  const prepared = preparedOf(combined);
  const words = [...wordFacts(prepared), ...prepared.flatMap(pointFacts)];
  const unknowns = openUnknowns(prepared);
  const chosen = smallestSet(members, trusting, unknowns, words.length > 0);
  const fixed = { ...trusting, picks: combined.picks };
  const numbers = chosen.flatMap((unknown) =>
    readingsBehind(unknown).map((reading) => {
      const purpose: Purpose = isWeak(reading) ? 'to-confirm' : 'to-decide';
      // That something may be set is so or is not.
      const needed = reading.form === 'range' ? null : neededFor(unknown, chosen, members, fixed);
      return { reading, purpose, needed };
    }),
  );
  return unique([...words, ...numbers]);
}

/**
 * What a person would measure to know a number: the value itself; of the least or greatest of
 * several, those that nobody recorded or only weak evidence has, and if there are none, all.
 */
function readingsBehind({ readings }: Unknown): Fact[] {
  const recorded = readings.flatMap((one): readonly Reading[] => {
    return one.form === 'number' ? (one.behind ?? [one]) : [one];
  });
  const facts = recorded.filter(
    (one): one is Fact =>
      one.form === 'number' ||
      one.form === 'list' ||
      one.form === 'code' ||
      (one.form === 'range' && isWeak(one)),
  );
  const distinct = facts.filter((one, index) => {
    return facts.findIndex(({ key }) => key === one.key) === index;
  });
  const doubtful = distinct.filter((one) => isUnrecorded(one) || isWeak(one));
  return doubtful.length > 0 ? doubtful : distinct;
}

/** Recorded, on evidence that may not decide. */
function isWeak(reading: Fact): boolean {
  return reading.basis !== null && !decides(reading.basis) && !isUnrecorded(reading);
}

/** The facts that would tell what to order, where a choice suits but depends on them. */
export function narrowToOrder(members: readonly Member[], setting: Setting): NarrowingFact[] {
  const combined = decideTogether(members, setting);
  const isMissing = [...combined.orders.values()].some((order) => order === null);
  if (combined.outcome !== 'holds' || !isMissing) return [];
  const fixed = { ...setting, picks: combined.picks };
  const unknowns = openUnknowns(preparedOf(combined));
  const needed = ladder(unknowns, (narrowed) => {
    const { orders } = decideTogether(members, { ...fixed, narrowed });
    return [...orders.values()].every((order) => order !== null);
  });
  return unique(
    unknowns.flatMap((unknown) =>
      readingsBehind(unknown).map((reading) => ({ reading, purpose: 'to-order' as const, needed })),
    ),
  );
}

function preparedOf({ members }: Combined): Prepared[] {
  return members.filter((member): member is Prepared => !('empty' in member));
}

/** Codes that nobody recorded, or that only weak evidence has: they are read, not measured. */
function wordFacts(prepared: readonly Prepared[]): NarrowingFact[] {
  return prepared.flatMap(decidingReadings).flatMap((reading) => {
    if (reading.form !== 'code' && reading.form !== 'list' && reading.form !== 'points') return [];
    const isMissing = isUnrecorded(reading);
    if (!isMissing && !isWeak(reading)) return [];
    return [{ reading, purpose: isMissing ? 'to-decide' : 'to-confirm', needed: null }];
  });
}

/** Points that are recorded on both sides, too coarsely to tell: how finely would do? */
function pointFacts(prepared: Prepared): NarrowingFact[] {
  const { points, left, right } = prepared;
  if (points === null || left.is !== 'points' || right?.is !== 'points') return [];
  const [a, b] = [left.reading.points, right.reading.points];
  const isOpen = prepared.worlds.some((world) => 'decided' in world && world.decided === 'open');
  if (a === null || b === null || !isOpen) return [];
  const needed =
    STEPS.find((step) => {
      return coincidence(knownTo(a, step), knownTo(b, step), points.tolerance).outcome !== 'open';
    }) ?? null;
  const sides = [left, right].map(({ reading }) => ({ reading, known: coarsest(reading.points) }));
  const [one, other] = sides.map(({ known }) => known);
  if (one === undefined || other === undefined) return [];
  // Where no tolerance is certain, what is known least is measured again.
  const enough = needed ?? smaller(one, other);
  const isBoth = compare(one, other) === 0;
  return sides
    .filter(({ known }) => compare(known, enough) > 0 || (needed === null && isBoth))
    .map(({ reading }) => ({ reading, purpose: 'to-decide' as const, needed }));
}

/** Half the widest range of a coordinate. */
function coarsest(points: readonly PlanePoint[] | null): Rational {
  const widths = (points ?? []).flatMap(({ x, y }) => [width(x) ?? ZERO, width(y) ?? ZERO]);
  return divide(widths.reduce(larger, ZERO), rational(2));
}

function openUnknowns(prepared: readonly Prepared[]): Unknown[] {
  const found = new Map<string, Unknown>();
  for (const unknown of prepared.flatMap(remainingUnknowns)) {
    if (!unknown.isChoice && !isPoint(unknown.domain)) found.set(unknown.key, unknown);
  }
  return [...found.values()];
}

function unique(facts: readonly NarrowingFact[]): NarrowingFact[] {
  const seen = new Map<string, NarrowingFact>();
  for (const fact of facts) {
    const key = JSON.stringify(fact.reading.address);
    if (!seen.has(key)) seen.set(key, fact);
  }
  return [...seen.values()];
}

/** The fewest unknowns that decide, the coarsest among equals; all if none do. */
function smallestSet(
  members: readonly Member[],
  setting: Setting,
  unknowns: readonly Unknown[],
  hasWords: boolean,
): readonly Unknown[] {
  if (unknowns.length > MOST_FACTS) return unknowns;
  const coarsest = unknowns.toSorted(byWidth);
  for (let size = 1; size < unknowns.length; size += 1) {
    for (const set of subsets(coarsest, size)) {
      if (!isEnough(set, members, setting, hasWords)) continue;
      return unknowns.filter((unknown) => set.includes(unknown));
    }
  }
  return unknowns;
}

/** What is known least comes first: there most is won by measuring again. */
function byWidth(a: Unknown, b: Unknown): number {
  const [wide, other] = [width(a.domain), width(b.domain)];
  if (wide === null || other === null) return Number(wide !== null) - Number(other !== null);
  return compare(other, wide);
}

/** Whether the check is decided once these are known: at the best estimate, or at some value. */
function isEnough(
  set: readonly Unknown[],
  members: readonly Member[],
  setting: Setting,
  hasWords: boolean,
): boolean {
  const narrowed = new Map<string, Interval>();
  const supposed = new Set<string>();
  for (const { key, domain } of set) {
    const estimate = middle(domain);
    if (estimate === null || hasWords) supposed.add(key);
    else narrowed.set(key, point(estimate));
  }
  const { outcome, orders } = decideTogether(members, { ...setting, narrowed, supposed });
  const isServed = [...supposed].every((key) => (orders.get(key) ?? null) !== null);
  if (outcome === 'holds') return isServed;
  // What stays open for a word that nobody recorded is not open for want of a number.
  if (outcome === 'open') return hasWords && isServed;
  return supposed.size === 0;
}

function subsets<Item>(items: readonly Item[], size: number): Item[][] {
  if (size === 0) return [[]];
  return items.flatMap((item, index) =>
    subsets(items.slice(index + 1), size - 1).map((rest) => [item, ...rest]),
  );
}

function neededFor(
  unknown: Unknown,
  set: readonly Unknown[],
  members: readonly Member[],
  setting: Setting,
): Rational | null {
  if (set.length === 1) {
    const supposed = new Set([unknown.key]);
    const order = decideTogether(members, { ...setting, supposed }).orders.get(unknown.key);
    const exact = order === undefined || order === null ? null : slack(unknown.domain, order);
    if (exact !== null && sign(exact) > 0) return niceBelow(exact);
  }
  return ladder(set, (narrowed) => {
    return decideTogether(members, { ...setting, narrowed }).outcome !== 'open';
  });
}

/** How far the best estimate lies inside the values that decide; half of those without one. */
function slack(domain: Interval, order: Interval): Rational | null {
  const estimate = middle(domain);
  if (estimate === null) {
    const whole = width(order);
    return whole === null ? null : divide(whole, rational(2));
  }
  const below = order.low === null ? null : subtract(estimate, order.low);
  const above = order.high === null ? null : subtract(order.high, estimate);
  if (below === null) return above;
  return above === null ? below : smaller(below, above);
}

/** The coarsest of 1, 2, 5, 10 … to which all must be known so that the test passes, or null. */
function ladder(
  unknowns: readonly Unknown[],
  test: (narrowed: ReadonlyMap<string, Interval>) => boolean,
): Rational | null {
  const estimates = unknowns.map(({ key, domain }) => [key, middle(domain)] as const);
  for (const step of STEPS) {
    const narrowed = new Map<string, Interval>();
    for (const [key, estimate] of estimates) {
      if (estimate === null) return null;
      narrowed.set(key, interval(subtract(estimate, step), add(estimate, step)));
    }
    if (test(narrowed)) return step;
  }
  return null;
}

/** 100, 50, 20, 10 … 0.001: from a tape across a frame to a comparator. */
const STEPS: readonly Rational[] = [2, 1, 0, -1, -2, -3].flatMap((exponent) => {
  const unit =
    exponent >= 0 ? rational(10n ** BigInt(exponent)) : fraction(1n, 10n ** BigInt(-exponent));
  return [multiply(unit, rational(5)), multiply(unit, rational(2)), unit];
});

/** The largest step that is not larger; null where not even the finest is. */
function niceBelow(exact: Rational): Rational | null {
  return STEPS.find((step) => compare(step, exact) <= 0) ?? null;
}
