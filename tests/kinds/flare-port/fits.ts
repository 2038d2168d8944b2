/**
 * Flared pipes that seal in their ports, and the two faces that the other fixtures start from.
 */

import { type Expected, type Fixture, without } from '../fixture.js';

export const pipe = {
  kind: 'flare-port',
  side: 'pipe',
  flare: 'double',
  'flare-angle': '45 deg',
  thread: 'm10x1',
  'nut-thread': 'outside',
  'pipe-diameter': '4.75 mm',
} as const;

export const port = { ...pipe, side: 'port' } as const;

export const bubblePipe = { ...without(pipe, 'flare-angle'), kind: 'flare-port', flare: 'bubble' };

export const bubblePort = { ...without(port, 'flare-angle'), kind: 'flare-port', flare: 'bubble' };

export const held: Expected = {
  'equal-flare': 'holds',
  'equal-flare-angle': 'holds',
  'known-flare': 'holds',
  'equal-thread': 'holds',
  'equal-nut-thread': 'holds',
  'pipe-diameter': 'holds',
};

const { 'equal-flare-angle': _, ...heldAsBubble } = held;

export { heldAsBubble };

const union = {
  flare: 'single',
  'flare-angle': '37 deg',
  thread: '7/16-20',
  'nut-thread': 'inside',
};

export const fixtures: readonly Fixture[] = [
  {
    says: 'a double flare of 45 degrees with a nut of m10x1',
    faces: [pipe, port],
    outcome: 'holds',
    checks: held,
  },
  {
    says: 'a bubble flare with a nut of m10x1 has no angle to compare',
    source: 'ISO 4038: simple flare',
    faces: [bubblePipe, bubblePort],
    outcome: 'holds',
    checks: heldAsBubble,
  },
  {
    says: 'a pipe of 3/16 in where one of 4.75 mm is meant',
    source: 'arithmetic: 3/16 in is 4.7625 mm',
    faces: [{ ...pipe, 'pipe-diameter': '3/16 in' }, port],
    outcome: 'holds',
    checks: held,
  },
  {
    says: 'a single flare of 37 degrees under a union nut',
    source: 'ISO 8434-2: 37 degrees',
    faces: [
      { ...pipe, ...union },
      { ...port, ...union },
    ],
    outcome: 'holds',
    checks: held,
  },
  {
    says: 'the countersunk nut that a double flare needs, and room under its hexagon',
    faces: [
      { ...pipe, 'nut-end': 'countersunk', reach: '17.0 mm' },
      { ...port, 'seat-depth': '14.0 mm' },
    ],
    outcome: 'holds',
    checks: { ...held, 'countersunk-nut': 'holds', reach: 'holds' },
  },
  {
    says: 'the flat nut that a bubble flare needs',
    faces: [{ ...bubblePipe, 'nut-end': 'flat' }, bubblePort],
    outcome: 'holds',
    checks: { ...heldAsBubble, 'flat-nut': 'holds' },
  },
];
