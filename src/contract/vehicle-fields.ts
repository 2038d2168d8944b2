/**
 * The fields of questions about one vehicle: which it is, and what is known of it.
 */

import { quantityPattern } from '../domain/quantity/quantity-pattern.js';
import { measuredField } from './measured.js';
import { z } from './openapi-zod.js';
import {
  adaptersSchema,
  byPlace,
  fittedSchema,
  nameOf,
  useField,
  VALUES_FIELDS,
  vehicleField,
} from './question.js';

/** For the document: what is no torque, the use-case says in words that help. */
const TORQUE_PATTERN = quantityPattern({ dimension: 'torque', isName: true }).source;

/** What is known of the one vehicle that is asked about. */
export const VEHICLE_FIELDS = {
  vehicle: vehicleField,
  facts: byPlace(nameOf())
    .optional()
    .openapi({
      description:
        'What is known of this vehicle, by fact: what its tag says, which option it has. It wins ' +
        'over what is recorded of it.',
      example: { 'subframe-ears': 'low' },
    }),
  fitted: byPlace(fittedSchema).optional().openapi({
    description: "What is on this customer's vehicle instead of what the works fitted.",
  }),
  adapters: byPlace(adaptersSchema).optional().openapi({
    description: "Adapters that are in this customer's vehicle, by mating.",
  }),
  torque: nameOf('valueCharacters')
    .optional()
    .openapi({
      description:
        'Engine torque to judge loads by, with its unit. One value, exact by name, or with its ' +
        'tolerance: `400 N.m`, `400 ±5 N.m`, `295 lbf.ft`.',
      pattern: TORQUE_PATTERN,
      example: '400 N.m',
    }),
  use: useField,
  measured: measuredField,
  ignorePresent: z.boolean().optional().openapi({
    description: 'Do not count against the answer what fails on the vehicle already.',
  }),
  ...VALUES_FIELDS,
};
