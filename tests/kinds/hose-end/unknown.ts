/**
 * What nobody recorded keeps a hose end open and is named.
 */

import { type Fixture, without } from '../fixture.js';
import { held, heldMale, hose, maleHose, malePort, port } from './fits.js';

export const fixtures: readonly Fixture[] = [
  {
    says: 'the style of the port',
    faces: [hose, without(port, 'style')],
    outcome: 'open',
    checks: { ...held, 'equal-style': 'open not-recorded', 'known-style': 'open not-recorded' },
    missing: ['right.style'],
  },
  {
    says: 'the thread of the hollow bolt',
    faces: [without(hose, 'thread'), port],
    outcome: 'open',
    checks: { ...held, 'equal-thread': 'open not-recorded' },
    missing: ['left.thread'],
  },
  {
    says: 'the ring that the bolt is made for',
    faces: [hose, without(port, 'ring-thickness')],
    outcome: 'open',
    checks: { ...held, 'ring-thickness': 'open not-recorded' },
    missing: ['right.ring-thickness'],
  },
  {
    says: 'the seat of a male end: m10x1 alone does not say how it seals',
    faces: [maleHose, without(malePort, 'seat')],
    outcome: 'open',
    checks: {
      ...heldMale,
      'equal-seat': 'open not-recorded',
      'known-seat': 'open not-recorded',
    },
    missing: ['right.seat'],
  },
  {
    says: 'a ring with a peg, and nobody looked for the recess',
    faces: [{ ...hose, peg: 'side-peg' }, port],
    outcome: 'open',
    checks: { ...held, peg: 'open not-recorded' },
    missing: ['right.peg-recess'],
  },
  {
    says: 'the bore of the ring is not compared without the bolt',
    faces: [{ ...hose, 'ring-bore': '8.0 mm', 'washer-outer': '30 mm' }, port],
    outcome: 'holds',
    checks: held,
  },
];
