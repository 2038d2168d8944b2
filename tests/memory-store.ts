/**
 * An edition store in memory, for tests of use-cases and doors that are not about storage.
 */

import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { isDeepStrictEqual } from 'node:util';
import { readNdjson } from '../src/contract/ndjson-text.js';
import type { OfferRecord } from '../src/domain/catalogue/document.js';
import { Library } from '../src/usecases/library.js';
import type {
  EditionHead,
  EditionStore,
  KeyRecord,
  KeyRequest,
  KeyStore,
  MadeKey,
  OffersHead,
  OffersState,
  PublishRequest,
  PublishResult,
  StoredEdition,
} from '../src/usecases/ports.js';
import { prepareEdition, publishEdition } from '../src/usecases/publish-edition.js';

export class MemoryStore implements EditionStore {
  readonly #editions: StoredEdition[] = [];
  #offers: readonly OfferRecord[] = [];
  #offersNumber = 0;

  latest(): EditionHead | null {
    return this.#editions.at(-1)?.head ?? null;
  }

  edition(number: number): EditionHead | null {
    return this.#editions[number - 1]?.head ?? null;
  }

  editions(): readonly EditionHead[] {
    return this.#editions.map(({ head }) => head).reverse();
  }

  load(number: number): StoredEdition {
    const stored = this.#editions[number - 1];
    if (stored === undefined) throw new Error(`no edition ${number}`);
    return stored;
  }

  publish(request: PublishRequest): PublishResult {
    const { document, hash, publishedAt, note, columns } = request;
    const latest = this.latest();
    this.#replaceOffers(request.offers ?? this.#offers);
    const offers = this.offersHead();
    if (latest?.hash === hash) return { edition: latest, isNew: false, offers };
    const number = this.#editions.length + 1;
    const head: EditionHead = { number, hash, publishedAt, note, counts: {} };
    this.#editions.push({ head, document, columns });
    return { edition: head, isNew: true, offers };
  }

  offersHead(): OffersHead {
    return { number: this.#offersNumber, publishedAt: null };
  }

  offers(): OffersState {
    return { head: this.offersHead(), records: this.#offers };
  }

  /** The counter grows only if they differ. */
  #replaceOffers(offers: readonly OfferRecord[]): void {
    if (isDeepStrictEqual(offers, this.#offers)) return;
    this.#offers = offers;
    this.#offersNumber += 1;
  }
}

/** Keys in memory, told apart by their texts. */
export class MemoryKeys implements KeyStore {
  readonly #made: { key: KeyRecord; readonly text: string }[] = [];

  keys(): readonly KeyRecord[] {
    return this.#made.map(({ key }) => key);
  }

  key(id: string): KeyRecord | null {
    return this.keys().find((one) => one.id === id) ?? null;
  }

  pages(): readonly string[] {
    return this.keys().flatMap(({ origins, endedAt }) => (endedAt === null ? origins : []));
  }

  addKey(request: KeyRequest, madeAt: string): MadeKey {
    const id = `key-${this.#made.length + 1}`.padEnd(8, 'a');
    const key = { id, ...request, madeAt, endedAt: null };
    const made = { key, text: `fy_${id}` };
    this.#made.push(made);
    return { ...made };
  }

  endKey(id: string, endedAt: string): void {
    const found = this.#made.find(({ key }) => key.id === id);
    if (found !== undefined) found.key = { ...found.key, endedAt };
  }

  recognise(text: string): KeyRecord | null {
    const found = this.#made.find((one) => one.text === text && one.key.endedAt === null);
    return found?.key ?? null;
  }
}

export const sha256 = (text: string): string => createHash('sha256').update(text).digest('hex');

/** A library of the given documents, published in order. */
export function libraryOf(...documents: readonly unknown[]): Library {
  const store = new MemoryStore();
  const deps = { store, clock: () => '2026-01-01T00:00:00.000Z' };
  for (const raw of documents) publishEdition(deps, prepareEdition(raw, sha256), null);
  return new Library(store, sha256);
}

/** The demo catalogue as it is written. */
export function demoDocument(): Record<string, unknown> {
  const url = new URL('../db/demo/catalogue.ndjson', import.meta.url);
  const { value, faults } = readNdjson(readFileSync(url, 'utf8'));
  if (faults.length > 0) throw new Error(JSON.stringify(faults[0]));
  return value as Record<string, unknown>;
}

/** The example of the author's page, which has every field of the document form. */
export function exampleDocument(): Record<string, unknown> {
  const url = new URL('../db/example.json', import.meta.url);
  return JSON.parse(readFileSync(url, 'utf8')) as Record<string, unknown>;
}
