/**
 * Does this part fit this vehicle? Question and answer.
 */

import type { FitAnswer } from '../usecases/answer.js';
import { VALUES_HEAD } from './answer-head.js';
import { cautionSchema, JUDGED, measureSchema, orderSchema, outcomeSchema } from './judged.js';
import { NAMING, namedBySchema, supersededByField } from './naming.js';
import { z } from './openapi-zod.js';
import { ALSO_QUERY, type Operation } from './operation.js';
import {
  ADAPTER_GROUP,
  FACT_GROUP,
  FITTED_GROUP,
  NO_PARAMETERS,
  parameter,
  type QueryGrammar,
  WITH_GROUP,
} from './parameters.js';
import { partField, positionField, VEHICLE_FIELDS, withField } from './question.js';
import { saidReasonSchema } from './reason.js';
import type { Wire } from './wire.js';

const FIT_FIELDS = {
  ...VEHICLE_FIELDS,
  part: partField,
  position: positionField,
  with: withField,
  changes: z
    .enum(['no', 'yes'])
    .optional()
    .openapi({
      description:
        'Whether to look for changes around the part that would make it fit. `yes` is refused ' +
        'with `changes-not-supported` until the service can; left out, it is `no`.',
      example: 'no',
    }),
};

export const fitQuestionSchema = z
  .strictObject(FIT_FIELDS)
  .openapi('FitQuestion', { description: 'A part, a vehicle, and what is known of it.' });

export type FitQuestion = z.infer<typeof fitQuestionSchema>;

const verdictSchema = z
  .enum(['fits', 'fits-with-changes', 'does-not-fit', 'unknown', 'depends'])
  .nullable()
  .openapi('Verdict', {
    description:
      'Closed. Null where the part does not fit the vehicle as it is, or goes between two ' +
      'others, and changes around it were not looked for. `fits-with-changes` comes only where ' +
      'they were; `depends` only where the vehicle is known in part.',
  });

const fitPositionSchema = z
  .strictObject({
    position: z.string(),
    name: z.string(),
    replaces: z.array(z.string()).openapi({ description: 'Parts that it takes the place of.' }),
    present: z.boolean(),
    alone: outcomeSchema,
    verdict: verdictSchema,
    ...JUDGED,
    order: z.array(orderSchema),
  })
  .openapi('FitPosition', { description: 'The part at one position, constraint by constraint.' });

export const fitAnswerSchema = z
  .strictObject({
    ...VALUES_HEAD,
    changes: z.enum(['no', 'yes']),
    asked: z.string().openapi({ description: 'The part as the question named it.' }),
    resolvedBy: namedBySchema,
    vehicle: z.string(),
    part: z.string().openapi({ description: 'Its id.' }),
    name: z.string(),
    supersededBy: supersededByField,
    ...NAMING,
    alone: outcomeSchema.openapi({
      description: 'The part on the vehicle as it is, with nothing else changed.',
    }),
    verdict: verdictSchema,
    complete: z.boolean(),
    present: z.boolean().openapi({ description: 'The part is on the vehicle already.' }),
    ambiguous: z.boolean().openapi({ description: 'Positions differ; `at` names the best.' }),
    at: z.array(z.string()).openapi({ description: 'The positions that the verdict is about.' }),
    summary: saidReasonSchema,
    positions: z.array(fitPositionSchema),
    kit: z.null().openapi({ description: 'What else is needed; null while nothing else is.' }),
    measure: z.array(measureSchema),
    notChecked: z.array(saidReasonSchema),
    cautions: z.array(cautionSchema),
  })
  .openapi('FitAnswer', {
    description:
      'That a part does not fit is an answer, and so is that nobody can know. Nothing here says ' +
      'that a change is allowed on a road or free of danger.',
  });

export type FitAnswerWire = Wire<FitAnswer, z.infer<typeof fitAnswerSchema>>;

const FIT_QUERY: QueryGrammar = {
  parameters: [
    parameter('vehicle', FIT_FIELDS.vehicle),
    parameter('part', FIT_FIELDS.part),
    parameter('position', FIT_FIELDS.position),
    parameter('torque', FIT_FIELDS.torque),
    parameter('use', FIT_FIELDS.use),
    parameter('ignorePresent', FIT_FIELDS.ignorePresent, 'boolean'),
    parameter('changes', FIT_FIELDS.changes),
    parameter('edition', FIT_FIELDS.edition, 'number'),
    parameter('lang', FIT_FIELDS.lang),
    parameter('units', FIT_FIELDS.units),
  ],
  groups: [WITH_GROUP, FACT_GROUP, FITTED_GROUP, ADAPTER_GROUP],
};

const FIT = {
  path: '/v1/fit',
  tag: 'fit',
  answer: { schema: fitAnswerSchema, description: 'The verdict, with every reason.' },
  errors: [
    'unknown-edition',
    'no-edition',
    'unknown-vehicle',
    'vehicle-replaced',
    'unknown-part',
    'ambiguous-part',
    'unknown-position',
    'invalid-question',
    'changes-not-supported',
  ],
} as const satisfies Partial<Operation>;

export const checkFitOperation: Operation = {
  ...FIT,
  method: 'get',
  operationId: 'checkFit',
  summary: 'Does this part fit this vehicle?',
  description:
    'The vehicle as it is, with the part put in its place: every face it meets, every length, ' +
    'ratio and load it takes part in, with both values and the reason. A pinned question ' +
    '(`edition=`) has a cacheable answer.',
  segment: null,
  query: FIT_QUERY,
  body: null,
};

export const askFitOperation: Operation = {
  ...FIT,
  method: 'post',
  operationId: 'askFit',
  summary: 'The same question in a body',
  description:
    'Takes the fields of the question as JSON, with more places than a URL has room for and with ' +
    `a part for each hand. ${ALSO_QUERY}`,
  segment: null,
  query: NO_PARAMETERS,
  body: fitQuestionSchema,
};
