/**
 * Discs that go on their hubs, and the two faces that the other fixtures start from.
 */

import type { Expected, Fixture } from '../fixture.js';

export const hub = {
  kind: 'disc-hub',
  side: 'hub',
  holes: 5,
  pcd: '106 mm',
  pilot: '57.05 ±0.01 mm',
  hat: '36.0 ±0.05 mm',
  diameter: '266 mm',
  'thickest-disc': '20.5 ±0.05 mm',
  'wear-limit': '17.5 ±0.05 mm',
} as const;

export const disc = {
  kind: 'disc-hub',
  side: 'disc',
  holes: 5,
  pcd: '106 mm',
  bore: '57.10 ±0.01 mm',
  hat: '36.1 ±0.05 mm',
  diameter: '266 mm',
  thickness: '20.0 ±0.05 mm',
  'minimum-thickness': '18 mm',
} as const;

export const held: Expected = {
  'equal-holes': 'holds',
  pcd: 'holds',
  bore: 'holds',
  centring: 'holds',
  hat: 'holds',
  diameter: 'holds',
  'thick-disc': 'holds',
  'worn-disc': 'holds',
  'thin-disc': 'holds',
  'wear-limit': 'holds',
};

export const fixtures: readonly Fixture[] = [
  {
    says: 'a new disc of 266 by 20, centred by the hub',
    faces: [hub, disc],
    outcome: 'holds',
    checks: held,
  },
  {
    says: 'a used disc above its stamped minimum',
    faces: [hub, { ...disc, thickness: '18.6 ±0.05 mm' }],
    outcome: 'holds',
    checks: held,
  },
  {
    says: 'everything recorded: studs and a vented ring',
    faces: [
      { ...hub, stud: '12 mm', ring: 'vented' },
      { ...disc, 'stud-hole': '13.0 mm', ring: 'vented' },
    ],
    outcome: 'holds',
    checks: { ...held, 'stud-hole': 'holds', 'equal-ring': 'holds' },
  },
  {
    says: 'a solid disc in place of a vented one, with a caution of the heat',
    faces: [
      { ...hub, ring: 'vented' },
      { ...disc, ring: 'solid' },
    ],
    outcome: 'holds',
    checks: { ...held, 'equal-ring': 'fails other-ring' },
  },
  {
    says: 'a disc that may wear to 17 mm in a caliper that bears 17.5, with a caution',
    faces: [hub, { ...disc, 'minimum-thickness': '17 mm' }],
    outcome: 'holds',
    checks: { ...held, 'wear-limit': 'fails wears-past-the-caliper' },
  },
];
