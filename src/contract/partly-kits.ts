/**
 * What does the conversion take on a vehicle of which only something is known? The answer, which is
 * in place of that of one vehicle where the question names none.
 */

import type { PartlyKitAnswer } from '../usecases/kits-partly-answer.js';
import { VALUES_HEAD } from './answer-head.js';
import { MEANT_COUNTS, SETTLING_DESCRIPTION, settlingAsk } from './ask.js';
import { conflictSchema } from './conflict.js';
import { cautionSchema, orderSchema } from './judged.js';
import { KITS_HEAD, kitAnswerSchema } from './kit-answer.js';
import { kitLineSchema, kitTotalsSchema } from './kit-line.js';
import { z } from './openapi-zod.js';
import { orNull, saidReasonSchema } from './reason.js';
import { gradeSchema } from './route.js';
import type { Wire } from './wire.js';

const kitGradeSchema = z
  .enum(['proven', 'open', 'none'])
  .nullable()
  .openapi({
    description:
      'That of the first route; `none` where this edition has no route. Null where the search ' +
      'was cut short and had found none by then, or was not made.',
  });

/** Closed. */
const partlyGradeSchema = z.enum(['proven', 'open', 'none', 'depends']).nullable();

const gradeCountSchema = z
  .strictObject({ grade: kitGradeSchema, count: z.int().min(1) })
  .openapi('GradeCount', { description: 'How many vehicles come to it.' });

const kitSettlingAskSchema = settlingAsk(
  {
    grade: partlyGradeSchema.openapi({
      description:
        'What all vehicles come to that this answer leaves: `depends` unless they have the very ' +
        'same routes, of whatever grades those are. Null also where too many searches would have ' +
        'to be made to know it.',
    }),
    outcomes: z.array(gradeCountSchema),
  },
  { ask: 'KitSettlingAsk', value: 'KitSettlingValue' },
);

const meantKitsSchema = z
  .strictObject({
    vehicle: z.string().openapi({ description: 'Its id.' }),
    label: z.string(),
    grade: kitGradeSchema,
    complete: z.boolean(),
    summary: saidReasonSchema,
  })
  .openapi('MeantKits', {
    description: 'A vehicle that may be meant, and what its own answer comes to.',
  });

const sharedLineSchema = kitLineSchema
  .omit({ why: true, substitutes: true, alternatives: true })
  .openapi('SharedLine', { description: 'One thing to buy, to do or to take out.' });

const sharedRouteSchema = z
  .strictObject({
    grade: gradeSchema,
    changes: z.array(z.string()).openapi({ description: 'Positions, in layout order.' }),
    lines: z.array(sharedLineSchema),
    recommended: z.array(sharedLineSchema),
    totals: kitTotalsSchema,
    order: z.array(orderSchema),
  })
  .openapi('SharedRoute', {
    description:
      'A way of doing it that is the same for all vehicles. Why a line is there, what holds and ' +
      'what has to be found out, each says in its own answer.',
  });

export const partlyKitAnswerSchema = z
  .strictObject({
    ...VALUES_HEAD,
    ...KITS_HEAD,
    grade: partlyGradeSchema.openapi({
      description:
        'Closed. That of the first of the routes that all vehicles have that may be meant, or ' +
        '`none` where none has one; `depends` where their routes are not the very same. Null as ' +
        'of one vehicle, and where too many may be meant to search for each.',
    }),
    complete: z.boolean().openapi({ description: 'Every search came to its end.' }),
    more: z.boolean().openapi({
      description: 'Some vehicle has more routes than were asked for.',
    }),
    summary: saidReasonSchema,
    routes: z.array(sharedRouteSchema).openapi({
      description: 'Those that all of them have; none where it depends.',
    }),
    conflict: orNull(conflictSchema).openapi({
      description: 'Why there is no route, where that is the same for all of them; else null.',
    }),
    vehicles: z.array(meantKitsSchema).openapi({
      description:
        'Those that may be meant, in the order of the list of vehicles; none where too many may.',
    }),
    counts: MEANT_COUNTS,
    outcomes: z.array(gradeCountSchema).openapi({
      description: 'By the grade of the first route; the routes may be others all the same.',
    }),
    ask: z.array(kitSettlingAskSchema).openapi({ description: SETTLING_DESCRIPTION }),
    settles: z.boolean().openapi({
      description:
        'The same routes are left, or none, whatever the answers to all of `ask` are. False ' +
        'where some of the vehicles are told apart by some answers alone, or not at all.',
    }),
    cautions: z.array(cautionSchema).openapi({ description: 'Of all routes of all of them.' }),
    kits: orNull(kitAnswerSchema).openapi({
      description: 'The whole answer where one vehicle alone can be meant; else null.',
    }),
  })
  .openapi('PartlyKitAnswer', {
    description:
      'What the conversion takes on every vehicle that may be meant. What is not recorded of a ' +
      'vehicle never leaves it out, and no route of one of them is shown for another.',
  });

export type PartlyKitAnswerWire = Wire<PartlyKitAnswer, z.infer<typeof partlyKitAnswerSchema>>;
