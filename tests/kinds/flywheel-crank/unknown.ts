/**
 * What nobody recorded keeps a flywheel open and is named.
 */

import { type Expected, type Fixture, without } from '../fixture.js';
import {
  crankshaft,
  dowelCrankshaft,
  dowelFlywheel,
  flywheel,
  held,
  heldDowel,
  heldOffset,
  offsetCrankshaft,
  offsetFlywheel,
} from './fits.js';

type Row = readonly [says: string, pair: Fixture['faces'], missing: string, checks: Expected];

const OPEN = 'open not-recorded';

const rows: readonly Row[] = [
  [
    'the number of bolts',
    [crankshaft, without(flywheel, 'holes')],
    'right.holes',
    { ...held, 'equal-holes': OPEN },
  ],
  [
    'the pitch circle of the crankshaft',
    [without(crankshaft, 'pcd'), flywheel],
    'left.pcd',
    { ...held, pcd: OPEN, 'bolt-play': OPEN },
  ],
  [
    'the spigot',
    [without(crankshaft, 'spigot'), flywheel],
    'left.spigot',
    { ...held, register: OPEN },
  ],
  ['the bore', [crankshaft, without(flywheel, 'bore')], 'right.bore', { ...held, register: OPEN }],
  [
    'the bolt holes',
    [crankshaft, without(flywheel, 'bolt-hole')],
    'right.bolt-hole',
    { ...held, 'bolt-hole': OPEN, 'bolt-play': OPEN, 'bolt-hole-width': OPEN },
  ],
  [
    'where the odd hole is: two odd holes alone say too little',
    [offsetCrankshaft, without(offsetFlywheel, 'odd-distance')],
    'right.odd-distance',
    { ...heldOffset, 'odd-hole': OPEN },
  ],
  [
    'the diameter of the dowel',
    [without(dowelCrankshaft, 'dowel'), dowelFlywheel],
    'left.dowel',
    { ...heldDowel, dowel: OPEN },
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
    says: 'the position of the flywheel',
    faces: [offsetCrankshaft, without(flywheel, 'position')],
    outcome: 'open',
    checks: {
      ...heldOffset,
      'equal-position': OPEN,
      'odd-hole': OPEN,
    },
    missing: ['right.position', 'right.odd-distance'],
  },
  {
    says: 'the thread of the bolts is not compared where the flywheel comes without them',
    faces: [{ ...crankshaft, bolt: 'm12x1.25' }, flywheel],
    outcome: 'holds',
    checks: held,
  },
  {
    says: 'nor the height that nobody set the clutch up for',
    faces: [crankshaft, { ...flywheel, 'friction-height': '32.0 mm' }],
    outcome: 'holds',
    checks: held,
  },
];
