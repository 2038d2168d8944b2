/**
 * The editions at hand: the newest, and the pinned ones that were asked for last. An edition is
 * read from the store and compiled once, then answers from memory.
 */

import type { Catalogue } from '../domain/catalogue/catalogue.js';
import { compileDocument } from '../domain/catalogue/compile.js';
import { CompiledIndex } from '../domain/index/compiled-index.js';
import { BUILT_IN_KINDS } from '../domain/kinds/registry.js';
import { QuestionError, StoreFault } from './errors.js';
import { columnsOf } from './index-columns.js';
import type { Digest, EditionHead, EditionStore, IndexColumn } from './ports.js';
import { Skus } from './skus.js';

export interface Edition {
  readonly head: EditionHead;
  readonly catalogue: Catalogue;
  readonly index: CompiledIndex;
}

/** So many editions are kept in memory, the newest among them, and so many lists of offers. */
const KEPT = 4;

function dropOldest(kept: Map<number, unknown>): void {
  for (const oldest of kept.keys()) {
    if (kept.size <= KEPT) break;
    kept.delete(oldest);
  }
}

export class Library {
  /** Of what answers name by what they contain. */
  readonly digest: Digest;
  readonly #store: EditionStore;
  readonly #kept = new Map<number, Edition>();
  readonly #skus = new Map<number, Skus>();

  constructor(store: EditionStore, digest: Digest) {
    this.#store = store;
    this.digest = digest;
  }

  /** The newest edition where `number` is null. Throws `QuestionError` where there is none. */
  edition(number: number | null): Edition {
    return this.#keep(this.head(number));
  }

  /** The same, without loading it. */
  head(number: number | null): EditionHead {
    const head = number === null ? this.#store.latest() : this.find(number);
    if (head !== null) return head;
    if (number === null) {
      throw new QuestionError([{ at: null, code: 'no-edition', data: {} }]);
    }
    const data = { edition: number };
    throw new QuestionError([{ at: 'edition', code: 'unknown-edition', data }]);
  }

  /**
   * A library that has one edition and one state of the price and stock list at hand for as long
   * as it is held itself, whatever is published or asked for meanwhile.
   */
  holding(edition: Edition, skus: Skus): Library {
    const own = new Library(this.#store, this.digest);
    own.#kept.set(edition.head.number, edition);
    own.#skus.set(skus.number, skus);
    return own;
  }

  /** The head of the newest edition; null where nothing has been published. */
  newest(): EditionHead | null {
    return this.#store.latest();
  }

  /** The head of an edition; null where there is none of this number. */
  find(number: number): EditionHead | null {
    // An edition never changes, so one that is at hand need not be looked up.
    return this.#kept.get(number)?.head ?? this.#store.edition(number);
  }

  /** All heads, the newest first. */
  editions(): readonly EditionHead[] {
    return this.#store.editions();
  }

  /**
   * The price and stock list as names are looked up in it: the newest where `number` is null, and
   * where the one of the number is no longer at hand.
   */
  skus(number: number | null): Skus {
    const newest = this.#store.offersHead().number;
    const known = this.#skus.get(number ?? newest) ?? this.#skus.get(newest);
    if (known !== undefined) return known;
    const { head, records } = this.#store.offers();
    const skus = new Skus(head.number, records);
    this.#skus.set(skus.number, skus);
    dropOldest(this.#skus);
    return skus;
  }

  #keep(head: EditionHead): Edition {
    const known = this.#kept.get(head.number);
    if (known !== undefined) {
      this.#kept.delete(head.number);
      this.#kept.set(head.number, known);
      return known;
    }
    const edition = this.#load(head);
    this.#kept.set(head.number, edition);
    dropOldest(this.#kept);
    return edition;
  }

  /** What was published without a fault compiles without one, unless a kind has changed. */
  #load(head: EditionHead): Edition {
    const { document, columns } = this.#store.load(head.number);
    const { catalogue, faults } = compileDocument(document, BUILT_IN_KINDS);
    if (catalogue !== null) return { head, catalogue, index: indexOf(head, catalogue, columns) };
    const [first] = faults;
    throw new StoreFault(
      `edition ${head.number} no longer compiles: ${first?.pointer ?? ''} ${first?.text ?? ''}`,
      'publish the catalogue again with this program, or answer with the program that published it',
    );
  }
}

function indexOf(
  head: EditionHead,
  catalogue: Catalogue,
  columns: readonly IndexColumn[],
): CompiledIndex {
  try {
    return new CompiledIndex(catalogue, columnsOf(columns));
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    throw new StoreFault(
      `the stored index of edition ${head.number} is damaged: ${error.message}`,
      'restore the database from a backup, or publish the catalogue again',
      { cause: error },
    );
  }
}
