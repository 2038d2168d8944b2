/**
 * Ball joints that go into their eyes, and the faces that the other fixtures start from.
 */

import type { Expected, Fixture } from '../fixture.js';

/** The large end is 0.2 mm over the mouth: the stem stands out by 2 mm and carries 16 of 18. */
export const stem = {
  kind: 'ball-joint-taper',
  side: 'stem',
  form: 'taper',
  taper: '1/10',
  'large-end': '15.50 ±0.02 mm',
  'seat-length': '18.0 ±0.1 mm',
} as const;

export const eye = {
  ...stem,
  side: 'eye',
  'large-end': '15.30 ±0.02 mm',
} as const;

export const pinchedStem = {
  kind: 'ball-joint-taper',
  side: 'stem',
  form: 'pinch',
  'pinch-diameter': '17.98 ±0.01 mm',
  groove: '14.0 ±0.1 mm',
  'pinch-bolt': 'M10x1.5',
} as const;

export const pinchEye = {
  ...pinchedStem,
  side: 'eye',
  'pinch-diameter': '18.00 ±0.01 mm',
  groove: '14.2 ±0.1 mm',
} as const;

const common: Expected = { 'equal-form': 'holds', 'known-form': 'holds' };

export const held: Expected = {
  ...common,
  'equal-taper': 'holds',
  'nut-draws': 'holds',
  seat: 'holds',
  'stem-length': 'holds',
};

export const heldPinch: Expected = {
  ...common,
  'stem-goes-in': 'holds',
  'pinch-play': 'holds',
  groove: 'holds',
  'equal-pinch-bolt': 'holds',
};

export const fixtures: readonly Fixture[] = [
  {
    says: 'a taper of 1 in 10 that stands out by 2 mm',
    source: 'arithmetic: 0.2 mm of diameter are 2 mm of length at 1 in 10',
    faces: [stem, eye],
    outcome: 'holds',
    checks: held,
  },
  {
    says: 'an inch and a half a foot is 1 in 8',
    source: 'arithmetic: 1.5 in over 12 in; that such tapers are met is from memory',
    faces: [
      { ...stem, taper: '1/8' },
      { ...eye, taper: '3/24' },
    ],
    outcome: 'holds',
    checks: held,
  },
  {
    says: 'a large end that sinks in a little still carries over three quarters',
    faces: [stem, { ...eye, 'large-end': '15.70 ±0.02 mm', 'seat-length': '21.0 ±0.1 mm' }],
    outcome: 'holds',
    checks: held,
  },
  {
    says: 'everything recorded: nut, split pin and height of the ball',
    source: 'arithmetic: standing out by 2 mm brings a pin at 32 mm to 30, a ball at 20 mm to 22',
    faces: [
      { ...stem, 'nut-thread': 'M12x1.25', 'pin-hole': '32.0 mm', 'ball-height': '20.0 mm' },
      { ...eye, 'nut-thread': 'M12x1.25', 'pin-hole': '30.0 mm', 'ball-height': '22.0 mm' },
    ],
    outcome: 'holds',
    checks: {
      ...held,
      'equal-nut-thread': 'holds',
      'pin-hole': 'holds',
      'ball-height': 'holds',
    },
  },
  {
    says: 'a ball 4 mm lower fits, with a caution of the geometry',
    faces: [
      { ...stem, 'ball-height': '16.0 mm' },
      { ...eye, 'ball-height': '22.0 mm' },
    ],
    outcome: 'holds',
    checks: { ...held, 'ball-height': 'fails ball-centre-moves' },
  },
  {
    says: 'a pinched stem of 18 mm with two hundredths of play',
    source: 'play of 0 to 0.05 mm: common practice, no source',
    faces: [pinchedStem, pinchEye],
    outcome: 'holds',
    checks: heldPinch,
  },
];
