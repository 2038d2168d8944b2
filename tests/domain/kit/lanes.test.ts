/**
 * Costs as one number: what counts before what, exact money, and what does not fit.
 */

import { describe, expect, test } from 'vitest';
import type { Bill } from '../../../src/domain/kit/basket.js';
import { labourPriceOf } from '../../../src/domain/kit/drafts.js';
import { PriceList } from '../../../src/domain/kit/price.js';
import { rational } from '../../../src/domain/quantity/rational.js';
import { type Asked, bill, change, money, question, shop } from './shop.js';

const CATALOGUE = shop({
  places: ['box 6h', 'prop 1h', 'hub*2 0.35h', 'trim 20min'],
  parts: ['box-a', 'box-b', 'prop-a', 'hub-a', 'trim-a'],
});

function listed(asked: Asked) {
  const whole = question(CATALOGUE, asked);
  const list = new PriceList(whole);
  const at = (place: string, part: string): Bill => bill(change(whole, place, [null, part]));
  const cost = (place: string, part: string) => list.cost(at(place, part));
  return { list, at, cost };
}

describe('a cost', () => {
  test('counts unpriced lines before money, and money before changed positions', () => {
    const { cost, list } = listed({ offers: ['box-a 9999.00', 'prop-a 0.01'] });
    expect(cost('box', 'box-a')).toBeLessThan(cost('box', 'box-b'));
    expect(cost('prop', 'prop-a')).toBeLessThan(cost('box', 'box-a'));
    expect(list.lanesOf(cost('box', 'box-a'))).toEqual({
      preferred: 0,
      unpriced: 0,
      money: money('9999.00'),
      changed: 1,
    });
    expect(list.cost(bill())).toBe(0);
  });

  test('counts what is preferred before all else', () => {
    const offers = ['box-a 10.00', 'prop-a 900.00', 'hub-a 0.00', 'trim-a 1.00'];
    const hours = listed({ offers, prefer: 'labour-hours' });
    // 6 h for 10.00 after 1 h for 900.00 after 2 x 0.35 h after 1/3 h.
    expect(
      ['trim-a', 'hub-a', 'prop-a', 'box-a'].map(
        (part) => hours.list.lanesOf(hours.cost(part.split('-')[0]!, part)).preferred,
      ),
    ).toEqual([20, 42, 60, 360]);
    const changes = listed({ offers, prefer: 'changed-positions' });
    const both = {
      ...bill(),
      seats: [...changes.at('hub', 'hub-a').seats, ...changes.at('trim', 'trim-a').seats],
    };
    expect(changes.list.cost(both)).toBeGreaterThan(changes.cost('prop', 'prop-a'));
    expect(changes.list.lanesOf(changes.list.cost(both))).toMatchObject({
      preferred: 2,
      money: money('1.00'),
    });
  });

  test('has no rounding in it but that of labour', () => {
    // A tenth and two tenths are three tenths, also of a cent.
    const { cost, list } = listed({ offers: ['hub-a 0.0011'] });
    expect(list.lanesOf(cost('hub', 'hub-a')).money).toBe(22);
    const many = listed({ offers: ['box-a 0.1', 'prop-a 0.2'] });
    const seats = [...many.at('box', 'box-a').seats, ...many.at('prop', 'prop-a').seats];
    expect(many.list.basket({ ...bill(), seats })!.totals.cost).toBe(money('0.30'));
  });

  test('that does not fit into one number is refused', () => {
    const offers = ['hub-a 9999999999.0001', 'trim-a 0.0002'];
    const { list, at } = listed({ offers, prefer: 'labour-hours' });
    expect(() => list.cost(at('hub', 'hub-a'))).toThrow(RangeError);
    // The lines themselves are as exact as ever.
    expect(list.basket(at('hub', 'hub-a'))!.totals.cost).toBe(2 * money('9999999999.0001'));
  });
});

test.each([
  ['0.5', '0.01', '0.01'],
  ['0.49', '0.01', '0.00'],
  ['1/3', '100.00', '33.33'],
  ['2/3', '100.00', '66.67'],
  ['0.25', '95.50', '23.88'],
  ['0', '95.50', '0.00'],
])('%s hours at %s are %s', (hours, rate, price) => {
  expect(labourPriceOf(rational(hours), money(rate))).toBe(money(price));
});

test('labour has no price without a rate, or without hours', () => {
  expect(labourPriceOf(rational(1), null)).toBeNull();
  expect(labourPriceOf(null, money('60.00'))).toBeNull();
});
