/**
 * What the use-cases need from outside: a store of editions and a clock.
 *
 * All of it is synchronous: an edition is loaded once and answers from memory after that.
 */

import type { Catalogue } from '../domain/catalogue/catalogue.js';
import type { CatalogueDocument, OfferRecord } from '../domain/catalogue/document.js';
import type { KeyRecord, KeyRequest, MadeKey } from './keys.js';

export { StoreFault } from './errors.js';
export type { KeyRecord, KeyRequest, MadeKey } from './keys.js';

/** One immutable, numbered state of the catalogue. */
export interface EditionHead {
  /** 1, 2, 3 … without gaps. */
  readonly number: number;
  /** `sha256-` and 64 hex digits of the canonical document without its offers. */
  readonly hash: string;
  /** ISO 8601 instant, UTC. */
  readonly publishedAt: string;
  readonly note: string | null;
  /** How many entities of each list it has. */
  readonly counts: Readonly<Record<string, number>>;
}

export interface OffersHead {
  /** 0 before the first offers, then 1, 2, 3 … */
  readonly number: number;
  readonly publishedAt: string | null;
}

/** The price and stock list as it stands. */
export interface OffersState {
  readonly head: OffersHead;
  /** By id. */
  readonly records: readonly OfferRecord[];
}

export interface PublishRequest {
  /** Canonical, without offers. */
  readonly document: CatalogueDocument;
  /** The same, compiled: what queries over its rows need. */
  readonly catalogue: Catalogue;
  readonly hash: string;
  readonly publishedAt: string;
  readonly note: string | null;
  /** Null leaves the offers as they are. */
  readonly offers: readonly OfferRecord[] | null;
  /** The compiled index of the edition, as columns. */
  readonly columns: readonly IndexColumn[];
}

/** One typed column of an edition's compiled index. */
export interface IndexColumn {
  readonly name: string;
  readonly data: Uint8Array | Int32Array;
}

export interface PublishResult {
  readonly edition: EditionHead;
  /** False where the latest edition already had this very content. */
  readonly isNew: boolean;
  readonly offers: OffersHead;
}

export interface StoredEdition {
  readonly head: EditionHead;
  readonly document: CatalogueDocument;
  readonly columns: readonly IndexColumn[];
}

export interface EditionStore {
  latest(): EditionHead | null;
  edition(number: number): EditionHead | null;
  /** All editions, the newest first. */
  editions(): readonly EditionHead[];
  /** Throws `StoreFault` where what is stored does not agree with its hash. */
  load(number: number): StoredEdition;
  /** One transaction: all of it is stored, or nothing. */
  publish(request: PublishRequest): PublishResult;
  offersHead(): OffersHead;
  /** Of one moment: what another program puts in their place meanwhile is not mixed in. */
  offers(): OffersState;
}

/** The keys of the service. They are of no edition, and lie beside them. */
export interface KeyStore {
  /** All that were ever made, the oldest first. */
  keys(): readonly KeyRecord[];
  key(id: string): KeyRecord | null;
  /** Origins of the pages that have a key which stands. */
  pages(): readonly string[];
  addKey(request: KeyRequest, madeAt: string): MadeKey;
  endKey(id: string, endedAt: string): void;
  /**
   * The key that the text is; null where there is none, or it has ended. How long it takes does not
   * hang on how much of a wrong text is right.
   */
  recognise(text: string): KeyRecord | null;
}

/** What receivers are told: the same bytes under the same id, however often. */
export interface Message {
  readonly id: string;
  /** JSON, in UTF-8. */
  readonly body: string;
}

/** Why a receiver was not told; an open list. */
export type NotTold =
  | 'forbidden-address'
  | 'unknown-host'
  | 'no-connection'
  | 'timeout'
  | 'redirect'
  | 'gone'
  | 'status';

/** What came of telling one receiver. */
export interface Telling {
  /** As the configuration calls it: no address, which may have a secret in it. */
  readonly receiver: string;
  /** Null where it was told. */
  readonly failure: NotTold | null;
  /** Of its last answer; null where there was none. */
  readonly status: number | null;
  readonly attempts: number;
}

/** Those who are told when an edition is published. */
export interface Notifier {
  /** Where the service answers, such as `https://fits.example`; null where nobody said. */
  readonly service: string | null;
  /** Tells each of them, in the order of the configuration. Never rejects for a receiver. */
  tell(message: Message): Promise<readonly Telling[]>;
}

/** Now, as an ISO 8601 instant in UTC. */
export type Clock = () => string;

/** SHA-256 of a text in UTF-8, as 64 lower-case hex digits. */
export type Digest = (text: string) => string;
