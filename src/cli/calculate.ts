/**
 * `faying calculate [NAME] [key=value …]`: all calculators, one of them, or what it makes of it.
 * No database is asked.
 */

import type { Command } from 'commander';
import {
  type CalculateInput,
  type CalculationAnswer,
  calculate,
  type ResultView,
} from '../usecases/calculate.js';
import {
  type CalculationEntry,
  type CalculationsAnswer,
  listCalculations,
} from '../usecases/list-calculations.js';
import { CommandFault } from './fault.js';
import { type Page, widthOf } from './page.js';
import { addLanguageOption, addUnitsOption } from './question-options.js';
import type { Session } from './session.js';
import { wordsIn } from './words/words.js';

interface CalculateOptions {
  readonly lang: string;
  readonly units: CalculateInput['units'];
  readonly json?: true;
}

const EXAMPLES = `
Without a name, every calculator is listed; with a name alone, what it takes and gives. A number is
taken exactly as it stands, a reading such as "76 ±0.5 mm" as all that it allows, and so is the
decimal of a ratio: write tooth counts where you know them. Several values stand with commas
between.

Examples:
  $ faying calculate
  $ faying calculate propeller-shaft
  $ faying calculate propeller-shaft outerDiameter=76mm innerDiameter=70.8mm length=1374mm
`;

export function addCalculate(program: Command, session: Session): void {
  const command = program
    .command('calculate')
    .summary('ask a formula of the driveline')
    .description('Calculates what a driveline engineer would, with formula, limits and sources.')
    .argument('[name]', 'the calculator')
    .argument('[values...]', 'what it is given, as key=value');
  addUnitsOption(addLanguageOption(command))
    .option('--json', 'print the answer as JSON, and faults as problem details')
    .addHelpText('after', EXAMPLES)
    .action((name: string | undefined, values: readonly string[], options: CalculateOptions) => {
      tell(name, values, options, session);
    });
}

function tell(
  name: string | undefined,
  values: readonly string[],
  options: CalculateOptions,
  session: Session,
): void {
  const { lang, units } = options;
  const all = listCalculations({ lang });
  if (name === undefined) {
    session.tell(all, options, sayCalculations);
    return;
  }
  const entry = all.items.find(({ calculation }) => calculation === name);
  if (entry !== undefined && values.length === 0) {
    session.tell(entry, options, (one, page) => sayEntry(one, page, lang));
    return;
  }
  const given = entry === undefined ? {} : givenTo(entry, values);
  const answer = calculate({ calculation: name, given, lang, units });
  session.tell(answer, options, sayAnswer);
}

/** What each input was given; whatever is no input, is missing or there too often, is refused. */
function givenTo(entry: CalculationEntry, values: readonly string[]): CalculateInput['given'] {
  const { calculation, inputs } = entry;
  const remedy = `See faying calculate ${calculation}.`;
  const refuse = (text: string) => new CommandFault('bad-usage', text, { remedy });
  const texts = new Map<string, string[]>();
  for (const value of values) {
    const split = value.indexOf('=');
    const [key, text] = [value.slice(0, Math.max(0, split)).trim(), value.slice(split + 1).trim()];
    const input = inputs.find((one) => one.input === key);
    if (key === '' || text === '') throw refuse(`"${value}" is not of the form key=value.`);
    if (input === undefined) throw refuse(`${calculation} takes no "${key}".`);
    const found = [...(texts.get(key) ?? []), ...(input.most === 1 ? [text] : text.split(','))];
    if (found.length > input.most) throw refuse(`${key} takes ${input.most} at most.`);
    const codes = input.codes.map(({ code }) => code);
    const other = codes.length === 0 ? undefined : found.find((one) => !codes.includes(one));
    if (other !== undefined) throw refuse(`${key} is none of ${codes.join(', ')}: "${other}".`);
    texts.set(key, found);
  }
  const missing = inputs.filter(({ input, isOptional }) => !isOptional && !texts.has(input));
  if (missing.length > 0) {
    throw refuse(`${calculation} needs ${missing.map(({ input }) => input).join(', ')} besides.`);
  }
  return Object.fromEntries(
    [...texts].map(([key, found]) => {
      const isList = (inputs.find(({ input }) => input === key)?.most ?? 1) > 1;
      return [key, isList ? found : (found[0] ?? '')];
    }),
  );
}

function sayCalculations({ items, lang, engine }: CalculationsAnswer, page: Page): void {
  const names = Math.max(...items.map(({ calculation }) => widthOf(calculation)));
  for (const { calculation, about } of items) {
    page.say(about, { marker: `${calculation.padEnd(names)}  ` });
  }
  page.gap();
  page.say(wordsIn(lang).calculations.from(engine), { tone: 'faint' });
}

function sayEntry(entry: CalculationEntry, page: Page, lang: string): void {
  const { calculations: words } = wordsIn(lang);
  page.say(entry.title, { tone: 'strong' });
  page.say(entry.about);
  page.gap();
  page.say(words.takes, { tone: 'strong' });
  const width = Math.max(...entry.inputs.map(({ input }) => widthOf(input)));
  for (const { input, name, unit, isOptional, most, codes } of entry.inputs) {
    const asides = [
      ...(unit === '' || unit === '1' ? [] : [unit]),
      ...(most === 1 ? [] : [words.severalAt(most)]),
      ...codes.map(({ code, name: told }) => `${code}: ${told}`),
      ...(isOptional ? [words.isOptional] : []),
    ];
    const aside = asides.length === 0 ? '' : ` (${asides.join('; ')})`;
    page.say(`${name}${aside}`, { indent: 2, marker: `${input.padEnd(width)}  ` });
  }
  page.gap();
  page.say(words.gives, { tone: 'strong' });
  for (const { name } of entry.outputs) page.say(name, { indent: 2 });
  page.gap();
  page.say(words.formulas, { tone: 'strong' });
  for (const formula of entry.formulas) page.say(formula, { indent: 2 });
  page.gap();
  page.say(words.example, { tone: 'strong' });
  const given = Object.entries(entry.example).map(([key, value]) => {
    const text = `${key}=${[value].flat().join(',')}`;
    return /^[\w.,=/+-]+$/.test(text) ? text : `"${text}"`;
  });
  page.say(`faying calculate ${entry.calculation} ${given.join(' ')}`, { indent: 2 });
}

function sayAnswer(answer: CalculationAnswer, page: Page): void {
  const { calculations: words, answer: usual } = wordsIn(answer.lang);
  page.say(answer.title, { tone: 'strong' });
  page.gap();
  const rows = answer.results.map((one) => [one.name, resultText(one, words.outcomes)] as const);
  const width = Math.max(0, ...rows.map(([name]) => widthOf(name)));
  for (const [index, [name, text]] of rows.entries()) {
    const outcome = answer.results[index]?.outcome ?? null;
    const tone = outcome === null ? 'plain' : TONES[outcome];
    page.say(text, { indent: 2, marker: `${name.padEnd(width)}  `, tone });
  }
  sayList(
    words.warnings,
    answer.warnings.map(({ text }) => text),
    page,
  );
  const given = answer.given.map(({ name, value }) => `${name}: ${value.text ?? ''}`);
  sayList(words.given, given, page);
  sayList(
    words.notFound,
    answer.notFound.map(({ name, needs }) => words.needs(name, needs)),
    page,
  );
  sayList(words.formulas, answer.formulas, page);
  sayList(words.assumed, answer.assumptions, page);
  sayList(words.validity, answer.validity, page);
  sayList(
    words.sources,
    answer.sources.map(({ title, basis }) => `${title} (${words.bases[basis]})`),
    page,
  );
  sayList(
    usual.cautions,
    answer.cautions.map(({ text }) => text),
    page,
  );
  page.gap();
  page.say(words.from(answer.engine), { tone: 'faint' });
}

const TONES = { holds: 'good', open: 'doubtful', fails: 'bad' } as const;

function resultText(
  { values, outcome }: ResultView,
  outcomes: Readonly<Record<keyof typeof TONES, string>>,
): string {
  return outcome === null ? values.map(({ text }) => text ?? '').join('; ') : outcomes[outcome];
}

function sayList(heading: string, lines: readonly string[], page: Page): void {
  if (lines.length === 0) return;
  page.gap();
  page.say(heading, { tone: 'strong' });
  for (const line of lines) page.say(line, { indent: 2 });
}
