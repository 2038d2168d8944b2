/**
 * Gear sets that go into an axle, and the faces that the other fixtures start from.
 */

import type { Expected, Fixture } from '../fixture.js';

const crown = {
  kind: 'final-drive-set',
  place: 'crown',
  'crown-bolts': 10,
  'crown-pcd': '128 mm',
  'crown-thread': 'M10x1.25',
} as const;

export const crownWheel = {
  ...crown,
  side: 'set',
  register: '110.00 ±0.01 mm',
  'carrier-ratio': '43/11',
} as const;

export const carrier = {
  ...crown,
  side: 'axle',
  register: '109.99 ±0.01 mm',
  'lowest-ratio': '3.70',
  'highest-ratio': '4.30',
} as const;

const stem = {
  kind: 'final-drive-set',
  place: 'pinion',
  spiral: 'left',
  offset: '32 mm',
} as const;

export const pinion = {
  ...stem,
  side: 'set',
  head: '35 m6',
  tail: '28 k6',
  'mounting-distance': '104.00 ±0.05 mm',
} as const;

export const housing = {
  ...stem,
  side: 'axle',
  head: '35 +0/-0.012 mm',
  tail: '28 +0/-0.010 mm',
  'mounting-distance': '104.20 ±0.05 mm',
} as const;

const placed: Expected = { 'equal-place': 'holds', 'known-place': 'holds' };

export const heldCrown: Expected = {
  ...placed,
  'equal-crown-bolts': 'holds',
  'crown-pcd': 'holds',
  'equal-crown-thread': 'holds',
  register: 'holds',
  'above-lowest': 'holds',
  'below-highest': 'holds',
};

export const heldPinion: Expected = {
  ...placed,
  'equal-spiral': 'holds',
  'equal-offset': 'holds',
  head: 'holds',
  tail: 'holds',
  'mounting-distance': 'holds',
};

export const fixtures: readonly Fixture[] = [
  {
    says: 'a crown wheel of 43/11 on a carrier listed for 3.70 to 4.30',
    faces: [crownWheel, carrier],
    outcome: 'holds',
    checks: heldCrown,
  },
  {
    says: 'its pinion in the housing: m6 at the head, k6 at the tail',
    source: 'ISO 286-2: 35 m6 is +25/+9, 28 k6 +15/+2 thousandths; bearings from memory',
    faces: [pinion, housing],
    outcome: 'holds',
    checks: heldPinion,
  },
  {
    says: 'a thick crown wheel of 43/9 is made for the carrier of 4.30',
    faces: [{ ...crownWheel, 'carrier-ratio': '4.30' }, carrier],
    outcome: 'holds',
    checks: heldCrown,
  },
  {
    says: '41/11 is what a list calls 3.73',
    source: '41/11 = 3.7273, which rounds to 3.73',
    faces: [
      { ...crownWheel, 'carrier-ratio': '41/11' },
      { ...carrier, 'lowest-ratio': '3.73' },
    ],
    outcome: 'holds',
    checks: heldCrown,
  },
  {
    says: 'a spiral bevel set has no offset',
    faces: [
      { ...pinion, offset: '0 mm' },
      { ...housing, offset: '0 mm' },
    ],
    outcome: 'holds',
    checks: heldPinion,
  },
  {
    says: 'an offset of 1.5 in is one of 38.1 mm',
    faces: [
      { ...pinion, offset: '1.5 in' },
      { ...housing, offset: '38.1 mm' },
    ],
    outcome: 'holds',
    checks: heldPinion,
  },
];
