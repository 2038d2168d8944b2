/**
 * What does the conversion take? The answer, of one vehicle.
 */

import type { KitAnswer } from '../usecases/kit-answer.js';
import { VALUES_HEAD } from './answer-head.js';
import { askedKitSchema } from './asked-kit.js';
import { conflictSchema } from './conflict.js';
import { moneyField } from './kit-line.js';
import { NAMING } from './naming.js';
import { z } from './openapi-zod.js';
import { orNull, saidReasonSchema } from './reason.js';
import { compareSchema, gradeSchema, routeSchema } from './route.js';
import type { Wire } from './wire.js';

/** What the answer says of prices and names, of however many vehicles it is. */
export const KITS_HEAD = {
  offers: z.int().min(0).openapi({
    description:
      'Number of the price and stock list that prices are from. It has a counter of its own.',
  }),
  currency: z.string().nullable().openapi({
    description: 'Null where the catalogue names none.',
    example: 'EUR',
  }),
  tax: z.enum(['net']),
  named: NAMING.named.openapi({ description: 'The parts that the question names.' }),
};

const boundSchema = z
  .strictObject({ grade: gradeSchema, cost: moneyField })
  .openapi('Bound', { description: 'No route of this grade that is not listed costs less.' });

export const kitAnswerSchema = z
  .strictObject({
    ...VALUES_HEAD,
    ...KITS_HEAD,
    question: askedKitSchema,
    vehicle: z.string(),
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
