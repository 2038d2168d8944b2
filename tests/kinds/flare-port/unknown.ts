/**
 * What nobody recorded keeps a flared pipe open and is named.
 */

import { type Fixture, without } from '../fixture.js';
import { bubblePipe, bubblePort, held, heldAsBubble, pipe, port } from './fits.js';

export const fixtures: readonly Fixture[] = [
  {
    says: 'm10x1 on both ends and nobody looked at the seat: unknown, not a fit',
    faces: [pipe, without(port, 'flare', 'flare-angle')],
    outcome: 'open',
    checks: {
      ...held,
      'equal-flare': 'open not-recorded',
      'equal-flare-angle': 'open not-recorded',
      'known-flare': 'open not-recorded',
    },
    missing: ['right.flare', 'right.flare-angle'],
  },
  {
    says: 'the angle of a double flare',
    faces: [without(pipe, 'flare-angle'), port],
    outcome: 'open',
    checks: { ...held, 'equal-flare-angle': 'open not-recorded' },
    missing: ['left.flare-angle'],
  },
  {
    says: 'the thread',
    faces: [without(pipe, 'thread'), port],
    outcome: 'open',
    checks: { ...held, 'equal-thread': 'open not-recorded' },
    missing: ['left.thread'],
  },
  {
    says: 'where the nut has its thread',
    faces: [bubblePipe, without(bubblePort, 'nut-thread')],
    outcome: 'open',
    checks: {
      ...heldAsBubble,
      'equal-nut-thread': 'open not-recorded',
      'known-nut-thread': 'open not-recorded',
    },
    missing: ['right.nut-thread'],
  },
  {
    says: 'the pipe that the seat is made for',
    faces: [pipe, without(port, 'pipe-diameter')],
    outcome: 'open',
    checks: { ...held, 'pipe-diameter': 'open not-recorded' },
    missing: ['right.pipe-diameter'],
  },
  {
    says: 'the end of the nut: behind a double flare a flat one would crush it',
    faces: [without(pipe, 'nut-end'), port],
    outcome: 'open',
    checks: { ...held, 'countersunk-nut': 'open not-recorded' },
    missing: ['left.nut-end'],
  },
  {
    says: 'the reach of the nut is not compared without the depth of the seat',
    faces: [{ ...pipe, reach: '9.0 mm' }, port],
    outcome: 'holds',
    checks: held,
  },
];
