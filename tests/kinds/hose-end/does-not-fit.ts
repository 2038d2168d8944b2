/**
 * Each way in which a hose end does not seal in a port, one at a time.
 */

import type { Fixture } from '../fixture.js';
import { held, heldMale, hose, maleHose, malePort, port } from './fits.js';

const { 'ring-thickness': _, ...heldBesideRing } = held;

const everythingOfHose = {
  'ring-thickness': '10.0 mm',
  'ring-bore': '10.2 mm',
  seat: 'washer',
  washers: 2,
};
const everythingOfPort = { 'ring-thickness': '10.0 mm', 'bolt-diameter': '10 mm', seat: 'washer' };

export const fixtures: readonly Fixture[] = [
  {
    says: 'a hollow bolt of m10x1 in a caliper of m10x1.25: starts and strips',
    faces: [hose, { ...port, thread: 'm10x1.25' }],
    outcome: 'fails',
    checks: { ...held, 'equal-thread': 'fails not-equal' },
  },
  {
    says: 'a male end where a banjo belongs',
    faces: [maleHose, port],
    outcome: 'fails',
    checks: { ...heldBesideRing, 'equal-style': 'fails another-style' },
  },
  {
    says: 'a female end on a port for a male one',
    faces: [{ ...maleHose, style: 'female' }, malePort],
    outcome: 'fails',
    checks: { ...heldMale, 'equal-style': 'fails another-style' },
  },
  {
    says: 'a male end for a copper washer in a port with a bubble seat',
    faces: [{ ...maleHose, seat: 'washer' }, malePort],
    outcome: 'fails',
    checks: { ...heldMale, 'equal-seat': 'fails does-not-seal' },
  },
  {
    says: 'a bubble seat and one for a double flare, of one thread',
    faces: [{ ...maleHose, seat: 'double' }, malePort],
    outcome: 'fails',
    checks: { ...heldMale, 'equal-seat': 'fails does-not-seal' },
  },
  {
    says: 'a thick ring under a bolt for a thin one: too few turns of thread',
    faces: [{ ...hose, 'ring-thickness': '13.0 mm' }, port],
    outcome: 'fails',
    checks: { ...held, 'ring-thickness': 'fails ring-thickness-differs' },
  },
  {
    says: 'a thin ring under a bolt for a thick one: it bottoms, and the cross hole is off',
    faces: [{ ...hose, 'ring-thickness': '8.0 mm' }, port],
    outcome: 'fails',
    checks: { ...held, 'ring-thickness': 'fails ring-thickness-differs' },
  },
  {
    says: 'a bolt of 12 mm in a ring for 10 mm',
    faces: [
      { ...hose, 'ring-bore': '10.2 mm' },
      { ...port, 'bolt-diameter': '12 mm' },
    ],
    outcome: 'fails',
    checks: { ...held, 'ring-bore': 'fails bolt-does-not-pass' },
  },
  {
    says: 'a ring with a peg on a caliper without the recess',
    faces: [
      { ...hose, peg: 'side-peg' },
      { ...port, 'peg-recess': 'none' },
    ],
    outcome: 'fails',
    checks: { ...held, peg: 'fails peg-in-the-way' },
  },
  {
    says: 'washers that overhang the sealing face',
    faces: [
      { ...hose, 'washer-outer': '18.0 mm' },
      { ...port, 'face-diameter': '16.0 mm' },
    ],
    outcome: 'fails',
    checks: { ...held, 'washer-face': 'fails washer-overhangs' },
  },
  {
    says: 'a banjo with one new washer wants another: a caution',
    faces: [{ ...hose, washers: 1 }, port],
    outcome: 'holds',
    checks: { ...held, 'two-washers': 'fails needs-two-new-washers' },
  },
  {
    says: 'a male end for a washer that comes without one: a caution',
    faces: [
      { ...maleHose, seat: 'washer', washers: 0 },
      { ...malePort, seat: 'washer' },
    ],
    outcome: 'holds',
    checks: { ...heldMale, 'one-washer': 'fails needs-a-new-washer' },
  },
  {
    says: 'an end of another style goes by its name, with a caution',
    faces: [
      { ...maleHose, style: 'quick-coupling' },
      { ...malePort, style: 'quick-coupling' },
    ],
    outcome: 'holds',
    checks: { ...heldMale, 'known-style': 'fails other-style' },
  },
  {
    says: 'a banjo on a port for a male end: nothing of either is compared',
    faces: [
      { ...hose, ...everythingOfHose },
      { ...malePort, ...everythingOfPort },
    ],
    outcome: 'fails',
    checks: { ...heldBesideRing, 'equal-style': 'fails another-style' },
  },
  {
    says: 'and a male end on a port for a banjo',
    faces: [
      { ...maleHose, ...everythingOfHose },
      { ...port, ...everythingOfPort },
    ],
    outcome: 'fails',
    checks: { ...heldBesideRing, 'equal-style': 'fails another-style' },
  },
];
