/**
 * Which parts are in the catalogue?
 */

import type { Part } from '../domain/catalogue/catalogue.js';
import { Faults } from './faults.js';
import { withHead } from './head.js';
import type { Library } from './library.js';
import { type ListAnswer, type ListInput, pageOfSorted } from './listing.js';
import { type PartFilter, partDirectory } from './part-directory.js';
import type { PartEntry } from './part-view.js';
import { checkOne } from './read-one.js';
import { Speaker } from './speaker.js';

export interface PartsInput extends ListInput, PartFilter {}

export interface PartsAnswer extends ListAnswer<PartEntry> {
  /** Names that are looked up may need the price and stock list; no filter does. */
  offers: null;
}

/** Those of which everything is true that is asked, in the order of their ids. */
export function listParts(library: Library, input: PartsInput): PartsAnswer {
  const edition = library.edition(input.edition);
  const { catalogue } = edition;
  const { role, kind } = input;
  const faults = new Faults();
  // No part is of a role that is not there, which would read as if none were recorded.
  if (role !== null) checkOne(catalogue.roles, 'role', { id: role, at: 'role' }, faults);
  if (kind !== null) checkOne(catalogue.kinds, 'kind', { id: kind, at: 'kind' }, faults);
  faults.endIfAny();
  const speaker = new Speaker({ catalogue, layout: null, lang: input.lang });
  const found = partDirectory(catalogue).find(input);
  const { rows, next, total } = pageOfSorted(found, ({ id }) => [id], input);
  const items = rows.map((part) => partEntry(part, speaker));
  return withHead(edition, speaker, { offers: null, items, next, counts: { total } });
}

export function partEntry(part: Part, speaker: Speaker): PartEntry {
  const { id, name, roles, maker, numbers, hand, spans, built, supersededBy } = part;
  return {
    id,
    name: speaker.text(name),
    roles: [...roles],
    maker,
    numbers: numbers.map(({ number, of }) => ({ number, of })),
    hand,
    spans: [...(spans ?? [])],
    built: [...built],
    supersededBy,
  };
}
