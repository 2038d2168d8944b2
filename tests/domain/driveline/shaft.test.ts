/**
 * Round shafts in torsion: stress and torque as each other's inverse, twist, and notches.
 */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { polarMoment, torsionStress, torsionTorque } from '../../../src/domain/driveline/shaft.js';
import { contains, isWithin, point } from '../../../src/domain/quantity/interval.js';
import { rational } from '../../../src/domain/quantity/rational.js';
import { about, asked } from './asked.js';

const RUNS = { seed: 8015, numRuns: 200 };
const shaft = (given: Parameters<typeof asked>[1]) => asked('shaft', given);
const at = (value: number) => point(rational(value));
const whole = fc.integer({ min: 1, max: 100 });

describe('torsion', () => {
  test('stress and torque take each other back', () => {
    fc.assert(
      fc.property(whole, whole, whole, (inner, wall, torque) => {
        const round = { outer: at(inner + wall), inner: at(inner) };
        const back = torsionTorque(torsionStress(at(torque), round), round);
        expect(contains(back, rational(torque))).toBe(true);
        expect(about(back)).toBeCloseTo(torque, 9);
      }),
      RUNS,
    );
  });

  test('a tube is a bar less the bar that fills it', () => {
    fc.assert(
      fc.property(whole, whole, (inner, wall) => {
        const moment = (outer: number, bore: number) =>
          about(polarMoment({ outer: at(outer), inner: at(bore) }));
        const tube = moment(inner + wall, inner);
        expect(tube / (moment(inner + wall, 0) - moment(inner, 0))).toBeCloseTo(1, 6);
      }),
      RUNS,
    );
  });

  test('contains what each shaft in what is told gives', () => {
    const spread = shaft({
      outerDiameter: '40 to 42 mm',
      innerDiameter: '30 to 32 mm',
      torque: '1000 N.m',
      length: '500 mm',
      allowableStress: '300 MPa',
    });
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 20 }), fc.integer({ min: 0, max: 20 }), (a, b) => {
        const inside = shaft({
          outerDiameter: `${40 + a / 10} mm`,
          innerDiameter: `${30 + b / 10} mm`,
          torque: '1000 N.m',
          length: '500 mm',
          allowableStress: '300 MPa',
        });
        for (const output of ['polarMoment', 'stress', 'twist', 'allowableTorque']) {
          const [one, all] = [inside.set(output), spread.set(output)];
          expect(one.low?.valueOf()).toBeGreaterThanOrEqual((all.low?.valueOf() ?? NaN) - 1e-9);
          expect(one.high?.valueOf()).toBeLessThanOrEqual((all.high?.valueOf() ?? NaN) + 1e-9);
        }
      }),
      RUNS,
    );
  });

  test('is no wider than its ends', () => {
    const set = shaft({ outerDiameter: '40 to 50 mm', torque: '1000 N.m' }).set('stress');
    expect(set.low?.valueOf()).toBeCloseTo(16e6 / Math.PI / 50 ** 3, 9);
    expect(set.high?.valueOf()).toBeCloseTo(16e6 / Math.PI / 40 ** 3, 9);
  });

  test('is the same in other units', () => {
    const inches = shaft({ outerDiameter: '1 in', torque: '1 lbf.ft', length: '1 ft' });
    const metric = shaft({
      outerDiameter: '25.4 mm',
      torque: '1.3558179483314004 N.m',
      length: '304.8 mm',
    });
    for (const output of ['stress', 'twist']) {
      expect(inches.set(output)).toEqual(metric.set(output));
    }
  });

  test('grows with torque and length, and shrinks with the shear modulus', () => {
    const given = { outerDiameter: '30 mm', torque: '500 N.m', length: '400 mm' };
    const turned = about(shaft(given).set('twist'));
    expect(about(shaft({ ...given, length: '800 mm' }).set('twist'))).toBeCloseTo(2 * turned, 9);
    expect(about(shaft({ ...given, torque: '1000 N.m' }).set('twist'))).toBeCloseTo(2 * turned, 9);
    const soft = shaft({ ...given, shearModulus: '40000 MPa' });
    expect(about(soft.set('twist'))).toBeCloseTo(2 * turned, 9);
  });
});

describe('the calculator', () => {
  // pi x 26^3 / 16 x 600 MPa: 2070.6 N.m.
  test.each([
    ['2070 N.m', [], 'holds', ['no-notch']],
    ['2071 N.m', [], 'fails', ['no-notch', 'overloaded']],
    ['2000 to 2100 N.m', [], 'open', ['no-notch', 'overloaded']],
    ['1035 N.m', '2', 'holds', []],
    ['1036 N.m', '2', 'fails', ['overloaded']],
    ['1035 N.m', '1.9 to 2.1', 'open', ['overloaded']],
  ])('%s with a notch of %s: %s', (torque, notchFactor, holds, warnings) => {
    const result = shaft({
      outerDiameter: '26 mm',
      allowableStress: '600 MPa',
      torque,
      notchFactor,
    });
    expect(result.outcome('holds')).toBe(holds);
    expect(result.warnings).toEqual(warnings);
  });

  test('raises the stress at a notch and nowhere else', () => {
    const given = { outerDiameter: '26 mm', torque: '500 N.m' };
    const plain = shaft(given);
    const notched = shaft({ ...given, notchFactor: '2' });
    expect(notched.set('stress')).toEqual(plain.set('stress'));
    expect(isWithin(plain.set('peakStress'), plain.set('stress'))).toBe(true);
    expect(about(notched.set('peakStress'))).toBeCloseTo(2 * about(plain.set('stress')), 9);
  });

  test.each([
    ['76.1 mm', true],
    ['76 mm', false],
    ['75.9 to 76.1 mm', true],
  ])('warns of a thin wall with a bore of %s in 80 mm: %s', (innerDiameter, isThin) => {
    const { warnings } = shaft({ outerDiameter: '80 mm', innerDiameter });
    expect(warnings.includes('thin-tube')).toBe(isThin);
  });

  test('finds what can be found of what is told', () => {
    const bare = shaft({ outerDiameter: '26 mm' });
    expect(bare.has('polarMoment')).toBe(true);
    for (const output of ['stress', 'twist', 'allowableTorque', 'holds']) {
      expect(bare.has(output)).toBe(false);
    }
  });

  test.each(['26 mm', '25 to 27 mm', '30 mm'])('refuses a bore of %s in 26 mm', (innerDiameter) => {
    expect(() => shaft({ outerDiameter: '26 mm', innerDiameter })).toThrow(
      /smaller than the outer/,
    );
  });
});
