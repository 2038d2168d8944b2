/**
 * Rings that suit their sensors, and the faces that the other fixtures start from.
 */

import type { Expected, Fixture } from '../fixture.js';

export const ring = {
  kind: 'wheel-speed-target',
  side: 'ring',
  target: 'toothed',
  teeth: 48,
  direction: 'radial',
  diameter: '98.0 ±0.1 mm',
} as const;

export const sensor = {
  kind: 'wheel-speed-target',
  side: 'sensor',
  target: 'toothed',
  pulses: 48,
  sensor: 'passive',
  direction: 'radial',
  'tip-circle': '99.6 ±0.2 mm',
} as const;

/** The poles in the seal of a bearing, read on its face. */
export const poleRing = {
  kind: 'wheel-speed-target',
  side: 'ring',
  target: 'magnetic',
  poles: 96,
  direction: 'axial',
  diameter: '72.0 ±0.1 mm',
  'inner-diameter': '56.0 ±0.1 mm',
  'face-distance': '50.0 ±0.1 mm',
} as const;

export const poleSensor = {
  kind: 'wheel-speed-target',
  side: 'sensor',
  target: 'magnetic',
  pulses: 48,
  sensor: 'active',
  direction: 'axial',
  'tip-circle': '64.0 ±0.5 mm',
  'face-distance': '50.9 ±0.1 mm',
} as const;

const common: Expected = {
  'equal-target': 'holds',
  'known-target': 'holds',
  'known-sensor': 'holds',
  'equal-direction': 'holds',
  'known-direction': 'holds',
};

export const held: Expected = {
  ...common,
  teeth: 'holds',
  'radial-room': 'holds',
  'radial-gap': 'holds',
};

export const heldPoles: Expected = {
  ...common,
  poles: 'holds',
  'sensor-for-poles': 'holds',
  'axial-room': 'holds',
  'axial-gap': 'holds',
  'track-outside': 'holds',
  'track-inside': 'holds',
};

export const fixtures: readonly Fixture[] = [
  {
    says: '48 teeth under a passive sensor, 0.8 mm away',
    faces: [ring, sensor],
    outcome: 'holds',
    checks: held,
  },
  {
    says: '48 teeth under an active sensor with a magnet behind it',
    faces: [ring, { ...sensor, sensor: 'active' }],
    outcome: 'holds',
    checks: held,
  },
  {
    says: '96 poles are 48 pulses, read on the face of the seal',
    faces: [poleRing, poleSensor],
    outcome: 'holds',
    checks: heldPoles,
  },
  {
    says: '44 teeth, 0.5 mm away',
    source: '44 teeth and a gap of 0.2 to 1.5 mm are given in the workshop manual of a car',
    faces: [
      { ...ring, teeth: 44 },
      { ...sensor, pulses: 44, sensor: 'active', 'tip-circle': '99.0 ±0.1 mm' },
    ],
    outcome: 'holds',
    checks: held,
  },
];
