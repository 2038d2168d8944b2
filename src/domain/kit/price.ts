/**
 * What a bill costs in the light of a kit question: line by line, as one number to compare, and
 * the least that a single change adds.
 */

import type { Position } from '../catalogue/catalogue.js';
import { exactText } from '../quantity/rational.js';
import type { AdapterChange, Basket, Bill, Consumed, Limited, Line, SeatChange } from './basket.js';
import { basketLines } from './basket-lines.js';
import type { Price } from './core/set-purchase.js';
import type { Need } from './drafts.js';
import {
  adapterItem,
  byArticle,
  extraItem,
  type Item,
  openItem,
  placeItem,
  type Workshop,
} from './items.js';
import { type Lanes, Packing, type PriceLane } from './lanes.js';
import { type Least, leastOfHand, leastOfItem } from './least.js';
import { Market } from './market.js';
import { leastPrice, needsByGood, type Purchase, purchaseOf } from './purchase.js';
import type { KitQuestion } from './question.js';
import { totalsOf, unknownLimitsOf } from './totals.js';

/** What a bill comes to. */
interface Reckoning {
  readonly items: readonly Item[];
  readonly purchase: Purchase;
}

export class PriceList {
  readonly #workshop: Workshop;
  readonly #mostHours: number;
  /** Limits of which it must be known that they are kept. */
  readonly mustKnow: ReadonlySet<Limited>;
  /** By what is done for the first hand, then for the other. */
  readonly #places = new WeakMap<SeatChange, Map<SeatChange | null, Item>>();
  readonly #matings = new WeakMap<AdapterChange, Item>();
  readonly #opened = new WeakMap<Position, Item>();
  /** By the amounts that are used up of one article. */
  readonly #extras = new Map<string, Item>();
  /** Positions that must come out before another can. */
  readonly #mayBeOpened: ReadonlySet<string>;
  readonly #matingOrder: ReadonlyMap<string, number>;

  /**
   * @param mustKnow limits that what is not known does not keep; the others it does.
   * @throws RangeError where the costs of the question are too large to be counted exactly.
   */
  constructor(question: KitQuestion, mustKnow: ReadonlySet<Limited> = new Set()) {
    this.mustKnow = mustKnow;
    const market = new Market(question);
    const packing = new Packing(question, market);
    this.#workshop = { question, market, packing };
    const { labourHours } = question.limits;
    this.#mostHours = labourHours === null ? Number.POSITIVE_INFINITY : packing.hours(labourHours);
    const { positions, matings } = question.vehicle.layout;
    this.#mayBeOpened = new Set([...positions.values()].flatMap(({ behind }) => behind));
    this.#matingOrder = new Map([...matings.keys()].map((id, index) => [id, index]));
  }

  /**
   * All lines of a bill with the cheapest way of coming by everything, exact; the fewest lines
   * without a price come first, then the least money. Null where something cannot be come by, or
   * a limit is passed. Against the limits of cost and of hours stands what is known: what has no
   * price, or no recorded labour, counts nothing there, unless it must be known; the totals say of
   * which limits it cannot be told whether they are kept.
   */
  basket(bill: Bill): Basket | null {
    const reckoned = this.#reckon(bill);
    if (reckoned === null) return null;
    const { items, purchase } = reckoned;
    const { question } = this.#workshop;
    const lines = basketLines(items, purchase, question.labourRate);
    const partly = new Set(items.flatMap(({ untimed }) => untimed));
    return { lines, totals: totalsOf(lines, changedOf(items), partly, question) };
  }

  /**
   * Lines of what is had beside a bill, of articles that it does not take itself: out of what the
   * bill leaves of pieces at hand and lots, else bought. It counts against no limit.
   */
  beside(bill: Bill, consumed: readonly Consumed[]): Line[] {
    const reckoned = this.#reckon(bill);
    if (reckoned === null) return [];
    const { items, purchase } = reckoned;
    const all = [...items, ...this.#extraItems(consumed)];
    const parts = new Set(consumed.map(({ part }) => part));
    return basketLines(all, purchase, this.#workshop.question.labourRate).filter(
      ({ action, part }) => action === 'extra' && part !== null && parts.has(part),
    );
  }

  /**
   * A basket as one whole number, Infinity where there is no basket. Changes and positions are
   * known again by identity: it is fastest for the same ones.
   *
   * @throws RangeError for a bill too dear to be counted in one number.
   */
  cost(bill: Bill): number {
    const reckoned = this.#reckon(bill);
    if (reckoned === null) return Number.POSITIVE_INFINITY;
    const { items, purchase } = reckoned;
    return this.#workshop.packing.pack(this.#lanes(items, purchase.price));
  }

  /**
   * What this bill costs at the least, and any with more in it. A larger bill can cost less than a
   * smaller one: a lot that is bought for what is more may have in it what had no price before.
   */
  floor(bill: Bill): number {
    const items = this.#within(bill);
    if (items === null) return Number.POSITIVE_INFINITY;
    const { market, packing } = this.#workshop;
    const price = leastPrice(needsByGood(needsOf(items)), market, this.#mostMoney(items));
    return price === null ? Number.POSITIVE_INFINITY : packing.pack(this.#lanes(items, price));
  }

  get priceLane(): PriceLane {
    return this.#workshop.packing.priceLane;
  }

  /** What a cost, or the sum of some, is made of. */
  lanesOf(cost: number): Lanes {
    return this.#workshop.packing.unpack(cost);
  }

  /**
   * The least that this change adds to any bill, packed likewise; Infinity where it can never be
   * bought. Nothing else may be done at its place or mating in that bill, except that one hand,
   * asked alone, may be added to the other. All that is done at one place is better asked in a
   * list: what the hands share is then counted once, and in full.
   */
  atLeast(change: SeatChange | AdapterChange | readonly SeatChange[]): number {
    const isMating = 'mating' in change;
    const seats = isMating ? [] : 'position' in change ? [change] : change;
    const adapters = isMating ? [change] : [];
    const [first] = seats;
    if (first === undefined && !isMating) return 0;
    const alone = { seats, adapters, consumed: [], opened: [] };
    if (this.cost(alone) === Number.POSITIVE_INFINITY) return Number.POSITIVE_INFINITY;
    const isOneHand = 'position' in change && change.hand !== null;
    let found: Least;
    if (isMating) found = leastOfItem(this.#adapterItem(change), null);
    else if (isOneHand) found = leastOfHand(this.#placeItem(seats), change, this.#workshop);
    else found = leastOfItem(this.#placeItem(seats), this.#openedAlready(first?.position));
    const { hours, ...least } = found;
    const preferred = this.#preferred(least.changed, hours);
    return this.#workshop.packing.pack({ ...least, preferred });
  }

  /** What is counted of a place that had to be opened for another before it is changed itself. */
  #openedAlready(position: Position | undefined): Item | null {
    if (position === undefined || !this.#mayBeOpened.has(position.id)) return null;
    return this.#openItem(position);
  }

  #reckon(bill: Bill): Reckoning | null {
    const items = this.#within(bill);
    if (items === null) return null;
    const byGood = needsByGood(needsOf(items));
    const purchase = purchaseOf(byGood, this.#workshop.market, this.#mostMoney(items));
    if (purchase === null) return null;
    return this.#isKnownEnough(items, purchase) ? { items, purchase } : null;
  }

  #isKnownEnough(items: readonly Item[], { price }: Purchase): boolean {
    const { mustKnow } = this;
    if (mustKnow.size === 0) return true;
    const isUnpriced = sumOf(items, 'unpriced') + price.unpriced + price.minor > 0;
    // Under a limit of lead days only what has no price is not known to be there in time.
    const isLeadUnknown = isUnpriced;
    const isUntimed = items.some((item) => item.isUntimed);
    const known = { isUnpriced, isUntimed, isLeadUnknown };
    return unknownLimitsOf(this.#workshop.question, known).every((one) => !mustKnow.has(one));
  }

  /** Null where something cannot be done, or is beyond a limit whatever goods cost. */
  #within(bill: Bill): Item[] | null {
    const { limits } = this.#workshop.question;
    const items = this.#items(bill);
    if (items.some(({ isImpossible }) => isImpossible)) return null;
    const changed = changedOf(items);
    if (changed > (limits.changedPositions ?? changed)) return null;
    return sumOf(items, 'hours') > this.#mostHours ? null : items;
  }

  #mostMoney(items: readonly Item[]): number {
    const { cost } = this.#workshop.question.limits;
    return (cost ?? Number.POSITIVE_INFINITY) - sumOf(items, 'money');
  }

  #lanes(items: readonly Item[], price: Price): Lanes {
    const changed = changedOf(items);
    return {
      preferred: this.#preferred(changed, sumOf(items, 'hours')),
      unpriced: sumOf(items, 'unpriced') + price.unpriced + price.minor,
      money: sumOf(items, 'money') + price.money,
      changed,
    };
  }

  #preferred(changed: number, hours: number): number {
    const { prefer } = this.#workshop.question;
    if (prefer === 'changed-positions') return changed;
    return prefer === 'labour-hours' ? hours : 0;
  }

  /** Places in layout order, then matings, what is used up, and what is opened. */
  #items({ seats, adapters, consumed, opened }: Bill): Item[] {
    const byPlace = new Map<Position, SeatChange[]>();
    for (const change of seats) {
      const known = byPlace.get(change.position);
      if (known === undefined) byPlace.set(change.position, [change]);
      else known.push(change);
    }
    const places = [...byPlace].sort(([a], [b]) => a.index - b.index);
    const order = ({ mating }: AdapterChange) => this.#matingOrder.get(mating) ?? 0;
    const matings = adapters.toSorted((a, b) => order(a) - order(b));
    return [
      ...places.map(([, changes]) => this.#placeItem(changes)),
      ...matings.map((change) => this.#adapterItem(change)),
      ...this.#extraItems(consumed),
      ...opened
        .filter((position) => !byPlace.has(position))
        .map((position) => this.#openItem(position)),
    ];
  }

  #placeItem(changes: readonly SeatChange[]): Item {
    const [first, second = null] = changes[0]?.hand === 'right' ? [...changes].reverse() : changes;
    if (first === undefined) throw new RangeError('nothing is changed');
    let known = this.#places.get(first);
    if (known === undefined) {
      known = new Map();
      this.#places.set(first, known);
    }
    let item = known.get(second);
    if (item === undefined) {
      item = placeItem(second === null ? [first] : [first, second], this.#workshop);
      known.set(second, item);
    }
    return item;
  }

  #adapterItem(change: AdapterChange): Item {
    let item = this.#matings.get(change);
    if (item === undefined) {
      item = adapterItem(change, this.#workshop);
      this.#matings.set(change, item);
    }
    return item;
  }

  #extraItems(consumed: readonly Consumed[]): Item[] {
    return byArticle(consumed).map((list) => {
      const amounts = list.map(({ part, quantity, dimension }) => {
        return `${part} ${quantity === null ? '' : exactText(quantity)} ${dimension}`;
      });
      const key = amounts.join();
      let item = this.#extras.get(key);
      if (item === undefined) {
        item = extraItem(list, this.#workshop);
        this.#extras.set(key, item);
      }
      return item;
    });
  }

  #openItem(position: Position): Item {
    let item = this.#opened.get(position);
    if (item === undefined) {
      item = openItem(position, this.#workshop);
      this.#opened.set(position, item);
    }
    return item;
  }
}

function needsOf(items: readonly Item[]): Need[] {
  return items.flatMap(({ needs }) => needs);
}

function changedOf(items: readonly Item[]): number {
  return items.filter(({ isChanged }) => isChanged).length;
}

function sumOf(items: readonly Item[], field: 'money' | 'hours' | 'unpriced'): number {
  return items.reduce((sum, item) => sum + item[field], 0);
}
