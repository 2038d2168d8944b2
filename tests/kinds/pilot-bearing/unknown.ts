/**
 * What nobody recorded keeps a pilot bearing open and is named.
 */

import { type Fixture, without } from '../fixture.js';
import { bareCrankshaft, bearing, crankshaft, nose, pressed, runs } from './fits.js';

const { reach: _, bottom: __, ...withoutReach } = runs;

export const fixtures: readonly Fixture[] = [
  {
    says: 'whether the bearing is still in the crankshaft',
    faces: [without(crankshaft, 'seat'), nose],
    outcome: 'open',
    checks: {
      ...runs,
      'equal-seat': 'open not-recorded',
      'known-seat': 'open not-recorded',
    },
    missing: ['left.seat'],
  },
  {
    says: 'the bore of the bearing in the crankshaft',
    faces: [without(crankshaft, 'bore'), nose],
    outcome: 'open',
    checks: { ...runs, 'goes-in': 'open not-recorded', guides: 'open not-recorded' },
    missing: ['left.bore'],
  },
  {
    says: 'the nose, known only to a tenth',
    faces: [crankshaft, { ...nose, diameter: '15.0 mm' }],
    outcome: 'open',
    checks: { ...runs, 'goes-in': 'open not-precise-enough' },
  },
  {
    says: 'the bore of the bare crankshaft',
    faces: [without(bareCrankshaft, 'bore'), bearing],
    outcome: 'open',
    checks: { ...pressed, grip: 'open not-recorded', press: 'open not-recorded' },
    missing: ['left.bore'],
  },
  {
    says: 'the outside of the bearing',
    faces: [bareCrankshaft, without(bearing, 'diameter')],
    outcome: 'open',
    checks: { ...pressed, grip: 'open not-recorded', press: 'open not-recorded' },
    missing: ['right.diameter'],
  },
  {
    says: 'a bearing of its own does not know how deep it sits: the reach is not compared',
    faces: [without(crankshaft, 'bearing-depth', 'hole-depth'), nose],
    outcome: 'holds',
    checks: withoutReach,
  },
  {
    says: 'the reach of the nose, where the depth of the bearing is known',
    faces: [crankshaft, without(nose, 'reach')],
    outcome: 'open',
    checks: { ...runs, reach: 'open not-recorded', bottom: 'open not-recorded' },
    missing: ['right.reach'],
  },
];
