/**
 * Which part is this piece on the bench: the question, and how the use-case takes it.
 */

import type { IdentifyPartInput } from '../usecases/identify-part.js';
import type { ListInput } from '../usecases/listing.js';
import { few } from './kit-wishes.js';
import { LIST_FIELDS } from './list.js';
import { measuredValue, toolField } from './measured.js';
import { z } from './openapi-zod.js';
import { nameOf, VALUES_FIELDS, vehicleField } from './question.js';
import { handSchema } from './reason.js';

const ON = {
  interface: nameOf().nullable().optional().openapi({
    description: 'The name of a face, where it is known which one it is.',
    example: 'rear',
  }),
  kind: nameOf().nullable().optional().openapi({
    description: 'Id of the kind of the face; enough where its name is not known.',
    example: 'propshaft-flange',
  }),
  side: nameOf().nullable().optional().openapi({
    description: 'Which side of such a joint it is.',
    example: 'shaft',
  }),
  which: z
    .int()
    .min(1)
    .max(99)
    .nullable()
    .optional()
    .openapi({
      description:
        'Tells faces of one kind apart whose names are not known: the first is 1, which is also ' +
        'meant where this is left out.',
    }),
  parameter: nameOf()
    .nullable()
    .optional()
    .openapi({
      description:
        'Of the face; where neither face nor kind is named, a value of the part itself. With an ' +
        'interface alone the value is `none`: the piece has no such face.',
      example: 'pcd',
    }),
};

export const pieceOnSchema = z.strictObject(ON).openapi('PieceOn', {
  description: 'Where something was read on the piece: the `on` of what an answer asks, as it is.',
});

const pieceReadingSchema = z
  .strictObject({
    on: pieceOnSchema,
    value: z.union([measuredValue, few(measuredValue).min(1)]),
    tool: toolField,
  })
  .openapi('PieceReading', {
    description:
      'What was counted, read off or measured. A reading of what catalogues record as a name of ' +
      'a size, such as a pitch circle, is written with its tolerance or its tool.',
  });

const QUESTION_FIELDS = {
  role: nameOf().optional().openapi({
    description: 'Id of the role: what sort of part it is.',
    example: 'gearbox',
  }),
  hand: handSchema.optional().openapi({ description: 'For which side it is made.' }),
  vehicle: vehicleField.optional().openapi({
    description:
      'Id of the vehicle that it came off. It leaves no part out: it may have come to it since.',
    example: 'lirren-1',
  }),
  numbers: few(nameOf())
    .optional()
    .openapi({
      description:
        'Numbers read off it. `*` stands for a character that nobody could read, `…` or three ' +
        'dots for any number of them; `@` and whose number it is may stand behind it. Case, ' +
        'spaces, dots and dashes make no difference.',
      example: ['CBL-2G-*'],
    }),
  measured: few(pieceReadingSchema).optional().openapi({
    description: 'What was counted, read off or measured.',
  }),
  nameExcluded: z.boolean().optional().openapi({
    description: 'Name the parts that are left out, each with the first reason.',
  }),
  limit: LIST_FIELDS.limit,
  cursor: LIST_FIELDS.cursor,
  ...VALUES_FIELDS,
};

export const identifyPartQuestionSchema = z
  .strictObject(QUESTION_FIELDS)
  .openapi('IdentifyPartQuestion', { description: 'What somebody knows of a piece.' });

export type IdentifyPartQuestion = z.infer<typeof identifyPartQuestionSchema>;

/** As the use-case takes it: what is left out, filled in. */
export function identifyPartFilters(
  question: IdentifyPartQuestion,
): Omit<IdentifyPartInput, keyof ListInput> {
  const { role, hand, vehicle, numbers, measured, nameExcluded, units } = question;
  return {
    role: role ?? null,
    hand: hand ?? null,
    vehicle: vehicle ?? null,
    numbers: numbers ?? [],
    measured: (measured ?? []).map(({ on, value, tool }) => ({
      on: {
        interface: on.interface ?? null,
        kind: on.kind ?? null,
        side: on.side ?? null,
        which: on.which ?? null,
        parameter: on.parameter ?? null,
      },
      value,
      tool: tool ?? null,
    })),
    nameExcluded: nameExcluded ?? false,
    units: units ?? 'recorded',
  };
}
