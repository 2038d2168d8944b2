/**
 * Outer ends that go together, and the two faces that the other fixtures start from.
 */

import type { Expected, Fixture } from '../fixture.js';

const spline = {
  kind: 'half-shaft-outer',
  family: 'iso-4156',
  teeth: 27,
  module: '1 mm',
  'nut-thread': 'M24x1.5',
} as const;

export const shaft = {
  ...spline,
  side: 'shaft',
  shoulder: '46.0 ±0.2 mm',
  'stem-length': '86.0 ±0.3 mm',
  'thread-start': '56.0 ±0.5 mm',
} as const;

export const hub = {
  ...spline,
  side: 'hub',
  'ring-bore': '38.0 ±0.1 mm',
  'ring-face': '50.0 ±0.2 mm',
  'clamped-length': '62.0 ±0.3 mm',
  'nut-height': '20.0 ±0.2 mm',
  'speed-ring': 0,
} as const;

export const held: Expected = {
  'equal-family': 'holds',
  'known-family': 'holds',
  'equal-teeth': 'holds',
  'equal-module': 'holds',
  'equal-nut-thread': 'holds',
  'shoulder-on-ring': 'holds',
  'shoulder-in-seal': 'holds',
  'nut-engages': 'holds',
  'nut-clamps': 'holds',
};

const { 'equal-family': _, ...heldUnderTwoNames } = held;

export const fixtures: readonly Fixture[] = [
  {
    says: '27 teeth, M24x1.5, a shoulder on the inner ring and a nut full of thread',
    faces: [shaft, hub],
    outcome: 'holds',
    checks: held,
  },
  {
    says: "a spline of the maker's own goes by its name, with a caution",
    faces: [
      { ...shaft, family: 'works-27' },
      { ...hub, family: 'works-27' },
    ],
    outcome: 'holds',
    checks: { ...held, 'known-family': 'fails not-a-standard-form' },
  },
  {
    says: 'ISO 4156 and ANSI B92.2M are two names of one system',
    faces: [shaft, { ...hub, family: 'ansi-b92-2m' }],
    outcome: 'holds',
    checks: heldUnderTwoNames,
  },
  {
    says: 'a speed ring of 48 teeth for a sensor that counts 48',
    faces: [
      { ...shaft, 'speed-ring': 48 },
      { ...hub, 'speed-ring': 48 },
    ],
    outcome: 'holds',
    checks: { ...held, 'equal-speed-ring': 'holds' },
  },
  {
    says: 'a shaft with a speed ring at a hub without a sensor',
    faces: [{ ...shaft, 'speed-ring': 48 }, hub],
    outcome: 'holds',
    checks: held,
  },
];
