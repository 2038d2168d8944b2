/**
 * What can come out when a value is counted, read off or measured, and which parts each outcome
 * leaves: recorded values, gathered as far as a reading tells them apart.
 *
 * Values that overlap, or lie so near to each other that the finest tool that reads such values
 * may read one for the other, are one outcome. A part of which the value is not recorded is left
 * whatever comes out.
 */

import type { Part } from '../catalogue/catalogue.js';
import { hull, type Interval } from '../quantity/interval.js';
import {
  compare,
  multiply,
  type Rational,
  rational,
  sign,
  subtract,
} from '../quantity/rational.js';
import type { Item } from './compared.js';

export interface Outcome {
  /** Id of a role or hand, a number, a code; null for a value, and where there is no such face. */
  readonly word: string | null;
  /** All values that come out so. */
  readonly interval: Interval | null;
  /** The parts that are left then, in the order in which they are given. */
  readonly parts: readonly Part[];
}

/** What a part has where a value is asked for. */
export interface Has {
  readonly part: Part;
  readonly items: readonly Item[];
  /** It may have any other value as well. */
  readonly isOpen: boolean;
  /** Whether it has the face at all; `there` for a value of the part itself. */
  readonly face: 'there' | 'absent' | 'not-recorded';
}

export interface Outcomes {
  readonly outcomes: readonly Outcome[];
  /** The least distance between values of two outcomes; null where there are no two. */
  readonly gap: Rational | null;
}

/** @param half how far a reading may be off to either side; null where nothing is measured. */
export function outcomesOf(has: readonly Has[], half: Rational | null): Outcomes {
  const { groups, gap } = grouped(has, half);
  const those = (isLeft: (one: Has) => boolean) => has.filter(isLeft).map(({ part }) => part);
  const outcomes = groups.map(({ word, interval, parts }): Outcome => {
    return { word, interval, parts: those(({ part, isOpen }) => isOpen || parts.has(part)) };
  });
  if (has.some(({ face }) => face === 'absent')) {
    const parts = those(({ face }) => face !== 'there');
    outcomes.push({ word: null, interval: null, parts });
  }
  return { outcomes, gap };
}

/** How many parts are left on average, where each of them is as likely as the next. */
export function meanLeft(outcomes: readonly Outcome[]): number {
  const sum = outcomes.reduce((all, { parts }) => all + parts.length, 0);
  const squares = outcomes.reduce((all, { parts }) => all + parts.length ** 2, 0);
  return sum === 0 ? 0 : squares / sum;
}

/** Whether one outcome leaves other parts than another, or fewer than there are. */
export function tells(outcomes: readonly Outcome[], total: number): boolean {
  return outcomes.length > 1 && outcomes.some(({ parts }) => parts.length < total);
}

interface Group {
  readonly word: string | null;
  interval: Interval | null;
  readonly parts: Set<Part>;
}

/** Numbers from below, then words in the order of the alphabet. */
function grouped(
  has: readonly Has[],
  half: Rational | null,
): { readonly groups: readonly Group[]; readonly gap: Rational | null } {
  const words = new Map<string, Group>();
  const numbers: { readonly interval: Interval; readonly part: Part }[] = [];
  for (const { part, items } of has) {
    for (const { interval, code } of items) {
      if (interval !== null) numbers.push({ interval, part });
      if (code === null) continue;
      const known = words.get(code) ?? { word: code, interval: null, parts: new Set() };
      known.parts.add(part);
      words.set(code, known);
    }
  }
  numbers.sort((a, b) => compareLows(a.interval, b.interval));
  const groups: Group[] = [];
  let gap: Rational | null = null;
  for (const { interval, part } of numbers) {
    const last = groups.at(-1);
    const apart = last?.interval == null ? null : gapBetween(last.interval, interval);
    if (last?.interval != null && !isToldApart(apart, half)) {
      last.interval = hull(last.interval, interval);
      last.parts.add(part);
      continue;
    }
    if (apart !== null && (gap === null || compare(apart, gap) < 0)) gap = apart;
    groups.push({ word: null, interval, parts: new Set([part]) });
  }
  const named = [...words.values()].sort((a, b) => ((a.word ?? '') < (b.word ?? '') ? -1 : 1));
  return { groups: [...groups, ...named], gap };
}

const TWO = rational(2);

/** Whether a reading of the one is no reading of the other, wherever it may be off. */
function isToldApart(apart: Rational | null, half: Rational | null): boolean {
  if (apart === null) return false;
  return half === null || compare(apart, multiply(half, TWO)) > 0;
}

function compareLows(a: Interval, b: Interval): number {
  if (a.low === null || b.low === null) return Number(a.low !== null) - Number(b.low !== null);
  return compare(a.low, b.low);
}

/** How far the second begins above the end of the first; null where they overlap or touch. */
function gapBetween({ high }: Interval, { low }: Interval): Rational | null {
  if (high === null || low === null) return null;
  const apart = subtract(low, high);
  return sign(apart) > 0 ? apart : null;
}
