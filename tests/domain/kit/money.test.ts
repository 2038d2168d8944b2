/**
 * Money is read and written without rounding, and never as a float.
 */

import { describe, expect, test } from 'vitest';
import { moneyOf, moneyText } from '../../../src/domain/kit/money.js';
import { offerOf } from '../../../src/domain/kit/offered.js';

describe('a price', () => {
  test.each([
    ['0', 0, '0.00'],
    ['0.0001', 1, '0.0001'],
    ['12', 120_000, '12.00'],
    ['12.5', 125_000, '12.50'],
    ['12.50', 125_000, '12.50'],
    ['12.505', 125_050, '12.505'],
    ['0.1000', 1000, '0.10'],
    ['0012.50', 125_000, '12.50'],
    ['9999999999.9999', 99_999_999_999_999, '9999999999.9999'],
  ])('%s is %i ten-thousandths, written %s', (text, money, written) => {
    expect(moneyOf(text)).toBe(money);
    expect(moneyText(money)).toBe(written);
    expect(moneyOf(written)).toBe(money);
  });

  test.each(['', '.5', '5.', '-1', '+1', '1e3', '1,50', ' 1', '1.00001', '10000000000', 'NaN'])(
    '"%s" is none',
    (text) => {
      expect(moneyOf(text)).toBeNull();
    },
  );

  test('a difference may lie below zero', () => {
    expect(moneyText(-125_050)).toBe('-12.505');
    expect(moneyText(-1)).toBe('-0.0001');
    expect(moneyText(0)).toBe('0.00');
  });
});

describe('an offer', () => {
  const record = { id: 'o', for: 'oil', price: '12.00' };

  test('has what one price buys as an amount; one piece where it does not say', () => {
    expect(offerOf(record)).toMatchObject({ price: 120_000, pack: { dimension: '1', text: '1' } });
    const litre = offerOf({ ...record, pack: '2 l' }).pack;
    expect(litre).toMatchObject({ dimension: 'volume', text: '2 l' });
  });

  test('that nobody has checked is a mistake of the program', () => {
    expect(() => offerOf({ ...record, price: 'x' })).toThrow('was not checked');
    expect(() => offerOf({ ...record, pack: '2 h' })).toThrow('was not checked');
  });
});
