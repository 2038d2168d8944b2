/**
 * Does this part fit this vehicle, or one of which only something is known? The question.
 */

import { fitAnswerSchema } from './fit-answer.js';
import { KIT_FIELDS } from './kit-question.js';
import { KNOWN_FIELDS, KNOWN_PARAMETERS, refineVehicle } from './known-vehicle.js';
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
import { partlyFitAnswerSchema } from './partly-known.js';
import { partField, positionField, withField } from './question.js';
import { VEHICLE_FIELDS } from './vehicle-fields.js';

const FIT_FIELDS = {
  ...VEHICLE_FIELDS,
  vehicle: VEHICLE_FIELDS.vehicle.optional(),
  ...KNOWN_FIELDS,
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
  .superRefine(refineVehicle)
  .openapi('FitQuestion', { description: 'A part, a vehicle, and what is known of it.' });

export type FitQuestion = z.infer<typeof fitQuestionSchema>;

const FIT_QUERY: QueryGrammar = {
  parameters: [
    parameter('vehicle', FIT_FIELDS.vehicle),
    ...KNOWN_PARAMETERS,
    parameter('part', FIT_FIELDS.part),
    parameter('position', FIT_FIELDS.position),
    parameter('torque', FIT_FIELDS.torque),
    parameter('use', FIT_FIELDS.use),
    parameter('ignorePresent', FIT_FIELDS.ignorePresent, 'boolean'),
    parameter('changes', FIT_FIELDS.changes),
    parameter('steps', FIT_FIELDS.steps, 'number'),
    parameter('edition', FIT_FIELDS.edition, 'number'),
    parameter('lang', FIT_FIELDS.lang),
    parameter('view', FIT_FIELDS.view),
    parameter('units', FIT_FIELDS.units),
  ],
  groups: [WITH_GROUP, FACT_GROUP, FITTED_GROUP, ADAPTER_GROUP],
};

const FIT = {
  path: '/v1/fit',
  tag: 'fit',
  answer: {
    schema: z.union([fitAnswerSchema, partlyFitAnswerSchema]),
    description:
      'The verdict, with every reason; where no vehicle is named, the verdict of all that may be ' +
      'meant, and what to ask.',
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

export const checkFitOperation: Operation = {
  ...FIT,
  method: 'get',
  operationId: 'checkFit',
  summary: 'Does this part fit this vehicle, and what else is needed?',
  description:
    'The vehicle as it is, with the part put in its place: every face it meets, every length, ' +
    'ratio and load it takes part in, with both values and the reason. Where that does not do, ' +
    'what has to change around it. A pinned question (`edition=`) has a cacheable answer. In ' +
    'place of `vehicle`, `make`, `model`, `variant`, `year`, `built` and facts say what is known ' +
    'of it: then every vehicle that it could be is asked, and `ask` says what settles it.',
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
