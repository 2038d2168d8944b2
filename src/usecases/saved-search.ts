/**
 * The search behind a kit question, kept as data and run again elsewhere: for whoever looks into
 * how long one takes, or what it chose from. It needs no catalogue, and answers no question.
 */

import { type Replayed, replayKits, type SavedKits, saveKits } from '../domain/kit/saved-kits.js';
import { Faults } from './faults.js';
import type { KitInput } from './kit-input.js';
import { kitQuestionOf } from './kit-question.js';
import type { Library } from './library.js';

export type { Replayed, SavedKits } from '../domain/kit/saved-kits.js';

export function saveSearch(library: Library, input: KitInput): SavedKits {
  const edition = library.edition(input.edition);
  const { question } = kitQuestionOf({ library, edition, input }, new Faults());
  return saveKits(question);
}

/** Null where this program would ask something that the one which saved it did not. */
export function replaySearch(saved: SavedKits): Replayed | null {
  try {
    return replayKits(saved);
  } catch (error) {
    if (error instanceof RangeError) return null;
    throw error;
  }
}
