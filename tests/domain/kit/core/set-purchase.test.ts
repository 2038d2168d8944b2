/**
 * Sets bought whole: by hand, and against trying every choice of sets.
 */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  cheapestSets,
  type Good,
  type GoodsSet,
  NOTHING,
  type Price,
  plus,
} from '../../../../src/domain/kit/core/set-purchase.js';

const CASES = Number(process.env.FAYING_CASES ?? 2000);
const SEED = Number(process.env.FAYING_SEED ?? 1);

/** Goods at so much each, bought in packs. */
function good(demand: number, money: number, pack = 1): Good {
  return {
    demand,
    own: (quantity) => ({ ...NOTHING, money: Math.ceil(quantity / pack) * money }),
  };
}

function priceless(demand: number): Good {
  return { demand, own: () => ({ ...NOTHING, unpriced: 1 }) };
}

function nowhere(demand: number): Good {
  return { demand, own: () => null };
}

/** A set at a price, with so much of good 0, of good 1 and so on. */
function set(money: number | null, ...contents: number[]): GoodsSet {
  const price = money === null ? { ...NOTHING, unpriced: 1 } : { ...NOTHING, money };
  return {
    prices: [price],
    contents: contents.map((quantity, index) => ({ good: index, quantity })),
  };
}

describe('the cheapest purchase', () => {
  test('is on its own where the set is dearer than what it saves', () => {
    // 2 x 30 + 40 = 100 on their own; the set of all of it is 101.
    expect(cheapestSets([good(2, 30), good(1, 40)], [set(101, 2, 1)])).toEqual({
      sets: [],
      price: { ...NOTHING, money: 100 },
    });
  });

  test('is the set where it is cheaper than all of it on its own, and what it lacks beside', () => {
    // The set of one and one for 60 saves 30 + 40 = 70; one more at 30.
    expect(cheapestSets([good(2, 30), good(1, 40)], [set(60, 1, 1)])).toEqual({
      sets: [0],
      price: { ...NOTHING, money: 90 },
    });
  });

  test('has no set that costs as much as it saves', () => {
    expect(cheapestSets([good(1, 30)], [set(30, 1)])?.sets).toEqual([]);
    expect(cheapestSets([good(0, 30)], [set(0, 1)])?.sets).toEqual([]);
  });

  test('of two alike sets has the first, and both where both are needed', () => {
    const two = [set(20, 1), set(20, 1)];
    expect(cheapestSets([good(1, 30)], two)?.sets).toEqual([0]);
    expect(cheapestSets([good(2, 30)], two)?.sets).toEqual([0, 1]);
  });

  test('takes together two sets neither of which is worth its price alone', () => {
    // A pack of two for 100. One set of one saves nothing, both save the pack.
    const goods = [good(2, 100, 2)];
    expect(cheapestSets(goods, [set(40, 1)])?.sets).toEqual([]);
    expect(cheapestSets(goods, [set(40, 1), set(40, 1)])).toEqual({
      sets: [0, 1],
      price: { ...NOTHING, money: 80 },
    });
  });

  test('rather pays a known price than buys something at an unknown one', () => {
    expect(cheapestSets([priceless(1)], [set(500, 1)])?.sets).toEqual([0]);
    expect(cheapestSets([good(1, 500)], [set(null, 1)])?.sets).toEqual([]);
    // One set at an unknown price in place of two goods at unknown prices.
    expect(cheapestSets([priceless(1), priceless(1)], [set(null, 1, 1)])?.sets).toEqual([0]);
  });

  test('stays within the money there is, if need be at an unknown price', () => {
    expect(cheapestSets([priceless(1)], [set(500, 1)], 499)?.sets).toEqual([]);
    expect(cheapestSets([priceless(1)], [set(500, 1)], 500)?.sets).toEqual([0]);
    expect(cheapestSets([good(1, 500)], [set(null, 1)], 499)?.sets).toEqual([0]);
    expect(cheapestSets([good(1, 500)], [], 499)).toBeNull();
    expect(cheapestSets([], [], -1)).toBeNull();
  });

  test('spends no money for what is without a price and worth none, but takes it along', () => {
    const minor = { demand: 1, own: () => ({ ...NOTHING, minor: 1 }) };
    expect(cheapestSets([minor], [set(500, 1)])?.sets).toEqual([]);
    expect(cheapestSets([minor], [set(0, 1)])?.sets).toEqual([0]);
    // Of two sets at the same price, and for the same good, the one that has it too.
    const goods = [good(1, 900), minor];
    expect(cheapestSets(goods, [set(500, 1), set(500, 1, 1)])?.sets).toEqual([1]);
    expect(cheapestSets([good(1, 30), minor], [set(500, 1, 1)])?.sets).toEqual([]);
  });

  test('has a set as often as it is of use and to be had', () => {
    const prices = [70, 140, 200].map((money) => ({ ...NOTHING, money }));
    const pairs = { prices, contents: [{ good: 0, quantity: 2 }] };
    expect(cheapestSets([good(4, 50)], [pairs])).toMatchObject({
      sets: [0, 0],
      price: { money: 140 },
    });
    // A third pair for 60 more would save one at 50.
    expect(cheapestSets([good(5, 50)], [pairs])?.sets).toEqual([0, 0]);
    expect(cheapestSets([nowhere(5)], [pairs])?.sets).toEqual([0, 0, 0]);
    expect(cheapestSets([nowhere(7)], [pairs])).toBeNull();
  });

  test('buys the set that alone has what is needed, or nothing', () => {
    expect(cheapestSets([nowhere(2)], [set(500, 1), set(70, 2)])?.sets).toEqual([1]);
    expect(cheapestSets([nowhere(3)], [set(500, 1), set(70, 1)])).toBeNull();
  });
});

interface Drawn {
  readonly goods: readonly { demand: number; steps: readonly number[]; until: number }[];
  readonly sets: readonly GoodsSet[];
  readonly mostMoney: number;
}

/** Goods whose price goes up by some step with each piece, until they are not to be had. */
const drawnGoods = fc.record({
  demand: fc.nat(4),
  steps: fc.array(fc.constantFrom(0, 0, 3, 5, 20, -1, -2), { minLength: 4, maxLength: 4 }),
  until: fc.constantFrom(1, 3, 9, 9, 9),
});

const drawn: fc.Arbitrary<Drawn> = fc.integer({ min: 0, max: 4 }).chain((count) =>
  fc.record({
    goods: fc.array(drawnGoods, { minLength: count, maxLength: count }),
    sets: fc.array(
      fc.record({
        prices: fc
          .array(
            fc.record({
              unpriced: fc.constantFrom(0, 0, 0, 1),
              money: fc.constantFrom(0, 4, 8, 15, 40),
              minor: fc.constant(0),
            }),
            { minLength: 1, maxLength: 2 },
          )
          .map(([first = NOTHING, ...more]) => [first, ...more.map((one) => plus(first, one))]),
        contents: fc.array(
          fc.record({
            good: fc.nat(Math.max(0, count - 1)),
            quantity: fc.integer({ min: 1, max: 3 }),
          }),
          { maxLength: count },
        ),
      }),
      { maxLength: 6 },
    ),
    mostMoney: fc.constantFrom(Number.POSITIVE_INFINITY, 60, 20, 8),
  }),
);

/** A step of -1 is one more thing without a price, one of -2 one that is worth no money. */
function ownOf({ steps, until }: Drawn['goods'][number], quantity: number): Price | null {
  if (quantity >= until) return null;
  const taken = steps.slice(0, quantity);
  return {
    unpriced: taken.filter((step) => step === -1).length,
    minor: taken.filter((step) => step === -2).length,
    money: taken.reduce((sum, step) => sum + Math.max(0, step), 0),
  };
}

/** Every choice of sets, each as often as it is to be had. */
function choicesOf(sets: readonly GoodsSet[]): number[][] {
  return sets.reduce<number[][]>(
    (choices, { prices }, set) =>
      choices.flatMap((choice) =>
        Array.from({ length: prices.length + 1 }, (_, copies) => [
          ...choice,
          ...Array.from({ length: copies }, () => set),
        ]),
      ),
    [[]],
  );
}

/** Every choice of sets, priced one by one; the best and all choices that are as good. */
function byTrying({ goods, sets, mostMoney }: Drawn): { price: Price; choices: number[][] } | null {
  let best: { price: Price; choices: number[][] } | null = null;
  for (const choice of choicesOf(sets)) {
    let price = NOTHING;
    for (const index of new Set(choice)) {
      const copies = choice.filter((one) => one === index).length;
      price = plus(price, sets[index]!.prices[copies - 1]!);
    }
    let isHad = true;
    for (const [index, one] of goods.entries()) {
      const inSets = choice
        .flatMap((at) => sets[at]!.contents)
        .filter((content) => content.good === index)
        .reduce((sum, { quantity }) => sum + quantity, 0);
      const missing = Math.max(0, one.demand - inSets);
      const own = missing === 0 ? NOTHING : ownOf(one, missing);
      if (own === null) isHad = false;
      price = plus(price, own ?? NOTHING);
    }
    if (!isHad || price.money > mostMoney) continue;
    const order =
      best === null
        ? -1
        : price.unpriced - best.price.unpriced ||
          price.money - best.price.money ||
          price.minor - best.price.minor;
    if (order < 0) best = { price, choices: [choice] };
    else if (order === 0) best?.choices.push(choice);
  }
  return best;
}

test('agrees with trying every choice of sets', () => {
  let bought = 0;
  let refused = 0;
  fc.assert(
    fc.property(drawn, (one) => {
      // Contents of no goods at all are never asked for.
      fc.pre(one.goods.length > 0 || one.sets.every(({ contents }) => contents.length === 0));
      const goods = one.goods.map((each) => ({
        demand: each.demand,
        own: (quantity: number) => ownOf(each, quantity),
      }));
      const found = cheapestSets(goods, one.sets, one.mostMoney);
      const tried = byTrying(one);
      expect(found?.price ?? null).toEqual(tried?.price ?? null);
      if (found === null || tried === null) {
        refused += 1;
        return;
      }
      const fewest = Math.min(...tried.choices.map(({ length }) => length));
      const [first] = tried.choices
        .filter(({ length }) => length === fewest)
        .sort(
          (a, b) =>
            a.find((at, index) => at !== b[index])! - b.find((at, index) => at !== a[index])!,
        );
      expect(found.sets).toEqual(first);
      if (found.sets.length > 0) bought += 1;
    }),
    { numRuns: CASES, seed: SEED },
  );
  expect(bought).toBeGreaterThan(CASES / 10);
  expect(refused).toBeGreaterThan(CASES / 20);
});

test('is found among thirty sets without trying a thousand million choices', () => {
  let asked = 0;
  const goods = Array.from({ length: 10 }, (_, index) => ({
    demand: 2,
    own: (quantity: number) => {
      asked += 1;
      return { ...NOTHING, money: quantity * (50 + index) };
    },
  }));
  const sets = Array.from({ length: 30 }, (_, index) => ({
    prices: [{ ...NOTHING, money: 90 + ((index * 37) % 60) }],
    contents: [0, 1, 2].map((step) => ({ good: (index * 3 + step * step) % 10, quantity: 1 })),
  }));
  const found = cheapestSets(goods, sets);
  expect(found?.price.money).toBeLessThan(2 * 545);
  expect(asked).toBeLessThan(5_000_000);
});
