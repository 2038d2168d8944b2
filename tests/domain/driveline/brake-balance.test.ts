/**
 * Brake balance: which axle locks first, and how far it is off the original.
 */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { GivenTexts } from '../../../src/domain/driveline/read-given.js';
import { isEverything, isWithin } from '../../../src/domain/quantity/interval.js';
import { compare, ZERO } from '../../../src/domain/quantity/rational.js';
import { about, asked } from './asked.js';

const RUNS = { seed: 1355, numRuns: 200 };

// 75 % of the braking in front, and 58 % + 20 % z of the weight: balanced at 0.85 g.
const ROAD = {
  frontTorque: '750 N.m',
  rearTorque: '250 N.m',
  staticFrontShare: '58 %',
  centreOfGravityHeight: '0.5 m',
  wheelbase: '2.5 m',
};
const balance = (given: GivenTexts = {}) => asked('brake-balance', { ...ROAD, ...given });

describe('at a deceleration', () => {
  test.each([
    ['0.84', 'front', []],
    ['0.85', 'both', []],
    ['0.86', 'rear', ['rear-locks-first']],
    ['0.8 to 0.9', 'open', ['rear-locks-first']],
  ])('of %s g locks first: %s', (deceleration, axle, warnings) => {
    const at = balance({ deceleration });
    expect(at.word('locksFirst')).toBe(axle);
    expect(at.warnings).toEqual(warnings);
  });

  test('the axle that locks first is the one that uses more grip', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 150 }), fc.integer({ min: 100, max: 900 }), (z, f) => {
        const at = balance({
          deceleration: (z / 100).toFixed(2),
          frontTorque: `${f} N.m`,
          rearTorque: `${1000 - f} N.m`,
        });
        const used = ['frontGripUsed', 'rearGripUsed'].map((one) => at.set(one).low ?? ZERO);
        const order = compare(used[0] ?? ZERO, used[1] ?? ZERO);
        const expected = order > 0 ? 'front' : order < 0 ? 'rear' : 'both';
        expect(at.word('locksFirst')).toBe(expected);
      }),
      RUNS,
    );
  });

  test('at the balanced one both axles use that very grip', () => {
    const at = balance({ deceleration: '0.85' });
    expect(about(at.set('balancedDeceleration'))).toBe(85);
    expect(about(at.set('frontGripUsed'))).toBe(85);
    expect(about(at.set('rearGripUsed'))).toBe(85);
  });

  test('ranges hold what each of their values gives, in any unit', () => {
    fc.assert(
      fc.property(fc.integer({ min: 600, max: 700 }), fc.integer({ min: 45, max: 55 }), (f, h) => {
        const deceleration = '0.7 to 0.8';
        const range = balance({
          frontTorque: '600 to 700 N.m',
          centreOfGravityHeight: '0.45 to 0.55 m',
          deceleration,
        });
        const one = balance({
          frontTorque: `${f} N.m`,
          centreOfGravityHeight: `${h} cm`,
          deceleration: '75 %',
        });
        const outputs = ['frontBrakeShare', 'frontLoadShare', 'frontGripUsed', 'rearGripUsed'];
        for (const output of [...outputs, 'torqueRatio', 'balancedDeceleration']) {
          expect(isWithin(one.set(output), range.set(output))).toBe(true);
        }
      }),
      RUNS,
    );
  });

  test('claims nothing of a rear axle that lifts', () => {
    const at = balance({ deceleration: '2.1' });
    expect(at.warnings).toEqual(['rear-locks-first', 'rear-lifts']);
    expect(isEverything(at.set('rearGripUsed'))).toBe(true);
    expect(balance({ deceleration: '2.09' }).warnings).toEqual(['rear-locks-first']);
  });
});

describe('with so much grip', () => {
  // At 0.8 g the front axle uses 0.8108 and the rear one 0.7692 of grip.
  test.each([
    ['0.82', 'holds', 'holds'],
    ['0.8', 'fails', 'holds'],
    ['0.76', 'fails', 'fails'],
    ['0.76 to 0.82', 'open', 'open'],
  ])('as %s: front %s, rear %s', (grip, front, rear) => {
    const at = balance({ deceleration: '0.8', grip });
    expect(at.outcome('frontRolls')).toBe(front);
    expect(at.outcome('rearRolls')).toBe(rear);
  });

  test('no vehicle decelerates by more', () => {
    expect(balance({ deceleration: '0.8', grip: '0.8' }).warnings).toEqual([]);
    expect(balance({ deceleration: '0.8', grip: '0.79' }).warnings).toEqual(['beyond-grip']);
  });
});

describe('beside the original brakes', () => {
  const original = { originalFrontTorque: '2000 N.m', originalRearTorque: '1000 N.m' };

  test.each([
    ['2100 N.m', 'holds', []],
    ['1900 N.m', 'holds', []],
    ['2101 N.m', 'fails', ['ratio-off']],
    ['1899 N.m', 'fails', ['ratio-off']],
    ['2100 ±1 N.m', 'open', ['ratio-off']],
  ])('%s in front: %s', (frontTorque, outcome, warnings) => {
    const beside = balance({ ...original, frontTorque, rearTorque: '1000 N.m' });
    expect(beside.outcome('keepsRatio')).toBe(outcome);
    expect(beside.warnings).toEqual(warnings);
  });

  test('the same brakes are no change', () => {
    const same = balance({ originalFrontTorque: '1.5 N.m', originalRearTorque: '0.5 N.m' });
    expect(same.set('ratioChange').low).toEqual(ZERO);
  });
});

test('a smaller tyre behind brakes more there', () => {
  const given = { frontTorque: '500 N.m', rearTorque: '500 N.m' };
  const tyres = { frontTyreRadius: '300 mm', rearTyreRadius: '100 mm' };
  expect(about(balance({ ...given, ...tyres }).set('frontBrakeShare'))).toBe(25);
  const same = balance({ ...given, frontTyreRadius: '1 in', rearTyreRadius: '25.4 mm' });
  expect(about(same.set('frontBrakeShare'))).toBe(50);
  expect(() => balance({ rearTyreRadius: '300 mm' })).toThrow(/both axles/);
});
