/**
 * Calipers that go on their knuckles, and the two faces that the other fixtures start from.
 */

import type { Expected, Fixture } from '../fixture.js';

/** Ears with through holes; the bolts go into the thread of the caliper's carrier. */
export const knuckle = {
  kind: 'caliper-mount',
  side: 'knuckle',
  mounting: 'axial',
  spacing: '130.0 mm',
  hole: '12.4 ±0.05 mm',
  bolt: 'M12x1.25',
  'bolt-diameter': '12 mm',
  radius: '98.0 ±0.1 mm',
  offset: '31.5 ±0.05 mm',
  'disc-diameter': '266 mm',
  'disc-thickness': '20.0 ±0.05 mm',
} as const;

export const caliper = {
  kind: 'caliper-mount',
  side: 'caliper',
  mounting: 'axial',
  spacing: '130.1 mm',
  hole: '12 ±0 mm',
  bolt: 'M12x1.25',
  'bolt-diameter': '12 mm',
  radius: '98.2 ±0.1 mm',
  offset: '31.5 ±0.05 mm',
  'disc-diameter': '266 mm',
  'thinnest-disc': '19.5 ±0.05 mm',
  'thickest-disc': '20.5 ±0.05 mm',
} as const;

export const held: Expected = {
  'equal-mounting': 'holds',
  'known-mounting': 'holds',
  'knuckle-hole': 'holds',
  'caliper-hole': 'holds',
  'knuckle-play': 'holds',
  'caliper-play': 'holds',
  spacing: 'holds',
  'equal-bolt': 'holds',
  radius: 'holds',
  offset: 'holds',
  'disc-diameter': 'holds',
  'thick-disc': 'holds',
  'thin-disc': 'holds',
};

export const fixtures: readonly Fixture[] = [
  {
    says: 'two M12 about 130 mm apart, for a disc of 266 by 20',
    faces: [knuckle, caliper],
    outcome: 'holds',
    checks: held,
  },
  {
    says: 'a radial caliper on a radial knuckle',
    faces: [
      { ...knuckle, mounting: 'radial' },
      { ...caliper, mounting: 'radial' },
    ],
    outcome: 'holds',
    checks: held,
  },
  {
    says: 'both sit behind the axle',
    faces: [
      { ...knuckle, place: 'behind' },
      { ...caliper, place: 'behind' },
    ],
    outcome: 'holds',
    checks: { ...held, 'equal-place': 'holds' },
  },
  {
    says: 'a caliper made to sit before the axle goes on behind it, with a caution to bleed',
    faces: [
      { ...knuckle, place: 'behind' },
      { ...caliper, place: 'before' },
    ],
    outcome: 'holds',
    checks: { ...held, 'equal-place': 'fails other-side-of-the-axle' },
  },
];
