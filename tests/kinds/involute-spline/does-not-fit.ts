/**
 * Each way in which two splines do not go together, one at a time.
 */

import type { Fixture } from '../fixture.js';
import { held, hub, shaft } from './fits.js';

export const fixtures: readonly Fixture[] = [
  {
    says: '23 teeth in a hub of 24',
    faces: [{ ...shaft, teeth: 23 }, hub],
    outcome: 'fails',
    checks: { ...held, 'equal-teeth': 'fails not-equal' },
  },
  {
    says: 'module 1 in a hub of module 1.25',
    faces: [shaft, { ...hub, module: '1.25 mm' }],
    outcome: 'fails',
    checks: { ...held, 'equal-module': 'fails not-equal' },
  },
  {
    says: '30 degrees in a hub of 45',
    faces: [shaft, { ...hub, 'pressure-angle': '45 deg' }],
    outcome: 'fails',
    checks: { ...held, 'equal-pressure-angle': 'fails not-equal' },
  },
  {
    says: 'an inch spline in a metric hub, whatever the rest',
    faces: [{ ...shaft, family: 'ansi-b92-1' }, hub],
    outcome: 'fails',
    checks: { ...held, 'equal-family': 'fails not-equal' },
  },
  {
    says: 'forms of two makers, known by name alone',
    faces: [
      { ...shaft, family: 'tarn-24' },
      { ...hub, family: 'lorne-24' },
    ],
    outcome: 'fails',
    checks: {
      ...held,
      'equal-family': 'fails not-equal',
      'known-family': 'fails not-a-standard-form',
    },
  },
  {
    says: 'a blocked space and a shaft with all its teeth',
    faces: [
      { ...shaft, 'missing-tooth': 'none' },
      { ...hub, 'blocked-tooth': 'one' },
    ],
    outcome: 'fails',
    checks: { ...held, 'blocked-tooth': 'fails blocked-tooth-in-the-way' },
  },
  {
    says: 'a missing tooth does not hinder an open hub',
    faces: [
      { ...shaft, 'missing-tooth': 'one' },
      { ...hub, 'blocked-tooth': 'none' },
    ],
    outcome: 'holds',
    checks: held,
  },
  {
    says: "one maker's own form fits by its name, with the caution that no standard vouches for it",
    faces: [
      { ...shaft, family: 'tarn-24' },
      { ...hub, family: 'tarn-24' },
    ],
    outcome: 'holds',
    checks: { ...held, 'known-family': 'fails not-a-standard-form' },
  },
];
