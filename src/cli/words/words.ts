/**
 * The words of the command line in the language that an answer is spoken in.
 */

import { type Language, spokenFor } from '../../contract/language.js';
import type { CliWords } from './cli-words.js';
import { ENGLISH } from './english.js';
import { GERMAN } from './german.js';

const LANGUAGES: Readonly<Record<Language, CliWords>> = { en: ENGLISH, de: GERMAN };

export function wordsIn(lang: string): CliWords {
  return LANGUAGES[spokenFor(lang)];
}
