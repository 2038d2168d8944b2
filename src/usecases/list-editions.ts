/**
 * Which editions are there, and what is known of each?
 */

import { ENGINE } from '../domain/engine.js';
import type { Library } from './library.js';
import type { SortKey } from './listing.js';
import type { EditionHead } from './ports.js';

export interface EditionsInput {
  /** Number of the newest edition of the list; null for the newest there is. */
  readonly newest: number | null;
  /** Only editions before this one; null for the first page. */
  readonly before: number | null;
  readonly limit: number;
}

export interface EditionsAnswer {
  /** The newest of the list; null where nothing has been published. */
  edition: number | null;
  engine: string;
  items: EditionHead[];
  next: SortKey | null;
  counts: { total: number };
}

export interface EditionAnswer extends EditionHead {
  readonly edition: number;
  readonly engine: string;
}

/**
 * The newest first. An edition that is published between two pages is in none of them: it comes
 * before the first, and what comes after an edition never changes.
 */
export function listEditions(library: Library, input: EditionsInput): EditionsAnswer {
  const { newest, before, limit } = input;
  const heads = library.editions().filter(({ number }) => number <= (newest ?? number));
  const rest = before === null ? heads : heads.filter(({ number }) => number < before);
  const items = rest.slice(0, limit);
  const last = items.at(-1);
  return {
    edition: heads[0]?.number ?? null,
    engine: ENGINE,
    items: items.map(headFields),
    next: last === undefined || items.length === rest.length ? null : [String(last.number)],
    counts: { total: heads.length },
  };
}

/** The head of one edition, the newest where `number` is null. */
export function readEdition(library: Library, number: number | null): EditionAnswer {
  const head = library.head(number);
  return { edition: head.number, engine: ENGINE, ...headFields(head) };
}

function headFields({ number, hash, publishedAt, note, counts }: EditionHead): EditionHead {
  return { number, hash, publishedAt, note, counts };
}
