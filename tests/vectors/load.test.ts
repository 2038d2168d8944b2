/**
 * Check values of the torques along a driveline: the chains of a layout, read by the judge.
 */

import { describe, expect, it } from 'vitest';
import { world } from '../rules/sketch.js';
import { found, judged } from '../rules/world.js';

/** Engine, first gear, even split, the transfer to the rear and both axles: losses left out. */
const CHAINS = {
  gearbox: ['engine.torque', 'box.first-gear'],
  prop: ['gearbox', 'box.rear-share', 'box.rear-drive'],
  'front-axle': ['gearbox', 'box.rear-share', 'front.ratio'],
  'rear-axle': ['prop', 'rear.ratio'],
  'half-shaft': ['rear-axle', '1/2'],
};

const driveline = world({
  roles: {
    engine: { torque: 'engine' },
    box: {
      gears: 'ratios',
      'first-gear': { term: { max: 'gears' } },
      'rear-drive': 'ratio',
      'rear-share': 'ratio',
    },
    axle: { ratio: 'ratio', torque: 'rating' },
  },
  places: ['engine', 'box', 'front: axle', 'rear: axle'],
  terms: CHAINS,
  checks: Object.keys(CHAINS).map((id) => ({
    id: `${id}-load`,
    carries: 'rear.torque',
    demand: id,
  })),
  parts: {
    'engine-a': { torque: '320 ±0 N.m' },
    'box-a': { gears: ['45/19', '40/11', '1/1'], 'rear-drive': '12/11', 'rear-share': '1/2' },
    'axle-front': { ratio: '43/11' },
    'axle-rear': { ratio: '43/12', torque: '5000 N.m' },
  },
  cars: { car: {} },
});

describe('demo-07 (the invented demonstration conversion; arithmetic)', () => {
  const judgement = judged(driveline, {
    put: { engine: 'engine-a', box: 'box-a', front: 'axle-front', rear: 'axle-rear' },
  });

  it.each([
    ['gearbox', 1163.6363636363637],
    ['prop', 634.7107438016529],
    ['front-axle', 2274.380165289256],
    ['rear-axle', 2274.3801652892566],
    ['half-shaft', 1137.190082644628],
  ])('%s: %f N.m', (chain, expected) => {
    const demand = found(judgement, `${chain}-load`)?.checks[0]?.right?.interval;
    if (demand?.low == null || demand.high == null) throw new Error('the demand is known');
    expect(Math.abs(demand.low.valueOf() - expected)).toBeLessThan(0.1);
    expect(Math.abs(demand.high.valueOf() - expected)).toBeLessThan(0.1);
  });
});
