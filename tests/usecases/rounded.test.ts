/**
 * Sets in few digits: what is known is never narrowed, what may be ordered is never widened.
 */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { closed, isWithin, NON_NEGATIVE, point } from '../../src/domain/quantity/interval.js';
import { fraction, isZero, type Rational, rational } from '../../src/domain/quantity/rational.js';
import type { UnitSystem } from '../../src/domain/quantity/unit.js';
import {
  roundedBelow,
  roundedInwards,
  roundedOutwards,
  shortened,
} from '../../src/usecases/rounded.js';
import { ValueWriter } from '../../src/usecases/value-writer.js';

const rationals = fc
  .tuple(fc.bigInt({ min: -10_000_000n, max: 10_000_000n }), fc.bigInt({ min: 1n, max: 9_999n }))
  .map(([numerator, denominator]) => fraction(numerator, denominator));

const between = (a: string, b: string) => closed(rational(a), rational(b));
const sorted = (a: Rational, b: Rational) => (a.compare(b) <= 0 ? closed(a, b) : closed(b, a));

const SYSTEMS: readonly UnitSystem[] = ['metric', 'imperial'];

describe('sets in few digits', () => {
  test('outwards hold the set, inwards lie in it', () => {
    fc.assert(
      fc.property(rationals, rationals, (a, b) => {
        const set = sorted(a, b);
        for (const system of SYSTEMS) {
          expect(isWithin(set, roundedOutwards(set, 'length', system))).toBe(true);
          expect(isWithin(set, shortened(set, 'length', system))).toBe(true);
          expect(isWithin(roundedInwards(set, 'length', system), set)).toBe(true);
        }
      }),
    );
  });

  test('have a tenth of their width as the last digit', () => {
    expect(roundedOutwards(between('967.2577', '971.1345'), 'length', 'metric')).toEqual(
      between('967.2', '971.2'),
    );
    expect(roundedInwards(between('1346.005', '1349.995'), 'length', 'metric')).toEqual(
      between('1346.1', '1349.9'),
    );
    expect(roundedOutwards(between('12', '45'), 'length', 'metric')).toEqual(between('12', '45'));
  });

  test('count the digits of the unit that people see: turns per kilometre', () => {
    const perKm = (value: string) => `${value}/1000000`;
    const turns = between(perKm('19218'), perKm('21139'));
    expect(roundedInwards(turns, 'length^-1', 'metric')).toEqual(turns);
    const long = between('19218437/10000000000', '21139281/10000000000');
    const values = new ValueWriter({ lang: 'en', units: 'recorded' });
    expect(values.order(long, 'length^-1').text).toBe('1922 to 2113 1/km');
  });

  test('leave a short value as it is, and give a long one four digits', () => {
    expect(roundedOutwards(point(rational('480')), 'length', 'metric')).toEqual(
      point(rational('480')),
    );
    expect(roundedOutwards(NON_NEGATIVE, 'length', 'metric')).toEqual(NON_NEGATIVE);
    const third = fraction(4051n, 3n);
    expect(roundedOutwards(point(third), 'length', 'metric')).toEqual(between('1350', '1351'));
    expect(roundedInwards(point(third), 'length', 'metric')).toEqual(point(third));
  });

  test('keep something of what may be ordered, however little that is', () => {
    // A hundredth of a micrometre is less than any of four decimals of an inch.
    const little = between('47', '47.00001');
    expect(isWithin(roundedInwards(little, 'length', 'imperial'), little)).toBe(true);
    const values = new ValueWriter({ lang: 'en', units: 'imperial' });
    expect(values.order(little, 'length').text).toBe('1.8503939 ±0.0000001 in');
  });

  test('cut one value off, never above it and never to nothing', () => {
    fc.assert(
      fc.property(rationals, (value) => {
        for (const system of SYSTEMS) {
          const cut = roundedBelow(value, 'length', system);
          expect(cut.compare(value)).toBeLessThanOrEqual(0);
          expect(isZero(cut)).toBe(isZero(value));
        }
      }),
    );
    const values = new ValueWriter({ lang: 'en', units: 'imperial' });
    expect(values.least(rational('0.3'), 'length').text).toBe('0.0118 in');
    expect(values.least(rational('0.001'), 'length').text).toBe('0.00003 in');
    expect(values.within(rational('0.05'), 'length').text).toBe('±0.0019 in');
  });
});
