/**
 * Bell-housings that go on their blocks, and the faces that the other fixtures start from.
 */

import type { Expected, Fixture } from '../fixture.js';

export const car = { kind: 'bell-housing', pattern: 'h-2', dowels: 2, dowel: '12 mm' } as const;

export const carHeld: Expected = {
  'equal-pattern': 'holds',
  'equal-dowels': 'holds',
  dowel: 'holds',
};

const { dowel: _, ...heldWithoutDowels } = carHeld;

export const full = {
  kind: 'bell-housing',
  pattern: 'sae-4',
  holes: 12,
  pcd: '381.00 mm',
  bolt: '3/8-16',
  dowels: 2,
  dowel: '12 mm',
  'dowel-spacing': '381 mm',
  pilot: '361.95 mm',
  'face-depth': '100.1 mm',
  'starter-side': 'left',
} as const;

export const held: Expected = {
  'equal-pattern': 'holds',
  'equal-holes': 'holds',
  pcd: 'holds',
  'equal-bolt': 'holds',
  'equal-dowels': 'holds',
  dowel: 'holds',
  'dowel-spacing': 'holds',
  pilot: 'holds',
  'face-depth': 'holds',
  'equal-starter-side': 'holds',
};

export const fixtures: readonly Fixture[] = [
  {
    says: "a maker's own pattern, known by its name",
    faces: [car, car],
    outcome: 'holds',
    checks: carHeld,
  },
  {
    says: 'a pattern without dowels has none to compare',
    faces: [
      { kind: 'bell-housing', pattern: 'h-3', dowels: 0 },
      { kind: 'bell-housing', pattern: 'h-3', dowels: 0 },
    ],
    outcome: 'holds',
    checks: heldWithoutDowels,
  },
  {
    says: 'size 4, with everything recorded',
    source: 'SAE J617, size 4: 361.95, 381.00, 12 holes, depth 100.1; read in a secondary copy',
    faces: [full, full],
    outcome: 'holds',
    checks: held,
  },
  {
    says: 'size 4 in inches on size 4 in millimetres',
    source: 'SAE J617, size 4: 14.250 in is 361.95 mm and 15.000 in is 381.00 mm, exactly',
    faces: [{ ...full, pcd: '15 in', pilot: '14.25 in' }, full],
    outcome: 'holds',
    checks: held,
  },
];
