/**
 * Parking brakes that go together at each of their three joints, and the faces that the other
 * fixtures start from.
 */

import type { Expected, Fixture } from '../fixture.js';

const kind = 'parking-drum';

export const shoes = {
  kind,
  side: 'brake',
  joint: 'drum',
  'shoe-diameter': '172 mm',
  'shoe-width': '20.0 mm',
} as const;

export const drum = {
  kind,
  side: 'place',
  joint: 'drum',
  'drum-diameter': '172.1 ±0.05 mm',
  'drum-limit': '173 mm',
  'drum-width': '24.0 mm',
} as const;

export const plate = {
  kind,
  side: 'brake',
  joint: 'backplate',
  holes: 4,
  pcd: '104.0 ±0.05 mm',
  hole: '8.4 ±0.05 mm',
  bolt: 'M8x1.25',
  'bolt-diameter': '8 mm',
  bore: '72.2 ±0.02 mm',
} as const;

export const knuckle = {
  kind,
  side: 'place',
  joint: 'backplate',
  holes: 4,
  pcd: '104.1 ±0.05 mm',
  hole: '8 ±0 mm',
  bolt: 'M8x1.25',
  'bolt-diameter': '8 mm',
  spigot: '72.0 ±0.05 mm',
} as const;

export const lever = {
  kind,
  side: 'brake',
  joint: 'cable',
  'cable-end': 'ball-8',
  'travel-needed': '18 ±1 mm',
} as const;

export const cable = {
  kind,
  side: 'place',
  joint: 'cable',
  'cable-end': 'ball-8',
  travel: '30 ±1 mm',
} as const;

const common: Expected = { 'equal-joint': 'holds', 'known-joint': 'holds' };

export const heldDrum: Expected = {
  ...common,
  'shoes-go-in': 'holds',
  'shoes-bear': 'holds',
  'drum-limit': 'holds',
  width: 'holds',
};

export const heldPlate: Expected = {
  ...common,
  'equal-holes': 'holds',
  'equal-bolt': 'holds',
  'backplate-hole': 'holds',
  'knuckle-hole': 'holds',
  pcd: 'holds',
  bore: 'holds',
  centring: 'holds',
};

export const heldCable: Expected = { ...common, 'equal-cable-end': 'holds', travel: 'holds' };

export const fixtures: readonly Fixture[] = [
  {
    says: 'shoes of 172 in a drum of 172.1',
    faces: [shoes, drum],
    outcome: 'holds',
    checks: heldDrum,
  },
  {
    says: 'a drum turned out to 172.8, within its stamped limit',
    faces: [shoes, { ...drum, 'drum-diameter': '172.8 ±0.05 mm' }],
    outcome: 'holds',
    checks: heldDrum,
  },
  {
    says: 'a backplate on four M8 of the knuckle',
    faces: [plate, knuckle],
    outcome: 'holds',
    checks: heldPlate,
  },
  {
    says: 'a backplate of the same pattern by name too',
    faces: [
      { ...plate, pattern: 'r-4' },
      { ...knuckle, pattern: 'r-4' },
    ],
    outcome: 'holds',
    checks: { ...heldPlate, 'equal-pattern': 'holds' },
  },
  {
    says: 'a cable with a ball of 8 mm and travel to spare',
    faces: [lever, cable],
    outcome: 'holds',
    checks: heldCable,
  },
];
