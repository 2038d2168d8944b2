/**
 * What nobody recorded keeps a flange open and is named.
 */

import { type Fixture, without } from '../fixture.js';
import { held, recess, spigot } from './fits.js';

export const fixtures: readonly Fixture[] = [
  {
    says: 'the number of holes',
    faces: [spigot, without(recess, 'holes')],
    outcome: 'open',
    checks: { ...held, 'equal-holes': 'open not-recorded' },
    missing: ['right.holes'],
  },
  {
    says: 'the pitch circle',
    faces: [without(spigot, 'pcd'), recess],
    outcome: 'open',
    checks: { ...held, pcd: 'open not-recorded' },
    missing: ['left.pcd'],
  },
  {
    says: 'the register',
    faces: [spigot, without(recess, 'register')],
    outcome: 'open',
    checks: { ...held, register: 'open not-recorded' },
    missing: ['right.register'],
  },
  {
    says: 'the bolts',
    faces: [without(spigot, 'bolt'), recess],
    outcome: 'open',
    checks: { ...held, 'equal-bolt': 'open not-recorded' },
    missing: ['left.bolt'],
  },
  {
    says: 'equal names alone prove no flange: the sizes are asked',
    faces: [
      { kind: 'propshaft-flange', side: 'spigot', pattern: 'L6' },
      { kind: 'propshaft-flange', side: 'recess', pattern: 'L6' },
    ],
    outcome: 'open',
    checks: {
      'equal-pattern': 'holds',
      'equal-holes': 'open not-recorded',
      pcd: 'open not-recorded',
      register: 'open not-recorded',
      'equal-bolt': 'open not-recorded',
    },
    missing: ['holes', 'pcd', 'register', 'bolt'].flatMap((name) => [
      `left.${name}`,
      `right.${name}`,
    ]),
  },
  {
    says: 'bolt holes without the bolts are not compared',
    faces: [
      { ...spigot, 'bolt-hole': '10.2 mm' },
      { ...recess, 'bolt-hole': '10.2 mm' },
    ],
    outcome: 'holds',
    checks: held,
  },
  {
    says: 'bolts without the holes are not compared',
    faces: [
      { ...spigot, 'bolt-diameter': '10 mm' },
      { ...recess, 'bolt-diameter': '10 mm' },
    ],
    outcome: 'holds',
    checks: held,
  },
  {
    says: 'a name on one end only is not compared',
    faces: [{ ...spigot, pattern: 'L6' }, recess],
    outcome: 'holds',
    checks: held,
  },
];
