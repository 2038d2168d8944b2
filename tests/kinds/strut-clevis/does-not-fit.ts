/**
 * Each way in which a strut does not go on a knuckle, one at a time.
 */

import type { Fixture } from '../fixture.js';
import { held, knuckle, strut } from './fits.js';

export const fixtures: readonly Fixture[] = [
  {
    says: 'a bracket for 60 mm on a knuckle for 54',
    faces: [{ ...strut, spacing: '60.0 mm' }, knuckle],
    outcome: 'fails',
    checks: { ...held, spacing: 'fails spacing-differs' },
  },
  {
    says: 'M14 bolts of the knuckle in holes for M12: drilling is an engineered change',
    faces: [strut, { ...knuckle, hole: '14.2 mm', bolt: 'M14x1.5', 'bolt-diameter': '14 mm' }],
    outcome: 'fails',
    checks: {
      ...held,
      'strut-hole': 'fails strut-hole-too-small',
      'knuckle-play': 'fails knuckle-hole-too-wide',
      'equal-bolt': 'fails not-equal',
    },
  },
  {
    says: 'room in one hole is no room in the other: a bolt of 12 in holes of 11.5 and 13',
    faces: [
      { ...strut, hole: '11.5 ±0 mm' },
      { ...knuckle, hole: '13 ±0 mm' },
    ],
    outcome: 'fails',
    checks: { ...held, 'strut-hole': 'fails strut-hole-too-small' },
  },
  {
    says: 'a knuckle with a hole of 10 for its own M10 does not take M12',
    faces: [strut, { ...knuckle, hole: '10.2 mm', bolt: 'M10x1.25', 'bolt-diameter': '10 mm' }],
    outcome: 'fails',
    checks: {
      ...held,
      'knuckle-hole': 'fails knuckle-hole-too-small',
      'strut-play': 'fails strut-hole-too-wide',
      'equal-bolt': 'fails not-equal',
    },
  },
  {
    says: 'nuts of M12x1.5 with the strut, bolts of M12x1.25: they start together and strip',
    source: 'ISO 965, from memory: pitches must be equal',
    faces: [{ ...strut, bolt: 'M12x1.5' }, knuckle],
    outcome: 'fails',
    checks: { ...held, 'equal-bolt': 'fails not-equal' },
  },
  {
    says: 'an ear of 35 in a gap of 32',
    faces: [strut, { ...knuckle, ear: '35.00 ±0.05 mm' }],
    outcome: 'fails',
    checks: { ...held, 'ear-goes-in': 'fails ear-too-thick' },
  },
  {
    says: 'an ear of 30 in a gap of 32: the bolts bend the plates',
    faces: [strut, { ...knuckle, ear: '30.00 ±0.05 mm' }],
    outcome: 'fails',
    checks: { ...held, 'ear-play': 'fails gap-too-wide' },
  },
  {
    says: 'a bracket that somebody filed oval never fits',
    faces: [{ ...strut, 'upper-hole': 'filed' }, knuckle],
    outcome: 'fails',
    checks: {
      ...held,
      'as-made': 'fails not-as-made',
      'camber-setting': 'fails camber-to-set',
    },
  },
];
