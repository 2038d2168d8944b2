/**
 * Example requests that are refused: one at least for each problem of each operation. What every
 * operation refuses is made from a request that it answers, with one thing spoilt; what only some
 * refuse is written down in `refused-questions.ts`. As with the others, whoever prints the contract
 * asks the service.
 */

import { ENDED_KEY, NARROW_KEY, withKey } from './example-keys.js';
import { EXAMPLE_REQUESTS, type ExampleRequest } from './examples.js';
import { LIMITS } from './limits.js';
import type { Operation } from './operation.js';
import type { ProblemCode } from './problems/problem-type.js';
import { REFUSED_QUESTIONS } from './refused-questions.js';
import type { AskedRequest } from './sent-request.js';

export interface RefusedRequest extends ExampleRequest, AskedRequest {
  /** The code of the problem that it is refused with. */
  readonly code: ProblemCode;
  /** How it stands with the service that is asked, where not all is well. */
  readonly service?: ServiceState;
}

/**
 * Nothing published; a store that cannot be read; a mistake of the program; about to stop; nothing
 * open to who shows no key.
 */
export type ServiceState = 'empty' | 'unreadable' | 'faulty' | 'stopping' | 'guarded';

type Spoilt = Omit<RefusedRequest, 'operationId' | 'name' | 'code'>;

/** One request for each of the problems that the operation can answer with. */
export function refusalsOf(operation: Operation, codes: readonly ProblemCode[]): RefusedRequest[] {
  const { operationId } = operation;
  const good = EXAMPLE_REQUESTS.find((one) => one.operationId === operationId);
  if (good === undefined) throw new Error(`${operationId} has no example in examples.ts`);
  return codes.map((code) => {
    const spoilt = REFUSED_QUESTIONS[operationId]?.[code] ?? spoil(code, good, operation);
    if (spoilt !== null) return { ...spoilt, operationId, name: code, code };
    throw new Error(`${operationId} has no example of ${code} in refused-questions.ts`);
  });
}

/** What is unknown, but no name in the path. */
const OF_ANY_PATH: ReadonlySet<string> = new Set(['unknown-edition', 'unknown-key']);

/** A request that is answered, with one thing that is refused; null where none is known. */
function spoil(code: ProblemCode, good: ExampleRequest, operation: Operation): Spoilt | null {
  const { segment, search, body, lines } = good;
  const request = {
    ...(segment === undefined ? {} : { segment }),
    ...(search === undefined ? {} : { search }),
    ...(body === undefined ? {} : { body }),
    ...(lines === undefined ? {} : { lines }),
  };
  const isOfSegment = code.startsWith('unknown-') && !OF_ANY_PATH.has(code);
  if (isOfSegment && operation.segment !== null) {
    return { summary: 'One that is not in the catalogue', segment: 'nowhere' };
  }
  const text = JSON.stringify(body ?? null);
  switch (code) {
    case 'invalid-request':
      return { summary: 'Something that nobody knows', ...request, ...withField(good, 'colour') };
    case 'invalid-cursor':
      return {
        summary: 'A cursor that nobody gave out',
        ...(body === undefined ? { search: 'cursor=2' } : { body: { cursor: '2' } }),
      };
    case 'unknown-edition':
      return { summary: 'An edition to come', ...request, ...withField(good, 'edition') };
    case 'unknown-key':
      return {
        summary: 'A key that has ended',
        ...request,
        service: 'guarded',
        headers: withKey(ENDED_KEY),
      };
    case 'key-needed':
      return { summary: 'Without the key that it takes', ...request, service: 'guarded' };
    case 'not-granted': {
      const headers = withKey(NARROW_KEY);
      return { summary: 'With a key for something else', ...request, service: 'guarded', headers };
    }
    case 'malformed-json':
      return { summary: 'A body that stops half-way', ...request, text: text.slice(0, -1) };
    case 'malformed-request':
      return { summary: 'A connection that breaks off', ...request, stop: 'breaking-off' };
    case 'body-too-large': {
      const long = text.padEnd(LIMITS.bodyBytes.value + 1);
      return { summary: 'A body of one byte too many', ...request, text: long };
    }
    case 'url-too-long': {
      const long = `${search ?? ''}&`.padEnd(LIMITS.urlBytes.value, 'x');
      return { summary: 'A URL without end', ...request, search: long };
    }
    case 'unsupported-media-type': {
      const headers = { 'content-type': 'application/xml' };
      return { summary: 'A body that says it is XML', ...request, headers };
    }
    case 'not-acceptable':
      return { summary: 'A client that takes XML alone', ...request, headers: XML_ALONE };
    case 'method-not-allowed':
      return { summary: 'A method that the path has not', ...request, method: 'DELETE' };
    case 'no-edition':
      return { summary: 'Before anything was published', ...request, service: 'empty' };
    case 'store-fault':
      return { summary: 'A damaged database', ...request, service: 'unreadable' };
    case 'internal-error':
      return { summary: 'A mistake of the program', ...request, service: 'faulty' };
    case 'stopping':
      return { summary: 'While it is being stopped', ...request, service: 'stopping' };
    default:
      return null;
  }
}

const XML_ALONE = { accept: 'application/xml' };

/** The question with one more field: a number that nothing has. */
function withField(
  { search, body }: ExampleRequest,
  name: string,
): Pick<Spoilt, 'search' | 'body'> {
  if (body !== undefined) return { body: { ...body, [name]: 999 } };
  return { search: `${search === undefined ? '' : `${search}&`}${name}=999` };
}
