/**
 * Track-rod ends that fit their arms and rods, and the faces that the other fixtures start from.
 */

import type { Expected, Fixture } from '../fixture.js';

/** 0.2 mm over the mouth at 1 in 10: the large end stands out by 2 mm, below an arm at 60 mm. */
export const end = {
  kind: 'track-rod-end',
  side: 'end',
  form: 'taper',
  taper: '1/10',
  'large-end': '13.20 ±0.02 mm',
  'seat-length': '18.0 ±0.1 mm',
  entry: 'from-below',
  'arm-length': '120.0 ±0.2 mm',
  height: '58.0 ±0.2 mm',
} as const;

export const arm = {
  kind: 'track-rod-end',
  side: 'carrier',
  form: 'taper',
  taper: '1/10',
  'large-end': '13.00 ±0.02 mm',
  'seat-length': '18.0 ±0.1 mm',
  entry: 'from-below',
  'arm-length': '120.3 ±0.2 mm',
  height: '60.0 ±0.2 mm',
} as const;

export const screwed = {
  kind: 'track-rod-end',
  side: 'end',
  form: 'thread',
  thread: 'M14x1.5',
  hand: 'right',
} as const;

export const rod = { ...screwed, side: 'carrier' } as const;

const common: Expected = { 'equal-form': 'holds', 'known-form': 'holds' };

const heldAnywhere: Expected = {
  ...common,
  'equal-taper': 'holds',
  'nut-draws': 'holds',
  seat: 'holds',
  'stem-length': 'holds',
  'equal-entry': 'holds',
  'known-entry': 'holds',
  'arm-length': 'holds',
};

export const held: Expected = { ...heldAnywhere, 'height-below': 'holds' };

export const heldAbove: Expected = { ...heldAnywhere, 'height-above': 'holds' };

/** Where the two ends do not agree from which side the stem goes in. */
export const heldNowhere: Expected = heldAnywhere;

export const heldThread: Expected = {
  ...common,
  'equal-thread': 'holds',
  'equal-hand': 'holds',
  'known-hand': 'holds',
};

export const fixtures: readonly Fixture[] = [
  {
    says: 'a taper of 1 in 10 from below, on an arm of 120 mm',
    source: 'arithmetic: standing out by 2 mm, the large end lies at 60 - 2 mm',
    faces: [end, arm],
    outcome: 'holds',
    checks: held,
  },
  {
    says: 'the same from above',
    source: 'arithmetic: standing out by 2 mm, the large end lies at 60 + 2 mm',
    faces: [
      { ...end, entry: 'from-above', height: '62.0 ±0.2 mm' },
      { ...arm, entry: 'from-above' },
    ],
    outcome: 'holds',
    checks: heldAbove,
  },
  {
    says: 'an inch and a half a foot is 1 in 8',
    source: 'arithmetic: 1.5 in over 12 in; that such tapers are met is from memory',
    faces: [
      { ...end, taper: '1/8' },
      { ...arm, taper: '3/24' },
    ],
    outcome: 'holds',
    checks: held,
  },
  {
    says: 'a nut of the same thread comes with the knuckle',
    faces: [
      { ...end, 'nut-thread': 'M12x1.25' },
      { ...arm, 'nut-thread': 'M12x1.25' },
    ],
    outcome: 'holds',
    checks: { ...held, 'equal-nut-thread': 'holds' },
  },
  {
    says: 'a right-hand M14x1.5 on its rod',
    faces: [screwed, rod],
    outcome: 'holds',
    checks: heldThread,
  },
  {
    says: 'the left-hand thread of the other end of the rod',
    faces: [
      { ...screwed, hand: 'left' },
      { ...rod, hand: 'left' },
    ],
    outcome: 'holds',
    checks: heldThread,
  },
];
