/**
 * Struts that go on their knuckles, and the two faces that the other fixtures start from.
 */

import type { Expected, Fixture } from '../fixture.js';

export const strut = {
  kind: 'strut-clevis',
  side: 'strut',
  spacing: '54.0 mm',
  hole: '12.2 mm',
  bolt: 'M12x1.25',
  'bolt-diameter': '12 mm',
  gap: '32.15 ±0.05 mm',
  'upper-hole': 'round',
} as const;

export const knuckle = {
  kind: 'strut-clevis',
  side: 'knuckle',
  spacing: '54.1 mm',
  hole: '12.3 mm',
  bolt: 'M12x1.25',
  'bolt-diameter': '12 mm',
  ear: '32.00 ±0.05 mm',
} as const;

export const held: Expected = {
  'strut-hole': 'holds',
  'knuckle-hole': 'holds',
  'strut-play': 'holds',
  'knuckle-play': 'holds',
  spacing: 'holds',
  'equal-bolt': 'holds',
  'ear-goes-in': 'holds',
  'ear-play': 'holds',
  'as-made': 'holds',
  'camber-setting': 'holds',
};

const toSet = { 'camber-setting': 'fails camber-to-set' };

/** An eccentric bolt is thinner than its hole on purpose. */
const { 'strut-play': _, ...withoutStrutPlay } = held;

export const fixtures: readonly Fixture[] = [
  {
    says: 'two M12 about 54 mm apart, an ear with a tenth of play',
    source: 'play of 0 to 0.3 mm: common practice, no source',
    faces: [strut, knuckle],
    outcome: 'holds',
    checks: held,
  },
  {
    says: 'a knuckle with threaded holes: the thread stands for the hole',
    faces: [strut, { ...knuckle, spacing: '54.00 ±0.05 mm', hole: '12 ±0 mm' }],
    outcome: 'holds',
    checks: held,
  },
  {
    says: 'a slot as the works made it, with a caution to align the wheels',
    faces: [{ ...strut, 'upper-hole': 'slot' }, knuckle],
    outcome: 'holds',
    checks: { ...held, ...toSet },
  },
  {
    says: 'an eccentric bolt as the works fitted it, with the same caution, and its own play',
    faces: [{ ...strut, 'upper-hole': 'eccentric', hole: '14.2 mm' }, knuckle],
    outcome: 'holds',
    checks: { ...withoutStrutPlay, ...toSet },
  },
  {
    says: 'offset and angle recorded, and as the knuckle has them',
    faces: [
      { ...strut, offset: '48.5 mm', angle: '3 ±0.1 deg' },
      { ...knuckle, offset: '48.2 mm', angle: '3.1 ±0.1 deg' },
    ],
    outcome: 'holds',
    checks: { ...held, offset: 'holds', angle: 'holds' },
  },
  {
    says: 'a strut that stands the wheel 4 mm further out fits, with a caution',
    faces: [
      { ...strut, offset: '48 mm' },
      { ...knuckle, offset: '52 mm' },
    ],
    outcome: 'holds',
    checks: { ...held, offset: 'fails wheel-moves' },
  },
  {
    says: 'a bracket welded 2 degrees steeper fits, with a caution of camber',
    faces: [
      { ...strut, angle: '5 ±0.1 deg' },
      { ...knuckle, angle: '3 ±0.1 deg' },
    ],
    outcome: 'holds',
    checks: { ...held, angle: 'fails camber-changes' },
  },
];
