/**
 * How everything that a bill needs is come by for least: pieces at hand first, then what is in the
 * lots that are bought, then one offer for what is still missing, else at an unknown price. What
 * is in a lot that the question wants is used before all else, since it is wanted.
 *
 * Which lots are bought is found exactly, for all goods together. Needs are served in their order.
 */

import type { LeftOver } from './basket.js';
import { cheapestSets, NOTHING, type Price, plus } from './core/set-purchase.js';
import type { Need } from './drafts.js';
import type { Bought, Good, LotForSale, Market } from './market.js';

/** All that is needed of one sort of goods. */
export class Demand {
  readonly good: Good;
  readonly #needs: Need[] = [];
  #total = 0;

  constructor(good: Good) {
    this.good = good;
  }

  get needs(): readonly Need[] {
    return this.#needs;
  }

  get total(): number {
    return this.#total;
  }

  add(need: Need): void {
    this.#needs.push(need);
    this.#total += need.units;
  }

  /** What the last so many units cost on their own; null where they are not to be had. */
  own(units: number): Price | null {
    if (units <= 0) return NOTHING;
    const { good } = this;
    if (good.isOffered) {
      const bought = good.cheapest(units);
      return bought === null ? null : { unpriced: 0, money: bought.price };
    }
    let unpriced = 0;
    let end = 0;
    for (const need of this.#needs) {
      end += need.units;
      if (end <= this.#total - units || need.units === 0) continue;
      if (!need.isExtra && !good.mayBeUnpriced) return null;
      unpriced += 1;
    }
    return { unpriced, money: 0 };
  }
}

export interface Purchase {
  readonly price: Price;
  /** In the order of their ids, wanted ones too. */
  readonly lots: readonly LotForSale[];
}

export function demandsOf(needs: Iterable<Need>): Map<Good, Demand> {
  const demands = new Map<Good, Demand>();
  for (const need of needs) {
    let demand = demands.get(need.good);
    if (demand === undefined) {
      demand = new Demand(need.good);
      demands.set(need.good, demand);
    }
    demand.add(need);
  }
  return demands;
}

/** The cheapest purchase for at most so much money; null where there is none. */
export function purchaseOf(
  demands: ReadonlyMap<Good, Demand>,
  market: Market,
  mostMoney: number,
): Purchase | null {
  if (market.lacksWantedLot) return null;
  const wanted = market.lots.filter((lot) => lot.isWanted);
  let fixed = wanted.reduce((sum, lot) => plus(sum, lotPrice(lot)), NOTHING);
  const touched: Demand[] = [];
  const chosen = new Map<LotForSale, { good: number; quantity: number }[]>();
  for (const demand of demands.values()) {
    const rest = restOf(demand, wanted);
    if (rest <= 0) continue;
    const lots = [...demand.good.inLots].filter(([lot]) => !lot.isWanted);
    if (lots.length === 0) {
      const own = demand.own(rest);
      if (own === null) return null;
      fixed = plus(fixed, own);
      continue;
    }
    for (const [lot, quantity] of lots) {
      const contents = chosen.get(lot) ?? [];
      contents.push({ good: touched.length, quantity });
      chosen.set(lot, contents);
    }
    touched.push(demand);
  }
  const lots = market.lots.filter((lot) => chosen.has(lot));
  const sets = lots.map((lot) => ({ price: lotPrice(lot), contents: chosen.get(lot) ?? [] }));
  const goods = touched.map((demand) => ({
    demand: restOf(demand, wanted),
    own: (units: number) => demand.own(units),
  }));
  const found = cheapestSets(goods, sets, mostMoney - fixed.money);
  if (found === null) return null;
  const bought = new Set(found.sets.map((index) => lots[index]));
  return {
    price: plus(fixed, found.price),
    lots: market.lots.filter((lot) => lot.isWanted || bought.has(lot)),
  };
}

/** A part of a need out of one source. */
export interface Share {
  readonly from: 'owned' | 'offer' | 'unpriced' | LotForSale;
  readonly units: number;
  /** What this share takes of the offer: the packs that it opens. */
  readonly bought: Bought | null;
  /** Of the packs, in the end: said of the last share only. */
  readonly over: number;
}

/** Shares out the supply of one sort of goods, need by need; every need its shares in order. */
export function sharesOf(demand: Demand, lots: readonly LotForSale[]): Map<Need, Share[]> {
  const { good } = demand;
  const inLots = lots.map((lot) => ({ from: lot, units: good.inLots.get(lot) ?? 0 }));
  const supplies: { readonly from: 'owned' | LotForSale; units: number }[] = [
    ...inLots.filter(({ from }) => from.isWanted),
    { from: 'owned', units: good.owned },
    ...inLots.filter(({ from }) => !from.isWanted),
  ];
  const supplied = supplies.reduce((sum, { units }) => sum + units, 0);
  const missing = Math.max(0, demand.total - supplied);
  const offered = good.isOffered && missing > 0 ? good.cheapest(missing) : null;
  const shares = new Map<Need, Share[]>();
  let covered = 0;
  for (const need of demand.needs) {
    const own: Share[] = [];
    let rest = need.units;
    for (const supply of supplies) {
      const units = Math.min(rest, supply.units);
      if (units === 0) continue;
      own.push({ from: supply.from, units, bought: null, over: 0 });
      supply.units -= units;
      rest -= units;
    }
    if (rest > 0) {
      own.push(offered === null ? unpriced(rest) : opened(offered, covered, rest, missing));
      covered += rest;
    }
    shares.set(need, own);
  }
  return shares;
}

function unpriced(units: number): Share {
  return { from: 'unpriced', units, bought: null, over: 0 };
}

/** The packs that a share opens when others before it have taken so many units of them. */
function opened(offered: Bought, before: number, units: number, all: number): Share {
  const { offer, pack } = offered;
  const packs = Math.ceil((before + units) / pack) - Math.ceil(before / pack);
  const bought = { offer, pack, packs, price: packs * offer.price };
  const isLast = before + units === all;
  return { from: 'offer', units, bought, over: isLast ? offered.packs * pack - all : 0 };
}

/** What of a lot that is bought is of no use to these demands. */
export function leftOverOf(lot: LotForSale, used: ReadonlyMap<Good, number>): LeftOver[] {
  return lot.contents.flatMap((one) => {
    const [good, units] = usedOf(one, used);
    if (good === null) return [one];
    const left = (good.inLots.get(lot) ?? 0) - units;
    return left === 0 ? [] : [{ ...one, quantity: good.quantityOf(left) }];
  });
}

function usedOf(
  { part, dimension }: LeftOver,
  used: ReadonlyMap<Good, number>,
): [Good | null, number] {
  for (const [good, units] of used) {
    if (good.part === part && good.dimension === dimension) return [good, units];
  }
  return [null, 0];
}

export function lotPrice({ offer }: LotForSale): Price {
  return offer === null ? { unpriced: 1, money: 0 } : { unpriced: 0, money: offer.price };
}

function restOf({ good, total }: Demand, wanted: readonly LotForSale[]): number {
  let supplied = good.owned;
  for (const lot of wanted) supplied += good.inLots.get(lot) ?? 0;
  return Math.max(0, total - supplied);
}
