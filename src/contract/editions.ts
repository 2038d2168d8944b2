/**
 * The editions of the catalogue, as a list.
 */

import type { EditionHead } from '../usecases/ports.js';
import { editionField, engineField } from './answer-head.js';
import { z } from './openapi-zod.js';
import type { Operation } from './operation.js';
import { NO_PARAMETERS } from './parameters.js';
import type { Wire } from './wire.js';

const editionHeadSchema = z
  .strictObject({
    number: editionField,
    hash: z
      .string()
      .regex(/^sha256-[0-9a-f]{64}$/)
      .openapi({
        description: 'Of the canonical document without its offers.',
      }),
    publishedAt: z.iso.datetime().openapi({ description: 'UTC.' }),
    note: z.string().nullable(),
    counts: z.record(z.string(), z.int().min(0)).openapi({
      description: 'How many entities of each list it has.',
      example: { parts: 54, vehicles: 3 },
    }),
  })
  .openapi('Edition', { description: 'One numbered state of the catalogue. It never changes.' });

export const editionsAnswerSchema = z
  .strictObject({
    edition: editionField.nullable().openapi({
      description: 'The newest; null before anything was published.',
    }),
    engine: engineField,
    items: z.array(editionHeadSchema).openapi({ description: 'The newest first.' }),
    next: z.string().nullable().openapi({
      description: 'Where the list goes on; null at its end. It is never cut as yet.',
    }),
  })
  .openapi('EditionList', { description: 'All editions.' });

export type EditionHeadWire = Wire<EditionHead, z.infer<typeof editionHeadSchema>>;
export type EditionsAnswer = z.infer<typeof editionsAnswerSchema>;

export const listEditionsOperation: Operation = {
  method: 'get',
  path: '/v1/editions',
  operationId: 'listEditions',
  tag: 'editions',
  summary: 'Which editions are there?',
  description: 'All of them, the newest first. Any can be asked for ever, by its number.',
  segment: null,
  query: NO_PARAMETERS,
  body: null,
  answer: { schema: editionsAnswerSchema, description: 'The list.' },
  errors: [],
};
