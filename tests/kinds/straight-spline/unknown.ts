/**
 * What nobody recorded keeps a straight-sided spline open and is named.
 */

import { type Fixture, without } from '../fixture.js';
import { held, hub, shaft } from './fits.js';

export const fixtures: readonly Fixture[] = [
  {
    says: 'the number of grooves',
    faces: [shaft, without(hub, 'splines')],
    outcome: 'open',
    checks: { ...held, 'equal-splines': 'open not-recorded' },
    missing: ['right.splines'],
  },
  {
    says: 'the inner diameter of the shaft: the flanks centre it, but does it go in?',
    faces: [without(shaft, 'inner-diameter'), { ...hub, width: '6 ±0.01 mm' }],
    outcome: 'open',
    checks: {
      ...held,
      'inner-diameter': 'open not-recorded',
      'centring-diameter': 'open not-recorded',
    },
    missing: ['left.inner-diameter'],
  },
  {
    says: 'the outer diameter of the hub',
    faces: [shaft, without(hub, 'outer-diameter')],
    outcome: 'open',
    checks: { ...held, 'outer-diameter': 'open not-recorded' },
    missing: ['right.outer-diameter'],
  },
  {
    says: 'the width of the splines',
    faces: [without(shaft, 'width'), hub],
    outcome: 'open',
    checks: { ...held, width: 'open not-recorded', 'flank-play': 'open not-recorded' },
    missing: ['left.width'],
  },
  {
    says: 'a name is no size: 6 splines alone prove nothing',
    faces: [
      { kind: 'straight-spline', side: 'shaft', splines: 6 },
      { kind: 'straight-spline', side: 'hub', splines: 6 },
    ],
    outcome: 'open',
    checks: {
      'equal-splines': 'holds',
      'inner-diameter': 'open not-recorded',
      'outer-diameter': 'open not-recorded',
      width: 'open not-recorded',
      'flank-play': 'open not-recorded',
      reach: 'open not-recorded',
      centring: 'open not-recorded',
      'centring-diameter': 'open not-recorded',
    },
    missing: ['inner-diameter', 'outer-diameter', 'width'].flatMap((name) => [
      `left.${name}`,
      `right.${name}`,
    ]),
  },
];
