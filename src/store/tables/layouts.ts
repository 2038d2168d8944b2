/**
 * Layouts with their positions, matings and checks. Their named terms are in the record only.
 */

import { sql } from 'drizzle-orm';
import { check, foreignKey, integer, primaryKey, sqliteTable, text } from 'drizzle-orm/sqlite-core';
import { entityColumns, recordCheck, spanCheck } from './columns.js';
import { ownedSpan } from './editions.js';

export const layouts = sqliteTable(
  'layouts',
  { ...entityColumns(), name: text(), unmated: text().notNull() },
  (table) => [
    primaryKey({ columns: [table.id, table.fromEdition] }),
    spanCheck('layouts', table),
    recordCheck('layouts', table),
  ],
);

export const positions = sqliteTable(
  'positions',
  {
    layout: text().notNull(),
    ...ownedSpan(),
    position: text().notNull(),
    ordinal: integer().notNull(),
    name: text().notNull(),
    count: integer().notNull(),
    handed: integer({ mode: 'boolean' }).notNull(),
    optional: integer({ mode: 'boolean' }).notNull(),
    /** JSON list of the positions that must come out first. */
    behind: text().notNull(),
    /** Exact, for each piece; null where it is not recorded. */
    labourHours: text('labour_hours'),
    accessHours: text('access_hours'),
  },
  (table) => [
    primaryKey({ columns: [table.layout, table.fromEdition, table.position] }),
    foreignKey({
      columns: [table.layout, table.fromEdition],
      foreignColumns: [layouts.id, layouts.fromEdition],
    }),
    spanCheck('positions', table),
    check('positions_count', sql`${table.count} >= 1`),
  ],
);

export const positionRoles = sqliteTable(
  'position_roles',
  {
    layout: text().notNull(),
    ...ownedSpan(),
    position: text().notNull(),
    ordinal: integer().notNull(),
    role: text().notNull(),
  },
  (table) => [
    primaryKey({ columns: [table.layout, table.fromEdition, table.position, table.ordinal] }),
    foreignKey({
      columns: [table.layout, table.fromEdition, table.position],
      foreignColumns: [positions.layout, positions.fromEdition, positions.position],
    }),
    spanCheck('position_roles', table),
  ],
);

export const matings = sqliteTable(
  'matings',
  {
    layout: text().notNull(),
    ...ownedSpan(),
    mating: text().notNull(),
    ordinal: integer().notNull(),
    firstPosition: text('first_position').notNull(),
    firstInterface: text('first_interface').notNull(),
    secondPosition: text('second_position').notNull(),
    secondInterface: text('second_interface').notNull(),
    /** How many adapters it takes in a row. */
    adapters: integer().notNull(),
    /** How many such joints there are. */
    quantity: integer().notNull(),
    handed: integer({ mode: 'boolean' }).notNull(),
    shared: integer({ mode: 'boolean' }).notNull(),
  },
  (table) => [
    primaryKey({ columns: [table.layout, table.fromEdition, table.mating] }),
    foreignKey({
      columns: [table.layout, table.fromEdition],
      foreignColumns: [layouts.id, layouts.fromEdition],
    }),
    spanCheck('matings', table),
  ],
);

export const layoutChecks = sqliteTable(
  'layout_checks',
  {
    layout: text().notNull(),
    ...ownedSpan(),
    check: text().notNull(),
    ordinal: integer().notNull(),
    /** `equal`, `within`, `agree` … */
    spelling: text().notNull(),
    severity: text().notNull(),
    code: text(),
    text: text(),
    /** JSON object: the check as it is written. */
    source: text().notNull(),
  },
  (table) => [
    primaryKey({ columns: [table.layout, table.fromEdition, table.check] }),
    foreignKey({
      columns: [table.layout, table.fromEdition],
      foreignColumns: [layouts.id, layouts.fromEdition],
    }),
    spanCheck('layout_checks', table),
  ],
);
