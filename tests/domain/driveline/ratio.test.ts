/**
 * Gear ratios: chains, decimals and what may be behind them, pairs on fixed centres.
 */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { decimalRatio, nearestPairs, ratioOfPair } from '../../../src/domain/driveline/teeth.js';
import { contains, isPoint, isWithin } from '../../../src/domain/quantity/interval.js';
import {
  absolute,
  compare,
  fraction,
  ONE,
  rational,
  subtract,
} from '../../../src/domain/quantity/rational.js';
import { asked } from './asked.js';

const RUNS = { seed: 2207, numRuns: 300 };
const teeth = fc.integer({ min: 8, max: 60 });
const pair = fc.tuple(teeth, teeth);
const text = ([driven, driving]: readonly [number, number]) => `${driven}/${driving}`;

const ratio = (given: Parameters<typeof asked>[1]) => asked('ratio', given);

describe('chains', () => {
  test('are the same in any order, and a stage turned round takes itself back', () => {
    fc.assert(
      fc.property(fc.array(pair, { minLength: 1, maxLength: 4 }), (pairs) => {
        const stages = pairs.map(text);
        const back = pairs.map(([driven, driving]) => text([driving, driven]));
        const { low } = ratio({ stages }).set('overall');
        expect(ratio({ stages: [...stages].reverse() }).set('overall').low).toEqual(low);
        expect(ratio({ stages: [...stages, ...back] }).set('overall').low).toEqual(ONE);
      }),
      RUNS,
    );
  });

  test('contain the chain of teeth where one stage is its decimal', () => {
    fc.assert(
      fc.property(pair, pair, (first, second) => {
        const decimal = (first[0] / first[1]).toFixed(3);
        const exact = ratio({ stages: [text(first), text(second)] }).set('overall');
        const rounded = ratio({ stages: [decimal, text(second)] }).set('overall');
        // A half is rounded up by the reading, and by the printed float where it can.
        fc.pre((first[0] * 2000) % first[1] !== 0);
        expect(isWithin(exact, rounded)).toBe(true);
        expect(isPoint(rounded)).toBe(false);
      }),
      RUNS,
    );
  });
});

describe('two ratios', () => {
  test.each([
    [['39/10'], ['11/10', '39/11'], 'equal'],
    [['39/11'], ['3.545'], 'consistent'],
    [['3.54'], ['3.545'], 'consistent'],
    [['39/11'], ['43/12'], 'does-not-match'],
    [['39/11'], ['3.54'], 'does-not-match'],
  ])('%j beside %j: %s', (stages, otherStages, expected) => {
    expect(ratio({ stages, otherStages }).word('comparison')).toBe(expected);
  });

  test('are never called equal where one of them is a decimal', () => {
    expect(ratio({ stages: ['3.545'], otherStages: ['3.545'] }).word('comparison')).toBe(
      'consistent',
    );
  });
});

describe('a decimal', () => {
  test('cut off is read as either where nothing else is told', () => {
    const given = { stages: ['39/11'], decimal: '3.54' };
    expect(ratio(given).word('decimalMatches')).toBe('consistent');
    expect(ratio({ ...given, reading: 'either' }).word('decimalMatches')).toBe('consistent');
    expect(ratio({ ...given, reading: 'rounded' }).word('decimalMatches')).toBe('does-not-match');
    expect(ratio({ ...given, reading: 'truncated' }).word('decimalMatches')).toBe('consistent');
  });

  test('has among its candidates every pair that it was made of, and no other', () => {
    fc.assert(
      fc.property(fc.integer({ min: 8, max: 15 }), teeth, (driving, driven) => {
        const hundredths = Math.floor((driven * 100) / driving);
        const decimal = (hundredths / 100).toFixed(2);
        const found = ratio({ decimal, reading: 'truncated' }).words('candidates');
        expect(found).toContain(`${driven}/${driving}`);
        const set = decimalRatio(decimal, 'truncated');
        for (const one of found) expect(contains(set, rational(one))).toBe(true);
      }),
      RUNS,
    );
  });

  test('is searched among the teeth that are told', () => {
    const given = { decimal: '3.58', reading: 'rounded' };
    expect(ratio(given).words('candidates')).toEqual(['43/12']);
    expect(ratio(given).warnings).toEqual([]);
    const wider = ratio({ ...given, pinionMost: 20, ringMost: 70 });
    expect(wider.words('candidates')).toEqual(['43/12', '68/19']);
    expect(wider.warnings).toEqual(['several-pairs']);
    const narrower = ratio({ ...given, pinionLeast: 13 });
    expect(narrower.words('candidates')).toEqual([]);
    expect(narrower.warnings).toEqual(['no-pair']);
  });

  test.each(['?', '39/11', '3,545', '4', '0.000', '-3.54', '3.545 mm'])('is not %s', (decimal) => {
    expect(() => ratio({ decimal })).toThrow(/no decimal above 0/);
  });

  test('is not searched backwards', () => {
    const given = { decimal: '3.54', pinionLeast: 12, pinionMost: 11 };
    expect(() => ratio(given)).toThrow(/end at 11 teeth before it begins at 12/);
  });
});

describe('a pair on fixed centres', () => {
  test('with an odd sum has no 1:1, and is warned of only where that is wished', () => {
    const odd = ratio({ drivenTeeth: 36, drivingTeeth: 33 });
    expect(odd.outcome('hasWishedPair')).toBe('fails');
    expect(odd.warnings).toEqual(['odd-sum']);
    expect(ratio({ drivenTeeth: 46, drivingTeeth: 23, wishedRatio: '2' }).warnings).toEqual([]);
  });

  test('with an even sum has one', () => {
    const even = ratio({ drivenTeeth: 36, drivingTeeth: 34 });
    expect(even.outcome('hasWishedPair')).toBe('holds');
    expect(even.words('nearest')).toEqual(['35/35']);
    expect(even.warnings).toEqual([]);
  });

  test('may have a ratio that is known as a decimal alone', () => {
    const given = { drivenTeeth: 36, drivingTeeth: 33, wishedRatio: '1.03' };
    expect(ratio(given).outcome('hasWishedPair')).toBe('open');
    expect(ratio({ ...given, wishedRatio: '1.05' }).outcome('hasWishedPair')).toBe('fails');
  });

  test('needs a tooth on each wheel', () => {
    expect(ratio({ drivenTeeth: 1, drivingTeeth: 1, wishedRatio: '9' }).words('nearest')).toEqual([
      '1/1',
    ]);
  });

  test('comes nearest with the pairs that are named', () => {
    fc.assert(
      fc.property(fc.integer({ min: 40, max: 120 }), pair, (sum, [driven, driving]) => {
        const wish = fraction(BigInt(driven), BigInt(driving));
        const named = nearestPairs(BigInt(sum), wish).map(ratioOfPair);
        // No pair of that sum lies between the wish and the nearest on its side.
        for (let one = 1; one < sum; one += 1) {
          const each = fraction(BigInt(sum - one), BigInt(one));
          const off = absolute(subtract(each, wish));
          const sameSide = named.filter((near) => compare(near, wish) === compare(each, wish));
          for (const near of sameSide) {
            expect(compare(absolute(subtract(near, wish)), off)).toBeLessThanOrEqual(0);
          }
        }
        expect(named.length).toBeGreaterThan(0);
      }),
      { ...RUNS, numRuns: 100 },
    );
  });
});
