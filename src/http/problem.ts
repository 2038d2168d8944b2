/**
 * The one place where an error becomes a status: every problem that the service can answer with,
 * in one table. RFC 9457 for the shape, RFC 9110 for the statuses.
 *
 * 400 says that the request is not of the form that it should have; 422 that it is, but asks for
 * something that cannot be; 404 that it names a vehicle, part or edition that is not there.
 */

import type { Language } from '../contract/language.js';
import { LIMITS, type LimitName, type LimitsInForce, limitsInForce } from '../contract/limits.js';
import type { FaultWire, ItemProblemWire, ProblemWire } from '../contract/problem.js';
import type { Fault } from '../contract/problems/fault.js';
import { type ProblemCode, type Retry, typeOf } from '../contract/problems/problem-type.js';
import { problemWords, saidFault, sayDetail } from '../contract/problems/words.js';
import { QuestionError, StoreFault } from '../usecases/errors.js';
import type { AskView } from '../usecases/vehicle-view.js';

export interface ProblemType {
  readonly status: number;
  readonly retry: Retry;
}

export const PROBLEMS: Readonly<Record<ProblemCode, ProblemType>> = {
  'invalid-request': { status: 400, retry: 'with-change' },
  'invalid-cursor': { status: 400, retry: 'with-change' },
  'malformed-json': { status: 400, retry: 'with-change' },
  'malformed-request': { status: 400, retry: 'with-change' },
  'unknown-key': { status: 401, retry: 'with-change' },
  'key-needed': { status: 401, retry: 'with-change' },
  'not-granted': { status: 403, retry: 'with-change' },
  'unknown-path': { status: 404, retry: 'no' },
  'unknown-problem': { status: 404, retry: 'no' },
  'unknown-edition': { status: 404, retry: 'with-change' },
  'unknown-vehicle': { status: 404, retry: 'with-change' },
  'unknown-part': { status: 404, retry: 'with-change' },
  'unknown-layout': { status: 404, retry: 'with-change' },
  'unknown-role': { status: 404, retry: 'with-change' },
  'unknown-kind': { status: 404, retry: 'with-change' },
  'unknown-calculation': { status: 404, retry: 'with-change' },
  'method-not-allowed': { status: 405, retry: 'with-change' },
  'not-acceptable': { status: 406, retry: 'with-change' },
  'request-timeout': { status: 408, retry: 'later' },
  'ambiguous-part': { status: 409, retry: 'with-change' },
  'vehicle-replaced': { status: 410, retry: 'with-change' },
  'body-too-large': { status: 413, retry: 'with-change' },
  'url-too-long': { status: 414, retry: 'with-change' },
  'unsupported-media-type': { status: 415, retry: 'with-change' },
  'expectation-failed': { status: 417, retry: 'with-change' },
  'unknown-position': { status: 422, retry: 'with-change' },
  'unknown-interface': { status: 422, retry: 'with-change' },
  'invalid-question': { status: 422, retry: 'with-change' },
  'headers-too-large': { status: 431, retry: 'with-change' },
  'internal-error': { status: 500, retry: 'later' },
  'no-edition': { status: 503, retry: 'later' },
  'store-fault': { status: 503, retry: 'later' },
  stopping: { status: 503, retry: 'later' },
};

export const PROBLEM_CODES = Object.keys(PROBLEMS) as readonly ProblemCode[];

/** Where a fault stands in the request: nothing where it is of the request as a whole. */
export type Place = Pick<FaultWire, 'pointer' | 'parameter'>;

export type PlacedFault = Fault & Place;

/** A request that is refused; whatever throws it has done nothing yet. */
export class Refusal extends Error {
  readonly code: ProblemCode;
  readonly faults: readonly PlacedFault[];
  readonly headers: Readonly<Record<string, string>>;
  /** The limit that was passed: the first, where several were. */
  readonly limit: LimitName | null;
  /** What to ask of whoever asked. */
  readonly ask: readonly AskView[];

  constructor(
    code: ProblemCode,
    faults: readonly PlacedFault[] = [],
    more: {
      readonly headers?: Readonly<Record<string, string>>;
      readonly limit?: LimitName;
      readonly ask?: readonly AskView[];
      readonly cause?: unknown;
    } = {},
  ) {
    super(code, 'cause' in more ? { cause: more.cause } : undefined);
    this.name = 'Refusal';
    this.code = code;
    this.faults = faults;
    this.headers = more.headers ?? {};
    this.limit = more.limit ?? passedBy(faults);
    this.ask = more.ask ?? [];
  }
}

function passedBy(faults: readonly Fault[]): LimitName | null {
  for (const { data } of faults) {
    if ('limit' in data) return data.limit;
    // The domain has limits of its own, and knows no names of the service's.
    const held = 'because' in data ? HELD.get(data.because) : null;
    if (held) return held;
  }
  return null;
}

/** The limits that the domain holds, by the code with which it says that one is passed. */
const HELD: ReadonlyMap<string, LimitName> = new Map([
  ['too-many-digits', 'numberDigits'],
  ['too-many-alternatives', 'faceAlternatives'],
  ['too-many-points', 'facePoints'],
  ['value-too-long', 'valueCharacters'],
]);

/** Where a field of a question stands in the request. */
export type PlaceOf = (at: string) => Place;

/**
 * What to tell of an error. A store that fails and a bug are told by what their types mean alone:
 * their messages are for the log, not for strangers.
 */
export function refusalOf(error: unknown, placeOf: PlaceOf | null): Refusal {
  if (error instanceof Refusal) return error;
  if (error instanceof QuestionError) {
    const faults = error.faults.map(({ at, ...fault }) => ({
      ...(placeOf === null || at === null ? {} : placeOf(at)),
      ...fault,
    }));
    return new Refusal(error.code, faults, { ask: error.ask });
  }
  const code = error instanceof StoreFault ? 'store-fault' : 'internal-error';
  return new Refusal(code, [], { cause: error });
}

/** To whom a problem is told: the id of the request, the language, and what the server takes. */
export interface Told {
  readonly instance: string;
  readonly lang: Language;
  readonly limits: LimitsInForce;
}

export function problemOf(refusal: Refusal, { instance, lang, limits }: Told): ProblemWire {
  const { code, faults, limit, ask } = refusal;
  const { status, retry } = PROBLEMS[code];
  return {
    type: typeOf(code),
    title: problemWords(lang).problems[code].title,
    status,
    detail: sayDetail(code, faults, lang),
    lang,
    code,
    retry,
    instance,
    ...(ask.length === 0 ? {} : { ask: [...ask] }),
    errors: faults.slice(0, LIMITS.faultsTold.value).map((fault) => faultWire(fault, lang)),
    ...(limit === null ? {} : { limit: { name: limit, value: limits[limit] } }),
  };
}

/** The problem of one item, which is no request of its own. */
export function itemProblemOf(refusal: Refusal, lang: Language): ItemProblemWire {
  const { instance: _, ...problem } = problemOf(refusal, {
    instance: '',
    lang,
    limits: limitsInForce(),
  });
  return problem;
}

function faultWire(fault: PlacedFault, lang: Language): FaultWire {
  const { pointer, parameter } = fault;
  return {
    ...(pointer === undefined ? {} : { pointer }),
    ...(parameter === undefined ? {} : { parameter }),
    ...saidFault(fault, lang),
  };
}
