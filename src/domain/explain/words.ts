/**
 * Turns reasons into sentences. Languages are tables with one sentence per code, so that a
 * language that lacks one does not compile.
 */

import { ENGLISH, type Words } from './english.js';
import { CAUTION_GROUPS, REASON_CODES, type Reason, type ReasonCode } from './reason.js';

const LANGUAGES: ReadonlyMap<string, Words> = new Map([['en', ENGLISH]]);

/** The languages that sentences can be said in. */
export const SPOKEN: readonly string[] = [...LANGUAGES.keys()];

/** The language spoken for a wish: the wished one if there is one, else English. */
export function spokenFor(lang: string): string {
  return LANGUAGES.has(lang) ? lang : 'en';
}

function wordsOf(lang: string): Words {
  return LANGUAGES.get(lang) ?? ENGLISH;
}

function isReasonCode(code: string): code is ReasonCode {
  return REASON_CODES.some((known) => known === code);
}

/** The sentence of a reason. A code that a catalogue made up is said by the check's own text. */
export function say(reason: Reason, lang: string): string {
  const { sentences, ownCode } = wordsOf(lang);
  const sentence = isReasonCode(reason.code) ? sentences[reason.code] : ownCode;
  return sentence(reason.data).replace(/\s+/g, ' ').trim();
}

/** The usual caution of a group; a group that is not known gets the general one. */
export function sayCaution(group: string, lang: string): string {
  const known = CAUTION_GROUPS.find((one) => one === group) ?? 'general';
  return wordsOf(lang).cautions[known];
}
