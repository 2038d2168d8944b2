/**
 * Where drizzle-kit finds the tables and writes migrations: `npx drizzle-kit generate`.
 *
 * What it cannot write is added to a migration by hand: STRICT, WITHOUT ROWID, triggers. Left
 * out: a connection. The program migrates its own databases when it opens them.
 */

import { defineConfig } from 'drizzle-kit';

export default defineConfig({
  dialect: 'sqlite',
  schema: './src/store/tables/*.ts',
  out: './db/migrations',
});
