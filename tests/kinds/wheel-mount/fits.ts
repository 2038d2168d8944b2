/**
 * Wheels that go on their hubs, and the two faces that the other fixtures start from.
 */

import type { Expected, Fixture } from '../fixture.js';

export const hub = {
  kind: 'wheel-mount',
  side: 'hub',
  holes: 5,
  pcd: '114.3 mm',
  spigot: '56.05 ±0.01 mm',
  seat: 'cone',
  'seat-angle': '60 deg',
  stud: '12 mm',
  'stud-length': '28 mm',
} as const;

export const wheel = {
  kind: 'wheel-mount',
  side: 'wheel',
  holes: 5,
  pcd: '114.3 mm',
  bore: '56.10 ±0.01 mm',
  seat: 'cone',
  'seat-angle': '60 deg',
  'stud-hole': '13.0 mm',
  'seat-thickness': '9 mm',
} as const;

const common: Expected = {
  'equal-holes': 'holds',
  pcd: 'holds',
  bore: 'holds',
  'equal-seat': 'holds',
  'known-seat': 'holds',
  'stud-hole': 'holds',
  engagement: 'holds',
};

export const held: Expected = { ...common, centring: 'holds', 'equal-seat-angle': 'holds' };

export const heldBall: Expected = { ...common, centring: 'holds', 'equal-seat-radius': 'holds' };

export const heldFlat: Expected = { ...common, 'flat-seat-centring': 'holds' };

const { pcd: _, ...drilledTwice } = hub;

export const fixtures: readonly Fixture[] = [
  {
    says: 'five cones on 114.3, centred by the hub',
    faces: [hub, wheel],
    outcome: 'holds',
    checks: held,
  },
  {
    says: '4.5 in and 114.3 mm are one pitch circle',
    source: 'an inch is 25.4 mm: arithmetic',
    faces: [{ ...hub, pcd: '4.5 in' }, wheel],
    outcome: 'holds',
    checks: held,
  },
  {
    says: 'a hub that is drilled for two pitch circles takes a wheel of either',
    faces: [{ ...drilledTwice, alternatives: [{ pcd: '100 mm' }, { pcd: '114.3 mm' }] }, wheel],
    outcome: 'holds',
    checks: held,
  },
  {
    says: 'ball seats of one radius',
    faces: [
      { ...hub, seat: 'ball', 'seat-radius': '12 mm' },
      { ...wheel, seat: 'ball', 'seat-radius': '12 mm' },
    ],
    outcome: 'holds',
    checks: heldBall,
  },
  {
    says: 'flat seats with the wheel centred by the hub',
    faces: [
      { ...hub, seat: 'flat' },
      { ...wheel, seat: 'flat' },
    ],
    outcome: 'holds',
    checks: heldFlat,
  },
  {
    says: 'everything recorded, nuts too',
    faces: [
      { ...hub, thread: 'M12x1.5' },
      { ...wheel, thread: 'M12x1.5' },
    ],
    outcome: 'holds',
    checks: { ...held, 'equal-thread': 'holds' },
  },
  {
    says: 'a hub without a spigot leaves the centring to the nuts, with a caution',
    faces: [{ ...hub, spigot: '0 ±0 mm' }, wheel],
    outcome: 'holds',
    checks: { ...held, centring: 'fails needs-centring-ring' },
  },
  {
    says: 'a bore of 56.1 on a spigot of 54.1 passes, and needs a centring ring',
    source: 'common practice, no source; from memory',
    faces: [
      { ...hub, spigot: '54.1 mm' },
      { ...wheel, bore: '56.1 mm' },
    ],
    outcome: 'holds',
    checks: { ...held, centring: 'fails needs-centring-ring' },
  },
];
