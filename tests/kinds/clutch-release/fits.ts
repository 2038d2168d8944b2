/**
 * Releases that suit their clutches, and the two faces that the other fixtures start from.
 */

import { type Expected, type Fixture, without } from '../fixture.js';

export const cover = {
  kind: 'clutch-release',
  side: 'cover',
  type: 'push',
  'travel-needed': '8.0 mm',
  'tips-inner': '38 mm',
  'tips-outer': '60 mm',
} as const;

export const actuator = {
  kind: 'clutch-release',
  side: 'actuator',
  type: 'push',
  travel: '9.0 mm',
  'contact-diameter': '48 mm',
} as const;

export const held: Expected = {
  'equal-type': 'holds',
  'known-type': 'holds',
  travel: 'holds',
  'contact-inner': 'holds',
  'contact-outer': 'holds',
};

/** Nothing but type and travel, as every release has it. */
export const heldAnyway: Expected = {
  'equal-type': 'holds',
  'known-type': 'holds',
  travel: 'holds',
};

export const fixtures: readonly Fixture[] = [
  {
    says: 'push on push, with a millimetre of travel to spare',
    faces: [cover, actuator],
    outcome: 'holds',
    checks: held,
  },
  {
    says: 'pull on pull, with a latch that both know',
    faces: [
      { ...cover, type: 'pull', latch: 'snap-ring-52' },
      { ...actuator, type: 'pull', latch: 'snap-ring-52' },
    ],
    outcome: 'holds',
    checks: { ...held, 'equal-latch': 'holds' },
  },
  {
    says: 'the bearing comes with the cover and slides on the guide tube',
    faces: [
      {
        ...without(cover, 'tips-inner', 'tips-outer'),
        kind: 'clutch-release',
        'bearing-bore': '35.10 mm',
        'travel-limit': '11 mm',
      },
      { ...without(actuator, 'contact-diameter'), kind: 'clutch-release', quill: '34.95 mm' },
    ],
    outcome: 'holds',
    checks: { ...heldAnyway, 'over-travel': 'holds', quill: 'holds', 'quill-play': 'holds' },
  },
  {
    says: 'a concentric cylinder with its bearing, on the tips of the fingers',
    faces: [cover, { ...actuator, 'contact-diameter': '52 mm' }],
    outcome: 'holds',
    checks: held,
  },
  {
    says: 'a pull bearing that stays in its cover: on the guide tube no latch is asked',
    faces: [
      {
        ...without(cover, 'tips-inner', 'tips-outer'),
        kind: 'clutch-release',
        type: 'pull',
        'bearing-bore': '36.20 mm',
      },
      {
        ...without(actuator, 'contact-diameter'),
        kind: 'clutch-release',
        type: 'pull',
        quill: '36.0 mm',
      },
    ],
    outcome: 'holds',
    checks: { ...heldAnyway, quill: 'holds', 'quill-play': 'holds' },
  },
  {
    says: 'a latch is no matter of push bearings',
    faces: [
      { ...cover, latch: 'snap-ring-48' },
      { ...actuator, latch: 'snap-ring-52' },
    ],
    outcome: 'holds',
    checks: held,
  },
];
