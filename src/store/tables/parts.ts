/**
 * Parts with their roles, numbers, interfaces and values.
 */

import { foreignKey, index, integer, primaryKey, sqliteTable, text } from 'drizzle-orm/sqlite-core';
import { entityColumns, recordCheck, spanCheck, valueChecks, valueColumns } from './columns.js';
import { ownedSpan } from './editions.js';

export const parts = sqliteTable(
  'parts',
  {
    ...entityColumns(),
    name: text().notNull(),
    maker: text(),
    hand: text(),
    supersededBy: text('superseded_by'),
    /** Months, `2006-03`; null for not known or still. */
    builtFrom: text('built_from'),
    builtUntil: text('built_until'),
    /** JSON list of the positions that it fills. */
    spans: text(),
    basis: text().notNull(),
  },
  (table) => [
    primaryKey({ columns: [table.id, table.fromEdition] }),
    spanCheck('parts', table),
    recordCheck('parts', table),
  ],
);

export const partRoles = sqliteTable(
  'part_roles',
  {
    part: text().notNull(),
    ...ownedSpan(),
    ordinal: integer().notNull(),
    role: text().notNull(),
  },
  (table) => [
    primaryKey({ columns: [table.part, table.fromEdition, table.ordinal] }),
    foreignKey({
      columns: [table.part, table.fromEdition],
      foreignColumns: [parts.id, parts.fromEdition],
    }),
    spanCheck('part_roles', table),
  ],
);

export const partNumbers = sqliteTable(
  'part_numbers',
  {
    part: text().notNull(),
    ...ownedSpan(),
    ordinal: integer().notNull(),
    /** As printed. */
    number: text().notNull(),
    /** Whose number it is. */
    numberOf: text('number_of').notNull(),
  },
  (table) => [
    primaryKey({ columns: [table.part, table.fromEdition, table.ordinal] }),
    foreignKey({
      columns: [table.part, table.fromEdition],
      foreignColumns: [parts.id, parts.fromEdition],
    }),
    spanCheck('part_numbers', table),
    index('part_numbers_number').on(table.number),
  ],
);

/** A face with alternatives has a row for each; one that is absent has no kind. */
export const interfaces = sqliteTable(
  'interfaces',
  {
    part: text().notNull(),
    ...ownedSpan(),
    interface: text().notNull(),
    alternative: integer().notNull(),
    kind: text(),
    side: text(),
    optional: integer({ mode: 'boolean' }).notNull(),
    absent: integer({ mode: 'boolean' }).notNull(),
    basis: text().notNull(),
  },
  (table) => [
    primaryKey({
      columns: [table.part, table.fromEdition, table.interface, table.alternative],
    }),
    foreignKey({
      columns: [table.part, table.fromEdition],
      foreignColumns: [parts.id, parts.fromEdition],
    }),
    spanCheck('interfaces', table),
  ],
);

export const interfaceParameters = sqliteTable(
  'interface_parameters',
  {
    part: text().notNull(),
    ...ownedSpan(),
    interface: text().notNull(),
    alternative: integer().notNull(),
    parameter: text().notNull(),
    ...valueColumns(),
  },
  (table) => [
    primaryKey({
      columns: [
        ...([table.part, table.fromEdition, table.interface] as const),
        ...([table.alternative, table.parameter, table.item] as const),
      ],
    }),
    foreignKey({
      columns: [table.part, table.fromEdition, table.interface, table.alternative],
      foreignColumns: [
        ...([interfaces.part, interfaces.fromEdition] as const),
        ...([interfaces.interface, interfaces.alternative] as const),
      ],
    }),
    spanCheck('interface_parameters', table),
    ...valueChecks('interface_parameters', table),
  ],
);

export const partValues = sqliteTable(
  'part_values',
  {
    part: text().notNull(),
    ...ownedSpan(),
    value: text().notNull(),
    ...valueColumns(),
  },
  (table) => [
    primaryKey({ columns: [table.part, table.fromEdition, table.value, table.item] }),
    foreignKey({
      columns: [table.part, table.fromEdition],
      foreignColumns: [parts.id, parts.fromEdition],
    }),
    spanCheck('part_values', table),
    ...valueChecks('part_values', table),
  ],
);
