import { defineConfig } from 'vitest/config';

// Two workers: each may hold a compiled catalogue and a native SQLite handle. Forks, since a
// worker thread that exits while a native handle is open can bring the whole process down.
export default defineConfig({
  // The very file that Node takes: another one would be another copy, and copies do not mix.
  resolve: { alias: [{ find: /^graphql$/, replacement: 'graphql/index.js' }] },
  test: {
    include: ['tests/**/*.test.ts'],
    pool: 'forks',
    maxWorkers: 2,
    testTimeout: 180_000,
    hookTimeout: 180_000,
  },
});
