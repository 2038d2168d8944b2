/**
 * Does this part fit this vehicle? The answer.
 */

import type { FitAnswer } from '../usecases/answer.js';
import { VALUES_HEAD } from './answer-head.js';
import { conflictSchema } from './conflict.js';
import { cautionSchema, JUDGED, measureSchema, orderSchema, outcomeSchema } from './judged.js';
import { NAMING, namedBySchema, supersededByField } from './naming.js';
import { z } from './openapi-zod.js';
import { orNull, saidReasonSchema } from './reason.js';
import { routeSchema } from './route.js';
import type { Wire } from './wire.js';

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
