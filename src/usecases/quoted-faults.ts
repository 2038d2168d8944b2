/**
 * A list for the faults of what a question writes in the form of the catalogue document.
 */

import { FaultList } from '../domain/catalogue/faults.js';
import { LostNames } from '../domain/catalogue/lost-names.js';

/** More guesses than that would keep everybody else waiting. */
const MOST_GUESSED = 50;

export function faultList(): FaultList {
  return new FaultList(LostNames.none(), MOST_GUESSED);
}
