/**
 * Crosses and yokes that go together, and the faces that the other fixtures start from.
 */

import type { Expected, Fixture } from '../fixture.js';

export const cross = {
  kind: 'universal-joint',
  side: 'cross',
  retention: 'outside-ring',
  cap: '27.00 ±0.01 mm',
  span: '74.50 ±0.01 mm',
} as const;

export const yoke = {
  kind: 'universal-joint',
  side: 'yoke',
  retention: 'outside-ring',
  bore: '26.99 ±0.01 mm',
  span: '74.53 ±0.01 mm',
} as const;

/** Caps with ears of their own, bolted to a yoke without bores. */
export const wingedCross = {
  kind: 'universal-joint',
  side: 'cross',
  retention: 'wing',
  span: '90.00 ±0.01 mm',
  'hole-spacing': '42.9 mm',
  bolt: 'M8x1.25',
} as const;
export const wingedYoke = { ...wingedCross, side: 'yoke', span: '90.03 ±0.01 mm' } as const;

export const held: Expected = {
  'equal-retention': 'holds',
  'known-retention': 'holds',
  'cap-goes-in': 'holds',
  'cap-sits': 'holds',
  span: 'holds',
  'end-play': 'holds',
};

export const heldWings: Expected = {
  'equal-retention': 'holds',
  'known-retention': 'holds',
  span: 'holds',
  'end-play': 'holds',
  'hole-spacing': 'holds',
  'equal-bolt': 'holds',
};

function heldBy(retention: string): Fixture['faces'] {
  return [
    { ...cross, retention },
    { ...yoke, retention },
  ];
}

export const fixtures: readonly Fixture[] = [
  {
    says: 'caps of 27 mm, rings outside',
    faces: [cross, yoke],
    outcome: 'holds',
    checks: held,
  },
  {
    says: 'rings inside',
    faces: heldBy('inside-ring'),
    outcome: 'holds',
    checks: held,
  },
  {
    says: 'straps',
    faces: heldBy('strap'),
    outcome: 'holds',
    checks: held,
  },
  {
    says: 'caps of 1 1/16 in go into a bore of 27 mm, where the span agrees',
    faces: [{ ...cross, cap: '1.0625 ±0.0002 in' }, yoke],
    outcome: 'holds',
    checks: held,
  },
  {
    says: 'winged caps',
    faces: [wingedCross, wingedYoke],
    outcome: 'holds',
    checks: heldWings,
  },
  {
    says: 'play that thicker rings take up, which somebody must choose',
    faces: [cross, { ...yoke, span: '74.70 ±0.02 mm' }],
    outcome: 'holds',
    checks: { ...held, 'end-play': 'fails needs-thicker-rings' },
  },
  {
    says: 'caps that the works staked: compared by size, and that is said',
    faces: heldBy('staked'),
    outcome: 'holds',
    checks: { ...held, 'known-retention': 'fails other-retention' },
  },
  {
    says: 'U-bolts',
    faces: heldBy('u-bolt'),
    outcome: 'holds',
    checks: held,
  },
];
