/**
 * Editions, the columns of their compiled index, and the offers, which have a counter of their
 * own. An edition takes rows until it is sealed, in the transaction that publishes it.
 */

import { sql } from 'drizzle-orm';
import { blob, check, integer, primaryKey, sqliteTable, text } from 'drizzle-orm/sqlite-core';

export const editions = sqliteTable(
  'editions',
  {
    number: integer().primaryKey(),
    /** `sha256-` and 64 hex digits of the canonical document. */
    hash: text().notNull(),
    /** ISO 8601 instant, UTC. */
    publishedAt: text('published_at').notNull(),
    note: text(),
    /** Version of the program that published it, and so wrote the columns beside the records. */
    engine: text().notNull(),
    /** JSON object: entities by list. */
    counts: text().notNull(),
    /** False only while it is being published: no other connection ever sees that. */
    sealed: integer({ mode: 'boolean' }).notNull(),
  },
  (table) => [
    check('editions_number', sql`${table.number} >= 1`),
    check('editions_hash', sql`${table.hash} GLOB 'sha256-*' AND length(${table.hash}) = 71`),
    check('editions_counts', sql`json_valid(${table.counts})`),
    check('editions_sealed', sql`${table.sealed} IN (0, 1)`),
  ],
);

/** The edition that brought a row, and the one that ended it: null while it is current. */
export function editionSpan() {
  return {
    fromEdition: integer('from_edition')
      .notNull()
      .references(() => editions.number),
    untilEdition: integer('until_edition').references(() => editions.number),
  };
}

/** The same for a row that belongs to an entity, which answers for the editions being there. */
export function ownedSpan() {
  return {
    fromEdition: integer('from_edition').notNull(),
    untilEdition: integer('until_edition'),
  };
}

export const indexColumns = sqliteTable(
  'index_columns',
  {
    name: text().notNull(),
    ...editionSpan(),
    type: text({ enum: ['uint8', 'int32'] }).notNull(),
    byteOrder: text('byte_order', { enum: ['little'] }).notNull(),
    /** Elements, not bytes. */
    length: integer().notNull(),
    /** Of `data`: 64 hex digits. */
    sha256: text().notNull(),
    data: blob({ mode: 'buffer' }).notNull(),
  },
  (table) => [
    primaryKey({ columns: [table.name, table.fromEdition] }),
    check('index_columns_span', sql`${table.untilEdition} > ${table.fromEdition}`),
    check('index_columns_type', sql`${table.type} IN ('uint8', 'int32')`),
    check('index_columns_byte_order', sql`${table.byteOrder} = 'little'`),
    check(
      'index_columns_length',
      sql`length(${table.data}) = ${table.length} * iif(${table.type} = 'int32', 4, 1)`,
    ),
    check('index_columns_sha256', sql`length(${table.sha256}) = 64`),
  ],
);

export const offers = sqliteTable(
  'offers',
  {
    id: text().primaryKey(),
    /** The part, lot or work that is offered; it need not be in the newest edition any more. */
    for: text().notNull(),
    /** Exact decimal, in the currency of the catalogue. */
    price: text().notNull(),
    condition: text(),
    stock: integer(),
    leadDays: integer('lead_days'),
    supplier: text(),
    sku: text(),
    pack: text(),
    /** The state of the offers that brought this row. */
    fromOffers: integer('from_offers').notNull(),
    /** Canonical JSON: what is given back. */
    record: text().notNull(),
  },
  (table) => [
    check('offers_record', sql`${table.record} ->> '$.id' IS ${table.id}`),
    check('offers_from', sql`${table.fromOffers} >= 1`),
  ],
);

/** One row, once there are offers: how often they have changed, and when last. */
export const offersState = sqliteTable(
  'offers_state',
  {
    only: integer().primaryKey(),
    number: integer().notNull(),
    publishedAt: text('published_at').notNull(),
  },
  (table) => [
    check('offers_state_only', sql`${table.only} = 1`),
    check('offers_state_number', sql`${table.number} >= 1`),
  ],
);
