/**
 * Planetary centres: shares of torque, and speeds by Willis.
 */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { isWithin } from '../../../src/domain/quantity/interval.js';
import { about, asked } from './asked.js';

const RUNS = { seed: 93, numRuns: 200 };
const pair = fc.tuple(fc.integer({ min: 8, max: 60 }), fc.integer({ min: 1, max: 60 }));
const rpm = fc.integer({ min: -6000, max: 6000 });

const centre = (given: Parameters<typeof asked>[1]) => asked('planetary-centre', given);

describe('torque', () => {
  test('is shared out without a rest, as the teeth are', () => {
    fc.assert(
      fc.property(pair, ([sun, more]) => {
        const found = centre({ ringTeeth: sun + more, sunTeeth: sun });
        const [ring, rest] = [about(found.set('ringShare')), about(found.set('sunShare'))];
        expect(ring + rest).toBeCloseTo(100, 9);
        expect(ring / rest).toBeCloseTo((sun + more) / sun, 9);
      }),
      RUNS,
    );
  });
});

describe('speeds', () => {
  test('lose no power: torque by speed goes in and out alike', () => {
    fc.assert(
      fc.property(pair, rpm, rpm, ([sun, more], carrier, ring) => {
        const speeds = { carrierSpeed: `${carrier} rpm`, ringSpeed: `${ring} rpm` };
        const found = centre({ ringTeeth: sun + more, sunTeeth: sun, ...speeds });
        const out =
          about(found.set('ringShare')) * ring +
          about(found.set('sunShare')) * about(found.set('sunSpeed'));
        expect(out).toBeCloseTo(100 * carrier, 5);
      }),
      RUNS,
    );
  });

  test('read as a set contain that of each value', () => {
    const of = (carrierSpeed: string) =>
      centre({ ringTeeth: 100, sunTeeth: 50, carrierSpeed, ringSpeed: '900 rpm' }).set('sunSpeed');
    const whole = of('1000 ±10 rpm');
    for (const one of ['990 rpm', '1000 rpm', '1003.7 rpm', '1010 rpm']) {
      expect(isWithin(of(one), whole)).toBe(true);
    }
    expect(isWithin(of('1011 rpm'), whole)).toBe(false);
  });
});

describe('warnings and faults', () => {
  const both = { carrierSpeed: '1000 rpm', ringSpeed: '1000 rpm' };

  test('an odd difference of teeth has no planet', () => {
    expect(centre({ ringTeeth: 100, sunTeeth: 51 }).warnings).toEqual(['no-whole-planet']);
    expect(centre({ ringTeeth: 100, sunTeeth: 50, ...both }).warnings).toEqual([]);
  });

  test('members that turn differently turn the planets', () => {
    const given = { ringTeeth: 100, sunTeeth: 50, ...both, ringSpeed: '999 rpm' };
    expect(centre(given).warnings).toEqual(['planets-turn']);
  });

  test.each([50, 51])('a sun of %i is not within a ring of 50', (sunTeeth) => {
    expect(() => centre({ ringTeeth: 50, sunTeeth })).toThrow(/fewer teeth/);
  });
});
