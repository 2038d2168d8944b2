/**
 * Which vehicles does a part fit? Question and answer.
 */

import type { FittedModelEntry, FittedVehicleEntry } from '../usecases/fits-view.js';
import type { FittedVehiclesInput } from '../usecases/list-fitted-vehicles.js';
import type { ListInput } from '../usecases/listing.js';
import { builtField } from './built.js';
import {
  COMMON_FITS,
  checkSolved,
  FITS_FIELDS,
  FITS_PARAMETERS,
  fitsCountsSchema,
} from './fits.js';
import { listFields } from './list.js';
import { lostNameSchema } from './naming.js';
import { z } from './openapi-zod.js';
import type { Operation } from './operation.js';
import { FACT_GROUP, parameter } from './parameters.js';
import { NOT_BESIDE_VEHICLE } from './problems/rules.js';
import { namesField, refuseBeside } from './question.js';
import { VEHICLE_FILTER_PARAMETERS, VEHICLE_FILTERS, vehicleFilters } from './vehicles.js';
import type { Wire } from './wire.js';

const fittedVehicleSchema = z
  .strictObject({
    vehicle: z.string().openapi({ description: 'Its id.' }),
    label: z.string(),
    make: z.string(),
    model: z.string(),
    variant: z.string().nullable(),
    built: builtField,
    ...FITS_FIELDS,
  })
  .openapi('FittedVehicle', { description: 'A vehicle, and what comes of the part on it.' });

export type FittedVehicleWire = Wire<FittedVehicleEntry, z.infer<typeof fittedVehicleSchema>>;

const fittedModelSchema = z
  .strictObject({
    make: z.string(),
    model: z.string(),
    label: z.string(),
    built: builtField.openapi({
      description:
        'First and last month of those that it fits, or may fit; null is not known, or still ' +
        'going on.',
    }),
    counts: fitsCountsSchema,
  })
  .openapi('FittedModel', { description: 'The vehicles of one model in the list.' });

export type FittedModelWire = Wire<FittedModelEntry, z.infer<typeof fittedModelSchema>>;

export const fittedVehiclesAnswerSchema = z
  .strictObject({
    ...listFields(
      z.union([fittedVehicleSchema, fittedModelSchema, lostNameSchema]),
      'By make, model, first month, last month and id; what is not known comes first. Those that ' +
        'are named in the order of the question.',
    ),
    counts: fitsCountsSchema,
    part: z.string(),
    name: z.string(),
  })
  .openapi('FittedVehicleList', { description: 'Vehicles, and what comes of the part on each.' });

const VEHICLES_FIELDS = {
  vehicle: namesField().openapi({
    description:
      'These vehicles in place of the list, by id. One that is not there is an `error` of its ' +
      'item.',
    example: ['lirren-1', 'lirren-2'],
  }),
  ...VEHICLE_FILTERS,
  group: z.enum(['model']).optional().openapi({
    description: 'An entry for each model, with how many of its vehicles come to what.',
  }),
  ...COMMON_FITS,
};

const OF_VEHICLE_LISTS = [
  'make',
  'model',
  'variant',
  'text',
  'year',
  'built',
  'layout',
  'group',
  'alone',
  'limit',
  'cursor',
] as const;

export const fittedVehiclesQuestionSchema = z
  .strictObject(VEHICLES_FIELDS)
  .superRefine((question, context) => {
    checkSolved(question, context);
    if (question.vehicle !== undefined)
      refuseBeside(OF_VEHICLE_LISTS, question, context, NOT_BESIDE_VEHICLE);
  });

export type FittedVehiclesQuestion = z.infer<typeof fittedVehiclesQuestionSchema>;

export function fittedVehiclesFilters(
  question: FittedVehiclesQuestion,
): Omit<FittedVehiclesInput, keyof ListInput | 'id'> {
  return {
    vehicles: question.vehicle ?? null,
    ...vehicleFilters(question),
    group: question.group ?? null,
    alone: question.alone ?? null,
    changes: question.changes ?? 'no',
  };
}

export const listFittedVehiclesOperation: Operation = {
  method: 'get',
  path: '/v1/parts/{id}/fits',
  operationId: 'listFittedVehicles',
  tag: 'fit',
  summary: 'Which vehicles does this part fit?',
  description:
    'Every vehicle that has a place for the part, with what comes of it there as the vehicle is: ' +
    'of one make, model, year; model by model; or the vehicles of a garage, by id. `counts` are ' +
    'of the whole list, whatever the page.',
  segment: { name: 'id', description: 'Id of the part.', example: 'gearbox-6-late' },
  query: {
    parameters: [
      parameter('vehicle', VEHICLES_FIELDS.vehicle, 'list'),
      ...VEHICLE_FILTER_PARAMETERS,
      parameter('group', VEHICLES_FIELDS.group),
      ...FITS_PARAMETERS,
    ],
    groups: [FACT_GROUP],
  },
  body: null,
  answer: { schema: fittedVehiclesAnswerSchema, description: 'A page of the list.' },
  errors: ['unknown-edition', 'no-edition', 'unknown-part', 'unknown-layout', 'invalid-question'],
};
