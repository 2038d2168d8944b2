/**
 * Says problems and their faults in a language. Where a fault quotes what the domain says, the
 * language of that text is told beside it.
 */

import { echo } from '../json-pointer.js';
import { LIMITS } from '../limits.js';
import type { FaultWire } from '../problem.js';
import { ENGLISH_FAULTS, englishStop } from './english-faults.js';
import { ENGLISH_PROBLEMS } from './english-problems.js';
import type { Fault, FaultCode, FaultData, JsonStop } from './fault.js';
import type { ProblemCode } from './problem-type.js';
import type { ProblemWords } from './problem-words.js';

const ENGLISH: ProblemWords = {
  problems: ENGLISH_PROBLEMS,
  faults: ENGLISH_FAULTS,
  jsonStop: englishStop,
  first: (place, text, others) => `${place}${text}${moreOf(others)}`,
  page: {
    code: (code, status) => `Code ${code}, status ${status}.`,
    again: {
      no: 'Asking again does not help.',
      later: 'The same request may be answered later.',
      'with-change': 'Ask again with something changed.',
    },
  },
};

/** The exact number only where all are told: beyond that, not every one is looked for. */
function moreOf(others: number): string {
  const most = LIMITS.faultsTold.value;
  if (others === 0) return '';
  if (others >= most) return ` And more than ${most - 1} others.`;
  return ` And ${others} more fault${others === 1 ? '' : 's'}.`;
}

const LANGUAGES: ReadonlyMap<string, ProblemWords> = new Map([['en', ENGLISH]]);

export function problemWords(lang: string): ProblemWords {
  return LANGUAGES.get(lang) ?? ENGLISH;
}

/** The sentence of a fault. */
export function sayFault({ code, data }: Fault, lang: string): string {
  return sentenceOf(code, data, lang);
}

function sentenceOf<Code extends FaultCode>(
  code: Code,
  data: FaultData[Code],
  lang: string,
): string {
  return problemWords(lang).faults[code](data);
}

/** A fault with its sentence, as it is told outside; `lang` where the text is in another one. */
export function saidFault(
  fault: Fault,
  lang: string,
): Pick<FaultWire, 'code' | 'data' | 'text' | 'lang'> {
  const { code, data } = fault;
  // What the domain says stands in `text` itself.
  const { text: _, lang: quoted = lang, ...told } = data as Readonly<Record<string, Told>>;
  return {
    code,
    data: Object.fromEntries(Object.entries(told).map(([name, value]) => [name, shown(value)])),
    text: sayFault(fault, lang),
    ...(quoted === lang ? {} : { lang: String(quoted) }),
  };
}

type Told = FaultWire['data'][string];

/** Nobody is sent back more than they can read of what they sent. */
function shown(value: Told): Told {
  return typeof value === 'string' ? echo(value) : value;
}

/** What is expected where a text stops being JSON, and what is there, without its place. */
export function sayStop(stop: JsonStop, lang: string): string {
  return problemWords(lang).jsonStop(stop);
}

/** What a problem says of this one request: its first fault, or what the type means. */
export function sayDetail(
  code: ProblemCode,
  faults: readonly (Fault & Pick<FaultWire, 'pointer' | 'parameter'>)[],
  lang: string,
): string {
  const { problems, first: sayFirst } = problemWords(lang);
  const [first, ...others] = faults;
  if (first === undefined) return problems[code].about;
  const text = sayFault(first, lang);
  if (code !== 'invalid-request') return text;
  const place = first.parameter ?? first.pointer ?? '';
  return sayFirst(place === '' ? '' : `${echo(place)}: `, text, others.length);
}
