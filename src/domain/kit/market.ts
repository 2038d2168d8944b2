/**
 * What can be come by for a kit question, and at what price: offers that may be used, pieces at
 * hand, and lots that may be bought with what is in them.
 *
 * Where the offers do not say where else a part could be had, it is bought at an unknown price,
 * but only if the question takes any recorded part and no limit asks for more to be known: what
 * nobody offers is neither in stock nor there within so many days.
 */

import { byCodeUnit } from '../catalogue/canonical.js';
import { isDonorArticle } from '../catalogue/donor-article.js';
import {
  compare,
  decimalText,
  fraction,
  inProportion,
  ONE,
  type Rational,
  rational,
  roundDown,
} from '../quantity/rational.js';
import type { Dimension } from '../quantity/unit.js';
import { contentsOf } from './lot-contents.js';
import { type Bought, cheapestOf, type ForSale, LotForSale } from './lot-for-sale.js';
import type { KitQuestion, Money, Offer } from './question.js';

/** Goods of one sort: an article, counted or measured out. All quantities are whole units. */
export class Good {
  readonly part: string;
  readonly dimension: Dimension;
  /** So many units are one piece, or one of the base unit of the dimension. */
  readonly scale: number;
  readonly owned: number;
  readonly inLots: ReadonlyMap<LotForSale, number>;
  readonly isOffered: boolean;
  /** Where it is not offered, it may be bought at an unknown price. */
  readonly mayBeUnpriced: boolean;
  /** As much as the one offer has that has most. */
  readonly most: number;
  readonly #forSale: readonly ForSale[];
  readonly #cheapest = new Map<number, Bought | null>();

  constructor(goods: {
    readonly part: string;
    readonly dimension: Dimension;
    readonly scale: number;
    readonly owned: number;
    readonly inLots: ReadonlyMap<LotForSale, number>;
    readonly mayBeUnpriced: boolean;
    readonly forSale: readonly ForSale[];
  }) {
    this.part = goods.part;
    this.dimension = goods.dimension;
    this.scale = goods.scale;
    this.owned = goods.owned;
    this.inLots = goods.inLots;
    this.isOffered = goods.forSale.length > 0;
    this.mayBeUnpriced = goods.mayBeUnpriced;
    this.#forSale = goods.forSale;
    this.most = Math.max(0, ...goods.forSale.map(({ pack, most }) => pack * most));
  }

  /** The one offer that covers it all for least; null where none does. */
  cheapest(units: number): Bought | null {
    let found = this.#cheapest.get(units);
    if (found === undefined) {
      found = cheapestOf(this.#forSale, units);
      this.#cheapest.set(units, found);
    }
    return found;
  }

  /** The least that so many more cost, whatever is bought already: full packs of them alone. */
  leastMore(units: number): Money {
    const prices = this.#forSale.map(({ offer, pack }) => Math.floor(units / pack) * offer.price);
    return prices.length === 0 ? 0 : Math.min(...prices);
  }

  /** @throws RangeError where units are not fine enough for it. */
  unitsOf(quantity: Rational): number {
    const [scale = 0n, units = 0n] = inProportion([ONE, quantity]);
    if (BigInt(this.scale) % scale !== 0n)
      throw new RangeError(`${this.part}: too fine a quantity`);
    return wholeNumber(units * (BigInt(this.scale) / scale));
  }

  quantityOf(units: number): Rational {
    return fraction(BigInt(units), BigInt(this.scale));
  }
}

export class Market {
  /** All that may be bought, wanted ones too; in the order of their ids. */
  readonly lots: readonly LotForSale[];
  /** A lot that the question wants cannot be bought. */
  readonly lacksWantedLot: boolean;
  readonly #question: KitQuestion;
  readonly #offers = new Map<string, Offer[]>();
  readonly #goods = new Map<string, Good>();

  constructor(question: KitQuestion) {
    this.#question = question;
    for (const offer of question.offers) {
      if (!isUsable(offer, question)) continue;
      const { for: name } = offer.record;
      const known = this.#offers.get(name);
      if (known === undefined) this.#offers.set(name, [offer]);
      else known.push(offer);
    }
    for (const offers of this.#offers.values()) offers.sort(byLeadDays);
    const wanted = new Set(question.wants.flatMap((want) => (want.is === 'lot' ? want.lot : [])));
    const ids = [...new Set([...question.lots, ...wanted])].sort(byCodeUnit);
    this.lots = ids.flatMap((id) => this.#lotForSale(id, wanted.has(id)) ?? []);
    this.lacksWantedLot = [...wanted].some((id) => this.lots.every((lot) => lot.id !== id));
  }

  /** Whether goods that nobody offers may be bought all the same. */
  get takesUnpriced(): boolean {
    const { from, limits } = this.#question;
    return from === 'recorded' && !limits.inStock && limits.leadDays === null;
  }

  /** The same for works, which no stock covers. */
  get takesUnpricedWorks(): boolean {
    const { from, limits } = this.#question;
    return from === 'recorded' && limits.leadDays === null;
  }

  /** Goods in units that are fine enough for the quantity. */
  goods(part: string, dimension: Dimension, quantity: Rational = ONE): Good {
    const [parts = 1n] = inProportion([ONE, quantity]);
    const key = `${part} ${dimension} ${parts}`;
    let found = this.#goods.get(key);
    if (found === undefined) {
      found = this.#goodsOf(part, dimension, fraction(1n, parts));
      this.#goods.set(key, found);
    }
    return found;
  }

  /** The cheapest way of having a work done on so many pieces; null where nobody offers it. */
  work(id: string, pieces: number): Bought | null {
    return this.goods(id, '1').cheapest(pieces);
  }

  #goodsOf(part: string, dimension: Dimension, finest: Rational): Good {
    const offers = (this.#offers.get(part) ?? []).filter(
      ({ pack }) => pack.dimension === dimension,
    );
    const lots = this.lots.flatMap((lot) =>
      lot.contents.flatMap((one) =>
        one.part === part && one.dimension === dimension ? [{ lot, quantity: one.quantity }] : [],
      ),
    );
    const owned = rational(dimension === '1' ? (this.#question.owned.get(part) ?? 0) : 0);
    const sizes = offers.map(({ pack }) => pack.value);
    const held = lots.map(({ quantity }) => quantity);
    const whole = inProportion([ONE, finest, owned, ...sizes, ...held]).map(wholeNumber);
    const [scale = 1, , ownedUnits = 0, ...rest] = whole;
    const { inStock } = this.#question.limits;
    return new Good({
      part,
      dimension,
      scale,
      owned: ownedUnits,
      inLots: new Map(lots.map(({ lot }, index) => [lot, rest[offers.length + index] ?? 0])),
      mayBeUnpriced: this.takesUnpriced && !isDonorArticle(part),
      forSale: offers.map((offer, index) => {
        const isBound = inStock && !this.#isWork(part);
        const most = isBound ? (offer.record.stock ?? 0) : Number.POSITIVE_INFINITY;
        return { offer, pack: rest[index] ?? 1, most };
      }),
    });
  }

  #isWork(name: string): boolean {
    return this.#question.catalogue.works.has(name);
  }

  /** A vehicle that is taken apart is there once, unless an offer says that there are more. */
  #lotForSale(id: string, isWanted: boolean): LotForSale | null {
    const { catalogue, limits } = this.#question;
    const lot = catalogue.lots.get(id);
    if (lot === undefined) return null;
    const isTakenApart = lot.contains.some(({ is }) => is === 'position');
    const mostOf = ({ stock }: Offer['record']): number => {
      if (limits.inStock) return stock ?? 0;
      return isTakenApart ? Math.max(1, stock ?? 1) : Number.POSITIVE_INFINITY;
    };
    const forSale = (this.#offers.get(id) ?? [])
      .filter(({ pack }) => pack.dimension === '1' && compare(pack.value, ONE) >= 0)
      .map((offer) => ({ offer, pack: wholeOf(offer), most: mostOf(offer.record) }));
    if (forSale.length === 0 && !this.takesUnpriced) return null;
    const contents = contentsOf(lot, catalogue);
    return new LotForSale({ id, isWanted, contents, forSale });
  }
}

/** Whole lots in one pack. */
function wholeOf({ pack }: Offer): number {
  return wholeNumber(BigInt(decimalText(roundDown(pack.value, 0), 0)));
}

function isUsable({ record }: Offer, { avoid, limits, catalogue }: KitQuestion): boolean {
  const { supplier, leadDays, stock } = record;
  if (supplier !== undefined && avoid.suppliers.has(supplier)) return false;
  if (limits.leadDays !== null && (leadDays ?? Number.POSITIVE_INFINITY) > limits.leadDays) {
    return false;
  }
  // Works are done, not kept.
  return !limits.inStock || catalogue.works.has(record.for) || (stock ?? 0) > 0;
}

function byLeadDays(a: Offer, b: Offer): number {
  const days = ({ record }: Offer) => record.leadDays ?? Number.MAX_SAFE_INTEGER;
  return days(a) - days(b) || byCodeUnit(a.record.id, b.record.id);
}

/** @throws RangeError for more units than can be counted exactly. */
function wholeNumber(units: bigint): number {
  const number = Number(units);
  if (!Number.isSafeInteger(number)) throw new RangeError(`too many units to count: ${units}`);
  return number;
}
