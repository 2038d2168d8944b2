/**
 * Quantities written for people, metric and imperial: no text claims more than is known.
 */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ENGLISH_NUMBERS } from '../../../src/domain/explain/number-words.js';
import { shownValue } from '../../../src/domain/explain/numbers.js';
import type { Interval } from '../../../src/domain/quantity/interval.js';
import {
  closed,
  EVERYTHING,
  equalIntervals,
  interval,
  isPoint,
  isWithin,
  NON_NEGATIVE,
  POSITIVE,
  point,
} from '../../../src/domain/quantity/interval.js';
import type { QuantityOptions } from '../../../src/domain/quantity/quantity.js';
import { isFault, parseQuantity } from '../../../src/domain/quantity/quantity.js';
import type { Rational } from '../../../src/domain/quantity/rational.js';
import {
  add,
  exactText,
  fraction,
  larger,
  rational,
  smaller,
  subtract,
} from '../../../src/domain/quantity/rational.js';
import { toBase, type UnitSystem, unitsOf } from '../../../src/domain/quantity/unit.js';
import { rationals } from './arbitraries.js';

/** In English, which writes what can be read back. */
function formatQuantity(
  set: Interval,
  dimension: string,
  { system }: { system: UnitSystem } = { system: 'metric' },
) {
  return shownValue(set, dimension, { system, words: ENGLISH_NUMBERS });
}

function between(low: string, high: string): Interval {
  return closed(rational(low), rational(high));
}

function exactly(value: string): Interval {
  return point(rational(value));
}

/** The set that a text is read as; points are names, other sets are readings. */
function reread(text: string, dimension: string, type: QuantityOptions['type']): Interval {
  const result = parseQuantity(text, { type, dimension });
  if (isFault(result)) throw new Error(`${text}: ${result.text}`);
  return result.interval;
}

describe('metric words', () => {
  it.each([
    ['length', exactly('56.05'), '56.05 mm', '56.05', '56.05'],
    ['length', exactly('127/140'), 'about 0.9071 mm', '127/140', '127/140'],
    ['length', between('56.05', '56.15'), '56.10 ±0.05 mm', '56.05', '56.15'],
    ['length', between('611.5', '612.5'), '612.0 ±0.5 mm', '611.5', '612.5'],
    ['length', between('600', '610'), '605 ±5 mm', '600', '610'],
    ['length', between('50', '50.025'), '50 to 50.025 mm', '50', '50.025'],
    ['length', between('4', '20'), '4 to 20 mm', '4', '20'],
    ['length', between('-0.1', '0.1'), '-0.1 to 0.1 mm', '-0.1', '0.1'],
    ['length', between('-38.5', '-37.5'), '-38.0 ±0.5 mm', '-38.5', '-37.5'],
    ['length', between('1/3', '1/2'), '0.3333 to 0.5 mm', '1/3', '0.5'],
    ['1', exactly('43/12'), '43/12', '43/12', '43/12'],
    ['1', exactly('39/10'), '3.9', '3.9', '3.9'],
    ['1', exactly('123456789/98765432'), '123456789/98765432', '123456789/98765432', null],
    ['torque', exactly('360'), '360 N.m', '360', '360'],
    ['length^-1', exactly('0.000518'), '518 1/km', '518', '518'],
    ['length*torque', exactly('5'), '5 N.m*mm', '5', '5'],
    ['volume', exactly('3.5'), '3.5 l', '3.5', '3.5'],
  ])('%s %o is written %s', (dimension, set, text, low, high) => {
    const formatted = formatQuantity(set, dimension, { system: 'metric' });
    expect(formatted.text).toBe(text);
    expect(formatted.low).toBe(low);
    expect(formatted.high).toBe(high ?? low);
  });

  it('says which ends are open or missing', () => {
    const five = rational(5);
    const six = rational(6);
    const words = (set: Interval): unknown => {
      const { text, low, high, unit } = formatQuantity(set, 'length', { system: 'metric' });
      return [text, low, high, unit];
    };
    expect(words(interval(five, null))).toEqual(['at least 5 mm', '5', null, 'mm']);
    expect(words(interval(five, null, { lowOpen: true }))).toEqual(['above 5 mm', '5', null, 'mm']);
    expect(words(interval(null, five))).toEqual(['at most 5 mm', null, '5', 'mm']);
    expect(words(interval(null, five, { highOpen: true }))).toEqual([
      'below 5 mm',
      null,
      '5',
      'mm',
    ]);
    expect(words(EVERYTHING)).toEqual(['any', null, null, 'mm']);
    expect(words(interval(five, six, { lowOpen: true }))).toEqual([
      'above 5 to 6 mm',
      '5',
      '6',
      'mm',
    ]);
    expect(words(interval(five, six, { highOpen: true }))).toEqual([
      '5 to below 6 mm',
      '5',
      '6',
      'mm',
    ]);
    const narrow = interval(rational('56.05'), rational('56.15'), { lowOpen: true });
    expect(formatQuantity(narrow, 'length').text).toBe('above 56.05 to 56.15 mm');
    expect(formatQuantity(POSITIVE, '1').text).toBe('above 0');
    expect(formatQuantity(NON_NEGATIVE, '1').text).toBe('at least 0');
  });

  it('marks a rounded single value, and never as zero', () => {
    const torque = exactly('821.6256766888286424');
    expect(formatQuantity(torque, 'torque').text).toBe('about 821.63 N.m');
    expect(formatQuantity(torque, 'torque').low).toBe('821.6256766888286424');
    const tiny = exactly('-1/123456789012');
    expect(formatQuantity(tiny, 'length').text).toBe('about -0.000000000008 mm');
  });
});

describe('imperial words', () => {
  it.each([
    ['length', exactly('114.3'), '4.5 in', '114.3', 'mm'],
    ['length', exactly('56.05'), 'about 2.2067 in', '56.05', 'mm'],
    ['length', between('113.03', '115.57'), '4.50 ±0.05 in', '113.03', 'mm'],
    ['length', between('56.05', '56.15'), '2.2066 to 2.2107 in', '56.05', 'mm'],
    ['length', interval(rational('56.05'), null), 'at least 2.2066 in', '56.05', 'mm'],
    ['length', interval(null, rational('56.05')), 'at most 2.2067 in', null, 'mm'],
    ['torque', between('359.5', '360.5'), '265.1535 to 265.8912 lbf.ft', '359.5', 'N.m'],
    ['mass', exactly('0.45359237'), '1 lb', '0.45359237', 'kg'],
    ['speed', exactly('1.609344'), '1 mph', '1.609344', 'km/h'],
    ['volume', exactly('3.5'), '3.5 l', '3.5', 'l'],
    ['angle', exactly('30'), '30 deg', '30', 'deg'],
    ['1', exactly('43/12'), '43/12', '43/12', ''],
  ])('%s %o is written %s, with metric limits', (dimension, set, text, low, unit) => {
    const formatted = formatQuantity(set, dimension, { system: 'imperial' });
    expect(formatted).toMatchObject({ text, low, unit });
    const metric = formatQuantity(set, dimension, { system: 'metric' });
    expect({ ...formatted, text: '' }).toEqual({ ...metric, text: '' });
  });
});

/** Numbers as they stand in records: up to four digits before the point and six after it. */
function recorded(): fc.Arbitrary<Rational> {
  return fc
    .tuple(fc.bigInt({ min: -9_999_999_999n, max: 9_999_999_999n }), fc.nat({ max: 6 }))
    .map(([digits, places]) => fraction(digits / 10n ** BigInt(6 - places), 10n ** BigInt(places)))
    .filter((r) => r.n < 10_000n * r.d);
}

function closedSets(ends: fc.Arbitrary<Rational>): fc.Arbitrary<Interval> {
  return fc.tuple(ends, ends).map(([a, b]) => closed(smaller(a, b), larger(a, b)));
}

/** All dimensions in which a person records values. */
const dimensions = fc.constantFrom('length', 'torque', 'mass', 'angle', '1', 'length^-1', 'volume');

function digitsOf(end: Rational): number {
  return exactText(end).replaceAll(/\D/g, '').replace(/^0+/, '').length;
}

describe('writing and reading', () => {
  it('a closed set of recorded numbers reads back as itself', () => {
    fc.assert(
      fc.property(closedSets(recorded()), dimensions, (set, dimension) => {
        const { text } = formatQuantity(set, dimension, { system: 'metric' });
        const type = isPoint(set) ? 'designation' : 'measured';
        expect(equalIntervals(reread(text, dimension, type), set)).toBe(true);
      }),
      { numRuns: 500 },
    );
  });

  it('a narrow tolerance about a recorded number reads back as itself', () => {
    const narrow = fc
      .tuple(recorded(), fc.bigInt({ min: 1n, max: 999n }), fc.nat({ max: 4 }))
      .map(([centre, digits, places]) => {
        const half = fraction(digits, 10n ** BigInt(places));
        return closed(subtract(centre, half), add(centre, half));
      });
    fc.assert(
      fc.property(narrow, (set) => {
        const { text } = formatQuantity(set, 'length', { system: 'metric' });
        const again = reread(text, 'length', 'measured');
        expect(isWithin(set, again)).toBe(true);
        // Only an end with more digits than a record has is rounded, and that outward.
        const ends = [set.low, set.high];
        if (ends.some((end) => end !== null && digitsOf(end) > 10)) return;
        expect(equalIntervals(again, set)).toBe(true);
      }),
      { numRuns: 500 },
    );
  });

  it('the exact ends of any closed set read back as the set', () => {
    fc.assert(
      fc.property(closedSets(rationals()), dimensions, (set, dimension) => {
        const { low, high, unit } = formatQuantity(set, dimension, { system: 'imperial' });
        const again = reread(`${low} to ${high} ${unit}`, dimension, 'measured');
        expect(equalIntervals(again, set)).toBe(true);
      }),
    );
  });

  it('a text in either system never claims more than is known', () => {
    const systems = fc.constantFrom('metric' as const, 'imperial' as const);
    fc.assert(
      fc.property(closedSets(rationals()), dimensions, systems, (set, dimension, system) => {
        fc.pre(!isPoint(set));
        const { text } = formatQuantity(set, dimension, { system });
        expect(isWithin(set, reread(text, dimension, 'measured'))).toBe(true);
      }),
      { numRuns: 500 },
    );
  });

  it('a single value in any unit is written exactly or marked as rounded', () => {
    const systems = fc.constantFrom('metric' as const, 'imperial' as const);
    const typed = dimensions.chain((dimension) =>
      fc.tuple(fc.constant(dimension), fc.constantFrom(...unitsOf(dimension)), rationals()),
    );
    fc.assert(
      fc.property(typed, systems, ([dimension, unit, r], system) => {
        const value = toBase(r, unit);
        const { text } = formatQuantity(point(value), dimension, { system });
        if (text.startsWith('about ')) {
          expect(isFault(parseQuantity(text, { type: 'designation', dimension }))).toBe(true);
        } else {
          expect(reread(text, dimension, 'designation')).toEqual(point(value));
        }
      }),
      { numRuns: 500 },
    );
  });
});
