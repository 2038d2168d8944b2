/**
 * Is this vehicle right as it stands? Question and answer.
 */

import type { InspectAnswer } from '../usecases/answer.js';
import { VALUES_HEAD } from './answer-head.js';
import {
  cautionSchema,
  judgedSchema,
  measureSchema,
  orderSchema,
  outcomeSchema,
} from './judged.js';
import { NAMING } from './naming.js';
import { z } from './openapi-zod.js';
import { ALSO_QUERY, type Operation } from './operation.js';
import { NO_PARAMETERS } from './parameters.js';
import { saidReasonSchema } from './reason.js';
import { VEHICLE_FIELDS } from './vehicle-fields.js';
import type { Wire } from './wire.js';

export const inspectQuestionSchema = z
  .strictObject(VEHICLE_FIELDS)
  .openapi('InspectQuestion', { description: 'A vehicle, and what is known to be on it.' });

export type InspectQuestion = z.infer<typeof inspectQuestionSchema>;

export const inspectAnswerSchema = z
  .strictObject({
    ...VALUES_HEAD,
    vehicle: z.string(),
    ...NAMING,
    state: outcomeSchema.openapi({
      description: 'Of all constraints together; what is as the works built it counts as holding.',
    }),
    summary: saidReasonSchema,
    judged: judgedSchema,
    order: z.array(orderSchema),
    measure: z.array(measureSchema),
    notChecked: z.array(saidReasonSchema),
    cautions: z.array(cautionSchema),
  })
  .openapi('InspectAnswer', { description: 'All constraints of the vehicle, the given ones too.' });

export type InspectAnswerWire = Wire<InspectAnswer, z.infer<typeof inspectAnswerSchema>>;

export const inspectOperation: Operation = {
  method: 'post',
  path: '/v1/inspect',
  operationId: 'inspectVehicle',
  tag: 'inspect',
  summary: 'Is this vehicle right as it stands?',
  description: `Judges the vehicle with what the question says is on it. ${ALSO_QUERY}`,
  segment: null,
  query: NO_PARAMETERS,
  body: inspectQuestionSchema,
  answer: { schema: inspectAnswerSchema, description: 'Every constraint with its state.' },
  errors: [
    'unknown-edition',
    'no-edition',
    'unknown-vehicle',
    'vehicle-replaced',
    'unknown-part',
    'ambiguous-part',
    'unknown-position',
    'unknown-interface',
    'invalid-question',
  ],
};
