/**
 * Splines that go together, and the two faces that the other fixtures start from.
 */

import type { Expected, Fixture } from '../fixture.js';

export const shaft = {
  kind: 'involute-spline',
  side: 'shaft',
  family: 'iso-4156',
  teeth: 24,
  module: '1 mm',
  'pressure-angle': '30 deg',
} as const;

export const hub = { ...shaft, side: 'hub' } as const;

export const held: Expected = {
  'equal-family': 'holds',
  'equal-teeth': 'holds',
  'equal-module': 'holds',
  'equal-pressure-angle': 'holds',
  'known-family': 'holds',
};

const { 'equal-family': _, ...heldUnderTwoNames } = held;

const formulas = 'ANSI B92.2M: formulas read in a secondary copy, values computed from them';

export const fixtures: readonly Fixture[] = [
  {
    says: 'one family, teeth, module and angle decide: nothing that the standard fixes is asked',
    faces: [shaft, hub],
    outcome: 'holds',
    checks: held,
  },
  {
    says: 'ISO 4156 and ANSI B92.2M are two names of one system',
    faces: [shaft, { ...hub, family: 'ansi-b92-2m' }],
    outcome: 'holds',
    checks: heldUnderTwoNames,
  },
  {
    says: 'and so they are where both ends use the other name',
    faces: [
      { ...shaft, family: 'ansi-b92-2m' },
      { ...hub, family: 'ansi-b92-2m' },
    ],
    outcome: 'holds',
    checks: held,
  },
  {
    says: 'module 1.25 at 30 degrees is one of ISO 4156',
    source: 'ISO 4156-1: 30 and 37.5 deg have the modules 0.5 to 10 mm, read in its announcement',
    faces: [
      { ...shaft, module: '1.25 mm' },
      { ...hub, module: '1.25 mm' },
    ],
    outcome: 'holds',
    checks: held,
  },
  {
    says: '24 teeth of module 1 with the diameters of the standard clear at tips and roots',
    source: formulas,
    faces: [
      { ...shaft, 'major-diameter': '25.0 +0/-0.1 mm', 'minor-diameter': '22.5 +0/-0.2 mm' },
      { ...hub, 'major-diameter': '25.5 +0.2/-0 mm', 'minor-diameter': '23.0 +0.2/-0 mm' },
    ],
    outcome: 'holds',
    checks: { ...held, 'major-diameter': 'holds', 'minor-diameter': 'holds' },
  },
  {
    says: 'everything recorded: diameters, flanks, length and an open hub',
    faces: [
      {
        ...shaft,
        'major-diameter': '24.95 mm',
        'minor-diameter': '22.30 mm',
        'tooth-thickness': '1.52 ±0.02 mm',
        length: '30 mm',
        'missing-tooth': 'none',
      },
      {
        ...hub,
        'major-diameter': '25.55 mm',
        'minor-diameter': '23.05 mm',
        'space-width': '1.60 ±0.02 mm',
        length: '26 mm',
        'blocked-tooth': 'none',
      },
    ],
    outcome: 'holds',
    checks: {
      ...held,
      'major-diameter': 'holds',
      'minor-diameter': 'holds',
      'flank-play': 'holds',
      'engaged-length': 'holds',
    },
  },
  {
    says: 'a blocked space goes over the tooth that is missing',
    faces: [
      { ...shaft, 'missing-tooth': 'one' },
      { ...hub, 'blocked-tooth': 'one' },
    ],
    outcome: 'holds',
    checks: { ...held, 'blocked-tooth': 'holds' },
  },
];
