/**
 * Each way in which a caliper does not go on a knuckle, one at a time.
 */

import type { Fixture } from '../fixture.js';
import { caliper, held, knuckle } from './fits.js';

export const fixtures: readonly Fixture[] = [
  {
    says: 'a caliper for 142 mm on a knuckle of 130',
    faces: [knuckle, { ...caliper, spacing: '142.0 mm' }],
    outcome: 'fails',
    checks: { ...held, spacing: 'fails spacing-differs' },
  },
  {
    says: 'the right spacing 8 mm too far from the hub axis: the pads stand over the rim',
    faces: [{ ...knuckle, radius: '106.0 ±0.1 mm' }, caliper],
    outcome: 'fails',
    checks: { ...held, radius: 'fails radius-differs' },
  },
  {
    says: 'the right spacing and radius, and the disc 2 mm out of the middle',
    faces: [{ ...knuckle, offset: '33.5 ±0.05 mm' }, caliper],
    outcome: 'fails',
    checks: { ...held, offset: 'fails disc-not-centred' },
  },
  {
    says: 'a radial caliper on ears for an axial one',
    faces: [knuckle, { ...caliper, mounting: 'radial' }],
    outcome: 'fails',
    checks: { ...held, 'equal-mounting': 'fails not-equal' },
  },
  {
    says: 'a caliper cast in one piece with its knuckle is another thing',
    faces: [
      { ...knuckle, mounting: 'cast-on' },
      { ...caliper, mounting: 'cast-on' },
    ],
    outcome: 'fails',
    checks: { ...held, 'known-mounting': 'fails neither-radial-nor-axial' },
  },
  {
    says: 'bolts of 14 in ears drilled for 12',
    faces: [knuckle, { ...caliper, hole: '14 ±0 mm', bolt: 'M14x1.5', 'bolt-diameter': '14 mm' }],
    outcome: 'fails',
    checks: {
      ...held,
      'knuckle-hole': 'fails knuckle-hole-too-small',
      'caliper-play': 'fails caliper-hole-too-wide',
      'equal-bolt': 'fails not-equal',
    },
  },
  {
    says: 'bolts of 12 in a carrier with threads of 10',
    faces: [knuckle, { ...caliper, hole: '10 ±0 mm', bolt: 'M10x1.25', 'bolt-diameter': '10 mm' }],
    outcome: 'fails',
    checks: {
      ...held,
      'caliper-hole': 'fails caliper-hole-too-small',
      'knuckle-play': 'fails knuckle-hole-too-wide',
      'equal-bolt': 'fails not-equal',
    },
  },
  {
    says: 'bolts of M12x1.25 in a carrier of M12x1.5: they start together and strip',
    source: 'ISO 965, from memory: pitches must be equal',
    faces: [knuckle, { ...caliper, bolt: 'M12x1.5' }],
    outcome: 'fails',
    checks: { ...held, 'equal-bolt': 'fails not-equal' },
  },
  {
    says: 'a disc of 280 in a caliper for 266 runs into its bridge',
    faces: [{ ...knuckle, 'disc-diameter': '280 mm' }, caliper],
    outcome: 'fails',
    checks: { ...held, 'disc-diameter': 'fails disc-diameter-differs' },
  },
  {
    says: 'a disc of 22 in a caliper for 20',
    faces: [{ ...knuckle, 'disc-thickness': '22.0 ±0.05 mm' }, caliper],
    outcome: 'fails',
    checks: { ...held, 'thick-disc': 'fails disc-too-thick' },
  },
  {
    says: 'a solid disc of 10 in a caliper for a vented one of 20',
    faces: [{ ...knuckle, 'disc-thickness': '10.0 ±0.05 mm' }, caliper],
    outcome: 'fails',
    checks: { ...held, 'thin-disc': 'fails disc-too-thin' },
  },
];
