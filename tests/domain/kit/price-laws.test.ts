/**
 * What holds of every bill, over random small shops: it agrees with a slow second reckoning, a
 * larger bill has no lower floor, no change adds less than is said of it, totals are the sums of
 * lines, and whatever is bought or at hand is used once.
 *
 * FAYING_CASES sets how many shops are drawn, FAYING_SEED which.
 */

import fc from 'fast-check';
import { expect, test, vi } from 'vitest';
import type { Bill, Line } from '../../../src/domain/kit/basket.js';
import { PriceList } from '../../../src/domain/kit/price.js';
import type { KitQuestion } from '../../../src/domain/kit/question.js';
import {
  add,
  exactText,
  multiply,
  rational,
  subtract,
  ZERO,
} from '../../../src/domain/quantity/rational.js';
import { naivePrice } from './naive-price.js';
import { billOf, type SmallCase, smallCase, smallCases } from './small-shop.js';

const CASES = Number(process.env.FAYING_CASES ?? 400);
const SEED = Number(process.env.FAYING_SEED ?? 1);
const RUN = { numRuns: CASES, seed: SEED };

vi.setConfig({ testTimeout: 30_000 + CASES * 50 });

function preferredOf({ prefer }: KitQuestion, minutes: number, changed: number): number | null {
  if (prefer === 'changed-positions') return changed;
  return prefer === 'labour-hours' ? minutes : 0;
}

test('a bill costs what a second reckoning of it says', () => {
  const counts = { priced: 0, refused: 0, lots: 0, unpriced: 0 };
  fc.assert(
    fc.property(smallCases, (drawn) => {
      const { question, bill } = smallCase(drawn);
      const list = new PriceList(question);
      const cost = list.cost(bill);
      const naive = naivePrice(question, bill);
      if (naive === null) {
        counts.refused += 1;
        expect([cost, list.basket(bill)]).toEqual([Number.POSITIVE_INFINITY, null]);
        return;
      }
      counts.priced += 1;
      const { unpriced, money, minutes, changed } = naive;
      const lanes = list.lanesOf(cost);
      expect(lanes).toMatchObject({ unpriced, money });
      const { totals, lines } = list.basket(bill)!;
      expect(totals.unpriced).toHaveLength(unpriced);
      expect(exactText(multiply(totals.labourHours, rational(60)))).toBe(`${minutes}`);
      expect([totals.cost, totals.changedPositions]).toEqual([money, changed]);
      // In what fraction of the hour labour is counted is told by what of it there is.
      if (question.prefer === 'labour-hours') expect(lanes.preferred > 0).toBe(minutes > 0);
      else expect(lanes.preferred).toBe(preferredOf(question, minutes, changed));
      counts.lots += lines.some(({ action }) => action === 'lot') ? 1 : 0;
      counts.unpriced += unpriced > 0 ? 1 : 0;
    }),
    RUN,
  );
  for (const count of Object.values(counts)) expect(count).toBeGreaterThan(CASES / 20);
});

test('costs are in the order of what is preferred, unpriced lines, money and changes', () => {
  fc.assert(
    fc.property(smallCases, fc.nat(63), (drawn, mask) => {
      const { question, places, bill } = smallCase(drawn);
      const list = new PriceList({ ...question, limits: { ...question.limits, cost: null } });
      const some = billOf(
        question,
        places.filter((_, index) => (mask >> index) % 2 === 1),
      );
      const [a, b] = [bill, some].map((one) => {
        const totals = list.basket(one)?.totals;
        if (totals === undefined) return null;
        const hours = Number(exactText(multiply(totals.labourHours, rational(60))));
        const first = preferredOf(question, hours, totals.changedPositions) ?? 0;
        const key = [first, totals.unpriced.length, totals.cost, totals.changedPositions];
        return { key, cost: list.cost(one) };
      });
      if (a == null || b == null) return;
      const at = a.key.findIndex((lane, index) => lane !== b.key[index]);
      const order = at < 0 ? 0 : Math.sign(a.key[at]! - b.key[at]!);
      expect(Math.sign(a.cost - b.cost)).toBe(order);
    }),
    RUN,
  );
});

test('no bill costs less than the least of any part of it', () => {
  let compared = 0;
  fc.assert(
    fc.property(smallCases, fc.nat(31), fc.nat(7), (drawn, mask, extras) => {
      const one = smallCase(drawn);
      const list = new PriceList(one.question);
      const some = billOf(
        one.question,
        one.places.filter((_, index) => (mask >> index) % 2 === 1),
      );
      const smaller: Bill = {
        ...some,
        adapters: mask % 2 === 1 ? one.bill.adapters : [],
        consumed: one.bill.consumed.filter((_, index) => (extras >> index) % 2 === 1),
      };
      const [less, more] = [list.floor(smaller), list.floor(one.bill)];
      expect(more).toBeGreaterThanOrEqual(less);
      expect(list.cost(one.bill)).toBeGreaterThanOrEqual(more);
      if (more < Number.POSITIVE_INFINITY && more > less) compared += 1;
    }),
    RUN,
  );
  expect(compared).toBeGreaterThan(CASES / 10);
});

test('one hand more never costs less, and no less than is said of it alone', () => {
  let compared = 0;
  fc.assert(
    fc.property(smallCases, (drawn) => {
      const { question, places, bill } = smallCase(drawn);
      const list = new PriceList(question);
      const pair = places.find((changes) => changes.length === 2);
      if (pair === undefined) return;
      for (const [one, other] of [pair, [...pair].reverse()]) {
        const others = places.filter((changes) => changes !== pair);
        const base = { ...bill, ...billOf(question, [...others, [other!]]) };
        const before = { ...base, adapters: bill.adapters, consumed: bill.consumed };
        const added = list.atLeast(one!);
        expect(list.cost(before) + added).toBeLessThanOrEqual(list.cost(bill));
        if (added > 0) compared += 1;
      }
    }),
    RUN,
  );
  expect(compared).toBeGreaterThan(CASES / 50);
});

test('no place and no adapter adds less than is said of it', () => {
  let compared = 0;
  let exact = 0;
  fc.assert(
    fc.property(smallCases, (drawn) => {
      const one = smallCase(drawn);
      const list = new PriceList(one.question);
      for (const place of one.places) {
        const rest = billOf(
          one.question,
          one.places.filter((changes) => changes !== place),
        );
        const before = { ...rest, adapters: one.bill.adapters, consumed: one.bill.consumed };
        count(list.atLeast(place), list.floor(before), list.floor(one.bill));
      }
      for (const mating of one.matings) {
        const before = { ...one.bill, adapters: [] };
        count(list.atLeast(mating), list.floor(before), list.floor(one.bill));
      }
    }),
    RUN,
  );
  function count(added: number, before: number, after: number) {
    expect(before + added).toBeLessThanOrEqual(after);
    if (after === Number.POSITIVE_INFINITY) return;
    if (added > 0) compared += 1;
    if (before + added === after) exact += 1;
  }
  expect(compared).toBeGreaterThan(CASES / 4);
  expect(exact).toBeGreaterThan(CASES / 8);
});

test('totals are the sums of lines, each named once', () => {
  fc.assert(
    fc.property(smallCases, (drawn) => {
      const { question, bill } = smallCase(drawn);
      const basket = new PriceList(question).basket(bill);
      if (basket === null) return;
      const { lines, totals } = basket;
      const keys = lines.map(({ key }) => key);
      expect(new Set(keys).size).toBe(keys.length);
      const sum = (of: (line: Line) => number | null, some = lines) =>
        some.reduce((before, line) => before + (of(line) ?? 0), 0);
      const works = lines.filter(({ action }) => action === 'work');
      const parts = lines.filter(({ action }) => action !== 'work');
      expect(totals.works).toBe(sum(({ price }) => price, works));
      expect(totals.parts).toBe(sum(({ price }) => price, parts));
      const labour = question.labourRate === null ? null : sum((line) => line.labourPrice);
      expect(totals.labour).toBe(labour);
      expect(totals.cost).toBe(totals.parts + totals.works + (labour ?? 0));
      const hours = lines.map(({ labourHours }) => labourHours ?? ZERO).reduce(add, ZERO);
      expect(exactText(totals.labourHours)).toBe(exactText(hours));
      for (const { labourPrice } of lines) expect((labourPrice ?? 0) % 100).toBe(0);
    }),
    RUN,
  );
});

test('goods are used once, whatever they come from', () => {
  fc.assert(
    fc.property(smallCases, (drawn) => holdsGoodsTogether(smallCase(drawn))),
    RUN,
  );
});

function holdsGoodsTogether({ question, bill }: SmallCase): void {
  const basket = new PriceList(question).basket(bill);
  if (basket === null) return;
  const { lines } = basket;
  const total = (some: readonly Line[]) =>
    some.map(({ quantity }) => quantity ?? ZERO).reduce(add, ZERO);
  for (const [part, count] of question.owned) {
    const used = lines.filter((line) => line.part === part && line.source === 'owned');
    expect(total(used).compare(rational(count))).toBeLessThanOrEqual(0);
  }
  for (const lot of lines.filter(({ action }) => action === 'lot')) {
    const used = lines.filter(({ fromLot }) => fromLot === lot.lot);
    const isWanted = question.wants.some((want) => want.is === 'lot' && want.lot === lot.lot);
    if (!isWanted) expect(used.length).toBeGreaterThan(0);
    for (const line of used) expect(line.price).toBe(0);
  }
  const bought = lines.filter(({ source, action }) => source === 'offer' && action !== 'lot');
  for (const { offer, part, dimension } of bought) {
    const same = bought.filter((line) => line.part === part && line.dimension === dimension);
    expect(new Set(same.map((line) => line.offer)).size).toBe(1);
    const packs = same.reduce((sum, line) => sum + line.packs!, 0);
    const over = same.map((line) => line.over!).reduce(add, ZERO);
    const left = subtract(multiply(offer!.pack.value, rational(packs)), total(same));
    expect(exactText(over)).toBe(exactText(left));
    expect(over.compare(offer!.pack.value)).toBeLessThan(0);
  }
}
