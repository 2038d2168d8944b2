/**
 * A second, slow way of reckoning a bill that shares no code with the first: hours are whole
 * minutes, and quantities thousandths.
 */

import type { Bill, SeatChange } from '../../../src/domain/kit/basket.js';
import type { KitQuestion } from '../../../src/domain/kit/question.js';
import { decimalText, type Rational, rational } from '../../../src/domain/quantity/rational.js';
import { bestPurchase, cheapest, exactThousandths, usable, type Wish } from './naive-purchase.js';

export interface Reckoned {
  readonly unpriced: number;
  readonly money: number;
  readonly minutes: number;
  readonly changed: number;
}

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
