/**
 * Just inside, exactly on and just outside each limit of a ring on its seat.
 */

import type { InterfaceRecord } from '../../../src/domain/catalogue/document.js';
import type { Outcome } from '../../../src/domain/check/state.js';
import type { Expected, Fixture } from '../fixture.js';
import {
  cone,
  heldKnuckle,
  heldStandingHousing,
  heldStandingJournal,
  heldStubAxle,
  heldTurningHousing,
  heldTurningJournal,
  innerRing,
  knuckle,
  outerRing,
  pressedRing,
  standingHousing,
  standingJournal,
  stubAxle,
  turningHousing,
  turningJournal,
} from './fits.js';

interface Limit {
  readonly says: string;
  readonly pair: readonly [InterfaceRecord, InterfaceRecord];
  readonly held: Expected;
  /** The exact size of the ring in millimetres. */
  readonly ring: string;
  readonly check: string;
  /** Sizes of the seat, with what becomes of the check. */
  readonly seats: readonly (readonly [string, string])[];
  readonly isCaution?: true;
}

const limits: readonly Limit[] = [
  {
    says: 'pressed on a turning journal',
    pair: [innerRing, turningJournal],
    held: heldTurningJournal,
    ring: '25',
    check: 'inner-goes-on',
    seats: [
      ['25.099', 'holds'],
      ['25.1', 'holds'],
      ['25.101', 'fails journal-too-large'],
    ],
  },
  {
    says: 'play on a turning journal',
    pair: [innerRing, turningJournal],
    held: heldTurningJournal,
    ring: '25',
    check: 'inner-turning',
    seats: [
      ['24.996', 'holds'],
      ['24.995', 'holds'],
      ['24.994', 'fails ring-creeps-on-journal'],
    ],
  },
  {
    says: 'play on a standing journal',
    pair: [innerRing, standingJournal],
    held: heldStandingJournal,
    ring: '25',
    check: 'inner-standing',
    seats: [
      ['24.951', 'holds'],
      ['24.95', 'holds'],
      ['24.949', 'fails loose-on-journal'],
    ],
  },
  {
    says: 'pressed on a journal that must let it slide',
    pair: [cone, stubAxle],
    held: heldStubAxle,
    ring: '25',
    check: 'inner-slides',
    seats: [
      ['25.029', 'holds'],
      ['25.03', 'holds'],
      ['25.031', 'fails cannot-be-adjusted'],
    ],
    isCaution: true,
  },
  {
    says: 'pressed into a standing housing',
    pair: [outerRing, standingHousing],
    held: heldStandingHousing,
    ring: '52',
    check: 'outer-goes-in',
    seats: [
      ['51.901', 'holds'],
      ['51.9', 'holds'],
      ['51.899', 'fails housing-too-small'],
    ],
  },
  {
    says: 'play in a standing housing',
    pair: [outerRing, standingHousing],
    held: heldStandingHousing,
    ring: '52',
    check: 'outer-standing',
    seats: [
      ['52.049', 'holds'],
      ['52.05', 'holds'],
      ['52.051', 'fails loose-in-housing'],
    ],
  },
  {
    says: 'play in a turning housing',
    pair: [outerRing, turningHousing],
    held: heldTurningHousing,
    ring: '52',
    check: 'outer-turning',
    seats: [
      ['52.004', 'holds'],
      ['52.005', 'holds'],
      ['52.006', 'fails ring-creeps-in-housing'],
    ],
  },
  {
    says: 'play in a knuckle with built-in preload',
    pair: [pressedRing, knuckle],
    held: heldKnuckle,
    ring: '72',
    check: 'outer-pressed',
    seats: [
      ['72.004', 'holds'],
      ['72.005', 'holds'],
      ['72.006', 'fails preload-wants-press-fit'],
    ],
    isCaution: true,
  },
];

function corner(fillet: string, verdict: string): Fixture {
  return {
    says: `corner of 1 mm on a fillet: ${fillet} mm`,
    faces: [
      { ...innerRing, chamfer: '1 ±0 mm' },
      { ...turningJournal, fillet: `${fillet} ±0 mm` },
    ],
    outcome: verdict.split(' ')[0] as Outcome,
    checks: { ...heldTurningJournal, corner: verdict },
  };
}

export const fixtures: readonly Fixture[] = [
  ...limits.flatMap(({ says, pair, held, ring, check, seats, isCaution }) =>
    seats.map(([size, verdict]): Fixture => {
      const [left, right] = pair;
      return {
        says: `${ring} mm ${says}: ${size} mm`,
        faces: [
          { ...left, diameter: `${ring} ±0 mm` },
          { ...right, diameter: `${size} ±0 mm` },
        ],
        outcome: isCaution === true ? 'holds' : (verdict.split(' ')[0] as Outcome),
        checks: { ...held, [check]: verdict },
      };
    }),
  ),
  corner('0.999', 'holds'),
  corner('1', 'holds'),
  corner('1.001', 'fails ring-does-not-seat'),
  {
    says: 'a turning journal read with a vernier caliper, which cannot tell a fit',
    faces: [innerRing, { ...turningJournal, diameter: { is: '25.00 mm', tool: 'caliper' } }],
    outcome: 'open',
    checks: { ...heldTurningJournal, 'inner-turning': 'open not-precise-enough' },
  },
];
