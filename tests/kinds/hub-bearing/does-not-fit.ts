/**
 * Each way in which a ring does not suit a seat.
 */

import type { Expected, Fixture } from '../fixture.js';
import {
  cone,
  heldStandingHousing,
  heldStandingJournal,
  heldStubAxle,
  heldTurningHousing,
  heldTurningJournal,
  innerRing,
  outerRing,
  standingHousing,
  standingJournal,
  stubAxle,
  turningHousing,
  turningJournal,
} from './fits.js';

type Row = readonly [says: string, faces: Fixture['faces'], checks: Expected];

const { 'inner-goes-on': _on, 'inner-turning': _turns, ...heldOfNoRing } = heldTurningJournal;
const { 'inner-turning': _motion, ...heldOfNoMotion } = heldTurningJournal;

const rows: readonly Row[] = [
  [
    'an outer ring on a journal of just its diameter',
    [{ ...outerRing, diameter: '25 +0/-0.010 mm' }, turningJournal],
    { ...heldTurningJournal, 'equal-ring': 'fails not-equal' },
  ],
  [
    'a preload that is set in an unheard-of way',
    [
      { ...innerRing, preload: 'spring' },
      { ...turningJournal, preload: 'spring' },
    ],
    { ...heldTurningJournal, 'known-preload': 'fails no-such-preload' },
  ],
  [
    'a ring that is neither of the two',
    [
      { ...innerRing, ring: 'washer' },
      { ...turningJournal, ring: 'washer' },
    ],
    { ...heldOfNoRing, 'known-ring': 'fails neither-inner-nor-outer' },
  ],
  [
    'a ring that neither turns nor stands',
    [innerRing, { ...turningJournal, motion: 'swinging' }],
    { ...heldOfNoMotion, 'known-motion': 'fails neither-turning-nor-standing' },
  ],
  [
    'a bore of 25 mm for a journal of 30 mm',
    [innerRing, { ...turningJournal, diameter: '30 k6' }],
    { ...heldTurningJournal, 'inner-goes-on': 'fails journal-too-large' },
  ],
  [
    'an outside diameter of 52 mm for a housing of 50 mm',
    [outerRing, { ...standingHousing, diameter: '50 H7' }],
    { ...heldStandingHousing, 'outer-goes-in': 'fails housing-too-small' },
  ],
  [
    'the trap of the worn journal: the ring slides on by hand, turns and creeps',
    [innerRing, { ...turningJournal, diameter: '24.97 ±0.01 mm' }],
    { ...heldTurningJournal, 'inner-turning': 'fails ring-creeps-on-journal' },
  ],
  [
    'a hub that turns, machined as if it stood',
    [outerRing, { ...turningHousing, diameter: '52.02 ±0.01 mm' }],
    { ...heldTurningHousing, 'outer-turning': 'fails ring-creeps-in-housing' },
  ],
  [
    'a stub axle worn by a tenth',
    [innerRing, { ...standingJournal, diameter: '24.90 ±0.01 mm' }],
    { ...heldStandingJournal, 'inner-standing': 'fails loose-on-journal' },
  ],
  [
    'an outside diameter of 52 mm in a housing of 55 mm',
    [outerRing, { ...standingHousing, diameter: '55 H7' }],
    { ...heldStandingHousing, 'outer-standing': 'fails loose-in-housing' },
  ],
  [
    'a bearing of the same diameters and another width',
    [{ ...innerRing, width: '18 mm' }, turningJournal],
    { ...heldTurningJournal, 'equal-width': 'fails not-equal' },
  ],
  [
    'a tapered bearing of another assembled width',
    [
      { ...cone, 'assembled-width': '19.25 mm' },
      { ...stubAxle, 'assembled-width': '16.25 mm' },
    ],
    { ...heldStubAxle, 'equal-assembled-width': 'fails not-equal' },
  ],
  [
    'a bearing with built-in preload where a nut adjusts: it is crushed or loose',
    [{ ...cone, preload: 'built-in' }, stubAxle],
    { ...heldStubAxle, 'equal-preload': 'fails not-equal' },
  ],
  [
    'a bearing of C3 where the maker allows no other than CN',
    [
      { ...innerRing, 'clearance-class': 'c3' },
      { ...turningJournal, 'other-class': 'none' },
    ],
    { ...heldTurningJournal, 'other-class': 'fails other-clearance-class' },
  ],
  [
    'a class that there is not',
    [
      { ...innerRing, 'clearance-class': 'loose' },
      { ...turningJournal, 'clearance-class': 'loose' },
    ],
    { ...heldTurningJournal, 'known-class': 'fails no-such-class' },
  ],
  [
    'an open bearing where nothing else seals',
    [{ ...innerRing, seals: 'none' }, turningJournal],
    { ...heldTurningJournal, 'equal-seals': 'fails not-equal' },
  ],
  [
    'a ring whose corner rests on the fillet',
    [
      { ...innerRing, chamfer: '0.6 ±0.1 mm' },
      { ...turningJournal, fillet: '1.5 ±0.1 mm' },
    ],
    { ...heldTurningJournal, corner: 'fails ring-does-not-seat' },
  ],
];

export const fixtures: readonly Fixture[] = rows.map(([says, faces, checks]) => ({
  says,
  faces,
  outcome: 'fails',
  checks,
}));
