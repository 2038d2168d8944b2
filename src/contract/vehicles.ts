/**
 * The vehicles of the catalogue, as a list that narrows.
 */

import type { VehiclesInput } from '../usecases/list-vehicles.js';
import type { ListInput } from '../usecases/listing.js';
import type { VehicleEntry } from '../usecases/vehicle-view.js';
import { asksField } from './ask.js';
import { builtField } from './built.js';
import { COMPARED, KNOWN_FIELDS, KNOWN_PARAMETERS, knownOf } from './known-vehicle.js';
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

/** What narrows a list of vehicles. */
export const VEHICLE_FILTERS = {
  ...KNOWN_FIELDS,
  text: name.openapi({
    description: `Words that all stand somewhere in make, model or variant. ${COMPARED}`,
  }),
  layout: name.openapi({ description: 'Id of the layout.', example: 'long-awd' }),
  facts: VEHICLE_FIELDS.facts,
};

/** The same in a URL, but for facts, which are a group. */
export const VEHICLE_FILTER_PARAMETERS = [
  ...KNOWN_PARAMETERS,
  parameter('text', VEHICLE_FILTERS.text),
  parameter('layout', VEHICLE_FILTERS.layout),
] as const;

const filtersSchema = z.strictObject(VEHICLE_FILTERS);

/** What is asked of the vehicles; null is what nobody asked. */
export function vehicleFilters(question: z.infer<typeof filtersSchema>) {
  const { text, layout, facts } = question;
  return { ...knownOf(question), text: text ?? null, layout: layout ?? null, facts: facts ?? {} };
}

export const vehiclesQuestionSchema = filtersSchema.extend({
  replaced: z.boolean().optional().openapi({
    description: 'Also those that more exact ones took the place of; else they are left out.',
  }),
  ...LIST_FIELDS,
});

export type VehiclesQuestion = z.infer<typeof vehiclesQuestionSchema>;

/** What the use-case takes of the question. */
export function vehiclesFilters(
  question: VehiclesQuestion,
): Omit<VehiclesInput, keyof ListInput | 'latestYear'> {
  return { ...vehicleFilters(question), replaced: question.replaced ?? false };
}

const TOLD_FACTS: ParameterGroup = {
  ...FACT_GROUP,
  description:
    '`fact.<fact>`: what is known of the vehicle; those that do not record the fact could be it, ' +
    `and stay. At most ${FACT_GROUP.most}.`,
  example: { 'fact.rear-axle-tag': 'tag-373' },
};

const QUERY: QueryGrammar = {
  parameters: [
    ...VEHICLE_FILTER_PARAMETERS,
    parameter('replaced', vehiclesQuestionSchema.shape.replaced, 'boolean'),
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
