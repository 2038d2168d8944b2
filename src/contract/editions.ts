/**
 * The editions of the catalogue: as a list, and one whole.
 */

import type { EditionAnswer } from '../usecases/list-editions.js';
import type { EditionHead } from '../usecases/ports.js';
import { editionField, engineField } from './answer-head.js';
import { LIST_FIELDS, listFields } from './list.js';
import { z } from './openapi-zod.js';
import type { Operation } from './operation.js';
import { NO_PARAMETERS, parameter } from './parameters.js';
import { AN_EDITION } from './problems/rules.js';
import type { Wire } from './wire.js';

const EDITION = {
  number: editionField.openapi({ description: 'Counted 1, 2, 3 and so on.' }),
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
};

const editionHeadSchema = z.strictObject(EDITION).openapi('EditionEntry', {
  description: 'One numbered state of the catalogue. It never changes.',
});

/** Of no one edition, and without sentences. */
const {
  lang: _lang,
  textLang: _textLang,
  ...ENVELOPE
} = listFields(editionHeadSchema, 'The newest first.');

export const editionsAnswerSchema = z
  .strictObject({
    ...ENVELOPE,
    edition: editionField.nullable().openapi({
      description: 'The newest of the list; null before anything was published.',
    }),
  })
  .openapi('EditionList', { description: 'Editions.' });

export const editionAnswerSchema = z
  .strictObject({ edition: editionField, engine: engineField, ...EDITION })
  .openapi('EditionAnswer', { description: 'What is known of one edition.' });

export type EditionHeadWire = Wire<EditionHead, z.infer<typeof editionHeadSchema>>;
export type EditionWire = Wire<EditionAnswer, z.infer<typeof editionAnswerSchema>>;
export type EditionsWire = z.infer<typeof editionsAnswerSchema>;

export const editionsQuestionSchema = z.strictObject({
  limit: LIST_FIELDS.limit,
  cursor: LIST_FIELDS.cursor.openapi({
    description:
      'Where the list goes on: `next` of the answer before. What was published since is not in it.',
  }),
});

/** The segment of the path by which the newest edition is asked for. */
export const LATEST = 'latest';

export const editionQuestionSchema = z.strictObject({
  number: z.string().regex(/^([1-9][0-9]{0,14}|latest)$/, { error: AN_EDITION.code }),
});

const { shape } = editionsQuestionSchema;

export const listEditionsOperation: Operation = {
  method: 'get',
  path: '/v1/editions',
  operationId: 'listEditions',
  tag: 'editions',
  summary: 'Which editions are there?',
  description:
    'The newest first. Any can be asked for ever, by its number. Pages of one list are those of ' +
    'the editions that there were when its first page was given.',
  segment: null,
  query: {
    parameters: [parameter('limit', shape.limit, 'number'), parameter('cursor', shape.cursor)],
    groups: [],
  },
  body: null,
  answer: { schema: editionsAnswerSchema, description: 'A page of the list.' },
  errors: [],
};

export const readEditionOperation: Operation = {
  method: 'get',
  path: '/v1/editions/{number}',
  operationId: 'readEdition',
  tag: 'editions',
  summary: 'What is known of this edition?',
  description: `Of a numbered one, this never changes; \`${LATEST}\` is the newest there is.`,
  segment: {
    name: 'number',
    description: `Number of the edition, or \`${LATEST}\`.`,
    example: '1',
  },
  query: NO_PARAMETERS,
  body: null,
  answer: { schema: editionAnswerSchema, description: 'The edition.' },
  errors: ['unknown-edition', 'no-edition'],
};
