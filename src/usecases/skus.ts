/**
 * The price and stock list, its order codes, and what each of them is the code of. They are the
 * shop's own and are compared sign by sign.
 */

import type { OfferRecord } from '../domain/catalogue/document.js';
import { nearest } from '../domain/catalogue/faults.js';
import { plusSignsIn } from '../domain/catalogue/part-number.js';

/** The price and stock list at one moment. */
export class Skus {
  /** Of the list; 0 before there was any. */
  readonly number: number;
  readonly offers: readonly OfferRecord[];
  /** The most plus signs that one of the codes has. */
  readonly plusSigns: number;
  readonly #bySku = new Map<string, Set<string>>();
  /** The codes in small letters, once one that was meant has been looked for. */
  #small: ReadonlyMap<string, string> | null = null;

  constructor(number: number, offers: readonly OfferRecord[]) {
    this.number = number;
    this.offers = offers;
    for (const { sku, for: offered } of offers) {
      if (sku === undefined) continue;
      const known = this.#bySku.get(sku);
      if (known === undefined) this.#bySku.set(sku, new Set([offered]));
      else known.add(offered);
    }
    let most = 0;
    for (const sku of this.#bySku.keys()) most = Math.max(most, plusSignsIn(sku));
    this.plusSigns = most;
  }

  /** Ids of the parts, lots and works that are offered under the code. */
  find(sku: string): readonly string[] {
    return [...(this.#bySku.get(sku) ?? [])];
  }

  /** A code that was probably meant; null where none is near. */
  near(sku: string): string | null {
    this.#small ??= new Map([...this.#bySku.keys()].map((known) => [known.toLowerCase(), known]));
    return this.#small.get(nearest(sku, this.#small.keys()) ?? '') ?? null;
  }
}
