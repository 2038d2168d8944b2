/**
 * `faying show role [ID]`: what can a part be, and what is recorded of such a part?
 */

import type { Command } from 'commander';
import { listRolesOperation } from '../contract/roles.js';
import { listRoles, readRole } from '../usecases/list-roles.js';
import type { RoleAnswer, RoleValueView } from '../usecases/vocabulary-view.js';
import { sayOrigin, sayTexts, textsOf } from './answer-text.js';
import type { Page } from './page.js';
import { sayLabelled, sayTitle, specText } from './record-text.js';
import type { Session } from './session.js';
import { addSort } from './show.js';
import type { CliWords } from './words/cli-words.js';

const EXAMPLES = `
Examples:
  $ faying show role
  $ faying show role gearbox
`;

export function addShowRole(show: Command, session: Session): void {
  addSort(show, session, {
    word: 'role',
    hasValues: true,
    summary: 'what can a part be, and what is recorded of such a part?',
    examples: EXAMPLES,
    operation: listRolesOperation,
    addFilters: (command) => command,
    filters: () => ({}),
    list: listRoles,
    read: readRole,
    lines: ({ items }) => items,
    sayOne: sayRole,
  });
}

function sayRole(role: RoleAnswer, page: Page, words: CliWords): void {
  const { id, name, parts, faces, values } = role;
  const { show, answer } = words;
  sayTitle(name, id, page, words);
  sayLabelled('parts', [String(parts)], page, words);
  sayLabelled('faces', faces ?? [show.notes.facesLeftOpen], page, words);
  const specs = values.map((one) => specText(one.parameter, one, notesOf(one, words), words));
  sayTexts(show.headings.values, specs, page);
  sayTexts(answer.cautions, textsOf(role.cautions), page);
  sayOrigin(role, page);
}

function notesOf(value: RoleValueView, { show }: CliWords): string[] {
  const { list, rating, derived, askedAs } = value;
  const { notes } = show;
  return [
    ...(list ? [notes.list] : []),
    ...(rating ? [notes.rating] : []),
    ...(derived ? [notes.derived] : []),
    ...(askedAs === null ? [] : [show.asked(askedAs)]),
  ];
}
