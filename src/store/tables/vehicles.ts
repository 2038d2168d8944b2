/**
 * Vehicles with what the works fitted, and what is said of parts on them: rules, statements.
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
import { entityColumns, recordCheck, spanCheck } from './columns.js';
import { ownedSpan } from './editions.js';

export const vehicles = sqliteTable(
  'vehicles',
  {
    ...entityColumns(),
    make: text().notNull(),
    model: text().notNull(),
    variant: text(),
    /** Months, `2006-03`; null for not known or still. */
    builtFrom: text('built_from'),
    builtUntil: text('built_until'),
    layout: text().notNull(),
    basis: text().notNull(),
    /** The vehicle whose layout, facts and fitted parts it has, but for its own. */
    like: text(),
    /** JSON list of the more exact vehicles that took its place. */
    replacedBy: text('replaced_by'),
  },
  (table) => [
    primaryKey({ columns: [table.id, table.fromEdition] }),
    spanCheck('vehicles', table),
    recordCheck('vehicles', table),
  ],
);

export const vehicleFacts = sqliteTable(
  'vehicle_facts',
  {
    vehicle: text().notNull(),
    ...ownedSpan(),
    fact: text().notNull(),
    value: text().notNull(),
  },
  (table) => [
    primaryKey({ columns: [table.vehicle, table.fromEdition, table.fact] }),
    foreignKey({
      columns: [table.vehicle, table.fromEdition],
      foreignColumns: [vehicles.id, vehicles.fromEdition],
    }),
    spanCheck('vehicle_facts', table),
  ],
);

/** Identification numbers that it can have: patterns of 17 characters, `*` for any. */
export const vehicleVins = sqliteTable(
  'vehicle_vins',
  {
    vehicle: text().notNull(),
    ...ownedSpan(),
    ordinal: integer().notNull(),
    pattern: text().notNull(),
    /** First and last serial number, as many digits each; null where the pattern says all. */
    serialFrom: text('serial_from'),
    serialTo: text('serial_to'),
  },
  (table) => [
    primaryKey({ columns: [table.vehicle, table.fromEdition, table.ordinal] }),
    foreignKey({
      columns: [table.vehicle, table.fromEdition],
      foreignColumns: [vehicles.id, vehicles.fromEdition],
    }),
    spanCheck('vehicle_vins', table),
    check('vehicle_vins_pattern', sql`length(${table.pattern}) = 17`),
  ],
);

/**
 * A position without a row here or among the options is not recorded; a row without a part is
 * known to be empty.
 */
export const fittedParts = sqliteTable(
  'fitted_parts',
  {
    vehicle: text().notNull(),
    ...ownedSpan(),
    position: text().notNull(),
    /** `none` where the position has no left and right. */
    hand: text({ enum: ['none', 'left', 'right'] }).notNull(),
    part: text(),
  },
  (table) => [
    primaryKey({ columns: [table.vehicle, table.fromEdition, table.position, table.hand] }),
    foreignKey({
      columns: [table.vehicle, table.fromEdition],
      foreignColumns: [vehicles.id, vehicles.fromEdition],
    }),
    spanCheck('fitted_parts', table),
    check('fitted_parts_hand', sql`${table.hand} IN ('none', 'left', 'right')`),
    index('fitted_parts_part').on(table.part),
  ],
);

/** What the works fitted where a fact has a value, and nobody knows which it has. */
export const fittedOptions = sqliteTable(
  'fitted_options',
  {
    vehicle: text().notNull(),
    ...ownedSpan(),
    position: text().notNull(),
    /** `none` where the position has no left and right. */
    hand: text({ enum: ['none', 'left', 'right'] }).notNull(),
    fact: text().notNull(),
    value: text().notNull(),
    /** Null where it is known to be empty then. */
    part: text(),
  },
  (table) => [
    primaryKey({
      columns: [table.vehicle, table.fromEdition, table.position, table.hand, table.value],
    }),
    foreignKey({
      columns: [table.vehicle, table.fromEdition],
      foreignColumns: [vehicles.id, vehicles.fromEdition],
    }),
    spanCheck('fitted_options', table),
    check('fitted_options_hand', sql`${table.hand} IN ('none', 'left', 'right')`),
    index('fitted_options_part').on(table.part),
  ],
);

export const fittedAdapters = sqliteTable(
  'fitted_adapters',
  {
    vehicle: text().notNull(),
    ...ownedSpan(),
    mating: text().notNull(),
    /** Their order in the mating. */
    ordinal: integer().notNull(),
    part: text().notNull(),
  },
  (table) => [
    primaryKey({ columns: [table.vehicle, table.fromEdition, table.mating, table.ordinal] }),
    foreignKey({
      columns: [table.vehicle, table.fromEdition],
      foreignColumns: [vehicles.id, vehicles.fromEdition],
    }),
    spanCheck('fitted_adapters', table),
  ],
);

export const rules = sqliteTable(
  'rules',
  {
    ...entityColumns(),
    /** JSON list of the layouts it speaks of; null for all that know its words. */
    layouts: text(),
    /** Conditions as they are written, JSON objects. */
    condition: text().notNull(),
    needs: text(),
    excludes: text(),
    note: text(),
    caution: text(),
    because: text().notNull(),
    basis: text().notNull(),
    /** As they are written, JSON objects. */
    recommends: text(),
    consumes: text(),
  },
  (table) => [
    primaryKey({ columns: [table.id, table.fromEdition] }),
    spanCheck('rules', table),
    recordCheck('rules', table),
  ],
);

export const statements = sqliteTable(
  'statements',
  {
    ...entityColumns(),
    part: text().notNull(),
    position: text().notNull(),
    /** JSON object: the part at each other position that it presumes. */
    beside: text().notNull(),
    verdict: text().notNull(),
    basis: text().notNull(),
  },
  (table) => [
    primaryKey({ columns: [table.id, table.fromEdition] }),
    spanCheck('statements', table),
    recordCheck('statements', table),
  ],
);

export const statementVehicles = sqliteTable(
  'statement_vehicles',
  {
    statement: text().notNull(),
    ...ownedSpan(),
    ordinal: integer().notNull(),
    vehicle: text().notNull(),
  },
  (table) => [
    primaryKey({ columns: [table.statement, table.fromEdition, table.ordinal] }),
    foreignKey({
      columns: [table.statement, table.fromEdition],
      foreignColumns: [statements.id, statements.fromEdition],
    }),
    spanCheck('statement_vehicles', table),
  ],
);
