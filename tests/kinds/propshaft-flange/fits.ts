/**
 * Flanges that go together, and the two faces that the other fixtures start from.
 */

import type { Expected, Fixture } from '../fixture.js';

export const spigot = {
  kind: 'propshaft-flange',
  side: 'spigot',
  holes: 4,
  pcd: '70 mm',
  register: '50 h7',
  bolt: 'M10x1.25',
} as const;

export const recess = { ...spigot, side: 'recess', register: '50 H7' } as const;

export const held: Expected = {
  'equal-holes': 'holds',
  pcd: 'holds',
  register: 'holds',
  'equal-bolt': 'holds',
};

export const fixtures: readonly Fixture[] = [
  {
    says: 'four M10 on 70 mm, register 50 H7/h7',
    source: 'ISO 286-2: 50 H7 is +25/0 and 50 h7 is 0/-25 thousandths, so 0 to 0.05 mm of play',
    faces: [spigot, recess],
    outcome: 'holds',
    checks: held,
  },
  {
    says: 'bolts written in two ways are one thread',
    faces: [spigot, { ...recess, bolt: 'm10 x 1.250' }],
    outcome: 'holds',
    checks: held,
  },
  {
    says: 'the flange of 90 mm for commercial vehicles',
    source: 'ISO 7646, size 90: 74.5 mm and 47 h7, read in a table of a maker of shafts',
    faces: [
      { ...spigot, pcd: '74.5 mm', register: '47 h7', bolt: 'M8' },
      { ...recess, pcd: '74.5 mm', register: '47 H7', bolt: 'M8' },
    ],
    outcome: 'holds',
    checks: held,
  },
  {
    says: 'the same pattern by name, with depth and bolts recorded',
    faces: [
      {
        ...spigot,
        pattern: 'L6',
        'register-depth': '2.3 ±0.1 mm',
        'bolt-hole': '10.2 ±0.1 mm',
        'bolt-diameter': '10 mm',
      },
      {
        ...recess,
        pattern: 'L6',
        'register-depth': '2.6 ±0.1 mm',
        'bolt-hole': '10 ±0 mm',
        'bolt-diameter': '10 mm',
      },
    ],
    outcome: 'holds',
    checks: {
      ...held,
      'equal-pattern': 'holds',
      'register-depth': 'holds',
      'bolts-pass': 'holds',
      'bolt-play': 'holds',
    },
  },
];
