/**
 * The plunge of a shaft, and the room for it.
 */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { GivenTexts } from '../../../src/domain/driveline/read-given.js';
import { isWithin } from '../../../src/domain/quantity/interval.js';
import { about, asked } from './asked.js';

const RUNS = { seed: 1511, numRuns: 100 };

const plunge = (given: GivenTexts) => asked('plunge', given);
const OUTPUTS = ['lengthening', 'shortening', 'slip'] as const;
const tenths = (least: number, most: number) =>
  fc.integer({ min: least * 10, max: most * 10 }).map((value) => value / 10);

describe('travel', () => {
  test('is the way up and the way down from rest, in any unit', () => {
    fc.assert(
      fc.property(fc.array(tenths(300, 400), { minLength: 2, maxLength: 5 }), (all) => {
        const travel = plunge({ length: all.map((one) => `${one} mm`) });
        const inCm = plunge({ length: all.map((one) => `${(one / 10).toFixed(2)} cm`) });
        for (const output of OUTPUTS) expect(inCm.set(output)).toEqual(travel.set(output));
        const [up, down, slip] = OUTPUTS.map((output) => about(travel.set(output)));
        expect(slip).toBeCloseTo(Math.max(...all) - Math.min(...all), 9);
        expect(slip).toBeCloseTo(Number(up) + Number(down), 9);
      }),
      RUNS,
    );
  });

  test('of lengths known as ranges holds each of its values', () => {
    fc.assert(
      fc.property(tenths(300, 320), tenths(300, 320), tenths(-1, 1), (rest, bump, share) => {
        const range = plunge({ length: [`${rest} ±1 mm`, `${bump} ±1 mm`] });
        const one = plunge({ length: [`${(rest + share).toFixed(1)} mm`, `${bump} mm`] });
        for (const output of OUTPUTS) {
          expect(isWithin(one.set(output), range.set(output))).toBe(true);
        }
      }),
      RUNS,
    );
  });

  test('takes no spread of one length for travel', () => {
    expect(about(plunge({ length: ['300 ±5 mm'] }).set('slip'))).toBe(0);
    const { low, high } = plunge({ length: ['300 ±5 mm', '310 mm'] }).set('slip');
    expect([low?.valueOf(), high?.valueOf()]).toEqual([5, 15]);
  });

  test('by coordinates is the same wherever the axes point', () => {
    fc.assert(
      fc.property(tenths(-90, 90), tenths(100, 400), tenths(-90, 90), (x, y, z) => {
        const [a, b, c] = [x, y, z].map((one) => [`${one} mm`, '100 mm']);
        if (a === undefined || b === undefined || c === undefined) return;
        const seen = plunge({ along: a, across: b, up: c });
        const turned = plunge({ along: b, across: c, up: a });
        for (const output of OUTPUTS) expect(turned.set(output)).toEqual(seen.set(output));
        const [first] = seen.sets('lengths');
        expect(first && about(first)).toBeCloseTo(Math.hypot(x, y, z), 9);
      }),
      RUNS,
    );
  });

  test('of a rise grows with it, falls with the length, and is one up and down', () => {
    fc.assert(
      fc.property(tenths(300, 1500), tenths(1, 90), tenths(1, 9), (rest, rise, more) => {
        const slip = (length: number, by: number) =>
          about(plunge({ length: [`${length} mm`], rise: [`${by.toFixed(1)} mm`] }).set('slip'));
        expect(slip(rest, rise + more)).toBeGreaterThan(slip(rest, rise));
        expect(slip(rest + 100, rise)).toBeLessThan(slip(rest, rise));
        expect(slip(rest, -rise)).toBe(slip(rest, rise));
        const both = plunge({ length: [`${rest} mm`], along: undefined, rise: ['-5 to 9 mm'] });
        const at = plunge({ length: [`${rest} mm`], rise: ['3 mm'] });
        expect(isWithin(at.set('slip'), both.set('slip'))).toBe(true);
      }),
      RUNS,
    );
  });
});

describe('room', () => {
  const length = ['382 mm', '373 mm'];
  test.each([
    ['367 mm', 'holds'],
    ['367.1 mm', 'fails'],
    ['367 ±0.1 mm', 'open'],
  ])('before it bottoms, pushed in to %s: %s', (compressedLength, outcome) => {
    const room = plunge({ length, compressedLength, mountMovement: '4 mm' });
    expect(room.outcome('roomInwardsEnough')).toBe(outcome);
    expect(room.has('roomOutwards')).toBe(false);
  });

  test.each([
    ['388 mm', 'holds'],
    ['387.9 mm', 'fails'],
    ['388 ±0.1 mm', 'open'],
  ])('before it comes apart, drawn out to %s: %s', (extendedLength, outcome) => {
    const room = plunge({ length, extendedLength, mountMovement: '4 mm' });
    expect(room.outcome('roomOutwardsEnough')).toBe(outcome);
    expect(room.has('roomInwards')).toBe(false);
  });

  test('may be wanted wider', () => {
    const given = { length, compressedLength: '367 mm', mountMovement: '4 mm' };
    expect(plunge({ ...given, reserve: '2.1 mm' }).outcome('roomInwardsEnough')).toBe('fails');
  });

  test.each<[GivenTexts, string[]]>([
    [{ length }, []],
    [{ length: ['382 mm'] }, ['one-position']],
    [{ length, compressedLength: '373 mm', mountMovement: '0 mm' }, ['bottoms']],
    [{ length, compressedLength: '372.9 mm', mountMovement: '0 mm' }, []],
    [{ length, extendedLength: '381.9 mm', mountMovement: '0 mm' }, ['comes-apart']],
    [{ length, extendedLength: '400 mm' }, ['mounts-not-told']],
  ])('and positions are warned of: %j', (given, warnings) => {
    expect(plunge(given).warnings).toEqual(warnings);
  });
});

test.each<[GivenTexts, RegExp]>([
  [{}, /not both/],
  [{ length: ['300 mm'], up: ['3 mm'] }, /not both/],
  [{ rise: ['3 mm'] }, /not both/],
  [{ up: ['3 mm'], rise: ['3 mm'] }, /one length/],
  [{ length: ['300 mm', '310 mm'], rise: ['3 mm'] }, /one length/],
  [{ along: ['300 mm', '310 mm'], up: ['3 mm'] }, /as many values/],
])('is refused with %j', (given, because) => {
  expect(() => plunge(given)).toThrow(because);
});
