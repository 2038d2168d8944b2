/**
 * What the OpenAPI document says of responses: which there are to an operation, with every header
 * that they carry and an example of each. Which problems a route can answer with follows from what
 * the route does and from its use-case's own errors.
 *
 * Left out: the headers that HTTP itself adds on the way, such as `Date` and `Content-Length`.
 */

import type { OpenAPIHono } from '@hono/zod-openapi';
import { needOf } from '../contract/access.js';
import { listCalculationsOperation } from '../contract/calculate.js';
import { listCodesOperation } from '../contract/codes.js';
import { liveOperation, readyOperation } from '../contract/health.js';
import { listLimitsOperation } from '../contract/limit-list.js';
import { z } from '../contract/openapi-zod.js';
import type { Operation } from '../contract/operation.js';
import { OPERATIONS } from '../contract/operations.js';
import type { ProblemCode } from '../contract/problems/problem-type.js';
import { problemWords } from '../contract/problems/words.js';
import { VIEWS } from '../contract/view.js';
import { contentOf } from './openapi-content.js';
import { type Examples, type Reference, refTo } from './openapi-examples.js';
import { PROBLEMS } from './problem.js';

export type Route = Parameters<OpenAPIHono['openAPIRegistry']['registerPath']>[0];
type Responses = Route['responses'];

const PROBLEM_TYPE = 'application/problem+json';

/** The document is in English. */
const { problems: TITLES } = problemWords('en');

/** Below it, parameters that are not known are refused. */
const BELOW_VERSION = '/v1/';

const TEXT = { type: 'string' as const };

/** What each header says, wherever it comes. */
const HEADERS = {
  ETag: { description: 'Validator of the answer; send it as If-None-Match.', schema: TEXT },
  'Faying-View': {
    description: 'How much of the answer is shown; `view` asks for less.',
    schema: { type: 'string' as const, enum: [...VIEWS] },
  },
  'WWW-Authenticate': { description: 'By what a key is shown (RFC 6750).', schema: TEXT },
  'Faying-Edition': {
    description: 'Number of the edition that answered.',
    schema: { type: 'integer' as const, minimum: 1 },
  },
  'Content-Location': {
    description:
      'Where GET has the same answer: the question with its edition and language pinned, in ' +
      'canonical form. A question that no URL can say has none.',
    schema: TEXT,
  },
  'Content-Encoding': {
    description: 'The answer is packed, where the client takes that.',
    schema: { type: 'string' as const, enum: ['gzip'] },
  },
  'Content-Language': { description: 'Language of the sentences.', schema: TEXT },
  'Cache-Control': { description: 'For how long the answer holds.', schema: TEXT },
  Vary: { description: 'Headers of the request that lead to another answer.', schema: TEXT },
  'X-Request-Id': {
    description: 'Id of the request: the one that was sent, or a new one.',
    schema: TEXT,
  },
  'X-Content-Type-Options': {
    description: 'Nobody is to take the answer for anything else.',
    schema: { type: 'string' as const, enum: ['nosniff'] },
  },
  'Content-Security-Policy': { description: 'Nothing in it is to be run.', schema: TEXT },
  'Accept-Query': {
    description: 'This path takes QUERY, with a body of one of these types.',
    schema: TEXT,
  },
  'Access-Control-Allow-Origin': {
    description: 'The page that asked may read the answer, where its origin is let.',
    schema: TEXT,
  },
  'Access-Control-Expose-Headers': {
    description: 'Headers that such a page may read.',
    schema: TEXT,
  },
  Allow: { description: 'The methods that the path takes.', schema: TEXT },
  Accept: { description: 'The types that a body may have.', schema: TEXT },
  'Accept-Encoding': { description: 'The codings that a body may have.', schema: TEXT },
  'Retry-After': {
    description: 'Seconds after which to ask again.',
    schema: { type: 'integer' as const, minimum: 0 },
  },
};

type HeaderName = keyof typeof HEADERS;
type HeaderObject = (typeof HEADERS)[HeaderName] & { readonly required: boolean };

/** Which headers a response carries: these always, those where there is something to say. */
interface Carried {
  readonly always: readonly HeaderName[];
  readonly perhaps: readonly HeaderName[];
}

/** The headers that responses refer to, by the names of their components. */
export function headerComponents(): Readonly<Record<string, HeaderObject>> {
  const carried = OPERATIONS.flatMap((operation) => [
    carriedBy(operation),
    ...problemsOf(operation).map((code) => carriedByProblem(operation, PROBLEMS[code].status)),
  ]);
  const names = (kind: keyof Carried) => [...new Set(carried.flatMap((one) => one[kind]))];
  const components: readonly (readonly [string, HeaderObject])[] = [
    ...names('always').map((name) => [name, { ...HEADERS[name], required: true }] as const),
    ...names('perhaps').map(
      (name) => [perhaps(name), { ...HEADERS[name], required: false }] as const,
    ),
  ];
  return Object.fromEntries<HeaderObject>(components);
}

function perhaps(name: string): string {
  return `${name}-perhaps`;
}

export function responsesOf(operation: Operation, examples: Examples): Responses {
  const { answer } = operation;
  const headers = headersOf(carriedBy(operation));
  const ok = {
    description: answer.description,
    headers,
    content: contentOf(operation, 'answer', (type) => examples.answers(operation, 200, type)),
  };
  const same = { description: 'The answer that the client has already still holds.', headers };
  return {
    200: ok,
    ...(isCached(operation) ? { 304: same } : {}),
    ...problemResponses(operation, examples),
  };
}

/** The headers of an answer and of the word that it still holds. */
function carriedBy(operation: Operation): Carried {
  const { always, perhaps: some } = carriedByAll(operation);
  const { path, method, tag } = operation;
  if (!isBelowVersion(operation)) return { always, perhaps: some };
  const answered: HeaderName[] = [...always];
  const sometimes: HeaderName[] = [...some];
  if (speaks(operation)) answered.push('Content-Language');
  if (isViewed(operation)) answered.push('Faying-View');
  if (operation.lines !== undefined) sometimes.push('Content-Encoding');
  // The list of editions is there before there is one; codes, limits and formulas are those of the
  // program.
  if (tag === 'editions') sometimes.push('Faying-Edition');
  else if (tag !== 'service' && tag !== 'calculate') answered.push('Faying-Edition');
  const isInUrl = OPERATIONS.some((one) => one.path === path && one.method === 'get');
  if (method === 'get') answered.push('ETag', 'Content-Location');
  else if (isInUrl) sometimes.push('Content-Location');
  return { always: answered, perhaps: sometimes };
}

function carriedByAll({ path }: Operation): Carried {
  const takesQuery = OPERATIONS.some((one) => one.path === path && one.body !== null);
  return {
    always: [
      'X-Request-Id',
      'X-Content-Type-Options',
      'Content-Security-Policy',
      'Cache-Control',
      ...(takesQuery ? (['Accept-Query'] as const) : []),
    ],
    perhaps: ['Vary', 'Access-Control-Allow-Origin', 'Access-Control-Expose-Headers'],
  };
}

/** What some problems tell beside what all of them do. */
const CARRIED_BY_STATUS: Readonly<Record<number, Partial<Carried>>> = {
  401: { always: ['WWW-Authenticate'] },
  403: { perhaps: ['WWW-Authenticate'] },
  405: { always: ['Allow'] },
  415: { perhaps: ['Accept', 'Accept-Encoding'] },
  503: { always: ['Retry-After'] },
};

function carriedByProblem(operation: Operation, status: number): Carried {
  const { always, perhaps: some } = carriedByAll(operation);
  const more = CARRIED_BY_STATUS[status] ?? {};
  return {
    always: [...always, 'Content-Language', ...(more.always ?? [])],
    perhaps: [...some, ...(more.perhaps ?? [])],
  };
}

function headersOf({ always, perhaps: some }: Carried): Readonly<Record<string, Reference>> {
  return Object.fromEntries([
    ...always.map((name) => [name, refTo('headers', name)] as const),
    ...some.map((name) => [name, refTo('headers', perhaps(name))] as const),
  ]);
}

/** Nothing can go wrong in saying that one lives, what one can say, and how much one takes. */
const SAFE: readonly Operation[] = [
  liveOperation,
  listCalculationsOperation,
  listCodesOperation,
  listLimitsOperation,
];

/** What can go wrong with the service itself: formulas ask no store. */
function ownProblems(operation: Operation): readonly ProblemCode[] {
  if (SAFE.includes(operation)) return [];
  return operation.tag === 'calculate' ? ['internal-error'] : ['internal-error', 'store-fault'];
}

/** Every problem that a route can answer with, once there is a request to it. */
export function problemsOf(operation: Operation): readonly ProblemCode[] {
  const body: readonly ProblemCode[] = [
    // Of many lines each is JSON or not by itself.
    ...(operation.lines === undefined ? (['malformed-json'] as const) : []),
    'malformed-request',
    'body-too-large',
    'unsupported-media-type',
  ];
  const access: readonly ProblemCode[] = ['unknown-key', 'key-needed', 'not-granted'];
  return [
    ...(isBelowVersion(operation) ? (['invalid-request'] as const) : []),
    ...(needOf(operation.path).view === null ? [] : access),
    ...(isList(operation) ? (['invalid-cursor'] as const) : []),
    ...(operation.body === null ? [] : body),
    'method-not-allowed',
    'not-acceptable',
    'url-too-long',
    ...operation.errors,
    ...ownProblems(operation),
    ...(operation.path === readyOperation.path ? (['stopping'] as const) : []),
  ];
}

function problemResponses(operation: Operation, examples: Examples): Responses {
  const byStatus = new Map<number, ProblemCode[]>();
  for (const code of problemsOf(operation)) {
    const { status } = PROBLEMS[code];
    byStatus.set(status, [...(byStatus.get(status) ?? []), code]);
  }
  const described = [...byStatus].map(([status, codes]) => {
    const schema = {
      allOf: [
        refTo('schemas', 'Problem'),
        { type: 'object' as const, properties: { code: { enum: [...codes] } } },
      ],
    };
    const said = {
      description: codes.map((code) => `\`${code}\`: ${TITLES[code].title}.`).join('\n\n'),
      headers: headersOf(carriedByProblem(operation, status)),
      content: { [PROBLEM_TYPE]: { schema, ...examples.answers(operation, status) } },
    };
    return [status, said] as const;
  });
  return Object.fromEntries(described);
}

function isBelowVersion({ path }: Operation): boolean {
  return path.startsWith(BELOW_VERSION);
}

/** Whether what it answers is in a language. */
export function speaks({ query, body }: Operation): boolean {
  return body !== null || query.parameters.some(({ name }) => name === 'lang');
}

/** Whether what it answers is shown in views. */
function isViewed(operation: Operation): boolean {
  return speaks(operation) && needOf(operation.path).view !== null;
}

export function isCached(operation: Operation): boolean {
  return operation.method === 'get' && isBelowVersion(operation);
}

/** Whether the question says where a list goes on, in a URL or in a body. */
function isList({ query, body }: Operation): boolean {
  const isInBody = body instanceof z.ZodObject && 'cursor' in body.shape;
  return isInBody || query.parameters.some(({ name }) => name === 'cursor');
}
