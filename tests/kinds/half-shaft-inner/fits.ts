/**
 * Inner ends that go together, and the faces that the other fixtures start from.
 */

import type { Expected, Fixture } from '../fixture.js';

const spline = {
  kind: 'half-shaft-inner',
  style: 'stub',
  family: 'iso-4156',
  teeth: 28,
  module: '1 mm',
  retention: 'circlip',
} as const;

export const differential = {
  ...spline,
  side: 'differential',
  recess: '48.0 ±0.1 mm',
  seal: '40 mm',
} as const;

export const shaft = {
  ...spline,
  side: 'shaft',
  ring: '48.1 ±0.1 mm',
  journal: '40 h11',
} as const;

const flange = {
  kind: 'half-shaft-inner',
  style: 'flange',
  holes: 6,
  pcd: '84 mm',
  bolt: 'M8x1.25',
} as const;

export const flangeOfDifferential = { ...flange, side: 'differential' } as const;
export const flangeOfShaft = { ...flange, side: 'shaft' } as const;

/** A stub of the side gear, and the cup that goes over it: no seal runs on the shaft. */
export const stubOfDifferential = {
  ...spline,
  style: 'cup',
  side: 'differential',
  recess: '30.0 ±0.1 mm',
} as const;
export const cupOfShaft = { ...spline, style: 'cup', side: 'shaft', ring: '30.0 ±0.1 mm' } as const;

export const heldCup: Expected = {
  'equal-style': 'holds',
  'known-style': 'holds',
  'equal-family': 'holds',
  'known-family': 'holds',
  'equal-teeth': 'holds',
  'equal-module': 'holds',
  'equal-retention': 'holds',
  'known-retention': 'holds',
  ring: 'holds',
};

export const heldStub: Expected = { ...heldCup, seal: 'holds' };

export const heldFlange: Expected = {
  'equal-style': 'holds',
  'known-style': 'holds',
  'equal-holes': 'holds',
  pcd: 'holds',
  'equal-bolt': 'holds',
};

const { 'equal-family': _, ...heldUnderTwoNames } = heldStub;
const { ring: __, ...heldWithoutRing } = heldStub;

export const fixtures: readonly Fixture[] = [
  {
    says: 'a stub of 28 teeth with its ring, in a seal of 40 mm',
    source: 'ISO 6194-1: a journal of h11, read in a secondary table; 40 h11 is 0/-0.160 mm',
    faces: [differential, shaft],
    outcome: 'holds',
    checks: heldStub,
  },
  {
    says: 'ISO 4156 and ANSI B92.2M are two names of one system',
    faces: [differential, { ...shaft, family: 'ansi-b92-2m' }],
    outcome: 'holds',
    checks: heldUnderTwoNames,
  },
  {
    says: 'six M8 on 84 mm',
    faces: [flangeOfDifferential, flangeOfShaft],
    outcome: 'holds',
    checks: heldFlange,
  },
  {
    says: 'a cup over the stub of the side gear',
    faces: [stubOfDifferential, cupOfShaft],
    outcome: 'holds',
    checks: heldCup,
  },
  {
    says: 'a shaft that a bolt holds has no ring to land',
    faces: [
      { ...differential, retention: 'bolt' },
      { ...shaft, retention: 'bolt' },
    ],
    outcome: 'holds',
    checks: { ...heldWithoutRing, 'known-retention': 'fails other-retention' },
  },
  {
    says: "a spline of the maker's own goes by its name, with a caution",
    faces: [
      { ...differential, family: 'works-28' },
      { ...shaft, family: 'works-28' },
    ],
    outcome: 'holds',
    checks: { ...heldStub, 'known-family': 'fails not-a-standard-form' },
  },
  {
    says: 'a stub that ends before the cross-shaft',
    faces: [
      { ...differential, depth: '72 ±1 mm' },
      { ...shaft, 'stub-length': '65.0 ±0.1 mm' },
    ],
    outcome: 'holds',
    checks: { ...heldStub, depth: 'holds' },
  },
  {
    says: 'a tripod straight in the side gear is compared by name and spline, and that is said',
    faces: [
      { ...stubOfDifferential, style: 'tripod-in-gear' },
      { ...cupOfShaft, style: 'tripod-in-gear' },
    ],
    outcome: 'holds',
    checks: { ...heldCup, 'known-style': 'fails other-style' },
  },
];
