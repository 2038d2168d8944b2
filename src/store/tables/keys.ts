/**
 * The keys of the service. Of the key itself only its digest is kept: whoever reads the file can
 * show none.
 */

import { sql } from 'drizzle-orm';
import { blob, check, sqliteTable, text } from 'drizzle-orm/sqlite-core';

export const keys = sqliteTable(
  'keys',
  {
    id: text().primaryKey(),
    name: text().notNull(),
    /** JSON list. */
    scopes: text().notNull(),
    /** JSON list of the pages that may use it; empty for a key that is kept secret. */
    origins: text().notNull(),
    /** ISO 8601 instants, UTC. */
    madeAt: text('made_at').notNull(),
    endedAt: text('ended_at'),
    /** SHA-256 of the whole text of the key. */
    sha256: blob({ mode: 'buffer' }).notNull(),
  },
  (table) => [
    check('keys_id', sql`length(${table.id}) = 8`),
    check('keys_scopes', sql`json_array_length(${table.scopes}) >= 1`),
    check('keys_origins', sql`json_array_length(${table.origins}) >= 0`),
    check('keys_sha256', sql`length(${table.sha256}) = 32`),
  ],
);
