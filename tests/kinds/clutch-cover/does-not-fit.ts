/**
 * Each way in which a cover does not go on a flywheel.
 */

import type { Expected, Fixture } from '../fixture.js';
import {
  common,
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

type Row = readonly [says: string, faces: Fixture['faces'], checks: Expected];

const rows: readonly Row[] = [
  [
    'six bolts and nine',
    [flywheel, { ...cover, holes: 9 }],
    { ...held, 'equal-holes': 'fails not-equal' },
  ],
  [
    'a cover of 270 on a flywheel of 255: bolts and dowels miss',
    [flywheel, { ...cover, pcd: '270 mm', 'hole-distance': '135 mm', 'dowel-pcd': '270 mm' }],
    {
      ...held,
      pcd: 'fails pcd-differs',
      'hole-distance': 'fails holes-spaced-otherwise',
      'bolt-play': 'fails bolts-do-not-enter',
      'dowel-pcd': 'fails dowel-pcd-differs',
    },
  ],
  [
    'the trap of the pairs: six bolts on 255 mm on both, spaced evenly on the flywheel only',
    [flywheel, { ...cover, 'hole-distance': '32 mm' }],
    { ...held, 'hole-distance': 'fails holes-spaced-otherwise' },
  ],
  [
    'bolts of 8 mm and holes for M6',
    [flywheel, { ...cover, 'bolt-hole': '6.6 ±0.1 mm' }],
    {
      ...held,
      'bolt-hole': 'fails bolt-hole-too-small',
      'bolt-play': 'fails bolts-do-not-enter',
    },
  ],
  [
    'bolts of M8x1 with the cover, threads of M8',
    [
      { ...flywheel, bolt: 'm8' },
      { ...cover, bolt: 'm8x1' },
    ],
    { ...held, 'equal-bolt': 'fails not-equal' },
  ],
  [
    'the trap of the forgotten dowels: every bolt goes in, and nothing centres the cover',
    [flywheel, registerCover],
    { ...common, 'equal-centring': 'fails not-equal' },
  ],
  [
    'a register for the rim, and a cover that wants dowels',
    [registerFlywheel, cover],
    { ...common, 'equal-centring': 'fails not-equal' },
  ],
  [
    'dowels in the flywheel, and a cover for fitted bolts without holes for them',
    [flywheel, fittedCover],
    { ...common, 'equal-centring': 'fails not-equal' },
  ],
  [
    'fitted bolts, and a cover whose plain holes leave the centring to dowels',
    [fittedFlywheel, cover],
    { ...common, 'equal-centring': 'fails not-equal' },
  ],
  [
    'two dowels and three holes for them',
    [{ ...flywheel, dowels: 2 }, cover],
    { ...held, 'equal-dowels': 'fails not-equal' },
  ],
  [
    'dowels of 8 mm and holes of 7 mm',
    [flywheel, { ...cover, 'dowel-hole': '7.05 ±0.02 mm' }],
    { ...held, dowel: 'fails too-small' },
  ],
  [
    'dowels of 8 mm in holes of 9 mm: they go in and centre nothing',
    [flywheel, { ...cover, 'dowel-hole': '9.05 ±0.02 mm' }],
    { ...held, dowel: 'fails too-large' },
  ],
  [
    'a rim larger than the register',
    [registerFlywheel, { ...registerCover, register: '275.00 ±0.05 mm' }],
    { ...heldRegister, register: 'fails too-small' },
  ],
  [
    'a rim that is loose in the register',
    [registerFlywheel, { ...registerCover, register: '273.00 ±0.05 mm' }],
    { ...heldRegister, register: 'fails too-large' },
  ],
  [
    'fitted bolts in holes for plain ones',
    [fittedFlywheel, { ...fittedCover, 'bolt-hole': '8.5 ±0.1 mm' }],
    { ...heldFitted, 'fitted-bolts': 'fails bolts-do-not-centre' },
  ],
  [
    'a flat cover on a pot flywheel: it does not clamp',
    [steppedFlywheel, cover],
    { ...held, 'equal-seat': 'fails not-equal' },
  ],
  [
    'a cover for a pot flywheel on a flat one',
    [flywheel, steppedCover],
    { ...held, 'equal-seat': 'fails not-equal' },
  ],
  [
    'a pot flywheel that was skimmed on the friction face only',
    [{ ...steppedFlywheel, step: '24.50 ±0.05 mm' }, steppedCover],
    { ...heldStepped, step: 'fails step-differs' },
  ],
  [
    'a seat that is neither flat nor stepped',
    [
      { ...flywheel, seat: 'conical' },
      { ...cover, seat: 'conical' },
    ],
    { ...held, 'known-seat': 'fails neither-flat-nor-stepped' },
  ],
  [
    'a disc of 240 on a face of 240',
    [flywheel, { ...cover, 'disc-outer': '240 mm' }],
    { ...held, 'disc-room': 'fails disc-overhangs' },
  ],
  [
    'a lining that reaches further in than the face',
    [
      { ...flywheel, 'friction-inner': '160 ±0.5 mm' },
      { ...cover, 'disc-inner': '150 mm' },
    ],
    { ...held, 'lining-inside': 'fails lining-overhangs-inside' },
  ],
];

export const fixtures: readonly Fixture[] = rows.map(([says, faces, checks]) => ({
  says,
  faces,
  outcome: 'fails',
  checks,
}));
