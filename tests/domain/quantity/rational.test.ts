/**
 * Exact numbers: read, computed with, compared, and written in full or rounded.
 */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  absolute,
  add,
  compare,
  decimalPlaces,
  decimalText,
  divide,
  equals,
  exactText,
  fraction,
  isZero,
  larger,
  multiply,
  negate,
  ONE,
  power,
  rational,
  roundDown,
  roundUp,
  shortText,
  sign,
  smaller,
  subtract,
  ZERO,
} from '../../../src/domain/quantity/rational.js';
import { rationals } from './arbitraries.js';

describe('reading numbers', () => {
  it.each([
    ['7', 7n, 1n],
    ['-3.583', -3583n, 1000n],
    ['43/12', 43n, 12n],
    ['-6/4', -3n, 2n],
    ['0.50', 1n, 2n],
    ['-0', 0n, 1n],
    ['007', 7n, 1n],
    ['123456789012345678901234567890.5', 246913578024691357802469135781n, 2n],
  ])('reads %s exactly', (text, numerator, denominator) => {
    expect(equals(rational(text), fraction(numerator, denominator))).toBe(true);
  });

  it.each([
    '',
    ' ',
    '+5',
    '.5',
    '5.',
    '1e3',
    '1,5',
    '0.(3)',
    "0.'3'",
    '1/2/3',
    '1/-2',
    '1.5/2',
    '1 1/2',
    '0x10',
    'NaN',
    'Infinity',
    '--1',
    '1/0',
    '٣',
  ])('refuses the text "%s"', (text) => {
    expect(() => rational(text)).toThrow(RangeError);
  });

  it.each([0.1, 1.5, Number.NaN, Number.POSITIVE_INFINITY, 2 ** 53])(
    'refuses the number %d, which may already be rounded',
    (value) => {
      expect(() => rational(value)).toThrow(RangeError);
    },
  );

  it('reads safe integers and big integers', () => {
    expect(exactText(rational(-42))).toBe('-42');
    expect(exactText(rational(10n ** 40n))).toBe(`1${'0'.repeat(40)}`);
  });
});

describe('arithmetic', () => {
  it('is exact where floating point is not', () => {
    expect(equals(add(rational('0.1'), rational('0.2')), rational('0.3'))).toBe(true);
    expect(equals(multiply(rational('11/10'), rational('39/11')), rational('3.9'))).toBe(true);
  });

  it('refuses to divide by zero, however it is asked', () => {
    expect(() => divide(ONE, ZERO)).toThrow(RangeError);
    expect(() => fraction(1n, 0n)).toThrow(RangeError);
    expect(() => power(ZERO, -1)).toThrow(RangeError);
  });

  it('raises to integer powers and refuses others', () => {
    expect(exactText(power(rational('-3/2'), 3))).toBe('-3.375');
    expect(exactText(power(rational('-3/2'), -2))).toBe('4/9');
    expect(exactText(power(rational(-2), -3))).toBe('-0.125');
    expect(exactText(power(ZERO, 0))).toBe('1');
    for (const exponent of [0.5, 65, -65, Number.NaN]) {
      expect(() => power(rational(2), exponent)).toThrow(RangeError);
    }
  });

  it('obeys the laws of a field and of an order', () => {
    fc.assert(
      fc.property(rationals(), rationals(), rationals(), (a, b, c) => {
        const left = multiply(a, add(b, c));
        expect(equals(left, add(multiply(a, b), multiply(a, c)))).toBe(true);
        expect(equals(subtract(a, b), negate(subtract(b, a)))).toBe(true);
        if (!isZero(b)) expect(equals(multiply(divide(a, b), b), a)).toBe(true);
        expect(compare(a, b)).toBe(sign(subtract(a, b)));
        expect(equals(add(smaller(a, b), larger(a, b)), add(a, b))).toBe(true);
        expect(sign(absolute(a))).toBe(isZero(a) ? 0 : 1);
      }),
    );
  });
});

describe('writing numbers', () => {
  it.each([
    ['56.05', '56.05'],
    ['43/12', '43/12'],
    ['-39/11', '-39/11'],
    ['1/8', '0.125'],
    ['-1/2', '-0.5'],
    ['127/5', '25.4'],
    ['6/3', '2'],
    ['0', '0'],
  ])('writes %s as %s', (text, exact) => {
    expect(exactText(rational(text))).toBe(exact);
  });

  it('writes what it reads back', () => {
    fc.assert(
      fc.property(rationals(), (r) => {
        expect(equals(rational(exactText(r)), r)).toBe(true);
      }),
    );
  });

  it.each([
    ['3.583', 3, '3.583', '3.583'],
    ['43/12', 3, '3.583', '3.583'],
    ['3.5', 3, '3.500', '3.5'],
    ['0.0005', 3, '0.001', '0.001'],
    ['-0.0005', 3, '-0.001', '-0.001'],
    ['-0.0004', 3, '0.000', '0'],
    ['2.5', 0, '3', '3'],
    ['-2.5', 0, '-3', '-3'],
    ['1200', 0, '1200', '1200'],
    ['100', 2, '100.00', '100'],
    ['999.9996', 3, '1000.000', '1000'],
  ])('rounds %s to %d places, half away from zero', (text, places, full, short) => {
    expect(decimalText(rational(text), places)).toBe(full);
    expect(shortText(rational(text), places)).toBe(short);
  });

  it('counts the decimals that a number needs', () => {
    expect(decimalPlaces(rational('0.125'))).toBe(3);
    expect(decimalPlaces(rational('7'))).toBe(0);
    expect(decimalPlaces(rational('1/3'))).toBeNull();
  });

  it('rounds down and up to neighbours that hold the number between them', () => {
    fc.assert(
      fc.property(rationals(), fc.integer({ min: 0, max: 6 }), (r, places) => {
        const [down, up] = [roundDown(r, places), roundUp(r, places)];
        expect(compare(down, r)).toBeLessThanOrEqual(0);
        expect(compare(up, r)).toBeGreaterThanOrEqual(0);
        const step = divide(ONE, power(rational(10), places));
        expect(compare(subtract(up, down), step)).toBeLessThanOrEqual(0);
        const rounded = rational(decimalText(r, places));
        expect(equals(rounded, down) || equals(rounded, up)).toBe(true);
      }),
    );
  });
});
