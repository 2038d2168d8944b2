/**
 * Do these two faces meet? Question and answer.
 */

import type { MateAnswer } from '../usecases/answer.js';
import { VALUES_HEAD } from './answer-head.js';
import { cautionSchema, matingSchema, measureSchema, outcomeSchema } from './judged.js';
import { NAMING } from './naming.js';
import { z } from './openapi-zod.js';
import { ALSO_QUERY, type Operation } from './operation.js';
import { NO_PARAMETERS, parameter, type QueryGrammar } from './parameters.js';
import { adaptersSchema, partField, useField, VALUES_FIELDS } from './question.js';
import { saidReasonSchema } from './reason.js';
import type { Wire } from './wire.js';

const RECORDED = {
  part: partField,
  interface: partField.optional().openapi({
    description: 'The face; each face of the part is tried where it is left out.',
    example: 'box',
  }),
};

const recordedEndSchema = z
  .strictObject(RECORDED)
  .openapi('RecordedEnd', { description: 'A face of a recorded part.' });

const inlineEndSchema = z
  .strictObject({
    inline: z.record(z.string(), z.unknown()).openapi({
      description: 'An interface as the catalogue document writes it: kind, side, parameters.',
      example: {
        kind: 'shift-coupling',
        side: 'box',
        pattern: 'two-cables',
        gates: 4,
        pin: '8.0 mm',
      },
    }),
  })
  .openapi('InlineEnd', { description: 'A face that the question writes out.' });

const endSchema = z.union([recordedEndSchema, inlineEndSchema]);

const MATE_FIELDS = {
  adapters: adaptersSchema.optional().openapi({ description: 'Adapters between them, in a row.' }),
  use: useField,
  ...VALUES_FIELDS,
};

export const mateQuestionSchema = z
  .strictObject({ a: endSchema, b: endSchema, ...MATE_FIELDS })
  .openapi('MateQuestion', { description: 'Two faces, and what is between them.' });

export type MateQuestion = z.infer<typeof mateQuestionSchema>;

/** The question as far as a URL can hold it: faces of recorded parts alone. */
export const mateUrlQuestionSchema = z.strictObject({
  a: recordedEndSchema,
  b: recordedEndSchema,
  ...MATE_FIELDS,
});

export const mateAnswerSchema = z
  .strictObject({
    ...VALUES_HEAD,
    ...NAMING,
    state: outcomeSchema,
    summary: saidReasonSchema,
    mating: matingSchema,
    measure: z.array(measureSchema),
    notChecked: z.array(saidReasonSchema),
    cautions: z.array(cautionSchema),
  })
  .openapi('MateAnswer', { description: 'Whether the faces meet, check by check.' });

export type MateAnswerWire = Wire<MateAnswer, z.infer<typeof mateAnswerSchema>>;

const MATE_QUERY: QueryGrammar = {
  parameters: [
    { ...parameter('a', RECORDED.part), field: ['a', 'part'] },
    { ...parameter('a.face', RECORDED.interface), field: ['a', 'interface'] },
    { ...parameter('b', RECORDED.part), field: ['b', 'part'] },
    { ...parameter('b.face', RECORDED.interface), field: ['b', 'interface'] },
    { ...parameter('adapter', MATE_FIELDS.adapters, 'list'), field: ['adapters'] },
    parameter('use', MATE_FIELDS.use),
    parameter('edition', MATE_FIELDS.edition, 'number'),
    parameter('lang', MATE_FIELDS.lang),
    parameter('view', MATE_FIELDS.view),
    parameter('units', MATE_FIELDS.units),
  ],
  groups: [],
};

const MATE = {
  path: '/v1/mate',
  tag: 'mate',
  answer: { schema: mateAnswerSchema, description: 'Whether they meet, with every reason.' },
  errors: [
    'unknown-edition',
    'no-edition',
    'unknown-part',
    'ambiguous-part',
    'unknown-interface',
    'invalid-question',
  ],
} as const satisfies Partial<Operation>;

export const mateFacesOperation: Operation = {
  ...MATE,
  method: 'get',
  operationId: 'mateFaces',
  summary: 'Do these two faces meet?',
  description: 'Two recorded parts by their faces, directly or through adapters.',
  segment: null,
  query: MATE_QUERY,
  body: null,
};

export const askMateOperation: Operation = {
  ...MATE,
  method: 'post',
  operationId: 'askMate',
  summary: 'The same question in a body',
  description:
    'Either end may be a face of a recorded part, or one that the question writes out. ' +
    ALSO_QUERY,
  segment: null,
  query: NO_PARAMETERS,
  body: mateQuestionSchema,
};
