/**
 * `faying show layout [ID]`: which vehicle architectures are there, and what is in one?
 */

import type { Command } from 'commander';
import { listLayoutsOperation } from '../contract/layouts.js';
import type { LayoutAnswer, PositionView } from '../usecases/catalogue-view.js';
import { listLayouts, readLayout } from '../usecases/list-layouts.js';
import { place, sayOrigin, sayTexts } from './answer-text.js';
import type { Page } from './page.js';
import { checkText, sayTitle } from './record-text.js';
import type { Session } from './session.js';
import { addSort } from './show.js';
import type { CliWords } from './words/cli-words.js';

const EXAMPLES = `
Examples:
  $ faying show layout
  $ faying show layout long-awd
`;

export function addShowLayout(show: Command, session: Session): void {
  addSort(show, session, {
    word: 'layout',
    hasValues: false,
    summary: 'which vehicle architectures are there, and what is in one?',
    examples: EXAMPLES,
    operation: listLayoutsOperation,
    addFilters: (command) => command,
    filters: () => ({}),
    list: listLayouts,
    read: readLayout,
    lines: ({ items }) => items,
    sayOne: sayLayout,
  });
}

function sayLayout(layout: LayoutAnswer, page: Page, words: CliWords): void {
  const { id, name, positions, matings, checks, terms } = layout;
  const { headings, and, adapters: most } = words.show;
  sayTitle(name, id, page, words);
  sayTexts(
    headings.positions,
    positions.map((one) => positionText(one, words)),
    page,
  );
  const joints = matings.map(
    ({ mating, between, adapters }) => `${mating}: ${and(between)}, ${most(adapters)}`,
  );
  sayTexts(headings.matings, joints, page);
  sayTexts(
    headings.checks,
    checks.map((check) => checkText(check, words)),
    page,
  );
  sayTexts(
    headings.terms,
    terms.map(({ term, name: text }) => place(text, term)),
    page,
  );
  sayOrigin(layout, page);
}

function positionText(position: PositionView, { show }: CliWords): string {
  const { name, roles, count, handed, optional, behind, labourHours, accessHours } = position;
  const notes = [
    roles.join(', '),
    ...(count === 1 ? [] : [show.pieces(count)]),
    ...(handed ? [show.notes.handed] : []),
    ...(optional ? [show.notes.mayBeEmpty] : []),
    ...(behind.length === 0 ? [] : [show.behind(behind)]),
    ...(labourHours === null ? [] : [show.labour(labourHours)]),
    ...(accessHours === null ? [] : [show.access(accessHours)]),
  ];
  return `${place(name, position.position)}: ${notes.join('; ')}`;
}
