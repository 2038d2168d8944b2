/**
 * Each way in which a disc does not suit a plate.
 */

import type { Expected, Fixture } from '../fixture.js';
import { flywheel, heldCover, heldFlywheel, pressurePlate, toCover, toFlywheel } from './fits.js';

type Row = readonly [says: string, faces: Fixture['faces'], checks: Expected];

const { 'lining-on-flywheel': _, ...heldAnywhere } = heldFlywheel;

const touches = {
  protrusion: 'fails hub-touches',
  'protrusion-worn': 'fails hub-touches-when-worn',
};

const rows: readonly Row[] = [
  [
    'the trap of the disc turned round: the damper runs on the crankshaft bolts',
    [toCover, flywheel],
    { ...heldFlywheel, ...touches },
  ],
  [
    'bolt heads that stand 2 mm above the friction face, and a hub level with the lining',
    [
      { ...toFlywheel, protrusion: '0 ±0.1 mm' },
      { ...flywheel, room: '-2.0 ±0.1 mm' },
    ],
    { ...heldFlywheel, ...touches },
  ],
  [
    'a hub that reaches the fingers',
    [{ ...toCover, protrusion: '26.0 ±0.1 mm' }, pressurePlate],
    { ...heldCover, ...touches },
  ],
  [
    'a damper wider than the opening of the flywheel: the lining never touches',
    [{ ...toFlywheel, 'damper-diameter': '145.0 ±0.2 mm' }, flywheel],
    { ...heldFlywheel, opening: 'fails damper-touches-edge' },
  ],
  [
    'a disc of 240 on a flywheel of 240',
    [{ ...toFlywheel, 'lining-outer': '240.0 ±0.2 mm' }, flywheel],
    { ...heldFlywheel, 'lining-on-flywheel': 'fails lining-overhangs' },
  ],
  [
    'the common mix gone wrong: a disc of 240 in a cover for 228',
    [{ ...toCover, 'lining-outer': '240.0 ±0.2 mm' }, pressurePlate],
    { ...heldCover, 'lining-on-pressure-plate': 'fails lining-overhangs-pressure-plate' },
  ],
  [
    'a lining that reaches further in than the face',
    [{ ...toFlywheel, 'lining-inner': '140.0 ±0.2 mm' }, flywheel],
    { ...heldFlywheel, 'lining-inside': 'fails lining-overhangs-inside' },
  ],
  [
    'a disc of 9.3 mm in a cover that is set up for 8.3 mm',
    [{ ...toCover, thickness: '9.3 ±0.1 mm' }, pressurePlate],
    { ...heldCover, thickness: 'fails thickness-differs' },
  ],
  [
    'a plate that is neither of the two',
    [toFlywheel, { ...flywheel, plate: 'middle-plate' }],
    { ...heldAnywhere, 'known-plate': 'fails neither-plate' },
  ],
];

export const fixtures: readonly Fixture[] = rows.map(([says, faces, checks]) => ({
  says,
  faces,
  outcome: 'fails',
  checks,
}));
