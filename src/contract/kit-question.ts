/**
 * What does the conversion take? The question, as it stands in a body. Here only the form is
 * checked: names, conditions and amounts are for the use-case to say something of.
 */

import { USUAL_ROUTES, USUAL_STEPS } from '../domain/kit/extent.js';
import { PREFERENCES } from '../domain/kit/question.js';
import { lotsSchema, ownedSchema, ownOfferSchema } from './kit-goods.js';
import { avoidSchema, few, money, position, wantSchema } from './kit-wishes.js';
import { KNOWN_FIELDS, refineVehicle } from './known-vehicle.js';
import { atMost } from './limits.js';
import { z } from './openapi-zod.js';
import { nameOf } from './question.js';
import { VEHICLE_FIELDS } from './vehicle-fields.js';

export const workUpToSchema = z.enum(['none', 'workshop', 'engineer']);
export const unknownsSchema = z.enum(['allow', 'refuse']);
export const fromSchema = z.enum(['recorded', 'offered']);
export const preferSchema = z.enum(PREFERENCES);

export const LIMIT_FIELDS = {
  cost: money('Parts, works and, with a rate, labour.', '2500.00').optional(),
  changedPositions: z
    .int()
    .min(0)
    .max(...atMost('placesInBody'))
    .optional()
    .openapi({
      description: 'Places that are changed.',
      example: 4,
    }),
  labourHours: nameOf('valueCharacters').optional().openapi({
    description: 'A decimal.',
    pattern: '^[0-9]{1,6}(\\.[0-9]{1,4})?$',
    example: '12.5',
  }),
  leadDays: z
    .int()
    .min(0)
    .max(...atMost('leadDays'))
    .optional()
    .openapi({
      description: 'Days until all is there.',
      example: 5,
    }),
  inStock: z.boolean().optional().openapi({
    description: 'Buy only what the stock of an offer covers.',
  }),
};

export const KIT_FIELDS = {
  ...VEHICLE_FIELDS,
  vehicle: VEHICLE_FIELDS.vehicle.optional(),
  ...KNOWN_FIELDS,
  want: z
    .array(wantSchema)
    .max(...atMost('wants'))
    .optional()
    .openapi({
      description:
        'What the change must bring about, all of it. Without any, what fails on the vehicle as ' +
        'it stands is mended.',
    }),
  keep: few(position).optional().openapi({ description: 'Positions that stay as they are.' }),
  avoid: few(avoidSchema).optional().openapi({ description: 'What must not be added.' }),
  owned: few(ownedSchema).optional().openapi({ description: 'What is at hand already.' }),
  lots: lotsSchema.optional().openapi({
    description:
      'Lots that may be bought, beside those that are wanted: `all`, `none`, or these. Left out, ' +
      'it is `all`.',
  }),
  workUpTo: workUpToSchema.optional().openapi({
    description:
      'Works that may be done on parts: none, those that a workshop signs for or nobody need, or ' +
      'also those that an engineer signs for. Left out, it is `engineer`: each route says who ' +
      'must sign.',
  }),
  limits: z.strictObject(LIMIT_FIELDS).optional().openapi('KitLimits', {
    description: 'What no route exceeds.',
  }),
  labourRate: money('Of one hour.', '60.00').optional().openapi({
    description: 'What an hour of labour costs; without it labour is counted and not priced.',
  }),
  ruleset: nameOf().optional().openapi({
    description: 'Id of a ruleset, such as that of a class: what it demands must hold as well.',
    example: 'fellmark-touring',
  }),
  unknowns: unknownsSchema.optional().openapi({
    description: '`refuse`: only routes of which all is known. Left out, it is `allow`.',
  }),
  from: fromSchema.optional().openapi({
    description:
      '`offered`: buy only what is offered. Left out, it is `recorded`: whatever is recorded, ' +
      'and prices that are not known are counted.',
  }),
  offers: z
    .array(ownOfferSchema)
    .max(...atMost('ownOffers'))
    .optional()
    .openapi({
      description: "Prices of one's own.",
    }),
  offersMode: z
    .enum(['over', 'replace'])
    .optional()
    .openapi({
      description:
        '`replace`: nothing else is offered. Left out, it is `over`: they stand in place of the ' +
        'recorded offers of the same part, lot or work, or of the one under the same code.',
    }),
  prefer: preferSchema.optional().openapi({
    description: 'By what routes of one grade are ordered first. Left out, it is `cost`.',
  }),
  routes: z
    .int()
    .min(1)
    .max(...atMost('routes'))
    .optional()
    .openapi({
      description: `How many routes are wanted. Left out, it is ${USUAL_ROUTES}.`,
      example: USUAL_ROUTES,
    }),
  undominated: z.boolean().optional().openapi({
    description: 'Leave out routes that another one beats on every count.',
  }),
  steps: z
    .int()
    .min(1)
    .max(...atMost('kitSteps'))
    .optional()
    .openapi({
      description:
        'Steps that the search may take; where that is too few, `complete` is false. Left out, ' +
        `it is ${USUAL_STEPS}.`,
      example: USUAL_STEPS,
    }),
};

export const kitQuestionSchema = z
  .strictObject(KIT_FIELDS)
  .superRefine(refineVehicle)
  .openapi('KitQuestion', {
    description: 'A vehicle, what is wished for, and what may be used for it.',
  });

export type KitQuestion = z.infer<typeof kitQuestionSchema>;

/** Most wishes in a URL; the body takes more. */
export const kitUrlQuestionSchema = z
  .strictObject({
    ...KIT_FIELDS,
    want: z
      .array(wantSchema)
      .max(...atMost('wantsInUrl'))
      .optional(),
  })
  .superRefine(refineVehicle);
