/**
 * The slow way of buying what a bill needs: every choice of lots is tried, each as often as it is
 * of use.
 */

import type { KitQuestion, Offer } from '../../../src/domain/kit/question.js';
import { decimalText, type Rational } from '../../../src/domain/quantity/rational.js';

export interface Wish {
  readonly article: string;
  readonly dimension: string;
  readonly amount: number;
  readonly isExtra: boolean;
}

const inThousandths = (value: Rational): number => Number(decimalText(value, 3)) * 1000;
export const exactThousandths = (value: Rational): number => Math.round(inThousandths(value));
export function usable(
  name: string,
  dimension: string,
  { offers, avoid, limits }: KitQuestion,
): Offer[] {
  return offers.filter(({ record, pack }) => {
    if (record.for !== name || pack.dimension !== dimension) return false;
    if (record.supplier !== undefined && avoid.suppliers.has(record.supplier)) return false;
    if (limits.leadDays === null) return true;
    return record.leadDays !== undefined && record.leadDays <= limits.leadDays;
  });
}

export function cheapest(
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

export function bestPurchase(
  wishes: readonly Wish[],
  question: KitQuestion,
  mostMoney: number,
): { unpriced: number; money: number } | null {
  const { limits, from } = question;
  const wanted = question.wants.flatMap((want) => (want.is === 'lot' ? [want.lot] : []));
  const ids = [...new Set([...question.lots, ...wanted])];
  const takesUnpriced = from === 'recorded' && !limits.inStock && limits.leadDays === null;
  let best: { unpriced: number; money: number; minor: number } | null = null;
  for (const chosen of choicesOf(ids, wishes, question)) {
    if (wanted.some((id) => !chosen.includes(id))) continue;
    let [unpriced, money, minor, isHad] = [0, 0, 0, true];
    for (const id of new Set(chosen)) {
      const copies = chosen.filter((one) => one === id).length;
      const offers = usable(id, '1', question);
      const price = lotPrice(offers, copies, id, question);
      if (offers.length > 0 ? price === null : !takesUnpriced) isHad = false;
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
      if (price !== null) {
        money += price;
        continue;
      }
      // All that the largest stock has, and the rest at an unknown price.
      const had = offers.map(
        ({ pack, record }) => (record.stock ?? 0) * exactThousandths(pack.value),
      );
      let most = Math.max(0, ...had);
      if (most > 0) money += cheapest(offers, most, question, article) ?? 0;
      for (const { amount, isExtra } of short) {
        most -= amount;
        if (most >= 0) continue;
        if (isExtra) minor += 1;
        else if (offers.length === 0 && takesUnpriced && !sort.includes(':')) unpriced += 1;
        else isHad = false;
      }
    }
    if (!isHad || money > mostMoney) continue;
    const order =
      best === null ? -1 : unpriced - best.unpriced || money - best.money || minor - best.minor;
    if (order < 0) best = { unpriced, money, minor };
  }
  return best === null ? null : { unpriced: best.unpriced + best.minor, money: best.money };
}

/** Every choice of lots; one that is bought several times is named as often. */
function choicesOf(
  ids: readonly string[],
  wishes: readonly Wish[],
  question: KitQuestion,
): string[][] {
  let choices: string[][] = [[]];
  for (const id of ids) {
    const uses = held(id, question).flatMap(([key, amount]) => {
      const needed = wishes.filter(({ article, dimension }) => `${article} ${dimension}` === key);
      return Math.ceil(needed.reduce((sum, one) => sum + one.amount, 0) / amount);
    });
    const most = Math.max(1, ...uses);
    choices = choices.flatMap((choice) =>
      Array.from({ length: most + 1 }, (_, copies) => [
        ...choice,
        ...Array.from({ length: copies }, () => id),
      ]),
    );
  }
  return choices.filter((choice) =>
    ids.every((id) => {
      const copies = choice.filter((one) => one === id).length;
      return copies < 2 || usable(id, '1', question).length > 0;
    }),
  );
}

function isTakenApart(id: string, { catalogue }: KitQuestion): boolean {
  return catalogue.lots.get(id)?.contains.some(({ is }) => is === 'position') ?? false;
}

function lotPrice(
  offers: readonly Offer[],
  copies: number,
  id: string,
  question: KitQuestion,
): number | null {
  const prices = offers.flatMap(({ pack, price, record }) => {
    const size = Math.floor(exactThousandths(pack.value) / 1000);
    const packs = Math.ceil(copies / size);
    const stock = record.stock ?? null;
    if (question.limits.inStock) return packs > (stock ?? 0) ? [] : [packs * price];
    const most = isTakenApart(id, question) ? Math.max(1, stock ?? 1) : packs;
    return packs > most ? [] : [packs * price];
  });
  return prices.length === 0 ? null : Math.min(...prices);
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
