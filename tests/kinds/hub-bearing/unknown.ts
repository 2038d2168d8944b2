/**
 * What nobody recorded keeps a bearing open and is named.
 */

import { type Expected, type Fixture, without } from '../fixture.js';
import {
  heldStandingHousing,
  heldTurningJournal,
  innerRing,
  outerRing,
  standingHousing,
  turningJournal,
} from './fits.js';

type Row = readonly [says: string, faces: Fixture['faces'], missing: string, checks: Expected];

const OPEN = 'open not-recorded';

const rows: readonly Row[] = [
  [
    'the journal',
    [innerRing, without(turningJournal, 'diameter')],
    'right.diameter',
    { ...heldTurningJournal, 'inner-goes-on': OPEN, 'inner-turning': OPEN },
  ],
  [
    'the width',
    [without(innerRing, 'width'), turningJournal],
    'left.width',
    { ...heldTurningJournal, 'equal-width': OPEN },
  ],
  [
    'how preload is set',
    [innerRing, without(turningJournal, 'preload')],
    'right.preload',
    { ...heldTurningJournal, 'equal-preload': OPEN, 'known-preload': OPEN },
  ],
  [
    'whether the outer ring turns: the fit for a standing one says too little',
    [outerRing, without(standingHousing, 'motion')],
    'right.motion',
    { ...heldStandingHousing, 'known-motion': OPEN, 'outer-turning': 'open may-not-apply' },
  ],
];

export const fixtures: readonly Fixture[] = [
  ...rows.map(
    ([says, faces, missing, checks]): Fixture => ({
      says,
      faces,
      outcome: 'open',
      checks,
      missing: [missing],
    }),
  ),
  {
    says: 'the trap of the C3: same size, and nobody knows whether the maker allows it',
    faces: [{ ...innerRing, 'clearance-class': 'c3' }, turningJournal],
    outcome: 'open',
    checks: { ...heldTurningJournal, 'other-class': OPEN },
    missing: ['right.other-class'],
  },
  {
    says: 'the internal clearance of a bearing of the right size, and what else would do',
    faces: [without(innerRing, 'clearance-class'), turningJournal],
    outcome: 'open',
    checks: { ...heldTurningJournal, 'other-class': OPEN },
    missing: ['left.clearance-class', 'right.other-class'],
  },
];
