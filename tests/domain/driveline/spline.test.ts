/**
 * Involute splines: diameters that leave room, modules of the standards, and what teeth carry.
 */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  bearingTimesLength,
  shearTimesLength,
} from '../../../src/domain/driveline/spline-geometry.js';
import { isWithin, point } from '../../../src/domain/quantity/interval.js';
import { rational } from '../../../src/domain/quantity/rational.js';
import { about, asked } from './asked.js';

const RUNS = { seed: 9016, numRuns: 200 };
const at = (value: number) => point(rational(value));

const metric = { family: 'iso-4156', teeth: 24, module: '1 mm' };
const spline = (given: Parameters<typeof asked>[1]) => asked('spline', { ...metric, ...given });

/** 4000 T / (D N t) over 20 mm: a torque of 100 N.m needs 18.4 mm at 24 MPa of shear. */
const loaded = {
  torque: '100 N.m',
  engagedLength: '30 mm',
  applicationFactor: '1',
  allowableShear: '24 MPa',
  allowableBearing: '100 MPa',
};

describe('diameters', () => {
  test('leave room between tips and roots, in every standard and at every angle', () => {
    const forms = fc.constantFrom(
      ...['30', '37.5', '45'].flatMap((pressureAngle) =>
        ['flat', 'fillet'].flatMap((root) =>
          ['iso-4156', 'ansi-b92-1'].map((family) => ({ family, pressureAngle, root })),
        ),
      ),
    );
    fc.assert(
      fc.property(forms, fc.integer({ min: 10, max: 60 }), (form, teeth) => {
        const result = spline({ ...form, teeth });
        const [pitch, tip, hubRoot, hubTip] = [
          'pitchDiameter',
          'shaftMajor',
          'hubMajor',
          'hubMinor',
        ].map((output) => about(result.set(output))) as [number, number, number, number];
        expect(hubTip).toBeLessThan(pitch);
        expect(pitch).toBeLessThan(tip);
        expect(tip).toBeLessThan(hubRoot);
        if (form.family === 'ansi-b92-1') expect(result.has('shaftMinor')).toBe(false);
        else expect(about(result.set('shaftMinor'))).toBeLessThan(hubTip);
      }),
      RUNS,
    );
  });

  test('grow with the module, all alike', () => {
    fc.assert(
      fc.property(fc.integer({ min: 5, max: 100 }), (tenths) => {
        const [one, other] = [spline({}), spline({ module: `${tenths / 10} mm` })];
        for (const output of ['pitchDiameter', 'shaftMajor', 'hubMajor', 'hubMinor']) {
          const times = about(other.set(output)) / about(one.set(output));
          expect(times).toBeCloseTo(tenths / 10, 9);
        }
      }),
      RUNS,
    );
  });

  test('contain those of each module in what is told', () => {
    const spread = spline({ module: '0.98 to 1.02 mm', ...loaded });
    for (const module of ['0.98 mm', '1 mm', '1.013 mm', '1.02 mm']) {
      const inside = spline({ module, ...loaded });
      for (const output of ['hubMinor', 'shaftMajor', 'shearStress', 'neededLength']) {
        expect(isWithin(inside.set(output), spread.set(output))).toBe(true);
      }
    }
  });

  test('are the same of a pitch as of its module', () => {
    const pitch = asked('spline', { family: 'ansi-b92-1', teeth: 24, pitch: '24' });
    const module = asked('spline', { family: 'ansi-b92-1', teeth: 24, module: '1/24 in' });
    expect(pitch.set('hubMajor')).toEqual(module.set('hubMajor'));
    expect(pitch.warnings).toEqual(['shaft-root-by-table']);
    expect(pitch.has('shaftMinor')).toBe(false);
  });

  test('of one count and a like size are not those of another standard', () => {
    // 24 teeth near 25 mm in three systems.
    const tips = [
      spline({}),
      asked('spline', { family: 'ansi-b92-1', teeth: 24, pitch: '24' }),
      asked('spline', {
        family: 'din-5480',
        teeth: 24,
        module: '1 mm',
        referenceDiameter: '26 mm',
      }),
    ].map((one) => about(one.set('shaftMajor')));
    expect(new Set(tips).size).toBe(3);
    for (const tip of tips) expect(Math.abs(tip - 25.8)).toBeLessThan(1);
  });
});

describe('modules', () => {
  test.each([
    ['iso-4156', '30', '1.25 mm', 'holds'],
    ['iso-4156', '30', '0.25 mm', 'fails'],
    ['iso-4156', '45', '0.25 mm', 'holds'],
    ['iso-4156', '45', '3 mm', 'fails'],
    ['iso-4156', '37.5', '10 mm', 'holds'],
    ['iso-4156', '30', '1.1 mm', 'fails'],
    ['iso-4156', '30', '0.99 to 1.01 mm', 'open'],
    ['ansi-b92-1', '30', '25.4/32 mm', 'holds'],
    ['ansi-b92-1', '30', '1 mm', 'fails'],
    ['din-5480', '30', '0.8 mm', 'holds'],
    ['din-5480', '30', '0.7 mm', 'fails'],
  ])('%s at %s degrees has %s: %s', (family, pressureAngle, module, expected) => {
    const written = module === '25.4/32 mm' ? '127/160 mm' : module;
    const given = { family, pressureAngle, module: written };
    const result = spline({
      ...given,
      ...(family === 'din-5480' ? { referenceDiameter: '26 mm' } : {}),
    });
    expect(result.outcome('isStandard')).toBe(expected);
    expect(result.warnings.includes('not-standard')).toBe(expected !== 'holds');
  });

  test('of inch splines end with 32 where roots are flat, with 48 where they are filleted', () => {
    const inch = (pitch: string, given = {}) =>
      asked('spline', { family: 'ansi-b92-1', teeth: 24, pitch, ...given }).outcome('isStandard');
    expect([inch('32'), inch('40'), inch('40', { root: 'fillet' })]).toEqual([
      'holds',
      'fails',
      'holds',
    ]);
    expect(inch('64', { pressureAngle: '45' })).toBe('holds');
    expect(inch('8', { pressureAngle: '45' })).toBe('fails');
    expect(inch('64', { pressureAngle: '37.5' })).toBe('fails');
  });
});

describe('what teeth carry', () => {
  test('is 101.9 MPa by the worked figures of the handbook', () => {
    const load = {
      torque: at(500),
      diameter: at(25),
      teeth: at(24),
      factor: point(rational('1.2')),
    };
    const perLength = about(shearTimesLength(load, point(rational(String(1.5707963)))));
    expect(perLength / 25).toBeCloseTo(101.9, 1);
    // The flanks: half the factor, over a height.
    expect(about(bearingTimesLength(load, at(1))) / 25).toBeCloseTo(80, 9);
  });

  test('is just enough at the length that is needed', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 10, max: 900 }),
        fc.integer({ min: 10, max: 400 }),
        fc.integer({ min: 5, max: 100 }),
        (torque, shear, bearing) => {
          const given = {
            ...loaded,
            torque: `${torque} N.m`,
            allowableShear: `${shear} MPa`,
            allowableBearing: `${bearing} MPa`,
          };
          const needed = about(spline(given).set('neededLength'));
          const reaching = (length: number) =>
            spline({ ...given, engagedLength: `${length.toFixed(9)} mm` });
          const [long, short] = [reaching(needed + 1e-6), reaching(needed - 1e-6)];
          expect(long.outcome('holds')).toBe('holds');
          expect(short.outcome('holds')).toBe('fails');
          const used = [
            about(long.set('shearStress')) / shear,
            about(long.set('bearingStress')) / bearing,
          ];
          expect(Math.max(...used)).toBeCloseTo(1, 4);
        },
      ),
      RUNS,
    );
  });

  test('shrinks by end float, and goes with each factor', () => {
    const plain = spline({ ...loaded, engagedLength: '20 mm' });
    const lost = spline({ ...loaded, engagedLength: '22 mm', endFloat: '2 mm' });
    expect(lost.set('shearStress')).toEqual(plain.set('shearStress'));
    const times = (factor: object) =>
      about(spline({ ...loaded, engagedLength: '20 mm', ...factor }).set('shearStress')) /
      about(plain.set('shearStress'));
    expect(times({ applicationFactor: '2' })).toBeCloseTo(2, 9);
    expect(times({ distributionFactor: '2' })).toBeCloseTo(2, 9);
    expect(times({ lifeFactor: '2' })).toBeCloseTo(0.5, 9);
  });

  test.each([
    ['24 MPa', 'holds', []],
    ['14 MPa', 'fails', ['overloaded']],
    ['14 to 24 MPa', 'open', ['overloaded']],
  ])('holds with %s of shear: %s', (allowableShear, holds, warnings) => {
    const result = spline({ ...loaded, allowableShear });
    expect(result.outcome('holds')).toBe(holds);
    expect(result.warnings).toEqual(warnings);
  });

  test('is not told without an application factor', () => {
    const result = spline({ ...loaded, applicationFactor: [] });
    expect(result.warnings).toEqual(['no-factor']);
    expect(result.has('shearStress')).toBe(false);
    expect(spline({ ...loaded, allowableBearing: [] }).has('neededLength')).toBe(false);
    expect(asked('spline', { family: 'iso-4156', teeth: 24 }).has('pitchDiameter')).toBe(false);
  });

  test('warns of less than a pitch diameter of length', () => {
    const at = (engagedLength: string) => spline({ engagedLength }).warnings;
    expect(at('24 mm')).toEqual([]);
    expect(at('23.9 mm')).toEqual(['shorter-than-usual']);
    expect(at('23 to 25 mm')).toEqual(['shorter-than-usual']);
  });
});

describe('reference diameters', () => {
  const din = { family: 'din-5480', teeth: 38, module: '3 mm' };

  test.each([
    ['116.9 mm', true],
    ['117 mm', false],
    ['120 mm', false],
    ['120.1 mm', true],
  ])('of %s are off: %s', (referenceDiameter, isOff) => {
    const { warnings } = asked('spline', { ...din, referenceDiameter });
    expect(warnings).toEqual(isOff ? ['reference-off'] : []);
  });

  test.each([
    [{ ...din }, /needs its reference diameter/],
    [{ ...din, referenceDiameter: '120 mm', pressureAngle: '45' }, /30 degrees only/],
    [{ ...metric, pitch: '24' }, /not both/],
    [{ ...metric, engagedLength: '5 mm', endFloat: '5 mm' }, /less than the engaged length/],
  ])('refuses %j', (given, said) => {
    expect(() => asked('spline', given)).toThrow(said);
  });
});
