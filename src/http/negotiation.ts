/**
 * What the client can take: RFC 9110 section 12.5, `Accept` and `Accept-Language`, with weights.
 * A header that cannot be read asks for nothing.
 */

import { FALLBACK_LANGUAGE, type Language, languageFor } from '../contract/language.js';
import { LIMITS } from '../contract/limits.js';

interface Wish {
  readonly range: string;
  readonly weight: number;
}

/** What is beyond it is not looked at, and cannot slow a request down. */
const LONGEST_HEADER = LIMITS.wishCharacters.value;

/** Weights have at most three decimals (RFC 9110 section 12.4.2). */
const WEIGHT = /^(0(\.\d{0,3})?|1(\.0{0,3})?)$/;

const MEDIA_RANGE = /^(\*\/\*|[\w!#$&^.+-]+\/(\*|[\w!#$&^.+-]+))$/;
const CODING_RANGE = /^(\*|[\w.-]+)$/;
const LANGUAGE_RANGE = /^(\*|[A-Za-z]{1,8}(-[A-Za-z0-9]{1,8})*)$/;

/** Whether the media type may be sent; the most specific range that names it decides. */
export function accepts(header: string | null, mediaType: string): boolean {
  return weightOf(header, mediaType) > 0;
}

function weightOf(header: string | null, mediaType: string): number {
  const wishes = header === null ? [] : wishesOf(header, MEDIA_RANGE);
  if (wishes.length === 0) return 1;
  const [major = ''] = mediaType.split('/');
  return weightIn(wishes, [mediaType, `${major}/*`, '*/*']);
}

/** The most that the first of the ranges which is named is wished for; 0 where none is. */
function weightIn(wishes: readonly Wish[], ranges: readonly string[]): number {
  for (const range of ranges) {
    const named = wishes.filter((wish) => wish.range === range);
    if (named.length > 0) return Math.max(...named.map(({ weight }) => weight));
  }
  return 0;
}

/** The media type that is wished for most; the first of equals. */
export function wishedType<Type extends string>(
  header: string | null,
  mediaTypes: readonly [Type, ...Type[]],
): Type {
  const [first, ...others] = mediaTypes;
  let best = { type: first, weight: weightOf(header, first) };
  for (const type of others) {
    const weight = weightOf(header, type);
    if (weight > best.weight) best = { type, weight };
  }
  return best.type;
}

/** Whether an answer may be coded so: only where the client says it (RFC 9110 section 12.5.3). */
export function acceptsCoding(header: string | null, coding: string): boolean {
  if (header === null) return false;
  return weightIn(wishesOf(header, CODING_RANGE), [coding, '*']) > 0;
}

/** The language that is spoken to a client: that of `lang`, else the one it wishes for most. */
export function spokenTo(lang: string | undefined, acceptLanguage: string | null): Language {
  if (lang === undefined) return wishedLanguage(acceptLanguage);
  return languageFor(lang) ?? FALLBACK_LANGUAGE;
}

/** The spoken language that is wished for most; the first of equals. */
export function wishedLanguage(header: string | null): Language {
  if (header === null) return FALLBACK_LANGUAGE;
  let best: { language: Language; weight: number } | null = null;
  for (const { range, weight } of wishesOf(header, LANGUAGE_RANGE)) {
    const language = range === '*' ? FALLBACK_LANGUAGE : languageFor(range);
    if (language === null || weight <= (best?.weight ?? 0)) continue;
    best = { language, weight };
  }
  return best?.language ?? FALLBACK_LANGUAGE;
}

function wishesOf(header: string, form: RegExp): Wish[] {
  return header
    .slice(0, LONGEST_HEADER)
    .split(',')
    .flatMap((item) => {
      const [range = '', ...parameters] = item.split(';').map((piece) => piece.trim());
      if (!form.test(range)) return [];
      const weight = parameters.find((one) => /^q=/i.test(one))?.slice(2) ?? '1';
      return WEIGHT.test(weight) ? [{ range: range.toLowerCase(), weight: Number(weight) }] : [];
    });
}
