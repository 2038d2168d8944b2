/**
 * Holds the fields of a question against their schema, and says every fault: at which parameter
 * or field, what it is instead.
 */

import { type FormPlace, formFaults } from '../contract/form-faults.js';
import type { z } from '../contract/openapi-zod.js';
import { type Place, type PlacedFault, Refusal } from './problem.js';

export type PathPlace = FormPlace<Place>;

export interface ReadFields {
  readonly value: unknown;
  /** Faults that were found before the schema was asked. */
  readonly faults: readonly PlacedFault[];
}

/** The question, or a `Refusal` that names every fault. */
export function checkForm<Schema extends z.ZodType>(
  schema: Schema,
  { value, faults }: ReadFields,
  placeOf: PathPlace,
): z.infer<Schema> {
  const parsed = schema.safeParse(value);
  if (parsed.success && faults.length === 0) return parsed.data;
  throw formRefusal([...faults, ...formFaults(parsed, value, placeOf)]);
}

export function formRefusal(faults: readonly PlacedFault[]): Refusal {
  return new Refusal('invalid-request', faults);
}
