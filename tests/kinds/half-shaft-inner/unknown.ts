/**
 * What nobody recorded keeps an inner end open and is named.
 */

import { type Fixture, without } from '../fixture.js';
import {
  differential,
  flangeOfDifferential,
  flangeOfShaft,
  heldFlange,
  heldStub,
  shaft,
} from './fits.js';

export const fixtures: readonly Fixture[] = [
  ...(['family', 'teeth', 'module'] as const).map((name): Fixture => {
    return {
      says: `the ${name} of the side gear`,
      faces: [without(differential, name), shaft],
      outcome: 'open',
      checks: { ...heldStub, [`equal-${name}`]: 'open not-recorded' },
      missing: [`left.${name}`],
    };
  }),
  {
    says: 'what holds the shaft in',
    faces: [without(differential, 'retention'), shaft],
    outcome: 'open',
    checks: {
      ...heldStub,
      'equal-retention': 'open not-recorded',
      'known-retention': 'open not-recorded',
    },
    missing: ['left.retention'],
  },
  {
    says: 'where the ring lands',
    faces: [without(differential, 'recess'), shaft],
    outcome: 'open',
    checks: { ...heldStub, ring: 'open not-recorded' },
    missing: ['left.recess'],
  },
  {
    says: 'the seal that is in',
    faces: [without(differential, 'seal'), shaft],
    outcome: 'open',
    checks: { ...heldStub, seal: 'open not-recorded' },
    missing: ['left.seal'],
  },
  {
    says: 'the journal of the shaft',
    faces: [differential, without(shaft, 'journal')],
    outcome: 'open',
    checks: { ...heldStub, seal: 'open not-recorded' },
    missing: ['right.journal'],
  },
  {
    says: 'the pitch circle of a flange',
    faces: [flangeOfDifferential, without(flangeOfShaft, 'pcd')],
    outcome: 'open',
    checks: { ...heldFlange, pcd: 'open not-recorded' },
    missing: ['right.pcd'],
  },
  {
    says: 'a stub without the depth for it is not compared',
    faces: [differential, { ...shaft, 'stub-length': '65 mm' }],
    outcome: 'holds',
    checks: heldStub,
  },
];
