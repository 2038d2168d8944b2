/**
 * Turns reasons into sentences. Languages are tables with one sentence per code, so that a
 * language that lacks one does not compile.
 */

import type { Hand } from '../check/reading.js';
import { ENGLISH } from './english.js';
import { GERMAN } from './german.js';
import type { NumberWords } from './number-words.js';
import { CAUTION_GROUPS, REASON_CODES, type Reason, type ReasonCode } from './reason.js';
import type { Compared, Words } from './sentence.js';
import type { FieldWords, LookedAtWords, VehicleField } from './vehicle-words.js';

/** The languages that sentences can be said in; whatever else is said has words in each. */
export type Language = 'en' | 'de';

const TABLES: Readonly<Record<Language, Words>> = { en: ENGLISH, de: GERMAN };

const LANGUAGES: ReadonlyMap<string, Words> = new Map(Object.entries(TABLES));

export const SPOKEN = Object.keys(TABLES) as readonly Language[];

/** The language that is spoken where no wish can be met. */
export const FALLBACK_LANGUAGE: Language = 'en';

/** The language spoken for a tag: itself, else its first part (`de` for `de-AT`), else none. */
export function languageFor(tag: string): Language | null {
  const whole = tag.toLowerCase();
  const [primary = ''] = whole.split('-');
  return SPOKEN.find((one) => one === whole) ?? SPOKEN.find((one) => one === primary) ?? null;
}

/** The language spoken for a wish: the nearest to it that there is, else English. */
export function spokenFor(lang: string): Language {
  return languageFor(lang) ?? FALLBACK_LANGUAGE;
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

/** What a row is called that compares routes. */
export function sayCompared(row: Compared, lang: string): string {
  return wordsOf(lang).compared[row];
}

/** How a language writes numbers. */
export function numbersIn(lang: string): NumberWords {
  return wordsOf(lang).numbers;
}

/** So many points, as a value. */
export function sayPoints(count: number, lang: string): string {
  return wordsOf(lang).points(count);
}

/** The name of a part that a question writes out, in every language. */
export function partOfQuestion(end: string): { readonly [language: string]: string } {
  return Object.fromEntries(
    [...LANGUAGES].map(([lang, words]) => [lang, words.partOfQuestion(end)]),
  );
}

/** The name of what nobody recorded of a vehicle that is taken apart. */
export function sayOfDonor(
  {
    place,
    hand,
    lot,
  }: { readonly place: string; readonly hand: Hand | null; readonly lot: string },
  lang: string,
): string {
  return wordsOf(lang).ofDonor(place, hand, lot);
}

export function sayHand(hand: Hand, lang: string): string {
  return wordsOf(lang).hands[hand];
}

export function sayNoSuchFace(lang: string): string {
  return wordsOf(lang).noSuchFace;
}

/** What is asked of a vehicle, and how to find it out. */
export function sayField(field: VehicleField, lang: string): FieldWords {
  return wordsOf(lang).vehicles.fields[field];
}

/** How to find out what is fitted at a place, and what is said where nothing is. */
export function sayLookedAt(lang: string): LookedAtWords {
  return wordsOf(lang).vehicles.lookedAt;
}

/** Why a vehicle may be meant: what was told agrees with its record, or is not recorded. */
export function sayTold(name: string, isRecorded: boolean, lang: string): string {
  const { agrees, notRecorded } = wordsOf(lang).vehicles;
  return isRecorded ? agrees(name) : notRecorded(name);
}

/** `09/2002 to 08/2005`; null where neither end is known. Months are given as `2002-09`. */
export function sayBuilt(
  [from, until]: readonly [string | null, string | null],
  lang: string,
): string | null {
  if (from === null && until === null) return null;
  const end = (month: string | null) => (month === null ? null : sayMonth(month));
  return wordsOf(lang).vehicles.built(end(from), end(until));
}

/** `09/2002`: in figures, so it needs no language. */
export function sayMonth(month: string): string {
  const [year, number] = month.split('-');
  return `${number}/${year}`;
}
