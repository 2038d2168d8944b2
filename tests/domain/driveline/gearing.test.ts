/**
 * Gears: speeds there and back, steps and spread, and what a change comes to.
 */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { roadSpeed, rotationAt } from '../../../src/domain/driveline/road-speed.js';
import { equalIntervals, isWithin, point } from '../../../src/domain/quantity/interval.js';
import { fraction, rational } from '../../../src/domain/quantity/rational.js';
import { calculate } from '../../../src/usecases/calculate.js';
import { about, asked } from './asked.js';

const RUNS = { seed: 1104, numRuns: 200 };
const FIVE = ['38/11', '35/18', '34/25', '31/32', '14/19'];
const SIX = ['40/11', '45/19', '37/22', '39/31', '35/36', '3/4'];
const CAR = { gears: FIVE, finalDrive: '43/11', circumference: '1900 mm' };

type Given = Parameters<typeof asked>[1];
const gearing = (given: Given) => asked('gearing', given);

const rpm = fc.integer({ min: 600, max: 9000 });
const millimetres = fc.integer({ min: 1500, max: 2700 });
const ratio = fc.tuple(fc.integer({ min: 8, max: 60 }), fc.integer({ min: 8, max: 60 }));

describe('speeds', () => {
  test('lead there and back', () => {
    fc.assert(
      fc.property(rpm, ratio, millimetres, (turns, [driven, driving], rolled) => {
        const whole = point(fraction(BigInt(driven), BigInt(driving)));
        const [rotation, way] = [point(rational(turns)), point(rational(rolled))];
        const speed = roadSpeed(rotation, whole, way);
        expect(equalIntervals(rotationAt(speed, whole, way), rotation)).toBe(true);
      }),
      RUNS,
    );
  });

  test('rise with engine speed and tyre, and fall with the ratio', () => {
    fc.assert(
      fc.property(rpm, millimetres, (turns, rolled) => {
        const of = (more: Given) =>
          gearing({
            ...CAR,
            engineSpeed: `${turns} rpm`,
            circumference: `${rolled} mm`,
            ...more,
          })
            .sets('roadSpeeds')
            .map(about);
        const speeds = of({});
        const every = (others: number[], isSo: (one: number, other: number) => boolean) =>
          others.every((other, index) => isSo(speeds[index] ?? Number.NaN, other));
        expect(every(of({ engineSpeed: `${turns + 1} rpm` }), (one, other) => one < other)).toBe(
          true,
        );
        expect(every(of({ circumference: `${rolled + 1} mm` }), (one, other) => one < other)).toBe(
          true,
        );
        expect(every(of({ finalDrive: '44/11' }), (one, other) => one > other)).toBe(true);
        expect([...speeds].sort((one, other) => one - other)).toEqual(speeds);
      }),
      RUNS,
    );
  });

  test('of readings contain those of every value read', () => {
    const of = (circumference: string, finalDrive: string) =>
      gearing({ ...CAR, circumference, finalDrive, roadSpeed: '100 km/h' }).sets('engineSpeeds');
    const whole = of('1900 ±10 mm', '3.91');
    for (const one of [of('1890 mm', '43/11'), of('1903.5 mm', '3.911'), of('1910 mm', '43/11')]) {
      for (const [index, each] of one.entries()) {
        expect(isWithin(each, whole[index] ?? each)).toBe(true);
      }
    }
    const [outside] = of('1911 mm', '3.905');
    const [inside] = whole;
    expect(outside && inside && isWithin(outside, inside)).toBe(false);
  });

  test('are the same in miles and inches', () => {
    const metric = { circumference: '1905 mm', roadSpeed: '96.56064 km/h' };
    const imperial = { circumference: '75 in', roadSpeed: '60 mph' };
    const of = (more: Given) => gearing({ ...CAR, ...more }).sets('engineSpeeds');
    expect(of(imperial)).toEqual(of(metric));
  });

  test('of a tyre by its name are those of what it rolls', () => {
    const { circumference, ...car } = { ...CAR, engineSpeed: '3000 rpm' };
    expect(circumference).toBe('1900 mm');
    const named = gearing({ ...car, tyre: '195/60R15' }).sets('roadSpeeds');
    expect(named).toEqual(gearing({ ...car, circumference: '1875.75 mm' }).sets('roadSpeeds'));
  });

  test('ahead of the final drive are those of a gear of 1:1', () => {
    const found = gearing({ ...CAR, gears: ['1'], roadSpeed: '200 km/h' });
    expect(found.set('shaftSpeed')).toEqual(found.sets('engineSpeeds')[0]);
  });
});

describe('steps', () => {
  test('multiply to the spread, and so do as many alike ones', () => {
    fc.assert(
      fc.property(fc.array(ratio, { minLength: 2, maxLength: 9 }), (pairs) => {
        const found = gearing({ gears: pairs.map(([driven, driving]) => `${driven}/${driving}`) });
        const spread = about(found.set('spread'));
        const steps = found.sets('steps').map(about);
        expect(steps.reduce((product, step) => product * step, 1) / spread).toBeCloseTo(1, 9);
        expect(about(found.set('geometricStep')) ** steps.length / spread).toBeCloseTo(1, 9);
      }),
      RUNS,
    );
  });

  test('of a single gear are none, and nothing is missing for them', () => {
    const single = gearing({ gears: ['1'] });
    expect(single.has('steps')).toBe(false);
    expect(about(single.set('spread'))).toBe(1);
    const answer = calculate({
      calculation: 'gearing',
      given: { gears: ['1'] },
      lang: 'en',
      units: 'recorded',
    });
    expect(answer.notFound.map(({ output }) => output)).not.toContain('steps');
    expect(answer.notFound.map(({ output }) => output)).toContain('overall');
  });
});

describe('afterwards', () => {
  const change = (given: Given) => about(gearing({ ...CAR, ...given }).set('topGearChange'));

  test('is what changes by itself, and all together', () => {
    expect(change({ newGears: SIX })).toBeCloseTo(100 / 56, 9);
    expect(change({ newFinalDrive: '43/12' })).toBeCloseTo(-100 / 12, 9);
    expect(change({ newCircumference: '2000 mm' })).toBeCloseTo(-5, 9);
    const all = { newGears: SIX, newFinalDrive: '43/12', newCircumference: '2000 mm' };
    expect(1 + change(all) / 100).toBeCloseTo((57 / 56) * (11 / 12) * (19 / 20), 9);
  });

  test('is exact where what stays is known roughly', () => {
    const found = gearing({
      ...CAR,
      finalDrive: '3.9',
      circumference: '1900 ±20 mm',
      newGears: SIX,
    });
    expect(found.set('topGearChange')).toEqual(point(fraction(25n, 14n)));
  });

  test('keeps what is not told', () => {
    const asking = { engineSpeed: '3000 rpm', roadSpeed: '100 km/h' };
    const found = gearing({ ...CAR, ...asking, newFinalDrive: '43/12' });
    const alone = gearing({ ...CAR, ...asking, finalDrive: '43/12' });
    for (const [after, before] of [
      ['newRoadSpeeds', 'roadSpeeds'],
      ['newEngineSpeeds', 'engineSpeeds'],
      ['newSteps', 'steps'],
      ['newOverall', 'overall'],
    ] as const) {
      expect(found.sets(after)).toEqual(alone.sets(before));
    }
    expect(gearing(CAR).has('newSteps')).toBe(false);
  });
});

describe('warnings', () => {
  test('gears that do not fall', () => {
    expect(gearing({ gears: ['2', '3'] }).warnings).toContain('not-falling');
    expect(gearing({ gears: ['2', '2'] }).warnings).toContain('not-falling');
    expect(gearing({ gears: FIVE }).warnings).toEqual([]);
    expect(gearing({ gears: FIVE, newGears: ['1', '2'] }).warnings).toContain('not-falling');
  });

  test('a step wider than the one before, but not by what nobody feels', () => {
    expect(gearing({ gears: ['4', '3', '2'] }).warnings).toEqual(['steps-widen']);
    expect(gearing({ gears: ['4', '2', '1'] }).warnings).toEqual([]);
    expect(gearing({ gears: SIX }).warnings).toEqual([]);
  });

  test('more gears, and no slower engine', () => {
    expect(gearing({ ...CAR, newGears: SIX }).warnings).toEqual(['no-slower-engine']);
    expect(gearing({ ...CAR, newGears: [...FIVE, '3/5'] }).warnings).toEqual([]);
    expect(gearing({ ...CAR, newGears: SIX, newFinalDrive: '43/12' }).warnings).toEqual([]);
  });
});

describe('what cannot be', () => {
  test.each<[Given, RegExp]>([
    [{ tyre: '?' }, /no size of a car tyre/],
    [{ newTyre: 'LT', tyre: '205/55R16' }, /no size of a car tyre/],
    [{ tyre: '205/55R16', circumference: '1900 mm' }, /not both/],
    [{ newTyre: '205/55R16' }, /tell what it was before/],
    [{ newFinalDrive: '4' }, /tell what it was before/],
    [{ engineSpeed: '0 rpm' }, /impossible/],
  ])('%j', (given, said) => {
    expect(() => gearing({ gears: FIVE, ...given })).toThrow(said);
  });
});
