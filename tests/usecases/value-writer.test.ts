/**
 * Values in any units and language: the ends stay, and no text looks better than its value is.
 */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { closed, type Interval, isPoint, isWithin } from '../../src/domain/quantity/interval.js';
import { isFault, parseQuantity } from '../../src/domain/quantity/quantity.js';
import { fraction, type Rational, rational, ZERO } from '../../src/domain/quantity/rational.js';
import { SHOWN_UNITS } from '../../src/domain/quantity/unit.js';
import { type Recorded, ValueWriter } from '../../src/usecases/value-writer.js';

const units = fc.constantFrom(...SHOWN_UNITS);
const langs = fc.constantFrom('en', 'de');
const dimensions = fc.constantFrom('length', 'torque', 'mass', 'angle', 'volume', 'speed');

const rationals = fc
  .tuple(fc.bigInt({ min: -10_000_000n, max: 10_000_000n }), fc.bigInt({ min: 1n, max: 9_999n }))
  .map(([numerator, denominator]) => fraction(numerator, denominator));

function sorted(a: Rational, b: Rational): Interval {
  return a.compare(b) <= 0 ? closed(a, b) : closed(b, a);
}

function read(text: string, type: Recorded['type'], dimension: string): Recorded {
  if (type === null || type === 'code' || type === 'points') throw new Error('a number is meant');
  const result = parseQuantity(text, { type, dimension });
  if (isFault(result)) throw new Error(`${text}: ${result.text}`);
  return { text, interval: result.interval, dimension, type };
}

/** What an English text says; a single value that is marked as rounded says nothing exactly. */
function reread(text: string, dimension: string): Interval | null {
  const result = parseQuantity(text, { type: 'designation', dimension });
  const set = isFault(result) ? parseQuantity(text, { type: 'measured', dimension }) : result;
  return isFault(set) ? null : set.interval;
}

describe('a set of values', () => {
  test('has the same ends in all units and languages', () => {
    fc.assert(
      fc.property(rationals, rationals, dimensions, units, langs, (a, b, dimension, one, lang) => {
        const [plain, told] = [
          new ValueWriter({ lang: 'en', units: 'recorded' }),
          new ValueWriter({ lang, units: one }),
        ];
        const set = sorted(a, b);
        for (const write of ['interval', 'known', 'order'] as const) {
          const [expected, found] = [plain, told].map((each) => each[write](set, dimension));
          expect({ ...found, text: '' }).toEqual({ ...expected, text: '' });
        }
      }),
    );
  });

  test('is never narrower in its text, and what to order is never wider', () => {
    fc.assert(
      fc.property(rationals, rationals, dimensions, units, (a, b, dimension, one) => {
        const set = sorted(a, b);
        fc.pre(!isPoint(set));
        const values = new ValueWriter({ lang: 'en', units: one });
        for (const { text } of [values.interval(set, dimension), values.known(set, dimension)]) {
          const said = reread(text, dimension);
          expect(said !== null && isWithin(set, said), text).toBe(true);
        }
      }),
      { numRuns: 500 },
    );
  });

  test('is never wider in its text where it is to be ordered', () => {
    const ends = fc.tuple(fc.integer({ min: 100, max: 20_000 }), fc.integer({ min: 1, max: 500 }));
    fc.assert(
      fc.property(ends, dimensions, units, ([low, more], dimension, one) => {
        const set = closed(rational(`${low}/10`), rational(`${low + more}/10`));
        const { text } = new ValueWriter({ lang: 'en', units: one }).order(set, dimension);
        const said = reread(text, dimension);
        expect(said !== null && isWithin(said, set), text).toBe(true);
      }),
      { numRuns: 500 },
    );
  });
});

describe('what is left', () => {
  const values = new ValueWriter({ lang: 'en', units: 'recorded' });
  const share = (low: string | null, high: string | null, unit: 'ratio' | '%') => {
    const [from, to] = [low, high].map((end) => (end === null ? null : rational(end)));
    return values.share({ ...closed(ZERO, ZERO), low: from ?? null, high: to ?? null }, unit).text;
  };

  test.each([
    // What bears too little never reads as bearing all of it.
    ['0.996', '0.996', 'ratio', '0.99'],
    ['0.996', '1.004', 'ratio', '0.99 to 1'],
    ['1.25', null, 'ratio', '1.25 to …'],
    ['1', '1', 'ratio', '1'],
    // What is out is never told as less.
    ['100/11', '100/11', '%', '9.1 %'],
    ['-0.004', '0.002', '%', '-0.01 to 0.01 %'],
    ['-1.004', '-1.004', '%', '-1.01 %'],
    ['0', '0', '%', '0 %'],
  ] as const)('%s to %s, %s: %s', (low, high, unit, text) => {
    expect(share(low, high, unit)).toBe(text);
  });

  test('is one number where it is one value, and never more than there is', () => {
    fc.assert(
      fc.property(rationals, dimensions, units, (value, dimension, one) => {
        const told = new ValueWriter({ lang: 'en', units: one });
        const { text, low } = told.reserve(closed(value, value), dimension);
        const said = reread(text, dimension);
        expect(said?.low !== null && said !== null, text).toBe(true);
        expect(said?.low?.compare(value), `${text} of ${low}`).toBeLessThanOrEqual(0);
        expect(text).not.toContain(' to ');
      }),
    );
  });
});

test('what is known of a quotient has no more digits than are known, unless it is one', () => {
  const values = new ValueWriter({ lang: 'en', units: 'recorded' });
  const tyres = closed(rational('3.72610692'), rational('3.72834684'));
  expect(values.known(tyres, '1')).toMatchObject({ text: '3.7261 to 3.7284', low: '3.72610692' });
  const teeth = rational('43/12');
  expect(values.known(closed(teeth, teeth), '1').text).toBe('43/12');
});

describe('a recorded value', () => {
  const [recorded, metric, imperial] = SHOWN_UNITS.map(
    (one) => new ValueWriter({ lang: 'en', units: one }),
  );

  test.each([
    ['56.1 mm', 'measured', 'length', '56.1 mm', '2.2066 to 2.2107 in'],
    ['50 H7', 'measured', 'length', '50 H7', '1.9690 ±0.0005 in'],
    ['4.50 ±0.05 in', 'measured', 'length', '114.30 ±1.27 mm', '4.50 ±0.05 in'],
    ['5.6 cm', 'measured', 'length', '5.6 cm', '2.205 ±0.020 in'],
    ['360 N.m', 'measured', 'torque', '360 N.m', '265.15 to 265.9 lbf.ft'],
    ['3.5 l', 'measured', 'volume', '3.5 l', '3.5 l'],
    ['30 deg', 'measured', 'angle', '30 deg', '30 deg'],
    // Names of sizes, counts and ratios have no other units.
    ['15 in', 'designation', 'length', '15 in', '15 in'],
    ['114.3 mm', 'designation', 'length', '114.3 mm', '114.3 mm'],
    ['10.9', 'designation', '1', '10.9', '10.9'],
    ['24', 'count', '1', '24', '24'],
    ['43/12', 'ratio', '1', '43/12', '43/12'],
  ] as const)('%s, %s', (text, type, dimension, inMetric, inImperial) => {
    const value = read(text, type, dimension);
    const told = [recorded, metric, imperial].map((each) => each?.recorded(value));
    expect(told.map((each) => each?.text)).toEqual([text, inMetric, inImperial]);
    const ends = told.map((each) => ({ ...each, text: '' }));
    expect(ends).toEqual([ends[0], ends[0], ends[0]]);
  });

  test('in German has commas, but for names without a unit', () => {
    const german = new ValueWriter({ lang: 'de', units: 'recorded' });
    expect(german.recordedText(read('56.1 mm', 'measured', 'length'))).toBe('56,1 mm');
    expect(german.recordedText(read('114.3 mm', 'designation', 'length'))).toBe('114,3 mm');
    // A strength class has a point in every language.
    expect(german.recordedText(read('10.9', 'designation', '1'))).toBe('10.9');
    const thread = { text: 'M10x1.25', interval: null, dimension: '1', type: 'code' } as const;
    expect(german.recordedText(thread)).toBe('M10x1.25');
    expect(german.list(['3,5', '2,1'])).toBe('3,5; 2,1');
  });
});

test('what is usual is told as the values are', () => {
  const set = closed(rational(80), rational(150));
  const [, , imperial] = SHOWN_UNITS.map((one) => new ValueWriter({ lang: 'en', units: one }));
  const usual = (type: 'measured' | 'designation') =>
    imperial?.usual(set, { type, dimension: 'length' });
  expect(usual('measured')).toEqual({ text: '3.1 to 6 in', low: '80', high: '150', unit: 'mm' });
  expect(usual('designation')?.text).toBe('80 to 150 mm');
});

test('a point is told about where it is once it has been converted', () => {
  const set = (low: string, high: string) => closed(rational(low), rational(high));
  const hole = {
    text: '120.50, -45.00 mm',
    x: set('120.495', '120.505'),
    y: set('-45.005', '-44.995'),
  };
  const told = SHOWN_UNITS.map((one) =>
    new ValueWriter({ lang: 'en', units: one }).pointText(hole, 'length'),
  );
  expect(told).toEqual([hole.text, hole.text, 'about 4.7441, -1.7717 in']);
});
