/**
 * The kinds of interface: as a list, and one whole.
 */

import type { KindAnswer, KindEntry } from '../usecases/vocabulary-view.js';
import { VALUES_HEAD } from './answer-head.js';
import { cautionGroupField, declaredCheckSchema, SPEC_FIELDS } from './declared.js';
import { cautionSchema } from './judged.js';
import { LIST_FIELDS, LIST_PARAMETERS, listFields } from './list.js';
import { z } from './openapi-zod.js';
import type { Operation } from './operation.js';
import { READ_VALUES_FIELDS, READ_VALUES_QUERY } from './read.js';
import type { Wire } from './wire.js';

const KIND_ENTRY = {
  id: z.string(),
  name: z.string(),
  builtIn: z.boolean().openapi({
    description: 'It comes with the program; others are declared by the catalogue.',
  }),
  caution: cautionGroupField,
  parts: z.int().min(0).openapi({ description: 'How many parts have a face of it.' }),
};

const kindEntrySchema = z
  .strictObject(KIND_ENTRY)
  .openapi('KindEntry', { description: 'A kind of interface.' });

export type KindEntryWire = Wire<KindEntry, z.infer<typeof kindEntrySchema>>;

export const kindsAnswerSchema = z
  .strictObject(listFields(kindEntrySchema, 'In the order of their ids.'))
  .openapi('KindList', { description: 'Kinds of interface.' });

export const kindsQuestionSchema = z.strictObject(LIST_FIELDS);

const parameterSchema = z
  .strictObject({
    parameter: z.string(),
    ...SPEC_FIELDS,
    side: z.string().nullable().openapi({
      description: 'The one side that has it; null where both have.',
    }),
    optional: z.boolean().openapi({
      description: 'It is compared where both faces have it, and the joint can be told without.',
    }),
    unless: z.array(z.string()).openapi({
      description: 'Parameters that do instead, where both faces have all of them.',
    }),
  })
  .openapi('Parameter', { description: 'What a kind wants to be told of a face.' });

const sideSchema = z
  .strictObject({ side: z.string(), name: z.string() })
  .openapi('KindSide', { description: 'One of the two sides that meet.' });

export const kindAnswerSchema = z
  .strictObject({
    ...VALUES_HEAD,
    ...KIND_ENTRY,
    standard: z.string().nullable().openapi({
      description: 'The one that governs it, or that there is none; null where nobody says.',
    }),
    sides: z.array(sideSchema).openapi({ description: 'None where both ends are alike.' }),
    parameters: z.array(parameterSchema),
    checks: z.array(declaredCheckSchema),
    notChecked: z.array(z.string()).openapi({
      description: 'What two faces can still differ in although every check holds.',
    }),
    cautions: z.array(cautionSchema),
  })
  .openapi('KindAnswer', { description: 'What one kind compares, and what it does not.' });

export type KindAnswerWire = Wire<KindAnswer, z.infer<typeof kindAnswerSchema>>;

export const kindQuestionSchema = z.strictObject(READ_VALUES_FIELDS);

export const listKindsOperation: Operation = {
  method: 'get',
  path: '/v1/kinds',
  operationId: 'listKinds',
  tag: 'catalogue',
  summary: 'Which kinds of interface are there?',
  description:
    'Those that are built in and those that the catalogue declares, in the order of their ids.',
  segment: null,
  query: { parameters: LIST_PARAMETERS, groups: [] },
  body: null,
  answer: { schema: kindsAnswerSchema, description: 'A page of the list.' },
  errors: ['unknown-edition', 'no-edition'],
};

export const readKindOperation: Operation = {
  method: 'get',
  path: '/v1/kinds/{id}',
  operationId: 'readKind',
  tag: 'catalogue',
  summary: 'What does this kind of interface compare?',
  description: 'Its sides, what it wants to be told of each, its checks, and what it leaves out.',
  segment: { name: 'id', description: 'Id of the kind.', example: 'wheel-mount' },
  query: READ_VALUES_QUERY,
  body: null,
  answer: { schema: kindAnswerSchema, description: 'The kind.' },
  errors: ['unknown-edition', 'no-edition', 'unknown-kind'],
};
