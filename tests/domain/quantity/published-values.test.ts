/**
 * Check values with the source of each, and how its figure was obtained ("basis"): read in the
 * source, computed from a formula read there, arithmetic, or from memory.
 */

import { describe, expect, it } from 'vitest';
import {
  alwaysAtLeast,
  closed,
  contains,
  neverAtLeast,
  subtractIntervals,
} from '../../../src/domain/quantity/interval.js';
import { isIsoFault, isoLimits } from '../../../src/domain/quantity/iso286.js';
import { isFault, parseQuantity } from '../../../src/domain/quantity/quantity.js';
import type { Rational } from '../../../src/domain/quantity/rational.js';
import {
  equals,
  exactText,
  fraction,
  multiply,
  ONE,
  rational,
  ZERO,
} from '../../../src/domain/quantity/rational.js';
import { roundedInterval, truncatedInterval } from '../../../src/domain/quantity/rounding.js';

const ARITHMETIC = { source: 'exact arithmetic or geometry', basis: 'arithmetic' };

function chainOf(stages: readonly (readonly [number, number])[]): Rational {
  return stages.reduce(
    (product, [driven, driver]) => multiply(product, fraction(BigInt(driven), BigInt(driver))),
    ONE,
  );
}

describe('ratios', () => {
  it.each([
    { teeth: [39, 11], ratio: '39/11', decimal: 3.5454545454545454, ...ARITHMETIC },
    {
      teeth: [51, 15],
      ratio: '17/5',
      decimal: 3.4,
      source: 'worked gear-ratio example',
      basis: 'value read in the source',
    },
    {
      teeth: [39, 20],
      ratio: '39/20',
      decimal: 1.95,
      source: 'published gear-pair list',
      basis: 'value read in the source',
    },
  ] as const)('$teeth teeth are $ratio ($source; $basis)', ({ teeth, ratio, decimal }) => {
    const read = parseQuantity(`${teeth[0]}/${teeth[1]}`, { type: 'ratio', dimension: '1' });
    if (isFault(read)) throw new Error(read.text);
    expect(read.interval).toMatchObject({ low: rational(ratio), high: rational(ratio) });
    const [numerator, denominator] = [rational(ratio).n, rational(ratio).d];
    expect(Math.abs(Number(numerator) / Number(denominator) - decimal)).toBeLessThan(1e-12);
  });

  it(`3.900 times 10/11 is 39/11 (${ARITHMETIC.source}; ${ARITHMETIC.basis})`, () => {
    expect(
      exactText(
        chainOf([
          [39, 10],
          [10, 11],
        ]),
      ),
    ).toBe('39/11');
  });

  it('a reduction of 11/10 before a rear axle of 39/11 matches a front axle of 3.9', () => {
    // Exact arithmetic or geometry; arithmetic. Both axles on tyres of one circumference.
    expect(
      equals(
        chainOf([[39, 10]]),
        chainOf([
          [11, 10],
          [39, 11],
        ]),
      ),
    ).toBe(true);
  });

  it.each([
    { decimal: '3.545', mode: 'rounded', low: '7089/2000', high: '7091/2000', holds: true },
    { decimal: '3.55', mode: 'rounded', low: '709/200', high: '711/200', holds: true },
    { decimal: '3.54', mode: 'rounded', low: '707/200', high: '709/200', holds: false },
    { decimal: '3.54', mode: 'truncated', low: '177/50', high: '71/20', holds: true },
  ])('$decimal, $mode, holds 39/11: $holds', ({ decimal, mode, low, high, holds }) => {
    // Exact arithmetic or geometry; arithmetic. 3.54 is a truncation of 39/11, never a rounding.
    const allowed = mode === 'rounded' ? roundedInterval(decimal) : truncatedInterval(decimal);
    expect(allowed).toEqual({
      low: rational(low),
      lowOpen: false,
      high: rational(high),
      highOpen: true,
    });
    expect(contains(allowed, rational('39/11'))).toBe(holds);
  });

  it.each(['3.55', '3.545'])('%s has only 39 and 11 teeth as its pair', (decimal) => {
    // Exact arithmetic or geometry; arithmetic. Pinions 8 to 15 and rings up to 60 are a choice.
    const pairs: [number, number][] = [];
    for (let pinion = 8; pinion <= 15; pinion += 1) {
      for (let ring = pinion; ring <= 60; ring += 1) {
        const pair = fraction(BigInt(ring), BigInt(pinion));
        if (contains(roundedInterval(decimal), pair)) pairs.push([ring, pinion]);
      }
    }
    expect(pairs).toEqual([[39, 11]]);
  });
});

describe('limits and fits', () => {
  const um = (size: number, classText: string): [number, number] => {
    const limits = isoLimits(rational(size), classText);
    if (isIsoFault(limits)) throw new Error(limits.text);
    const thousand = rational(1000);
    const [lower, upper] = [limits.lower, limits.upper].map((each) =>
      Number(exactText(multiply(each, thousand))),
    );
    return [lower ?? Number.NaN, upper ?? Number.NaN];
  };

  it('the tolerance factor over 30 to 50 mm gives 25 for grade 7', () => {
    // ISO 286-1/-2; formula read in the source, value computed.
    const mean = Math.sqrt(30 * 50);
    const factor = 0.45 * Math.cbrt(mean) + 0.001 * mean;
    expect(mean).toBeCloseTo(38.72983346207417, 6);
    expect(Math.abs(factor - 1.5612429996351935)).toBeLessThan(0.005);
    expect(Math.abs(16 * factor - 24.979887994163096)).toBeLessThan(0.005);
    expect(um(50, 'H7')).toEqual([0, Math.round(16 * factor)]);
  });

  it('grades 5 to 11 at 50 mm, a size that belongs to the range below it', () => {
    // ISO 286-1/-2; value read in the source.
    const read = [11, 16, 25, 39, 62, 100, 160];
    expect([5, 6, 7, 8, 9, 10, 11].map((grade) => um(50, `H${grade}`)[1])).toEqual(read);
  });

  it('grades 5 to 11 are 7, 10, 16, 25, 40, 64 and 100 times the factor', () => {
    // ISO 286-1/-2; value read in the source.
    const mean = Math.sqrt(30 * 50);
    const factor = 0.45 * Math.cbrt(mean) + 0.001 * mean;
    [7, 10, 16, 25, 40, 64, 100].forEach((multiplier, index) => {
      const [, tolerance] = um(50, `H${5 + index}`);
      expect(Math.abs(tolerance / factor / multiplier - 1)).toBeLessThan(0.03);
    });
  });

  it.each([
    {
      fit: ['H8', 'f7'],
      hole: [0, 39],
      shaft: [-50, -25],
      clearance: [25, 89],
      source: 'ISO 286-2 preferred fits',
      basis: 'value read in the source',
    },
    {
      fit: ['H7', 'h6'],
      hole: [0, 25],
      shaft: [-16, 0],
      clearance: [0, 41],
      source: 'ISO 286-1/-2',
      basis: 'formula read in the source, value computed',
    },
    {
      fit: ['H7', 'g6'],
      hole: [0, 25],
      shaft: [-25, -9],
      clearance: [9, 50],
      source: 'ISO 286-1/-2',
      basis: 'from memory',
    },
  ] as const)('50 $fit ($source; $basis)', ({ fit, hole, shaft, clearance }) => {
    expect(um(50, fit[0])).toEqual(hole);
    expect(um(50, fit[1])).toEqual(shaft);
    const [bore, journal] = fit.map((classText) => {
      const read = parseQuantity(`50 ${classText}`, { type: 'measured', dimension: 'length' });
      if (isFault(read)) throw new Error(read.text);
      return read.interval;
    });
    if (bore === undefined || journal === undefined) throw new Error('Two parts make a fit');
    const [low, high] = clearance.map((each) => fraction(BigInt(each), 1000n));
    expect(subtractIntervals(bore, journal)).toMatchObject({ low, high });
  });
});

describe('predicates on sets', () => {
  it('a bore of 56.1 to 56.15 mm always clears a spigot of 54.0 to 54.1 mm', () => {
    // Exact arithmetic or geometry; arithmetic.
    const bore = closed(rational('56.1'), rational('56.15'));
    const spigot = closed(rational('54.0'), rational('54.1'));
    expect(alwaysAtLeast(subtractIntervals(bore, spigot), ZERO)).toBe(true);
    expect(neverAtLeast(subtractIntervals(spigot, bore), ZERO)).toBe(true);
  });
});
