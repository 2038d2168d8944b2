/**
 * Which language a text is said in. Texts of a catalogue may come in several; one that lacks the
 * language asked for falls back to the catalogue's own, and says so.
 */

import type { Text } from '../catalogue/document.js';

export interface SaidText {
  readonly text: string;
  /** The language it is in; differs from the one asked for where there was no such text. */
  readonly lang: string;
}

/** A text in a language, else in the catalogue's, else in whichever there is. */
export function textIn(text: Text, lang: string, fallback: string): SaidText {
  if (typeof text === 'string') return { text, lang: fallback };
  for (const one of [lang, fallback]) {
    const found = Object.hasOwn(text, one) ? text[one] : undefined;
    if (found !== undefined) return { text: found, lang: one };
  }
  const [first] = Object.entries(text);
  if (first === undefined) throw new Error('a text has at least one language');
  return { text: first[1], lang: first[0] };
}
