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
const LANGUAGE_RANGE = /^(\*|[A-Za-z]{1,8}(-[A-Za-z0-9]{1,8})*)$/;

/** Whether the media type may be sent; the most specific range that names it decides. */
export function accepts(header: string | null, mediaType: string): boolean {
  if (header === null) return true;
  const wishes = wishesOf(header, MEDIA_RANGE);
  if (wishes.length === 0) return true;
  const [major = ''] = mediaType.split('/');
  for (const range of [mediaType, `${major}/*`, '*/*']) {
    const named = wishes.filter((wish) => wish.range === range);
    if (named.length > 0) return named.some(({ weight }) => weight > 0);
  }
  return false;
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
