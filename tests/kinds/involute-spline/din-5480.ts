/**
 * Splines of DIN 5480: the reference diameter decides besides, the angle is always 30 degrees.
 */

import type { Expected, Fixture } from '../fixture.js';

const shaft = {
  kind: 'involute-spline',
  side: 'shaft',
  family: 'din-5480',
  'reference-diameter': '120 mm',
  module: '3 mm',
  teeth: 38,
};
const hub = { ...shaft, side: 'hub' };
const small = { 'reference-diameter': '30 mm', module: '2 mm', teeth: 14 };

const held: Expected = {
  'equal-family': 'holds',
  'equal-teeth': 'holds',
  'equal-module': 'holds',
  'equal-reference-diameter': 'holds',
  'known-family': 'holds',
};

export const fixtures: readonly Fixture[] = [
  {
    says: '120 x 3 x 38 with its tip circles: 119.4 of the shaft, 114 of the hub',
    source: 'DIN 5480-1:2006, from memory: tips dB - 0.2 m and dB - 2 m; roots dB - 2.2 m and dB',
    faces: [
      { ...shaft, 'major-diameter': '119.4 +0/-0.1 mm', 'minor-diameter': '113.4 +0/-0.2 mm' },
      { ...hub, 'major-diameter': '120 +0.2/-0 mm', 'minor-diameter': '114.0 +0.1/-0 mm' },
    ],
    outcome: 'holds',
    checks: { ...held, 'major-diameter': 'holds', 'minor-diameter': 'holds' },
  },
  {
    says: 'the angle is not asked, since the standard has only one',
    faces: [
      { ...shaft, ...small },
      { ...hub, ...small },
    ],
    outcome: 'holds',
    checks: held,
  },
  {
    says: 'equal teeth and module with another reference diameter are another profile shift',
    faces: [
      { ...shaft, ...small },
      { ...hub, ...small, 'reference-diameter': '32 mm' },
    ],
    outcome: 'fails',
    checks: { ...held, 'equal-reference-diameter': 'fails not-equal' },
  },
  {
    says: 'without the reference diameter of the hub it is open',
    faces: [shaft, { ...hub, 'reference-diameter': '120 ±0.5 mm' }],
    outcome: 'open',
    checks: { ...held, 'equal-reference-diameter': 'open not-precise-enough' },
  },
  {
    says: 'equal teeth, module and angle in DIN 5480 and in ISO 4156 do not go together',
    faces: [
      { ...shaft, ...small, 'pressure-angle': '30 deg' },
      { ...hub, ...small, family: 'iso-4156', 'pressure-angle': '30 deg' },
    ],
    outcome: 'fails',
    checks: {
      'equal-family': 'fails not-equal',
      'equal-teeth': 'holds',
      'equal-module': 'holds',
      'equal-pressure-angle': 'holds',
      'known-family': 'holds',
    },
  },
];
