/**
 * What stands in a record: a value in its form, and what it rests on.
 */

import { basisSchema } from './judged.js';
import { z } from './openapi-zod.js';
import { shownPointSchema, shownValueSchema } from './reason.js';

export const evidenceSchema = z
  .strictObject({
    basis: basisSchema,
    by: z.string().nullable().openapi({ description: 'Who measured, drew or built it.' }),
    on: z.string().nullable().openapi({ description: 'The day.', example: '2026-03-01' }),
    source: z.string().nullable(),
    times: z.int().nullable().openapi({ description: 'How often it has been built so.' }),
  })
  .openapi('Evidence', {
    description: 'What a record rests on; null is what nobody wrote down.',
  });

export const recordedValueSchema = z
  .strictObject({
    parameter: z.string(),
    name: z.string(),
    form: z.enum(['number', 'code', 'list', 'points', 'range', 'set']).openapi({
      description: 'Closed. Of a `range` or a `set` one may set or order any value that is in it.',
    }),
    value: shownValueSchema,
    items: z.array(shownValueSchema).openapi({ description: 'What is in a list or a set.' }),
    points: z.array(shownPointSchema).openapi({ description: 'Where the points are.' }),
    tool: z.string().nullable().openapi({ description: 'Id of the tool it was read with.' }),
    toolName: z.string().nullable(),
    evidence: evidenceSchema,
  })
  .openapi('RecordedValue', { description: 'A value as it is recorded.' });
