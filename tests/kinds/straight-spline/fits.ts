/**
 * Straight-sided splines that go together, and the two faces that the other fixtures start from.
 */

import type { Expected, Fixture } from '../fixture.js';

/** 6 x 23 x 26 with splines of 6 mm; 26 a11 is written out, its class is not among those read. */
export const shaft = {
  kind: 'straight-spline',
  side: 'shaft',
  splines: 6,
  'inner-diameter': '23 f7',
  'outer-diameter': '26 -0.30/-0.43 mm',
  width: '6 d10',
} as const;

export const hub = {
  kind: 'straight-spline',
  side: 'hub',
  splines: 6,
  'inner-diameter': '23 H7',
  'outer-diameter': '26 H10',
  width: '6 H9',
} as const;

export const held: Expected = {
  'equal-splines': 'holds',
  'inner-diameter': 'holds',
  'outer-diameter': 'holds',
  width: 'holds',
  'flank-play': 'holds',
  reach: 'holds',
  centring: 'holds',
  'centring-diameter': 'holds',
};

const table =
  'ISO 14:1982, sizes and classes read in a secondary table; a11 of ISO 286-2 from memory';

export const fixtures: readonly Fixture[] = [
  {
    says: '6 x 23 x 26, sliding fit',
    source: table,
    faces: [shaft, hub],
    outcome: 'holds',
    checks: held,
  },
  {
    says: '6 x 23 x 26, fixed fit: h7 and h10 instead of f7 and d10',
    source: table,
    faces: [{ ...shaft, 'inner-diameter': '23 h7', width: '6 h10' }, hub],
    outcome: 'holds',
    checks: held,
  },
  {
    says: 'a hub treated after broaching has grooves of H11',
    source: table,
    faces: [shaft, { ...hub, width: '6 H11' }],
    outcome: 'holds',
    checks: held,
  },
  {
    says: 'the largest size, 10 x 112 x 125 with splines of 18 mm, at its loosest',
    source: table,
    faces: [
      {
        ...shaft,
        splines: 10,
        'inner-diameter': '112 f7',
        'outer-diameter': '125 -0.46/-0.71 mm',
        width: '18 d10',
      },
      {
        ...hub,
        splines: 10,
        'inner-diameter': '112 H7',
        'outer-diameter': '125 H10',
        width: '18 H11',
      },
    ],
    outcome: 'holds',
    checks: held,
  },
  {
    says: 'a light shaft 6 x 23 x 26 goes into a medium hub 6 x 23 x 28',
    source: table,
    faces: [shaft, { ...hub, 'outer-diameter': '28 H10' }],
    outcome: 'holds',
    checks: held,
  },
  {
    says: "a maker's own form that centres on the outer diameter",
    faces: [
      { ...shaft, 'inner-diameter': '22.5 ±0.05 mm', 'outer-diameter': '26 f7' },
      { ...hub, 'outer-diameter': '26 H7' },
    ],
    outcome: 'holds',
    checks: held,
  },
  {
    says: 'an older form that only the flanks centre goes together, which somebody must know',
    faces: [{ ...shaft, 'inner-diameter': '22.5 ±0.05 mm', width: '6 f9' }, hub],
    outcome: 'holds',
    checks: { ...held, 'centring-diameter': 'fails centred-by-flanks' },
  },
];
