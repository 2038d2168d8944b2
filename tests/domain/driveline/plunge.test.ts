/**
 * Slip and plunge beyond their check values.
 */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { changeAfterRise } from '../../../src/domain/driveline/plunge.js';
import { closed, isWithin, point } from '../../../src/domain/quantity/interval.js';
import { compare, fraction, rational } from '../../../src/domain/quantity/rational.js';
import { about, asked } from './asked.js';

const SHAFT = { rideLength: '400 mm', otherLengths: ['390 mm', '405 mm'], mountMovement: '4 mm' };

describe('a shaft', () => {
  test.each([
    ['384 mm', '411 mm', 'holds'],
    ['385 mm', '411 mm', 'fails'],
    ['384 mm', '410 mm', 'fails'],
    ['384 ±1 mm', '411 mm', 'open'],
  ])('from %s to %s has room: %s', (compressedLength, extendedLength, hasRoom) => {
    const result = asked('plunge', { ...SHAFT, compressedLength, extendedLength });
    expect(result.outcome('hasRoom')).toBe(hasRoom);
    expect(result.warnings).toEqual([]);
  });

  test('without what its mounts give is warned of', () => {
    const { mountMovement: _, ...rest } = SHAFT;
    const told = asked('plunge', { ...rest, compressedLength: '380 mm' });
    expect(told.warnings).toEqual(['mounts-left-out']);
    expect(about(told.set('reserveInwards'))).toBe(10);
    expect(told.has('hasRoom')).toBe(false);
  });

  test('at ride height alone needs no slip, and is told what decides', () => {
    const alone = asked('plunge', { rideLength: '400 mm' });
    expect(alone.warnings).toEqual(['only-ride-height']);
    expect(about(alone.set('slipNeeded'))).toBe(0);
  });

  test('is not longer pushed together than drawn out', () => {
    const ends = { compressedLength: '412 mm', extendedLength: '380 mm' };
    expect(() => asked('plunge', { ...SHAFT, ...ends })).toThrow('longer than pushed together');
  });

  test('needs no less slip with one more position', () => {
    const lengths = fc.array(fc.integer({ min: 300, max: 500 }), { minLength: 2, maxLength: 8 });
    fc.assert(
      fc.property(lengths, (all) => {
        const slip = (some: readonly number[]) => {
          const otherLengths = some.map((length) => `${length} mm`);
          return about(asked('plunge', { rideLength: '400 mm', otherLengths }).set('slipNeeded'));
        };
        expect(slip(all)).toBeGreaterThanOrEqual(slip(all.slice(1)));
      }),
      { numRuns: 200, seed: 7 },
    );
  });
});

describe('a rise', () => {
  const amount = fc.bigInt({ min: 1n, max: 20_000n }).map((n) => fraction(n, 10n));

  test('of two ends holds that of each value between', () => {
    fc.assert(
      fc.property(amount, amount, amount, (level, rise, width) => {
        const levels = closed(level, level.add(width));
        const rises = closed(rise, rise.add(width));
        const inside = changeAfterRise(
          point(level.add(width.div(2))),
          point(rise.add(width.div(3))),
        );
        expect(isWithin(inside, changeAfterRise(levels, rises))).toBe(true);
      }),
      { numRuns: 200, seed: 7 },
    );
  });

  test('changes a longer shaft less', () => {
    const [short, long] = [500, 1000].map((length) =>
      changeAfterRise(point(rational(length)), point(rational(60))),
    );
    expect(compare(long?.high ?? rational(0), short?.low ?? rational(0))).toBe(-1);
  });
});
