/**
 * The layouts of the catalogue: as a list, and one whole.
 */

import type { LayoutAnswer, LayoutEntry } from '../usecases/catalogue-view.js';
import { ANSWER_HEAD } from './answer-head.js';
import { declaredCheckSchema } from './declared.js';
import { LIST_FIELDS, LIST_PARAMETERS, listFields } from './list.js';
import { z } from './openapi-zod.js';
import type { Operation } from './operation.js';
import { READ_FIELDS, READ_QUERY } from './read.js';
import type { Wire } from './wire.js';

const layoutEntrySchema = z
  .strictObject({
    id: z.string(),
    name: z.string().nullable(),
    positions: z.int().min(0).openapi({ description: 'How many it has.' }),
    vehicles: z.int().min(0).openapi({ description: 'How many vehicles are of it.' }),
  })
  .openapi('LayoutEntry', { description: 'A vehicle architecture.' });

export type LayoutEntryWire = Wire<LayoutEntry, z.infer<typeof layoutEntrySchema>>;

export const layoutsAnswerSchema = z
  .strictObject(listFields(layoutEntrySchema, 'In the order of their ids.'))
  .openapi('LayoutList', { description: 'Layouts.' });

export const layoutsQuestionSchema = z.strictObject(LIST_FIELDS);

const hours = z.string().nullable();

const positionSchema = z
  .strictObject({
    position: z.string(),
    name: z.string(),
    roles: z.array(z.string()).openapi({ description: 'Of which a part is one, to go here.' }),
    count: z.int().min(1),
    handed: z.boolean().openapi({ description: 'Left and right are told apart.' }),
    optional: z.boolean().openapi({ description: 'It may be empty.' }),
    behind: z.array(z.string()).openapi({ description: 'Positions that must come out first.' }),
    labourHours: hours.openapi({ description: 'To change one piece; a decimal.' }),
    accessHours: hours.openapi({ description: 'To get one piece out of the way; a decimal.' }),
  })
  .openapi('Position', { description: 'A place on a vehicle.' });

const layoutMatingSchema = z
  .strictObject({
    mating: z.string(),
    between: z.array(z.string()).openapi({
      description: 'Two of `position.interface`.',
      example: ['gearbox.rear', 'prop-shaft.front'],
    }),
    adapters: z.int().min(0).openapi({ description: 'Most adapters between them, in a row.' }),
  })
  .openapi('LayoutMating', { description: 'Where two positions meet.' });

const termSchema = z
  .strictObject({ term: z.string(), name: z.string() })
  .openapi('Term', { description: 'A value that a layout computes from others.' });

export const layoutAnswerSchema = z
  .strictObject({
    ...ANSWER_HEAD,
    id: z.string(),
    name: z.string().nullable(),
    positions: z.array(positionSchema),
    matings: z.array(layoutMatingSchema),
    checks: z.array(declaredCheckSchema),
    terms: z.array(termSchema).openapi({
      description: 'The computed values that its checks compare.',
    }),
  })
  .openapi('LayoutAnswer', { description: 'The positions, matings and checks of one layout.' });

export type LayoutAnswerWire = Wire<LayoutAnswer, z.infer<typeof layoutAnswerSchema>>;

export const layoutQuestionSchema = z.strictObject(READ_FIELDS);

export const listLayoutsOperation: Operation = {
  method: 'get',
  path: '/v1/layouts',
  operationId: 'listLayouts',
  tag: 'catalogue',
  summary: 'Which layouts are there?',
  description: 'The vehicle architectures of the catalogue, in the order of their ids.',
  segment: null,
  query: { parameters: LIST_PARAMETERS, groups: [] },
  body: null,
  answer: { schema: layoutsAnswerSchema, description: 'A page of the list.' },
  errors: ['unknown-edition', 'no-edition'],
};

export const readLayoutOperation: Operation = {
  method: 'get',
  path: '/v1/layouts/{id}',
  operationId: 'readLayout',
  tag: 'catalogue',
  summary: 'What is in this layout?',
  description: 'Its positions, where they meet, and what is checked beside the meetings.',
  segment: { name: 'id', description: 'Id of the layout.', example: 'long-awd' },
  query: READ_QUERY,
  body: null,
  answer: { schema: layoutAnswerSchema, description: 'The layout.' },
  errors: ['unknown-edition', 'no-edition', 'unknown-layout'],
};
