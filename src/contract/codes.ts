/**
 * The codes that answers can carry, as a list.
 *
 * They belong to the program and to no edition of the catalogue, as its limits do: the list names
 * the program alone, and is there before anything is published.
 */

import { LISTED_GROUPS, REASON_CODES } from '../domain/explain/reason.js';
import type { CodesAnswer } from '../usecases/list-codes.js';
import { ANSWER_HEAD, engineField } from './answer-head.js';
import { listFields } from './list.js';
import { z } from './openapi-zod.js';
import type { Operation } from './operation.js';
import { parameter } from './parameters.js';
import { COMMON_FIELDS } from './question.js';
import { saidReasonSchema } from './reason.js';
import type { Wire } from './wire.js';

const codeEntrySchema = z
  .strictObject({
    code: z.string().openapi({ example: 'too-small' }),
    group: z.string().openapi({
      description:
        'What it is of: a reason of a check, of a mating, of a line of a kit and so on; ' +
        '`usual-cautions` stand beside answers without data, `kinds` are what checks of built-in ' +
        'kinds have for themselves where they fail. Open.',
      example: 'checks',
    }),
    kind: z.string().nullable().openapi({
      description: 'Id of the built-in kind whose check has it; null for all others.',
    }),
    always: z.array(z.string()).openapi({ description: 'Fields that its data has always.' }),
    perhaps: z.array(z.string()).openapi({
      description: 'Fields that its data has where there is something to say.',
    }),
    example: saidReasonSchema.openapi({
      description:
        'Of an invented world. Both sides of a check and both ends of a mating are named by the ' +
        'sentence, and stand in an answer beside the reason, so `data` does not repeat them. ' +
        'For `kinds` it is what the check says; an answer goes on with both values.',
    }),
  })
  .openapi('CodeEntry', { description: 'A code, its data, and how it is said.' });

const { items, next, counts } = listFields(
  codeEntrySchema,
  'Group by group: from single checks to what is to be ordered, then cautions and kinds.',
);

export const codesAnswerSchema = z
  .strictObject({ engine: engineField, lang: ANSWER_HEAD.lang, items, next, counts })
  .openapi('CodeList', { description: 'Codes that answers can carry, on one page.' });

export type CodesWire = Wire<CodesAnswer, z.infer<typeof codesAnswerSchema>>;

/** What the list can be narrowed to. */
export const listedGroupSchema = z.enum(LISTED_GROUPS);

export const codesQuestionSchema = z.strictObject({
  group: listedGroupSchema.optional().openapi({
    description: 'Only codes of this group; all where it is left out.',
    example: 'orders',
  }),
  lang: COMMON_FIELDS.lang,
});

const { group, lang } = codesQuestionSchema.shape;

export const listCodesOperation: Operation = {
  method: 'get',
  path: '/v1/codes',
  operationId: 'listCodes',
  tag: 'service',
  summary: 'Which codes can an answer carry, and how is each said?',
  description:
    `All ${REASON_CODES.length} codes of reasons with the fields of their data and an ` +
    'example, the usual cautions, and the codes that built-in kinds give their checks. A ' +
    'catalogue can give checks codes of its own beside these.',
  segment: null,
  query: { parameters: [parameter('group', group), parameter('lang', lang)], groups: [] },
  body: null,
  answer: { schema: codesAnswerSchema, description: 'The codes.' },
  errors: [],
};
