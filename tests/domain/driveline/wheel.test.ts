/**
 * Another wheel: where it stands and what room it leaves.
 */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { GivenTexts } from '../../../src/domain/driveline/read-given.js';
import { isWithin } from '../../../src/domain/quantity/interval.js';
import { add, compare, ZERO } from '../../../src/domain/quantity/rational.js';
import { about, asked } from './asked.js';

const RUNS = { seed: 1611, numRuns: 200 };

const CHANGE = { oldWidth: '7 in', oldInset: '45 mm', newWidth: '8 in', newInset: '35 mm' };
const wheel = (given: GivenTexts = {}) => asked('wheel', { ...CHANGE, ...given });

const tenths = (least: number, most: number) =>
  fc.integer({ min: least * 10, max: most * 10 }).map((value) => value / 10);
const width = tenths(100, 300);
const inset = tenths(-60, 60);

describe('another wheel', () => {
  test('stands as far out as the way back would bring it in, in any unit', () => {
    fc.assert(
      fc.property(width, inset, width, inset, (oldWidth, oldInset, newWidth, newInset) => {
        const there = wheel({
          oldWidth: `${oldWidth} mm`,
          oldInset: `${oldInset} mm`,
          newWidth: `${newWidth} mm`,
          newInset: `${newInset} mm`,
        });
        const back = wheel({
          oldWidth: `${(newWidth / 10).toFixed(3)} cm`,
          oldInset: `${(newInset / 10).toFixed(3)} cm`,
          newWidth: `${(oldWidth / 10).toFixed(3)} cm`,
          newInset: `${(oldInset / 10).toFixed(3)} cm`,
        });
        for (const output of ['inwards', 'outwards', 'trackChange', 'scrubRadiusChange']) {
          const sum = add(there.set(output).low ?? ZERO, back.set(output).low ?? ZERO);
          expect([output, sum]).toEqual([output, ZERO]);
        }
      }),
      RUNS,
    );
  });

  test('known as a range moves by a range that holds each of its values', () => {
    fc.assert(
      fc.property(inset, tenths(0, 5), tenths(-1, 1), (newInset, spread, share) => {
        const at = (newInset + spread * share).toFixed(3);
        const range = wheel({ newInset: `${newInset} ±${spread} mm`, tyreRadiusChange: '2 ±1 mm' });
        const one = wheel({ newInset: `${at} mm`, tyreRadiusChange: '2.5 mm' });
        for (const output of ['inwards', 'outwards', 'trackChange', 'innerReach', 'outerReach']) {
          expect(isWithin(one.set(output), range.set(output))).toBe(true);
        }
      }),
      RUNS,
    );
  });

  test('counts a spacer and a hub face further out as that much less inset', () => {
    const less = wheel({ newInset: '25 mm' });
    for (const other of [wheel({ newSpacer: '10 mm' }), wheel({ hubFaceMoves: '10 mm' })]) {
      for (const output of ['inwards', 'outwards', 'trackChange', 'scrubRadiusChange']) {
        expect(other.set(output)).toEqual(less.set(output));
      }
    }
    const taken = wheel({ oldSpacer: '10 mm' });
    expect(taken.set('outwards')).toEqual(wheel({ oldInset: '35 mm' }).set('outwards'));
  });

  test('goes by overall widths where both are told', () => {
    const same = wheel({ oldOverallWidth: '225 mm', newOverallWidth: '225 mm' });
    expect(about(same.set('inwards'))).toBe(-10);
    expect(about(same.set('outwards'))).toBe(10);
  });

  test.each([
    [{ oldOverallWidth: '225 mm' }, /both wheels/],
    [{ newOverallWidth: '225 mm' }, /both wheels/],
    [{ oldOverallWidth: '170 mm', newOverallWidth: '225 mm' }, /at least as wide/],
  ])('is refused with widths that cannot be: %j', (given, because) => {
    expect(() => wheel(given)).toThrow(because);
  });
});

describe('the scrub radius', () => {
  const tyre = { newInset: '45 mm', tyreRadiusChange: '10 mm' };

  test('shrinks with a larger tyre, since the axis meets the ground further out', () => {
    const { low, high } = wheel({ ...tyre, kingpinInclination: '12 deg' }).set('scrubRadiusChange');
    expect(compare(high ?? ZERO, ZERO)).toBe(-1);
    expect(low?.valueOf()).toBeCloseTo(-2.1256, 4);
  });

  test('stays with an upright axis, and is not said without its inclination', () => {
    const upright = wheel({ ...tyre, kingpinInclination: '0 deg' });
    expect(about(upright.set('scrubRadiusChange'))).toBe(0);
    expect(upright.warnings).toEqual([]);
    expect(wheel(tyre).has('scrubRadiusChange')).toBe(false);
  });

  test('is warned of where it moves', () => {
    expect(wheel().warnings).toEqual(['scrub-radius-moves']);
    expect(wheel({ newInset: '45 mm' }).warnings).toEqual([]);
  });
});

describe('room', () => {
  // 2.7 mm further in and 22.7 mm further out.
  test.each([
    ['7.7 mm', 'holds'],
    ['7.69 mm', 'fails'],
    ['7.7 ±0.1 mm', 'open'],
  ])('of %s to the strut: %s', (innerRoom, outcome) => {
    expect(wheel({ innerRoom }).outcome('innerRoomEnough')).toBe(outcome);
  });

  test.each([
    ['30.7 mm', 'holds'],
    ['30.69 mm', 'fails'],
    ['30.7 ±0.1 mm', 'open'],
  ])('of %s to the arch: %s', (archRoom, outcome) => {
    expect(wheel({ archRoom }).outcome('archRoomEnough')).toBe(outcome);
  });

  test('may be wanted wider', () => {
    const given = { innerRoom: '7.7 mm', archRoom: '30.7 mm' };
    const wider = wheel({ ...given, innerRoomNeeded: '6 mm', archRoomNeeded: '9 mm' });
    expect(wider.outcome('innerRoomEnough')).toBe('fails');
    expect(wider.outcome('archRoomEnough')).toBe('fails');
  });

  test.each([
    [{ innerRoom: '2.7 mm', newInset: '35 mm' }, ['rubs', 'short-before', 'scrub-radius-moves']],
    [{ archRoom: '22.7 mm' }, ['rubs', 'scrub-radius-moves']],
    [{ archRoom: '22.8 mm' }, ['scrub-radius-moves']],
    [{ innerRoom: '4.9 mm' }, ['short-before', 'scrub-radius-moves']],
    [{ newSpacer: '3 mm', newInset: '48 mm' }, ['spacer']],
    [{ newSpacer: '0 mm', newInset: '45 mm' }, []],
  ])('and spacers are warned of: %j', (given, warnings) => {
    expect(wheel(given).warnings).toEqual(warnings);
  });
});
