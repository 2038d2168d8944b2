/**
 * An answer as people read it: its sentences, one a line, each once, without numbers for programs.
 * What the change does not touch is left out. So is what is said of every driveline alike: the
 * usual cautions, and, except where two faces alone are asked about, what their kinds leave out.
 */

import type {
  ConstraintView,
  FitAnswer,
  InspectAnswer,
  JudgedView,
  MateAnswer,
  MatingView,
  OrderView,
} from '../../src/usecases/answer.js';

type Answer = FitAnswer | InspectAnswer | MateAnswer;

/** What stands before a sentence, by the language of the answer. */
const LABELS: Readonly<Record<string, Labels>> = {
  en: {
    find: 'To find out',
    note: 'Note',
    caution: 'Caution',
    order: 'To order',
    alone: 'does not fit alone',
  },
  de: {
    find: 'Zu klären',
    note: 'Hinweis',
    caution: 'Vorsicht',
    order: 'Bestellung',
    alone: 'passt nicht allein',
  },
};

interface Labels {
  readonly find: string;
  readonly note: string;
  readonly caution: string;
  readonly order: string;
  readonly alone: string;
}

function labelsOf({ lang }: Answer): Labels {
  const labels = LABELS[lang];
  if (labels === undefined) throw new Error(`no labels in ${lang}`);
  return labels;
}

/** The sentences of an answer, with a line feed after each. */
export function transcript(answer: Answer): string {
  const { find, note, caution } = labelsOf(answer);
  const lines = [answer.summary.text, ...bodyOf(answer)];
  const unusual = answer.cautions.filter(({ code, group }) => code !== group);
  const left = answer.notChecked.filter(
    ({ code }) => 'mating' in answer || code !== 'kind-does-not-check',
  );
  const asides = [
    ...answer.measure.map(({ text }) => `${find}: ${text}`),
    ...left.map(({ text }) => text),
    ...unusual.map(({ text, show }) => `${show === 'trade' ? note : caution}: ${text}`),
  ];
  if (asides.length > 0) lines.push('', ...asides);
  return `${lines.join('\n')}\n`;
}

function bodyOf(answer: Answer): string[] {
  if ('mating' in answer) return ['', ...matingLines(answer.mating)];
  if ('judged' in answer) {
    const said = [...judgedLines(answer.judged), ...orders(answer, answer)];
    return said.length === 0 ? [] : ['', ...said];
  }
  return answer.positions.flatMap((at) => [
    '',
    `${at.name}: ${at.verdict ?? labelsOf(answer).alone}.`,
    ...judgedLines(at),
    ...orders(at, answer),
  ]);
}

function judgedLines(judged: JudgedView): string[] {
  const { matings, checks, choices, rules, places, statements } = judged;
  const said = [
    ...places.flatMap(lines),
    ...matings.flatMap(matingLines),
    ...[checks, choices, rules, statements].flat().flatMap(lines),
  ];
  return [...new Set(said)];
}

function lines({ state, text }: ConstraintView): string[] {
  return state === 'given' ? [] : [`${state.padEnd(5)} ${text}`];
}

function matingLines({ state, text }: MatingView): string[] {
  return state === 'given' ? [] : [`${state.padEnd(5)} ${text}`];
}

function orders({ order }: { readonly order: readonly OrderView[] }, answer: Answer): string[] {
  return order.map(({ text }) => `${labelsOf(answer).order}: ${text}`);
}
