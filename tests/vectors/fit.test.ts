/**
 * Check values of the system of limits and fits, each with its source and how it was had.
 */

import { describe, expect, it } from 'vitest';
import { subtractIntervals } from '../../src/domain/quantity/interval.js';
import { isIsoFault, isoLimits } from '../../src/domain/quantity/iso286.js';
import { isFault, parseQuantity } from '../../src/domain/quantity/quantity.js';
import { fraction, multiply, rational } from '../../src/domain/quantity/rational.js';

const PARTS = 'ISO 286-1/-2';

/** Lower and upper deviation of a class at a size, in micrometres. */
function deviations(size: number, classText: string): readonly [number, number] {
  const limits = isoLimits(rational(size), classText);
  if (isIsoFault(limits)) throw new Error(limits.text);
  const um = (value: typeof limits.lower) => multiply(value, rational(1000)).valueOf();
  return [um(limits.lower), um(limits.upper)];
}

/** The width of a grade, which the hole H of that grade has above its nominal size. */
const grade = (size: number, number_: number) => deviations(size, `H${number_}`)[1];

/** The tolerance factor i of the range over 30 to 50 mm, in micrometres. */
const MEAN = Math.sqrt(30 * 50);
const FACTOR = 0.45 * Math.cbrt(MEAN) + 0.001 * MEAN;

describe('standard tolerances', () => {
  it(`fit-01 (${PARTS}; formula read in the source, value computed)`, () => {
    const expected = {
      mean: 38.72983346207417,
      factor: 1.5612429996351935,
      seven: 24.979887994163096,
    };
    expect(Math.abs(MEAN - expected.mean)).toBeLessThan(0.005);
    expect(Math.abs(FACTOR - expected.factor)).toBeLessThan(0.005);
    expect(Math.abs(16 * FACTOR - expected.seven)).toBeLessThan(0.005);
    expect(grade(50, 7)).toBe(Math.round(expected.seven));
  });

  it(`fit-02 (${PARTS}; value read in the source): 50 mm belongs to the range below it`, () => {
    const um = [11, 16, 25, 39, 62, 100, 160];
    expect(um.map((_, index) => grade(50, 5 + index))).toEqual(um);
  });

  it(`fit-04 (${PARTS}; value read in the source): each grade a multiple of the factor`, () => {
    const multipliers = [7, 10, 16, 25, 40, 64, 100];
    for (const [index, multiplier] of multipliers.entries()) {
      // The table rounds, the more coarsely the wider: up to 3 per cent.
      expect(Math.abs(grade(50, 5 + index) / (multiplier * FACTOR) - 1)).toBeLessThan(0.03);
    }
  });
});

describe('fits', () => {
  it.each([
    {
      id: 'fit-05',
      hole: 'H8',
      shaft: 'f7',
      limits: [0, 39, -50, -25],
      clearance: [25, 89],
      source: 'ISO 286-2 preferred fits',
      basis: 'value read in the source',
    },
    {
      id: 'fit-07',
      hole: 'H7',
      shaft: 'h6',
      limits: [0, 25, -16, 0],
      clearance: [0, 41],
      source: PARTS,
      basis: 'formula read in the source, value computed',
    },
    {
      id: 'fit-08',
      hole: 'H7',
      shaft: 'g6',
      limits: [0, 25, -25, -9],
      clearance: [9, 50],
      source: PARTS,
      basis: 'from memory',
    },
  ])('$id ($source; $basis): 50 $hole/$shaft', ({ hole, shaft, limits, clearance }) => {
    expect([...deviations(50, hole), ...deviations(50, shaft)]).toEqual(limits);
    const [bore, journal] = [hole, shaft].map((classText) => {
      const read = parseQuantity(`50 ${classText}`, { type: 'measured', dimension: 'length' });
      if (isFault(read)) throw new Error(read.text);
      return read.interval;
    });
    if (bore === undefined || journal === undefined) throw new Error('two parts make a fit');
    const [low, high] = clearance.map((um) => fraction(BigInt(um), 1000n));
    expect(subtractIntervals(bore, journal)).toMatchObject({ low, high });
  });
});
