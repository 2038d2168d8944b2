/**
 * What was judged, as the list that a person reads: first what fails, then what is open, then
 * what holds. Each finding is one sentence with both values. Nothing is decided here.
 */

import type {
  CheckView,
  ConstraintView,
  JudgedView,
  MatingView,
  SideView,
} from '../usecases/answer.js';
import { counted } from './answer-text.js';
import type { Page, Tone } from './page.js';

interface Finding {
  readonly state: MatingView['state'];
  readonly computed: MatingView['computed'];
  readonly isCaution: boolean;
  readonly hand: MatingView['hand'];
  readonly text: string;
  /** What else is wrong or open at the same place. */
  readonly beside: readonly string[];
}

/** Places that were judged for either hand alike are said once. */
export function sayFindings(judged: JudgedView, page: Page, indent: number): void {
  sayByState(alikeOnce(findingsOf(judged)), page, indent);
}

/** One mating alone: what decides it, unless that is a check, then each of its checks. */
export function sayMeeting({ text, code, checks }: MatingView, page: Page): void {
  const isSaid = code === 'meets' || checks.some((check) => check.text === text);
  if (!isSaid) page.say(text);
  sayByState(checks.map(checkFinding), page, 0);
}

function sayByState(findings: readonly Finding[], page: Page, indent: number): void {
  const must = findings.filter(({ isCaution }) => !isCaution);
  const by = (state: Finding['state']) => must.filter((one) => one.state === state);
  sayList('Fails', by('fails'), { page, indent, tone: 'bad' });
  sayList('Open', by('open'), { page, indent, tone: 'doubtful' });
  sayList('Holds', by('holds'), { page, indent, tone: 'good' });
  sayGiven(by('given'), page, indent);
}

/** Cautions among the findings, which the answer's own list of cautions need not have. */
export function cautionTexts(judged: JudgedView): string[] {
  const doubtful = findingsOf(judged).filter(
    ({ isCaution, state }) => isCaution && (state === 'fails' || state === 'open'),
  );
  return doubtful.map(({ text }) => text);
}

interface ListStyle {
  readonly page: Page;
  readonly indent: number;
  readonly tone: Tone;
}

function sayList(title: string, findings: readonly Finding[], style: ListStyle): void {
  const { page, indent, tone } = style;
  if (findings.length === 0) return;
  page.say(`${title}:`, { indent, tone });
  for (const { text, hand, beside } of findings) {
    page.say(sideOf(hand, text) + text, { indent: indent + 2, marker: '- ' });
    for (const one of beside) page.say(one, { indent: indent + 4, marker: '- ' });
  }
}

/** What is as the works built it needs no list, unless the records contradict or do not show it. */
function sayGiven(given: readonly Finding[], page: Page, indent: number): void {
  const doubted = given.filter(({ computed }) => computed === 'fails');
  sayList('As built, against the records', doubted, { page, indent, tone: 'doubtful' });
  const unproven = given.filter(({ computed }) => computed === 'open');
  sayList('As found, and not shown by the records', unproven, { page, indent, tone: 'faint' });
  const count = given.length - doubted.length - unproven.length;
  if (count > 0) page.say(`As the works built it: ${counted(count, 'place')}.`, { indent });
}

/** Which side it is, unless the sentence says so itself. */
function sideOf(hand: Finding['hand'], text: string): string {
  if (hand === null || text.includes(`(${hand})`)) return '';
  return hand === 'left' ? 'Left: ' : 'Right: ';
}

function alikeOnce(findings: readonly Finding[]): Finding[] {
  const found = new Map<string, Finding>();
  for (const finding of findings) {
    const { state, computed, text, beside, hand } = finding;
    const key = JSON.stringify([state, computed, text, beside]);
    const same = found.get(key);
    if (same === undefined) found.set(key, finding);
    else if (same.hand !== hand) found.set(key, { ...same, hand: null });
  }
  return [...found.values()];
}

function findingsOf(judged: JudgedView): Finding[] {
  const { matings, checks, choices, rules, places, statements } = judged;
  return [
    ...matings.map(matingFinding),
    ...[...places, ...checks, ...choices, ...rules, ...statements].map(constraintFinding),
  ];
}

function matingFinding(mating: MatingView): Finding {
  const { state, computed, hand, checks } = mating;
  const deciding = checks.find(({ text }) => text === mating.text);
  const text = deciding === undefined ? mating.text : withValues(deciding);
  const alike = checks.filter(
    (check) => check.state === state && check.severity === 'must' && check !== deciding,
  );
  const beside = state === 'fails' || state === 'open' ? alike.map(withValues) : [];
  return { state, computed, isCaution: false, hand, text, beside: [...new Set(beside)] };
}

function constraintFinding(constraint: ConstraintView): Finding {
  const { state, computed, hand, severity, checks } = constraint;
  const isCaution = severity === 'caution';
  const deciding = checks.find(({ text }) => text === constraint.text);
  const text = deciding === undefined ? constraint.text : withValues(deciding);
  return { state, computed, isCaution, hand, text, beside: [] };
}

function checkFinding(check: CheckView): Finding {
  const { state, severity } = check;
  const isCaution = severity === 'caution';
  return { state, computed: state, isCaution, hand: null, text: withValues(check), beside: [] };
}

/**
 * The sentence of a check; a value that the sentence leaves out is put behind it, unless the
 * check holds: that list is to be short. Of a loop the difference says all; its two totals are
 * numbers that nobody measures.
 */
function withValues({ state, primitive, text, data, left, right }: CheckView): string {
  if (state === 'holds' || primitive === 'agree') return text;
  const isSaid = (side: SideView, said: CheckView['data']['left']) =>
    side.value.text === null ||
    // Computed values are rounded for the sentence; the data has them as they are said.
    [side.value.text, said?.value?.text ?? null].some(
      (value) => value !== null && text.includes(value),
    );
  if (isSaid(left, data.left) && (right === null || isSaid(right, data.right))) return text;
  const sides = [left, ...(right === null ? [] : [right])];
  return `${text} (${sides.flatMap(sideText).join(' against ')})`;
}

function sideText({ value, parameter, term, name }: SideView): string[] {
  if (value.text === null) return [];
  const what = (parameter ?? term ?? 'value').replaceAll('-', ' ');
  return [`${what} ${value.text}${name === null ? '' : ` of “${name}”`}`];
}
