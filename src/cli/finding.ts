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
import type { Page, Tone } from './page.js';
import type { CliWords } from './words/cli-words.js';

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
export function sayFindings(judged: JudgedView, page: Page, words: CliWords, indent = 0): void {
  sayByState(alikeOnce(findingsOf(judged, words)), { page, words, indent });
}

/** One mating alone: what decides it, unless that is a check, then each of its checks. */
export function sayMeeting({ text, code, checks }: MatingView, page: Page, words: CliWords): void {
  const isSaid = code === 'meets' || checks.some((check) => check.text === text);
  if (!isSaid) page.say(text);
  const findings = checks.map((check) => checkFinding(check, words));
  sayByState(findings, { page, words, indent: 0 });
}

/** Where findings are said, and how. */
interface Style {
  readonly page: Page;
  readonly words: CliWords;
  readonly indent: number;
}

function sayByState(findings: readonly Finding[], style: Style): void {
  const must = findings.filter(({ isCaution }) => !isCaution);
  const by = (state: Finding['state']) => must.filter((one) => one.state === state);
  const { finding: words } = style.words;
  sayList(words.fails, by('fails'), 'bad', style);
  sayList(words.open, by('open'), 'doubtful', style);
  sayList(words.holds, by('holds'), 'good', style);
  sayGiven(by('given'), style);
}

/** Cautions among the findings, which the answer's own list of cautions need not have. */
export function cautionTexts(judged: JudgedView, words: CliWords): string[] {
  const doubtful = findingsOf(judged, words).filter(
    ({ isCaution, state }) => isCaution && (state === 'fails' || state === 'open'),
  );
  return doubtful.map(({ text }) => text);
}

function sayList(title: string, findings: readonly Finding[], tone: Tone, style: Style): void {
  const { page, words, indent } = style;
  if (findings.length === 0) return;
  page.say(title, { indent, tone });
  for (const { text, hand, beside } of findings) {
    page.say(sideOf(hand, text, words) + text, { indent: indent + 2, marker: '- ' });
    for (const one of beside) page.say(one, { indent: indent + 4, marker: '- ' });
  }
}

/** What is as the works built it needs no list, unless the records contradict or do not show it. */
function sayGiven(given: readonly Finding[], style: Style): void {
  const { page, indent } = style;
  const { finding: words } = style.words;
  const doubted = given.filter(({ computed }) => computed === 'fails');
  sayList(words.againstRecords, doubted, 'doubtful', style);
  const unproven = given.filter(({ computed }) => computed === 'open');
  sayList(words.notShown, unproven, 'faint', style);
  const count = given.length - doubted.length - unproven.length;
  if (count > 0) page.say(words.asBuilt(count), { indent });
}

/** Which side it is, unless the sentence says so itself. */
function sideOf(hand: Finding['hand'], text: string, { finding }: CliWords): string {
  return hand === null || finding.saysSide(text, hand) ? '' : finding.side[hand];
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

function findingsOf(judged: JudgedView, words: CliWords): Finding[] {
  const { matings, checks, choices, rules, places, statements } = judged;
  return [
    ...matings.map((mating) => matingFinding(mating, words)),
    ...[...places, ...checks, ...choices, ...rules, ...statements].map((one) =>
      constraintFinding(one, words),
    ),
  ];
}

function matingFinding(mating: MatingView, words: CliWords): Finding {
  const { state, computed, hand, checks } = mating;
  const deciding = checks.find(({ text }) => text === mating.text);
  const text = deciding === undefined ? mating.text : withValues(deciding, words);
  const alike = checks.filter(
    (check) => check.state === state && check.severity === 'must' && check !== deciding,
  );
  const isTold = state === 'fails' || state === 'open';
  const beside = isTold ? alike.map((check) => withValues(check, words)) : [];
  return { state, computed, isCaution: false, hand, text, beside: [...new Set(beside)] };
}

function constraintFinding(constraint: ConstraintView, words: CliWords): Finding {
  const { state, computed, hand, severity, checks } = constraint;
  const isCaution = severity === 'caution';
  const deciding = checks.find(({ text }) => text === constraint.text);
  const text = deciding === undefined ? constraint.text : withValues(deciding, words);
  return { state, computed, isCaution, hand, text, beside: [] };
}

function checkFinding(check: CheckView, words: CliWords): Finding {
  const { state, severity } = check;
  const isCaution = severity === 'caution';
  const text = withValues(check, words);
  return { state, computed: state, isCaution, hand: null, text, beside: [] };
}

/**
 * The sentence of a check; a value that the sentence leaves out is put behind it, unless the
 * check holds: that list is to be short. Of a loop the difference says all; its two totals are
 * numbers that nobody measures.
 */
function withValues(check: CheckView, words: CliWords): string {
  const { state, primitive, text, left, right } = check;
  if (state === 'holds' || primitive === 'agree') return text;
  const sides = right === null ? [left] : [left, right];
  const isSaid = ({ said }: SideView) => said === null || text.includes(said);
  if (sides.every(isSaid)) return text;
  return `${text} (${words.finding.against(sides.flatMap((side) => sideText(side, words)))})`;
}

function sideText({ said, parameterName, name }: SideView, words: CliWords): string[] {
  if (said === null) return [];
  const { finding, quoted } = words;
  const value = `${parameterName ?? finding.value} ${said}`;
  return [name === null ? value : finding.ofPart(value, quoted(name))];
}
