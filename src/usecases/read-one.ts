/**
 * One thing of the catalogue, whole, by its id.
 */

import { hint } from '../domain/catalogue/faults.js';
import type { QuestionErrorCode } from './errors.js';
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
  const code: QuestionErrorCode = `unknown-${word}`;
  faults.add(at, code, `There is no ${word} "${id}".${hint(id, things.keys())}`);
  return faults.end();
}
