/**
 * Does this part fit a vehicle of which only something is known? The answer, which is in place of
 * that of one vehicle where the question names none.
 */

import type { PartlyFitAnswer } from '../usecases/check-fit-partly.js';
import { ANSWER_HEAD } from './answer-head.js';
import { MEANT_COUNTS, SETTLING_DESCRIPTION, settlingAsk } from './ask.js';
import { fitAnswerSchema, verdictSchema } from './fit-answer.js';
import { cautionSchema, outcomeSchema } from './judged.js';
import { z } from './openapi-zod.js';
import { orNull, saidReasonSchema } from './reason.js';
import type { Wire } from './wire.js';

const outcomeCountSchema = z
  .strictObject({ verdict: verdictSchema, count: z.int().min(1) })
  .openapi('OutcomeCount', { description: 'How many vehicles come to it.' });

const settlingAskSchema = settlingAsk(
  {
    verdict: verdictSchema.openapi({
      description:
        'What the part comes to with this answer. Null as of one vehicle, and where too much ' +
        'would have to be asked to know it.',
    }),
    outcomes: z.array(outcomeCountSchema),
  },
  { ask: 'SettlingAsk', value: 'SettlingValue' },
);

const meantVehicleSchema = z
  .strictObject({
    vehicle: z.string().openapi({ description: 'Its id.' }),
    label: z.string(),
    alone: outcomeSchema,
    verdict: verdictSchema,
    complete: z.boolean(),
  })
  .openapi('MeantVehicle', { description: 'A vehicle that may be meant, and what it comes to.' });

export const partlyFitAnswerSchema = z
  .strictObject({
    ...ANSWER_HEAD,
    changes: z.enum(['no', 'yes']),
    asked: z.string().openapi({ description: 'The part as the question named it.' }),
    part: z.string().openapi({ description: 'Its id.' }),
    name: z.string(),
    verdict: verdictSchema.openapi({
      description:
        'That of every vehicle that may be meant, where all have the same; else `depends`. Null ' +
        'as of one vehicle, and where too many may be meant to ask each.',
    }),
    complete: z.boolean().openapi({
      description: 'Every vehicle that may be meant was asked, and nothing better is left out.',
    }),
    summary: saidReasonSchema,
    vehicles: z.array(meantVehicleSchema).openapi({
      description:
        'Those that may be meant, in the order of the list of vehicles; none where too many may.',
    }),
    counts: MEANT_COUNTS,
    outcomes: z.array(outcomeCountSchema),
    ask: z.array(settlingAskSchema).openapi({ description: SETTLING_DESCRIPTION }),
    settles: z.boolean().openapi({
      description:
        'One verdict is left whatever the answers to all of `ask` are. False where some of the ' +
        'vehicles are told apart by some answers alone, or not at all.',
    }),
    cautions: z.array(cautionSchema),
    fit: orNull(fitAnswerSchema).openapi({
      description: 'The whole answer where one vehicle alone can be meant; else null.',
    }),
  })
  .openapi('PartlyFitAnswer', {
    description:
      'What the part comes to on every vehicle that may be meant. What is not recorded of a ' +
      'vehicle never leaves it out.',
  });

export type PartlyFitAnswerWire = Wire<PartlyFitAnswer, z.infer<typeof partlyFitAnswerSchema>>;
