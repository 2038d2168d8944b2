/**
 * The fewest questions about a vehicle that settle what comes of a part on it, where it is known
 * only in part and the vehicles that it could be come to different things.
 *
 * Two vehicles that come to different things are told apart for certain by a question to which no
 * answer is true of both; where there is none, by one that some answer tells them apart by. What
 * nobody recorded could be anything (see `candidate.ts`), so it tells nothing apart for certain.
 *
 * An answer that is laid over the vehicles (see `question.ts`) can change what each comes to, so
 * they are asked again with it. First questions are tried that are not laid; then one fact that is,
 * or those that tell the vehicles apart by what is recorded; and only where no fact does it, one
 * place of which it is asked what is fitted there: it is worth asking where, whatever stands there,
 * the vehicles that are left come to the same.
 */

import type { Catalogue } from '../catalogue/catalogue.js';
import { type AskContext, asksFor } from './ask.js';
import type { Candidate } from './candidate.js';
import { bestAlone, fewest, meanUndecided, type Pair, pairsOf, sortsOf } from './pairs.js';
import { placeQuestions, type Question, questionsFor, type SettlingField } from './question.js';

/** A vehicle that is meant, perhaps, and what comes of the part on it. */
export interface Settled<Outcome> {
  readonly candidate: Candidate;
  readonly outcome: Outcome;
}

/** What is told of the vehicle besides: a fact, or what is fitted at a place. */
export interface ToldBesides {
  readonly facts: ReadonlyMap<string, string>;
  readonly fitted: ReadonlyMap<string, string>;
}

export interface SettlingContext<Outcome> extends AskContext {
  readonly catalogue: Catalogue;
  /** Facts that the question itself reads. */
  readonly read: ReadonlySet<string>;
  /** Places of which it is known what is fitted there. */
  readonly places: ReadonlySet<string>;
  /** Places that are asked about before others. */
  readonly near: ReadonlySet<string>;
  /** What a vehicle comes to with this told besides; null where no more may be asked. */
  readonly outcomeWith: (
    candidate: Candidate,
    told: ToldBesides,
  ) => { readonly outcome: Outcome } | null;
  /** What stands for an outcome that nobody asked for. */
  readonly notAsked: Outcome;
  /** Whether more than is known now could make another one of it, for the same vehicle. */
  readonly isOpen: (outcome: Outcome) => boolean;
}

export interface SettlingAsk<Outcome> {
  readonly field: SettlingField;
  /** The fact that is asked for; null where it is another field. */
  readonly fact: string | null;
  /** The place of which it is asked what is fitted there; null where it is another field. */
  readonly position: string | null;
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

/** Where nobody is asked one by one: what narrows the list, and nothing is known of outcomes. */
export function narrowingAsks(
  candidates: readonly Candidate[],
  context: AskContext,
): SettlingAsk<null>[] {
  return asksFor(candidates, context).map(({ field, fact, values }) => {
    const counted = values.map(({ value, count }) => {
      return { value, outcomes: Array.from({ length: count }, () => null) };
    });
    return { field, fact, position: null, values: counted };
  });
}

export function settlingAsks<Outcome>(
  all: readonly Settled<Outcome>[],
  context: SettlingContext<Outcome>,
): Settling<Outcome> {
  return new Settler(all, context).settle();
}

interface Plan {
  readonly questions: readonly Question[];
  readonly isCertain: boolean;
}

class Settler<Outcome> {
  readonly #all: readonly Settled<Outcome>[];
  readonly #candidates: readonly Candidate[];
  readonly #context: SettlingContext<Outcome>;
  readonly #questions: readonly Question[];
  readonly #plain: readonly Question[];

  constructor(all: readonly Settled<Outcome>[], context: SettlingContext<Outcome>) {
    this.#all = all;
    this.#candidates = all.map(({ candidate }) => candidate);
    this.#context = context;
    this.#questions = questionsFor(this.#candidates, context);
    this.#plain = this.#questions.filter(({ isLaid }) => !isLaid);
  }

  settle(): Settling<Outcome> {
    const [first] = this.#all;
    if (first === undefined) return { asks: [], isCertain: true };
    const isOne = this.#all.every(({ outcome }) => outcome === first.outcome);
    const { questions, isCertain } = isOne
      ? this.#opening(first.outcome)
      : (this.#deciding() ?? this.#best());
    const asks = questions.map((question) => this.#askOf(question));
    const ranked = asks
      .map((ask) => ({ ask, left: meanUndecided(ask.values.map(({ outcomes }) => outcomes)) }))
      .sort((a, b) => a.left - b.left);
    return { asks: ranked.map(({ ask }) => ask), isCertain };
  }

  /** Where all come to the same and more could be known: one answer that makes more of it. */
  #opening(outcome: Outcome): Plan {
    const nothing = { questions: [], isCertain: true };
    if (!this.#context.isOpen(outcome)) return nothing;
    const tells = ({ questions, isCertain }: Plan) =>
      isCertain &&
      questions.length === 1 &&
      questions.some((question) =>
        this.#askOf(question).values.some((value) => value.outcomes[0] !== outcome),
      );
    return this.#first(this.#laidFacts(), tells) ?? this.#first(this.#places(), tells) ?? nothing;
  }

  /** One that settles it for certain; null where there is none. */
  #deciding(): Plan | null {
    const isCertain = (plan: Plan) => plan.isCertain;
    const plain = this.#planWith([]);
    if (plain?.isCertain === true && plain.questions.length === 1) return plain;
    const laid = this.#best().questions.filter((one) => one.isLaid);
    const together = laid.length > 1 && waysThrough(laid) <= MOST_WAYS;
    const plans = [
      plain,
      this.#first(this.#laidFacts(), isCertain),
      together ? this.#planWith(laid) : null,
    ].filter((plan): plan is Plan => plan?.isCertain === true);
    const [best] = plans.sort((a, b) => a.questions.length - b.questions.length);
    return best ?? this.#first(this.#places(), isCertain);
  }

  #laidFacts(): readonly Question[] {
    return this.#questions.filter(({ isLaid }) => isLaid);
  }

  #places(): readonly Question[] {
    const { places, near } = this.#context;
    return placeQuestions(this.#candidates, places, near);
  }

  /** The one with the fewest questions of the plans that lay one of these. */
  #first(laid: readonly Question[], isGood: (plan: Plan) => boolean): Plan | null {
    let best: Plan | null = null;
    for (const question of laid) {
      const plan = this.#planWith([question]);
      if (plan === null || !isGood(plan)) continue;
      if (best === null || plan.questions.length < best.questions.length) best = plan;
      if (best.questions.length === 1) break;
    }
    return best;
  }

  /**
   * These questions, and the fewest of those that are not laid that tell apart what is left for
   * each way of answering them. Null where that cannot be told, as too much would have to be
   * asked; and where it does not settle for certain what is laid.
   */
  #planWith(laid: readonly Question[]): Plan | null {
    const pairs: Pair[] = [];
    for (const way of waysOf(laid)) {
      const own = this.#pairsLeft(way, laid.length > 0);
      if (own === null) return null;
      pairs.push(...own);
    }
    const chosen = fewest(pairs, this.#plain.length);
    const plain = chosen.flatMap((index) => this.#plain[index] ?? []);
    return { questions: [...laid, ...plain], isCertain: areCertain(pairs) };
  }

  /** @param isStrict null also where two of them are not told apart for certain. */
  #pairsLeft(way: Way, isStrict: boolean): readonly Pair[] | null {
    const left: { readonly index: number; readonly outcome: Outcome }[] = [];
    const seen = new Set<Outcome>();
    for (const index of this.#candidates.keys()) {
      if (way.answers.some(({ members }) => !members.has(index))) continue;
      const asked = this.#outcomeOf(index, way.told);
      if (asked === null) return null;
      const { outcome } = asked;
      left.push({ index, outcome });
      // Before more of them are asked: what these two come to may be reason enough.
      const isNew = isStrict && !seen.has(outcome);
      if (isNew && !areCertain(pairsOf(sortsOf(left, this.#plain)))) return null;
      seen.add(outcome);
    }
    const sorts = sortsOf(left, this.#plain);
    if (sorts.length > MOST_SORTS) return null;
    const pairs = pairsOf(sorts);
    return isStrict && !areCertain(pairs) ? null : pairs;
  }

  #outcomeOf(index: number, told: ToldBesides): { readonly outcome: Outcome } | null {
    const one = this.#all[index];
    if (one === undefined) throw new RangeError(`there is no vehicle ${index}`);
    if (told.facts.size === 0 && told.fitted.size === 0) return one;
    return this.#context.outcomeWith(one.candidate, told);
  }

  /** By what is recorded alone: nothing settles it for certain, or there are too many sorts. */
  #best(): Plan {
    const all = this.#all.map(({ outcome }, index) => ({ index, outcome }));
    const sorts = sortsOf(all, this.#questions);
    const chosen =
      sorts.length > MOST_SORTS
        ? bestAlone(sorts, this.#questions)
        : fewest(pairsOf(sorts), this.#questions.length);
    return { questions: chosen.flatMap((one) => this.#questions[one] ?? []), isCertain: false };
  }

  #askOf(question: Question): SettlingAsk<Outcome> {
    const { field, fact, position, answers } = question;
    const values = answers
      .filter(({ members }) => members.size > 0)
      .map((answer) => {
        const told = toldBy(question, answer.value);
        const asked = [...answer.members].map((index) => this.#outcomeOf(index, told));
        const isAsked = asked.every((one) => one !== null);
        const { notAsked } = this.#context;
        const outcomes = asked.map((one) => (isAsked && one !== null ? one.outcome : notAsked));
        return { value: answer.value, outcomes };
      });
    return { field, fact, position, values };
  }
}

function areCertain(pairs: readonly Pair[]): boolean {
  return pairs.every(({ isCertain }) => isCertain);
}

/** So many ways of answering several questions are tried. */
const MOST_WAYS = 64;

function waysThrough(questions: readonly Question[]): number {
  return questions.reduce((ways, { answers }) => ways * answers.length, 1);
}

interface Way {
  readonly answers: readonly Question['answers'][number][];
  readonly told: ToldBesides;
}

/** Every way of answering all of them. */
function waysOf(questions: readonly Question[]): Way[] {
  const nothing: Way = { answers: [], told: { facts: new Map(), fitted: new Map() } };
  return questions.reduce<Way[]>(
    (ways, question) =>
      ways.flatMap(({ answers, told }) =>
        question.answers.map((answer) => {
          const { facts, fitted } = toldBy(question, answer.value);
          return {
            answers: [...answers, answer],
            told: {
              facts: new Map([...told.facts, ...facts]),
              fitted: new Map([...told.fitted, ...fitted]),
            },
          };
        }),
      ),
    [nothing],
  );
}

/** Nothing, where the answer only leaves vehicles out. */
function toldBy({ isLaid, fact, position }: Question, value: string): ToldBesides {
  return {
    facts: new Map(isLaid && fact !== null ? [[fact, value]] : []),
    fitted: new Map(position !== null ? [[position, value]] : []),
  };
}
