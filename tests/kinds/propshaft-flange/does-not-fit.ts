/**
 * Each way in which two flanges do not go together, one at a time.
 */

import type { Fixture } from '../fixture.js';
import { held, recess, spigot } from './fits.js';

const bolts = { 'bolt-hole': '10.2 ±0 mm', 'bolt-diameter': '10 mm' };

export const fixtures: readonly Fixture[] = [
  {
    says: 'a coarse thread by its size alone, where the other is fine',
    faces: [spigot, { ...recess, bolt: 'M10' }],
    outcome: 'fails',
    checks: { ...held, 'equal-bolt': 'fails not-equal' },
  },
  {
    says: 'flanges named L5 and L6',
    faces: [
      { ...spigot, pattern: 'L6' },
      { ...recess, pattern: 'L5' },
    ],
    outcome: 'fails',
    checks: { ...held, 'equal-pattern': 'fails not-equal' },
  },
  {
    says: 'three holes against four',
    faces: [{ ...spigot, holes: 3 }, recess],
    outcome: 'fails',
    checks: { ...held, 'equal-holes': 'fails not-equal' },
  },
  {
    says: 'a pitch circle of 65 against 70',
    faces: [{ ...spigot, pcd: '65 mm' }, recess],
    outcome: 'fails',
    checks: { ...held, pcd: 'fails pcd-differs' },
  },
  {
    says: 'a register of 47 in a recess of 50 centres nothing',
    faces: [{ ...spigot, register: '47 h7' }, recess],
    outcome: 'fails',
    checks: { ...held, register: 'fails too-large' },
  },
  {
    says: 'a register of 50 in a recess of 47 does not go in',
    faces: [spigot, { ...recess, register: '47 H7' }],
    outcome: 'fails',
    checks: { ...held, register: 'fails too-small' },
  },
  {
    says: 'bolts of M12x1.25 and M12x1.5 start together and strip',
    source: 'ISO 965, from memory: pitches must be equal',
    faces: [
      { ...spigot, bolt: 'M12x1.25' },
      { ...recess, bolt: 'M12x1.5' },
    ],
    outcome: 'fails',
    checks: { ...held, 'equal-bolt': 'fails not-equal' },
  },
  {
    says: 'a register higher than the recess is deep',
    faces: [
      { ...spigot, 'register-depth': '3 ±0.1 mm' },
      { ...recess, 'register-depth': '2 ±0.1 mm' },
    ],
    outcome: 'fails',
    checks: { ...held, 'register-depth': 'fails register-bottoms' },
  },
  {
    says: 'holes smaller than the bolts',
    faces: [
      { ...spigot, ...bolts, 'bolt-hole': '8.2 ±0 mm' },
      { ...recess, ...bolts },
    ],
    outcome: 'fails',
    checks: {
      ...held,
      'bolts-pass': 'fails bolts-do-not-pass',
      'bolt-play': 'fails bolts-do-not-pass',
    },
  },
  {
    says: 'a hole too small on one side is not made up for by a large one on the other',
    faces: [
      { ...spigot, ...bolts, 'bolt-hole': '9.8 ±0 mm' },
      { ...recess, ...bolts, 'bolt-hole': '10.6 ±0 mm' },
    ],
    outcome: 'fails',
    checks: { ...held, 'bolts-pass': 'fails bolts-do-not-pass', 'bolt-play': 'holds' },
  },
];
