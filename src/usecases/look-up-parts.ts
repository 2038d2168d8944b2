/**
 * Which parts do these names lead to? Each name by itself: one that leads to none, or to several,
 * is a fault of its own and takes nothing from the others.
 */

import { AskedParts, type NamingInput } from './asked-parts.js';
import { Faults } from './faults.js';
import { withHead } from './head.js';
import type { Library } from './library.js';
import { partEntry } from './list-parts.js';
import type { ListAnswer } from './listing.js';
import type { FoundPartEntry, LostPart } from './part-view.js';
import type { QuestionFault } from './question-fault.js';
import { Speaker } from './speaker.js';

export interface LookUpInput extends NamingInput {
  /** One or more. */
  readonly names: readonly string[];
}

export interface LookUpAnswer extends ListAnswer<FoundPartEntry | LostPart<QuestionFault>> {
  /** Of the price and stock list, where an order code was looked up in it; else null. */
  offers: number | null;
}

/** In the order of the names; there are no pages of it. */
export function lookUpParts(library: Library, input: LookUpInput): LookUpAnswer {
  const edition = library.edition(input.edition);
  const { names } = input;
  const faults = new Faults();
  const parts = new AskedParts({ library, edition, input }, names, faults);
  const speaker = new Speaker({ catalogue: parts.catalogue, layout: null, lang: input.lang });
  const items = names.map((asked) => {
    const before = faults.found.length;
    const found = parts.find(asked, 'part');
    if (found === null) return { asked, faults: faults.found.slice(before) };
    const { part, resolvedBy, supersededBy } = found;
    return { asked, resolvedBy, ...partEntry(part, speaker), supersededBy };
  });
  const counts = { total: items.length };
  return withHead(edition, speaker, { offers: parts.offers, items, next: null, counts });
}
