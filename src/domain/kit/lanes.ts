/**
 * What counts first, packed with what counts next into one whole number, so that a search can
 * compare and add costs as it would any numbers.
 *
 * The lanes, from the highest digits down:
 *
 *   preferred  changed positions, or hours in their smallest common fraction; for the other
 *              preferences there is no such lane
 *   unpriced   lines whose price is not known
 *   money      all that is bought, works and labour, in the largest amount that divides them all
 *   changed    changed positions, unless they are the preferred lane already
 *
 * The lanes beside money are as wide as the question can make them: so many positions, so many
 * lines that could be without a price, so many hours. Money has all the digits that are left. What
 * does not fit is refused and never carried into another lane.
 */

import type { Layout } from '../catalogue/catalogue.js';
import {
  add,
  compare,
  decimalText,
  inProportion,
  larger,
  multiply,
  ONE,
  type Rational,
  rational,
  roundDown,
  ZERO,
} from '../quantity/rational.js';
import type { Market } from './market.js';
import type { KitQuestion, Money } from './question.js';

export interface Lanes {
  /** Changed positions, or hours in units of `hourUnits`; 0 where neither is preferred. */
  readonly preferred: number;
  readonly unpriced: number;
  readonly money: Money;
  readonly changed: number;
}

/** What of a packed number is its price, unpriced lines and money together: plain data. */
export interface PriceLane {
  /** The lanes below it count to this. */
  readonly below: number;
  /** The price counts to this. */
  readonly width: number;
}

/** Greater for what is dearer; what is preferred to the price, and what is behind it, left out. */
export function priceIn(packed: number, { below, width }: PriceLane): number {
  return Math.floor(packed / below) % width;
}

/** No article is worked more often. */
const MOST_WORKS = 8;

/** Labour is priced in hundredths, whatever the rate. */
const LABOUR_STEP = 100;

export class Packing {
  /** So many to the hour count any labour of the question in whole numbers. */
  readonly #hourUnits: number;
  readonly #step: Money;
  readonly #unpriced: number;
  readonly #money: number;
  readonly #changed: number;
  readonly #preferred: number;

  /** @throws RangeError where no digit is left for money. */
  constructor(question: KitQuestion, market: Market) {
    const { vehicle, prefer } = question;
    const positions = vehicle.layout.positions.size;
    const hours = hoursOf(question);
    this.#hourUnits = wholeNumber(inProportion([ONE, ...hours.all])[0] ?? 1n);
    this.#step = stepOf(question);
    this.#unpriced = mostUnpriced(question, market) + 1;
    this.#changed = prefer === 'changed-positions' ? 1 : positions + 1;
    this.#preferred = 1;
    if (prefer === 'changed-positions') this.#preferred = positions + 1;
    if (prefer === 'labour-hours') this.#preferred = this.hours(hours.most) + 1;
    const others = this.#preferred * this.#unpriced * this.#changed;
    this.#money = Math.floor(Number.MAX_SAFE_INTEGER / others);
    if (this.#money < 1) throw new RangeError(`no digit is left for money: ${others} combinations`);
  }

  get priceLane(): PriceLane {
    return { below: this.#changed, width: this.#unpriced * this.#money };
  }

  /** Hours as a whole number; those of the question are exact, others are cut. */
  hours(hours: Rational): number {
    const units = roundDown(multiply(hours, rational(this.#hourUnits)), 0);
    return wholeNumber(BigInt(decimalText(units, 0)));
  }

  /** @throws RangeError where a lane is not wide enough. */
  pack({ preferred, unpriced, money, changed }: Lanes): number {
    const amount = money / this.#step;
    if (!Number.isInteger(amount)) throw new RangeError(`${money} is no multiple of ${this.#step}`);
    const below = this.#changed === 1 ? 0 : changed;
    if (
      preferred >= this.#preferred ||
      unpriced >= this.#unpriced ||
      amount >= this.#money ||
      below >= this.#changed
    ) {
      const said = `${preferred} preferred, ${unpriced} unpriced, ${money} to pay`;
      throw new RangeError(`too much to be counted in one number: ${said}`);
    }
    return ((preferred * this.#unpriced + unpriced) * this.#money + amount) * this.#changed + below;
  }

  unpack(packed: number): Lanes {
    const changed = packed % this.#changed;
    const rest = (packed - changed) / this.#changed;
    const amount = rest % this.#money;
    const above = (rest - amount) / this.#money;
    const unpriced = above % this.#unpriced;
    const preferred = (above - unpriced) / this.#unpriced;
    return { preferred, unpriced, money: amount * this.#step, changed };
  }
}

/** The hours that a bill can have in it, and the most that they can come to. */
function hoursOf(question: KitQuestion): { readonly all: Rational[]; readonly most: Rational } {
  const { vehicle, catalogue, prefer, limits, workUpTo } = question;
  if (prefer !== 'labour-hours' && limits.labourHours === null) return { all: [], most: ZERO };
  const works = workUpTo === 'none' ? [] : [...catalogue.works.values()];
  const worked = works.flatMap(({ labour }) => (labour === null ? [] : [labour]));
  const longest = worked.toSorted((a, b) => compare(b, a)).slice(0, MOST_WORKS);
  const each = longest.reduce(add, ZERO);
  const all = [...worked];
  let most = ZERO;
  for (const { labour, access, count, isHanded } of vehicle.layout.positions.values()) {
    const pieces = rational(isHanded ? Math.max(2, count) : count);
    const own = larger(multiply(labour ?? ZERO, pieces), access ?? ZERO);
    most = add(most, add(own, multiply(each, pieces)));
    all.push(labour ?? ZERO, access ?? ZERO);
  }
  return { all, most };
}

/** The largest amount of which all prices are multiples. */
function stepOf({ offers, labourRate }: KitQuestion): Money {
  let step = labourRate === null ? 0 : LABOUR_STEP;
  for (const { price } of offers) {
    let [a, b] = [step, price];
    while (b !== 0) [a, b] = [b, a % b];
    step = a;
  }
  return step === 0 ? 1 : step;
}

/** So many lines can be without a price at the most. */
function mostUnpriced({ vehicle, catalogue, workUpTo }: KitQuestion, market: Market): number {
  const { layout } = vehicle;
  const goods = market.takesUnpriced ? 1 : 0;
  const unoffered =
    workUpTo === 'none' || !market.takesUnpricedWorks
      ? 0
      : [...catalogue.works.keys()].filter((id) => market.work(id, 1) === null).length;
  const works = Math.min(MOST_WORKS, unoffered);
  let most = goods * adaptersOf(layout);
  for (const { isHanded } of layout.positions.values())
    most += (isHanded ? 2 : 1) * (goods + works);
  most += market.lots.filter(({ isOffered }) => !isOffered).length;
  // What a rule uses up may be known in one part and unknown in another.
  const consuming = catalogue.rules.get(layout.id)?.filter((rule) => rule.consumes !== null) ?? [];
  return most + consuming.length * 2;
}

function adaptersOf({ matings }: Layout): number {
  return [...matings.values()].reduce((sum, { adapters }) => sum + adapters, 0);
}

function wholeNumber(units: bigint): number {
  const number = Number(units);
  if (!Number.isSafeInteger(number)) throw new RangeError(`too many hours to count: ${units}`);
  return number;
}
