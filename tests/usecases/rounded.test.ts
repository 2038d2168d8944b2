/**
 * Sets in few digits: what is known is never narrowed, what may be ordered is never widened.
 */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { closed, isWithin, NON_NEGATIVE, point } from '../../src/domain/quantity/interval.js';
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
        expect(isWithin(set, roundedOutwards(set))).toBe(true);
        expect(isWithin(roundedInwards(set), set)).toBe(true);
      }),
    );
  });

  test('have a tenth of their width as the last digit', () => {
    expect(roundedOutwards(between('967.2577', '971.1345'))).toEqual(between('967.2', '971.2'));
    expect(roundedInwards(between('1346.005', '1349.995'))).toEqual(between('1346.1', '1349.9'));
    expect(roundedOutwards(between('12', '45'))).toEqual(between('12', '45'));
  });

  test('leave a short value as it is, and give a long one four digits', () => {
    expect(roundedOutwards(point(rational('480')))).toEqual(point(rational('480')));
    expect(roundedOutwards(NON_NEGATIVE)).toEqual(NON_NEGATIVE);
    const third = fraction(4051n, 3n);
    expect(roundedOutwards(point(third))).toEqual(between('1350', '1351'));
    expect(roundedInwards(point(third))).toEqual(point(third));
  });
});
