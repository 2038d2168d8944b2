/**
 * Which questions tell apart vehicles that come to different things, and the fewest that do so for
 * all of them.
 */

import type { Question } from './question.js';

/** Vehicles of which the same is true, as far as it is asked, and that come to the same. */
export interface Sort<Outcome> {
  readonly outcome: Outcome;
  /** For each question, which of its answers are true of them. */
  readonly answers: readonly ReadonlySet<number>[];
}

/** @param all each with its number, as the questions have it. */
export function sortsOf<Outcome>(
  all: readonly { readonly index: number; readonly outcome: Outcome }[],
  questions: readonly Question[],
): Sort<Outcome>[] {
  const found = new Map<string, Sort<Outcome>>();
  const numbers = new Map(all.map(({ outcome, index }) => [outcome, index]));
  for (const { index, outcome } of all) {
    const answers = questions.map(
      (question) =>
        new Set(question.answers.flatMap(({ members }, at) => (members.has(index) ? [at] : []))),
    );
    const key = `${numbers.get(outcome) ?? 0} ${answers.map((own) => [...own].join()).join(' ')}`;
    if (!found.has(key)) found.set(key, { outcome, answers });
  }
  return [...found.values()];
}

/** Two sorts that come to different things, and the questions that tell them apart. */
export interface Pair {
  readonly by: readonly number[];
  readonly isCertain: boolean;
}

export function pairsOf<Outcome>(sorts: readonly Sort<Outcome>[]): Pair[] {
  return sorts.flatMap((a, at) =>
    sorts.slice(at + 1).flatMap((b): Pair[] => {
      if (a.outcome === b.outcome) return [];
      const certain = a.answers.flatMap((own, index) =>
        areDisjoint(own, b.answers[index] ?? NOBODY) ? [index] : [],
      );
      if (certain.length > 0) return [{ by: certain, isCertain: true }];
      const perhaps = a.answers.flatMap((own, index) =>
        !areSame(own, b.answers[index] ?? NOBODY) ? [index] : [],
      );
      return [{ by: perhaps, isCertain: false }];
    }),
  );
}

const NOBODY: ReadonlySet<number> = new Set();

function areDisjoint(a: ReadonlySet<number>, b: ReadonlySet<number>): boolean {
  return ![...a].some((one) => b.has(one));
}

function areSame(a: ReadonlySet<number>, b: ReadonlySet<number>): boolean {
  return a.size === b.size && [...a].every((one) => b.has(one));
}

/** A smallest set of questions with one for each pair that any tells apart; the first of equals. */
export function fewest(pairs: readonly Pair[], count: number): readonly number[] {
  const told = pairs.filter(({ by }) => by.length > 0);
  const needed = told.filter(({ by }) => by.length === 1).flatMap(({ by }) => by);
  const fixed = [...new Set(needed)].sort((a, b) => a - b);
  const open = told.filter(({ by }) => !by.some((one) => fixed.includes(one)));
  for (let size = 0; size <= count; size += 1) {
    const found = hitting(open, size, 0, count);
    if (found !== null) return [...fixed, ...found];
  }
  throw new Error('all questions together tell apart what any of them does');
}

function hitting(
  open: readonly Pair[],
  size: number,
  from: number,
  count: number,
): number[] | null {
  const [first] = open;
  if (first === undefined) return [];
  if (size === 0) return null;
  for (let one = from; one < count; one += 1) {
    const left = open.filter(({ by }) => !by.includes(one));
    if (left.length === open.length) continue;
    const rest = hitting(left, size - 1, one + 1, count);
    if (rest !== null) return [one, ...rest];
  }
  return null;
}

/** Of too many sorts: the question that leaves the fewest undecided. */
export function bestAlone<Outcome>(
  sorts: readonly Sort<Outcome>[],
  questions: readonly Question[],
): readonly number[] {
  const ranked = questions
    .map((question, index) => {
      const own = sorts.map(({ answers, outcome }) => ({ outcome, answers: answers[index] }));
      const left = question.answers.map((_, at) =>
        own.filter(({ answers }) => answers?.has(at) === true).map(({ outcome }) => outcome),
      );
      return { index, left: meanUndecided(left) };
    })
    .sort((a, b) => a.left - b.left);
  return ranked.slice(0, 1).map(({ index }) => index);
}

/** How many pairs that come to different things an answer leaves, on average over the vehicles. */
export function meanUndecided(left: readonly (readonly unknown[])[]): number {
  const sum = left.reduce((all, { length }) => all + length, 0);
  const weighed = left.map((outcomes) => outcomes.length * mixedPairs(outcomes));
  return sum === 0 ? 0 : weighed.reduce((all, one) => all + one, 0) / sum;
}

function mixedPairs(outcomes: readonly unknown[]): number {
  const counts = new Map<unknown, number>();
  for (const one of outcomes) counts.set(one, (counts.get(one) ?? 0) + 1);
  const same = [...counts.values()].reduce((sum, one) => sum + one * one, 0);
  return (outcomes.length * outcomes.length - same) / 2;
}
