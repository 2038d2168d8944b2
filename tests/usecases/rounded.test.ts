/**
 * Sets in few digits: what is known is never narrowed, what may be ordered is never widened.
 */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { closed, isWithin, NON_NEGATIVE, point } from '../../src/domain/quantity/interval.js';
import { formatQuantity } from '../../src/domain/quantity/quantity.js';
import { fraction, type Rational, rational } from '../../src/domain/quantity/rational.js';
import { roundedInwards, roundedOutwards } from '../../src/usecases/rounded.js';

const rationals = fc
  .tuple(fc.bigInt({ min: -10_000_000n, max: 10_000_000n }), fc.bigInt({ min: 1n, max: 9_999n }))
  .map(([numerator, denominator]) => fraction(numerator, denominator));

const between = (a: string, b: string) => closed(rational(a), rational(b));
const sorted = (a: Rational, b: Rational) => (a.compare(b) <= 0 ? closed(a, b) : closed(b, a));

describe('sets in few digits', () => {
  test('outwards hold the set, inwards lie in it', () => {
    fc.assert(
      fc.property(rationals, rationals, (a, b) => {
        const set = sorted(a, b);
        expect(isWithin(set, roundedOutwards(set, 'length'))).toBe(true);
        expect(isWithin(roundedInwards(set, 'length'), set)).toBe(true);
      }),
    );
  });

  test('have a tenth of their width as the last digit', () => {
    expect(roundedOutwards(between('967.2577', '971.1345'), 'length')).toEqual(
      between('967.2', '971.2'),
    );
    expect(roundedInwards(between('1346.005', '1349.995'), 'length')).toEqual(
      between('1346.1', '1349.9'),
    );
    expect(roundedOutwards(between('12', '45'), 'length')).toEqual(between('12', '45'));
  });

  test('count the digits of the unit that people see: turns per kilometre', () => {
    const perKm = (value: string) => `${value}/1000000`;
    const turns = between(perKm('19218'), perKm('21139'));
    expect(roundedInwards(turns, 'length^-1')).toEqual(turns);
    const long = between('19218437/10000000000', '21139281/10000000000');
    expect(formatQuantity(roundedInwards(long, 'length^-1'), 'length^-1').text).toBe(
      '1922 to 2113 1/km',
    );
  });

  test('leave a short value as it is, and give a long one four digits', () => {
    expect(roundedOutwards(point(rational('480')), 'length')).toEqual(point(rational('480')));
    expect(roundedOutwards(NON_NEGATIVE, 'length')).toEqual(NON_NEGATIVE);
    const third = fraction(4051n, 3n);
    expect(roundedOutwards(point(third), 'length')).toEqual(between('1350', '1351'));
    expect(roundedInwards(point(third), 'length')).toEqual(point(third));
  });
});
