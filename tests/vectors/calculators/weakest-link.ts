/**
 * Check values of torques along a driveline.
 */

import type { Vector } from '../vector.js';

const STATICS = {
  calculation: 'weakest-link',
  source: 'invented all-wheel drive in first gear, by hand',
  basis: 'arithmetic',
} as const;

/** 40/11 in first gear, 12/11 to the rear, 43/11 in front and 43/12 at the rear. */
const demo = {
  engineTorque: '320 N.m',
  drive: 'open',
  element: ['gearbox', 'propeller shaft', 'front axle', 'rear axle', 'half-shaft'],
  place: ['all-torque', 'rear-axle', 'front-axle', 'rear-axle', 'rear-wheel'],
  ratioBefore: ['40/11', '480/121', '1720/121', '1720/121', '1720/121'],
  ratioAfter: ['43/11', '43/12', '1', '1', '1'],
};

const tyres = { frontLoad: '700 kg', rearLoad: '700 kg', grip: '0.9', rollingRadius: '298.5 mm' };

export const WEAKEST_LINK: readonly Vector[] = [
  {
    ...STATICS,
    id: 'demo-07',
    given: demo,
    output: 'fromEngine',
    expected: {
      near: [1163.6363636363637, 634.7107438016529, 2274.380165289256, 2274.380165289256, 1137.19],
      within: 0.1,
    },
  },
  {
    ...STATICS,
    id: 'demo-07 (locked)',
    // The whole of it can reach one axle where the centre is locked.
    given: { ...demo, drive: 'locked' },
    output: 'fromEngine',
    expected: { near: [1163.64, 1269.42, 4548.76, 4548.76, 2274.38], within: 0.1 },
  },
  {
    ...STATICS,
    id: 'weakest-own-1',
    given: { ...demo, ...tyres },
    output: 'fromTyres',
    // 700 kg x 9.80665 x 0.9 x 0.2985 m is 1844.19 N.m an axle; both by 43/11; one by 43/12.
    expected: { near: [943.54, 514.66, 1844.19, 1844.19, 922.09], within: 0.01 },
    source: 'weight, grip and lever arm, by hand with standard gravity',
  },
  {
    ...STATICS,
    id: 'weakest-own-2',
    given: {
      engineTorque: '320 N.m',
      drive: 'planetary',
      frontShare: '2/5',
      element: ['front half-shaft', 'rear half-shaft', 'rear shaft, locked axle'],
      place: ['front-wheel', 'rear-wheel', 'rear-axle'],
      ratioBefore: ['10', '10', '10'],
      shockFactor: '2',
    },
    output: 'fromEngine',
    expected: { exactly: ['1280', '1920', '3840'] },
    source: '3200 N.m split 2 to 3 and in halves, twice for the shock, by hand',
  },
  {
    ...STATICS,
    id: 'weakest-own-3',
    given: { ...demo, rating: ['1000 N.m', '700 N.m', '2500 N.m', '2500 N.m', '1100 N.m'] },
    output: 'greatestTorque',
    // 1000 / (40/11) = 275; 700 and 1100 over their paths allow 352.9 and 309.5.
    expected: { exactly: '275' },
    source: 'ratings over the ratio and share before them, by hand',
  },
  {
    ...STATICS,
    id: 'weakest-own-3 (which)',
    given: { ...demo, rating: ['1000 N.m', '700 N.m', '2500 N.m', '2500 N.m', '1100 N.m'] },
    output: 'weakest',
    expected: { exactly: ['gearbox'] },
    source: 'ratings over the ratio and share before them, by hand',
  },
];
