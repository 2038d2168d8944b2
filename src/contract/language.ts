/**
 * The languages of answers, and which of them a wish gets.
 */

import { SPOKEN, spokenFor } from '../domain/explain/words.js';

/** Languages that sentences can be said in; the first stands in for all others. */
export const SPOKEN_LANGUAGES: readonly string[] = SPOKEN;

/** The language spoken for a tag: itself, else its first part (`de` for `de-AT`), else none. */
export function languageFor(tag: string): string | null {
  const lower = tag.toLowerCase();
  const [primary = ''] = lower.split('-');
  return SPOKEN.find((one) => one.toLowerCase() === lower) ?? SPOKEN.find(isOf(primary)) ?? null;
}

/** The language that is spoken where no wish can be met. */
export const FALLBACK_LANGUAGE: string = spokenFor('');

function isOf(primary: string): (spoken: string) => boolean {
  return (spoken) => spoken.toLowerCase() === primary;
}
