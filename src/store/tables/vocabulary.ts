/**
 * The head of the document, and the words that its other entities use: facts, kinds, roles.
 */

import { sql } from 'drizzle-orm';
import { check, foreignKey, integer, primaryKey, sqliteTable, text } from 'drizzle-orm/sqlite-core';
import { entityColumns, recordCheck, spanCheck, specColumns } from './columns.js';
import { ownedSpan } from './editions.js';

/** One current row: all of the document but its lists of entities. */
export const documents = sqliteTable(
  'documents',
  {
    ...entityColumns(),
    lang: text().notNull(),
    currency: text(),
    /** The basis of every value that names none. */
    basis: text().notNull(),
    /** JSON object. */
    evidence: text().notNull(),
    /** JSON object: the catalogue's own limits of axle loops. */
    couplings: text(),
  },
  (table) => [
    primaryKey({ columns: [table.id, table.fromEdition] }),
    spanCheck('documents', table),
    check('documents_id', sql`${table.id} = 'document'`),
    check('documents_record', sql`json_valid(${table.record})`),
  ],
);

export const facts = sqliteTable(
  'facts',
  { ...entityColumns(), name: text().notNull(), how: text() },
  (table) => [
    primaryKey({ columns: [table.id, table.fromEdition] }),
    spanCheck('facts', table),
    recordCheck('facts', table),
  ],
);

export const factValues = sqliteTable(
  'fact_values',
  {
    fact: text().notNull(),
    ...ownedSpan(),
    ordinal: integer().notNull(),
    value: text().notNull(),
    name: text().notNull(),
  },
  (table) => [
    primaryKey({ columns: [table.fact, table.fromEdition, table.ordinal] }),
    foreignKey({
      columns: [table.fact, table.fromEdition],
      foreignColumns: [facts.id, facts.fromEdition],
    }),
    spanCheck('fact_values', table),
  ],
);

/** The catalogue's own kinds; those that are built in are in no document. */
export const kinds = sqliteTable(
  'kinds',
  {
    ...entityColumns(),
    name: text().notNull(),
    standard: text(),
    /** Both null where the two ends are alike. */
    firstSide: text('first_side'),
    secondSide: text('second_side'),
    caution: text(),
  },
  (table) => [
    primaryKey({ columns: [table.id, table.fromEdition] }),
    spanCheck('kinds', table),
    recordCheck('kinds', table),
  ],
);

export const kindParameters = sqliteTable(
  'kind_parameters',
  {
    kind: text().notNull(),
    ...ownedSpan(),
    parameter: text().notNull(),
    ...specColumns(),
    /** The one side that has it; null where both have. */
    ofSide: text('of_side'),
    optional: integer({ mode: 'boolean' }).notNull(),
  },
  (table) => [
    primaryKey({ columns: [table.kind, table.fromEdition, table.parameter] }),
    foreignKey({
      columns: [table.kind, table.fromEdition],
      foreignColumns: [kinds.id, kinds.fromEdition],
    }),
    spanCheck('kind_parameters', table),
  ],
);

export const roles = sqliteTable(
  'roles',
  {
    ...entityColumns(),
    name: text().notNull(),
    caution: text(),
    /** JSON list; null where the role does not list them. */
    faces: text(),
  },
  (table) => [
    primaryKey({ columns: [table.id, table.fromEdition] }),
    spanCheck('roles', table),
    recordCheck('roles', table),
  ],
);

export const roleValues = sqliteTable(
  'role_values',
  {
    role: text().notNull(),
    ...ownedSpan(),
    value: text().notNull(),
    ...specColumns(),
    list: integer({ mode: 'boolean' }).notNull(),
    rating: integer({ mode: 'boolean' }).notNull(),
    /** Computed from the part's other values, never recorded. */
    derived: integer({ mode: 'boolean' }).notNull(),
    askedAs: text('asked_as'),
  },
  (table) => [
    primaryKey({ columns: [table.role, table.fromEdition, table.value] }),
    foreignKey({
      columns: [table.role, table.fromEdition],
      foreignColumns: [roles.id, roles.fromEdition],
    }),
    spanCheck('role_values', table),
  ],
);
