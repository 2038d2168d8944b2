/**
 * How does this vehicle drive, and does it hold? Question and answer.
 */

import { FIGURE_CODES, SECTIONS } from '../domain/driveline/figure.js';
import { ACTIONS } from '../domain/kit/basket.js';
import type { DrivelineAnswer } from '../usecases/drive-vehicle.js';
import { VALUES_HEAD } from './answer-head.js';
import { figureSchema } from './figure.js';
import { cautionSchema, measureSchema } from './judged.js';
import { kitLineSchema } from './kit-line.js';
import { atMost } from './limits.js';
import { NAMING } from './naming.js';
import { z } from './openapi-zod.js';
import { ALSO_QUERY, type Operation } from './operation.js';
import { NO_PARAMETERS } from './parameters.js';
import { nameOf } from './question.js';
import { orNull } from './reason.js';
import { BY_CODE } from './reason-codes.js';
import { VEHICLE_FIELDS } from './vehicle-fields.js';
import type { Wire } from './wire.js';

const changingLineSchema = kitLineSchema
  .extend({ action: z.enum(ACTIONS) })
  .partial()
  .openapi('ChangingLine', {
    description:
      'A line of a route, as an answer about kits gives it. What it changes follows from ' +
      '`action` (`add` where it is left out), `position`, `hand`, `mating`, `part`, `work` and, ' +
      'of what is there already, `source`; the rest is not looked at.',
  });

export const drivelineQuestionSchema = z
  .strictObject({
    ...VEHICLE_FIELDS,
    lines: z
      .array(changingLineSchema)
      .max(...atMost('drivenLines'))
      .optional()
      .openapi({ description: 'Lines of a kit that is put in.' }),
    routes: z
      .array(nameOf('routeKeyCharacters'))
      .max(...atMost('drivenRoutes'))
      .optional()
      .openapi({
        description:
          'Keys of routes, of answers about kits of this vehicle: each is put in by itself, ' +
          'behind `lines` where there are some.',
      }),
    grip: nameOf('valueCharacters')
      .optional()
      .openapi({
        description:
          'Friction of the tyres on the road, such as `0.9`, up to 2. With it, the torque at ' +
          'which tyres slip stands beside the loads.',
        example: '0.9',
      }),
  })
  .openapi('DrivelineQuestion', { description: 'A vehicle, and what is put into it.' });

export type DrivelineQuestion = z.infer<typeof drivelineQuestionSchema>;

const sectionSchema = z.enum(SECTIONS);

const changeSchema = z.enum(['better', 'worse']);

const rowSchema = z
  .strictObject({
    section: sectionSchema,
    figure: z.string().openapi({
      description: 'Stable: the same in every language and after every change.',
      example: 'axle-match',
    }),
    name: z.string(),
    before: orNull(figureSchema).openapi({
      description: 'As the vehicle stands; null where it has no such figure.',
    }),
    after: z.array(orNull(figureSchema)).openapi({
      description: 'After each change, in their order: `lines`, then `routes`.',
    }),
    change: z.array(orNull(changeSchema)).openapi({
      description: 'What each change does to it; null where neither can be said.',
    }),
  })
  .openapi('FigureRow', { description: 'A figure before and after.' });

const figureMeasureSchema = z
  .strictObject({
    ...measureSchema.shape,
    figures: z.array(z.string()).openapi({
      description: 'Figures that are not known without it.',
    }),
  })
  .openapi('FigureMeasure', {
    description: 'A fact that figures want and nobody recorded.',
    ...BY_CODE,
  });

export const drivelineAnswerSchema = z
  .strictObject({
    ...VALUES_HEAD,
    vehicle: z.string(),
    ...NAMING,
    sections: z
      .array(z.strictObject({ section: sectionSchema, name: z.string() }))
      .openapi({ description: 'The sections that there are figures of, in order.' }),
    figures: z.array(rowSchema),
    measure: z.array(figureMeasureSchema).openapi({
      description: 'What is not recorded. It is never assumed: the figures have no value then.',
    }),
    cautions: z.array(cautionSchema),
  })
  .openapi('DrivelineAnswer', { description: 'How the vehicle drives, before and after.' });

export type DrivelineWire = Wire<DrivelineAnswer, z.infer<typeof drivelineAnswerSchema>>;

export const driveVehicleOperation: Operation = {
  method: 'post',
  path: '/v1/driveline',
  operationId: 'driveVehicle',
  tag: 'driveline',
  summary: 'How does it drive, and does it hold?',
  description:
    `Up to ${FIGURE_CODES.length} sorts of figures of a vehicle as it stands, and after a kit: ` +
    'gears, loops, loads, the greatest engine torque for each use, propeller shafts, joints, ' +
    `speedometer, brakes, wheels; as far as its layout says them. ${ALSO_QUERY}`,
  segment: null,
  query: NO_PARAMETERS,
  body: drivelineQuestionSchema,
  answer: { schema: drivelineAnswerSchema, description: 'Every figure, before and after.' },
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
