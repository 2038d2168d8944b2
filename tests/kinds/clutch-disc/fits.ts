/**
 * Discs that suit their plates, and the faces that the other fixtures start from.
 */

import { type Expected, type Fixture, without } from '../fixture.js';

export const toFlywheel = {
  kind: 'clutch-disc',
  side: 'disc',
  'lining-outer': '228.0 ±0.2 mm',
  'lining-inner': '150.0 ±0.2 mm',
  thickness: '8.3 ±0.1 mm',
  protrusion: '6.0 ±0.1 mm',
  'damper-diameter': '118.0 ±0.2 mm',
} as const;

export const flywheel = {
  kind: 'clutch-disc',
  side: 'plate',
  plate: 'flywheel',
  'friction-outer': '240.0 ±0.2 mm',
  'friction-inner': '148.0 ±0.2 mm',
  room: '12.0 ±0.1 mm',
  opening: '140.0 ±0.2 mm',
} as const;

/** The other side of the same disc: there the damper stands out further. */
export const toCover = { ...toFlywheel, protrusion: '18.0 ±0.1 mm' } as const;

export const pressurePlate = {
  kind: 'clutch-disc',
  side: 'plate',
  plate: 'pressure-plate',
  'friction-outer': '231.0 ±0.2 mm',
  'friction-inner': '147.0 ±0.2 mm',
  thickness: '8.3 ±0.1 mm',
  room: '24.0 ±0.1 mm',
  opening: '144.0 ±0.2 mm',
} as const;

const common: Expected = {
  'known-plate': 'holds',
  'lining-inside': 'holds',
  protrusion: 'holds',
  'protrusion-worn': 'holds',
  opening: 'holds',
};

export const heldFlywheel: Expected = { ...common, 'lining-on-flywheel': 'holds' };

export const heldCover: Expected = {
  ...common,
  'lining-on-pressure-plate': 'holds',
  'smaller-lining': 'holds',
  thickness: 'holds',
};

export const fixtures: readonly Fixture[] = [
  {
    says: 'a lining of 228 x 150 on a flywheel of 240',
    faces: [toFlywheel, flywheel],
    outcome: 'holds',
    checks: heldFlywheel,
  },
  {
    says: 'the other side of it on the pressure plate, with the long side of the damper',
    faces: [toCover, pressurePlate],
    outcome: 'holds',
    checks: heldCover,
  },
  {
    says: 'a disc of 215 in a cover for 228 goes in and carries less: a caution',
    faces: [{ ...toCover, 'lining-outer': '215.0 ±0.2 mm' }, pressurePlate],
    outcome: 'holds',
    checks: { ...heldCover, 'smaller-lining': 'fails plate-for-larger-disc' },
  },
  {
    says: 'a hub that clears the crankshaft bolts by 0.8 mm: a caution for when it is worn',
    faces: [{ ...toFlywheel, protrusion: '11.2 ±0.1 mm' }, flywheel],
    outcome: 'holds',
    checks: { ...heldFlywheel, 'protrusion-worn': 'fails hub-touches-when-worn' },
  },
  {
    says: 'the flywheel does not mind the thickness of the disc',
    faces: [without(toFlywheel, 'thickness'), flywheel],
    outcome: 'holds',
    checks: heldFlywheel,
  },
];
