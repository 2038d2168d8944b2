/**
 * The roles of parts: as a list, and one whole.
 */

import type { RoleAnswer, RoleEntry } from '../usecases/vocabulary-view.js';
import { VALUES_HEAD } from './answer-head.js';
import { cautionGroupField, SPEC_FIELDS } from './declared.js';
import { cautionSchema } from './judged.js';
import { LIST_FIELDS, LIST_PARAMETERS, listFields } from './list.js';
import { z } from './openapi-zod.js';
import type { Operation } from './operation.js';
import { READ_VALUES_FIELDS, READ_VALUES_QUERY } from './read.js';
import type { Wire } from './wire.js';

const ROLE_ENTRY = {
  id: z.string(),
  name: z.string(),
  caution: cautionGroupField,
  parts: z.int().min(0).openapi({ description: 'How many parts are of it.' }),
};

const roleEntrySchema = z
  .strictObject(ROLE_ENTRY)
  .openapi('RoleEntry', { description: 'What a part can be.' });

export type RoleEntryWire = Wire<RoleEntry, z.infer<typeof roleEntrySchema>>;

export const rolesAnswerSchema = z
  .strictObject(listFields(roleEntrySchema, 'In the order of their ids.'))
  .openapi('RoleList', { description: 'Roles of parts.' });

export const rolesQuestionSchema = z.strictObject(LIST_FIELDS);

const roleValueSchema = z
  .strictObject({
    parameter: z.string().openapi({ description: 'Its id, by which measures and parts name it.' }),
    ...SPEC_FIELDS,
    list: z.boolean().openapi({ description: 'It is a list of such values.' }),
    rating: z.boolean().openapi({ description: 'It is what a part bears.' }),
    derived: z.boolean().openapi({
      description: 'It is computed from other values of the part, and never recorded.',
    }),
    askedAs: z.string().nullable().openapi({
      description: 'The field of a question that takes its place.',
    }),
  })
  .openapi('RoleValue', { description: 'What a role wants to be told of a part.' });

export const roleAnswerSchema = z
  .strictObject({
    ...VALUES_HEAD,
    ...ROLE_ENTRY,
    faces: z.array(z.string()).nullable().openapi({
      description: 'Names of the faces that such a part has; null where the role lists none.',
    }),
    values: z.array(roleValueSchema),
    cautions: z.array(cautionSchema),
  })
  .openapi('RoleAnswer', { description: 'The faces and values of a part of one role.' });

export type RoleAnswerWire = Wire<RoleAnswer, z.infer<typeof roleAnswerSchema>>;

export const roleQuestionSchema = z.strictObject(READ_VALUES_FIELDS);

export const listRolesOperation: Operation = {
  method: 'get',
  path: '/v1/roles',
  operationId: 'listRoles',
  tag: 'catalogue',
  summary: 'What can a part be?',
  description: 'The roles of the catalogue, in the order of their ids.',
  segment: null,
  query: { parameters: LIST_PARAMETERS, groups: [] },
  body: null,
  answer: { schema: rolesAnswerSchema, description: 'A page of the list.' },
  errors: ['unknown-edition', 'no-edition'],
};

export const readRoleOperation: Operation = {
  method: 'get',
  path: '/v1/roles/{id}',
  operationId: 'readRole',
  tag: 'catalogue',
  summary: 'What belongs to a part of this role?',
  description: 'The faces that such a part has, and the values that are recorded of it.',
  segment: { name: 'id', description: 'Id of the role.', example: 'gearbox' },
  query: READ_VALUES_QUERY,
  body: null,
  answer: { schema: roleAnswerSchema, description: 'The role.' },
  errors: ['unknown-edition', 'no-edition', 'unknown-role'],
};
