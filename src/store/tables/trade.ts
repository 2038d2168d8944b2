/**
 * What is bought whole, what is done to parts, and what is demanded: lots, works, rulesets.
 */

import { sql } from 'drizzle-orm';
import {
  check,
  foreignKey,
  index,
  integer,
  primaryKey,
  sqliteTable,
  text,
} from 'drizzle-orm/sqlite-core';
import { entityColumns, recordCheck, spanCheck, valueChecks, valueColumns } from './columns.js';
import { ownedSpan } from './editions.js';

export const lots = sqliteTable('lots', { ...entityColumns(), name: text() }, (table) => [
  primaryKey({ columns: [table.id, table.fromEdition] }),
  spanCheck('lots', table),
  recordCheck('lots', table),
]);

/** A part, or what stands at a position of a vehicle that is taken apart. */
export const lotItems = sqliteTable(
  'lot_items',
  {
    lot: text().notNull(),
    ...ownedSpan(),
    ordinal: integer().notNull(),
    part: text(),
    /** Exact, in the base unit; both null for a position. */
    quantity: text(),
    /** Empty for pieces. */
    unit: text(),
    vehicle: text(),
    position: text(),
  },
  (table) => [
    primaryKey({ columns: [table.lot, table.fromEdition, table.ordinal] }),
    foreignKey({
      columns: [table.lot, table.fromEdition],
      foreignColumns: [lots.id, lots.fromEdition],
    }),
    spanCheck('lot_items', table),
    check('lot_items_either', sql`(${table.part} IS NULL) = (${table.vehicle} IS NOT NULL)`),
    index('lot_items_part').on(table.part),
  ],
);

export const works = sqliteTable(
  'works',
  {
    ...entityColumns(),
    name: text().notNull(),
    /** What must hold of a part that it is done on, JSON object as it is written. */
    condition: text().notNull(),
    /** JSON list of the ratings that nobody knows afterwards. */
    voids: text().notNull(),
    /** Exact, for each piece; null where it is not recorded. */
    labourHours: text('labour_hours'),
    /** Null where nobody need sign. */
    signOff: text('sign_off', { enum: ['workshop', 'engineer'] }),
    reversible: integer({ mode: 'boolean' }).notNull(),
    basis: text().notNull(),
  },
  (table) => [
    primaryKey({ columns: [table.id, table.fromEdition] }),
    spanCheck('works', table),
    recordCheck('works', table),
  ],
);

/** What the faces of a part have once the work is done. */
export const workParameters = sqliteTable(
  'work_parameters',
  {
    work: text().notNull(),
    ...ownedSpan(),
    interface: text().notNull(),
    parameter: text().notNull(),
    ...valueColumns(),
  },
  (table) => [
    primaryKey({
      columns: [table.work, table.fromEdition, table.interface, table.parameter, table.item],
    }),
    foreignKey({
      columns: [table.work, table.fromEdition],
      foreignColumns: [works.id, works.fromEdition],
    }),
    spanCheck('work_parameters', table),
    ...valueChecks('work_parameters', table),
  ],
);

/** The values that a part has once the work is done. */
export const workValues = sqliteTable(
  'work_values',
  {
    work: text().notNull(),
    ...ownedSpan(),
    value: text().notNull(),
    ...valueColumns(),
  },
  (table) => [
    primaryKey({ columns: [table.work, table.fromEdition, table.value, table.item] }),
    foreignKey({
      columns: [table.work, table.fromEdition],
      foreignColumns: [works.id, works.fromEdition],
    }),
    spanCheck('work_values', table),
    ...valueChecks('work_values', table),
  ],
);

export const rulesets = sqliteTable(
  'rulesets',
  {
    ...entityColumns(),
    name: text(),
    /** Months, `2007-01`; null for no such limit. */
    validFrom: text('valid_from'),
    validUntil: text('valid_until'),
    cite: text().notNull(),
    /** JSON list of the positions that stay as they are. */
    keep: text().notNull(),
  },
  (table) => [
    primaryKey({ columns: [table.id, table.fromEdition] }),
    spanCheck('rulesets', table),
    recordCheck('rulesets', table),
  ],
);

export const rulesetChecks = sqliteTable(
  'ruleset_checks',
  {
    ruleset: text().notNull(),
    ...ownedSpan(),
    ordinal: integer().notNull(),
    /** JSON object: the check as it is written. */
    source: text().notNull(),
  },
  (table) => [
    primaryKey({ columns: [table.ruleset, table.fromEdition, table.ordinal] }),
    foreignKey({
      columns: [table.ruleset, table.fromEdition],
      foreignColumns: [rulesets.id, rulesets.fromEdition],
    }),
    spanCheck('ruleset_checks', table),
  ],
);
