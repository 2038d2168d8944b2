/**
 * What nobody recorded keeps a ball joint open and is named.
 */

import { type Fixture, without } from '../fixture.js';
import { eye, held, heldPinch, pinchEye, pinchedStem, stem } from './fits.js';

const unread = 'open not-recorded';

export const fixtures: readonly Fixture[] = [
  {
    says: 'the taper: the large end alone proves nothing',
    faces: [without(stem, 'taper'), eye],
    outcome: 'open',
    checks: { ...held, 'equal-taper': unread, 'nut-draws': unread, seat: unread },
    missing: ['left.taper'],
  },
  {
    says: 'the large end of the eye',
    faces: [stem, without(eye, 'large-end')],
    outcome: 'open',
    checks: { ...held, 'nut-draws': unread, seat: unread },
    missing: ['right.large-end'],
  },
  {
    says: 'the length of the taper on the stem',
    faces: [without(stem, 'seat-length'), eye],
    outcome: 'open',
    checks: { ...held, 'nut-draws': unread, seat: unread, 'stem-length': unread },
    missing: ['left.seat-length'],
  },
  {
    says: 'diameters read with a vernier caliper do not tell how deep it sits',
    source: 'arithmetic: a tenth of a millimetre between them is 1 mm of length at 1 in 10',
    faces: [
      { ...stem, 'large-end': { is: '15.50 mm', tool: 'caliper' } },
      { ...eye, 'large-end': { is: '15.35 mm', tool: 'caliper' }, 'seat-length': '17.0 ±0.1 mm' },
    ],
    outcome: 'open',
    checks: { ...held, 'nut-draws': 'open not-precise-enough' },
  },
  {
    says: 'the diameter of a pinched stem',
    faces: [without(pinchedStem, 'pinch-diameter'), pinchEye],
    outcome: 'open',
    checks: { ...heldPinch, 'stem-goes-in': unread, 'pinch-play': unread },
    missing: ['left.pinch-diameter'],
  },
  {
    says: 'where the pinch bolt lies',
    faces: [pinchedStem, without(pinchEye, 'groove')],
    outcome: 'open',
    checks: { ...heldPinch, groove: unread },
    missing: ['right.groove'],
  },
  {
    says: 'the bolt that the groove is made for',
    faces: [without(pinchedStem, 'pinch-bolt'), pinchEye],
    outcome: 'open',
    checks: { ...heldPinch, 'equal-pinch-bolt': unread },
    missing: ['left.pinch-bolt'],
  },
  {
    says: 'a split-pin hole without the height of the nut is not compared, nor a ball alone',
    faces: [{ ...stem, 'pin-hole': '32 mm', 'ball-height': '20 mm' }, eye],
    outcome: 'holds',
    checks: held,
  },
  {
    says: 'a nut alone is not compared',
    faces: [stem, { ...eye, 'nut-thread': 'M12x1.25' }],
    outcome: 'holds',
    checks: held,
  },
];
