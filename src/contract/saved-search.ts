/**
 * A saved search, as its file has it. Only the form is checked: what it asks and was answered must
 * hang together, which running it again shows.
 */

import type { SavedKits } from '../domain/kit/saved-kits.js';
import { z } from './openapi-zod.js';

const whole = z.int().min(0);
const numbers = z.array(z.int().min(-1));
/** Null is beyond every limit. */
const cost = z.number().min(0).nullable();
const priced = z.tuple([numbers, cost]);

export const savedSearchSchema = z.object({
  saved: z.literal(1),
  engine: z.string(),
  vehicle: z.string(),
  wanted: whole,
  steps: whole,
  refusesUnknowns: z.boolean(),
  priceLane: z.object({ below: z.int().min(1), width: z.int().min(1) }),
  words: z.array(z.array(z.string())),
  problem: z.object({
    variables: z.array(
      z.object({
        name: z.string(),
        size: z.int().min(1),
        isPlace: z.boolean(),
        less: z.array(whole).exactOptional(),
      }),
    ),
    relations: z.array(
      z.object({
        name: z.string(),
        scope: z.array(whole),
        classes: z.array(z.array(whole)),
        answers: z.array(
          z.tuple([
            z.array(whole),
            z.union([z.literal(0), z.literal(1), z.literal(2)]),
            z.array(whole).nullable(),
          ]),
        ),
      }),
    ),
    atLeast: z.array(z.array(cost)),
    floors: z.array(priced),
    exacts: z.array(priced),
  }),
  outcome: z.object({
    results: z.array(
      z.object({
        grade: z.enum(['proven', 'open']),
        cost: z.number(),
        changes: z.array(z.string()),
      }),
    ),
    stepsTaken: whole,
    isComplete: z.boolean(),
  }),
});

/** What a file holds; null where it is no saved search. */
export function savedSearchIn(value: unknown): SavedKits | null {
  const read = savedSearchSchema.safeParse(value);
  return read.success ? read.data : null;
}
