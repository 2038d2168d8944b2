/**
 * `faying identify-part`: which part is this piece on the bench? Readings are written as those of
 * `--measured` elsewhere, by face and parameter; of a face whose name is not known, by its kind.
 */

import { type Command, Option } from 'commander';
import { listName, withCursor } from '../contract/cursor.js';
import { identifyPartOperation } from '../contract/identify-part.js';
import { identifyPartFilters } from '../contract/piece-question.js';
import {
  type IdentifyPartAnswer,
  identifyPart,
  type PieceCandidate,
} from '../usecases/identify-part.js';
import type { Library } from '../usecases/library.js';
import type { PieceAskView } from '../usecases/piece-views.js';
import type { PieceOn, PieceReading } from '../usecases/read-piece.js';
import { called, sayOrigin, sayTexts, textsOf } from './answer-text.js';
import { CommandFault } from './fault.js';
import type { Page } from './page.js';
import {
  addPair,
  addValuesOptions,
  type Pair,
  type ValuesOptions,
  valuesInput,
  wholeNumber,
} from './question-options.js';
import { addStoreOptions, type Session, type StoreOptions } from './session.js';
import type { CliWords } from './words/cli-words.js';
import { wordsIn } from './words/words.js';

interface IdentifyPartOptions extends ValuesOptions, StoreOptions {
  readonly role?: string;
  readonly hand?: 'left' | 'right';
  readonly vehicle?: string;
  readonly number?: readonly string[];
  readonly measured?: readonly Pair[];
  readonly tool?: readonly Pair[];
  readonly nameExcluded?: true;
  readonly limit?: number;
}

const EXAMPLES = `
A face is named as records call it (input.teeth), or by its kind (kind:involute-spline.teeth), with
a number behind the kind where there are several (kind:involute-spline:2.teeth) and its side before
the parameter (kind:involute-spline.shaft.teeth). Without a face it is a value of the part itself.
face=none says that there is no such face.

A reading is taken for as exact as it is written, or as its tool is: what a part cannot have then
leaves it out. Where only so much is certain, write so: "length=577 ±7.5 mm".

Examples:
  $ faying identify-part --role gearbox --measured gear-count=6
  $ faying identify-part --number "CBL-2G-*"
  $ faying identify-part --measured kind:involute-spline.teeth=24 \\
      --measured "length=577 ±7.5 mm"
`;

export function addIdentifyPart(program: Command, session: Session): void {
  const command = program
    .command('identify-part')
    .summary('which part is this piece on the bench?')
    .description('Lists the parts that a piece can be, why each may be, and what to read next.')
    .option('--role <role>', 'what sort of part it is')
    .addOption(new Option('--hand <hand>', 'for which side it is made').choices(['left', 'right']))
    .option('--vehicle <vehicle>', 'id of the vehicle that it came off')
    .option('--number <number>', 'a number on it, * for what is unread (repeatable)', addText)
    .option('--measured <place=value>', 'what was read, by [face.]parameter (repeatable)', addPair)
    .option('--tool <place=tool>', 'what it was read with, by its id (repeatable)', addPair)
    .option('--name-excluded', 'name the parts that are left out')
    .option('--limit <n>', 'list so many at most; all where left out', entries);
  addStoreOptions(addValuesOptions(command))
    .addHelpText('after', EXAMPLES)
    .action((options: IdentifyPartOptions) => {
      const answer = session.ask(options, (library) => answerOf(library, options));
      session.tell(answer, options, sayCandidates);
    });
}

function addText(text: string, before: readonly string[] = []): string[] {
  return [...before, text];
}

function entries(text: string): number {
  return wholeNumber(text, { least: 1, most: Number.MAX_SAFE_INTEGER });
}

function answerOf(library: Library, options: IdentifyPartOptions) {
  const { role, hand, vehicle, number, measured = [], tool = [], nameExcluded } = options;
  const filters = identifyPartFilters({
    role,
    hand,
    vehicle,
    numbers: number === undefined ? undefined : [...number],
    nameExcluded,
  });
  const asked = {
    ...filters,
    measured: readingsOf(measured, tool),
    units: valuesInput(options).units,
  };
  const { edition, lang } = valuesInput(options);
  const head = library.head(edition);
  const { limit = Number.MAX_SAFE_INTEGER } = options;
  const answer = identifyPart(library, {
    ...asked,
    edition: head.number,
    lang,
    limit,
    after: null,
  });
  return withCursor(answer, head, listName(identifyPartOperation, asked));
}

/** A place that is named several times has a list, in this order. */
function readingsOf(measured: readonly Pair[], tools: readonly Pair[]): PieceReading[] {
  const values = new Map<string, string[]>();
  for (const { key, value } of measured) values.set(key, [...(values.get(key) ?? []), value]);
  for (const { key } of tools) {
    if (values.has(key)) continue;
    throw new CommandFault('bad-usage', `--tool names what was not read: ${key}.`, {
      remedy: `Add --measured "${key}=<value>".`,
    });
  }
  return [...values].map(([key, list]): PieceReading => {
    const [only, ...others] = list;
    const value = only === undefined || others.length > 0 ? list : only;
    const tool = tools.find((pair) => pair.key === key)?.value ?? null;
    return { on: placeOf(key, value), value, tool };
  });
}

const NOWHERE: PieceOn = { interface: null, kind: null, side: null, which: null, parameter: null };

function placeOf(key: string, value: PieceReading['value']): PieceOn {
  const steps = key.split('.');
  const [first = '', second, third, ...others] = steps;
  if (others.length > 0 || steps.includes('')) throw unread(key);
  const [, kind, which] = /^kind:([^:]+)(?::([1-9]\d?))?$/.exec(first) ?? [];
  if (kind === undefined) {
    if (first.startsWith('kind:') || third !== undefined) throw unread(key);
    if (second !== undefined) return { ...NOWHERE, interface: first, parameter: second };
    return { ...NOWHERE, ...(value === 'none' ? { interface: first } : { parameter: first }) };
  }
  if (second === undefined) throw unread(key);
  const face = { ...NOWHERE, kind, which: which === undefined ? null : Number(which) };
  if (third === undefined) return { ...face, parameter: second };
  return { ...face, side: second, parameter: third };
}

function unread(key: string): CommandFault {
  return new CommandFault('bad-usage', `--measured does not name one value: ${key}.`, {
    remedy: 'Write face.parameter, parameter or kind:id.parameter before the equals sign.',
  });
}

type Told = Omit<IdentifyPartAnswer, 'next'>;

function sayCandidates(answer: Told, page: Page): void {
  const { items, nearest, excluded, ask, warnings } = answer;
  const words = wordsIn(answer.lang);
  const { identify, identifyPart: own } = words;
  page.say(answer.summary.text, { tone: 'strong' });
  for (const item of items) sayCandidate(item, page, words);
  if (items.length < answer.counts.total) {
    page.gap();
    page.say(words.show.shownOf(items.length, answer.counts.total), { tone: 'faint' });
  }
  if (nearest.length > 0) {
    page.gap();
    page.say(own.nearest, { tone: 'strong' });
    for (const item of nearest) sayCandidate(item, page, words);
  }
  if (excluded.length > 0) {
    page.gap();
    page.say(identify.leftOut, { tone: 'strong' });
    for (const { name, count, parts } of excluded) {
      page.say(own.excluded(name, count), { indent: 2, marker: '- ' });
      for (const part of parts) {
        page.say(`${called(part.name, part.id, words)}: ${part.text}`, { indent: 4, marker: '- ' });
      }
    }
  }
  sayTexts(
    own.ask,
    ask.map((one) => askText(one, words)),
    page,
  );
  sayTexts(identify.warnings, textsOf(warnings), page);
  sayTexts(words.answer.cautions, textsOf(answer.cautions), page);
  sayOrigin(answer, page);
}

function sayCandidate({ id, name, why }: PieceCandidate, page: Page, words: CliWords): void {
  page.gap();
  page.say(called(name, id, words));
  for (const { text } of why) page.say(text, { indent: 2, marker: '- ' });
}

function askText({ text, values, more }: PieceAskView, { identifyPart: own }: CliWords): string {
  return own.outcomes(
    text,
    values.map(({ label, count }) => `${label} (${count})`),
    more,
  );
}
