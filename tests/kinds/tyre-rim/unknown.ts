/**
 * What nobody recorded keeps a tyre open and is named.
 */

import { type Expected, type Fixture, without } from '../fixture.js';
import { held, heldSpoked, rim, spokedRim, tyre } from './fits.js';

type Row = readonly [says: string, faces: Fixture['faces'], missing: string, checks: Expected];

const OPEN = 'open not-recorded';

const rows: readonly Row[] = [
  [
    'the diameter code of the rim',
    [tyre, without(rim, 'diameter-code')],
    'right.diameter-code',
    { ...held, 'equal-diameter-code': OPEN },
  ],
  [
    'the width of the rim',
    [tyre, without(rim, 'width')],
    'right.width',
    { ...held, 'not-too-narrow': OPEN, 'not-too-wide': OPEN },
  ],
  [
    'the narrowest rim of the tyre',
    [without(tyre, 'narrowest-rim'), rim],
    'left.narrowest-rim',
    { ...held, 'not-too-narrow': OPEN },
  ],
  [
    'the widest rim of the tyre: its section width does not tell',
    [without(tyre, 'widest-rim'), rim],
    'left.widest-rim',
    { ...held, 'not-too-wide': OPEN },
  ],
  [
    'the humps of a tubeless rim',
    [tyre, without(rim, 'humps')],
    'right.humps',
    { ...held, hump: OPEN, 'second-hump': OPEN },
  ],
  [
    'whether a tubeless tyre may have a tube, on a rim that needs one',
    [tyre, spokedRim],
    'left.tube-allowed',
    { ...heldSpoked, 'tube-allowed': OPEN },
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
    says: 'whether the tyre is tubeless',
    faces: [without(tyre, 'air'), rim],
    outcome: 'open',
    checks: { ...held, 'known-tyre': OPEN, tube: OPEN },
    missing: ['left.air'],
  },
  {
    says: 'whether the rim holds air',
    faces: [{ ...tyre, 'tube-allowed': 'yes' }, without(rim, 'air')],
    outcome: 'open',
    checks: { ...held, 'known-rim': OPEN, 'tube-allowed': 'holds' },
    missing: ['right.air'],
  },
  {
    says: 'a flange that the tyre does not mind is not compared',
    faces: [tyre, { ...rim, flange: 'j' }],
    outcome: 'holds',
    checks: held,
  },
];
