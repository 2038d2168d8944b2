/**
 * One thing of the catalogue, whole, by its id.
 */

import { nearest } from '../domain/catalogue/faults.js';
import { type CommonInput, Faults } from './question.js';

export interface ReadInput extends CommonInput {
  readonly id: string;
}

/** What has the id, or a `QuestionError` that names the field and what was probably meant. */
export function oneOf<Thing>(
  things: ReadonlyMap<string, Thing>,
  word: 'kind' | 'layout' | 'role',
  { id, at = 'id' }: { readonly id: string; readonly at?: string },
): Thing {
  const found = things.get(id);
  if (found !== undefined) return found;
  const faults = new Faults();
  faults.add(at, `unknown-${word}`, { name: id, meant: nearest(id, things.keys()) });
  return faults.end();
}
