/**
 * How everything that a bill needs is come by for least: pieces at hand first, then what is in the
 * lots that are bought, then one offer for what is still missing, else at an unknown price. What
 * is in a lot that the question wants is used before all else, since it is wanted.
 *
 * Which lots are bought, and how often, is found exactly, for all goods together. Needs are served
 * in their order. No money is spent on a lot only to have a price for what a rule uses up: known
 * prices come before unknown ones for all else, and money comes before these.
 */

import { multiply, rational } from '../quantity/rational.js';
import type { LeftOver } from './basket.js';
import { cheapestSets, NOTHING, type Price, plus } from './core/set-purchase.js';
import type { Need } from './drafts.js';
import type { Bought, LotForSale } from './lot-for-sale.js';
import type { Good, Market } from './market.js';

/** All that is needed of one sort of goods. */
export class GoodNeeds {
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

  /**
   * What the last so many units cost on their own; null where they are not to be had. Of what is
   * used up, the offer that has most is bought whole, and the rest of it has no price.
   */
  own(units: number): Price | null {
    if (units <= 0) return NOTHING;
    const { good } = this;
    const covered = Math.min(units, good.most);
    const money = covered > 0 ? (good.cheapest(covered)?.price ?? 0) : 0;
    let [unpriced, minor] = [0, 0];
    let end = 0;
    for (const need of this.#needs) {
      end += need.units;
      if (end <= this.#total - (units - covered) || need.units === 0) continue;
      if (need.isExtra) minor += 1;
      else if (good.mayBeUnpriced) unpriced += 1;
      else return null;
    }
    return { unpriced, money, minor };
  }
}

export interface BoughtLot {
  readonly lot: LotForSale;
  readonly copies: number;
  /** Null where nobody offers it. */
  readonly bought: Bought | null;
}

export interface Purchase {
  readonly price: Price;
  /** In the order of their ids, wanted ones too. */
  readonly lots: readonly BoughtLot[];
}

export function needsByGood(needs: Iterable<Need>): Map<Good, GoodNeeds> {
  const byGood = new Map<Good, GoodNeeds>();
  for (const need of needs) {
    let ofGood = byGood.get(need.good);
    if (ofGood === undefined) {
      ofGood = new GoodNeeds(need.good);
      byGood.set(need.good, ofGood);
    }
    ofGood.add(need);
  }
  return byGood;
}

/** The cheapest purchase for at most so much money; null where there is none. */
export function purchaseOf(
  byGood: ReadonlyMap<Good, GoodNeeds>,
  market: Market,
  mostMoney: number,
): Purchase | null {
  return cheapest(byGood, market, { mostMoney, ownOf: (ofGood, units) => ofGood.own(units) });
}

/**
 * The least that a purchase costs for these needs and any more: all that has no price counts
 * alike, since more needs may make any lot worth its price.
 */
export function leastPrice(
  byGood: ReadonlyMap<Good, GoodNeeds>,
  market: Market,
  mostMoney: number,
): Price | null {
  const ownOf = (ofGood: GoodNeeds, units: number): Price | null => {
    const own = ofGood.own(units);
    return own === null ? null : { ...own, unpriced: own.unpriced + own.minor, minor: 0 };
  };
  return cheapest(byGood, market, { mostMoney, ownOf })?.price ?? null;
}

interface Terms {
  readonly mostMoney: number;
  readonly ownOf: (ofGood: GoodNeeds, units: number) => Price | null;
}

function cheapest(
  byGood: ReadonlyMap<Good, GoodNeeds>,
  market: Market,
  { mostMoney, ownOf }: Terms,
): Purchase | null {
  if (market.lacksWantedLot) return null;
  const wanted = market.lots.filter((lot) => lot.isWanted);
  let fixed = wanted.reduce((sum, lot) => plus(sum, lot.price(1) ?? NOTHING), NOTHING);
  const touched: { readonly demand: number; own: (units: number) => Price | null }[] = [];
  const chosen = new Map<LotForSale, LotContent[]>();
  for (const ofGood of byGood.values()) {
    const rest = restOf(ofGood, wanted);
    if (rest <= 0) continue;
    const lots = [...ofGood.good.inLots].filter(([lot]) => lot.price(atLeastOf(lot) + 1) !== null);
    if (lots.length === 0) {
      const own = ownOf(ofGood, rest);
      if (own === null) return null;
      fixed = plus(fixed, own);
      continue;
    }
    for (const [lot, quantity] of lots) {
      const contents = chosen.get(lot) ?? [];
      contents.push({ good: touched.length, quantity, copies: Math.ceil(rest / quantity) });
      chosen.set(lot, contents);
    }
    touched.push({ demand: rest, own: (units) => ownOf(ofGood, units) });
  }
  const lots = market.lots.filter((lot) => chosen.has(lot));
  const sets = lots.map((lot) => {
    const contents = chosen.get(lot) ?? [];
    return { prices: pricesOf(lot, contents), contents };
  });
  const found = cheapestSets(touched, sets, mostMoney - fixed.money);
  if (found === null) return null;
  const counts = new Map(market.lots.map((lot) => [lot, atLeastOf(lot)]));
  for (const lot of found.sets.flatMap((index) => lots[index] ?? [])) {
    counts.set(lot, (counts.get(lot) ?? 0) + 1);
  }
  return {
    price: plus(fixed, found.price),
    lots: [...counts].flatMap(([lot, copies]) =>
      copies === 0 ? [] : [{ lot, copies, bought: lot.cheapest(copies) }],
    ),
  };
}

interface LotContent {
  readonly good: number;
  readonly quantity: number;
  /** So many lots have all of it that is needed. */
  readonly copies: number;
}

function atLeastOf({ isWanted }: LotForSale): number {
  return isWanted ? 1 : 0;
}

/** Of so many more as could be of use, beyond what is bought anyway. */
function pricesOf(lot: LotForSale, contents: readonly LotContent[]): Price[] {
  const least = atLeastOf(lot);
  const before = lot.price(least) ?? NOTHING;
  const most = Math.max(...contents.map(({ copies }) => copies));
  const prices: Price[] = [];
  while (prices.length < most) {
    const price = lot.price(least + prices.length + 1);
    if (price === null) break;
    const { unpriced, money } = before;
    prices.push({ ...price, unpriced: price.unpriced - unpriced, money: price.money - money });
  }
  return prices;
}

/** A part of a need out of one source. */
export interface Share {
  readonly from: 'owned' | 'offer' | 'unpriced' | BoughtLot;
  readonly units: number;
  /** What this share takes of the offer: the packs that it opens. */
  readonly bought: Bought | null;
  /** Of the packs, in the end: said of the last share only. */
  readonly over: number;
}

/** Shares out the supply of one sort of goods, need by need; every need its shares in order. */
export function sharesOf(ofGood: GoodNeeds, lots: readonly BoughtLot[]): Map<Need, Share[]> {
  const { good } = ofGood;
  const inLots = lots.map((from) => {
    return { from, units: from.copies * (good.inLots.get(from.lot) ?? 0) };
  });
  const supplies: { readonly from: 'owned' | BoughtLot; units: number }[] = [
    ...inLots.filter(({ from }) => from.lot.isWanted),
    { from: 'owned', units: good.owned },
    ...inLots.filter(({ from }) => !from.lot.isWanted),
  ];
  const supplied = supplies.reduce((sum, { units }) => sum + units, 0);
  const missing = Math.min(good.most, Math.max(0, ofGood.total - supplied));
  const offered = missing > 0 ? good.cheapest(missing) : null;
  const shares = new Map<Need, Share[]>();
  let covered = 0;
  for (const need of ofGood.needs) {
    const own: Share[] = [];
    let rest = need.units;
    for (const supply of supplies) {
      const units = Math.min(rest, supply.units);
      if (units === 0) continue;
      own.push({ from: supply.from, units, bought: null, over: 0 });
      supply.units -= units;
      rest -= units;
    }
    const units = offered === null ? 0 : Math.min(rest, missing - covered);
    if (offered !== null && units > 0) own.push(opened(offered, covered, units, missing));
    covered += units;
    if (rest > units) own.push(unpriced(rest - units));
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

/** What of a lot that is bought is of no use to these needs. */
export function leftOverOf(
  { lot, copies }: BoughtLot,
  used: ReadonlyMap<Good, number>,
): LeftOver[] {
  return lot.contents.flatMap((one) => {
    const [good, units] = usedOf(one, used);
    if (good === null) return [{ ...one, quantity: multiply(one.quantity, rational(copies)) }];
    const left = copies * (good.inLots.get(lot) ?? 0) - units;
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

function restOf({ good, total }: GoodNeeds, wanted: readonly LotForSale[]): number {
  let supplied = good.owned;
  for (const lot of wanted) supplied += good.inLots.get(lot) ?? 0;
  return Math.max(0, total - supplied);
}
