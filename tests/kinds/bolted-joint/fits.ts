/**
 * Bolts that clamp, and the two faces that the other fixtures start from.
 */

import type { Expected, Fixture } from '../fixture.js';

export const bolt = {
  kind: 'bolted-joint',
  side: 'bolt',
  thread: 'm10x1.5',
  diameter: '10 mm',
  'strength-class': '8.8',
  length: '45.0 mm',
  'thread-length': '26.0 mm',
} as const;

export const joint = {
  kind: 'bolted-joint',
  side: 'joint',
  thread: 'm10x1.5',
  'strength-class': '8.8',
  grip: '25.0 mm',
  'thread-depth': '22.0 mm',
  material: 'aluminium',
  hole: 'blind',
} as const;

const common: Expected = {
  'equal-thread': 'holds',
  'strength-class': 'holds',
  'bolt-class': 'holds',
  'joint-class': 'holds',
  harder: 'holds',
  shank: 'holds',
  'known-hole': 'holds',
  'known-material': 'holds',
};

export const held: Expected = {
  ...common,
  bottom: 'holds',
  'reach-in-casting': 'holds',
  'depth-in-casting': 'holds',
};

export const heldInSteel: Expected = {
  ...common,
  bottom: 'holds',
  'reach-in-steel': 'holds',
  'depth-in-steel': 'holds',
};

export const heldInMagnesium: Expected = {
  ...common,
  bottom: 'holds',
  'reach-in-magnesium': 'holds',
  'depth-in-magnesium': 'holds',
};

export const heldInNut: Expected = { ...common, 'through-the-nut': 'holds' };

/** A through hole and a nut. */
export const nut = {
  ...joint,
  hole: 'through',
  material: 'nut',
  'thread-depth': '8.4 mm',
} as const;

function insteadOf48(strength: string): Fixture {
  return {
    says: `class ${strength} in place of 4.8`,
    source: 'ISO 898-1, read in a secondary copy: its proof stress is above 310 MPa',
    faces: [
      { ...bolt, 'strength-class': strength },
      { ...joint, 'strength-class': '4.8' },
    ],
    outcome: 'holds',
    checks: { ...held, harder: 'fails harder-than-original', yield: 'holds' },
  };
}

export const fixtures: readonly Fixture[] = [
  {
    says: 'a gearbox bolt in a blind hole in aluminium: 20 mm of thread, 2 mm to spare',
    source: 'arithmetic: 45 - 25 = 20 mm of thread',
    faces: [bolt, joint],
    outcome: 'holds',
    checks: held,
  },
  {
    says: 'in steel one diameter is enough',
    faces: [
      { ...bolt, length: '36.0 mm' },
      { ...joint, material: 'steel' },
    ],
    outcome: 'holds',
    checks: heldInSteel,
  },
  {
    says: 'a gearbox case of magnesium takes two diameters',
    faces: [
      { ...bolt, length: '46.0 mm' },
      { ...joint, material: 'magnesium', 'thread-depth': '24.0 mm' },
    ],
    outcome: 'holds',
    checks: heldInMagnesium,
  },
  {
    says: 'through and through, with a nut: the bolt may stand out of it',
    source: 'ISO 4032, from memory: a nut for M10 is 8.4 mm high at most',
    faces: [bolt, nut],
    outcome: 'holds',
    checks: heldInNut,
  },
  {
    says: 'class 10.9 for one of 8.8, with a caution: the torque stays as it is',
    source: 'ISO 898-1, read in a secondary copy: proof stress 830 against 580 MPa',
    faces: [{ ...bolt, 'strength-class': '10.9' }, joint],
    outcome: 'holds',
    checks: { ...held, harder: 'fails harder-than-original' },
  },
  {
    says: 'class 5.8 for one of 4.8 is stronger in every way',
    source: 'ISO 898-1, read in a secondary copy: proof stress 380 against 310 MPa',
    faces: [
      { ...bolt, 'strength-class': '5.8' },
      { ...joint, 'strength-class': '4.8' },
    ],
    outcome: 'holds',
    checks: { ...held, harder: 'fails harder-than-original', yield: 'holds' },
  },
  {
    says: 'the head passes, sits and clears',
    faces: [
      { ...bolt, 'head-diameter': '20.0 mm', 'head-height': '8.0 mm' },
      { ...joint, 'clearance-hole': '11.0 mm', 'seat-diameter': '24 mm', 'head-room': '12 mm' },
    ],
    outcome: 'holds',
    checks: { ...held, 'clearance-hole': 'holds', 'head-seat': 'holds', 'head-room': 'holds' },
  },
  ...['6.8', '8.8', '9.8', '10.9', '12.9'].map(insteadOf48),
  {
    says: 'class 4.8 where 4.6 is asked',
    faces: [
      { ...bolt, 'strength-class': '4.8' },
      { ...joint, 'strength-class': '4.6' },
    ],
    outcome: 'holds',
    checks: { ...held, harder: 'fails harder-than-original' },
  },
  {
    says: 'class 4.8 in place of itself',
    faces: [
      { ...bolt, 'strength-class': '4.8' },
      { ...joint, 'strength-class': '4.8' },
    ],
    outcome: 'holds',
    checks: { ...held, yield: 'holds' },
  },
  {
    says: 'cast iron asks for as much thread as aluminium',
    faces: [bolt, { ...joint, material: 'cast-iron' }],
    outcome: 'holds',
    checks: held,
  },
];
