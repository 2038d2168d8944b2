/**
 * What does the conversion take, on this vehicle or on one of which only something is known? How
 * the question stands in a URL and in a body.
 */

import { kitAnswerSchema } from './kit-answer.js';
import { KIT_FIELDS, kitQuestionSchema, LIMIT_FIELDS } from './kit-question.js';
import { KNOWN_PARAMETERS } from './known-vehicle.js';
import { LIMITS } from './limits.js';
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
import { partlyKitAnswerSchema } from './partly-kits.js';
import { nameOf } from './question.js';

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
    ...KNOWN_PARAMETERS,
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
  answer: {
    schema: z.union([kitAnswerSchema, partlyKitAnswerSchema]),
    description:
      'The routes, each with its lines; where no vehicle is named, those that all have that may ' +
      'be meant, and what to ask.',
  },
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
    "`offers` together. Prices of one's own and what was measured go in a body. In place of " +
    '`vehicle`, `make`, `model`, `variant`, `year`, `built` and facts say what is known of it: ' +
    'then it is asked of every vehicle that it could be, and `ask` says what settles it.',
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
