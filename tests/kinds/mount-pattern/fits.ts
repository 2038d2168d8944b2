/**
 * Mounts that can be bolted on, and the two faces that the other fixtures start from.
 */

import type { Expected, Fixture } from '../fixture.js';

/** A cross-member with through holes on four threads in the body. */
export const mount = {
  kind: 'mount-pattern',
  side: 'mount',
  holes: 4,
  along: '80.0 mm',
  across: '420.0 mm',
  hole: '11.0 ±0.05 mm',
  'slot-along': '0 ±0 mm',
  'slot-across': '0 ±0 mm',
  bolt: 'M10x1.25',
  'bolt-diameter': '10 mm',
} as const;

export const body = {
  ...mount,
  side: 'body',
  along: '80.3 mm',
  across: '420.4 mm',
  hole: '10 ±0 mm',
} as const;

export const held: Expected = {
  'equal-holes': 'holds',
  'outer-holes': 'holds',
  'equal-bolt': 'holds',
  'mount-hole': 'holds',
  'body-hole': 'holds',
  along: 'holds',
  across: 'holds',
  'both-ways': 'holds',
};

export const fixtures: readonly Fixture[] = [
  {
    says: 'four M10 with 1 mm of play, spacings 0.3 and 0.4 mm apart',
    source: 'arithmetic: 0.3 and 0.4 mm across corners are 0.5 mm',
    faces: [mount, body],
    outcome: 'holds',
    checks: held,
  },
  {
    says: 'slots of 12 mm along take a difference of 10',
    faces: [
      { ...mount, 'slot-along': '12 ±0.1 mm' },
      { ...body, along: '90.0 mm' },
    ],
    outcome: 'holds',
    checks: held,
  },
  {
    says: 'slots along in one part and across in the other',
    faces: [
      { ...mount, 'slot-along': '6 ±0.1 mm' },
      { ...body, 'slot-across': '6 ±0.1 mm', along: '75.0 mm', across: '425.0 mm' },
    ],
    outcome: 'holds',
    checks: held,
  },
  {
    says: 'slots in the body, along and across',
    faces: [
      mount,
      { ...body, 'slot-along': '6 ±0.1 mm', 'slot-across': '6 ±0.1 mm', along: '85.0 mm' },
    ],
    outcome: 'holds',
    checks: held,
  },
  {
    says: 'two holes in a line: there is no spacing along',
    faces: [
      { ...mount, holes: 2, along: '0 ±0 mm' },
      { ...body, holes: 2, along: '0 ±0 mm' },
    ],
    outcome: 'holds',
    checks: held,
  },
  {
    says: 'bush and height recorded',
    faces: [
      { ...mount, bush: '60.15 ±0.02 mm', height: '45.0 mm' },
      { ...body, eye: '60.00 ±0.02 mm', height: '45.5 mm' },
    ],
    outcome: 'holds',
    checks: { ...held, 'bush-holds': 'holds', 'bush-goes-in': 'holds', height: 'holds' },
  },
  {
    says: 'a mount 10 mm higher fits, with a caution of the angles',
    faces: [
      { ...mount, height: '55.0 mm' },
      { ...body, height: '45.0 mm' },
    ],
    outcome: 'holds',
    checks: { ...held, height: 'fails height-differs' },
  },
];
