/**
 * Does this part fit this vehicle? Question and answer.
 */

import type { FitAnswer } from '../usecases/answer.js';
import { VALUES_HEAD } from './answer-head.js';
import { conflictSchema } from './conflict.js';
import { cautionSchema, JUDGED, measureSchema, orderSchema, outcomeSchema } from './judged.js';
import { KIT_FIELDS } from './kit-question.js';
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
import { partField, positionField, withField } from './question.js';
import { orNull, saidReasonSchema } from './reason.js';
import { routeSchema } from './route.js';
import { VEHICLE_FIELDS } from './vehicle-fields.js';
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
        'Whether to look for changes around the part that would make it fit. Left out, it is ' +
        '`yes`; `no` is quicker, and leaves the verdict open where the part alone does not do.',
      example: 'no',
    }),
  steps: KIT_FIELDS.steps,
};

export const fitQuestionSchema = z
  .strictObject(FIT_FIELDS)
  .openapi('FitQuestion', { description: 'A part, a vehicle, and what is known of it.' });

export type FitQuestion = z.infer<typeof fitQuestionSchema>;

export const verdictSchema = z
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
    complete: z.boolean().openapi({
      description:
        'Nothing better is left out. False where a search ended at its limit of steps: then the ' +
        'verdict may be `unknown` for want of a longer one, and is never `does-not-fit`.',
    }),
    present: z.boolean().openapi({ description: 'The part is on the vehicle already.' }),
    ambiguous: z.boolean().openapi({ description: 'Positions differ; `at` names the best.' }),
    at: z.array(z.string()).openapi({ description: 'The positions that the verdict is about.' }),
    summary: saidReasonSchema,
    positions: z.array(fitPositionSchema),
    currency: z.string().nullable().openapi({
      description: 'What prices of the kit are in, net; null where the catalogue names none.',
    }),
    kit: orNull(routeSchema).openapi({
      description:
        'What else is needed: the first route of the kit question for this part at its place, ' +
        'with every default. Null where nothing else is needed, and where no way is known.',
    }),
    conflict: orNull(conflictSchema).openapi({
      description:
        'Why there is no way to make it fit; null where there is one, or none was sought.',
    }),
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
    parameter('steps', FIT_FIELDS.steps, 'number'),
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
  ],
} as const satisfies Partial<Operation>;

export const checkFitOperation: Operation = {
  ...FIT,
  method: 'get',
  operationId: 'checkFit',
  summary: 'Does this part fit this vehicle, and what else is needed?',
  description:
    'The vehicle as it is, with the part put in its place: every face it meets, every length, ' +
    'ratio and load it takes part in, with both values and the reason. Where that does not do, ' +
    'what has to change around it. A pinned question (`edition=`) has a cacheable answer.',
  segment: null,
  query: FIT_QUERY,
  body: null,
};

export const askFitOperation: Operation = {
  ...FIT,
  errors: [...FIT.errors, 'unknown-interface'],
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
