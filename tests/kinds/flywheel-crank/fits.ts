/**
 * Flywheels that go on their crankshafts, and the faces that the other fixtures start from.
 */

import type { Expected, Fixture } from '../fixture.js';

export const crankshaft = {
  kind: 'flywheel-crank',
  side: 'crankshaft',
  holes: 8,
  pcd: '75 mm',
  spigot: '52 h6',
  'bolt-diameter': '12 mm',
  position: 'none',
} as const;

export const flywheel = {
  kind: 'flywheel-crank',
  side: 'flywheel',
  holes: 8,
  pcd: '75 mm',
  bore: '52 H7',
  'bolt-hole': '12.5 ±0.1 mm',
  position: 'none',
} as const;

export const offsetCrankshaft = {
  ...crankshaft,
  position: 'offset-hole',
  'odd-distance': '31.0 ±0.05 mm',
} as const;

export const offsetFlywheel = {
  ...flywheel,
  position: 'offset-hole',
  'odd-distance': '31.0 ±0.05 mm',
} as const;

export const dowelCrankshaft = {
  ...crankshaft,
  position: 'dowel',
  'odd-distance': '14.0 ±0.05 mm',
  dowel: '8 h6',
} as const;

export const dowelFlywheel = {
  ...flywheel,
  position: 'dowel',
  'odd-distance': '14.0 ±0.05 mm',
  'dowel-hole': '8 H7',
} as const;

export const common: Expected = {
  'equal-holes': 'holds',
  pcd: 'holds',
  register: 'holds',
  'bolt-hole': 'holds',
  'bolt-play': 'holds',
  'bolt-hole-width': 'holds',
  'equal-position': 'holds',
  'known-position': 'holds',
};

export const held: Expected = { ...common, 'position-free': 'holds' };

export const heldOffset: Expected = { ...common, 'odd-hole': 'holds' };

export const heldDowel: Expected = { ...heldOffset, dowel: 'holds' };

const { 'equal-position': _, ...withoutPosition } = held;

export const fixtures: readonly Fixture[] = [
  {
    says: 'eight M12 on 75 mm, register 52 H7/h6',
    source: 'ISO 286-2: 52 H7 is +30/0 and 52 h6 is 0/-19 thousandths, so 0 to 0.049 mm of play',
    faces: [crankshaft, flywheel],
    outcome: 'holds',
    checks: held,
  },
  {
    says: 'one hole out of place on both, in the same place',
    faces: [offsetCrankshaft, offsetFlywheel],
    outcome: 'holds',
    checks: heldOffset,
  },
  {
    says: 'a dowel in the crankshaft and the hole for it',
    faces: [dowelCrankshaft, dowelFlywheel],
    outcome: 'holds',
    checks: heldDowel,
  },
  {
    says: 'a hole for a dowel that the crankshaft has not: it goes on, with a caution',
    faces: [crankshaft, dowelFlywheel],
    outcome: 'holds',
    checks: { ...withoutPosition, 'position-free': 'fails position-not-fixed' },
  },
  {
    says: 'two dowels on both, which only their name tells: a caution',
    faces: [
      { ...crankshaft, position: 'two-dowels' },
      { ...flywheel, position: 'two-dowels' },
    ],
    outcome: 'holds',
    checks: { ...common, 'known-position': 'fails other-position' },
  },
  {
    says: 'the bolts that come with the flywheel, and the height that the clutch is set up for',
    faces: [
      { ...crankshaft, bolt: 'm12x1.25', 'friction-height': '32.0 ±0.1 mm' },
      { ...flywheel, bolt: 'm12x1.25', 'friction-height': '32.5 ±0.1 mm' },
    ],
    outcome: 'holds',
    checks: { ...held, 'equal-bolt': 'holds', 'friction-height': 'holds' },
  },
  {
    says: 'a higher flywheel goes on and moves the release bearing: a caution',
    faces: [
      { ...crankshaft, 'friction-height': '32.0 ±0.1 mm' },
      { ...flywheel, 'friction-height': '35.0 ±0.1 mm' },
    ],
    outcome: 'holds',
    checks: { ...held, 'friction-height': 'fails moves-release-bearing' },
  },
  {
    says: 'holes for M12 on bolts of M10: they go through, with a caution',
    faces: [{ ...crankshaft, 'bolt-diameter': '10 mm' }, flywheel],
    outcome: 'holds',
    checks: { ...held, 'bolt-hole-width': 'fails holes-for-larger-bolts' },
  },
];
