/**
 * What one offer has for sale, and lots: several things that are bought together, at the price of
 * one offer, or at an unknown price.
 */

import { NOTHING, type Price } from './core/set-purchase.js';
import type { Quantity } from './lot-contents.js';
import type { Money, Offer } from './question.js';

/** So many packs of an offer. */
export interface Bought {
  readonly offer: Offer;
  /** What is in a pack, in the units of the good. */
  readonly pack: number;
  readonly packs: number;
  readonly price: Money;
}

export interface ForSale {
  readonly offer: Offer;
  readonly pack: number;
  /** So many packs at the most. */
  readonly most: number;
}

/**
 * A lot, to be had as often as an offer says. One that nobody offers, where any recorded lot may be
 * bought, is to be had once: nobody knows that there is another.
 */
export class LotForSale {
  readonly id: string;
  /** The question wants it, so it is bought whatever is in it. */
  readonly isWanted: boolean;
  readonly isOffered: boolean;
  /** Of one; each article once. */
  readonly contents: readonly Quantity[];
  readonly #forSale: readonly ForSale[];
  readonly #cheapest = new Map<number, Bought | null>();

  constructor(lot: {
    readonly id: string;
    readonly isWanted: boolean;
    readonly contents: readonly Quantity[];
    readonly forSale: readonly ForSale[];
  }) {
    this.id = lot.id;
    this.isWanted = lot.isWanted;
    this.contents = lot.contents;
    this.isOffered = lot.forSale.length > 0;
    this.#forSale = lot.forSale;
  }

  /** The one offer that covers so many for least; null where none does. */
  cheapest(copies: number): Bought | null {
    let found = this.#cheapest.get(copies);
    if (found === undefined) {
      found = cheapestOf(this.#forSale, copies);
      this.#cheapest.set(copies, found);
    }
    return found;
  }

  /** Null where so many are not to be had. */
  price(copies: number): Price | null {
    if (copies === 0) return NOTHING;
    if (!this.isOffered) {
      return copies > 1 ? null : { ...NOTHING, unpriced: 1 };
    }
    const bought = this.cheapest(copies);
    return bought === null ? null : { ...NOTHING, money: bought.price };
  }
}

/** The one offer that covers so many units for least; null where none does. */
export function cheapestOf(forSale: readonly ForSale[], units: number): Bought | null {
  let best: Bought | null = null;
  for (const { offer, pack, most } of forSale) {
    const packs = Math.ceil(units / pack);
    const price = packs * offer.price;
    if (!Number.isSafeInteger(price)) throw new RangeError(`${offer.record.id}: too dear to count`);
    if (packs <= most && (best === null || price < best.price)) {
      best = { offer, pack, packs, price };
    }
  }
  return best;
}
