/**
 * The fewest questions about a vehicle that settle what comes of a part on it, where it is known
 * only in part and the vehicles that it could be come to different things.
 *
 * Two vehicles that come to different things are told apart for certain by a question to which no
 * answer is true of both; where there is none, by one that some answer tells them apart by. What
 * nobody recorded could be anything (see `candidate.ts`), so it tells nothing apart for certain.
 */

import { type AskContext, type AskField, asksFor } from './ask.js';
import type { Candidate } from './candidate.js';
import { type Question, questionsFor } from './question.js';

/** A vehicle that is meant, perhaps, and what comes of the part on it. */
export interface Settled<Outcome> {
  readonly candidate: Candidate;
  readonly outcome: Outcome;
}

export interface SettlingAsk<Outcome> {
  readonly field: AskField;
  /** The fact that is asked for; null where it is another field. */
  readonly fact: string | null;
  readonly values: readonly SettlingValue<Outcome>[];
}

export interface SettlingValue<Outcome> {
  /** As a filter takes it. */
  readonly value: string;
  /** What the vehicles come to that this answer leaves, one for each. */
  readonly outcomes: readonly Outcome[];
}

export interface Settling<Outcome> {
  /** The best first; none where all come to the same, or nothing tells them apart. */
  readonly asks: readonly SettlingAsk<Outcome>[];
  /** Whatever the answers to all of them are, one outcome is left. */
  readonly isCertain: boolean;
}

/** So many sorts of vehicles are told apart exactly; of more, the best question alone is found. */
const MOST_SORTS = 200;

export function settlingAsks<Outcome>(
  all: readonly Settled<Outcome>[],
  context: AskContext,
): Settling<Outcome> {
  const questions = questionsFor(
    all.map(({ candidate }) => candidate),
    context,
  );
  const sorts = sortsOf(all, questions);
  const pairs = sorts.length > MOST_SORTS ? null : pairsOf(sorts);
  const chosen = pairs === null ? bestAlone(sorts, questions) : fewest(pairs, questions.length);
  const asked = chosen.flatMap((index) => questions[index] ?? []);
  const ranked = asked
    .map((question) => ({ question, left: undecided(question, all) }))
    .sort((a, b) => a.left - b.left);
  return {
    asks: ranked.map(({ question }) => askOf(question, all)),
    isCertain: pairs?.every(({ isCertain }) => isCertain) ?? false,
  };
}

/** Where nobody is asked one by one: what narrows the list, and nothing is known of outcomes. */
export function narrowingAsks(
  candidates: readonly Candidate[],
  context: AskContext,
): SettlingAsk<null>[] {
  return asksFor(candidates, context).map(({ values, ...ask }) => {
    return {
      ...ask,
      values: values.map(({ value, count }) => {
        return { value, outcomes: Array.from({ length: count }, () => null) };
      }),
    };
  });
}

/** Vehicles of which the same is true, as far as it is asked, and that come to the same. */
interface Sort<Outcome> {
  readonly outcome: Outcome;
  /** For each question, which of its answers are true of them. */
  readonly answers: readonly ReadonlySet<number>[];
}

function sortsOf<Outcome>(
  all: readonly Settled<Outcome>[],
  questions: readonly Question[],
): Sort<Outcome>[] {
  const found = new Map<string, Sort<Outcome>>();
  const numbers = new Map(all.map(({ outcome }, index) => [outcome, index]));
  for (const [index, { outcome }] of all.entries()) {
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
interface Pair {
  readonly by: readonly number[];
  readonly isCertain: boolean;
}

function pairsOf<Outcome>(sorts: readonly Sort<Outcome>[]): Pair[] {
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
function fewest(pairs: readonly Pair[], count: number): readonly number[] {
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
function bestAlone<Outcome>(
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
function undecided<Outcome>({ answers }: Question, all: readonly Settled<Outcome>[]): number {
  return meanUndecided(
    answers.map(({ members }) => [...members].flatMap((index) => all[index]?.outcome ?? [])),
  );
}

function meanUndecided(left: readonly (readonly unknown[])[]): number {
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

function askOf<Outcome>(
  { field, fact, answers }: Question,
  all: readonly Settled<Outcome>[],
): SettlingAsk<Outcome> {
  const values = answers
    .filter(({ members }) => members.size > 0)
    .map(({ value, members }) => {
      return {
        value,
        outcomes: [...members].flatMap((index) =>
          all[index] === undefined ? [] : [all[index].outcome],
        ),
      };
    });
  return { field, fact, values };
}
