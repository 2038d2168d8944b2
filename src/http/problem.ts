/**
 * The one place where an error becomes a status: every problem that the service can answer with,
 * in one table. RFC 9457 for the shape, RFC 9110 for the statuses.
 *
 * 400 says that the request is not of the form that it should have; 422 that it is, but asks for
 * something that cannot be; 404 that it names a vehicle, part or edition that is not there.
 */

import { LIMITS, type LimitName } from '../contract/limits.js';
import type { FaultWire, ProblemWire } from '../contract/problem.js';
import { QuestionError, type QuestionErrorCode, StoreFault } from '../usecases/errors.js';

export interface ProblemType {
  readonly status: number;
  readonly title: string;
  readonly retry: ProblemWire['retry'];
  /** What whoever meets it should know, for the page that the type leads to. */
  readonly about: string;
}

/** Problems that only this door knows; the others are the errors of the use-cases. */
export type DoorProblemCode =
  | 'invalid-request'
  | 'invalid-cursor'
  | 'malformed-json'
  | 'malformed-request'
  | 'unknown-path'
  | 'unknown-problem'
  | 'method-not-allowed'
  | 'not-acceptable'
  | 'request-timeout'
  | 'body-too-large'
  | 'url-too-long'
  | 'unsupported-media-type'
  | 'expectation-failed'
  | 'headers-too-large'
  | 'internal-error'
  | 'store-fault'
  | 'stopping';

export type ProblemCode = QuestionErrorCode | DoorProblemCode;

export const PROBLEMS: Readonly<Record<ProblemCode, ProblemType>> = {
  'invalid-request': {
    status: 400,
    title: 'The request has not the form that it should have',
    retry: 'with-change',
    about:
      'A parameter or field is missing, unknown, named twice, or not of the type that it should ' +
      'have. "errors" names every one, by parameter of the URL or by JSON pointer into the body.',
  },
  'invalid-cursor': {
    status: 400,
    title: 'The list cannot go on from here',
    retry: 'with-change',
    about:
      'A cursor is `next` of an answer, asked with the same filters, of an edition that is still ' +
      'there. Begin with the first page: ask without `cursor`.',
  },
  'malformed-json': {
    status: 400,
    title: 'The body is not JSON',
    retry: 'with-change',
    about: 'The body is no JSON text in UTF-8 (RFC 8259). "detail" says where it stops being one.',
  },
  'malformed-request': {
    status: 400,
    title: 'The request cannot be read',
    retry: 'with-change',
    about: 'What arrived is no HTTP request, has no valid host or URL, or ended too early.',
  },
  'unknown-path': {
    status: 404,
    title: 'There is nothing at this path',
    retry: 'no',
    about: 'No resource of the service has this path. GET /openapi.json lists them.',
  },
  'unknown-problem': {
    status: 404,
    title: 'There is no such problem type',
    retry: 'no',
    about: 'GET /problems lists the types of problems that there are.',
  },
  'unknown-edition': {
    status: 404,
    title: 'There is no such edition',
    retry: 'with-change',
    about: 'Editions are numbered 1, 2, 3 and so on; GET /v1/editions lists them.',
  },
  'unknown-vehicle': {
    status: 404,
    title: 'There is no such vehicle',
    retry: 'with-change',
    about: 'This edition has no vehicle of this id.',
  },
  'unknown-part': {
    status: 404,
    title: 'There is no such part',
    retry: 'with-change',
    about:
      'This edition has no part of this id. A part that nobody recorded is unknown, not unfit.',
  },
  'unknown-layout': {
    status: 404,
    title: 'There is no such layout',
    retry: 'with-change',
    about: 'This edition has no layout of this id; GET /v1/layouts lists them.',
  },
  'unknown-role': {
    status: 404,
    title: 'There is no such role',
    retry: 'with-change',
    about: 'This edition has no role of this id; GET /v1/roles lists them.',
  },
  'unknown-kind': {
    status: 404,
    title: 'There is no such kind of interface',
    retry: 'with-change',
    about:
      'No kind of this id is built in, nor does this edition declare one; GET /v1/kinds lists ' +
      'them.',
  },
  'method-not-allowed': {
    status: 405,
    title: 'This method is not for this path',
    retry: 'with-change',
    about: 'The header Allow of the answer lists the methods that the path takes.',
  },
  'not-acceptable': {
    status: 406,
    title: 'The answer cannot be given in this form',
    retry: 'with-change',
    about: 'Answers are application/json, and the header Accept of the request excludes that.',
  },
  'request-timeout': {
    status: 408,
    title: 'The request did not arrive in time',
    retry: 'later',
    about: 'The service waited for the rest of the request and gave up; "limit" says how long.',
  },
  'body-too-large': {
    status: 413,
    title: 'The body is too large',
    retry: 'with-change',
    about: `A body has at most ${LIMITS.bodyBytes.value} bytes; "limit" says so.`,
  },
  'url-too-long': {
    status: 414,
    title: 'The URL is too long',
    retry: 'with-change',
    about:
      `Path and query have at most ${LIMITS.urlBytes.value} bytes; "limit" says so. POST takes ` +
      'the same questions in a body.',
  },
  'unsupported-media-type': {
    status: 415,
    title: 'The body is not of a type that is read here',
    retry: 'with-change',
    about: 'A body is application/json in UTF-8, without a content coding.',
  },
  'expectation-failed': {
    status: 417,
    title: 'The expectation cannot be met',
    retry: 'with-change',
    about: 'The header Expect may say 100-continue and nothing else.',
  },
  'unknown-position': {
    status: 422,
    title: 'The vehicle has no such position',
    retry: 'with-change',
    about: "The layout of this vehicle has no position of this id. 'errors' says which was meant.",
  },
  'unknown-interface': {
    status: 422,
    title: 'The part has no such face',
    retry: 'with-change',
    about: 'No face of this name is recorded of the part.',
  },
  'invalid-question': {
    status: 422,
    title: 'The question asks for something that cannot be',
    retry: 'with-change',
    about:
      'Each field is of the right form, but not all of it can be so: a torque without a unit, ' +
      'three adapters where one goes, or several things that are not there. "errors" says which.',
  },
  'changes-not-supported': {
    status: 422,
    title: 'Changes around the part are not looked for',
    retry: 'with-change',
    about:
      'changes=yes asks which other parts would make it fit. This version of the service only ' +
      'answers for the vehicle as it is: ask with changes=no, or leave it out.',
  },
  'headers-too-large': {
    status: 431,
    title: 'The headers are too large',
    retry: 'with-change',
    about: 'The request line and the headers together are more than the service reads.',
  },
  'internal-error': {
    status: 500,
    title: 'Something went wrong inside',
    retry: 'later',
    about:
      'A mistake of the service, not of the question. The log has it under the id that ' +
      '"instance" gives.',
  },
  'no-edition': {
    status: 503,
    title: 'Nothing has been published yet',
    retry: 'later',
    about: 'The service has no edition of a catalogue to answer from.',
  },
  'store-fault': {
    status: 503,
    title: 'The catalogue cannot be read',
    retry: 'later',
    about:
      'What is stored cannot be used. The log says what is wrong and what mends it, under the id ' +
      'that "instance" gives.',
  },
  stopping: {
    status: 503,
    title: 'The service is being stopped',
    retry: 'later',
    about: 'It answers what it has begun and takes nothing new. Ask another replica.',
  },
};

export const PROBLEM_CODES = Object.keys(PROBLEMS) as readonly ProblemCode[];

/** A request that is refused; whatever throws it has done nothing yet. */
export class Refusal extends Error {
  readonly code: ProblemCode;
  readonly faults: readonly FaultWire[];
  readonly headers: Readonly<Record<string, string>>;
  readonly limit: LimitName | null;

  constructor(
    code: ProblemCode,
    detail: string,
    more: {
      readonly faults?: readonly FaultWire[];
      readonly headers?: Readonly<Record<string, string>>;
      readonly limit?: LimitName;
      readonly cause?: unknown;
    } = {},
  ) {
    super(detail, 'cause' in more ? { cause: more.cause } : undefined);
    this.name = 'Refusal';
    this.code = code;
    this.faults = more.faults ?? [];
    this.headers = more.headers ?? {};
    this.limit = more.limit ?? null;
  }
}

/** Where a field of a question stands in the request. */
export type PlaceOf = (at: string) => Pick<FaultWire, 'pointer' | 'parameter'>;

/**
 * What to tell of an error. A store that fails and a bug are told by their titles alone: their
 * messages are for the log, not for strangers.
 */
export function refusalOf(error: unknown, placeOf: PlaceOf | null): Refusal {
  if (error instanceof Refusal) return error;
  if (error instanceof QuestionError) {
    const faults = error.faults.map(({ at, code, text }) => ({
      ...(placeOf === null ? {} : placeOf(at)),
      code,
      text,
    }));
    return new Refusal(error.code, error.message, { faults });
  }
  const code = error instanceof StoreFault ? 'store-fault' : 'internal-error';
  return new Refusal(code, PROBLEMS[code].about, { cause: error });
}

export function problemOf(refusal: Refusal, instance: string): ProblemWire {
  const { code, message, faults, limit } = refusal;
  const { status, title, retry } = PROBLEMS[code];
  return {
    type: typeOf(code),
    title,
    status,
    detail: message,
    code,
    retry,
    instance,
    errors: faults.slice(0, LIMITS.faultsTold.value),
    ...(limit === null ? {} : { limit: { name: limit, value: LIMITS[limit].value } }),
  };
}

export function typeOf(code: ProblemCode): string {
  return `/problems/${code}`;
}
