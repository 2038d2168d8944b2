/**
 * The store of editions in one SQLite file. Any number of programs may read it, one writes.
 *
 * Publishing is one transaction, and ends only when what was written has been read back and
 * agrees with its hash. A program that dies in the middle leaves what was there before.
 */

import type Database from 'better-sqlite3';
import {
  type EditionHead,
  type EditionStore,
  type KeyRecord,
  type KeyRequest,
  type KeyStore,
  type MadeKey,
  type OffersHead,
  type OffersState,
  type PublishRequest,
  type PublishResult,
  type StoredEdition,
  StoreFault,
} from '../usecases/ports.js';
import { type OpenMode, openConnection, type SqliteLibrary } from './connection.js';
import { EditionReader } from './edition-reader.js';
import { EditionWriter } from './edition-writer.js';
import { KeyTable } from './key-store.js';
import { OfferStore } from './offer-store.js';
import { withStoreFaults } from './store-fault.js';
import { type VerifyReport, verifyStore } from './verify.js';

export type { OpenMode, SqliteLibrary } from './connection.js';
export type { VerifyReport } from './verify.js';

export interface OpenOptions {
  readonly mode: OpenMode;
  /** The SQLite that is used; the bundled one where left out. */
  readonly library?: SqliteLibrary;
}

export interface OpenedStore extends EditionStore, KeyStore {
  /** Compares everything that is stored with everything else; says all that does not agree. */
  verify(): VerifyReport;
  close(): void;
}

/**
 * Opens a database file, or `:memory:`, and brings its schema up to date unless it is opened for
 * reading only.
 *
 * @throws StoreFault where it cannot be used, with what to do about it.
 */
export function openStore(path: string, { mode, library }: OpenOptions): OpenedStore {
  const connection = openConnection(path, mode, library);
  try {
    return withStoreFaults(path, () => new SqliteStore(connection, path));
  } catch (error) {
    connection.close();
    throw error;
  }
}

class SqliteStore implements OpenedStore {
  readonly #connection: Database.Database;
  readonly #path: string;
  readonly #reader: EditionReader;
  readonly #offers: OfferStore;
  readonly #keys: KeyTable;
  #writer: EditionWriter | null = null;

  constructor(connection: Database.Database, path: string) {
    this.#connection = connection;
    this.#path = path;
    this.#reader = new EditionReader(connection);
    this.#offers = new OfferStore(connection);
    this.#keys = new KeyTable(connection);
  }

  latest(): EditionHead | null {
    return withStoreFaults(this.#path, () => this.#reader.latest());
  }

  edition(number: number): EditionHead | null {
    return withStoreFaults(this.#path, () => this.#reader.edition(number));
  }

  editions(): readonly EditionHead[] {
    return withStoreFaults(this.#path, () => this.#reader.editions());
  }

  load(number: number): StoredEdition {
    return this.#inOneState(() => this.#reader.load(number));
  }

  offersHead(): OffersHead {
    return withStoreFaults(this.#path, () => this.#offers.head());
  }

  offers(): OffersState {
    return this.#inOneState(() => ({ head: this.#offers.head(), records: this.#offers.offers() }));
  }

  keys(): readonly KeyRecord[] {
    return withStoreFaults(this.#path, () => this.#keys.keys());
  }

  key(id: string): KeyRecord | null {
    return withStoreFaults(this.#path, () => this.#keys.key(id));
  }

  pages(): readonly string[] {
    return withStoreFaults(this.#path, () => this.#keys.pages());
  }

  addKey(request: KeyRequest, madeAt: string): MadeKey {
    this.#checkWritable('to make a key');
    return withStoreFaults(this.#path, () => this.#keys.addKey(request, madeAt));
  }

  endKey(id: string, endedAt: string): void {
    this.#checkWritable('to end a key');
    withStoreFaults(this.#path, () => this.#keys.endKey(id, endedAt));
  }

  recognise(text: string): KeyRecord | null {
    return withStoreFaults(this.#path, () => this.#keys.recognise(text));
  }

  #checkWritable(purpose: string): void {
    if (!this.#connection.readonly) return;
    throw new StoreFault(
      `${this.#path} is opened for reading only`,
      `open it for writing ${purpose}`,
    );
  }

  publish(request: PublishRequest): PublishResult {
    this.#checkWritable('to publish');
    return withStoreFaults(this.#path, () => {
      this.#writer ??= new EditionWriter(this.#connection);
      const writer = this.#writer;
      const transaction = this.#connection.transaction(() => this.#publish(writer, request));
      return transaction.immediate();
    });
  }

  #publish(writer: EditionWriter, request: PublishRequest): PublishResult {
    const latest = this.#reader.latest();
    const offers =
      request.offers === null
        ? this.#offers.head()
        : this.#offers.replace(request.offers, request.publishedAt);
    if (latest?.hash === request.hash) return { edition: latest, isNew: false, offers };
    const number = (latest?.number ?? 0) + 1;
    writer.write(number, request);
    return { edition: this.#reader.check(number), isNew: true, offers };
  }

  verify(): VerifyReport {
    const reports: VerifyReport[] = [];
    try {
      this.#inOneState(() => {
        reports.push(verifyStore(this.#connection, this.#path, this.#reader, this.#offers));
      });
    } catch (error) {
      // A file can be so damaged that a transaction that only reads fails when it ends.
      const [report] = reports;
      if (report === undefined || !(error instanceof StoreFault)) throw error;
      return { ...report, disagreements: [...report.disagreements, error.message] };
    }
    const [report] = reports;
    if (report === undefined) throw new Error('a verification ended without a report');
    return report;
  }

  close(): void {
    this.#connection.close();
  }

  /** What another program publishes meanwhile is not seen. */
  #inOneState<Result>(read: () => Result): Result {
    return withStoreFaults(this.#path, () => this.#connection.transaction(read).deferred());
  }
}
