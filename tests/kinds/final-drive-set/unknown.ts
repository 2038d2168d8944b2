/**
 * What nobody recorded keeps a gear set open and is named.
 */

import { type Expected, type Fixture, without } from '../fixture.js';
import { carrier, crownWheel, heldCrown, heldPinion, housing, pinion } from './fits.js';

type Row = readonly [string, string];

/** The parameter of the set, and the check that it leaves open. */
const ofCrown: readonly Row[] = [
  ['crown-bolts', 'equal-crown-bolts'],
  ['crown-pcd', 'crown-pcd'],
  ['crown-thread', 'equal-crown-thread'],
  ['register', 'register'],
];
const ofPinion: readonly Row[] = [
  ['spiral', 'equal-spiral'],
  ['offset', 'equal-offset'],
  ['head', 'head'],
  ['tail', 'tail'],
  ['mounting-distance', 'mounting-distance'],
];

function openWithout([set, axle]: Fixture['faces'], held: Expected, [name, check]: Row): Fixture {
  return {
    says: `${name} of the set`,
    faces: [without(set, name), axle],
    outcome: 'open',
    checks: { ...held, [check]: 'open not-recorded' },
    missing: [`left.${name}`],
  };
}

export const fixtures: readonly Fixture[] = [
  ...ofCrown.map((row) => openWithout([crownWheel, carrier], heldCrown, row)),
  ...ofPinion.map((row) => openWithout([pinion, housing], heldPinion, row)),
  {
    says: 'which ratio the crown wheel is made for',
    faces: [without(crownWheel, 'carrier-ratio'), carrier],
    outcome: 'open',
    checks: {
      ...heldCrown,
      'above-lowest': 'open not-recorded',
      'below-highest': 'open not-recorded',
    },
    missing: ['left.carrier-ratio'],
  },
  {
    says: 'the carrier break: bolts and register do not tell it',
    faces: [crownWheel, without(carrier, 'lowest-ratio', 'highest-ratio')],
    outcome: 'open',
    checks: {
      ...heldCrown,
      'above-lowest': 'open not-recorded',
      'below-highest': 'open not-recorded',
    },
    missing: ['right.lowest-ratio', 'right.highest-ratio'],
  },
  {
    says: 'a tag that says 3.7 leaves open on which side of a break at 3.73 it lies',
    faces: [
      { ...crownWheel, 'carrier-ratio': '3.7' },
      { ...carrier, 'lowest-ratio': '3.73' },
    ],
    outcome: 'open',
    checks: { ...heldCrown, 'above-lowest': 'open not-precise-enough' },
  },
];
