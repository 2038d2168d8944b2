/**
 * What answers say: values as people read them and exactly, and reasons as a code for programs,
 * data for both and a sentence for people.
 */

import { z } from './openapi-zod.js';
import { BY_CODE, reasonDataList } from './reason-codes.js';

/**
 * The schema or null. Not `nullable()`, of which the document would keep the reference and lose
 * the null.
 */
export function orNull<Schema extends z.ZodType>(schema: Schema) {
  return z.union([schema, z.null()]);
}

export const handSchema = z.enum(['left', 'right']);

export const shownValueSchema = z
  .strictObject({
    text: z.string().nullable().openapi({
      description: 'As people read it; null where nothing is recorded.',
      example: '56.1 mm',
    }),
    low: z
      .string()
      .nullable()
      .openapi({
        description:
          'Lower end, a decimal or a fraction in `unit`, always with a point; null for a code, ' +
          'and where there is none. The end itself need not belong: `3.583` is from 3.5825 up ' +
          'to, and not including, 3.5835, which is then `high`. No value lies outside the ends.',
      }),
    high: z.string().nullable().openapi({
      description: 'Upper end; equal to `low` where the value is exact.',
    }),
    unit: z.string().openapi({
      description: 'Empty for pure numbers and codes. Open: units may be added.',
      example: 'mm',
    }),
  })
  .openapi('ShownValue', { description: 'A value for people and for programs.' });

export const shownPointSchema = z
  .strictObject({ text: z.string(), x: shownValueSchema, y: shownValueSchema })
  .openapi('ShownPoint', { description: 'A point in the plane of a face: across and up.' });

const NAMED = {
  position: z.string().nullable(),
  positionName: z.string().nullable(),
  hand: handSchema.nullable(),
  part: z.string().nullable(),
  partName: z.string().nullable(),
  interface: z.string().nullable(),
  kindName: z.string().nullable().openapi({
    description: 'The kind of interface in words, where the face is recorded.',
  }),
};

const namedSchema = z
  .strictObject(NAMED)
  .openapi('Named', { description: 'A part at its place, by id and by name.' });

const namedValueSchema = z
  .strictObject({
    ...NAMED,
    parameter: z.string().nullable(),
    parameterName: z.string().nullable(),
    value: orNull(shownValueSchema).openapi({
      description: 'As recorded or as computed; null where it is not recorded, or not known yet.',
    }),
  })
  .openapi('NamedValue', { description: 'One value of a check, by id and by name.' });

export const reasonDataSchema = z
  .strictObject({
    left: namedValueSchema.optional(),
    right: namedValueSchema.optional(),
    missing: z.array(namedValueSchema).optional(),
    odd: z
      .strictObject({
        of: z.enum(['left', 'right']),
        point: shownPointSchema,
        apart: shownValueSchema.optional().openapi({
          description: 'How far the nearest is at least; missing where the other side has none.',
        }),
      })
      .optional()
      .openapi({ description: 'Of points that do not all meet, one that has no partner.' }),
    choices: z.array(namedValueSchema).optional(),
    says: z.string().optional(),
    a: namedSchema.optional(),
    b: namedSchema.optional(),
    adapters: z.array(z.string()).optional(),
    part: namedSchema.optional(),
    margin: shownValueSchema.optional().openapi({
      description: 'In one number: the greatest mismatch of a loop, the least reserve otherwise.',
    }),
    vehicles: z.array(z.string()).optional(),
    basis: z.string().optional(),
    because: z.string().optional(),
    statement: z.string().optional(),
    between: z.array(z.string()).optional(),
    order: shownValueSchema.optional().openapi({
      description: 'What to order. The text lies within what suits; the ends are all that suits.',
    }),
    text: z.string().optional(),
    count: z.int().optional(),
    needed: shownValueSchema.optional().openapi({
      description: 'How finely to measure: how far a reading may be off, to either side.',
    }),
    tool: z.string().optional(),
    names: z.array(z.string()).optional(),
    places: z.int().optional().openapi({ description: 'How many places of the vehicle change.' }),
    facts: z.int().optional().openapi({ description: 'How many things have to be found out.' }),
    price: shownValueSchema.optional().openapi({
      description: 'What it costs, as far as prices are known; its unit is the currency.',
    }),
    asked: shownValueSchema.optional().openapi({ description: 'A limit, as it was set.' }),
    takes: shownValueSchema.optional().openapi({
      description: 'What it takes of what was limited.',
    }),
    unpriced: z.int().optional().openapi({ description: 'How many lines have no price.' }),
    more: z.literal(true).optional(),
    cheapest: z.literal(true).optional(),
  })
  .openapi('ReasonData', {
    description:
      'What a sentence is made of. Which fields there are follows from the code; those with a ' +
      `question mark may be missing.\n\n${reasonDataList()}`,
  });

export const SAID = {
  code: z.string().openapi({
    description: 'Stable. Open: codes may be added, and catalogues give checks their own.',
  }),
  data: reasonDataSchema,
  text: z.string().openapi({ description: 'One sentence, plain text in the language `lang`.' }),
};

export const saidReasonSchema = z
  .strictObject(SAID)
  .openapi('SaidReason', { description: 'A reason: code, data, sentence.', ...BY_CODE });
