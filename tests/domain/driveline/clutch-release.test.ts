/**
 * Hydraulic clutch releases: travel and its two ends, signs, and the force at the pedal.
 */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { isWithin, negateInterval, point } from '../../../src/domain/quantity/interval.js';
import { rational } from '../../../src/domain/quantity/rational.js';
import { about, asked } from './asked.js';

const RUNS = { seed: 7014, numRuns: 200 };

/** 120 mm by 5, by 4 in area: 6 mm at the slave; a plain piston of twice the bore. */
const base = {
  type: 'push',
  pedalTravel: '160 mm',
  pedalRatio: '5/1',
  masterDiameter: '20 mm',
  slaveDiameter: '40 mm',
  forkRatio: '1/1',
  leastTravel: '7 mm',
  greatestTravel: '9 mm',
};
const release = (given: Parameters<typeof asked>[1]) =>
  asked('clutch-release', { ...base, ...given });

const small = fc.integer({ min: 10, max: 30 });

describe('the travel', () => {
  test('times the force is the work at the pedal, whatever the levers', () => {
    fc.assert(
      fc.property(small, small, small, small, small, (master, slave, pedal, fork, travel) => {
        const result = release({
          masterDiameter: `${master} mm`,
          slaveDiameter: `${slave + 40} mm`,
          slaveInnerDiameter: `${slave} mm`,
          pedalRatio: `${pedal}/10`,
          forkRatio: `${fork}/10`,
          pedalTravel: `${travel} mm`,
          releaseLoad: '1000 N',
        });
        const atPedal = about(result.set('pedalForce')) * travel;
        expect(about(result.set('bearingTravel')) * 1000).toBeCloseTo(atPedal, 6);
      }),
      RUNS,
    );
  });

  test('contains what comes of each value in what is told', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 10 }), fc.integer({ min: 0, max: 10 }), (a, b) => {
        const spread = release({ slaveDiameter: '40 to 41 mm', freePlay: '5 to 6 mm' });
        const inside = release({
          slaveDiameter: `${40 + a / 10} mm`,
          freePlay: `${5 + b / 10} mm`,
        });
        const set = inside.set('bearingTravel');
        expect(isWithin(set, spread.set('bearingTravel'))).toBe(true);
      }),
      RUNS,
    );
  });

  test('has the sign of its type, and the same size', () => {
    const push = release({});
    const pull = release({ type: 'pull' });
    expect(pull.set('towardsGearbox')).toEqual(point(rational(8)));
    expect(push.set('towardsGearbox')).toEqual(negateInterval(pull.set('bearingTravel')));
  });

  test('is the same in other units', () => {
    const inches = release({ slaveDiameter: '2 in', masterDiameter: '1 in' });
    const metric = release({ slaveDiameter: '50.8 mm', masterDiameter: '25.4 mm' });
    expect(inches.set('bearingTravel')).toEqual(metric.set('bearingTravel'));
  });

  test.each([
    // 20 mm of pedal are 1 mm of bearing.
    ['139 mm', 'fails', 'holds', 'fails', ['too-little-travel']],
    ['140 mm', 'holds', 'holds', 'holds', []],
    ['180 mm', 'holds', 'holds', 'holds', []],
    ['181 mm', 'holds', 'fails', 'fails', ['too-much-travel']],
    ['130 to 150 mm', 'open', 'holds', 'open', ['too-little-travel']],
    ['150 to 190 mm', 'holds', 'open', 'open', ['too-much-travel']],
  ])('of %s at the pedal: %s, %s', (pedalTravel, releases, spares, fits, warnings) => {
    const result = release({ pedalTravel });
    expect(result.outcome('releases')).toBe(releases);
    expect(result.outcome('spares')).toBe(spares);
    expect(result.outcome('fits')).toBe(fits);
    expect(result.warnings).toEqual(warnings);
  });

  test.each([
    ['push', '140 mm', 'holds'],
    ['push', '139 mm', 'fails'],
    ['pull', '120 mm', 'holds'],
    ['pull', '119 mm', 'fails'],
  ])('of a %s bearing with the usual limits, %s at the pedal: %s', (type, pedalTravel, fits) => {
    const result = release({ type, pedalTravel, leastTravel: [], greatestTravel: [] });
    expect(result.outcome('fits')).toBe(fits);
    expect(result.warnings).toContain('usual-travel');
  });

  test('ends for a push at 10 mm and for a pull at 9, where nothing else is told', () => {
    const at = (type: string, pedalTravel: string) =>
      release({ type, pedalTravel, greatestTravel: [] }).outcome('spares');
    expect([at('push', '200 mm'), at('push', '201 mm')]).toEqual(['holds', 'fails']);
    expect([at('pull', '180 mm'), at('pull', '181 mm')]).toEqual(['holds', 'fails']);
  });

  test('is none where the free play takes it all', () => {
    const none = release({ freePlay: '200 mm' });
    expect(none.set('bearingTravel')).toEqual(point(rational(0)));
    expect(none.warnings).toContain('no-travel-left');
    expect(release({ freePlay: '10 mm' }).warnings).not.toContain('no-travel-left');
  });

  test('says where no fork is told of', () => {
    expect(release({ forkRatio: [] }).warnings).toEqual(['no-fork']);
    expect(release({ forkRatio: [], slaveInnerDiameter: '20 mm' }).warnings).not.toContain(
      'no-fork',
    );
  });
});

describe('the pedal', () => {
  test.each([
    // By 5 and by 4: a twentieth.
    ['3000 N', 'holds', []],
    ['3001 N', 'fails', ['heavy-pedal']],
    ['2900 to 3100 N', 'open', ['heavy-pedal']],
  ])('with %s at the bearing: %s', (releaseLoad, isLight, warnings) => {
    const result = release({ releaseLoad });
    expect(result.outcome('isLight')).toBe(isLight);
    expect(result.warnings).toEqual(warnings);
  });

  test('is heavier with losses, and not told of without a load', () => {
    const lossy = release({ releaseLoad: '1000 N', efficiency: '0.5' });
    expect(lossy.set('pedalForce')).toEqual(point(rational(100)));
    expect(release({}).has('pedalForce')).toBe(false);
  });
});

test.each([
  [{ slaveInnerDiameter: '40 mm' }, /smaller than the outer one/],
  [{ slaveInnerDiameter: '39 to 41 mm' }, /smaller than the outer one/],
  [{ leastTravel: '10 mm' }, /at least the least one/],
])('refuses %j', (given, said) => {
  expect(() => release(given)).toThrow(said);
});
