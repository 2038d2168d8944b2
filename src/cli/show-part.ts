/**
 * `faying show part [NAME]`: which parts are there, and what is recorded of one?
 */

import { type Command, Option } from 'commander';
import { sayBuilt } from '../contract/built.js';
import { listPartsOperation, partsFilters } from '../contract/parts.js';
import { QuestionError } from '../usecases/errors.js';
import type { Library } from '../usecases/library.js';
import { listParts } from '../usecases/list-parts.js';
import { lookUpParts } from '../usecases/look-up-parts.js';
import type { InterfaceView, PartAnswer, PartNumberView } from '../usecases/part-view.js';
import type { ReadValuesInput } from '../usecases/read-one.js';
import { readPart } from '../usecases/read-part.js';
import { called, sayOrigin, sayTexts, textsOf } from './answer-text.js';
import type { Page } from './page.js';
import { otherEvidence, sayLabelled, sayTitle, valueText } from './record-text.js';
import type { Session } from './session.js';
import { addSort, type ShowOptions } from './show.js';
import type { CliWords } from './words/cli-words.js';

interface PartOptions extends ShowOptions {
  readonly role?: string;
  readonly kind?: string;
  readonly maker?: string;
  readonly number?: string;
  readonly text?: string;
  readonly superseded?: 'true' | 'false';
}

const EXAMPLES = `
Examples:
  $ faying show part --role gearbox
  $ faying show part gearbox-6-late
  $ faying show part sku:F-1001
`;

export function addShowPart(show: Command, session: Session): void {
  addSort(show, session, {
    word: 'part',
    hasValues: true,
    summary: 'which parts are there, and what is recorded of one?',
    examples: EXAMPLES,
    operation: listPartsOperation,
    addFilters,
    filters: ({ superseded, ...known }: PartOptions) =>
      partsFilters({
        ...known,
        superseded: superseded === undefined ? undefined : superseded === 'true',
      }),
    list: listParts,
    read: readNamed,
    lines: ({ items }) => items,
    sayOne: sayPart,
  });
}

/** By any of its names; a path of the service takes ids alone. */
function readNamed(library: Library, input: ReadValuesInput): PartAnswer {
  const { edition, lang, id: name } = input;
  const [found] = lookUpParts(library, { edition, lang, names: [name] }).items;
  if (found === undefined) throw new Error('each name that is looked up has an item');
  if (!('faults' in found)) return readPart(library, { ...input, id: found.id });
  const [first, ...others] = found.faults.map((fault) => ({ ...fault, at: 'id' }));
  if (first === undefined) throw new Error(`"${name}" is lost without a fault`);
  throw new QuestionError([first, ...others]);
}

function addFilters(command: Command): Command {
  const superseded = 'only those that another took the place of, or only the others';
  return command
    .option('--role <role>', 'only those of this role')
    .option('--kind <kind>', 'only those with a face of this kind')
    .option('--maker <name>', 'only those of this maker')
    .option('--number <number>', 'only those with this number; @ and whose it is may follow')
    .option('--text <words>', 'only those with all these words in names, id, numbers or maker')
    .addOption(new Option('--superseded <whether>', superseded).choices(['true', 'false']));
}

function sayPart(part: PartAnswer, page: Page, words: CliWords): void {
  const { id, name, roles, maker, numbers, hand, spans, built, supersededBy, evidence } = part;
  const { show } = words;
  const [from = null, until = null] = built;
  sayTitle(name, id, page, words);
  sayLabelled('roles', roles, page, words);
  sayLabelled('maker', [maker], page, words);
  sayLabelled('numbers', numbers.map(numberText), page, words);
  sayLabelled('hand', [hand === null ? null : words.hands[hand]], page, words);
  sayLabelled('spans', spans, page, words);
  sayLabelled('built', [sayBuilt([from, until], part.lang)], page, words);
  sayLabelled('supersededBy', [supersededBy], page, words);
  sayLabelled('evidence', [show.evidence(evidence)], page, words);
  sayFaces(part, page, words);
  const values = part.values.map((value) => valueText(value, evidence, words));
  sayTexts(show.headings.values, values, page);
  sayMissing(part, page, words);
  sayTexts(words.answer.cautions, textsOf(part.cautions), page);
  sayOrigin(part, page);
}

/** A number of the part's own maker needs no owner. */
function numberText({ number, of }: PartNumberView): string {
  return of === 'maker' ? number : `${number} (${of})`;
}

function sayFaces({ interfaces, evidence }: PartAnswer, page: Page, words: CliWords): void {
  if (interfaces.length === 0) return;
  const { show } = words;
  page.gap();
  page.say(show.headings.faces, { tone: 'strong' });
  for (const face of interfaces) {
    const notes = [...faceNotes(face, words), ...otherEvidence(face.evidence, evidence, show)];
    page.say(`${face.interface}: ${notes.join(', ')}`, { indent: 2, marker: '- ' });
    const isOne = face.alternatives.length === 1;
    for (const [index, { parameters, notRecorded }] of face.alternatives.entries()) {
      if (!isOne) page.say(show.way(index + 1), { indent: 4 });
      const texts = [
        ...parameters.map((value) => valueText(value, face.evidence, words)),
        ...(notRecorded.length === 0 ? [] : [show.notRecorded(notRecorded)]),
      ];
      for (const text of texts) page.say(text, { indent: isOne ? 4 : 6, marker: '- ' });
    }
  }
}

function faceNotes(face: InterfaceView, words: CliWords): string[] {
  const { kind, kindName, side, optional, absent } = face;
  const { notes, side: ofSide } = words.show;
  return [
    ...(kind === null ? [] : [called(kindName, kind, words)]),
    ...(side === null ? [] : [ofSide(side)]),
    ...(optional ? [notes.mayBeAlone] : []),
    ...(absent ? [notes.absent] : []),
  ];
}

function sayMissing({ notRecorded }: PartAnswer, page: Page, { show }: CliWords): void {
  const { interfaces, values } = notRecorded;
  const texts = [
    ...(interfaces.length === 0 ? [] : [`${show.labels.faces}: ${interfaces.join(', ')}`]),
    ...(values.length === 0 ? [] : [`${show.labels.values}: ${values.join(', ')}`]),
  ];
  sayTexts(show.headings.notRecorded, texts, page);
}
