/**
 * What nobody recorded keeps a disc open and is named.
 */

import { type Expected, type Fixture, without } from '../fixture.js';
import { flywheel, heldCover, heldFlywheel, pressurePlate, toCover, toFlywheel } from './fits.js';

type Row = readonly [says: string, faces: Fixture['faces'], missing: string, checks: Expected];

const OPEN = 'open not-recorded';

const rows: readonly Row[] = [
  [
    'the outer diameter of the lining',
    [without(toFlywheel, 'lining-outer'), flywheel],
    'left.lining-outer',
    { ...heldFlywheel, 'lining-on-flywheel': OPEN },
  ],
  [
    'the inner diameter of the lining',
    [without(toFlywheel, 'lining-inner'), flywheel],
    'left.lining-inner',
    { ...heldFlywheel, 'lining-inside': OPEN },
  ],
  [
    'the pressure plate',
    [toCover, without(pressurePlate, 'friction-outer')],
    'right.friction-outer',
    { ...heldCover, 'lining-on-pressure-plate': OPEN, 'smaller-lining': OPEN },
  ],
  [
    'the inner diameter of the friction face',
    [toFlywheel, without(flywheel, 'friction-inner')],
    'right.friction-inner',
    { ...heldFlywheel, 'lining-inside': OPEN },
  ],
  [
    'the thickness that the cover is set up for',
    [toCover, without(pressurePlate, 'thickness')],
    'right.thickness',
    { ...heldCover, thickness: OPEN },
  ],
  [
    'how far the hub stands out',
    [without(toFlywheel, 'protrusion'), flywheel],
    'left.protrusion',
    { ...heldFlywheel, protrusion: OPEN, 'protrusion-worn': OPEN },
  ],
  [
    'the room before the crankshaft bolts',
    [toFlywheel, without(flywheel, 'room')],
    'right.room',
    { ...heldFlywheel, protrusion: OPEN, 'protrusion-worn': OPEN },
  ],
  [
    'the damper',
    [without(toFlywheel, 'damper-diameter'), flywheel],
    'left.damper-diameter',
    { ...heldFlywheel, opening: OPEN },
  ],
  [
    'the opening',
    [toFlywheel, without(flywheel, 'opening')],
    'right.opening',
    { ...heldFlywheel, opening: OPEN },
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
    says: 'which of the two plates it is, although all sizes would suit either',
    faces: [toCover, without(pressurePlate, 'plate')],
    outcome: 'open',
    checks: { ...heldCover, 'known-plate': OPEN, 'lining-on-flywheel': 'holds' },
    missing: ['right.plate'],
  },
];
