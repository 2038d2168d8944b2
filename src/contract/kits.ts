/**
 * What does the conversion take? The answer, and how the question stands in a URL.
 */

import type { KitAnswer } from '../usecases/kit-answer.js';
import { VALUES_HEAD } from './answer-head.js';
import { askedKitSchema } from './asked-kit.js';
import { conflictSchema } from './conflict.js';
import { moneyField } from './kit-line.js';
import { KIT_FIELDS, kitQuestionSchema, LIMIT_FIELDS } from './kit-question.js';
import { LIMITS } from './limits.js';
import { NAMING } from './naming.js';
import { z } from './openapi-zod.js';
import { ALSO_QUERY, type Operation } from './operation.js';
import {
  ADAPTER_GROUP,
  FACT_GROUP,
  FITTED_GROUP,
  NO_PARAMETERS,
  type Parameter,
  parameter,
  type QueryGrammar,
  type Reading,
} from './parameters.js';
import { nameOf } from './question.js';
import { orNull, saidReasonSchema } from './reason.js';
import { compareSchema, gradeSchema, routeSchema } from './route.js';
import type { Wire } from './wire.js';

const boundSchema = z
  .strictObject({ grade: gradeSchema, cost: moneyField })
  .openapi('Bound', { description: 'No route of this grade that is not listed costs less.' });

export const kitAnswerSchema = z
  .strictObject({
    ...VALUES_HEAD,
    offers: z.int().min(0).openapi({
      description:
        'Number of the price and stock list that prices are from. It has a counter of its own.',
    }),
    currency: z.string().nullable().openapi({
      description: 'Null where the catalogue names none.',
      example: 'EUR',
    }),
    tax: z.enum(['net']),
    question: askedKitSchema,
    vehicle: z.string(),
    named: NAMING.named.openapi({ description: 'The parts that the question names.' }),
    summary: saidReasonSchema,
    complete: z.boolean().openapi({
      description: 'The search came to its end: the first route is the best that there is.',
    }),
    more: z.boolean().openapi({ description: 'There are more routes than were asked for.' }),
    bound: orNull(boundSchema).openapi({
      description: 'Where the search is not complete, what is known of what it has not seen.',
    }),
    routes: z.array(routeSchema),
    compare: compareSchema,
    conflict: orNull(conflictSchema).openapi({
      description: 'Why there is no route; null where there is one, or the search was cut short.',
    }),
  })
  .openapi('KitAnswer', {
    description:
      'Routes, proven ones first, then as it was preferred. That there is none in this edition ' +
      'is an answer. Nothing here says that a change is allowed on a road or free of danger.',
  });

export type KitAnswerWire = Wire<KitAnswer, z.infer<typeof kitAnswerSchema>>;

const names = (most: number) => z.array(nameOf()).max(most).optional();

const MOST_WANTS = LIMITS.wantsInUrl.value;

const MOST = LIMITS.kitEntries.value;

/** As a URL has it: the schema of the question checks what is made of it. */
const inUrl = (name: keyof typeof KIT_FIELDS, schema: z.ZodType, reading: Reading): Parameter => ({
  name,
  field: [name],
  reading,
  schema,
});

const limit = (name: keyof typeof LIMIT_FIELDS, reading: Reading = 'text'): Parameter => ({
  name: `limits.${name}`,
  field: ['limits', name],
  reading,
  schema: LIMIT_FIELDS[name],
});

export const KITS_QUERY: QueryGrammar = {
  parameters: [
    parameter('vehicle', KIT_FIELDS.vehicle),
    inUrl(
      'want',
      names(MOST_WANTS).openapi({
        description:
          'What is wished for: parts, each with `@` and a position behind it if need be, or ' +
          '`lot:` and a lot, which is used whole if the vehicle can take that. At most ' +
          `${MOST_WANTS}; POST takes more, and conditions.`,
        example: ['gearbox-6-late'],
      }),
      'wants',
    ),
    inUrl('keep', names(MOST).openapi({ description: 'Positions that stay as they are.' }), 'list'),
    inUrl('avoid', names(MOST).openapi({ description: 'Parts not to be added.' }), 'parts'),
    inUrl(
      'lots',
      names(MOST).openapi({
        description: '`all` (where it is left out), `none`, or the lots that may be bought.',
        example: ['none'],
      }),
      'lots',
    ),
    parameter('workUpTo', KIT_FIELDS.workUpTo),
    limit('cost'),
    limit('changedPositions', 'number'),
    limit('labourHours'),
    limit('leadDays', 'number'),
    limit('inStock', 'boolean'),
    parameter('torque', KIT_FIELDS.torque),
    parameter('use', KIT_FIELDS.use),
    parameter('ignorePresent', KIT_FIELDS.ignorePresent, 'boolean'),
    parameter('ruleset', KIT_FIELDS.ruleset),
    parameter('unknowns', KIT_FIELDS.unknowns),
    parameter('from', KIT_FIELDS.from),
    parameter('prefer', KIT_FIELDS.prefer),
    parameter('routes', KIT_FIELDS.routes, 'number'),
    parameter('undominated', KIT_FIELDS.undominated, 'boolean'),
    parameter('steps', KIT_FIELDS.steps, 'number'),
    parameter('edition', KIT_FIELDS.edition, 'number'),
    parameter('lang', KIT_FIELDS.lang),
    parameter('view', KIT_FIELDS.view),
    parameter('units', KIT_FIELDS.units),
  ],
  groups: [FACT_GROUP, FITTED_GROUP, ADAPTER_GROUP],
};

const KITS = {
  path: '/v1/kits',
  tag: 'kits',
  answer: { schema: kitAnswerSchema, description: 'The routes, each with its lines.' },
  errors: [
    'unknown-edition',
    'no-edition',
    'unknown-vehicle',
    'vehicle-replaced',
    'unknown-part',
    'ambiguous-part',
    'unknown-position',
    'invalid-question',
  ],
} as const satisfies Partial<Operation>;

export const KITS_PATH = KITS.path;

export const findKitsOperation: Operation = {
  ...KITS,
  method: 'get',
  operationId: 'findKits',
  summary: 'What does the conversion take?',
  description:
    'Every sensible way of doing it: what to buy, to do and to take out, why, and what it comes ' +
    'to. Prices are those of the price and stock list, so the answer is pinned by `edition` and ' +
    "`offers` together. Prices of one's own and what was measured go in a body.",
  segment: null,
  query: KITS_QUERY,
  body: null,
};

export const askKitsOperation: Operation = {
  ...KITS,
  method: 'post',
  operationId: 'askKits',
  summary: 'The same question in a body',
  description:
    'Takes the fields of the question as JSON, with alternatives, conditions, pieces at hand, ' +
    "prices of one's own and what was measured. Where it has prices of one's own, nobody keeps " +
    `the answer, of QUERY neither. ${ALSO_QUERY}`,
  segment: null,
  query: NO_PARAMETERS,
  body: kitQuestionSchema,
  errors: [...KITS.errors, 'unknown-interface'],
};
