/**
 * `faying show kind [ID]`: which kinds of face are there, and what does one compare?
 */

import type { Command } from 'commander';
import { listKindsOperation } from '../contract/kinds.js';
import { listKinds, readKind } from '../usecases/list-kinds.js';
import type { KindAnswer, ParameterView } from '../usecases/vocabulary-view.js';
import { called, sayOrigin, sayTexts, textsOf } from './answer-text.js';
import type { Page } from './page.js';
import { checkText, sayLabelled, sayTitle, specText } from './record-text.js';
import type { Session } from './session.js';
import { addSort } from './show.js';
import type { CliWords } from './words/cli-words.js';

const EXAMPLES = `
Examples:
  $ faying show kind
  $ faying show kind propshaft-flange
`;

export function addShowKind(show: Command, session: Session): void {
  addSort(show, session, {
    word: 'kind',
    hasValues: true,
    summary: 'which kinds of face are there, and what does one compare?',
    examples: EXAMPLES,
    operation: listKindsOperation,
    addFilters: (command) => command,
    filters: () => ({}),
    list: listKinds,
    read: readKind,
    lines: ({ items }) => items,
    sayOne: sayKind,
  });
}

function sayKind(kind: KindAnswer, page: Page, words: CliWords): void {
  const { id, name, standard, sides, parts, parameters, checks, builtIn } = kind;
  const { show, answer } = words;
  sayTitle(name, id, page, words);
  if (builtIn) page.say(show.builtIn);
  sayLabelled('standard', [standard], page, words);
  sayLabelled(
    'sides',
    sides.map((one) => called(one.name, one.side, words)),
    page,
    words,
  );
  sayLabelled('parts', [String(parts)], page, words);
  const specs = parameters.map((one) => specText(one.parameter, one, notesOf(one, words), words));
  sayTexts(show.headings.parameters, specs, page);
  sayTexts(
    show.headings.checks,
    checks.map((check) => checkText(check, words)),
    page,
  );
  sayTexts(answer.notChecked, kind.notChecked, page);
  sayTexts(answer.cautions, textsOf(kind.cautions), page);
  sayOrigin(kind, page);
}

function notesOf({ side, optional, unless }: ParameterView, { show }: CliWords): string[] {
  return [
    ...(side === null ? [] : [show.side(side)]),
    ...(optional ? [show.notes.mayBeLeftOut] : []),
    ...(unless.length === 0 ? [] : [show.unless(unless)]),
  ];
}
