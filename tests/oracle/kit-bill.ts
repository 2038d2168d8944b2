/**
 * What a configuration costs, found by trying every way of buying what it takes: what is owned
 * first, then every set of lots, then of each article the offer that is cheapest for all that is
 * left of it.
 */

import type { CatalogueDocument } from '../../src/domain/catalogue/document.js';
import {
  compare,
  type Fraction,
  fraction,
  minus,
  over,
  plus,
  readFraction,
  times,
  ZERO,
} from './fraction.js';
import { addPieces, contentsOf, type KitAsk, type Pieces } from './kit-ask.js';
import { byId, isDonorName } from './scene.js';

/** One line of what a change takes in goods. */
export interface Goods {
  readonly part: string;
  readonly quantity: Fraction;
  /** '' for pieces, or a unit such as `l`. */
  readonly unit: string;
  /** What a rule uses up is bought if it can be, and stops nothing. */
  readonly isExtra: boolean;
}

export interface Bill {
  /** In the order in which they are served. */
  readonly goods: readonly Goods[];
  /** The time of each line, as far as it is recorded; each is rounded on its own. */
  readonly hours: readonly Fraction[];
  /** Some of the time is not recorded. */
  readonly isUntimed: boolean;
  /** At each place, by name, with the number of pieces worked on. */
  readonly works: readonly { readonly work: string; readonly pieces: number }[];
}

export interface Cost {
  /** How many lines have no known price. */
  readonly unpriced: number;
  /** Ten-thousandths of the currency. */
  readonly money: number;
  readonly hours: Fraction;
  /** Nobody can tell whether the limit of cost is kept. */
  readonly isLimitUnknown: boolean;
  /** Lots bought, for those who ask how it was done. */
  readonly lots: readonly string[];
  readonly ownedUsed: Pieces;
}

/** Null where something cannot be had, or not for so little. */
export function costOf(bill: Bill, document: CatalogueDocument, ask: KitAsk): Cost | null {
  const labour = labourOf(bill, document, ask);
  if (
    labour === null ||
    bill.goods.some(({ part, isExtra }) => isExtra && ask.avoid.includes(part))
  )
    return null;
  const ways = waysWithLots(bill, document, ask).flatMap((lots) => {
    const bought = buyWith(lots, bill, document, ask);
    if (bought === null) return [];
    // What has no known price counts nothing against the limit.
    const isWithin = ask.costLimit === null || bought.money + labour.money <= ask.costLimit;
    return isWithin ? [bought] : [];
  });
  const [first, ...others] = ways;
  if (first === undefined) return null;
  const best = others.reduce((a, b) => (isDearer(a, b) ? b : a), first);
  const unpriced = best.unpriced + best.minor + labour.unpriced;
  const isUnknown = unpriced > 0 || (bill.isUntimed && ask.labourRate !== null);
  return {
    ...best,
    ...labour,
    unpriced,
    money: best.money + labour.money,
    isLimitUnknown: ask.costLimit !== null && isUnknown,
  };
}

/** Lots, each so many times. */
type Copies = ReadonlyMap<string, number>;

/**
 * Every number of every lot that could be of use: a wanted one at least once; what comes off a
 * vehicle, and what nobody offers, once at the most.
 */
function waysWithLots(
  { goods }: Bill,
  document: CatalogueDocument,
  { lots, wants }: KitAsk,
): Copies[] {
  const wanted = new Set(wants.flatMap((want) => (want.is === 'lot' ? [want.lot] : [])));
  let ways: Map<string, number>[] = [new Map()];
  for (const lot of new Set([...lots, ...wanted])) {
    const isSingle =
      byId(document.lots, lot).contains.some((item) => !('part' in item)) ||
      (document.offers ?? []).every((offer) => offer.for !== lot);
    const needed = goods.filter(({ part }) => contentsOf(document, lot).has(part));
    const pieces = needed.reduce((sum, { quantity }) => plus(sum, quantity), ZERO);
    const most = Math.max(isSingle ? 1 : packsFor(pieces, fraction(1n)), 1);
    const least = wanted.has(lot) ? 1 : 0;
    const counts = Array.from({ length: most - least + 1 }, (_, index) => least + index);
    ways = ways.flatMap((way) => counts.map((count) => new Map([...way, [lot, count]])));
  }
  return ways;
}

interface Bought extends Pick<Cost, 'unpriced' | 'money' | 'lots' | 'ownedUsed'> {
  /** Lines without a price for what rules use up: no lot is paid for to have them. */
  readonly minor: number;
}

function isDearer(a: Bought, b: Bought): boolean {
  const lanes = ({ unpriced, money, minor }: Bought) => [unpriced, money, minor];
  const at = lanes(a).findIndex((lane, index) => lane !== lanes(b)[index]);
  return at >= 0 && (lanes(a)[at] ?? 0) > (lanes(b)[at] ?? 0);
}

export function subsetsOf<Item>(items: readonly Item[]): Item[][] {
  const subsets: Item[][] = [[]];
  for (const item of items) subsets.push(...subsets.map((subset) => [...subset, item]));
  return subsets;
}

function buyWith(
  copies: Copies,
  { goods }: Bill,
  document: CatalogueDocument,
  ask: KitAsk,
): Bought | null {
  const lots = [...copies].filter(([, count]) => count > 0);
  const prices = lots.map(([lot, count]) => cheapest(lot, fraction(count), '', document));
  if (ask.from === 'offered' && prices.includes(null)) return null;
  const atHand = new Map<string, number>(Object.entries(ask.owned));
  for (const [lot, count] of lots) {
    for (const [part, pieces] of contentsOf(document, lot)) addPieces(atHand, part, pieces * count);
  }
  let unpriced = prices.filter((price) => price === null).length;
  let minor = 0;
  let money = prices.reduce<number>((sum, price) => sum + (price ?? 0), 0);
  const ownedUsed = new Map<string, number>();
  for (const [part, unit] of articlesIn(goods)) {
    const lines = goods.filter((one) => one.part === part && one.unit === unit);
    const left = leftOf(lines, unit === '' ? fraction(atHand.get(part) ?? 0) : ZERO);
    const used = Math.min(lines.length > left.length ? 1 : 0, ask.owned[part] ?? 0);
    if (used > 0) ownedUsed.set(part, used);
    if (left.length === 0) continue;
    const all = left.reduce((sum, { quantity }) => plus(sum, quantity), ZERO);
    const price = cheapest(part, all, unit, document);
    money += price ?? 0;
    if (price !== null) continue;
    const extras = left.filter(({ isExtra }) => isExtra).length;
    const isOutOfLotOnly = ask.from === 'offered' || isDonorName(part);
    if (isOutOfLotOnly && extras < left.length) return null;
    unpriced += left.length - extras;
    minor += extras;
  }
  return { unpriced, minor, money, lots: lots.map(([lot]) => lot), ownedUsed };
}

function articlesIn(goods: readonly Goods[]): [string, string][] {
  const names = new Set(goods.map(({ part, unit }) => `${part} ${unit}`));
  return [...names].map((name) => {
    const [part = '', unit = ''] = name.split(' ');
    return [part, unit];
  });
}

/** What is left of each line, where what is at hand serves the first lines first. */
function leftOf(lines: readonly Goods[], atHand: Fraction): Goods[] {
  let left = atHand;
  return lines.flatMap((line) => {
    const rest = minus(line.quantity, left);
    left = compare(rest, ZERO) < 0 ? minus(left, line.quantity) : ZERO;
    return compare(rest, ZERO) <= 0 ? [] : [{ ...line, quantity: rest }];
  });
}

/** The least that so much of it costs in whole packs of one offer; null where none has it. */
function cheapest(
  name: string,
  quantity: Fraction,
  unit: string,
  { offers = [] }: CatalogueDocument,
): number | null {
  const prices = offers
    .filter((offer) => offer.for === name)
    .flatMap(({ price, pack = '1' }) => {
      const [size = '', of = ''] = pack.split(' ');
      if (of !== unit) return [];
      return [packsFor(quantity, readFraction(size)) * moneyOf(price)];
    });
  return prices.length === 0 ? null : Math.min(...prices);
}

function packsFor(quantity: Fraction, pack: Fraction): number {
  const { top, bottom } = over(quantity, pack);
  return Number((top + bottom - 1n) / bottom);
}

export function moneyOf(price: string): number {
  return Number(readFraction(price).top) * 10 ** (4 - (price.split('.')[1]?.length ?? 0));
}

type Labour = Pick<Cost, 'unpriced' | 'money' | 'hours'>;

/** Null where nobody offers a work, and only what is offered may be had. */
function labourOf({ hours, works }: Bill, document: CatalogueDocument, ask: KitAsk): Labour | null {
  const done = works.map(({ work, pieces }) => {
    const { labour } = (document.works ?? []).find(({ id }) => id === work) ?? {};
    return labour === undefined ? ZERO : times(hoursOf(String(labour)), fraction(pieces));
  });
  const timed = [...hours, ...done];
  const { labourRate } = ask;
  const prices = works.map(({ work, pieces }) => cheapest(work, fraction(pieces), '', document));
  if (ask.from === 'offered' && prices.includes(null)) return null;
  const rounded = timed.map((spent) =>
    labourRate === null ? 0 : toHundredths(times(spent, fraction(labourRate))),
  );
  const money = [...rounded, ...prices].reduce<number>((sum, price) => sum + (price ?? 0), 0);
  const unpriced = prices.filter((price) => price === null).length;
  return { unpriced, money, hours: timed.reduce(plus, ZERO) };
}

/** `0.5 h` or `45 min`. */
export function hoursOf(text: string): Fraction {
  const [number = '', unit = ''] = text.split(' ');
  const value = readFraction(number);
  return unit === 'min' ? over(value, fraction(60n)) : value;
}

/** In ten-thousandths, to the nearest hundredth of the currency; half of one goes up. */
function toHundredths({ top, bottom }: Fraction): number {
  const hundred = 100n * bottom;
  return Number((2n * top + hundred) / (2n * hundred)) * 100;
}
