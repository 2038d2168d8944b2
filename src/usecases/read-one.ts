/**
 * One thing of the catalogue, whole, by its id.
 */

import { nearest } from '../domain/catalogue/faults.js';
import { Faults } from './faults.js';
import type { CommonInput, ValuesInput } from './question.js';

export interface ReadInput extends CommonInput {
  readonly id: string;
}

/** Of what has values. */
export interface ReadValuesInput extends ReadInput, ValuesInput {}

type Word = 'fact' | 'kind' | 'layout' | 'part' | 'role' | 'vehicle' | 'work';

/** An id, where it stands, and whether to look what was meant by one that nothing has. */
interface Named {
  readonly id: string;
  readonly at: string;
  readonly guesses?: boolean;
}

/** What has the id; throws a `QuestionError` that says what was probably meant. */
export function oneOf<Thing>(
  things: ReadonlyMap<string, Thing>,
  word: Word,
  { id }: Pick<ReadInput, 'id'>,
): Thing {
  const faults = new Faults();
  return checkOne(things, word, { id, at: 'id' }, faults) ?? faults.end();
}

/** The same for an id that stands in a field of a question. */
export function checkOne<Thing>(
  things: ReadonlyMap<string, Thing>,
  word: Word,
  { id, at, guesses = true }: Named,
  faults: Faults,
): Thing | undefined {
  const found = things.get(id);
  if (found === undefined) {
    const meant = guesses ? nearest(id, things.keys()) : null;
    faults.add(at, `unknown-${word}`, { name: id, meant });
  }
  return found;
}
