/**
 * The vehicles of the catalogue, as a list that narrows.
 */

import type { VehiclesInput } from '../usecases/list-vehicles.js';
import type { ListInput } from '../usecases/listing.js';
import type { VehicleEntry } from '../usecases/vehicle-view.js';
import { asksField } from './ask.js';
import { builtField, monthField } from './built.js';
import { LIST_FIELDS, LIST_PARAMETERS, listFields } from './list.js';
import { z } from './openapi-zod.js';
import type { Operation } from './operation.js';
import { FACT_GROUP, type ParameterGroup, parameter, type QueryGrammar } from './parameters.js';
import { nameOf } from './question.js';
import { VEHICLE_FIELDS } from './vehicle-fields.js';
import type { Wire } from './wire.js';

export const VEHICLE_NAMES = {
  id: z.string(),
  label: z.string().openapi({
    description: 'Make, model, variant and months, for people.',
    example: 'Corrablyn Lirren, first series, 03/2001 to 08/2005',
  }),
  make: z.string(),
  model: z.string(),
  variant: z.string().nullable(),
  built: builtField,
  layout: z.string().openapi({ description: 'Id of its layout.' }),
};

export const VEHICLE_ENTRY = {
  ...VEHICLE_NAMES,
  facts: z.record(z.string(), z.string()).openapi({
    description: 'What is recorded of it: ids of values by id of the fact.',
  }),
  replacedBy: z.array(z.string()).openapi({
    description: 'Ids of the more exact vehicles that took its place.',
  }),
};

const vehicleEntrySchema = z
  .strictObject(VEHICLE_ENTRY)
  .openapi('VehicleEntry', { description: 'A build of a vehicle.' });

export type VehicleEntryWire = Wire<VehicleEntry, z.infer<typeof vehicleEntrySchema>>;

const ORDER = 'By make, model, first month, last month and id; what is not known comes first.';

export const vehiclesAnswerSchema = z
  .strictObject({
    ...listFields(vehicleEntrySchema, ORDER),
    ask: asksField,
  })
  .openapi('VehicleList', { description: 'Vehicles, and what tells them apart.' });

const name = nameOf().optional();
const COMPARED = 'Case, marks on letters and spaces at the ends make no difference.';

export const vehiclesQuestionSchema = z.strictObject({
  make: name.openapi({ description: `Of this make. ${COMPARED}`, example: 'Corrablyn' }),
  model: name.openapi({ description: `Of this model. ${COMPARED}`, example: 'Lirren' }),
  variant: name.openapi({ description: `Of this variant, or of none on record. ${COMPARED}` }),
  text: name.openapi({
    description: `Words that all stand somewhere in make, model or variant. ${COMPARED}`,
  }),
  year: z.int().min(0).max(9999).optional().openapi({
    description: 'Built in some month of this year, by what is known.',
    example: 2004,
  }),
  built: monthField.optional().openapi({ description: 'Built in this month, by what is known.' }),
  layout: name.openapi({ description: 'Id of the layout.', example: 'long-awd' }),
  facts: VEHICLE_FIELDS.facts,
  replaced: z.boolean().optional().openapi({
    description: 'Also those that more exact ones took the place of; else they are left out.',
  }),
  ...LIST_FIELDS,
});

export type VehiclesQuestion = z.infer<typeof vehiclesQuestionSchema>;

/** What the use-case takes of the question; null is what nobody asked. */
export function vehiclesFilters(
  question: VehiclesQuestion,
): Omit<VehiclesInput, keyof ListInput | 'latestYear'> {
  const { make, model, variant, text, year, built, layout, facts, replaced } = question;
  return {
    make: make ?? null,
    model: model ?? null,
    variant: variant ?? null,
    text: text ?? null,
    year: year ?? null,
    built: built ?? null,
    layout: layout ?? null,
    facts: facts ?? {},
    replaced: replaced ?? false,
  };
}

const { shape } = vehiclesQuestionSchema;

const TOLD_FACTS: ParameterGroup = {
  ...FACT_GROUP,
  description:
    '`fact.<fact>`: what is known of the vehicle; those that do not record the fact could be it, ' +
    `and stay. At most ${FACT_GROUP.most}.`,
  example: { 'fact.rear-axle-tag': 'tag-373' },
};

const QUERY: QueryGrammar = {
  parameters: [
    parameter('make', shape.make),
    parameter('model', shape.model),
    parameter('variant', shape.variant),
    parameter('text', shape.text),
    parameter('year', shape.year, 'number'),
    parameter('built', shape.built),
    parameter('layout', shape.layout),
    parameter('replaced', shape.replaced, 'boolean'),
    ...LIST_PARAMETERS,
  ],
  groups: [TOLD_FACTS],
};

export const listVehiclesOperation: Operation = {
  method: 'get',
  path: '/v1/vehicles',
  operationId: 'listVehicles',
  tag: 'catalogue',
  summary: 'Which vehicle is it?',
  description:
    'The vehicles that what is known may be true of, and what to ask next. A chooser asks ' +
    'without parameters, shows the first question of `ask`, adds the answer to the parameters ' +
    'and asks again, until `ask` is empty. What is not recorded of a vehicle never leaves it ' +
    'out. `ask` and `counts` are of the whole list, whatever the page.',
  segment: null,
  query: QUERY,
  body: null,
  answer: { schema: vehiclesAnswerSchema, description: 'A page of the list.' },
  errors: ['unknown-edition', 'no-edition', 'unknown-layout', 'invalid-question'],
};
