/**
 * One wheel that breaks every rule of its hub, mended one step a row, until it fits.
 */

import type { Expected, Fixture } from '../fixture.js';

const hub = {
  kind: 'wheel-mount',
  side: 'hub',
  holes: 5,
  pcd: '114.3 mm',
  spigot: '56.05 ±0.01 mm',
  seat: 'cone',
  'seat-angle': '60 deg',
  thread: 'M12x1.25',
  stud: '12 mm',
  'stud-length': '28 ±0.1 mm',
};

const wrong = {
  kind: 'wheel-mount',
  side: 'wheel',
  holes: 4,
  pcd: '112 mm',
  bore: '54.10 ±0.01 mm',
  seat: 'cone',
  'seat-angle': '90 deg',
  thread: 'M12x1.5',
  'stud-hole': '11.5 mm',
  'seat-thickness': '18 ±0.1 mm',
};

const broken: Expected = {
  'equal-holes': 'fails not-equal',
  pcd: 'fails pcd-differs',
  bore: 'fails bore-too-small',
  centring: 'holds',
  'equal-seat': 'holds',
  'equal-seat-angle': 'fails not-equal',
  'known-seat': 'holds',
  'equal-thread': 'fails not-equal',
  'stud-hole': 'fails stud-hole-too-small',
  engagement: 'fails too-little-thread',
};

const steps: readonly (readonly [string, object, string])[] = [
  ['five holes', { holes: 5 }, 'equal-holes'],
  ['then a pitch circle of 114.3', { pcd: '114.3 mm' }, 'pcd'],
  ['then a bore that goes over the spigot', { bore: '56.10 ±0.01 mm' }, 'bore'],
  ['then cones of 60 degrees', { 'seat-angle': '60 deg' }, 'equal-seat-angle'],
  ['then nuts of the right pitch', { thread: 'M12x1.25' }, 'equal-thread'],
  ['then holes for the studs', { 'stud-hole': '13 mm' }, 'stud-hole'],
  ['then less metal under the seat', { 'seat-thickness': '9 ±0.1 mm' }, 'engagement'],
];

function ladder(): Fixture[] {
  const left = hub;
  let right: Fixture['faces'][1] = wrong;
  let checks = broken;
  const rows: Fixture[] = [
    { says: 'everything is wrong', faces: [left, right], outcome: 'fails', checks },
  ];
  for (const [index, [says, mend, check]] of steps.entries()) {
    right = { ...right, ...mend };
    checks = { ...checks, [check]: 'holds' };
    const outcome = index === steps.length - 1 ? 'holds' : 'fails';
    rows.push({ says, faces: [left, right], outcome, checks });
  }
  return rows;
}

export const fixtures: readonly Fixture[] = ladder();
