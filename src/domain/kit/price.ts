/**
 * What a bill costs in the light of a kit question: line by line, as one number to compare, and
 * the least that a single change adds.
 */

import type { Position } from '../catalogue/catalogue.js';
import type { AdapterChange, Basket, Bill, SeatChange } from './basket.js';
import { basketLines } from './basket-lines.js';
import { adapterItem, extraItems, type Item, openItem, placeItem, type Workshop } from './items.js';
import { type Lanes, Packing } from './lanes.js';
import { type Least, leastOfHand, leastOfItem } from './least.js';
import { Market } from './market.js';
import { demandsOf, type Purchase, purchaseOf } from './purchase.js';
import type { KitQuestion } from './question.js';
import { totalsOf } from './totals.js';

/** What a bill comes to. */
interface Reckoning {
  readonly items: readonly Item[];
  readonly purchase: Purchase;
  readonly lanes: Lanes;
}

export class PriceList {
  readonly #workshop: Workshop;
  readonly #mostHours: number;
  /** By what is done for the first hand, then for the other. */
  readonly #places = new WeakMap<SeatChange, Map<SeatChange | null, Item>>();
  readonly #matings = new WeakMap<AdapterChange, Item>();
  readonly #opened = new WeakMap<Position, Item>();
  /** Positions that must come out before another can. */
  readonly #mayBeOpened: ReadonlySet<string>;
  readonly #matingOrder: ReadonlyMap<string, number>;

  /** @throws RangeError where the costs of the question are too large to be counted exactly. */
  constructor(question: KitQuestion) {
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
   * price, or no recorded labour, counts nothing there.
   */
  basket(bill: Bill): Basket | null {
    const reckoned = this.#reckon(bill);
    if (reckoned === null) return null;
    const { items, purchase, lanes } = reckoned;
    const lines = basketLines(items, purchase, this.#workshop.question.labourRate);
    const partly = new Set(items.flatMap(({ untimed }) => untimed));
    return { lines, totals: totalsOf(lines, lanes.changed, partly) };
  }

  /**
   * The same as one whole number, Infinity where there is no basket. A bill with more in it never
   * costs less. Changes and positions are known again by identity: it is fastest for the same ones.
   *
   * @throws RangeError for a bill too dear to be counted in one number.
   */
  cost(bill: Bill): number {
    const reckoned = this.#reckon(bill);
    if (reckoned === null) return Number.POSITIVE_INFINITY;
    return this.#workshop.packing.pack(reckoned.lanes);
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
    const [seats, adapters] = sortsOf(change);
    if (seats.length + adapters.length === 0) return 0;
    const alone = { seats, adapters, consumed: [], opened: [] };
    if (this.cost(alone) === Number.POSITIVE_INFINITY) return Number.POSITIVE_INFINITY;
    const { packing } = this.#workshop;
    const { hours, ...least } = this.#least(seats, adapters);
    return packing.pack({ ...least, preferred: this.#preferred(least.changed, hours) });
  }

  #least(seats: readonly SeatChange[], adapters: readonly AdapterChange[]): Least {
    const [adapter] = adapters;
    if (adapter !== undefined) return leastOfItem(this.#adapterItem(adapter), null);
    const [first] = seats;
    if (first === undefined) throw new RangeError('nothing is changed');
    const { position, hand } = first;
    if (hand !== null && seats.length === 1) {
      return leastOfHand(this.#placeItem(seats), first, this.#workshop);
    }
    const opened = this.#mayBeOpened.has(position.id) ? this.#openItem(position) : null;
    return leastOfItem(this.#placeItem(seats), opened);
  }

  #reckon(bill: Bill): Reckoning | null {
    const { question, market } = this.#workshop;
    const { limits } = question;
    const items = this.#items(bill);
    let [money, hours, unpriced, changed] = [0, 0, 0, 0];
    for (const item of items) {
      if (item.isImpossible) return null;
      money += item.money;
      hours += item.hours;
      unpriced += item.unpriced;
      changed += item.isChanged ? 1 : 0;
    }
    if (changed > (limits.changedPositions ?? changed) || hours > this.#mostHours) return null;
    const mostMoney = (limits.cost ?? Number.POSITIVE_INFINITY) - money;
    const demands = demandsOf(items.flatMap(({ needs }) => needs));
    const purchase = purchaseOf(demands, market, mostMoney);
    if (purchase === null) return null;
    const { price } = purchase;
    const lanes = {
      preferred: this.#preferred(changed, hours),
      unpriced: unpriced + price.unpriced,
      money: money + price.money,
      changed,
    };
    return { items, purchase, lanes };
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
      ...extraItems(consumed, this.#workshop),
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

  #openItem(position: Position): Item {
    let item = this.#opened.get(position);
    if (item === undefined) {
      item = openItem(position, this.#workshop);
      this.#opened.set(position, item);
    }
    return item;
  }
}

function sortsOf(
  change: SeatChange | AdapterChange | readonly SeatChange[],
): [readonly SeatChange[], readonly AdapterChange[]] {
  if (Array.isArray(change)) return [change, []];
  return 'mating' in change ? [[], [change]] : [[change as SeatChange], []];
}
