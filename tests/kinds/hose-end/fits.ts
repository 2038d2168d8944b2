/**
 * Hose ends that seal in their ports, and the two faces that the other fixtures start from.
 */

import type { Expected, Fixture } from '../fixture.js';

export const hose = {
  kind: 'hose-end',
  side: 'hose',
  style: 'banjo',
  thread: 'm10x1',
  'ring-thickness': '10.0 mm',
} as const;

export const port = { ...hose, side: 'port' } as const;

const common: Expected = {
  'equal-style': 'holds',
  'known-style': 'holds',
  'equal-thread': 'holds',
};

export const held: Expected = { ...common, 'ring-thickness': 'holds' };

export const maleHose = {
  kind: 'hose-end',
  side: 'hose',
  style: 'male',
  thread: 'm10x1',
  seat: 'bubble',
} as const;

export const malePort = { ...maleHose, side: 'port' } as const;

export const heldMale: Expected = { ...common, 'equal-seat': 'holds', 'known-seat': 'holds' };

export const fixtures: readonly Fixture[] = [
  {
    says: 'a banjo ring of 10 mm under an m10x1 hollow bolt',
    faces: [hose, port],
    outcome: 'holds',
    checks: held,
  },
  {
    says: 'a male end on a bubble seat',
    faces: [maleHose, malePort],
    outcome: 'holds',
    checks: heldMale,
  },
  {
    says: 'a female end that takes the nut of a double flare',
    faces: [
      { ...maleHose, style: 'female', seat: 'double' },
      { ...malePort, style: 'female', seat: 'double' },
    ],
    outcome: 'holds',
    checks: heldMale,
  },
  {
    says: 'a male end that seals on a copper washer, with a new one',
    faces: [
      { ...maleHose, seat: 'washer', washers: 1 },
      { ...malePort, seat: 'washer' },
    ],
    outcome: 'holds',
    checks: { ...heldMale, 'one-washer': 'holds' },
  },
  {
    says: 'a ring with a peg, and the recess for it',
    faces: [
      { ...hose, peg: 'side-peg' },
      { ...port, 'peg-recess': 'side-peg' },
    ],
    outcome: 'holds',
    checks: { ...held, peg: 'holds' },
  },
  {
    says: 'a ring without a peg lies flat whatever the port has',
    faces: [{ ...hose, peg: 'none' }, port],
    outcome: 'holds',
    checks: held,
  },
  {
    says: 'two new washers on a wide face, and a bolt that passes the ring',
    faces: [
      { ...hose, washers: 2, 'washer-outer': '14.0 mm', 'ring-bore': '10.2 mm' },
      { ...port, 'face-diameter': '16.0 mm', 'bolt-diameter': '10 mm' },
    ],
    outcome: 'holds',
    checks: { ...held, 'two-washers': 'holds', 'washer-face': 'holds', 'ring-bore': 'holds' },
  },
  {
    says: 'a seat of another form goes by its name, with a caution',
    faces: [
      { ...maleHose, seat: 'ball' },
      { ...malePort, seat: 'ball' },
    ],
    outcome: 'holds',
    checks: { ...heldMale, 'known-seat': 'fails other-seat' },
  },
  {
    says: 'rings and their bolts are no matter of a male end on a cone, nor are washers',
    faces: [
      { ...maleHose, 'ring-thickness': '10.0 mm', 'ring-bore': '8.0 mm', washers: 0 },
      { ...malePort, 'ring-thickness': '13.0 mm', 'bolt-diameter': '10 mm' },
    ],
    outcome: 'holds',
    checks: heldMale,
  },
];
