/**
 * The limits of the service, as a list.
 *
 * They belong to the program that answers and to no edition of the catalogue: the list is the same
 * before anything is published. So it names the program, and no edition, not even null, which
 * says of the editions that there are none.
 */

import { ANSWER_HEAD, engineField } from './answer-head.js';
import { LIMIT_NAMES } from './limits.js';
import { listFields } from './list.js';
import { z } from './openapi-zod.js';
import type { Operation } from './operation.js';
import { parameter } from './parameters.js';
import { COMMON_FIELDS } from './question.js';

const limitEntrySchema = z
  .strictObject({
    name: z.string().openapi({
      description: 'As `limit` of a problem repeats it. Open.',
      example: 'bodyBytes',
    }),
    value: z.int().min(1).openapi({
      description: 'The most that this server takes, itself included.',
      example: 1_000_000,
    }),
    unit: z.string().openapi({
      description: 'What is counted; `characters` are Unicode code points. Open.',
      example: 'bytes',
    }),
    about: z.string().openapi({ description: 'What it is the most of, and what else to know.' }),
  })
  .openapi('LimitEntry', { description: 'A limit of the service.' });

const { items, next, counts } = listFields(
  limitEntrySchema,
  'From the request as a whole to what is in it.',
);

export const limitsAnswerSchema = z
  .strictObject({ engine: engineField, lang: ANSWER_HEAD.lang, items, next, counts })
  .openapi('LimitList', { description: 'Every limit of the service, on one page.' });

export type LimitsWire = z.infer<typeof limitsAnswerSchema>;

export const limitsQuestionSchema = z.strictObject({ lang: COMMON_FIELDS.lang });

export const listLimitsOperation: Operation = {
  method: 'get',
  path: '/v1/limits',
  operationId: 'listLimits',
  tag: 'service',
  summary: 'How much of anything does the service take?',
  description:
    `All ${LIMIT_NAMES.length} limits, as they hold for this server. A problem that comes of one ` +
    'names it in `limit`.',
  segment: null,
  query: { parameters: [parameter('lang', COMMON_FIELDS.lang)], groups: [] },
  body: null,
  answer: { schema: limitsAnswerSchema, description: 'The limits.' },
  errors: [],
};
