/**
 * What may be known of a vehicle in place of which it is.
 */

import type { KnownOfVehicle } from '../usecases/meant-vehicles.js';
import { monthField } from './built.js';
import { z } from './openapi-zod.js';
import { parameter } from './parameters.js';
import { NOT_BESIDE_VEHICLE } from './problems/rules.js';
import { nameOf } from './question.js';

const name = nameOf().optional();

export const COMPARED = 'Case, marks on letters and spaces at the ends make no difference.';

export const KNOWN_FIELDS = {
  make: name.openapi({ description: `Of this make. ${COMPARED}`, example: 'Corrablyn' }),
  model: name.openapi({ description: `Of this model. ${COMPARED}`, example: 'Lirren' }),
  variant: name.openapi({ description: `Of this variant, or of none on record. ${COMPARED}` }),
  year: z.int().min(0).max(9999).optional().openapi({
    description: 'Built in some month of this year, by what is known.',
    example: 2004,
  }),
  built: monthField.optional().openapi({ description: 'Built in this month, by what is known.' }),
};

const NAMES = ['make', 'model', 'variant', 'year', 'built'] as const;

export const KNOWN_PARAMETERS = [
  parameter('make', KNOWN_FIELDS.make),
  parameter('model', KNOWN_FIELDS.model),
  parameter('variant', KNOWN_FIELDS.variant),
  parameter('year', KNOWN_FIELDS.year, 'number'),
  parameter('built', KNOWN_FIELDS.built),
] as const;

interface Known {
  readonly make?: string | undefined;
  readonly model?: string | undefined;
  readonly variant?: string | undefined;
  readonly year?: number | undefined;
  readonly built?: string | undefined;
}

interface Question extends Known {
  readonly vehicle?: string | undefined;
}

/** The vehicle is named, or something is known of it; not both. */
export function refineVehicle(question: Question, context: z.RefinementCtx): void {
  const known = NAMES.filter((name) => question[name] !== undefined);
  if (question.vehicle === undefined) {
    if (known.length > 0) return;
    const expected = 'string';
    context.addIssue({ code: 'invalid_type', expected, input: undefined, path: ['vehicle'] });
    return;
  }
  for (const name of known) {
    context.addIssue({ code: 'custom', path: [name], message: NOT_BESIDE_VEHICLE.code });
  }
}

/** What is known; null is not known. */
export function knownOf({ make, model, variant, year, built }: Known): KnownOfVehicle {
  return {
    make: make ?? null,
    model: model ?? null,
    variant: variant ?? null,
    year: year ?? null,
    built: built ?? null,
  };
}
