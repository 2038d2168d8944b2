/**
 * The torque that a friction clutch carries, by both models, and its reserve.
 */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  clampAt,
  clutchTorque,
  clutchTorqueAt,
} from '../../../src/domain/driveline/clutch-capacity.js';
import { closed, isWithin, point } from '../../../src/domain/quantity/interval.js';
import { ONE, rational } from '../../../src/domain/quantity/rational.js';
import { about, asked } from './asked.js';

const RUNS = { seed: 6013, numRuns: 300 };
const MODELS = ['uniform-wear', 'uniform-pressure'] as const;

const disc = {
  outerDiameter: '240 mm',
  innerDiameter: '160 mm',
  friction: '0.3',
  clampLoad: '5000 N',
};
const clutch = (given: Parameters<typeof asked>[1]) =>
  asked('clutch-capacity', { ...disc, ...given });

const at = (value: number) => point(rational(value));
const one = { friction: point(ONE), pairs: point(ONE) };

describe('the two models', () => {
  test('carry at their own pressure what they carry at its clamp load', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...MODELS),
        fc.integer({ min: 20, max: 180 }),
        fc.integer({ min: 1, max: 100 }),
        (model, inner, more) => {
          const ring = { outer: at(inner + more), inner: at(inner) };
          const clamp = clampAt(ring, model, point(ONE));
          const byLoad = clutchTorque(ring, model, { clamp, ...one });
          const byPressure = clutchTorqueAt(ring, model, { pressure: point(ONE), ...one });
          expect(about(byLoad) / about(byPressure)).toBeCloseTo(1, 12);
        },
      ),
      RUNS,
    );
  });

  test('put even pressure above wear, and both between the inner and the outer edge', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 20, max: 180 }),
        fc.integer({ min: 1, max: 100 }),
        (inner, more) => {
          const ring = { outer: at(inner + more), inner: at(inner) };
          const [worn, fresh] = MODELS.map((model) =>
            about(clutchTorque(ring, model, { clamp: at(2000), ...one })),
          ) as [number, number];
          expect(worn).toBeLessThan(fresh);
          expect(worn).toBeGreaterThan(inner);
          expect(fresh).toBeLessThan(inner + more);
        },
      ),
      RUNS,
    );
  });

  test('contain what each ring in what is told gives, over the peak as well', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...MODELS),
        fc.integer({ min: 20, max: 150 }),
        fc.integer({ min: 0, max: 60 }),
        fc.integer({ min: 0, max: 40 }),
        fc.double({ min: 0, max: 1, noNaN: true }),
        (model, inner, wide, more, part) => {
          const low = inner + wide + 1;
          const ring = {
            inner: closed(rational(inner), rational(inner + wide)),
            outer: closed(rational(low), rational(low + more)),
          };
          const inside = {
            inner: at(inner + Math.floor(wide * part)),
            outer: at(low + Math.floor(more * part)),
          };
          const pressure = point(ONE);
          const all = clutchTorqueAt(ring, model, { pressure, ...one });
          const each = clutchTorqueAt(inside, model, { pressure, ...one });
          // Roots and pi are enclosed, each time a last decimal wider.
          expect(each.low?.valueOf()).toBeGreaterThanOrEqual((all.low?.valueOf() ?? NaN) - 1e-9);
          expect(each.high?.valueOf()).toBeLessThanOrEqual((all.high?.valueOf() ?? NaN) + 1e-9);
          const clamp = clampAt(inside, model, pressure).high?.valueOf() ?? NaN;
          expect(clamp).toBeLessThanOrEqual(
            (clampAt(ring, model, pressure).high?.valueOf() ?? NaN) + 1e-9,
          );
          const load = { clamp: at(1000), ...one };
          expect(isWithin(clutchTorque(inside, model, load), clutchTorque(ring, model, load))).toBe(
            true,
          );
        },
      ),
      RUNS,
    );
  });

  test('peak between the ends of an inner diameter, and are no wider than that', () => {
    // 100 mm: d (D - d) peaks at 50 mm with 2500, d (D2 - d2) at 57.735 mm with 384 900.
    const ring = { outer: at(100), inner: closed(rational(40), rational(70)) };
    const high = (set: { high: { valueOf(): number } | null }) => set.high?.valueOf();
    const clamp = clampAt(ring, 'uniform-wear', point(ONE));
    expect(high(clamp)).toBeCloseTo((Math.PI * 2500) / 2, 6);
    const torque = clutchTorqueAt(ring, 'uniform-wear', { pressure: point(ONE), ...one });
    expect(high(torque)).toBeCloseTo((Math.PI * 384_900.179) / 8 / 1000, 6);
  });
});

describe('the calculator', () => {
  test('grows with the pairs, and takes one disc that has run in', () => {
    const plain = clutch({}).set('capacity');
    // 2 x 0.3 x 5000 N x 100 mm
    expect(plain).toEqual(at(300));
    expect(clutch({ pairs: 4 }).set('capacity')).toEqual(at(600));
    expect(clutch({ model: 'uniform-wear', pairs: 2 }).set('capacity')).toEqual(plain);
  });

  test('gives the same in other units', () => {
    const imperial = clutch({ outerDiameter: '10 in', innerDiameter: '6 in', clampLoad: '1 lbf' });
    const metric = clutch({
      outerDiameter: '254 mm',
      innerDiameter: '152.4 mm',
      clampLoad: '4.4482216152605 N',
    });
    expect(imperial.set('capacity')).toEqual(metric.set('capacity'));
  });

  test.each([
    ['250 N.m', 'holds', []],
    ['251 N.m', 'fails', ['small-reserve']],
    ['240 to 260 N.m', 'open', ['small-reserve']],
    ['300 N.m', 'fails', ['slips']],
    ['240 to 310 N.m', 'open', ['slips']],
  ])('behind %s: %s', (engineTorque, outcome, warnings) => {
    const result = clutch({ engineTorque });
    expect(result.outcome('suffices')).toBe(outcome);
    expect(result.warnings).toEqual(warnings);
    expect(result.set('greatestTorque')).toEqual(at(250));
  });

  test('finds nothing without a load, and says which of two counts', () => {
    const bare = clutch({ clampLoad: [] });
    expect(bare.has('capacity')).toBe(false);
    const both = clutch({ pressure: '1 MPa' });
    expect(both.warnings).toEqual(['load-before-pressure']);
    expect(both.set('capacity')).toEqual(at(300));
    expect(clutch({ clampLoad: [], pressure: '1 MPa' }).warnings).toEqual([]);
    expect(clutch({ model: 'uniform-pressure' }).warnings).toEqual(['new-lining']);
  });

  test.each(['240 mm', '200 to 250 mm', '300 mm'])('refuses a hole of %s', (innerDiameter) => {
    expect(() => clutch({ innerDiameter })).toThrow(/smaller than the outer one/);
  });
});
