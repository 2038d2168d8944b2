/**
 * What all lists have in common: one envelope, a limit, and a cursor that says where it goes on.
 */

import { ANSWER_HEAD } from './answer-head.js';
import { atMost } from './limits.js';
import { z } from './openapi-zod.js';
import { parameter } from './parameters.js';
import { COMMON_FIELDS } from './question.js';

/** Entries of one answer where the question does not say how many. */
export const USUAL_ENTRIES = 50;

export const LIST_FIELDS = {
  limit: z
    .int()
    .min(1)
    .max(...atMost('listEntries'))
    .optional()
    .openapi({
      description: `Most entries of the answer; ${USUAL_ENTRIES} where it is left out.`,
      example: USUAL_ENTRIES,
    }),
  cursor: z
    .string()
    .min(1)
    .max(...atMost('cursorCharacters'))
    .optional()
    .openapi({
      description:
        'Where the list goes on: `next` of the answer before, with the same filters. It pins the ' +
        'edition of that answer.',
    }),
  ...COMMON_FIELDS,
};

export const LIST_PARAMETERS = [
  parameter('limit', LIST_FIELDS.limit, 'number'),
  parameter('cursor', LIST_FIELDS.cursor),
  parameter('edition', LIST_FIELDS.edition, 'number'),
  parameter('lang', LIST_FIELDS.lang),
  parameter('view', LIST_FIELDS.view),
] as const;

/** The fields of the envelope around entries of one shape. */
export function listFields<Entry extends z.ZodType>(entry: Entry, order: string) {
  return {
    ...ANSWER_HEAD,
    items: z.array(entry).openapi({ description: order }),
    next: z.string().nullable().openapi({
      description: 'Where the list goes on, for `cursor`; null at its end.',
    }),
    counts: z
      .strictObject({ total: z.int().min(0).openapi({ description: 'On all pages together.' }) })
      .openapi('ListCounts', { description: 'How many entries there are.' }),
  };
}
