/**
 * Everything that can be wrong with a command, as one shape: RFC 9457 problem details. Exit code 2
 * says that the question, the document, the usage or the store is at fault; 1 that the program is.
 */

import { DocumentRefused, QuestionError, StoreFault } from '../usecases/errors.js';

/** The exit codes of every command. That a part does not fit is an answer. */
export const EXIT = { answered: 0, bug: 1, fault: 2 } as const;

/** Codes of faults that only the command line knows; the others are those of the use-cases. */
export type CommandFaultCode =
  | 'bad-usage'
  | 'unreadable-file'
  | 'malformed-json'
  | 'bad-configuration'
  | 'port-not-free';

export interface Place {
  /** Of a document that is written in lines, from 1; null where it is of none of them. */
  readonly line?: number | null;
  /** RFC 6901 pointer into the document. */
  readonly pointer?: string;
  /** Name of the question's field: `vehicle`, `with.clutch`. */
  readonly parameter?: string;
  readonly code: string;
  readonly text: string;
}

/** As the service gives it over HTTP, without `status` and `instance`. */
export interface Problem {
  readonly type: string;
  /** The last segment of `type`. */
  readonly code: string;
  readonly title: string;
  readonly detail: string;
  /** Whether to ask again: not at all, the same later, or something else. */
  readonly retry: 'no' | 'later' | 'with-change';
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

const TITLES: Readonly<Record<string, string>> = {
  'no-edition': 'Nothing has been published yet',
  'unknown-edition': 'There is no such edition',
  'unknown-vehicle': 'There is no such vehicle',
  'unknown-part': 'There is no such part',
  'unknown-position': 'The vehicle has no such position',
  'unknown-interface': 'The part has no such face',
  'unknown-layout': 'There is no such layout',
  'unknown-role': 'There is no such role',
  'unknown-kind': 'There is no such kind of interface',
  'invalid-question': 'The question asks for something that cannot be',
  'changes-not-supported': 'Changes around the part are not looked for',
  'bad-usage': 'The command is not used as it is meant',
  'unreadable-file': 'The file cannot be read',
  'malformed-json': 'The document is not JSON',
  'bad-configuration': 'The environment has faults',
  'port-not-free': 'The service cannot listen there',
  'document-refused': 'The document has faults',
  'store-fault': 'The database cannot be used',
  'internal-error': 'Something went wrong inside',
};

/** The problem of an error; null where the error is a bug of the program. */
export function problemOf(error: unknown): Problem | null {
  if (error instanceof QuestionError) {
    const errors = error.faults.map(({ at, code, text }) => ({ parameter: at, code, text }));
    return problem(error.code, error.message, { errors });
  }
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

/** What is said of a bug: nothing of its inside. */
export function maskedProblem(): Problem {
  const detail = 'The command ended by a mistake of the program, not of the question.';
  return problem('internal-error', detail, {
    remedy: 'Run it again with FAYING_DEBUG=1 and report what it prints.',
  });
}

/** Codes whose cause is not in what was asked: asking the same again may be answered. */
const PASSING: ReadonlySet<string> = new Set([
  'no-edition',
  'store-fault',
  'port-not-free',
  'internal-error',
]);

function problem(
  code: string,
  detail: string,
  more: Pick<Partial<Problem>, 'errors' | 'warnings' | 'remedy'>,
): Problem {
  const title = TITLES[code] ?? 'The question cannot be answered';
  const retry = PASSING.has(code) ? 'later' : 'with-change';
  return { type: `/problems/${code}`, title, detail, code, retry, errors: [], ...more };
}

function upper(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}
