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
  'nut-end': 'countersunk',
} as const;

const { 'nut-end': _nutEnd, ...ofSeat } = pipe;

export const port = { ...ofSeat, side: 'port' } as const;

export const bubblePipe = {
  ...without(pipe, 'flare-angle'),
  kind: 'flare-port',
  flare: 'bubble',
  'nut-end': 'flat',
};

export const bubblePort = { ...without(port, 'flare-angle'), kind: 'flare-port', flare: 'bubble' };

/** Of no flare in particular. */
export const heldByName: Expected = {
  'equal-flare': 'holds',
  'equal-flare-angle': 'holds',
  'known-flare': 'holds',
  'equal-thread': 'holds',
  'equal-nut-thread': 'holds',
  'known-nut-thread': 'holds',
  'pipe-diameter': 'holds',
};

export const held: Expected = { ...heldByName, 'countersunk-nut': 'holds' };

const { 'equal-flare-angle': _, ...withoutAngle } = heldByName;

export const heldAsBubble: Expected = { ...withoutAngle, 'flat-nut': 'holds' };

/** A double flare in a bubble seat, of which no angle is asked. */
export const heldInBubbleSeat: Expected = { ...withoutAngle, 'countersunk-nut': 'holds' };

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
      { ...without(pipe, 'nut-end'), ...union, kind: 'flare-port' },
      { ...port, ...union },
    ],
    outcome: 'holds',
    checks: heldByName,
  },
  {
    says: 'room under the hexagon of the nut',
    faces: [
      { ...pipe, reach: '17.0 mm' },
      { ...port, 'seat-depth': '14.0 mm' },
    ],
    outcome: 'holds',
    checks: { ...held, reach: 'holds' },
  },
];
