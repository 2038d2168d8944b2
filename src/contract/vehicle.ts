/**
 * One vehicle of the catalogue, whole.
 */

import type { VehicleAnswer } from '../usecases/vehicle-view.js';
import { VALUES_HEAD } from './answer-head.js';
import { adapterSchema, cautionSchema, occupantSchema } from './judged.js';
import { z } from './openapi-zod.js';
import type { Operation } from './operation.js';
import { READ_VALUES_FIELDS, READ_VALUES_QUERY } from './read.js';
import { handSchema, orNull } from './reason.js';
import { evidenceSchema, recordedValueSchema } from './record.js';
import { VEHICLE_ENTRY } from './vehicles.js';
import type { Wire } from './wire.js';

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
  errors: ['unknown-edition', 'no-edition', 'unknown-vehicle', 'vehicle-replaced'],
};
