/**
 * What nobody recorded keeps a cover open and is named.
 */

import { type Expected, type Fixture, without } from '../fixture.js';
import {
  cover,
  fittedCover,
  fittedFlywheel,
  flywheel,
  held,
  heldFitted,
  heldRegister,
  heldStepped,
  registerCover,
  registerFlywheel,
  steppedCover,
  steppedFlywheel,
} from './fits.js';

type Row = readonly [says: string, faces: Fixture['faces'], missing: string, checks: Expected];

const OPEN = 'open not-recorded';

const rows: readonly Row[] = [
  [
    'the number of bolts',
    [flywheel, without(cover, 'holes')],
    'right.holes',
    { ...held, 'equal-holes': OPEN },
  ],
  [
    'the pitch circle',
    [without(flywheel, 'pcd'), cover],
    'left.pcd',
    { ...held, pcd: OPEN, 'bolt-play': OPEN },
  ],
  [
    'how the holes are spaced',
    [flywheel, without(cover, 'hole-distance')],
    'right.hole-distance',
    { ...held, 'hole-distance': OPEN },
  ],
  [
    'the bolt holes, where fitted bolts centre',
    [fittedFlywheel, without(fittedCover, 'bolt-hole')],
    'right.bolt-hole',
    { ...heldFitted, 'bolt-hole': OPEN, 'bolt-play': OPEN, 'fitted-bolts': OPEN },
  ],
  [
    'the number of dowels: that there are some says too little',
    [flywheel, without(cover, 'dowels')],
    'right.dowels',
    { ...held, 'equal-dowels': OPEN },
  ],
  [
    'the pitch circle of the dowels',
    [flywheel, without(cover, 'dowel-pcd')],
    'right.dowel-pcd',
    { ...held, 'dowel-pcd': OPEN },
  ],
  [
    'the diameter of the dowels',
    [without(flywheel, 'dowel'), cover],
    'left.dowel',
    { ...held, dowel: OPEN },
  ],
  [
    'the register',
    [registerFlywheel, without(registerCover, 'register')],
    'right.register',
    { ...heldRegister, register: OPEN },
  ],
  [
    'the step: a stepped seat alone says too little',
    [without(steppedFlywheel, 'step'), steppedCover],
    'left.step',
    { ...heldStepped, step: OPEN },
  ],
  [
    'the friction face',
    [without(flywheel, 'friction-outer'), cover],
    'left.friction-outer',
    { ...held, 'disc-room': OPEN },
  ],
  [
    'the disc that the cover is made for',
    [flywheel, without(cover, 'disc-outer')],
    'right.disc-outer',
    { ...held, 'disc-room': OPEN },
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
    says: 'the seat of the flywheel, and with it the step',
    faces: [without(flywheel, 'seat'), steppedCover],
    outcome: 'open',
    checks: { ...heldStepped, 'equal-seat': OPEN, 'known-seat': OPEN, step: OPEN },
    missing: ['left.seat', 'left.step'],
  },
  {
    says: 'nobody asks a cover for dowels that is centred by its rim',
    faces: [registerFlywheel, registerCover],
    outcome: 'holds',
    checks: heldRegister,
  },
];
