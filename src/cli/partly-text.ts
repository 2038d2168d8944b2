/**
 * Answers about a vehicle that is known in part as a person reads them: what each vehicle that may
 * be meant comes to, what to ask, and what each reply leads to.
 */

import type { SettlingAskView } from '../usecases/ask-views.js';
import type { LeadsToGrade, PartlyKitAnswer } from '../usecases/kits-partly-answer.js';
import { called, sayNames, sayOrders, sayOrigin, sayTexts, textsOf } from './answer-text.js';
import { sayConflict } from './conflict-text.js';
import { sayTaken } from './kit-line-text.js';
import { sayKits } from './kit-text.js';
import type { Page, Tone } from './page.js';
import type { CliWords } from './words/cli-words.js';
import { wordsIn } from './words/words.js';

/** One line for each. */
export function sayMeant(
  vehicles: readonly { readonly vehicle: string; readonly label: string; readonly text: string }[],
  page: Page,
  words: CliWords,
): void {
  if (vehicles.length > 0) page.gap();
  for (const { vehicle, label, text } of vehicles) {
    page.say(`${called(label, vehicle, words)}: ${text}`, { marker: '- ' });
  }
}

/** @param leadsTo what is said in brackets behind an answer. */
export function sayQuestions<Leads>(
  ask: readonly SettlingAskView<Leads>[],
  leadsTo: (leads: Leads) => string,
  page: Page,
  { names }: CliWords,
): void {
  const questions = ask.map(({ name, how, values }) => {
    const answers = values.map((value) => `${value.label} (${leadsTo(value)})`);
    return names.question(name, answers, how);
  });
  const isOfPlaces = ask.some(({ field }) => field === 'fitted');
  if (questions.length > 0) sayTexts(isOfPlaces ? names.settle : names.ask, questions, page);
}

const TONES: Readonly<Record<Exclude<PartlyKitAnswer['grade'], null>, Tone>> = {
  proven: 'good',
  open: 'doubtful',
  none: 'bad',
  depends: 'doubtful',
};

/** The ways that all of them have; or what each comes to, and what settles it. */
export function sayKitsPartly(answer: PartlyKitAnswer, page: Page): void {
  const { summary, grade, routes, vehicles, ask, conflict, counts, currency, kits } = answer;
  if (kits !== null) {
    sayKits(kits, page);
    return;
  }
  const words = wordsIn(answer.lang);
  const style = { page, words, currency };
  page.say(summary.text, { tone: grade === null ? 'doubtful' : TONES[grade] });
  page.say(words.identify.left(counts.total), { tone: 'faint' });
  sayNames(answer, page, words);
  if (conflict !== null) sayConflict(conflict, page, words.kits);
  for (const [index, route] of routes.entries()) {
    page.gap();
    page.say(words.kits.wayOf(index + 1, routes.length), { tone: TONES[route.grade] });
    sayTaken(route, style);
    sayOrders(route.order, page, words, 2);
  }
  const each = vehicles.map(({ vehicle, label, summary: own }) => {
    return { vehicle, label, text: own.text };
  });
  sayMeant(each, page, words);
  sayQuestions(ask, (leads) => gradesText(leads, words), page, words);
  sayTexts(words.answer.cautions, textsOf(answer.cautions), page);
  sayOrigin(answer, page, words.kits.offers(answer.offers));
}

function gradesText({ grade }: LeadsToGrade, { kits }: CliWords): string {
  return kits.leadsTo[grade ?? 'unknown'];
}
