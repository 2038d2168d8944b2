/**
 * What all answers have in common when a person reads them: the verdict above, and below it what
 * to order, what to measure, what was not checked, the cautions, and where the answer is from.
 */

import type {
  AnswerHead,
  CautionView,
  MeasureView,
  NamingView,
  OrderView,
  Outcome,
  SaidReason,
} from '../usecases/answer.js';
import type { Page, Tone } from './page.js';
import type { AnswerWords, CliWords } from './words/cli-words.js';
import { wordsIn } from './words/words.js';

const TONES: Readonly<Record<Outcome, Tone>> = { holds: 'good', open: 'doubtful', fails: 'bad' };

export function sayVerdict({ text }: SaidReason, outcome: Outcome, page: Page): void {
  page.say(text, { tone: TONES[outcome] });
}

/** A part or vehicle by name, with the id that one asks by. */
export function called(name: string | null, id: string, { quoted }: CliWords): string {
  return name === null || name === id ? id : `${quoted(name)} (${id})`;
}

/** A place of the vehicle by name; its id too, where the name does not give it away. */
export function place(name: string, id: string): string {
  return name.toLowerCase().replaceAll(' ', '-') === id ? name : `${name} (${id})`;
}

/** What other names than ids led to, and which of the parts another one took the place of. */
export function sayNames({ named }: Pick<NamingView, 'named'>, page: Page, words: CliWords): void {
  const { names } = words;
  for (const { asked, part, name, resolvedBy, supersededBy } of named) {
    if (resolvedBy !== 'id') page.say(names.found(asked, called(name, part, words)));
    if (supersededBy !== null) page.say(names.superseded(part, supersededBy));
  }
}

export function sayOrders(
  orders: readonly OrderView[],
  page: Page,
  { answer: words }: CliWords,
  indent = 0,
): void {
  if (orders.length === 0) return;
  page.say(words.order, { indent, tone: 'strong' });
  for (const { text } of orders) page.say(text, { indent: indent + 2, marker: '- ' });
}

interface Asides extends AnswerHead {
  readonly measure: readonly MeasureView[];
  readonly notChecked: readonly SaidReason[];
  readonly cautions: readonly CautionView[];
}

/**
 * Everything below the verdict, in the language of the answer; `further` are cautions that the
 * answer has elsewhere.
 */
export function sayAsides(answer: Asides, page: Page, further: readonly string[] = []): void {
  const { answer: words } = wordsIn(answer.lang);
  if (answer.measure.length > 0) page.gap();
  sayMeasures(answer.measure, page, words);
  sayTexts(words.notChecked, textsOf(answer.notChecked), page);
  const cautions = textsOf(answer.cautions);
  const unsaid = [...new Set(further)].filter((text) => !cautions.some((c) => c.includes(text)));
  sayTexts(words.cautions, [...unsaid, ...cautions], page);
  sayOrigin(answer, page);
}

/** Where an answer is from. */
export function sayOrigin({ edition, engine, lang }: AnswerHead, page: Page, more = ''): void {
  page.gap();
  const from = wordsIn(lang).answer.from(edition, engine);
  page.say(more === '' ? from : `${from} ${more}`, { tone: 'faint' });
}

/** What to measure, indented below something else. */
export function sayMeasures(
  measures: readonly MeasureView[],
  page: Page,
  words: AnswerWords,
  indent = 0,
): void {
  if (measures.length === 0) return;
  page.say(words.measure, { indent, tone: 'strong' });
  for (const [index, measure] of measures.entries()) {
    const marker = `${index + 1}. `;
    page.say(measureText(measure, words), { indent: indent + 2, marker });
  }
}

/** The sentence names the tool and the precision; what is known by now stands behind it. */
function measureText(
  { text, now, needed, purpose, settles, on }: MeasureView,
  words: AnswerWords,
): string {
  const isSize = now !== null && now.unit !== '';
  const isVague = purpose === 'to-decide' && needed === null && isSize && on.parameter !== null;
  const recorded = now?.text ?? null;
  return [
    text,
    ...(isVague ? [words.noTolerance] : []),
    ...(recorded === null || text.includes(recorded) ? [] : [words.recorded(recorded)]),
    ...(settles.length > 1 ? [words.settles(settles.length)] : []),
  ].join(' ');
}

export function sayTexts(title: string, texts: readonly string[], page: Page): void {
  if (texts.length === 0) return;
  page.gap();
  page.say(title, { tone: 'strong' });
  for (const text of texts) page.say(text, { indent: 2, marker: '- ' });
}

export function textsOf(said: readonly { readonly text: string }[]): string[] {
  return said.map(({ text }) => text);
}
