/**
 * The parts of the catalogue, as a list that narrows.
 */

import type { PartEntry } from '../usecases/part-view.js';
import { builtField } from './built.js';
import { LIMITS } from './limits.js';
import { LIST_FIELDS, LIST_PARAMETERS, listFields } from './list.js';
import { z } from './openapi-zod.js';
import type { Operation } from './operation.js';
import { parameter } from './parameters.js';
import { nameOf } from './question.js';
import { handSchema } from './reason.js';
import type { Wire } from './wire.js';

const partNumberSchema = z
  .strictObject({
    number: z.string(),
    of: z.string().openapi({
      description: 'Whose number it is, as recorded; `maker` is whoever makes the part.',
    }),
  })
  .openapi('PartNumber', { description: 'A number of a part.' });

const PART_ENTRY = {
  id: z.string(),
  name: z.string(),
  roles: z.array(z.string()),
  maker: z.string().nullable(),
  numbers: z.array(partNumberSchema),
  hand: handSchema.nullable(),
  spans: z.array(z.string()).openapi({
    description: 'The positions that it fills at once; none where it stands at one.',
  }),
  built: builtField,
  supersededBy: z.string().nullable().openapi({
    description: 'Id of the part that is recorded to have taken its place.',
  }),
};

const partEntrySchema = z.strictObject(PART_ENTRY).openapi('PartEntry', {
  description: 'An article.',
});

export type PartEntryWire = Wire<PartEntry, z.infer<typeof partEntrySchema>>;

export const partsAnswerSchema = z
  .strictObject(listFields(partEntrySchema, 'In the order of their ids.'))
  .openapi('PartList', { description: 'Parts.' });

const name = nameOf(LIMITS.nameCharacters.value).optional();

export const partsQuestionSchema = z.strictObject({
  role: name.openapi({ description: 'Id of a role that they have.', example: 'gearbox' }),
  kind: name.openapi({
    description: 'Id of a kind of interface that one of their faces is of.',
    example: 'wheel-mount',
  }),
  maker: name.openapi({
    description: 'Who makes them. Case, spaces, dots and dashes make no difference.',
  }),
  number: name.openapi({
    description:
      'A number that is recorded of them, with `@` and whose number it is behind it if need be. ' +
      'Case, spaces, dots and dashes make no difference.',
    example: 'CBL-2G-6',
  }),
  text: name.openapi({
    description:
      'Words that all stand somewhere in their names in any language, id, numbers or maker. Case ' +
      'and marks on letters make no difference.',
    example: 'six-speed lirren',
  }),
  superseded: z.boolean().optional().openapi({
    description: 'Only those that another part took the place of, or only the others.',
  }),
  ...LIST_FIELDS,
});

export type PartsQuestion = z.infer<typeof partsQuestionSchema>;

const { shape } = partsQuestionSchema;

export const listPartsOperation: Operation = {
  method: 'get',
  path: '/v1/parts',
  operationId: 'listParts',
  tag: 'catalogue',
  summary: 'Which parts are there?',
  description:
    'The parts of which all is true that is asked, in the order of their ids. How many parts ' +
    'there are of each role and with a face of each kind, the lists of those say.',
  segment: null,
  query: {
    parameters: [
      parameter('role', shape.role),
      parameter('kind', shape.kind),
      parameter('maker', shape.maker),
      parameter('number', shape.number),
      parameter('text', shape.text),
      parameter('superseded', shape.superseded, 'boolean'),
      ...LIST_PARAMETERS,
    ],
    groups: [],
  },
  body: null,
  answer: { schema: partsAnswerSchema, description: 'A page of the list.' },
  errors: ['unknown-edition', 'no-edition', 'unknown-role', 'unknown-kind', 'invalid-question'],
};
