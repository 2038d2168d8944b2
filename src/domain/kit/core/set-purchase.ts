/**
 * Which sets to buy whole so that everything needed is come by at the least cost, as plain data:
 * goods that are needed and have a price of their own, and sets of them, each to be had once or
 * several times.
 *
 * What is in a set that is bought costs nothing more; what of it is not needed earns nothing. The
 * search is exact: it takes sets in and leaves them out in the order given, as long as the sets
 * taken, with all undecided ones for nothing, are not dearer than the best found.
 */

/** Compared number by number, in this order; whole numbers from 0. */
export interface Price {
  /** Things without a price. */
  readonly unpriced: number;
  readonly money: number;
  /** Things without a price that are worth no money: no set is paid for to have them. */
  readonly minor: number;
}

export interface Good {
  /** So much of it is needed, in whole units. */
  readonly demand: number;
  /**
   * What so much of it costs on its own; null where it cannot be had. No number ever falls as the
   * quantity grows, nor does what cannot be had become to be had.
   */
  readonly own: (quantity: number) => Price | null;
}

export interface GoodsSet {
  /** Of one, of two, and so on, as many as may be bought; no number ever falls. */
  readonly prices: readonly Price[];
  readonly contents: readonly { readonly good: number; readonly quantity: number }[];
}

export interface SetPurchase {
  /** Indices of the sets that are bought, ascending; twice where it is bought twice. */
  readonly sets: readonly number[];
  /** Of the sets, and of what is bought on its own. */
  readonly price: Price;
}

export const NOTHING: Price = { unpriced: 0, money: 0, minor: 0 };

/**
 * The cheapest purchase; of several the one with the fewest sets, then the one whose sets come
 * first. Null where what is needed cannot be had for that much money.
 */
export function cheapestSets(
  goods: readonly Good[],
  sets: readonly GoodsSet[],
  mostMoney = Number.POSITIVE_INFINITY,
): SetPurchase | null {
  return new Search(goods, sets, mostMoney).run();
}

export function plus(a: Price, b: Price): Price {
  return {
    unpriced: a.unpriced + b.unpriced,
    money: a.money + b.money,
    minor: a.minor + b.minor,
  };
}

/** Below 0 where `a` comes first. */
export function comparePrices(a: Price, b: Price): number {
  return a.unpriced - b.unpriced || a.money - b.money || a.minor - b.minor;
}

class Search {
  readonly #goods: readonly Good[];
  readonly #sets: readonly GoodsSet[];
  readonly #mostMoney: number;
  /** By set, then by good: what it and all later sets have together. */
  readonly #later: readonly (readonly number[])[];
  #best: SetPurchase | null = null;

  constructor(goods: readonly Good[], sets: readonly GoodsSet[], mostMoney: number) {
    this.#goods = goods;
    this.#sets = sets;
    this.#mostMoney = mostMoney;
    const later: number[][] = [goods.map(() => 0)];
    for (const { prices, contents } of [...sets].reverse()) {
      const sum = [...(later[0] ?? [])];
      for (const { good, quantity } of contents) {
        sum[good] = (sum[good] ?? 0) + quantity * prices.length;
      }
      later.unshift(sum);
    }
    this.#later = later;
  }

  run(): SetPurchase | null {
    const demand = this.#goods.map((good) => good.demand);
    // Without any set there is a price to beat from the start.
    const bare = this.#ownPrice(demand, this.#sets.length);
    if (bare !== null && bare.money <= this.#mostMoney) this.#best = { sets: [], price: bare };
    this.#visit(0, [], NOTHING, demand);
    return this.#best;
  }

  #visit(next: number, taken: readonly number[], paid: Price, rest: readonly number[]): void {
    const own = this.#ownPrice(rest, next);
    if (own === null) return;
    const least = plus(paid, own);
    if (least.money > this.#mostMoney || !this.#isBetter(least, taken.length)) return;
    const set = this.#sets[next];
    if (set === undefined) {
      this.#best = { sets: taken, price: least };
      return;
    }
    for (let copies = mostOfUse(set, rest); copies > 0; copies -= 1) {
      const price = set.prices[copies - 1] ?? NOTHING;
      if (!this.#mayPay(set, price, rest)) continue;
      const left = [...rest];
      for (const { good, quantity } of set.contents) {
        left[good] = Math.max(0, (left[good] ?? 0) - quantity * copies);
      }
      const more = Array.from({ length: copies }, () => next);
      this.#visit(next + 1, [...taken, ...more], plus(paid, price), left);
    }
    this.#visit(next + 1, taken, paid, rest);
  }

  /** What the rest costs on its own, with the sets from `next` on for nothing. */
  #ownPrice(rest: readonly number[], next: number): Price | null {
    const free = this.#later[next] ?? [];
    let sum = NOTHING;
    for (const [index, good] of this.#goods.entries()) {
      const quantity = (rest[index] ?? 0) - (free[index] ?? 0);
      if (quantity <= 0) continue;
      const price = good.own(quantity);
      if (price === null) return null;
      sum = plus(sum, price);
    }
    return sum;
  }

  /** Sets are taken in before they are left out, so of equals the first is found first. */
  #isBetter(price: Price, count: number): boolean {
    if (this.#best === null) return true;
    const order = comparePrices(price, this.#best.price);
    return order < 0 || (order === 0 && count < this.#best.sets.length);
  }

  /**
   * Whether a set can be worth this price: what it has would cost more on its own. It saves no more
   * than that whatever is bought beside it, since with less needed its goods cost less.
   */
  #mayPay({ contents }: GoodsSet, price: Price, rest: readonly number[]): boolean {
    let saved = NOTHING;
    const seen = new Set<number>();
    for (const { good } of contents) {
      const quantity = rest[good] ?? 0;
      if (quantity === 0 || seen.has(good)) continue;
      seen.add(good);
      const own = this.#goods[good]?.own(quantity) ?? null;
      if (own === null) return true;
      saved = plus(saved, own);
    }
    // Where money is short, what has no price but costs no money may still have to be taken.
    if (this.#mostMoney !== Number.POSITIVE_INFINITY && saved.money > price.money) return true;
    return comparePrices(saved, price) > 0;
  }
}

/** With so many of them nothing that is in the set is needed any more. */
function mostOfUse({ prices, contents }: GoodsSet, rest: readonly number[]): number {
  const uses = contents.map(({ good, quantity }) => Math.ceil((rest[good] ?? 0) / quantity));
  return Math.min(prices.length, Math.max(0, ...uses));
}
