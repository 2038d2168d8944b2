/**
 * The least that a change adds to any bill, by hand: what another change may have paid already is
 * not counted again.
 */

import { describe, expect, test } from 'vitest';
import { PriceList } from '../../../src/domain/kit/price.js';
import { type Asked, between, change, money, pair, question, shop } from './shop.js';

const CATALOGUE = shop({
  places: ['front*2 0.5h', 'rear*2 0.5h', 'shaft<> 0.8h', 'box 6h /4h', 'sump 1h >box'],
  matings: ['front = rear +1'],
  parts: ['wheel-a', 'shaft-a', 'box-a', 'ring-a'],
  lots: ['set: wheel-a*2'],
});

function least(asked: Asked) {
  const whole = question(CATALOGUE, { lots: [], ...asked });
  const list = new PriceList(whole);
  const lanes = (cost: number) => {
    const { unpriced, money: paid, changed } = list.lanesOf(cost);
    return { unpriced, money: paid, changed };
  };
  return {
    whole,
    at: (place: string, part: string) => lanes(list.atLeast(change(whole, place, [null, part]))),
    raw: (place: string, part: string) => list.atLeast(change(whole, place, [null, part])),
    list,
    lanes,
  };
}

describe('a part adds at least', () => {
  test('its price, where every piece of it has one', () => {
    expect(least({ offers: ['wheel-a 60.00'] }).at('front', 'wheel-a')).toEqual({
      unpriced: 0,
      money: money('120.00'),
      changed: 1,
    });
  });

  test('its full packs only: another place may have opened the last', () => {
    const { at } = least({ offers: ['wheel-a 200.00 per 4', 'wheel-a 110.00 per 2'] });
    // Two more come for nothing out of a pack of four.
    expect(at('front', 'wheel-a').money).toBe(0);
    const small = least({ offers: ['wheel-a 110.00 per 2'] });
    expect(small.at('front', 'wheel-a').money).toBe(money('110.00'));
  });

  test('nothing for what is at hand, or in a lot that may be bought for something else', () => {
    const offers = ['wheel-a 60.00', 'set 1.00'];
    expect(least({ offers, owned: { 'wheel-a': 2 } }).at('front', 'wheel-a').money).toBe(0);
    expect(least({ offers, owned: { 'wheel-a': 1 } }).at('front', 'wheel-a').money).toBe(
      money('60.00'),
    );
    expect(least({ offers, lots: ['set'] }).at('front', 'wheel-a').money).toBe(0);
  });

  test('a line without a price, where nobody offers it', () => {
    expect(least({}).at('front', 'wheel-a').unpriced).toBe(1);
    expect(least({ from: 'offered' }).raw('front', 'wheel-a')).toBe(Number.POSITIVE_INFINITY);
    expect(least({ from: 'offered', owned: { 'wheel-a': 2 } }).at('front', 'wheel-a')).toEqual({
      unpriced: 0,
      money: 0,
      changed: 1,
    });
  });

  test('its labour, without the time for which the place was opened already', () => {
    const asked = { labourRate: '60.00', offers: ['box-a 900.00'] };
    // 900 + (6 h - 4 h) x 60: the sump is behind the box.
    expect(least(asked).at('box', 'box-a').money).toBe(money('1020.00'));
    // Nothing is behind this one: 2 x 0.5 h.
    expect(least({ ...asked, owned: { 'wheel-a': 2 } }).at('front', 'wheel-a').money).toBe(
      money('60.00'),
    );
  });
});

test('one hand alone may share its line with the other; both are known in full', () => {
  const { whole, list, lanes } = least({ labourRate: '60.00' });
  const both = pair(whole, 'shaft', [null, 'shaft-a']);
  expect(lanes(list.atLeast(both[0]!))).toEqual({
    unpriced: 0,
    money: money('48.00'),
    changed: 0,
  });
  expect(lanes(list.atLeast(both))).toEqual({ unpriced: 1, money: money('96.00'), changed: 1 });
  expect(list.atLeast(both)).toBe(
    list.cost({ seats: both, adapters: [], consumed: [], opened: [] }),
  );
});

test('an adapter adds its price, and changes no place', () => {
  const { list, lanes } = least({ offers: ['ring-a 85.00'] });
  expect(lanes(list.atLeast(between('front-rear', ['ring-a'], [], 2)))).toEqual({
    unpriced: 0,
    money: money('170.00'),
    changed: 0,
  });
  expect(list.atLeast(between('front-rear', [], ['ring-a']))).toBe(0);
  expect(list.atLeast([])).toBe(0);
});
