/**
 * How a question stands in a URL: which parameters there are, and which field of the question
 * each one fills. A group such as `with.<position>` is a family of parameters with one field of
 * many places.
 */

import { LIMITS } from './limits.js';
import type { z } from './openapi-zod.js';

/** How the text of a parameter becomes a value; what is no such text is left to the schema. */
export type Reading = 'text' | 'number' | 'boolean' | ListReading;

/**
 * What may be there several times, or with commas between: names; wishes; parts, each in a field of
 * its own; or lots, of which one word can stand for all.
 */
export type ListReading = (typeof LIST_READINGS)[number];

export const LIST_READINGS = ['list', 'wants', 'parts', 'lots'] as const;

export function isListReading(reading: Reading): reading is ListReading {
  return LIST_READINGS.some((one) => one === reading);
}

export interface Parameter {
  readonly name: string;
  /** Where its value goes: names of fields, from the outside in. */
  readonly field: readonly [string, ...string[]];
  readonly reading: Reading;
  readonly schema: z.ZodType;
}

export interface ParameterGroup {
  /** The part of the names before the dot. */
  readonly prefix: string;
  /** What stands after the dot. */
  readonly place: 'position' | 'mating' | 'fact';
  /** The field that gets one entry for each place. */
  readonly field: string;
  readonly reading: Reading;
  /** Most parameters of the group in one URL; the body takes more. */
  readonly most: number;
  readonly description: string;
  readonly example: Readonly<Record<string, string>>;
}

export interface QueryGrammar {
  readonly parameters: readonly Parameter[];
  readonly groups: readonly ParameterGroup[];
}

const MOST = LIMITS.placesInUrl.value;

function few(what: string): string {
  return `${what} At most ${MOST}; POST takes more.`;
}

/** The groups of all questions about a vehicle. */
export const FITTED_GROUP: ParameterGroup = {
  prefix: 'fitted',
  place: 'position',
  field: 'fitted',
  reading: 'text',
  most: MOST,
  description: few(
    "`fitted.<position>`: what is on this customer's vehicle instead of what the works fitted: " +
      'a part, named as `part` is, `none` or `unknown`; one value for both hands.',
  ),
  example: { 'fitted.clutch': 'unknown' },
};

export const FACT_GROUP: ParameterGroup = {
  prefix: 'fact',
  place: 'fact',
  field: 'facts',
  reading: 'text',
  most: MOST,
  description: few('`fact.<fact>`: what is known of this vehicle, such as which option it has.'),
  example: { 'fact.subframe-ears': 'low' },
};

export const ADAPTER_GROUP: ParameterGroup = {
  prefix: 'adapter',
  place: 'mating',
  field: 'adapters',
  reading: 'list',
  most: MOST,
  description: few(
    "`adapter.<mating>`: adapters that are in this customer's vehicle, in a row: ids with commas " +
      'between them, or a name as of `part` each time that it stands there.',
  ),
  example: { 'adapter.gearbox-prop': 'adapter-70-65' },
};

export const WITH_GROUP: ParameterGroup = {
  prefix: 'with',
  place: 'position',
  field: 'with',
  reading: 'text',
  most: MOST,
  description: few('`with.<position>`: a part that is fitted beside it.'),
  example: { 'with.centre-control': 'control-centre' },
};

/** A parameter that fills the field of its own name. */
export function parameter(name: string, schema: z.ZodType, reading: Reading = 'text'): Parameter {
  return { name, field: [name], reading, schema };
}

/** The grammar of a question without any parameter. */
export const NO_PARAMETERS: QueryGrammar = { parameters: [], groups: [] };
