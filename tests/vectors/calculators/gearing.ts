/**
 * Check values of gears, engine speed and road speed.
 */

import type { Vector } from '../vector.js';

const ARITHMETIC = {
  calculation: 'gearing',
  source: 'exact arithmetic or geometry',
  basis: 'arithmetic',
} as const;

const DEMO = { ...ARITHMETIC, source: 'the invented demonstration conversion' } as const;

const COURSE = {
  calculation: 'gearing',
  source: 'engineering-studies course, gear set',
} as const;

const COURSE_GEARS = ['7/2', '2', '7/5', '1', '17/20', '13/20'];
const FIVE = ['38/11', '35/18', '34/25', '31/32', '14/19'];
const SIX = ['40/11', '45/19', '37/22', '39/31', '35/36', '3/4'];
const DEMO_CAR = { finalDrive: '43/11', circumference: '1875.75 mm' };

export const GEARING: readonly Vector[] = [
  {
    ...ARITHMETIC,
    id: 'speed-01',
    given: {
      gears: ['1'],
      finalDrive: '39/10',
      circumference: '1.927295 m',
      engineSpeed: '3000 rpm',
    },
    output: 'roadSpeeds',
    expected: { near: [88.95207692307693], within: 0.01 },
  },
  {
    ...ARITHMETIC,
    id: 'speed-03',
    // A wheel of one inch across at a mile an hour turns as often as the constant says.
    given: {
      gears: ['1'],
      finalDrive: '1',
      circumference: '3.14159265358979 in',
      roadSpeed: '1 mph',
    },
    output: 'engineSpeeds',
    expected: { near: [336], within: 0.2 },
    source: 'course paper on gearing arithmetic, 63360/(60 pi) printed as 336',
    basis: 'read',
  },
  {
    ...COURSE,
    id: 'speed-04',
    given: { gears: COURSE_GEARS },
    output: 'steps',
    expected: {
      near: [1.75, 1.4285714285714286, 1.4, 1.1764705882352942, 1.3076923076923077],
      within: 1e-9,
    },
    basis: 'read, computed',
  },
  {
    ...COURSE,
    id: 'speed-04 (spread)',
    given: { gears: COURSE_GEARS },
    output: 'spread',
    expected: { near: 5.384615384615384, within: 1e-9 },
    basis: 'read, computed',
  },
  {
    ...COURSE,
    id: 'speed-05',
    given: { gears: ['7/2'], finalDrive: '41/10' },
    output: 'overall',
    expected: { near: [14.35], within: 1e-12 },
    basis: 'read',
  },
  {
    ...ARITHMETIC,
    id: 'speed-06',
    given: { gears: ['36/10', '5/2', '9/5', '5/4', '9/10'] },
    output: 'geometricStep',
    expected: { near: Math.SQRT2, within: 1e-9 },
    source: 'Naunheimer, Automotive Transmissions',
    basis: 'from memory',
  },
  {
    ...DEMO,
    id: 'demo-04',
    given: { ...DEMO_CAR, gears: ['3/4'], roadSpeed: '110 km/h' },
    output: 'engineSpeeds',
    expected: { near: [2865.520458483273], within: 0.5 },
  },
  {
    ...DEMO,
    id: 'demo-05',
    given: { ...DEMO_CAR, gears: ['14/19'], roadSpeed: '110 km/h' },
    output: 'engineSpeeds',
    expected: { near: [2815.2481697379526], within: 0.5 },
  },
  {
    ...DEMO,
    id: 'demo-11',
    given: { ...DEMO_CAR, gears: ['3/4'], finalDrive: '43/12', roadSpeed: '200 km/h' },
    output: 'shaftSpeed',
    expected: { near: 6367.823241073941, within: 0.5 },
  },
  {
    ...DEMO,
    id: 'gearing-own-1',
    given: { finalDrive: '43/11', tyre: '195/60R15', gears: FIVE, engineSpeed: '6800 rpm' },
    output: 'roadSpeeds',
    expected: { near: [56.7, 100.7, 144, 202.1, 265.7], within: 0.06 },
  },
  {
    ...DEMO,
    id: 'gearing-own-2',
    given: {
      finalDrive: '43/11',
      tyre: '195/60R15',
      gears: FIVE,
      engineSpeed: '6800 rpm',
      newGears: SIX,
    },
    output: 'newRoadSpeeds',
    expected: { near: [53.8, 82.7, 116.4, 155.6, 201.4, 261], within: 0.06 },
  },
  {
    ...DEMO,
    id: 'gearing-own-3',
    given: { gears: FIVE, newGears: SIX },
    output: 'newSteps',
    expected: { near: [1.535, 1.408, 1.337, 1.294, 1.296], within: 0.0006 },
  },
  {
    ...ARITHMETIC,
    id: 'gearing-own-4',
    given: { gears: FIVE, newGears: SIX },
    output: 'topGearChange',
    // 3/4 over 14/19 is 57/56.
    expected: { exactly: '25/14' },
    source: '57/56 less one in per cent, by hand',
  },
];
