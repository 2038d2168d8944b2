/**
 * Vehicle identification numbers beyond their check values: what is warned of, what refuses, and
 * that one wrong character never passes the check digit of another value.
 */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { checkDigit, isVin, modelYears, writtenVin } from '../../../src/domain/driveline/vin.js';
import { asked } from './asked.js';

const SAMPLE = '1G4AH59H45G118341';
const SIGNS = 'ABCDEFGHJKLMNPRSTUVWXYZ0123456789';

const numbers = fc
  .array(fc.constantFrom(...Array.from(SIGNS)), { minLength: 17, maxLength: 17 })
  .map((signs) => signs.join(''));

describe('a number', () => {
  test('is read in small letters, with spaces and dashes', () => {
    expect(writtenVin('1g4ah-59h4 5g118341')).toBe(SAMPLE);
    expect(asked('vin', { vin: '1g4ah-59h4 5g118341' }).outcome('isVin')).toBe('holds');
  });

  test('is open where a character is not read, and none where it is too short', () => {
    expect(asked('vin', { vin: SAMPLE.replace('G', '*') }).outcome('isVin')).toBe('open');
    const short = asked('vin', { vin: SAMPLE.slice(1) });
    expect(short.outcome('isVin')).toBe('fails');
    expect(short.warnings).toEqual(['not-of-this-form', 'proves-no-part']);
    expect(short.has('modelYear')).toBe(false);
  });

  test('with other signs is refused', () => {
    expect(() => asked('vin', { vin: '?' })).toThrow('letters and digits');
  });

  test('never proves what is fitted', () => {
    expect(asked('vin', { vin: SAMPLE }).warnings).toContain('proves-no-part');
  });
});

describe('the check digit', () => {
  const wrong = SAMPLE.replace('H45', 'H55');

  test('that differs refuses where one is asked for, and warns elsewhere', () => {
    const american = asked('vin', { vin: wrong, market: 'north-america' });
    expect(american.outcome('checkAgrees')).toBe('fails');
    expect(american.warnings).toEqual(['check-digit-differs', 'proves-no-part']);
    const other = asked('vin', { vin: wrong, market: 'elsewhere' });
    expect(other.outcome('checkAgrees')).toBe('open');
    expect(other.warnings).toContain('places-of-the-maker');
  });

  test('is not known where another character is not read', () => {
    const unread = asked('vin', { vin: SAMPLE.replace('A', '*') });
    expect([unread.has('checkDigit'), unread.outcome('checkAgrees')]).toEqual([false, 'open']);
  });

  test('changes with each digit that is misread for another', () => {
    fc.assert(
      fc.property(numbers, fc.nat(16), fc.nat(9), fc.nat(9), (number, place, a, b) => {
        fc.pre(place !== 8 && a !== b);
        const withDigit = (digit: number) =>
          number.slice(0, place) + String(digit) + number.slice(place + 1);
        expect(checkDigit(withDigit(a))).not.toBe(checkDigit(withDigit(b)));
      }),
      { numRuns: 300, seed: 7 },
    );
  });
});

describe('the model year', () => {
  test('vin-10 (49 CFR 565.15): is none for the signs that are no code', () => {
    for (const sign of ['U', 'Z', '0']) {
      const number = SAMPLE.slice(0, 9) + sign + SAMPLE.slice(10);
      expect(modelYears(number)).toEqual([]);
      expect(asked('vin', { vin: number }).warnings).toContain('not-a-year-code');
    }
  });

  test('lies in one round of thirty years, by the seventh character', () => {
    fc.assert(
      fc.property(numbers, (number) => {
        expect(isVin(number)).toBe(true);
        for (const year of modelYears(number)) {
          const isDigit = /\d/.test(number.charAt(6));
          expect(year >= 2010).toBe(!isDigit);
          expect([year >= 1980, year <= 2039]).toEqual([true, true]);
        }
      }),
      { numRuns: 300, seed: 7 },
    );
  });
});
