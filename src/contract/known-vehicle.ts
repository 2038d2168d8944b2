/**
 * What may be known of a vehicle in place of which it is.
 */

import type { KnownOfVehicle } from '../usecases/check-fit-partly.js';
import type { z } from './openapi-zod.js';
import { parameter } from './parameters.js';
import { NOT_BESIDE_VEHICLE } from './problems/rules.js';
import { vehiclesQuestionSchema } from './vehicles.js';

const { make, model, variant, year, built } = vehiclesQuestionSchema.shape;

export const KNOWN_FIELDS = { make, model, variant, year, built };

const NAMES = ['make', 'model', 'variant', 'year', 'built'] as const;

export const KNOWN_PARAMETERS = [
  parameter('make', make),
  parameter('model', model),
  parameter('variant', variant),
  parameter('year', year, 'number'),
  parameter('built', built),
] as const;

interface Question {
  readonly vehicle?: string | undefined;
  readonly make?: string | undefined;
  readonly model?: string | undefined;
  readonly variant?: string | undefined;
  readonly year?: number | undefined;
  readonly built?: string | undefined;
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
export function knownOf({ make, model, variant, year, built }: Question): KnownOfVehicle {
  return {
    make: make ?? null,
    model: model ?? null,
    variant: variant ?? null,
    year: year ?? null,
    built: built ?? null,
  };
}
