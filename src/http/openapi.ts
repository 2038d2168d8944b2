/**
 * The OpenAPI 3.1 document of the service, made of the schemas that check the requests and of the
 * table that gives problems their statuses. Which problems a route can answer with follows from
 * what the route does and from its use-case's own errors.
 *
 * Left out: what is refused before there is a route (unknown paths and methods, unreadable HTTP);
 * the description says so.
 */

import { OpenAPIHono } from '@hono/zod-openapi';
import { ENGINE_VERSION } from '../contract/answer-head.js';
import type { Example } from '../contract/examples.js';
import { liveOperation, readyOperation } from '../contract/health.js';
import { z } from '../contract/openapi-zod.js';
import { type Operation, TAGS } from '../contract/operation.js';
import { OPERATIONS } from '../contract/operations.js';
import type { Parameter, ParameterGroup } from '../contract/parameters.js';
import { problemSchema } from '../contract/problem.js';
import type { ProblemCode } from '../contract/problems/problem-type.js';
import { problemWords } from '../contract/problems/words.js';
import { PLACE_PATTERN } from '../contract/question.js';
import { LONGEST_SEGMENT } from '../contract/read.js';
import { PROBLEMS } from './problem.js';

type Route = Parameters<OpenAPIHono['openAPIRegistry']['registerPath']>[0];
type Responses = Route['responses'];

const JSON_TYPE = 'application/json';
const PROBLEM_TYPE = 'application/problem+json';

/** Below it, parameters that are not known are refused. */
const BELOW_VERSION = '/v1/';

export function openapiDocument(examples: readonly Example[]): object {
  const app = new OpenAPIHono();
  const { openAPIRegistry: registry } = app;
  registry.register('Problem', problemSchema);
  for (const [name, header] of Object.entries(HEADERS)) {
    registry.registerComponent('headers', name, header);
  }
  for (const [name, parameter] of Object.entries(HEADER_PARAMETERS)) {
    registry.registerComponent('parameters', name, parameter);
  }
  for (const operation of OPERATIONS) registry.registerPath(routeOf(operation, examples));
  return app.getOpenAPI31Document({
    openapi: '3.1.0',
    info: {
      title: 'Faying',
      version: ENGINE_VERSION,
      description: DESCRIPTION,
      contact: CONTACT,
      license: LICENSE,
    },
    servers: [{ url: '/', description: 'Where this document came from.' }],
    security: [],
    tags: Object.entries(TAGS).map(([name, description]) => ({ name, description })),
  });
}

/**
 * Whom to ask only those know who run the service, and the document is the same for all of them.
 * So it leads to nobody and says so: a page that is empty by RFC 6694, and a host of which RFC 6761
 * sees to it that it is never anybody's.
 */
const CONTACT = {
  name: 'Whoever runs this service',
  url: 'about:blank',
  email: 'nobody@faying.invalid',
};

const LICENSE = { name: 'MIT', url: 'https://spdx.org/licenses/MIT.html' };

const DESCRIPTION = [
  'Answers name the edition of the catalogue they came from, the version of the program and the ' +
    'language; a question that pins an edition gets the same answer again.',
  'That a part does not fit is an answer, with status 200, and so is that nobody can know. What ' +
    'is not known is never shown as fitting.',
  'Whatever cannot be answered is a problem (RFC 9457). Beside those that an operation lists, ' +
    'any path answers with `unknown-path` or `method-not-allowed`, and what is no readable ' +
    'request with `malformed-request`, `request-timeout`, `expectation-failed` or ' +
    '`headers-too-large`. GET /problems lists them all.',
  'Closed lists of words say so; all others may grow, and an unknown word means "other". Fields ' +
    'may be added.',
].join('\n\n');

const HEADERS = {
  ETag: {
    description: 'Validator of the answer; send it as If-None-Match.',
    required: true,
    schema: { type: 'string' },
  },
  'Faying-Edition': {
    description: 'Number of the edition that answered.',
    required: true,
    schema: { type: 'integer', minimum: 1 },
  },
  'Content-Location': {
    description: 'The same question with its edition and language pinned, in canonical form.',
    required: true,
    schema: { type: 'string' },
  },
  'Content-Language': {
    description: 'Language of the sentences.',
    required: true,
    schema: { type: 'string' },
  },
  'X-Request-Id': {
    description: 'Id of the request: the one that was sent, or a new one.',
    required: true,
    schema: { type: 'string' },
  },
} as const;

const HEADER_PARAMETERS = {
  IfNoneMatch: {
    name: 'If-None-Match',
    in: 'header',
    description: 'Validators of the answers that are there already.',
    required: false,
    schema: { type: 'string' },
  },
  AcceptLanguage: {
    name: 'Accept-Language',
    in: 'header',
    description: 'Languages wished for; `lang` wins over it.',
    required: false,
    schema: { type: 'string' },
  },
} as const;

function routeOf(operation: Operation, examples: readonly Example[]): Route {
  const { method, path, operationId, tag, summary, description, query, body } = operation;
  const own = examples.filter((example) => example.operationId === operationId);
  const asked = examplesOf(own, ({ body: question }) => question);
  const content = { schema: body ?? z.never(), ...asked };
  return {
    method,
    path,
    operationId,
    tags: [tag],
    summary,
    description,
    parameters: [
      ...segmentParameter(operation),
      ...query.groups.map(groupParameter),
      ...(isQuestion(operation) ? [refTo('parameters', 'AcceptLanguage')] : []),
      ...(isCached(operation) ? [refTo('parameters', 'IfNoneMatch')] : []),
    ],
    request: {
      query: z.strictObject(Object.fromEntries(query.parameters.map(plainParameter))),
      ...(body === null ? {} : { body: { required: true, content: { [JSON_TYPE]: content } } }),
    },
    responses: responsesOf(operation, own),
  };
}

function segmentParameter({ segment }: Operation) {
  if (segment === null) return [];
  const schema = { type: 'string', minLength: 1, maxLength: LONGEST_SEGMENT } as const;
  return [{ ...segment, in: 'path' as const, required: true, schema }];
}

function plainParameter({ name, schema, reading }: Parameter): [string, z.ZodType] {
  if (reading !== 'list') return [name, schema];
  return [name, schema.openapi({ param: { style: 'form', explode: false } })];
}

/** A form-exploded object: each of its keys is a parameter of its own. */
function groupParameter(group: ParameterGroup) {
  const { prefix, most, description, example, reading } = group;
  const place = PLACE_PATTERN.source.replace(/^\^/, '').replace(/\$$/, '');
  const text = { type: 'string', minLength: 1 } as const;
  return {
    name: prefix,
    in: 'query' as const,
    description,
    required: false,
    style: 'form' as const,
    explode: true,
    schema: {
      type: 'object' as const,
      patternProperties: {
        [`^${prefix}\\.${place}$`]:
          reading === 'list' ? { ...text, description: 'A list with commas between.' } : text,
      },
      additionalProperties: false,
      maxProperties: most,
    },
    example,
  };
}

function responsesOf(operation: Operation, examples: readonly Example[]): Responses {
  const { answer } = operation;
  const names = [
    'X-Request-Id',
    ...(isQuestion(operation) ? ['Faying-Edition', 'Content-Language'] : []),
    ...(isQuestion(operation) && isCached(operation) ? ['Content-Location'] : []),
    ...(isCached(operation) ? ['ETag'] : []),
  ];
  const headers = Object.fromEntries(names.map((name) => [name, refTo('headers', name)]));
  const answers = examplesOf(examples, (example) => example.answer);
  const content = { [JSON_TYPE]: { schema: answer.schema, ...answers } };
  const ok = { description: answer.description, headers, content };
  const same = { description: 'The answer that the client has already still holds.' };
  return {
    200: ok,
    ...(isCached(operation) ? { 304: same } : {}),
    ...problemResponses(problemsOf(operation)),
  };
}

function examplesOf(examples: readonly Example[], valueIn: (example: Example) => unknown) {
  const given = examples.filter((example) => valueIn(example) !== undefined);
  if (given.length === 0) return {};
  const named = given.map((example) => {
    const { name, summary } = example;
    return [name, { summary, value: valueIn(example) }] as const;
  });
  return { examples: Object.fromEntries(named) };
}

/** Every problem that a route can answer with, once there is a request to it. */
export function problemsOf(operation: Operation): readonly ProblemCode[] {
  const isAsked = operation.path.startsWith(BELOW_VERSION);
  const body: readonly ProblemCode[] = [
    'malformed-json',
    'malformed-request',
    'body-too-large',
    'unsupported-media-type',
  ];
  return [
    ...(isAsked ? (['invalid-request'] as const) : []),
    ...(isList(operation) ? (['invalid-cursor'] as const) : []),
    ...(operation.body === null ? [] : body),
    'not-acceptable',
    'url-too-long',
    ...operation.errors,
    // Nothing can go wrong in saying that one lives.
    ...(operation.path === liveOperation.path ? [] : (['internal-error', 'store-fault'] as const)),
    ...(operation.path === readyOperation.path ? (['stopping'] as const) : []),
  ];
}

function problemResponses(codes: readonly ProblemCode[]): Responses {
  const byStatus = new Map<number, ProblemCode[]>();
  for (const code of codes) {
    const { status } = PROBLEMS[code];
    byStatus.set(status, [...(byStatus.get(status) ?? []), code]);
  }
  return Object.fromEntries([...byStatus].map(([status, some]) => [status, problemResponse(some)]));
}

function problemResponse(codes: readonly ProblemCode[]): Responses[string] {
  const schema = {
    allOf: [
      refTo('schemas', 'Problem'),
      { type: 'object' as const, properties: { code: { enum: [...codes] } } },
    ],
  };
  return {
    description: codes
      .map((code) => `\`${code}\`: ${problemWords('en').problems[code].title}.`)
      .join('\n\n'),
    headers: { 'X-Request-Id': refTo('headers', 'X-Request-Id') },
    content: { [PROBLEM_TYPE]: { schema } },
  };
}

function refTo(kind: string, name: string): { $ref: string } {
  return { $ref: `#/components/${kind}/${name}` };
}

/** Questions have their answers in a language, and of an edition. */
function isQuestion({ tag }: Operation): boolean {
  return tag !== 'editions' && tag !== 'service';
}

function isCached({ method, tag }: Operation): boolean {
  return method === 'get' && tag !== 'service';
}

function isList({ query }: Operation): boolean {
  return query.parameters.some(({ name }) => name === 'cursor');
}
