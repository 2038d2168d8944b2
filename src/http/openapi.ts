/**
 * The OpenAPI 3.1 document of the service, made of the schemas that check the requests and of the
 * table that gives problems their statuses.
 *
 * Left out: what is refused before there is a route (unknown paths, unreadable HTTP); the
 * description says so.
 */

import { OpenAPIHono } from '@hono/zod-openapi';
import { ENGINE_VERSION } from '../contract/answer-head.js';
import { EVENT_TYPE, editionWebhook } from '../contract/edition-event.js';
import type { Example } from '../contract/examples.js';
import { verdictSchema } from '../contract/fit-answer.js';
import { outcomeSchema } from '../contract/judged.js';
import { LIMITS } from '../contract/limits.js';
import { z } from '../contract/openapi-zod.js';
import { type Operation, TAGS } from '../contract/operation.js';
import { OPERATIONS } from '../contract/operations.js';
import { isListReading, type Parameter, type ParameterGroup } from '../contract/parameters.js';
import { problemSchema } from '../contract/problem.js';
import { PLACE_PATTERN } from '../contract/question.js';
import { REASON_BY_CODE, reasonByCodeSchema } from '../contract/reason-codes.js';
import { VIEWS } from '../contract/view.js';
import { fieldsAddedBy, hiddenFields } from '../contract/views/fields.js';
import { contentOf } from './openapi-content.js';
import { Examples, refTo } from './openapi-examples.js';
import {
  headerComponents,
  isCached,
  type Route,
  responsesOf,
  speaks,
} from './openapi-responses.js';

/** @param event what a receiver was told; no example of it stands in the document without. */
export function openapiDocument(given: readonly Example[], event: object | null): object {
  const examples = new Examples(given);
  const app = new OpenAPIHono();
  const { openAPIRegistry: registry } = app;
  registry.register('Problem', problemSchema);
  // Named before a field that says more of them is met.
  registry.register('Outcome', outcomeSchema);
  registry.register('Verdict', verdictSchema);
  for (const [name, header] of Object.entries(headerComponents())) {
    registry.registerComponent('headers', name, header);
  }
  for (const [name, parameter] of Object.entries(HEADER_PARAMETERS)) {
    registry.registerComponent('parameters', name, parameter);
  }
  for (const [name, example] of Object.entries(examples.components)) {
    registry.registerComponent('examples', name, example);
  }
  registry.registerComponent('securitySchemes', 'key', {
    type: 'http',
    scheme: 'bearer',
    description:
      'A key that whoever runs the service gives out. It opens wider views, or what is asked in ' +
      'many lines at once.',
  });
  registry.registerComponent('schemas', REASON_BY_CODE, reasonByCodeSchema());
  for (const { body, answer, lines } of OPERATIONS) {
    if (lines === undefined) continue;
    if (lines.question !== null && body !== null) registry.register(lines.question.name, body);
    registry.register(lines.answer.name, answer.schema);
  }
  for (const operation of OPERATIONS) registry.registerPath(routeOf(operation, examples));
  registry.registerWebhook({ ...webhookOf(event), path: editionWebhook.name });
  const document = app.getOpenAPI31Document({
    openapi: '3.1.0',
    info: {
      title: 'Faying',
      version: ENGINE_VERSION,
      description: DESCRIPTION,
      contact: CONTACT,
      license: LICENSE,
    },
    servers: [{ url: '/', description: 'Where this document came from.' }],
    // A key opens more; without one there is what is open to everybody.
    security: [{}, { key: [] }],
    tags: Object.entries(TAGS).map(([name, description]) => ({ name, description })),
  });
  return withViews(document);
}

interface Described {
  readonly properties?: object;
  readonly required?: readonly string[];
  readonly description?: string;
}

/** Says of each object which of its fields only some views show: nobody can rely on those. */
function withViews(document: ReturnType<OpenAPIHono['getOpenAPI31Document']>): object {
  const { schemas = {} } = document.components ?? {};
  const viewed = Object.entries(schemas as Readonly<Record<string, Described>>).map(
    ([name, schema]) => [name, schemaInViews(name, schema)] as const,
  );
  return {
    ...document,
    components: { ...document.components, schemas: Object.fromEntries(viewed) },
  };
}

function schemaInViews(name: string, schema: Described): Described {
  const hidden = hiddenFields(name);
  if (hidden.size === 0 || schema.required === undefined) return schema;
  const required = schema.required.filter((field) => !hidden.has(field));
  const said = VIEWS.map((view) => ({ view, fields: fieldsAddedBy(view, name) }))
    .filter(({ view, fields }) => view !== 'public' && fields.length > 0)
    .map(({ view, fields }) => `${list(fields)}: from the view \`${view}\` on.`);
  const { required: _, ...rest } = schema;
  return {
    ...rest,
    description: [schema.description, ...said].filter((one) => one !== undefined).join(' '),
    ...(required.length === 0 ? {} : { required }),
  };
}

function list(fields: readonly string[]): string {
  return fields.map((field) => `\`${field}\``).join(', ');
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
    'a path that is not there answers with `unknown-path`, and what is no readable request with ' +
    '`malformed-request`, `request-timeout`, `expectation-failed` or ' +
    '`headers-too-large`. GET /problems lists them all, GET /v1/limits what is taken of ' +
    'anything, GET /v1/codes every code that an answer can carry.',
  'Closed lists of words say so; all others may grow, and an unknown word means "other". Fields ' +
    'may be added.',
].join('\n\n');

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

function routeOf(operation: Operation, examples: Examples): Route {
  const { method, path, operationId, tag, summary, description, query, body } = operation;
  const content = contentOf(operation, 'question', (type) => examples.questions(operation, type));
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
      ...(speaks(operation) ? [refTo('parameters', 'AcceptLanguage')] : []),
      ...(isCached(operation) ? [refTo('parameters', 'IfNoneMatch')] : []),
    ],
    request: {
      query: z.strictObject(Object.fromEntries(query.parameters.map(plainParameter))),
      ...(body === null ? {} : { body: { required: true, content } }),
    },
    responses: responsesOf(operation, examples),
  };
}

/** What the program asks of others: they answer as they like, with the status alone. */
function webhookOf(event: object | null): Omit<Route, 'path'> {
  const { operationId, summary, description, headers, body } = editionWebhook;
  const shown = { published: { summary: 'The first edition', value: event } };
  return {
    method: 'post',
    operationId,
    tags: ['editions'],
    summary,
    description,
    request: {
      headers,
      body: {
        required: true,
        content: {
          [EVENT_TYPE]: { schema: body, ...(event === null ? {} : { examples: shown }) },
        },
      },
    },
    responses: {
      204: { description: 'It was taken; any status from 200 to 299 says so.' },
      410: { description: 'No more of them are wanted.' },
    },
  };
}

function segmentParameter({ segment }: Operation) {
  if (segment === null) return [];
  const schema = { type: 'string', minLength: 1, maxLength: LIMITS.nameCharacters.value } as const;
  return [{ ...segment, in: 'path' as const, required: true, schema }];
}

function plainParameter({ name, schema, reading }: Parameter): [string, z.ZodType] {
  if (!isListReading(reading)) return [name, schema];
  return [name, schema.openapi({ param: { style: 'form', explode: true } })];
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
          reading === 'list'
            ? { ...text, description: 'Ids with commas between; any name, once each.' }
            : text,
      },
      additionalProperties: false,
      maxProperties: most,
    },
    example,
  };
}
