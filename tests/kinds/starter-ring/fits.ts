/**
 * Starters and rings that go together, and the two faces that the other fixtures start from.
 */

import type { Expected, Fixture } from '../fixture.js';

export const ring = {
  kind: 'starter-ring',
  side: 'ring',
  module: '2.5 mm',
  'height-module': '2.5 mm',
  'blank-teeth': 103,
  'face-distance': '20.0 ±0.3 mm',
  rotation: 'clockwise',
} as const;

/** 9 teeth on a blank for 10: (103 + 10) x 2.5/2 = 141.25 mm, and 0.75 mm more. */
export const starter = {
  kind: 'starter-ring',
  side: 'starter',
  module: '2.5 mm',
  'height-module': '2.5 mm',
  'blank-teeth': 10,
  'centre-distance': '142.00 ±0.1 mm',
  'rest-distance': '17.0 ±0.3 mm',
  rotation: 'clockwise',
} as const;

export const held: Expected = {
  'equal-module': 'holds',
  'equal-height-module': 'holds',
  mesh: 'holds',
  'depth-of-mesh': 'holds',
  backlash: 'holds',
  rest: 'holds',
  'equal-rotation': 'holds',
};

const table = 'SAE J543, read in a secondary summary: tip diameters and spread of the centres';

export const fixtures: readonly Fixture[] = [
  {
    says: '103 teeth of module 2.5 and a pinion on a blank for 10',
    faces: [ring, starter],
    outcome: 'holds',
    checks: held,
  },
  {
    says: 'stub pitch 8/10: a pinion of 10 teeth on a blank for 11, 1.575 in over the tips',
    source: table,
    faces: [
      { ...ring, module: '1/8 in', 'height-module': '1/10 in', 'blank-teeth': 110 },
      {
        ...starter,
        module: '1/8 in',
        'height-module': '1/10 in',
        'blank-teeth': 11,
        'tip-diameter': '1.575 in',
        // (110 + 11) / (2 x 8) = 7.5625 in, and 0.030 in of spread.
        'centre-distance': '7.5925 ±0.005 in',
      },
    ],
    outcome: 'holds',
    checks: { ...held, blank: 'holds' },
  },
  {
    says: 'stub pitch 10/12: a pinion of 9 teeth on a blank for 10, 1.167 in over the tips',
    source: table,
    faces: [
      { ...ring, module: '1/10 in', 'height-module': '1/12 in', 'blank-teeth': 130 },
      {
        ...starter,
        module: '1/10 in',
        'height-module': '1/12 in',
        'blank-teeth': 10,
        'tip-diameter': '1.167 in',
        'centre-distance': '7.030 ±0.005 in',
      },
    ],
    outcome: 'holds',
    checks: { ...held, blank: 'holds' },
  },
  {
    says: 'pressure angle, engagement and chamfers, where they are recorded',
    faces: [
      { ...ring, 'pressure-angle': '20 deg', 'ring-width': '12 ±0.1 mm', 'lead-in': 'gearbox' },
      {
        ...starter,
        'pressure-angle': '20 deg',
        'thrown-distance': '30.5 ±0.5 mm',
        'lead-in': 'gearbox',
      },
    ],
    outcome: 'holds',
    checks: {
      ...held,
      'equal-pressure-angle': 'holds',
      throw: 'holds',
      'equal-lead-in': 'holds',
    },
  },
  {
    says: 'thinned teeth at the bare centre distance go, but somebody must measure the backlash',
    faces: [ring, { ...starter, 'centre-distance': '141.35 ±0.05 mm' }],
    outcome: 'holds',
    checks: { ...held, backlash: 'fails needs-thinned-teeth' },
  },
  {
    says: 'chamfers on the other side: the ring can be turned round',
    faces: [
      { ...ring, 'lead-in': 'engine' },
      { ...starter, 'lead-in': 'gearbox' },
    ],
    outcome: 'holds',
    checks: { ...held, 'equal-lead-in': 'fails chamfer-on-the-other-side' },
  },
];
