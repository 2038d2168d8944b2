/**
 * Figures of how a vehicle drives, as answers show them.
 */

import { outcomeSchema } from './judged.js';
import { z } from './openapi-zod.js';
import { orNull, shownValueSchema } from './reason.js';

export const figureSchema = z
  .strictObject({
    value: orNull(shownValueSchema).openapi({ description: 'Null where it is not known.' }),
    outcome: orNull(outcomeSchema).openapi({
      description: 'Whether it is within its limit; null where it has none.',
    }),
  })
  .openapi('Figure', { description: 'One figure of how a vehicle drives.' });

const changedFigureSchema = z
  .strictObject({
    figure: z.string(),
    name: z.string(),
    before: orNull(figureSchema),
    after: orNull(figureSchema),
  })
  .openapi('ChangedFigure', { description: 'A figure before and after a change.' });

export const routeDrivelineSchema = z
  .strictObject({
    loops: z.array(changedFigureSchema).openapi({
      description: 'Whether the axles are in step; without one that the layout has none of.',
    }),
    better: z.array(changedFigureSchema),
    worse: z.array(changedFigureSchema),
  })
  .openapi('RouteDriveline', {
    description:
      'How a route drives, in short; loads stand beside it. POST /v1/driveline with the key of ' +
      'the route tells all of it.',
  });
