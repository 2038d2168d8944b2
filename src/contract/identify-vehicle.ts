/**
 * Which vehicle is this? Question and answer.
 */

import { MOST_CANDIDATES } from '../domain/identify/candidate.js';
import type { IdentifyAnswer } from '../usecases/identify-vehicle.js';
import { ANSWER_HEAD } from './answer-head.js';
import { asksField } from './ask.js';
import { cautionSchema } from './judged.js';
import { KNOWN_FIELDS } from './known-vehicle.js';
import { z } from './openapi-zod.js';
import type { Operation } from './operation.js';
import { NO_PARAMETERS } from './parameters.js';
import { COMMON_FIELDS, nameOf } from './question.js';
import { orNull } from './reason.js';
import { VEHICLE_FIELDS } from './vehicle-fields.js';
import { VEHICLE_ENTRY } from './vehicles.js';
import type { Wire } from './wire.js';

export const identifyQuestionSchema = z
  .strictObject({
    vin: nameOf('valueCharacters')
      .optional()
      .openapi({
        description:
          'Its identification number (ISO 3779); `*` stands for a character that nobody could ' +
          'read. Case, spaces and dashes make no difference. It is kept and written nowhere.',
        example: '0CBLRA00030000017',
      }),
    ...KNOWN_FIELDS,
    facts: VEHICLE_FIELDS.facts,
    ...COMMON_FIELDS,
  })
  .openapi('IdentifyQuestion', { description: 'What somebody knows of a vehicle.' });

export type IdentifyQuestion = z.infer<typeof identifyQuestionSchema>;

const FIELD = {
  field: z.string().openapi({
    description:
      'What was told: `vin`, `make`, `model`, `variant`, `year`, `built` or `fact`. Open.',
  }),
  fact: z.string().nullable().openapi({ description: 'Id of the fact; null for another field.' }),
};

const toldSchema = z
  .strictObject({
    ...FIELD,
    recorded: z.boolean().openapi({
      description: 'Its record agrees. False where nobody recorded it: that leaves no vehicle out.',
    }),
    text: z.string(),
  })
  .openapi('ToldOfVehicle', { description: 'Why a vehicle may be meant.' });

const candidateSchema = z
  .strictObject({ ...VEHICLE_ENTRY, why: z.array(toldSchema) })
  .openapi('CandidateVehicle', { description: 'A vehicle that may be meant.' });

const excludedSchema = z
  .strictObject({ ...FIELD, name: z.string(), count: z.int().min(1) })
  .openapi('ExcludedVehicles', {
    description: 'How many vehicles are left out by the record of one thing that was told.',
  });

const vinSchema = z
  .strictObject({
    maker: z.string().openapi({ description: 'Places 1 to 3: who made it.' }),
    description: z.string().openapi({ description: 'Places 4 to 9: as the maker uses them.' }),
    indicator: z.string().openapi({ description: 'Places 10 to 17: the one vehicle.' }),
    checkDigit: z
      .string()
      .nullable()
      .openapi({
        description:
          'The digit that goes with it where one is asked for (49 CFR 565); null where a ' +
          'character is unread.',
      }),
    checkDigitAgrees: z.boolean().nullable(),
    modelYears: z.array(z.int()).openapi({
      description: 'What place 10 means where it means a model year.',
    }),
  })
  .openapi('VinParts', { description: 'What a number says by itself.' });

export const identifyAnswerSchema = z
  .strictObject({
    ...ANSWER_HEAD,
    vin: orNull(vinSchema).openapi({ description: 'Null where no number was told.' }),
    candidates: z.array(candidateSchema).openapi({
      description: `In the order of the list of vehicles, ${MOST_CANDIDATES} at most.`,
    }),
    counts: z.strictObject({ total: z.int().min(0) }).openapi('CandidateCounts', {
      description: 'How many may be meant.',
    }),
    excluded: z.array(excludedSchema).openapi({
      description: 'In the order in which the things were told; each vehicle counts once.',
    }),
    ask: asksField,
    warnings: z.array(z.strictObject({ code: z.string(), text: z.string() })).openapi({
      description: 'With a number, always that it does not prove what is fitted today.',
    }),
    cautions: z.array(cautionSchema),
  })
  .openapi('IdentifyAnswer', { description: 'The vehicles that may be meant, and why.' });

export type IdentifyAnswerWire = Wire<IdentifyAnswer, z.infer<typeof identifyAnswerSchema>>;

export const identifyVehicleOperation: Operation = {
  method: 'post',
  path: '/v1/vehicles/identify',
  operationId: 'identifyVehicle',
  tag: 'catalogue',
  summary: 'Which vehicle is this?',
  description:
    'By its identification number, against the patterns and serial ranges that vehicles record, ' +
    'and by whatever else is known. What nobody recorded leaves no vehicle out. Nobody keeps the ' +
    'question or its answer: a number is of one vehicle, and so of somebody. The method `QUERY` ' +
    'takes the same body to the same answer.',
  segment: null,
  query: NO_PARAMETERS,
  body: identifyQuestionSchema,
  answer: { schema: identifyAnswerSchema, description: 'The candidates.' },
  errors: ['unknown-edition', 'no-edition', 'invalid-question'],
};
