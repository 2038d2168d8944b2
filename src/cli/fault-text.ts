/**
 * Faults as a person reads them: each at its place, in one sentence.
 */

import type { Place, Problem } from './fault.js';
import type { Page } from './page.js';
import { counted } from './words/english-show.js';
import { wordsIn } from './words/words.js';

/** `catalogue.json: 2 faults, 1 warning`. */
export function tallyText(name: string, faults: readonly Place[], warnings: readonly Place[]) {
  return `${name}: ${counted(faults.length, 'fault')}, ${counted(warnings.length, 'warning')}`;
}

/** The faults of a document, then its warnings: one line each, however long, for searching. */
export function sayPlaces(faults: readonly Place[], warnings: readonly Place[], page: Page): void {
  for (const one of faults) page.verbatim(placeText(one));
  if (warnings.length > 0) page.verbatim('Warnings:', 'doubtful');
  for (const one of warnings) page.verbatim(placeText(one));
}

function placeText({ line, pointer, parameter, text }: Place): string {
  if (line !== undefined && line !== null) {
    return `line ${line}: ${pointer === '' || pointer === undefined ? '' : `${pointer}: `}${text}`;
  }
  const place = pointer === '' ? 'the whole document' : (pointer ?? parameter);
  return place === undefined ? text : `${place}: ${text}`;
}

export function sayProblem(problem: Problem, page: Page): void {
  const { detail, errors, warnings = [], remedy } = problem;
  page.verbatim(`faying: ${detail}`, 'bad');
  const isSaid = errors.length === 1 && errors[0]?.text === detail && warnings.length === 0;
  if (!isSaid) sayPlaces(errors, warnings, page);
  sayAsk(problem, page);
  if (remedy !== undefined) page.verbatim(remedy);
}

function sayAsk({ ask = [], lang }: Problem, page: Page): void {
  if (ask.length === 0) return;
  const { names } = wordsIn(lang);
  page.verbatim(names.ask);
  for (const { name, values, how } of ask) {
    const answers = values.map(({ label }) => label);
    page.say(names.question(name, answers, how), { indent: 2, marker: '- ' });
  }
}
