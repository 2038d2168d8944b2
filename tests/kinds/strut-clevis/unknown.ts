/**
 * What nobody recorded keeps a strut open and is named.
 */

import { type Fixture, without } from '../fixture.js';
import { held, knuckle, strut } from './fits.js';

const unread = 'open not-recorded';

export const fixtures: readonly Fixture[] = [
  {
    says: 'the spacing of the bolts',
    faces: [strut, without(knuckle, 'spacing')],
    outcome: 'open',
    checks: { ...held, spacing: unread },
    missing: ['right.spacing'],
  },
  {
    says: 'the holes: without them nobody knows how far the spacings may differ',
    faces: [without(strut, 'hole'), knuckle],
    outcome: 'open',
    checks: { ...held, 'strut-hole': unread, 'strut-play': unread, spacing: unread },
    missing: ['left.hole'],
  },
  {
    says: 'the diameter of the bolts',
    faces: [strut, without(knuckle, 'bolt-diameter')],
    outcome: 'open',
    checks: { ...held, 'strut-hole': unread, 'strut-play': unread, spacing: unread },
    missing: ['right.bolt-diameter'],
  },
  {
    says: 'the thread of the bolts',
    faces: [without(strut, 'bolt'), knuckle],
    outcome: 'open',
    checks: { ...held, 'equal-bolt': unread },
    missing: ['left.bolt'],
  },
  {
    says: 'the gap between the plates',
    faces: [without(strut, 'gap'), knuckle],
    outcome: 'open',
    checks: { ...held, 'ear-goes-in': unread, 'ear-play': unread },
    missing: ['left.gap'],
  },
  {
    says: 'the thickness of the ear',
    faces: [strut, without(knuckle, 'ear')],
    outcome: 'open',
    checks: { ...held, 'ear-goes-in': unread, 'ear-play': unread },
    missing: ['right.ear'],
  },
  {
    says: 'whether anybody filed the upper hole',
    faces: [without(strut, 'upper-hole'), knuckle],
    outcome: 'open',
    checks: { ...held, 'as-made': unread, 'camber-setting': unread },
    missing: ['left.upper-hole'],
  },
  {
    says: 'an offset of the strut alone is not compared',
    faces: [{ ...strut, offset: '48 mm' }, knuckle],
    outcome: 'holds',
    checks: held,
  },
  {
    says: 'nor an angle of the knuckle alone',
    faces: [strut, { ...knuckle, angle: '3 ±0.1 deg' }],
    outcome: 'holds',
    checks: held,
  },
];
