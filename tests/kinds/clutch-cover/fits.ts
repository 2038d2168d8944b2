/**
 * Covers that go on their flywheels, and the faces that the other fixtures start from.
 */

import { type Expected, type Fixture, without } from '../fixture.js';

export const flywheel = {
  kind: 'clutch-cover',
  side: 'flywheel',
  holes: 6,
  pcd: '255 mm',
  'hole-distance': '127.5 mm',
  'bolt-diameter': '8 mm',
  centring: 'dowels',
  dowels: 3,
  'dowel-pcd': '255 mm',
  dowel: '8 m6',
  seat: 'flat',
  'friction-outer': '240 ±0.5 mm',
} as const;

export const cover = {
  kind: 'clutch-cover',
  side: 'cover',
  holes: 6,
  pcd: '255 mm',
  'hole-distance': '127.5 mm',
  'bolt-hole': '8.5 ±0.1 mm',
  centring: 'dowels',
  dowels: 3,
  'dowel-pcd': '255 mm',
  'dowel-hole': '8.05 ±0.02 mm',
  seat: 'flat',
  'disc-outer': '228 mm',
} as const;

const undowelled = ['dowels', 'dowel-pcd', 'dowel', 'dowel-hole'];

export const registerFlywheel = {
  ...without(flywheel, ...undowelled),
  kind: 'clutch-cover',
  centring: 'register',
  register: '274 H8',
};

export const registerCover = {
  ...without(cover, ...undowelled),
  kind: 'clutch-cover',
  centring: 'register',
  register: '273.99 ±0.005 mm',
};

export const fittedFlywheel = {
  ...without(flywheel, ...undowelled),
  kind: 'clutch-cover',
  centring: 'bolts',
};

export const fittedCover = {
  ...without(cover, ...undowelled),
  kind: 'clutch-cover',
  centring: 'bolts',
  'bolt-hole': '8 H9',
};

export const steppedFlywheel = { ...flywheel, seat: 'stepped', step: '24.00 ±0.02 mm' } as const;

export const steppedCover = { ...cover, seat: 'stepped', step: '24.00 ±0.02 mm' } as const;

export const common: Expected = {
  'equal-holes': 'holds',
  pcd: 'holds',
  'hole-distance': 'holds',
  'bolt-hole': 'holds',
  'bolt-play': 'holds',
  'equal-centring': 'holds',
  'known-centring': 'holds',
  'equal-seat': 'holds',
  'known-seat': 'holds',
  'disc-room': 'holds',
};

export const held: Expected = {
  ...common,
  'equal-dowels': 'holds',
  'dowel-pcd': 'holds',
  dowel: 'holds',
};

export const heldRegister: Expected = { ...common, register: 'holds' };

export const heldFitted: Expected = { ...common, 'fitted-bolts': 'holds' };

export const heldStepped: Expected = { ...held, step: 'holds' };

export const fixtures: readonly Fixture[] = [
  {
    says: 'six bolts and three dowels on 255 mm, a disc of 228 on a face of 240',
    faces: [flywheel, cover],
    outcome: 'holds',
    checks: held,
  },
  {
    says: 'bolts in three pairs on both',
    faces: [
      { ...flywheel, 'hole-distance': '32 mm' },
      { ...cover, 'hole-distance': '32 mm' },
    ],
    outcome: 'holds',
    checks: held,
  },
  {
    says: 'the rim of the cover in a register',
    source: 'ISO 286-2: 274 H8 is +81/0 thousandths, so 0.005 to 0.096 mm of play',
    faces: [registerFlywheel, registerCover],
    outcome: 'holds',
    checks: heldRegister,
  },
  {
    says: 'fitted bolts of 8 mm in holes of 8 H9',
    source: 'ISO 286-2: 8 H9 is +36/0 thousandths',
    faces: [fittedFlywheel, fittedCover],
    outcome: 'holds',
    checks: heldFitted,
  },
  {
    says: 'a pot flywheel with its step',
    faces: [steppedFlywheel, steppedCover],
    outcome: 'holds',
    checks: heldStepped,
  },
  {
    says: 'bolts that come with the cover, and a lining that lies on the face inside too',
    faces: [
      { ...flywheel, bolt: 'm8', 'friction-inner': '148 ±0.5 mm' },
      { ...cover, bolt: 'm8', 'disc-inner': '150 mm' },
    ],
    outcome: 'holds',
    checks: { ...held, 'equal-bolt': 'holds', 'lining-inside': 'holds' },
  },
  {
    says: 'a centring of another form holds by its name, with a caution',
    faces: [
      { ...flywheel, centring: 'toothed-rim' },
      { ...cover, centring: 'toothed-rim' },
    ],
    outcome: 'holds',
    checks: { ...common, 'known-centring': 'fails other-centring' },
  },
];
