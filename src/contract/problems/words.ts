/**
 * Says problems and their faults in a language. Where a fault quotes what the domain says, the
 * language of that text is told beside it.
 */

import { echo } from '../json-pointer.js';
import type { Language } from '../language.js';
import type { FaultWire } from '../problem.js';
import { ENGLISH } from './english.js';
import type { Fault, FaultCode, FaultData, JsonStop } from './fault.js';
import { GERMAN } from './german.js';
import type { ProblemCode } from './problem-type.js';
import type { ProblemWords } from './problem-words.js';

const LANGUAGES: Readonly<Record<Language, ProblemWords>> = { en: ENGLISH, de: GERMAN };

/** The words of a spoken language. */
export function problemWords(lang: Language): ProblemWords {
  return LANGUAGES[lang];
}

/** The sentence of a fault. */
export function sayFault({ code, data }: Fault, lang: Language): string {
  return sentenceOf(code, data, lang);
}

function sentenceOf<Code extends FaultCode>(
  code: Code,
  data: FaultData[Code],
  lang: Language,
): string {
  return problemWords(lang).faults[code](data);
}

/** A fault with its sentence, as it is told outside; `lang` where the text is in another one. */
export function saidFault(
  fault: Fault,
  lang: Language,
): Pick<FaultWire, 'code' | 'data' | 'text' | 'lang'> {
  const { code, data } = fault;
  // What the domain says stands in `text` itself.
  const { text: _, lang: quoted = lang, ...told } = data as Readonly<Record<string, Told>>;
  return {
    code,
    data: Object.fromEntries(Object.entries(told).map(([name, value]) => [name, shown(value)])),
    text: sayFault(fault, lang),
    ...(typeof quoted !== 'string' || quoted === lang ? {} : { lang: quoted }),
  };
}

type Told = FaultWire['data'][string];

/** Nobody is sent back more than they can read of what they sent. */
function shown(value: Told): Told {
  return typeof value === 'string' ? echo(value) : value;
}

/** What is expected where a text stops being JSON, and what is there, without its place. */
export function sayStop(stop: JsonStop, lang: Language): string {
  return problemWords(lang).jsonStop(stop);
}

/** What a problem says of this one request: its first fault, or what the type means. */
export function sayDetail(
  code: ProblemCode,
  faults: readonly (Fault & Pick<FaultWire, 'pointer' | 'parameter'>)[],
  lang: Language,
): string {
  const { problems, others: sayOthers } = problemWords(lang);
  const [first, ...others] = faults;
  if (first === undefined) return problems[code].about;
  const text = sayFault(first, lang);
  if (code !== 'invalid-request') return text;
  const place = first.parameter ?? first.pointer ?? '';
  const more = others.length === 0 ? '' : ` ${sayOthers(others.length)}`;
  return `${place === '' ? '' : `${echo(place)}: `}${text}${more}`;
}
