/**
 * What all reads of one thing of the catalogue have in common: its id in the path.
 */

import type { z } from './openapi-zod.js';
import { parameter, type QueryGrammar } from './parameters.js';
import { COMMON_FIELDS, nameOf, VALUES_FIELDS } from './question.js';

/** Ids are shorter than names: what is longer is no id, and said to be unknown. */
export const READ_FIELDS = { id: nameOf(), ...COMMON_FIELDS };

export const READ_QUERY: QueryGrammar = {
  parameters: [
    parameter('edition', READ_FIELDS.edition, 'number'),
    parameter('lang', READ_FIELDS.lang),
    parameter('view', READ_FIELDS.view),
  ],
  groups: [],
};

/** The same for what has values. */
export const READ_VALUES_FIELDS = { ...READ_FIELDS, ...VALUES_FIELDS };

export const READ_VALUES_QUERY: QueryGrammar = {
  ...READ_QUERY,
  parameters: [...READ_QUERY.parameters, parameter('units', READ_VALUES_FIELDS.units)],
};

export type ReadQuestion = z.infer<z.ZodObject<typeof READ_FIELDS>>;
