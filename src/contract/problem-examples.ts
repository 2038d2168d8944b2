/**
 * For each type of problem a request that it answers, and the same request mended, where that is
 * for the client to do. The page of the type shows both. Whatever an operation refuses is taken
 * from the examples of the contract; what goes to no operation is written down here.
 */

import { WIDE_KEY, withKey } from './example-keys.js';
import { EXAMPLE_REQUESTS, type ExampleRequest } from './examples.js';
import { OPERATIONS } from './operations.js';
import type { ProblemCode } from './problems/problem-type.js';
import { refusalsOf, type ServiceState } from './refusals.js';
import { type SentRequest, sentRequest } from './sent-request.js';

export interface ProblemExample {
  readonly refused: SentRequest;
  /** How it stands with the service meanwhile; null where all is well. */
  readonly service: ServiceState | null;
  /** Null where only those who run the service can do something. */
  readonly mended: SentRequest | null;
}

export function problemExample(code: ProblemCode): ProblemExample {
  const shown = SHOWN[code];
  if ('refused' in shown) return { ...shown, service: null };
  const { by, as = {}, mendedBy } = shown;
  const operation = OPERATIONS.find(({ operationId }) => operationId === by);
  const good = answeredBy(by);
  if (operation === undefined) throw new Error(`no operation is called ${by}`);
  const [request] = refusalsOf(operation, [code]);
  if (request === undefined) throw new Error(`${by} has no example of ${code}`);
  const { service = null } = request;
  const headers = mendedBy === undefined ? {} : { headers: mendedBy };
  const isMended = service === null || mendedBy !== undefined;
  const mended = isMended ? sentRequest({ ...good, ...as, ...headers }) : null;
  return { refused: sentRequest(request), service, mended };
}

function answeredBy(operationId: string): ExampleRequest {
  const good = EXAMPLE_REQUESTS.find((one) => one.operationId === operationId);
  if (good === undefined) throw new Error(`${operationId} has no example in examples.ts`);
  return good;
}

/** An operation that refuses so; `as` is what it answers, where that is not its first example. */
interface ByOperation {
  readonly by: string;
  readonly as?: Pick<ExampleRequest, 'search'>;
  /** The headers that mend it, where it is of them. */
  readonly mendedBy?: Readonly<Record<string, string>>;
}

type Shown = ByOperation | Omit<ProblemExample, 'service'>;

const LIVE: SentRequest = sentRequest(answeredBy('isLive'));
const QUESTION: SentRequest = sentRequest(answeredBy('askFit'));
const FIT = 'vehicle=lirren-1&part=linkage-cables';

function got(target: string): SentRequest {
  return { method: 'GET', target, headers: {}, body: null };
}

const SHOWN: Readonly<Record<ProblemCode, Shown>> = {
  'invalid-request': { by: 'checkFit' },
  'invalid-cursor': { by: 'listParts', as: { search: 'role=gearbox&limit=2' } },
  'malformed-json': { by: 'askFit' },
  'malformed-request': { by: 'askFit' },
  'unknown-key': { by: 'checkFit', mendedBy: withKey(WIDE_KEY) },
  'key-needed': { by: 'checkFit', mendedBy: withKey(WIDE_KEY) },
  'not-granted': { by: 'checkFit', mendedBy: withKey(WIDE_KEY) },
  'unknown-path': { refused: got(`/v1/fits?${FIT}`), mended: got(`/v1/fit?${FIT}`) },
  'unknown-problem': {
    refused: got('/problems/unknown-prat'),
    mended: got('/problems/unknown-part'),
  },
  'unknown-edition': { by: 'checkFit' },
  'unknown-vehicle': { by: 'checkFit' },
  'vehicle-replaced': { by: 'checkFit' },
  'unknown-part': { by: 'checkFit' },
  'ambiguous-part': {
    by: 'checkFit',
    as: { search: 'vehicle=lirren-1&part=number%3A44%2F10+077%40Quenholt' },
  },
  'unknown-layout': { by: 'readLayout' },
  'unknown-role': { by: 'listParts' },
  'unknown-kind': { by: 'listParts', as: { search: 'kind=propshaft-flange' } },
  'unknown-calculation': {
    refused: got('/v1/calculate/propeler-shaft?innerDiameter=0%20mm'),
    mended: got('/v1/calculate'),
  },
  'method-not-allowed': { by: 'checkFit' },
  'not-acceptable': { by: 'checkFit' },
  'request-timeout': {
    refused: {
      ...QUESTION,
      stops: { after: 9, by: 'falling-silent' },
    },
    mended: QUESTION,
  },
  'body-too-large': { by: 'askFit' },
  'url-too-long': { by: 'checkFit' },
  'unsupported-media-type': { by: 'askFit' },
  'expectation-failed': {
    refused: { ...LIVE, headers: { expect: 'a-second-opinion' } },
    mended: LIVE,
  },
  'unknown-position': { by: 'checkFit', as: { search: `${FIT}&position=linkage` } },
  'unknown-interface': { by: 'mateFaces', as: { search: 'a=control-centre&b=gearbox-6-late' } },
  'invalid-question': { by: 'checkFit', as: { search: `${FIT}&torque=400%20N.m` } },
  'headers-too-large': {
    refused: { ...LIVE, headers: { 'x-note': ''.padEnd(20_000, 'x') } },
    mended: LIVE,
  },
  'internal-error': { by: 'checkFit' },
  'no-edition': { by: 'checkFit' },
  'store-fault': { by: 'checkFit' },
  stopping: { by: 'isReady' },
};
