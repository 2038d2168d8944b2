/**
 * Columns and constraints that tables have in common: those of an entity, which keeps its exact
 * source record beside them, those of the rows that belong to one, and those of a value.
 */

import { type AnyColumn, sql } from 'drizzle-orm';
import { check, integer, real, text } from 'drizzle-orm/sqlite-core';
import { editionSpan } from './editions.js';

export function entityColumns() {
  return {
    id: text().notNull(),
    ...editionSpan(),
    /** Canonical JSON of the source record: the truth, which a load gives back. */
    record: text().notNull(),
    /** SHA-256 of the record, the other columns and the rows that belong to it, 64 hex digits. */
    digest: text().notNull(),
  };
}

/** `name` is that of the table: constraints are named after it. */
export function spanCheck(
  name: string,
  table: { readonly fromEdition: AnyColumn; readonly untilEdition: AnyColumn },
) {
  return check(`${name}_span`, sql`${table.untilEdition} > ${table.fromEdition}`);
}

/** The record is an object with the id of the row. */
export function recordCheck(
  name: string,
  table: { readonly id: AnyColumn; readonly record: AnyColumn },
) {
  return check(`${name}_record`, sql`${table.record} ->> '$.id' IS ${table.id}`);
}

/**
 * What a value allows. The ends are exact texts, a decimal (`56.05`) or a fraction (`43/12`), in
 * the base unit of the dimension; null is unbounded. A code has no ends.
 */
export function valueColumns() {
  return {
    /** 0 for a single value; lists and sets have one row for each of their items. */
    item: integer().notNull(),
    /** As recorded. */
    text: text().notNull(),
    form: text({ enum: ['number', 'code', 'list', 'range', 'set'] }).notNull(),
    code: text(),
    low: text(),
    lowOpen: integer('low_open', { mode: 'boolean' }),
    high: text(),
    highOpen: integer('high_open', { mode: 'boolean' }),
    /** Symbol of the base unit; empty for pure numbers and codes. */
    unit: text().notNull(),
    basis: text().notNull(),
    /** What it was read with, where the record says so. */
    tool: text(),
    /** For sorting and for rough ranges only; nothing is decided by it. */
    lowAbout: about('low'),
    highAbout: about('high'),
  };
}

/** The number of an exact text, in floating point. */
function about(end: 'low' | 'high') {
  const column = sql.identifier(end);
  const slash = sql`instr(${column}, '/')`;
  const numerator = sql`CAST(substr(${column}, 1, ${slash} - 1) AS REAL)`;
  const denominator = sql`CAST(substr(${column}, ${slash} + 1) AS REAL)`;
  const number = sql`iif(${slash} > 0, ${numerator} / ${denominator}, CAST(${column} AS REAL))`;
  return real(`${end}_about`).generatedAlwaysAs(number, { mode: 'virtual' });
}

export function valueChecks(
  name: string,
  table: { readonly form: AnyColumn; readonly code: AnyColumn; readonly lowOpen: AnyColumn },
) {
  const { form, code, lowOpen } = table;
  return [
    check(`${name}_form`, sql`${form} IN ('number', 'code', 'list', 'range', 'set')`),
    check(`${name}_code`, sql`(${code} IS NULL) = (${lowOpen} IS NOT NULL)`),
  ];
}

/** Columns of a parameter of a kind, or of a value of a role. */
export function specColumns() {
  return {
    name: text(),
    type: text().notNull(),
    /** As declared. */
    unit: text().notNull(),
    tool: text(),
    /** Exact ends of what is usual, in the base unit. */
    usualLow: text('usual_low'),
    usualHigh: text('usual_high'),
    baseUnit: text('base_unit').notNull(),
  };
}
