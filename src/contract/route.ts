/**
 * One way of doing a conversion, and several of them side by side.
 */

import type { CompareView, RouteView } from '../usecases/kit-answer.js';
import { routeDrivelineSchema } from './figure.js';
import { cautionSchema, JUDGED, measureSchema, orderSchema } from './judged.js';
import { kitLineSchema, kitTotalsSchema } from './kit-line.js';
import { z } from './openapi-zod.js';
import { orNull, saidReasonSchema, shownValueSchema } from './reason.js';
import { BY_CODE } from './reason-codes.js';
import type { Wire } from './wire.js';

export const gradeSchema = z.enum(['proven', 'open']).openapi('Grade', {
  description: 'Closed. `proven`: all of it holds. `open`: nothing fails, but not all is known.',
});

const loadSchema = z
  .strictObject({
    check: z.string(),
    position: z.string(),
    positionName: z.string().nullable(),
    before: orNull(shownValueSchema),
    after: orNull(shownValueSchema),
  })
  .openapi('LoadMargin', {
    description: 'What a part bears, as the share of its rating in what is asked of it.',
  });

const weakestSchema = z
  .strictObject({
    position: z.string(),
    positionName: z.string().nullable(),
    margin: shownValueSchema,
  })
  .openapi('Weakest', { description: 'The part with the least in reserve.' });

const kitMeasureSchema = z
  .strictObject({
    ...measureSchema.shape,
    settlesRoutes: z.array(z.int()).openapi({
      description: 'Which of the listed routes have nothing open any more once this is known.',
    }),
  })
  .openapi('KitMeasure', { description: 'A fact that is missing, or too coarse.', ...BY_CODE });

export const routeSchema = z
  .strictObject({
    key: z
      .string()
      .nullable()
      .openapi({
        description:
          'What is needed to open this route again. It stands for nothing else and gives nobody ' +
          'any right. Null where it would be longer than a URL has room for.',
      }),
    digest: z.string().openapi({ description: 'Of what the route does and costs.' }),
    grade: gradeSchema,
    beatenBy: z.int().nullable().openapi({
      description:
        'Index of the first listed route that is no worse on any count and better on one.',
    }),
    summary: saidReasonSchema,
    changes: z.array(z.string()).openapi({ description: 'Positions, in layout order.' }),
    lines: z.array(kitLineSchema),
    recommended: z.array(kitLineSchema),
    totals: kitTotalsSchema,
    weakest: orNull(weakestSchema),
    loads: z.array(loadSchema),
    driveline: routeDrivelineSchema,
    loses: z.array(saidReasonSchema).openapi({
      description: 'What the vehicle has now and no more afterwards.',
    }),
    ...JUDGED,
    order: z.array(orderSchema),
    measure: z.array(kitMeasureSchema),
    notChecked: z.array(saidReasonSchema),
    cautions: z.array(cautionSchema),
  })
  .openapi('Route', {
    description:
      'A way of doing it that leaves nothing out, and has nothing in it that could be left out.',
  });

export const compareSchema = z
  .strictObject({
    same: z.array(z.string()).openapi({ description: 'Keys of the lines that all of them have.' }),
    rows: z.array(
      z
        .strictObject({
          key: z.string().openapi({ description: 'Open: rows may be added.' }),
          name: z.string().openapi({ description: 'For people.' }),
          values: z
            .array(z.union([z.string(), z.number(), z.boolean(), z.null()]))
            .openapi({ description: 'One for each route; null where it is not known.' }),
        })
        .openapi('CompareRow'),
    ),
  })
  .openapi('Compare', { description: 'The listed routes side by side.' });

export type RouteWire = Wire<RouteView, z.infer<typeof routeSchema>>;
export type CompareWire = Wire<CompareView, z.infer<typeof compareSchema>>;
