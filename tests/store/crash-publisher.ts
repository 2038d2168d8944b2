/**
 * A program of its own that publishes and is killed on the way: a real SIGKILL, sent to itself
 * before the chosen statement, with so small a cache that half of the edition lies in the
 * write-ahead log already.
 *
 *   node --import tsx tests/store/crash-publisher.ts DATABASE STATEMENT
 */

import type Database from 'better-sqlite3';
import { openStore } from '../../src/store/sqlite.js';
import { watchedLibrary } from './faulty-library.js';
import { demo, NEXT_DAY } from './prepared.js';

const [path = '', wanted = ''] = process.argv.slice(2);
let number = 0;
let isPublishing = false;
const watched = watchedLibrary(() => {
  if (!isPublishing) return;
  number += 1;
  if (number === Number(wanted)) process.kill(process.pid, 'SIGKILL');
});
const library = {
  ...watched,
  open: (file: string, options: Database.Options) => {
    const connection = watched.open(file, options);
    connection.pragma('cache_size = 2');
    return connection;
  },
};
const store = openStore(path, { mode: 'read-write', library });
isPublishing = true;
store.publish({ ...demo.content, publishedAt: NEXT_DAY, note: null });
store.close();
process.stdout.write(`published after ${number} statements\n`);
