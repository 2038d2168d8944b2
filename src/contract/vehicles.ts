/**
 * The vehicles of the catalogue: as a list that narrows, and one whole.
 */

import type { VehicleAnswer, VehicleEntry } from '../usecases/vehicle-view.js';
import { VALUES_HEAD } from './answer-head.js';
import { asksField } from './ask.js';
import { builtField, monthField } from './built.js';
import { adapterSchema, cautionSchema, occupantSchema } from './judged.js';
import { LIST_FIELDS, LIST_PARAMETERS, listFields } from './list.js';
import { z } from './openapi-zod.js';
import type { Operation } from './operation.js';
import { FACT_GROUP, type ParameterGroup, parameter, type QueryGrammar } from './parameters.js';
import { nameOf, VEHICLE_FIELDS } from './question.js';
import { READ_VALUES_FIELDS, READ_VALUES_QUERY } from './read.js';
import { handSchema, orNull } from './reason.js';
import { evidenceSchema, recordedValueSchema } from './record.js';
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

const VEHICLE_ENTRY = {
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

const namedFactSchema = z
  .strictObject({
    fact: z.string(),
    name: z.string(),
    how: z.string().nullable().openapi({
      description: 'How to find it out; null where there is nothing to say.',
    }),
    value: z.string().nullable().openapi({
      description: 'Id of the recorded value; null where nobody recorded it.',
    }),
    valueName: z.string().nullable(),
    values: z
      .array(
        z
          .strictObject({ value: z.string(), name: z.string() })
          .openapi('FactValue', { description: 'What a fact can be.' }),
      )
      .openapi({ description: 'What it can be.' }),
    positions: z.array(z.string()).openapi({
      description: 'Ids of the positions at which it tells what the works fitted.',
    }),
  })
  .openapi('NamedFact', { description: 'Something that can be found out about a vehicle.' });

const OCCUPANT = {
  occupant: occupantSchema,
  part: z.string().nullable(),
  partName: z.string().nullable(),
};

const worksOptionSchema = z
  .strictObject({
    fact: z.string(),
    by: z
      .array(
        z
          .strictObject({ value: z.string(), valueName: z.string(), ...OCCUPANT })
          .openapi('FittedByFact', { description: 'What the works fitted, for one value.' }),
      )
      .openapi({
        description:
          'By the values of the fact. With any other, what stands there is not recorded.',
      }),
  })
  .openapi('WorksOption', { description: 'What a fact tells of what the works fitted.' });

const vehiclePositionSchema = z
  .strictObject({
    position: z.string(),
    name: z.string(),
    hand: handSchema.nullable(),
    cautionGroups: z.array(z.string()).openapi({
      description: 'The groups of cautions that go with what stands here. Open.',
    }),
    ...OCCUPANT,
    option: orNull(worksOptionSchema).openapi({
      description: 'What a fact tells of it, recorded or not; null where no fact does.',
    }),
  })
  .openapi('VehiclePosition', { description: 'A place on a vehicle, and what the works fitted.' });

const worksAdaptersSchema = z
  .strictObject({
    mating: z.string(),
    between: z.array(z.string()).openapi({
      description: 'Two of `position.interface`.',
      example: ['gearbox.rear', 'prop-shaft.front'],
    }),
    adapters: z.array(adapterSchema).openapi({
      description: 'In a row; empty where the works fitted none.',
    }),
  })
  .openapi('WorksAdapters', { description: 'The adapters that the works fitted in one mating.' });

const askableValueSchema = z
  .strictObject({
    position: z.string(),
    hand: handSchema.nullable(),
    part: z.string().nullable(),
    partName: z.string().nullable(),
    parameter: z.string(),
    name: z.string(),
    askedAs: z.string().openapi({
      description: 'The field of a question that takes its place. Open.',
      example: 'torque',
    }),
    recorded: orNull(recordedValueSchema).openapi({
      description: 'Null where nobody recorded it.',
    }),
  })
  .openapi('AskableValue', {
    description: 'A value of what the works fitted, in whose place a question may name another.',
  });

const vinSchema = z
  .strictObject({
    pattern: z.string().openapi({
      description: '17 characters (ISO 3779); `*` stands for any one.',
    }),
    serial: z.array(z.string()).max(2).openapi({
      description: 'First and last serial number at its end; empty where all of them belong.',
    }),
  })
  .openapi('VinPattern', { description: 'Identification numbers that the vehicle can have.' });

export const vehicleAnswerSchema = z
  .strictObject({
    ...VALUES_HEAD,
    ...VEHICLE_ENTRY,
    layoutName: z.string().nullable(),
    like: z.string().nullable().openapi({
      description: 'Id of the vehicle whose record it has, but for what is said of it itself.',
    }),
    vin: z.array(vinSchema).openapi({ description: 'Empty where none are recorded.' }),
    namedFacts: z.array(namedFactSchema).openapi({
      description:
        'The facts that have a say about it: those recorded, those that tell what the works ' +
        'fitted, and those that its checks and rules read. Where `value` is null, `how` says how ' +
        'to find out.',
    }),
    positions: z.array(vehiclePositionSchema).openapi({
      description:
        'In the order of the layout; a position with a left and a right piece has an entry for ' +
        'each.',
    }),
    adapters: z.array(worksAdaptersSchema).openapi({
      description: 'Of the matings of which it is recorded.',
    }),
    values: z.array(askableValueSchema),
    evidence: evidenceSchema,
    cautions: z.array(cautionSchema),
  })
  .openapi('VehicleAnswer', { description: 'Everything that is recorded of one vehicle.' });

export type VehicleAnswerWire = Wire<VehicleAnswer, z.infer<typeof vehicleAnswerSchema>>;

export const vehicleQuestionSchema = z.strictObject(READ_VALUES_FIELDS);

export const readVehicleOperation: Operation = {
  method: 'get',
  path: '/v1/vehicles/{id}',
  operationId: 'readVehicle',
  tag: 'catalogue',
  summary: 'What is recorded of this vehicle?',
  description:
    'What the works fitted at each position, and where that is not recorded or hangs on a fact; ' +
    'its facts, and how to find out those that are open; the adapters that the works fitted, and ' +
    'what all of it rests on. What is recorded of a part, the part itself says.',
  segment: { name: 'id', description: 'Id of the vehicle.', example: 'lirren-1' },
  query: READ_VALUES_QUERY,
  body: null,
  answer: { schema: vehicleAnswerSchema, description: 'The vehicle.' },
  errors: ['unknown-edition', 'no-edition', 'unknown-vehicle'],
};
