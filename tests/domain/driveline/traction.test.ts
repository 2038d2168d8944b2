/**
 * Tractive effort and traction: the limits of each drive, and where the front wheels lift.
 */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { isWithin } from '../../../src/domain/quantity/interval.js';
import { about, asked } from './asked.js';

const RUNS = { seed: 5012, numRuns: 200 };

/** So that the front wheels stay down: the grip is below c / h. */
const body = {
  grip: '0.7',
  wheelbase: '2600 mm',
  gravityToFront: '1300 mm',
  gravityHeight: '700 mm',
};
const engine = { torque: '200 N.m', stages: ['3/1', '4/1'], rollingRadius: '300 mm' };

const traction = (given: Parameters<typeof asked>[1]) => asked('traction', { ...body, ...given });
const limit = (given: Parameters<typeof asked>[1]) =>
  about(traction(given).set('greatestAcceleration'));

const arbitrary = {
  grip: fc.integer({ min: 30, max: 90 }).map((n) => `${n / 100}`),
  toFront: fc.integer({ min: 900, max: 1700 }),
  height: fc.integer({ min: 400, max: 900 }),
};

describe('the limits', () => {
  test('are those at which the driven axle slips under its moved load', () => {
    fc.assert(
      fc.property(arbitrary.grip, arbitrary.toFront, arbitrary.height, (grip, front, height) => {
        const given = { grip, gravityToFront: `${front} mm`, gravityHeight: `${height} mm` };
        const g = 9.80665;
        const rear = limit({ ...given, drive: 'rear' });
        const ahead = limit({ ...given, drive: 'front' });
        // Moments about the tyres of the other axle.
        expect(rear).toBeCloseTo((Number(grip) * (g * front + rear * height)) / 2600, 9);
        const load = g * (2600 - front) - ahead * height;
        expect(ahead).toBeCloseTo((Number(grip) * load) / 2600, 9);
      }),
      RUNS,
    );
  });

  test('of all wheels are never passed by those of one axle', () => {
    fc.assert(
      fc.property(arbitrary.grip, arbitrary.toFront, arbitrary.height, (grip, front, height) => {
        const given = { grip, gravityToFront: `${front} mm`, gravityHeight: `${height} mm` };
        const all = limit({ ...given, drive: 'all-locked' });
        expect(limit({ ...given, drive: 'rear' })).toBeLessThanOrEqual(all);
        expect(limit({ ...given, drive: 'front' })).toBeLessThan(all);
      }),
      RUNS,
    );
  });

  test('contain those of each value in what is told', () => {
    const spread = {
      grip: '0.6 to 0.8',
      wheelbase: '2590 to 2610 mm',
      gravityToFront: '1200 to 1400 mm',
      gravityHeight: '600 to 700 mm',
    };
    fc.assert(
      fc.property(
        fc.constantFrom('front', 'rear', 'all-locked'),
        fc.array(fc.integer({ min: 0, max: 20 }), { minLength: 4, maxLength: 4 }),
        (drive, [a = 0, b = 0, c = 0, d = 0]) => {
          const inside = traction({
            drive,
            grip: `${(60 + a) / 100}`,
            wheelbase: `${2590 + b} mm`,
            gravityToFront: `${1200 + 10 * c} mm`,
            gravityHeight: `${600 + 5 * d} mm`,
          }).set('greatestAcceleration');
          const all = traction({ drive, ...spread }).set('greatestAcceleration');
          expect(isWithin(inside, all)).toBe(true);
        },
      ),
      RUNS,
    );
  });

  test('are those of the ends, and no wider, where the front stays down', () => {
    const set = traction({ drive: 'front', wheelbase: '2500 to 2700 mm' });
    const { low, high } = set.set('greatestAcceleration');
    expect(low?.valueOf()).toBeCloseTo((0.7 * 9.80665 * 1200) / (2500 + 490), 9);
    expect(high?.valueOf()).toBeCloseTo((0.7 * 9.80665 * 1400) / (2700 + 490), 9);
  });
});

describe('the front wheels', () => {
  const high = { gravityToFront: '2300 mm', gravityHeight: '700 mm' };

  test('lift where the weight is far behind and high', () => {
    for (const drive of ['rear', 'all-locked']) {
      const result = traction({ ...high, drive, grip: '0.9' });
      expect(result.warnings).toContain('front-lifts');
      expect(about(result.set('greatestAcceleration'))).toBeCloseTo((9.80665 * 3) / 7, 9);
    }
    expect(traction({ ...high, drive: 'front', grip: '0.9' }).warnings).toEqual([]);
    expect(traction({ drive: 'rear' }).warnings).toEqual([]);
  });

  test('may lift where that hangs on the grip', () => {
    const result = traction({ ...high, drive: 'rear', grip: '0.4 to 4' });
    expect(result.warnings).toContain('front-lifts');
    const set = result.set('greatestAcceleration');
    expect(set.high?.valueOf()).toBeCloseTo((9.80665 * 3) / 7, 9);
    expect(set.low?.valueOf()).toBeCloseTo((0.4 * 9.80665 * 2300) / (2600 - 280), 9);
  });

  test('lift as well where the tyres would never slip', () => {
    const set = traction({ ...high, drive: 'rear', grip: '4' }).set('greatestAcceleration');
    expect(about(set)).toBeCloseTo((9.80665 * 3) / 7, 9);
  });
});

describe('the effort', () => {
  test('is the same in other units', () => {
    const metric = traction({ ...engine, drive: 'rear', rollingRadius: '304.8 mm' });
    const imperial = traction({ ...engine, drive: 'rear', rollingRadius: '1 ft' });
    expect(imperial.set('tractiveEffort')).toEqual(metric.set('tractiveEffort'));
  });

  test('falls with the efficiency, and says where none is told', () => {
    const full = traction({ ...engine, drive: 'rear' });
    const less = traction({ ...engine, drive: 'rear', efficiency: '0.9' });
    expect(full.warnings).toEqual(['no-losses']);
    expect(less.warnings).toEqual([]);
    expect(about(full.set('tractiveEffort'))).toBe(8000);
    expect(about(less.set('tractiveEffort'))).toBe(7200);
  });

  test.each([
    ['1600 kg', 'fails'],
    ['2000 kg', 'holds'],
    ['1600 to 2000 kg', 'open'],
  ])('is put down by %s: %s', (mass, expected) => {
    // 8000 N at 4.2294 m/s2 takes 1891.5 kg.
    expect(traction({ ...engine, drive: 'rear', mass }).outcome('putsDown')).toBe(expected);
  });

  test('finds what can be found of what is told', () => {
    const only = asked('traction', { drive: 'rear', grip: '0.7', ...engine });
    expect(only.has('tractiveEffort')).toBe(true);
    expect(only.has('greatestAcceleration')).toBe(false);
    expect(asked('traction', { drive: 'fixed-share', grip: '0.7' }).has('greatestEffort')).toBe(
      false,
    );
  });
});

test.each(['2600 mm', '2500 to 2700 mm', '3 m'])('refuses weight %s behind', (gravityToFront) => {
  expect(() => traction({ drive: 'front', gravityToFront })).toThrow(/before the rear axle/);
});
