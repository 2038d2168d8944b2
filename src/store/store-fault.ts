/**
 * Turns what SQLite, its binding and the file system throw into a `StoreFault`, whose remedy
 * tells the operator in one line what to do. What is not known stays what it is: a mistake of
 * the program is no fault of the store.
 */

import { StoreFault } from '../usecases/ports.js';

interface Explanation {
  /** The start of the codes that it explains. */
  readonly code: string;
  readonly says: (path: string, message: string) => string;
  readonly remedy: string;
}

const RESTORE = 'restore it from a backup';

/** By SQLite's result codes (sqlite.org/rescode.html), extended ones included. */
const EXPLANATIONS: readonly Explanation[] = [
  {
    code: 'SQLITE_NOTADB',
    says: (path) => `${path} is no SQLite database`,
    remedy: 'name the right file, or restore it from a backup',
  },
  {
    code: 'SQLITE_CORRUPT',
    says: (path, message) => `${path} is damaged: ${message}`,
    remedy: RESTORE,
  },
  {
    code: 'SQLITE_FULL',
    says: (path) => `the disk of ${path} is full`,
    remedy: 'make room and try again; nothing of this change was stored',
  },
  {
    code: 'SQLITE_BUSY',
    says: (path) => `another program is using ${path}`,
    remedy: 'try again when it is done; only one program writes at a time',
  },
  {
    code: 'SQLITE_READONLY',
    says: (path) => `${path} cannot be written`,
    remedy: 'let this user write the file and its directory, or open it for reading only',
  },
  {
    code: 'SQLITE_CANTOPEN',
    says: (path) => `${path} cannot be opened`,
    remedy: 'let this user read and write the file and its directory',
  },
  {
    code: 'SQLITE_IOERR',
    says: (path, message) => `the disk of ${path} reports an error: ${message}`,
    remedy: 'check the disk, start again and look at the latest edition before you repeat a change',
  },
  {
    code: 'SQLITE_CONSTRAINT',
    says: (path, message) => `${path} refuses a row: ${message}`,
    remedy: 'nothing of this change was stored; verify the database',
  },
  {
    code: 'SQLITE_',
    says: (path, message) => `${path} cannot be used: ${message}`,
    remedy: `verify the database, or ${RESTORE}`,
  },
  {
    code: 'ERR_DLOPEN_FAILED',
    says: (_, message) => `the SQLite module does not load in Node ${process.version}: ${message}`,
    remedy: 'run "npm rebuild better-sqlite3" with the Node that runs this program',
  },
];

/** The fault that an error means; the error itself where it is none of the store's. */
export function storeFaultOf(error: unknown, path: string): unknown {
  if (error instanceof StoreFault || !(error instanceof Error)) return error;
  const code = 'code' in error && typeof error.code === 'string' ? error.code : '';
  const found = EXPLANATIONS.find((one) => code.startsWith(one.code));
  if (found === undefined) return error;
  const [message = ''] = error.message.split('\n');
  return new StoreFault(found.says(path, message), found.remedy, { cause: error });
}

/** Runs a step of the store; what it throws is a `StoreFault` wherever the store is at fault. */
export function withStoreFaults<Result>(path: string, step: () => Result): Result {
  try {
    return step();
  } catch (error) {
    throw storeFaultOf(error, path);
  }
}

/** What is stored is not what was published. */
export function damaged(what: string, options?: ErrorOptions): StoreFault {
  return new StoreFault(what, 'restore the database from a backup', options);
}
