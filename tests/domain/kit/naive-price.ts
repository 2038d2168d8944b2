/**
 * A second, slow way of reckoning a bill that shares no code with the first: every choice of lots
 * is tried, hours are whole minutes, and quantities thousandths.
 */

import type { Bill, SeatChange } from '../../../src/domain/kit/basket.js';
import type { KitQuestion, Offer } from '../../../src/domain/kit/question.js';
import { decimalText, type Rational, rational } from '../../../src/domain/quantity/rational.js';

export interface Reckoned {
  readonly unpriced: number;
  readonly money: number;
  readonly minutes: number;
  readonly changed: number;
}

interface Wish {
  readonly article: string;
  readonly dimension: string;
  readonly amount: number;
  readonly isExtra: boolean;
}

const inThousandths = (value: Rational): number => Number(decimalText(value, 3)) * 1000;
const exactThousandths = (value: Rational): number => Math.round(inThousandths(value));
const minutesOf = (hours: Rational | null): number | null =>
  hours === null ? null : Number(decimalText(hours.mul(rational(60)), 0));

function centsUp(rate: number, minutes: number): number {
  // In hundredths of a ten-thousandth of a minute's sixtieth, so that halves are whole numbers.
  return Math.floor((2 * rate * minutes + 6000) / 12000) * 100;
}

export function naivePrice(question: KitQuestion, bill: Bill): Reckoned | null {
  const { labourRate: rate, limits } = question;
  let [minutes, money, unpriced] = [0, 0, 0];
  const wishes: Wish[] = [];
  const timed = (some: number | null) => {
    minutes += some ?? 0;
    money += rate === null ? 0 : centsUp(rate, some ?? 0);
  };
  const places = [...new Set(bill.seats.map(({ position }) => position))];
  places.sort((a, b) => a.index - b.index);
  for (const position of places) {
    const changes = bill.seats.filter((one) => one.position === position);
    changes.sort((a, b) => (a.hand ?? '').localeCompare(b.hand ?? ''));
    const adds = new Map<string, number>();
    const lines = new Map<string, number>();
    const works = new Map<string, number>();
    for (const change of changes) tally(change, question, { adds, lines, works });
    for (const [article, pieces] of adds) {
      wishes.push({ article, dimension: '1', amount: pieces * 1000, isExtra: false });
    }
    for (const [line, pieces] of works) {
      const [, id = ''] = line.split(' ');
      const price = cheapest(usable(id, '1', question), pieces * 1000, question, id);
      if (price === null && (question.from === 'offered' || limits.leadDays !== null)) return null;
      money += price ?? 0;
      unpriced += price === null ? 1 : 0;
      const own = minutesOf(question.catalogue.works.get(id)?.labour ?? null);
      timed(own === null ? null : own * pieces);
    }
    const access = minutesOf(position.access);
    const each = minutesOf(position.labour);
    const own = [...lines.values()].map((pieces) => (each ?? 0) * pieces);
    const first = changes[0]?.pieces ?? 0;
    if (own.length > 0 && access !== null && access > (each ?? -1) * first) {
      timed(
        Math.max(
          access,
          own.reduce((sum, one) => sum + one, 0),
        ),
      );
    } else for (const one of own) timed(one);
  }
  for (const position of bill.opened) {
    if (!places.includes(position)) timed(minutesOf(position.access));
  }
  for (const { now, becomes, pieces } of bill.adapters) {
    const left = [...now];
    const fresh = becomes.filter((part) => {
      const at = left.indexOf(part);
      if (at >= 0) left.splice(at, 1);
      return at < 0;
    });
    for (const article of new Set(fresh)) {
      const count = fresh.filter((part) => part === article).length;
      wishes.push({ article, dimension: '1', amount: count * pieces * 1000, isExtra: false });
    }
  }
  const parts = [...new Set(bill.consumed.map(({ part }) => part))].sort();
  for (const article of parts) {
    for (const dimension of ['1', 'mass', 'volume']) {
      const own = bill.consumed.filter(
        (one) => one.part === article && one.dimension === dimension,
      );
      if (own.some(({ quantity }) => quantity === null)) unpriced += 1;
      const known = own.flatMap(({ quantity }) => (quantity === null ? [] : [quantity]));
      const sum = known.reduce((before, one) => before + exactThousandths(one), 0);
      const amount = dimension === '1' ? Math.ceil(sum / 1000) * 1000 : sum;
      if (amount > 0) wishes.push({ article, dimension, amount, isExtra: true });
    }
  }
  const changed = places.filter((position) =>
    bill.seats.some(
      (one) => one.position === position && JSON.stringify(one.now) !== JSON.stringify(one.becomes),
    ),
  ).length;
  if (limits.changedPositions !== null && changed > limits.changedPositions) return null;
  if (limits.labourHours !== null && minutes > (minutesOf(limits.labourHours) ?? 0)) return null;
  const bought = bestPurchase(wishes, question, (limits.cost ?? 1e15) - money);
  if (bought === null) return null;
  return { unpriced: unpriced + bought.unpriced, money: money + bought.money, minutes, changed };
}

interface Tally {
  readonly adds: Map<string, number>;
  /** Pieces by the line that their labour stands on. */
  readonly lines: Map<string, number>;
  /** By part and work. */
  readonly works: Map<string, number>;
}

function tally(change: SeatChange, { catalogue }: KitQuestion, { adds, lines, works }: Tally) {
  const { now, becomes, pieces, position } = change;
  const count = (map: Map<string, number>, key: string) =>
    map.set(key, (map.get(key) ?? 0) + pieces);
  const was = now.is === 'part' ? now.part : '';
  if (becomes.is !== 'part') {
    if (now.is !== 'empty') count(lines, `remove ${was}`);
    return;
  }
  const [base = '', ...done] = becomes.part.split('+');
  const inPlace = was !== '' && becomes.part.startsWith(`${was}+`);
  const isFirst = (catalogue.parts.get(base)?.spans ?? [position.id])[0] === position.id;
  if (inPlace) count(lines, 'stays');
  else if (isFirst) {
    count(adds, base);
    count(lines, `add ${base}`);
  } else count(lines, was === '' ? 'reaches here' : `remove ${was}`);
  const before = inPlace ? was.split('+').length - 1 : 0;
  if (isFirst) for (const work of done.slice(before)) count(works, `${base} ${work}`);
}

function usable(name: string, dimension: string, { offers, avoid, limits }: KitQuestion): Offer[] {
  return offers.filter(({ record, pack }) => {
    if (record.for !== name || pack.dimension !== dimension) return false;
    if (record.supplier !== undefined && avoid.suppliers.has(record.supplier)) return false;
    if (limits.leadDays === null) return true;
    return record.leadDays !== undefined && record.leadDays <= limits.leadDays;
  });
}

function cheapest(
  offers: readonly Offer[],
  amount: number,
  { limits, catalogue }: KitQuestion,
  name: string,
): number | null {
  const prices = offers.flatMap(({ pack, price, record }) => {
    const packs = Math.ceil(amount / exactThousandths(pack.value));
    const isShort = limits.inStock && !catalogue.works.has(name) && packs > (record.stock ?? 0);
    return isShort ? [] : [packs * price];
  });
  return prices.length === 0 ? null : Math.min(...prices);
}

function bestPurchase(
  wishes: readonly Wish[],
  question: KitQuestion,
  mostMoney: number,
): { unpriced: number; money: number } | null {
  const { limits, from } = question;
  const wanted = question.wants.flatMap((want) => (want.is === 'lot' ? [want.lot] : []));
  const ids = [...new Set([...question.lots, ...wanted])];
  const takesUnpriced = from === 'recorded' && !limits.inStock && limits.leadDays === null;
  let best: { unpriced: number; money: number } | null = null;
  for (let mask = 0; mask < 2 ** ids.length; mask += 1) {
    const chosen = ids.filter((_, index) => (mask >> index) % 2 === 1);
    if (wanted.some((id) => !chosen.includes(id))) continue;
    let [unpriced, money, isHad] = [0, 0, true];
    for (const id of chosen) {
      const price = cheapest(usable(id, '1', question), 1000, question, id);
      if (price === null && !takesUnpriced) isHad = false;
      if (price === null) unpriced += 1;
      else money += price;
    }
    const stocks = new Map<string, number>();
    for (const [part, count] of question.owned) stocks.set(`${part} 1`, count * 1000);
    for (const id of chosen) {
      for (const [key, amount] of held(id, question)) {
        stocks.set(key, (stocks.get(key) ?? 0) + amount);
      }
    }
    const sorts = new Set(wishes.map(({ article, dimension }) => `${article} ${dimension}`));
    for (const sort of sorts) {
      let stock = stocks.get(sort) ?? 0;
      const short: { amount: number; isExtra: boolean }[] = [];
      for (const wish of wishes) {
        if (`${wish.article} ${wish.dimension}` !== sort) continue;
        const taken = Math.min(stock, wish.amount);
        stock -= taken;
        if (taken < wish.amount) short.push({ ...wish, amount: wish.amount - taken });
      }
      const missing = short.reduce((sum, { amount }) => sum + amount, 0);
      if (missing === 0) continue;
      const [article = '', dimension = ''] = sort.split(' ');
      const offers = usable(article, dimension, question).filter(
        ({ record }) => !limits.inStock || (record.stock ?? 0) > 0,
      );
      const price = cheapest(offers, missing, question, article);
      if (price !== null) money += price;
      else if (offers.length > 0) isHad = false;
      else if (short.some(({ isExtra }) => !isExtra) && !(takesUnpriced && !sort.includes(':'))) {
        isHad = false;
      } else unpriced += short.length;
    }
    if (!isHad || money > mostMoney) continue;
    const order = best === null ? -1 : unpriced - best.unpriced || money - best.money;
    if (order < 0) best = { unpriced, money };
  }
  return best;
}

/** What is in a lot, each thing by its article and dimension. */
function held(id: string, { catalogue }: KitQuestion): [string, number][] {
  const spanned = new Set<string>();
  return (catalogue.lots.get(id)?.contains ?? []).flatMap((item): [string, number][] => {
    if (item.is === 'part') {
      const { value, dimension } = item.amount;
      return [[`${item.part} ${dimension}`, exactThousandths(value)]];
    }
    const vehicle = catalogue.vehicles.get(item.vehicle)!;
    const fitted = vehicle.fitted.get(item.position);
    const unknown: [string, number] = [`donor:${id}:${item.position} 1`, 1000];
    if (fitted === undefined) return [unknown];
    const count = vehicle.layout.positions.get(item.position)!.count;
    const seats = fitted.hands ? [fitted.left, fitted.right] : [fitted.occupant];
    const amount = fitted.hands ? 1000 * Math.max(1, count / 2) : 1000 * count;
    const parts = seats.flatMap((one): [string, number][] => {
      if (one.is !== 'part') return [];
      const key = `${item.vehicle} ${one.part}`;
      const isAgain = spanned.has(key);
      if (catalogue.parts.get(one.part)?.spans != null) spanned.add(key);
      return isAgain ? [] : [[`${one.part} 1`, amount]];
    });
    const isUnknown = seats.some((one) => one.is === 'as-found' || one.is === 'option');
    return isUnknown ? [...parts, unknown] : parts;
  });
}
