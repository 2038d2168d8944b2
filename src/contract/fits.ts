/**
 * What lists of fits have in common: an outcome out of several places, counts, and filters.
 */

import { OUTCOMES } from '../domain/check/state.js';
import { verdictSchema } from './fit-answer.js';
import { outcomeSchema } from './judged.js';
import { atMost, LIMITS } from './limits.js';
import { LIST_FIELDS, LIST_PARAMETERS, USUAL_ENTRIES } from './list.js';
import { z } from './openapi-zod.js';
import { parameter } from './parameters.js';

export const FITS_FIELDS = {
  alone: outcomeSchema.openapi({
    description: 'The part on the vehicle as it is: the best of its places.',
  }),
  verdict: verdictSchema,
  complete: z.boolean().openapi({
    description: 'False where a search for changes ended at its limit of steps.',
  }),
  at: z.array(z.string()).openapi({ description: 'The positions where it does best.' }),
  ambiguous: z.boolean().openapi({ description: 'Positions differ; `at` names the best.' }),
  positions: z.array(
    z
      .strictObject({ position: z.string(), name: z.string(), alone: outcomeSchema })
      .openapi('FitsPosition', { description: 'A place that takes the part.' }),
  ),
};

export const fitsCountsSchema = z
  .strictObject({
    total: z.int().min(0).openapi({ description: 'Entries on all pages together.' }),
    holds: z.int().min(0),
    open: z.int().min(0),
    fails: z.int().min(0),
  })
  .openapi('FitsCounts', {
    description: 'How many there are of each outcome, whatever `alone` leaves out of the list.',
  });

const MOST_SOLVED = LIMITS.fitsSolved.value;

export const COMMON_FITS = {
  alone: z
    .array(z.enum(OUTCOMES))
    .min(1)
    .max(OUTCOMES.length)
    .optional()
    .openapi({
      description: 'Only those of these outcomes, with commas between them; all where left out.',
      example: ['holds', 'open'],
    }),
  changes: z
    .enum(['no', 'yes'])
    .optional()
    .openapi({
      description:
        'Whether to look for changes that would make each entry of the page fit. Left out, it ' +
        `is \`no\`; with \`yes\` a page has at most ${MOST_SOLVED} entries.`,
      example: 'no',
    }),
  ...LIST_FIELDS,
};

export const FITS_PARAMETERS = [
  parameter('alone', COMMON_FITS.alone, 'list'),
  parameter('changes', COMMON_FITS.changes),
  ...LIST_PARAMETERS,
] as const;

interface Solved {
  readonly changes?: string | undefined;
  readonly limit?: number | undefined;
  readonly part?: readonly string[] | undefined;
  readonly vehicle?: readonly string[] | undefined;
}

/** Changes are looked for on few entries: each is a search of its own. */
export function checkSolved(question: Solved, context: z.RefinementCtx): void {
  const { changes, limit, part, vehicle } = question;
  if (changes !== 'yes') return;
  const [most, rule] = atMost('fitsSolved');
  for (const [field, value, origin] of [
    ['limit', limit, 'number'],
    ['part', part?.length, 'array'],
    ['vehicle', vehicle?.length, 'array'],
  ] as const) {
    if (value === undefined || value <= most) continue;
    const issue = { code: 'too_big', maximum: most, inclusive: true, origin } as const;
    context.addIssue({ ...issue, input: value, path: [field], message: rule.error });
  }
}

/** Entries of a page where the question does not say how many. */
export function usualFits({ changes }: { readonly changes?: string | undefined }): number {
  return changes === 'yes' ? MOST_SOLVED : USUAL_ENTRIES;
}
