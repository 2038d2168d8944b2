/**
 * The parts of the catalogue: as a list that narrows, and one whole.
 */

import type { PartsInput } from '../usecases/list-parts.js';
import type { ListInput } from '../usecases/listing.js';
import type { FoundPartEntry, PartAnswer, PartEntry } from '../usecases/part-view.js';
import { VALUES_HEAD } from './answer-head.js';
import { builtField } from './built.js';
import { cautionSchema } from './judged.js';
import { LIST_FIELDS, LIST_PARAMETERS, listFields } from './list.js';
import {
  askedField,
  lostNameSchema,
  namedBySchema,
  offersField,
  partNamesField,
  supersededByField,
} from './naming.js';
import { z } from './openapi-zod.js';
import type { Operation } from './operation.js';
import { parameter } from './parameters.js';
import { NOT_BESIDE_NAMES } from './problems/rules.js';
import { nameOf, refuseBeside } from './question.js';
import { READ_VALUES_FIELDS, READ_VALUES_QUERY } from './read.js';
import { handSchema } from './reason.js';
import { evidenceSchema, recordedValueSchema } from './record.js';
import type { Wire } from './wire.js';

export const partNumberSchema = z
  .strictObject({
    number: z.string(),
    of: z.string().openapi({
      description: 'Whose number it is, as recorded; `maker` is whoever makes the part.',
    }),
  })
  .openapi('PartNumber', { description: 'A number of a part.' });

export const PART_ENTRY = {
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
  supersededBy: supersededByField,
};

export const partEntrySchema = z.strictObject(PART_ENTRY).openapi('PartEntry', {
  description: 'An article.',
});

export type PartEntryWire = Wire<PartEntry, z.infer<typeof partEntrySchema>>;

export const foundPartSchema = z
  .strictObject({
    asked: askedField,
    resolvedBy: namedBySchema,
    ...PART_ENTRY,
  })
  .openapi('FoundPart', { description: 'The part that a name leads to.' });

const partItemSchema = z.union([partEntrySchema, foundPartSchema, lostNameSchema]);

export const partsAnswerSchema = z
  .strictObject({
    ...listFields(
      partItemSchema,
      'Parts in the order of their ids; where names were looked up, what each leads to, in the ' +
        'order of the question.',
    ),
    offers: offersField,
  })
  .openapi('PartList', { description: 'Parts.' });

export type FoundPartWire = Wire<FoundPartEntry, z.infer<typeof foundPartSchema>>;

const name = nameOf().optional();

const QUESTION_FIELDS = {
  part: partNamesField('Names to look up, in place of all filters'),
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
};

/** What makes no difference to names that are looked up one by one. */
const OF_LISTS = ['role', 'kind', 'maker', 'number', 'text', 'superseded', 'limit', 'cursor'];

export const partsQuestionSchema = z
  .strictObject(QUESTION_FIELDS)
  .superRefine((question, context) => {
    if (question.part !== undefined) refuseBeside(OF_LISTS, question, context, NOT_BESIDE_NAMES);
  });

export type PartsQuestion = z.infer<typeof partsQuestionSchema>;

/** What the use-case takes, and which names are looked up instead; null is what nobody asked. */
export function partsFilters(
  question: PartsQuestion,
): Omit<PartsInput, keyof ListInput> & { readonly names: readonly string[] | null } {
  const { part, role, kind, maker, number, text, superseded } = question;
  return {
    names: part ?? null,
    role: role ?? null,
    kind: kind ?? null,
    maker: maker ?? null,
    number: number ?? null,
    text: text ?? null,
    superseded: superseded ?? null,
  };
}

export const listPartsOperation: Operation = {
  method: 'get',
  path: '/v1/parts',
  operationId: 'listParts',
  tag: 'catalogue',
  summary: 'Which parts are there?',
  description:
    'The parts of which all is true that is asked, in the order of their ids; or, with `part`, ' +
    'what each of these names leads to. How many parts there are of each role and with a face ' +
    'of each kind, the lists of those say.',
  segment: null,
  query: {
    parameters: [
      parameter('part', QUESTION_FIELDS.part, 'list'),
      parameter('role', QUESTION_FIELDS.role),
      parameter('kind', QUESTION_FIELDS.kind),
      parameter('maker', QUESTION_FIELDS.maker),
      parameter('number', QUESTION_FIELDS.number),
      parameter('text', QUESTION_FIELDS.text),
      parameter('superseded', QUESTION_FIELDS.superseded, 'boolean'),
      ...LIST_PARAMETERS,
    ],
    groups: [],
  },
  body: null,
  answer: { schema: partsAnswerSchema, description: 'A page of the list.' },
  errors: ['unknown-edition', 'no-edition', 'unknown-role', 'unknown-kind', 'invalid-question'],
};

const alternativeSchema = z
  .strictObject({
    parameters: z.array(recordedValueSchema),
    notRecorded: z.array(z.string()).openapi({
      description: 'What the kind asks for and nobody recorded: it leaves checks open.',
    }),
  })
  .openapi('Alternative', { description: 'One way in which a face can be.' });

const interfaceSchema = z
  .strictObject({
    interface: z.string(),
    kind: z.string().nullable(),
    kindName: z.string().nullable(),
    side: z.string().nullable().openapi({ description: 'Null where both ends are alike.' }),
    optional: z.boolean().openapi({ description: 'It may be left without a partner.' }),
    absent: z.boolean().openapi({ description: 'The part really has no such face.' }),
    alternatives: z.array(alternativeSchema).openapi({
      description: 'One, or several of which one is used; none where the face is absent.',
    }),
    evidence: evidenceSchema,
  })
  .openapi('Interface', { description: 'A face through which the part meets another.' });

export const partAnswerSchema = z
  .strictObject({
    ...VALUES_HEAD,
    ...PART_ENTRY,
    interfaces: z.array(interfaceSchema),
    values: z.array(recordedValueSchema),
    notRecorded: z
      .strictObject({ interfaces: z.array(z.string()), values: z.array(z.string()) })
      .openapi('NotRecorded', {
        description: 'What its roles say that such a part has, and nobody recorded of it.',
      }),
    evidence: evidenceSchema,
    cautions: z.array(cautionSchema),
  })
  .openapi('PartAnswer', { description: 'Everything that is recorded of one part.' });

export type PartAnswerWire = Wire<PartAnswer, z.infer<typeof partAnswerSchema>>;

export const partQuestionSchema = z.strictObject(READ_VALUES_FIELDS);

export const readPartOperation: Operation = {
  method: 'get',
  path: '/v1/parts/{id}',
  operationId: 'readPart',
  tag: 'catalogue',
  summary: 'What is recorded of this part?',
  description:
    'Its faces with their values, its own values, what each rests on, and what is not recorded ' +
    'though its roles and kinds ask for it. Who offers it at which price is not part of a record.',
  segment: { name: 'id', description: 'Id of the part.', example: 'gearbox-6-late' },
  query: READ_VALUES_QUERY,
  body: null,
  answer: { schema: partAnswerSchema, description: 'The part.' },
  errors: ['unknown-edition', 'no-edition', 'unknown-part'],
};
