/**
 * Torque of disc and drum brakes, from the foot or from the line pressure.
 */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  discTorque,
  middleRadius,
  ringRadius,
} from '../../../src/domain/driveline/brake-torque.js';
import type { GivenTexts } from '../../../src/domain/driveline/read-given.js';
import { isWithin, point } from '../../../src/domain/quantity/interval.js';
import { compare, rational, ZERO } from '../../../src/domain/quantity/rational.js';
import { about, asked } from './asked.js';

const RUNS = { seed: 1754, numRuns: 200 };

const DISC = { pistons: ['54 mm'], friction: '0.38', radius: '115 mm' };
const FOOT = { pedalForce: '300 N', pedalRatio: '4', boost: '4', masterBore: '22 mm' };
const DRUM = { wheelCylinder: '20 mm', brakeFactor: '2', drumDiameter: '200 mm' };
const disc = (given: GivenTexts) => asked('brake-torque', { ...DISC, ...given });
const drum = (given: GivenTexts) => asked('drum-brake-torque', { ...DRUM, ...given });

const bore = fc.integer({ min: 150, max: 600 }).map((tenths) => tenths / 10);
const force = fc.integer({ min: 10, max: 900 });

describe('a disc brake', () => {
  test('has the torque of its line pressure, in any unit', () => {
    fc.assert(
      fc.property(force, bore, bore, (newtons, master, piston) => {
        const pistons = [`${piston} mm`, `${(piston / 10).toFixed(2)} cm`];
        const foot = { pedalForce: `${newtons} N`, pedalRatio: '4', masterBore: `${master} mm` };
        const byFoot = disc({ ...foot, pistons });
        const bar = about(byFoot.set('linePressure')) * 10;
        const byPressure = disc({ pressure: `${bar.toFixed(12)} bar`, pistons });
        const torque = about(byFoot.set('torque'));
        expect(about(byPressure.set('torque')) / torque).toBeCloseTo(1, 8);
      }),
      RUNS,
    );
  });

  test('known within limits holds what each value within them gives', () => {
    fc.assert(
      fc.property(force, bore, (newtons, piston) => {
        const range = disc({
          ...FOOT,
          pedalForce: `${newtons} ±5 N`,
          pistons: [`${piston} ±0.1 mm`],
          friction: '0.3 to 0.4',
        });
        const one = disc({
          ...FOOT,
          pedalForce: `${newtons + 4} N`,
          pistons: [`${piston} mm`],
          friction: '0.36',
        });
        for (const output of ['linePressure', 'pistonArea', 'force', 'torque']) {
          expect(isWithin(one.set(output), range.set(output))).toBe(true);
        }
      }),
      RUNS,
    );
  });

  test('brakes by twice the force on one pad', () => {
    const torque = discTorque(point(rational(1000)), point(rational('0.4')), point(rational(125)));
    expect(torque.low).toEqual(rational(100));
  });

  test('has even pressure act no further in than the middle, and within the band', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 200 }), fc.integer({ min: 1, max: 200 }), (a, b) => {
        const [inner, outer] = [a, a + b].map((one) => point(rational(one)));
        if (inner === undefined || outer === undefined) throw new Error('two radii');
        const even = ringRadius(inner, outer).low ?? ZERO;
        expect(compare(even, middleRadius(inner, outer).low ?? ZERO)).toBe(1);
        expect(compare(even, outer.low ?? ZERO)).toBe(-1);
        // The formula of the books, with the cubes.
        const [i, o] = [a, a + b];
        expect(even.valueOf()).toBeCloseTo((2 / 3) * ((o ** 3 - i ** 3) / (o ** 2 - i ** 2)), 9);
      }),
      RUNS,
    );
  });

  test('without a foot has areas and a radius, but no torque', () => {
    const alone = disc({});
    expect(alone.has('pistonArea')).toBe(true);
    expect(alone.has('linePressure')).toBe(false);
    expect(alone.has('torque')).toBe(false);
    expect(disc({ pedalForce: '300 N' }).has('torque')).toBe(false);
  });

  test('takes the force of the foot as it is where ratio and booster are not told', () => {
    const bare = disc({ pedalForce: '800 N', masterBore: '20 mm' });
    const told = disc({ pedalForce: '100 N', pedalRatio: '4', boost: '2', masterBore: '20 mm' });
    expect(bare.set('torque')).toEqual(told.set('torque'));
  });

  test.each([
    [{ pressure: '8 MPa', pedalForce: '300 N' }, /not both/],
    [{ pressure: '8 MPa', boost: '3' }, /not both/],
    [{ padInner: '90 mm' }, /not both/],
  ])('is refused with too much: %j', (given, because) => {
    expect(() => disc(given)).toThrow(because);
  });

  test('has a band that is told apart from none', () => {
    const banded = (padInner: string) =>
      asked('brake-torque', {
        pistons: ['54 mm'],
        friction: '0.38',
        padInner,
        padOuter: '138 mm',
      });
    expect(banded('92 mm').warnings).toEqual([]);
    expect(banded('135 ±5 mm').warnings).toEqual(['band-may-be-none']);
    expect(() => banded('138 mm')).toThrow(/smaller than its outer/);
  });
});

describe('a drum brake', () => {
  test('brakes in proportion to factor, force and diameter', () => {
    const once = about(drum({ pressure: '3 MPa' }).set('torque'));
    expect(about(drum({ pressure: '6 MPa' }).set('torque'))).toBeCloseTo(2 * once, 9);
    const other = { pressure: '3 MPa', brakeFactor: '4', drumDiameter: '300 mm' };
    expect(about(drum(other).set('torque'))).toBeCloseTo(3 * once, 9);
  });

  test('is warned of where friction matters much', () => {
    expect(drum({ brakeFactor: '4' }).warnings).toEqual([]);
    expect(drum({ brakeFactor: '3.8 to 4.2' }).warnings).toEqual(['factor-is-touchy']);
    expect(drum({ brakeFactor: '5' }).warnings).toEqual(['factor-is-touchy']);
  });

  test('is refused a pressure twice', () => {
    expect(() => drum({ pressure: '6 MPa', masterBore: '20 mm' })).toThrow(/not both/);
  });
});
