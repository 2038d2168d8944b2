/**
 * Works, adapters and what is used up, priced by hand. The arithmetic stands beside each.
 */

import { describe, expect, test } from 'vitest';
import { moneyText } from '../../../src/domain/kit/money.js';
import { exactText } from '../../../src/domain/quantity/rational.js';
import { priced, shown } from './garage.js';
import { type Asked, between, bill, change, consumed } from './shop.js';

describe('works', () => {
  const offers = ['hub-a 80.00', 'redrill 35.00 in 4d', 'hub-b 90.00'];

  test('are done on what is bought for it', () => {
    const { asked, basket } = priced({ offers, labourRate: '50.00' });
    const found = basket(bill(change(asked, 'hub', ['hub-b', 'hub-a+redrill'])));
    expect(shown(found)).toEqual([
      'add:hub:hub-a 2 offer 160.00 4h',
      'work:hub:redrill 2 - 70.00 4h',
      'remove:hub:hub-b 2 - 0.00 0h',
    ]);
    const { parts, works, labour, cost, signOff, isReversible } = found!.totals;
    // 2 x 80, 2 x 35, (2 x 2 h + 2 x 2 h) x 50.
    expect([parts, works, labour, cost].map((one) => moneyText(one!))).toEqual([
      '160.00',
      '70.00',
      '400.00',
      '630.00',
    ]);
    expect([signOff, isReversible]).toEqual(['engineer', false]);
  });

  test('are done on what is there, which is not bought and does not come out', () => {
    const { asked, basket } = priced({ offers });
    expect(shown(basket(bill(change(asked, 'hub', ['hub-a', 'hub-a+redrill']))))).toEqual([
      'add:hub:hub-a 2 present 0.00 4h',
      'work:hub:redrill 2 - 70.00 4h',
    ]);
    // What is worked already needs only the rest; and what it was is no longer to be had of it.
    expect(
      shown(basket(bill(change(asked, 'hub', ['hub-a+redrill', 'hub-a+redrill+bush'])))),
    ).toEqual(['add:hub:hub-a 2 present 0.00 4h', 'work:hub:bush 2 - ? 2h']);
    expect(shown(basket(bill(change(asked, 'hub', ['hub-a+redrill', 'hub-a']))))).toEqual([
      'add:hub:hub-a 2 offer 160.00 4h',
      'remove:hub:hub-a+redrill 2 - 0.00 0h',
    ]);
  });

  test('that nobody offers are not had where only offers count, in stock or not', () => {
    const bushed = (asked: Asked) => {
      const one = priced({ offers, ...asked });
      return shown(one.basket(bill(change(one.asked, 'hub', ['hub-a', 'hub-a+bush']))));
    };
    expect(bushed({})).toContain('work:hub:bush 2 - ? 2h');
    expect(bushed({ from: 'offered' })).toEqual(['none']);
    const inStock = { limits: { inStock: true } } as Asked;
    expect(bushed(inStock)).toContain('work:hub:bush 2 - ? 2h');
  });
});

describe('adapters', () => {
  test('are bought as far as they are not there yet, so many times as the joint', () => {
    const { asked, basket } = priced({ offers: ['ring-a 85.00'] });
    expect(asked.vehicle.layout.matings.size).toBe(1);
    const found = basket(bill(between('box-prop', ['ring-a', 'ring-a'], ['ring-a', 'ring-b'], 2)));
    expect(shown(found)).toEqual([
      'adapter:box-prop:ring-a 2 offer 170.00 0h',
      'remove:box-prop:ring-b 2 - 0.00 0h',
    ]);
    expect(found!.totals.changedPositions).toBe(0);
  });
});

describe('what is used up', () => {
  const extras = (offers: string[], amounts: string[], asked: Asked = {}) =>
    priced({ offers, ...asked }).basket({
      ...bill(),
      consumed: amounts.map((amount) => consumed('oil-a', amount)),
    });

  test('is bought in whole packs, and the rest is left over', () => {
    const found = extras(['oil-a 12.00 per 1 l'], ['3.5 l']);
    expect(shown(found)).toEqual(['extra:oil-a 3.5 offer 48.00 0h']);
    const [line] = found!.lines;
    expect([line!.packs, exactText(line!.over!), line!.dimension]).toEqual([4, '0.5', 'volume']);
  });

  test('is summed over the rules, and the cheapest packs are taken for all of it', () => {
    // 3.5 + 1 = 4.5 l: five packs of 1 l are 60.00, one of 5 l is 45.00.
    const found = extras(['oil-a 12.00 per 1 l', 'oil-a 45.00 per 5 l'], ['3.5 l', '1 l']);
    expect(shown(found)).toEqual(['extra:oil-a 4.5 offer 45.00 0h']);
    // A third of a litre has no end as a decimal: 3 x 1/3 l is exactly one pack.
    const thirds = extras(['oil-a 12.00 per 1 l'], ['1/3 l', '1/3 l', '1/3 l']);
    expect(shown(thirds)).toEqual(['extra:oil-a 1 offer 12.00 0h']);
  });

  test('comes in whole pieces', () => {
    // 1.2 and 1.3 pieces are two and a half: three are bought.
    expect(shown(extras(['oil-a 12.00'], ['1.2', '1.3']))).toEqual([
      'extra:oil-a 3 offer 36.00 0h',
    ]);
  });

  test('has no price where no offer is by that dimension, even where only offers count', () => {
    const lines = ['extra:oil-a 3.5 unpriced ? 0h'];
    expect(shown(extras(['oil-a 12.00 per 1 kg'], ['3.5 l']))).toEqual(lines);
    expect(shown(extras([], ['3.5 l'], { from: 'offered' }))).toEqual(lines);
  });

  test('has no price where nobody recorded how much it is', () => {
    expect(shown(extras(['oil-a 12.00 per 1 l'], ['? l']))).toEqual([
      'extra:oil-a ? unpriced ? 0h',
    ]);
    expect(shown(extras(['oil-a 12.00 per 1 l'], ['? l', '2 l']))).toEqual([
      'extra:oil-a 2 offer 24.00 0h',
      'extra:oil-a:volume:unknown ? unpriced ? 0h',
    ]);
  });

  test('is taken from what is at hand, piece by piece', () => {
    const list = priced({ offers: ['bolt-a 1.20 per 4'], owned: { 'bolt-a': 3 } });
    const found = list.basket({ ...bill(), consumed: [consumed('bolt-a', '8')] });
    // 8 - 3 = 5, two packs of 4.
    expect(shown(found)).toEqual([
      'extra:bolt-a:owned 3 owned 0.00 0h',
      'extra:bolt-a 5 offer 2.40 0h',
    ]);
  });
});
