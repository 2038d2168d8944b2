/**
 * Check values of tyres, threads and boundary sizes, as a role's terms and the built-in kinds use
 * them: what is equal within a thousandth of a millimetre is taken for the value.
 */

import { describe, expect, it } from 'vitest';
import { moneyOf, moneyText } from '../../src/domain/kit/money.js';
import { meet } from '../kinds/bench.js';
import {
  innerRing,
  outerRing,
  standingHousing,
  turningJournal,
} from '../kinds/hub-bearing/fits.js';
import { world } from '../rules/sketch.js';
import { judged, stateOf } from '../rules/world.js';

/** Tyres by their designations, with one term over their sizes and the value it must have. */
const tyres = (expected: string, term: unknown) =>
  world({
    roles: {
      tyre: {
        width: { type: 'designation', unit: 'mm' },
        aspect: 'ratio',
        rim: { type: 'designation', unit: 'in' },
      },
    },
    places: ['tyre'],
    terms: { value: term },
    checks: [{ id: 'value', within: ['value', expected], tolerance: '0.0005 mm' }],
    parts: {
      'tyre-185': { width: '185 mm', aspect: '75/100', rim: '14 in' },
      'tyre-205': { width: '205 mm', aspect: '55/100', rim: '16 in' },
    },
    cars: { car: {} },
  });

describe('a tyre by its designation', () => {
  const diameter = { sum: ['tyre.rim', ['2', 'tyre.width', 'tyre.aspect']] };

  it.each([
    [
      'tyre-01 (course paper on gearing arithmetic)',
      'tyre-185',
      '138.75 mm',
      ['tyre.width', 'tyre.aspect'],
    ],
    ['tyre-03 (exact arithmetic)', 'tyre-205', '631.9 mm', diameter],
    ['tyre-04 (ETRTO: 3.05 x diameter)', 'tyre-205', '1927.295 mm', ['61/20', diameter]],
  ])('%s', (_, part, expected, term) => {
    const put = { put: { tyre: part } };
    expect(stateOf(judged(tyres(expected, term), put), 'value')).toBe('holds clears');
    expect(stateOf(judged(tyres('1 mm', term), put), 'value')).toBe('fails too-large');
  });
});

describe('threads and boundary sizes', () => {
  const thread = (side: string, pitch: string) => ({
    kind: 'screw-thread',
    side,
    form: 'iso-metric',
    diameter: '12 mm',
    pitch,
    hand: 'right',
  });

  it('thread-04 (ISO 965, from memory): M12x1.25 into M12x1.5 does not go', () => {
    const trap = meet(thread('external', '1.25 mm'), thread('internal', '1.5 mm'));
    expect(trap.outcome).toBe('fails');
    expect([...trap.checks.values()].map(({ code }) => code)).toContain('starts-and-strips');
    expect(meet(thread('external', '1.25 mm'), thread('internal', '1.25 mm')).outcome).toBe(
      'holds',
    );
  });

  it('std-01 (SAE J617): size 4 is 361.95 mm, 381.00 mm, 12 holes; in inches the same', () => {
    const face = { kind: 'bell-housing', pattern: 'size-4', holes: 12, dowels: 2, dowel: '12 mm' };
    const metric = { ...face, pilot: '361.95 mm', pcd: '381.00 mm' };
    const inches = { ...face, pilot: '14.25 in', pcd: '15 in' };
    expect(meet(metric, inches).outcome).toBe('holds');
    expect(meet(metric, { ...inches, pcd: '18.375 in' }).outcome).toBe('fails');
  });

  it('std-03 (SAE J620): size 11-1/2 is 352.42 mm, 333.38 mm, 8 holes; in inches too', () => {
    // 13 7/8 in, 13 1/8 in and 3/8-16, as a flywheel of that size is sold.
    const cars = world({
      roles: {
        flywheel: {
          pilot: { type: 'designation', unit: 'mm' },
          pcd: { type: 'designation', unit: 'mm' },
          holes: 'count',
          thread: 'code',
        },
      },
      places: ['metric: flywheel', 'inches: flywheel'],
      checks: [
        { id: 'pilot', within: ['metric.pilot', 'inches.pilot'], tolerance: '0.01 mm' },
        { id: 'pcd', within: ['metric.pcd', 'inches.pcd'], tolerance: '0.01 mm' },
        { id: 'holes', equal: ['metric.holes', 'inches.holes'] },
        { id: 'thread', equal: ['metric.thread', 'inches.thread'] },
      ],
      parts: {
        'flywheel-mm': { pilot: '352.42 mm', pcd: '333.38 mm', holes: 8, thread: '3/8-16' },
        'flywheel-in': { pilot: '13.875 in', pcd: '13.125 in', holes: 8, thread: '3/8-16' },
      },
      cars: { car: {} },
    });
    const both = judged(cars, { put: { metric: 'flywheel-mm', inches: 'flywheel-in' } });
    expect(['pilot', 'pcd', 'holes', 'thread'].map((check) => stateOf(both, check))).toEqual([
      'holds clears',
      'holds clears',
      'holds equal',
      'holds equal',
    ]);
  });

  it('std-04 (ISO 15, designation 6205): 25 mm on a shaft, 52 mm in a housing, 15 mm', () => {
    expect([innerRing.diameter, outerRing.diameter, innerRing.width]).toEqual([
      '25 +0/-0.010 mm',
      '52 +0/-0.013 mm',
      expect.stringContaining('15'),
    ]);
    expect(meet(innerRing, turningJournal).outcome).toBe('holds');
    expect(meet(outerRing, standingHousing).outcome).toBe('holds');
    expect(meet(innerRing, { ...turningJournal, diameter: '30 k6' }).outcome).toBe('fails');
  });

  it('std-05 (SAE J542): a starter pilot has 0.03 to 0.25 mm of play in its register', () => {
    const play = (bore: string) =>
      judged(
        world({
          roles: { housing: { bore: 'length' }, starter: { pilot: 'length' } },
          places: ['housing', 'starter'],
          checks: [
            {
              id: 'play',
              clearance: ['housing.bore', 'starter.pilot'],
              min: '0.03 mm',
              max: '0.25 mm',
            },
          ],
          parts: { 'housing-a': { bore }, 'starter-a': { pilot: '82.50 ±0 mm' } },
          cars: { car: {} },
        }),
        { put: { housing: 'housing-a', starter: 'starter-a' } },
      );
    const states = ['82.53', '82.75', '82.52', '82.76'].map((bore) =>
      stateOf(play(`${bore} ±0 mm`), 'play'),
    );
    expect(states).toEqual(['holds clears', 'holds clears', 'fails too-small', 'fails too-large']);
  });

  it('demo-13 (the invented demonstration conversion; arithmetic): what the kits cost', () => {
    const KITS = {
      K1: [900, 340, 260, 220, 300, 180, 320, 240, 210, 500, 150, 1320],
      K2: [900, 340, 260, 220, 620, 180, 130, 1680],
      K3: [900, 340, 260, 220, 410, 95, 130, 1560],
      K4: [520, 210, 160, 70, 840],
      'K1 by donor': [2300, 330, 1440],
    };
    const sums = Object.values(KITS).map((prices) =>
      moneyText(prices.reduce((sum, price) => sum + (moneyOf(`${price}.00`) ?? Number.NaN), 0)),
    );
    expect(sums).toEqual(['4940.00', '4330.00', '3915.00', '1800.00', '4070.00']);
  });
});
