/**
 * Does this part fit this vehicle, asked any number of times in one go: a line in, an answer out.
 *
 * The edition and the price and stock list are settled once, at the start, so that one batch is of
 * one state, whatever is published while it runs. The short form builds no sentence.
 */

import { ENGINE } from '../domain/engine.js';
import { spokenFor } from '../domain/explain/words.js';
import type { Fit } from '../domain/judge/fit.js';
import type { ShownUnits } from '../domain/quantity/unit.js';
import type { FitAnswer, FitPositionView, Outcome } from './answer.js';
import { checkFit, type FitInput, judgeAlone } from './check-fit.js';
import { QuestionError } from './errors.js';
import type { Library } from './library.js';
import type { CommonInput } from './question.js';

/** What holds for all lines. */
export interface FitBatchInput extends CommonInput {
  readonly units: ShownUnits;
  /** Whether changes around each part are looked for; `no` is quicker by far. */
  readonly changes: 'yes' | 'no';
  readonly form: 'short' | 'full';
}

/** What each line asks for itself. */
export type FitLineInput = Omit<
  FitInput,
  'edition' | 'lang' | 'units' | 'offers' | 'changes' | 'steps' | 'guesses'
>;

/** What is settled at the start, for all lines. */
export interface FitBatchStart {
  edition: number;
  /** Of the price and stock list that order codes are looked up in. */
  offers: number;
  engine: string;
  lang: string;
  units: ShownUnits;
  changes: 'yes' | 'no';
  form: 'short' | 'full';
}

/** A fit answer without a word of it: what a program goes by. */
export interface ShortFit {
  vehicle: string;
  /** Its id, whatever it was called. */
  part: string;
  alone: Outcome;
  verdict: FitAnswer['verdict'];
  /** Of what fails or is open at the best places, in order; or why there is no place for it. */
  codes: string[];
}

export interface FitBatch {
  readonly start: FitBatchStart;
  /** Throws `QuestionError` with every fault of the line; the next may be asked all the same. */
  answer(line: FitLineInput): ShortFit | FitAnswer;
}

/**
 * For so many lines with a fault it is looked what was meant: each name is compared with all that
 * there are, and a file of names of another catalogue would take hours.
 */
const MOST_GUESSED = 1000;

export function startFitBatch(library: Library, input: FitBatchInput): FitBatch {
  const edition = library.edition(input.edition);
  const skus = library.skus(null);
  const own = library.holding(edition, skus);
  const { units, changes, form } = input;
  const lang = spokenFor(input.lang);
  const settled = { edition: edition.head.number, offers: skus.number };
  const common = { ...settled, lang, units, changes };
  let guesses = MOST_GUESSED;
  return {
    start: { ...settled, engine: ENGINE, lang, units, changes, form },
    answer: (line) => {
      try {
        return answerOf(own, { ...line, ...common, guesses: guesses > 0 }, form);
      } catch (error) {
        if (error instanceof QuestionError) guesses -= 1;
        throw error;
      }
    },
  };
}

function answerOf(
  library: Library,
  input: FitInput,
  form: FitBatchInput['form'],
): ShortFit | FitAnswer {
  if (form === 'full') return checkFit(library, input);
  if (input.changes === 'yes') return shortOf(checkFit(library, input));
  const { vehicle, found, fit } = judgeAlone(library, input);
  const { alone, verdict } = fit;
  return { vehicle: vehicle.id, part: found.part.id, alone, verdict, codes: codesOf(fit) };
}

function codesOf({ positions, at, isAdapter }: Fit): string[] {
  if (positions.length === 0) return [isAdapter ? 'goes-between' : 'no-position'];
  const best = positions.filter(({ position }) => at.includes(position.id));
  return inOrder(best.flatMap(({ judgement }) => judgement.constraints));
}

/** The short form of a full answer. */
export function shortOf(answer: FitAnswer): ShortFit {
  const { vehicle, part, alone, verdict, positions, at, summary } = answer;
  const best = positions.filter(({ position }) => at.includes(position));
  const codes = positions.length === 0 ? [summary.code] : inOrder(best.flatMap(saidOf));
  return { vehicle, part, alone, verdict, codes };
}

function saidOf({ matings, checks, choices, rules, places, statements }: FitPositionView) {
  return [...matings, ...checks, ...choices, ...rules, ...places, ...statements];
}

/** The codes of what does not hold, each once. */
function inOrder(constraints: readonly { readonly state: string; readonly code: string }[]) {
  const telling = constraints.filter(({ state }) => state === 'fails' || state === 'open');
  return [...new Set(telling.map(({ code }) => code))].sort();
}
