/**
 * Each way in which a starter and a ring gear do not go together.
 */

import type { Fixture } from '../fixture.js';
import { held, ring, starter } from './fits.js';

export const fixtures: readonly Fixture[] = [
  {
    says: 'a flywheel of 110 teeth for a starter that sits for 103',
    faces: [{ ...ring, 'blank-teeth': 110 }, starter],
    outcome: 'fails',
    checks: { ...held, mesh: 'fails gears-too-close', backlash: 'fails needs-thinned-teeth' },
  },
  {
    says: 'a flywheel of 103 teeth for a starter that sits for 110',
    faces: [ring, { ...starter, 'centre-distance': '150.75 ±0.1 mm' }],
    outcome: 'fails',
    checks: { ...held, 'depth-of-mesh': 'fails gears-too-far-apart' },
  },
  {
    says: 'module 2.5 against pitch 10: 2.5 mm is not 2.54 mm',
    faces: [
      ring,
      {
        ...starter,
        module: '1/10 in',
        'height-module': '2.5 mm',
        'centre-distance': '142.20 ±0.1 mm',
      },
    ],
    outcome: 'fails',
    checks: { ...held, 'equal-module': 'fails not-equal' },
  },
  {
    says: 'a stub pinion in a ring with teeth of full height',
    faces: [ring, { ...starter, 'height-module': '2 mm' }],
    outcome: 'fails',
    checks: { ...held, 'equal-height-module': 'fails not-equal' },
  },
  {
    says: '12 degrees against 20',
    source: 'ISO 9457-1 has pinions in use, ISO 9457-2 those of 20 degrees (scope of SAE J543)',
    faces: [
      { ...ring, 'pressure-angle': '20 deg' },
      { ...starter, 'pressure-angle': '12 deg' },
    ],
    outcome: 'fails',
    checks: { ...held, 'equal-pressure-angle': 'fails not-equal' },
  },
  {
    says: 'a pinion that was only counted: 9 teeth, and the tip circle of a blank for 10',
    faces: [ring, { ...starter, 'blank-teeth': 9, 'tip-diameter': '30.0 ±0.1 mm' }],
    outcome: 'fails',
    checks: {
      ...held,
      'depth-of-mesh': 'fails gears-too-far-apart',
      blank: 'fails not-this-blank',
    },
  },
  {
    says: 'a thicker flywheel: the pinion drags on the ring',
    faces: [{ ...ring, 'face-distance': '17.0 ±0.3 mm' }, starter],
    outcome: 'fails',
    checks: { ...held, rest: 'fails pinion-drags' },
  },
  {
    says: 'an adapter plate between: the pinion does not reach the ring',
    faces: [
      { ...ring, 'face-distance': '28.0 ±0.3 mm', 'ring-width': '12 ±0.1 mm' },
      { ...starter, 'thrown-distance': '30.5 ±0.5 mm' },
    ],
    outcome: 'fails',
    checks: { ...held, throw: 'fails pinion-does-not-reach' },
  },
  {
    says: 'a starter that turns the engine backwards',
    faces: [ring, { ...starter, rotation: 'anticlockwise' }],
    outcome: 'fails',
    checks: { ...held, 'equal-rotation': 'fails not-equal' },
  },
];
