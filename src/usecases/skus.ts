/**
 * The order codes of the price and stock list, and what each of them is the code of. They are the
 * shop's own and are compared sign by sign.
 */

import type { OfferRecord } from '../domain/catalogue/document.js';
import { nearest } from '../domain/catalogue/faults.js';

/** The price and stock list at one moment, as far as names are looked up in it. */
export class Skus {
  /** Of the list; 0 before there was any. */
  readonly number: number;
  readonly #bySku = new Map<string, Set<string>>();

  constructor(number: number, offers: readonly OfferRecord[]) {
    this.number = number;
    for (const { sku, for: offered } of offers) {
      if (sku === undefined) continue;
      const known = this.#bySku.get(sku);
      if (known === undefined) this.#bySku.set(sku, new Set([offered]));
      else known.add(offered);
    }
  }

  /** Ids of the parts, lots and works that are offered under the code. */
  find(sku: string): readonly string[] {
    return [...(this.#bySku.get(sku) ?? [])];
  }

  /** A code that was probably meant; null where none is near. */
  near(sku: string): string | null {
    const small = new Map([...this.#bySku.keys()].map((known) => [known.toLowerCase(), known]));
    return small.get(nearest(sku, small.keys()) ?? '') ?? null;
  }
}
