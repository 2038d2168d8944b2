/**
 * What goes wrong with a request, as RFC 9457 problem details. That a part does not fit is an
 * answer and no problem.
 */

import { asksField } from './ask.js';
import { LIMITS } from './limits.js';
import { z } from './openapi-zod.js';

/** One of several things, such as a part that may be meant, by names. */
const candidateSchema = z.record(z.string(), z.string().nullable());

const faultValueSchema = z
  .union([z.string(), z.number(), z.array(z.string()), z.array(candidateSchema)])
  .nullable();

export const faultSchema = z
  .strictObject({
    pointer: z.string().optional().openapi({
      description: 'RFC 6901 pointer into the body.',
      example: '/with/clutch',
    }),
    parameter: z.string().optional().openapi({
      description: 'Name of the parameter in the URL.',
      example: 'with.clutch',
    }),
    code: z.string().openapi({ description: 'Stable. Open.', example: 'unknown-part' }),
    data: z.record(z.string(), faultValueSchema).openapi({
      description:
        'What the sentence is made of: names as they were sent, shortened where they are long, ' +
        'in `meant` what was probably meant, in `candidates` all that may be. Which there are ' +
        'follows from the code.',
      example: { name: 'front-hub-usd', meant: 'front-hub-used' },
    }),
    text: z.string(),
    lang: z.string().optional().openapi({
      description: 'The language of the text, where it is not that of the problem.',
      example: 'en',
    }),
  })
  .openapi('Fault', { description: 'One thing that is wrong, and where.' });

export type FaultWire = z.infer<typeof faultSchema>;

export const problemSchema = z
  .strictObject({
    type: z.string().openapi({
      description: 'A stable address below the service, which explains the problem.',
      example: '/problems/unknown-part',
    }),
    title: z.string(),
    status: z.int(),
    detail: z.string(),
    lang: z.string().openapi({
      description: 'The language of `title`, `detail` and of the texts in `errors`.',
      example: 'en',
    }),
    retry: z.enum(['no', 'later', 'with-change']).openapi({
      description: 'Whether to ask again: not at all, the same later, or something else.',
    }),
    instance: z.string().openapi({ description: 'The request: the value of `X-Request-Id`.' }),
    errors: z.array(faultSchema).openapi({
      description: `Every fault that was found, the first ${LIMITS.faultsTold.value} of them.`,
    }),
    ask: asksField.optional(),
    limit: z
      .strictObject({
        name: z.string().openapi({ description: 'Its name. Open.', example: 'bodyBytes' }),
        value: z.int().openapi({ description: 'The most that is taken.', example: 1_000_000 }),
      })
      .optional()
      .openapi({ description: 'The limit that was passed; the first, where several were.' }),
    code: z.string().openapi({ description: 'The last segment of `type`. Open.' }),
  })
  .openapi('Problem', { description: 'RFC 9457 problem details.' });

export type ProblemWire = z.infer<typeof problemSchema>;

/** What goes wrong with one item of a question of many. */
export const itemProblemSchema = problemSchema.omit({ instance: true }).openapi('ItemProblem', {
  description: 'RFC 9457 problem details of one item; the others have their answers.',
});

export type ItemProblemWire = z.infer<typeof itemProblemSchema>;
