/**
 * Universal joints: uneven speed, what two leave of it, and the rule of practice.
 */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { GivenTexts } from '../../../src/domain/driveline/read-given.js';
import { contains, isWithin } from '../../../src/domain/quantity/interval.js';
import { rational } from '../../../src/domain/quantity/rational.js';
import { about, asked } from './asked.js';

const RUNS = { seed: 1411, numRuns: 100 };

const joint = (given: GivenTexts) => asked('universal-joint', given);
const tenths = (least: number, most: number) =>
  fc.integer({ min: least * 10, max: most * 10 }).map((value) => value / 10);

describe('one joint', () => {
  test('is found again from the range of speed that it makes', () => {
    fc.assert(
      fc.property(tenths(1, 45), tenths(100, 6000), (angle, speed) => {
        const there = joint({ angle: [`${angle} deg`], speed: `${speed} rpm` });
        const range = about(there.set('fastest')) - about(there.set('slowest'));
        const back = joint({ speed: `${speed} rpm`, fluctuation: `${range.toFixed(9)} rpm` });
        expect(about(back.set('workingAngle'))).toBeCloseTo(angle, 5);
        expect(about(there.set('irregularity'))).toBeCloseTo(range / speed, 9);
      }),
      RUNS,
    );
  });

  test('drives the less evenly the greater its angle', () => {
    fc.assert(
      fc.property(tenths(0, 40), tenths(1, 10), (angle, more) => {
        const less = joint({ angle: [`${angle} deg`] });
        const greater = joint({ angle: [`${(angle + more).toFixed(1)} deg`] });
        for (const output of ['fastestShare', 'irregularity', 'residualIrregularity']) {
          expect(about(greater.set(output))).toBeGreaterThan(about(less.set(output)));
        }
      }),
      RUNS,
    );
  });

  test('drives evenly when straight', () => {
    const straight = joint({ angle: ['0 deg'], speed: '3000 rpm' });
    expect(contains(straight.set('slowest'), rational(3000))).toBe(true);
    expect(about(straight.set('irregularity'))).toBeCloseTo(0, 25);
    const even = joint({ speed: '9 rpm', fluctuation: '0 rpm' });
    expect(about(even.set('workingAngle'))).toBeCloseTo(0, 9);
  });

  test('of 1200 rpm over 100 rpm is not at the 16.2 deg that a source prints', () => {
    const angle = about(joint({ speed: '1200 rpm', fluctuation: '100 rpm' }).set('workingAngle'));
    expect(angle.toFixed(2)).toBe('16.42');
  });

  test('seen in one view only lies in that view, to either side', () => {
    for (const [side, plan] of [
      ['-4 deg', '0 deg'],
      ['0 deg', '4 deg'],
    ] as const) {
      const seen = joint({ sideAngle: [side], planAngle: [plan] });
      expect(about(seen.set('workingAngle'))).toBeCloseTo(4, 12);
    }
  });
});

describe('two joints', () => {
  test('known as ranges leave a range that holds each of its values', () => {
    fc.assert(
      fc.property(tenths(1, 9), tenths(1, 9), tenths(-1, 1), (first, second, share) => {
        for (const phasing of ['one-plane', 'quarter-turn']) {
          const range = joint({
            angle: [`${first} ±0.1 deg`, `${second} ±0.1 deg`],
            speed: '3000 ±20 rpm',
            phasing,
          });
          const at = (angle: number) => `${(angle + share / 10).toFixed(3)} deg`;
          const one = joint({ angle: [at(first), at(second)], speed: '3010 rpm', phasing });
          expect(isWithin(one.set('residualAngle'), range.set('residualAngle'))).toBe(true);
          for (const output of ['slowest', 'fastest', 'irregularity']) {
            const wide = range.sets(output);
            one.sets(output).forEach((set, index) => {
              expect(wide[index] !== undefined && isWithin(set, wide[index])).toBe(true);
            });
          }
        }
      }),
      RUNS,
    );
  });

  test('in one plane never leave more than a quarter turn apart', () => {
    fc.assert(
      fc.property(tenths(1, 9), tenths(1, 9), (first, second) => {
        const angle = [`${first} deg`, `${second} deg`];
        const apart = joint({ angle, phasing: 'quarter-turn' }).set('residualAngle');
        expect(about(joint({ angle }).set('residualAngle'))).toBeLessThan(about(apart));
      }),
      RUNS,
    );
  });
});

describe('the rule of practice', () => {
  test.each([
    [['6 deg', '4.5 deg'], 'holds'],
    [['6.01 deg', '6 deg'], 'fails'],
    [['4 deg', '2.4 deg'], 'fails'],
    [['5.9 to 6.1 deg'], 'open'],
    [['4 deg', '2.4 to 2.6 deg'], 'open'],
    [['6 deg'], 'holds'],
  ])('at %j: %s', (angle, outcome) => {
    expect(joint({ angle }).outcome('keepsRule')).toBe(outcome);
  });

  test.each<[GivenTexts, string[]]>([
    [{ angle: ['2 deg', '2 deg'] }, []],
    [{ angle: ['6.5 deg', '6 deg'] }, ['above-working-angle']],
    [{ angle: ['3.6 deg', '2 deg'] }, ['angles-differ']],
    [{ angle: ['0.4 deg', '0.5 deg'] }, ['needles-stand']],
    [{ angle: ['1 deg', '1 deg'], phasing: 'quarter-turn' }, ['out-of-phase']],
    [{ angle: ['1 deg'], phasing: 'quarter-turn' }, []],
    [{ angle: ['3.1 deg'] }, ['uneven-drive']],
    [{ angle: ['15.1 deg', '15.1 deg'] }, ['above-working-angle', 'beyond-small-angles']],
  ])('and limits are warned of: %j', (given, warnings) => {
    expect(joint(given).warnings).toEqual(warnings);
  });
});

test.each<[GivenTexts, RegExp]>([
  [{}, /working angles/],
  [{ angle: ['2 deg'], speed: '9 rpm', fluctuation: '1 rpm' }, /working angles/],
  [{ fluctuation: '1 rpm' }, /only with the speed/],
  [{ sideAngle: ['2 deg'] }, /as many angles/],
  [{ planAngle: ['2 deg'] }, /as many angles/],
  [{ sideAngle: ['2 deg', '2 deg'], planAngle: ['2 deg'] }, /as many angles/],
])('is refused with %j', (given, because) => {
  expect(() => joint(given)).toThrow(because);
});
