/**
 * Noses and bearings that go together, and the faces that the other fixtures start from.
 */

import type { Expected, Fixture } from '../fixture.js';

/** A crankshaft with its bearing of 15 x 32 x 9 in place. */
export const crankshaft = {
  kind: 'pilot-bearing',
  side: 'crankshaft',
  seat: 'running',
  bore: '15 +0/-0.008 mm',
  'bearing-width': '9 +0/-0.12 mm',
  'bearing-depth': '21.0 ±0.2 mm',
  'hole-depth': '34.0 ±0.5 mm',
} as const;

export const nose = {
  kind: 'pilot-bearing',
  side: 'nose',
  seat: 'running',
  diameter: '14.965 ±0.01 mm',
  reach: '29.0 ±0.3 mm',
} as const;

/** A crankshaft without its bearing, and the bearing from outside. */
export const bareCrankshaft = {
  kind: 'pilot-bearing',
  side: 'crankshaft',
  seat: 'press',
  bore: '32 N7',
  'seat-length': '12.0 ±0.2 mm',
} as const;

export const bearing = {
  kind: 'pilot-bearing',
  side: 'nose',
  seat: 'press',
  diameter: '32 +0/-0.011 mm',
  'bearing-width': '9 +0/-0.12 mm',
} as const;

const seated: Expected = { 'equal-seat': 'holds', 'known-seat': 'holds' };

export const runs: Expected = {
  ...seated,
  'goes-in': 'holds',
  guides: 'holds',
  reach: 'holds',
  bottom: 'holds',
};

export const pressed: Expected = {
  ...seated,
  grip: 'holds',
  press: 'holds',
  'seat-length': 'holds',
};

const sizes6205 = 'ISO 15: 6205 is 25 x 52 x 15 mm; its tolerances (ISO 492, normal) from memory';

export const fixtures: readonly Fixture[] = [
  {
    says: 'a nose of 15 mm in the bearing of the crankshaft',
    source: 'ISO 15, from memory: 6002 is 15 x 32 x 9 mm',
    faces: [crankshaft, nose],
    outcome: 'holds',
    checks: runs,
  },
  {
    says: 'that bearing in the bare crankshaft',
    source: 'N7 for an outer ring that turns: bearing handbooks, from memory',
    faces: [bareCrankshaft, bearing],
    outcome: 'holds',
    checks: pressed,
  },
  {
    says: 'a bearing 6205 in a bore of 52 N7',
    source: sizes6205,
    faces: [
      { ...bareCrankshaft, bore: '52 N7', 'seat-length': '18 ±0.2 mm' },
      { ...bearing, diameter: '52 +0/-0.013 mm', 'bearing-width': '15 +0/-0.12 mm' },
    ],
    outcome: 'holds',
    checks: pressed,
  },
  {
    says: 'and a nose of 25 mm in it',
    source: sizes6205,
    faces: [
      { ...crankshaft, bore: '25 +0/-0.010 mm', 'bearing-width': '15 +0/-0.12 mm' },
      { ...nose, diameter: '24.96 ±0.01 mm', reach: '31.0 ±0.3 mm' },
    ],
    outcome: 'holds',
    checks: runs,
  },
  {
    says: 'a bush of 30 s6 in a bore of H7',
    source: 'ISO 286-2: 30 H7 is +21/0, 30 s6 is +48/+35 thousandths: 0.014 to 0.048 mm of grip',
    faces: [
      { ...bareCrankshaft, bore: '30 H7' },
      { ...bearing, diameter: '30 s6' },
    ],
    outcome: 'holds',
    checks: pressed,
  },
  {
    says: 'a bush longer than its seat stands proud, which somebody must know',
    faces: [bareCrankshaft, { ...bearing, 'bearing-width': '14 ±0.1 mm' }],
    outcome: 'holds',
    checks: { ...pressed, 'seat-length': 'fails bearing-stands-proud' },
  },
];
