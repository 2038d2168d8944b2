/**
 * Everything that can be wrong with a command, as one shape: RFC 9457 problem details. Exit code 2
 * says that the question, the document, the usage or the store is at fault; 1 that the program is.
 */

import { type LineFault, LineRefused } from '../batch/line-refused.js';
import type { Language } from '../contract/language.js';
import type { FaultWire } from '../contract/problem.js';
import { type ProblemCode, typeOf } from '../contract/problems/problem-type.js';
import { problemWords, saidFault, sayDetail } from '../contract/problems/words.js';
import { DocumentRefused, QuestionError, StoreFault } from '../usecases/errors.js';
import type { AskView } from '../usecases/vehicle-view.js';

/** The exit codes of every command. That a part does not fit is an answer. */
export const EXIT = {
  answered: 0,
  bug: 1,
  fault: 2,
  /** All lines of a batch were asked, and some of them have faults. */
  faultyLines: 3,
  /** A receiver could not be told of an edition. */
  notTold: 3,
  /** Lines were broken off before their end. */
  brokenOff: 4,
} as const;

/** Codes of faults that only the command line knows; the others are those of the use-cases. */
export type CommandFaultCode =
  | 'bad-usage'
  | 'unreadable-file'
  | 'unwritable-file'
  | 'malformed-json'
  | 'bad-configuration'
  | 'bad-key'
  | 'port-not-free';

/** The language of what the commands themselves say, and of the faults of documents. */
export const OWN_LANGUAGE: Language = 'en';

export interface Place {
  /** Of a document that is written in lines, from 1; null where it is of none of them. */
  readonly line?: number | null;
  /** RFC 6901 pointer into the document. */
  readonly pointer?: string;
  /** Name of the question's field: `vehicle`, `with.clutch`. */
  readonly parameter?: string;
  readonly code: string;
  /** What the sentence is made of, where a question is at fault. */
  readonly data?: FaultWire['data'];
  readonly text: string;
  /** The language of the text, where it is not that of the problem. */
  readonly lang?: string | undefined;
}

/** As the service gives it over HTTP, without `status` and `instance`. */
export interface Problem {
  readonly type: string;
  /** The last segment of `type`. */
  readonly code: string;
  readonly title: string;
  readonly detail: string;
  /** The language of the title, the detail and of the texts in `errors`. */
  readonly lang: string;
  /** Whether to ask again: not at all, the same later, or something else. */
  readonly retry: 'no' | 'later' | 'with-change';
  /** What to ask to tell vehicles apart, the best question first. */
  readonly ask?: readonly AskView[];
  readonly errors: readonly Place[];
  readonly warnings?: readonly Place[];
  /** What to do about it, in one line. */
  readonly remedy?: string;
}

export class CommandFault extends Error {
  readonly code: CommandFaultCode;
  readonly remedy: string | null;
  readonly places: readonly Place[];

  constructor(
    code: CommandFaultCode,
    message: string,
    more: { readonly remedy?: string; readonly places?: readonly Place[]; cause?: unknown } = {},
  ) {
    super(message, 'cause' in more ? { cause: more.cause } : undefined);
    this.name = 'CommandFault';
    this.code = code;
    this.remedy = more.remedy ?? null;
    this.places = more.places ?? [];
  }
}

type OwnCode = CommandFaultCode | 'document-refused' | 'store-fault' | 'internal-error';

const TITLES: Readonly<Record<OwnCode, string>> = {
  'bad-usage': 'The command is not used as it is meant',
  'unreadable-file': 'The file cannot be read',
  'unwritable-file': 'The file cannot be written',
  'malformed-json': 'The document is not JSON',
  'bad-configuration': 'The environment has faults',
  'bad-key': 'This can be no key, or is none',
  'port-not-free': 'The service cannot listen there',
  'document-refused': 'The document has faults',
  'store-fault': 'The database cannot be used',
  'internal-error': 'Something went wrong inside',
};

/** The problem of an error; null where the error is a bug of the program. */
export function problemOf(error: unknown, lang: Language): Problem | null {
  if (error instanceof QuestionError) return questionProblem(error, lang);
  if (error instanceof LineRefused) return refusedProblem(error, lang);
  if (error instanceof DocumentRefused) {
    const { faults, warnings } = error;
    const detail = `${upper(error.message)}; nothing of it was stored.`;
    return problem('document-refused', detail, { errors: faults, warnings });
  }
  if (error instanceof StoreFault) {
    // The message may begin with the path of a file, so it keeps its first letter.
    const remedy = `${upper(error.remedy)}.`;
    return problem('store-fault', `${error.message}.`, { remedy });
  }
  if (error instanceof CommandFault) {
    const { code, message, places: errors, remedy } = error;
    return problem(code, message, { errors, ...(remedy === null ? {} : { remedy }) });
  }
  return null;
}

/** A question is refused in the language in which its answer would have come. */
function questionProblem({ code, faults, ask }: QuestionError, lang: Language): Problem {
  const placed = faults.map(({ at, ...fault }) => ({
    ...(at === null ? {} : { parameter: at }),
    ...fault,
  }));
  return refusedProblem({ code, faults: placed, ask }, lang);
}

/** What a question, or a line of many, is refused for. */
export interface Refused {
  readonly code: ProblemCode;
  readonly faults: readonly LineFault[];
  readonly ask?: readonly AskView[];
}

export function refusedProblem({ code, faults, ask = [] }: Refused, lang: Language): Problem {
  const errors = faults.map(({ pointer, parameter, ...fault }) => ({
    ...(pointer === undefined ? {} : { pointer }),
    ...(parameter === undefined ? {} : { parameter }),
    ...saidFault(fault, lang),
  }));
  return {
    type: typeOf(code),
    title: problemWords(lang).problems[code].title,
    detail: sayDetail(code, faults, lang),
    lang,
    code,
    retry: code === 'no-edition' ? 'later' : 'with-change',
    ...(ask.length === 0 ? {} : { ask }),
    errors,
  };
}

/** What is said of a bug: nothing of its inside. */
export function maskedProblem(): Problem {
  const detail = 'The command ended by a mistake of the program, not of the question.';
  return problem('internal-error', detail, {
    remedy: 'Run it again with FAYING_DEBUG=1 and report what it prints.',
  });
}

/** Codes whose cause is not in what was asked: asking the same again may be answered. */
const PASSING: ReadonlySet<OwnCode> = new Set<OwnCode>([
  'store-fault',
  'port-not-free',
  'internal-error',
]);

function problem(
  code: OwnCode,
  detail: string,
  more: Pick<Partial<Problem>, 'errors' | 'warnings' | 'remedy'>,
): Problem {
  const title = TITLES[code];
  const lang = OWN_LANGUAGE;
  const retry = PASSING.has(code) ? 'later' : 'with-change';
  return { type: `/problems/${code}`, title, detail, lang, code, retry, errors: [], ...more };
}

function upper(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
