/**
 * Each way in which a half-shaft and a differential do not go together, one at a time.
 */

import type { Fixture } from '../fixture.js';
import {
  cupOfShaft,
  differential,
  flangeOfDifferential,
  flangeOfShaft,
  heldFlange,
  heldStub,
  shaft,
  stubOfDifferential,
} from './fits.js';

const { seal: _, ...heldWithoutSeal } = heldStub;

export const fixtures: readonly Fixture[] = [
  {
    says: 'a shaft of 30 teeth in a side gear of 28',
    faces: [differential, { ...shaft, teeth: 30 }],
    outcome: 'fails',
    checks: { ...heldStub, 'equal-teeth': 'fails not-equal' },
  },
  {
    says: 'another module',
    faces: [differential, { ...shaft, module: '1.058 mm' }],
    outcome: 'fails',
    checks: { ...heldStub, 'equal-module': 'fails not-equal' },
  },
  {
    says: 'an inch spline in a metric gear',
    faces: [differential, { ...shaft, family: 'ansi-b92-1' }],
    outcome: 'fails',
    checks: { ...heldStub, 'equal-family': 'fails not-equal' },
  },
  {
    says: 'a flange at a differential that takes stubs: the spline is not recorded either',
    faces: [differential, flangeOfShaft],
    outcome: 'fails',
    checks: {
      'equal-style': 'fails not-equal',
      'known-style': 'holds',
      'known-family': 'open not-recorded',
      'known-retention': 'holds',
      'equal-family': 'open not-recorded',
      'equal-teeth': 'open not-recorded',
      'equal-module': 'open not-recorded',
      'equal-retention': 'open not-recorded',
      ring: 'open not-recorded',
    },
    missing: ['family', 'teeth', 'module', 'retention', 'ring'].map((name) => `right.${name}`),
  },
  {
    says: 'a cup for a stub, at a gear that takes a stub',
    faces: [differential, { ...cupOfShaft, ring: '48.0 ±0.1 mm' }],
    outcome: 'fails',
    checks: { ...heldWithoutSeal, 'equal-style': 'fails not-equal' },
  },
  {
    says: 'a shaft with a ring at a gear that a bolt holds',
    faces: [{ ...differential, retention: 'bolt' }, shaft],
    outcome: 'fails',
    checks: withoutRing({
      ...heldStub,
      'equal-retention': 'fails not-equal',
      'known-retention': 'fails other-retention',
    }),
  },
  {
    says: 'a ring that stops 2 mm before its recess: the spline goes in, and the shaft comes out',
    faces: [differential, { ...shaft, ring: '46.0 ±0.1 mm' }],
    outcome: 'fails',
    checks: { ...heldStub, ring: 'fails ring-misses-recess' },
  },
  {
    says: 'a journal of 38 mm in a seal of 40 mm leaks',
    faces: [differential, { ...shaft, journal: '38 h11' }],
    outcome: 'fails',
    checks: { ...heldStub, seal: 'fails seal-does-not-suit' },
  },
  {
    says: 'a journal of 42 mm in a seal of 40 mm',
    faces: [differential, { ...shaft, journal: '42 h11' }],
    outcome: 'fails',
    checks: { ...heldStub, seal: 'fails seal-does-not-suit' },
  },
  {
    says: 'a stub that stands on the cross-shaft',
    faces: [
      { ...differential, depth: '60 ±1 mm' },
      { ...shaft, 'stub-length': '65.0 ±0.1 mm' },
    ],
    outcome: 'fails',
    checks: { ...heldStub, depth: 'fails stub-bottoms' },
  },
  {
    says: 'four holes against six',
    faces: [flangeOfDifferential, { ...flangeOfShaft, holes: 4 }],
    outcome: 'fails',
    checks: { ...heldFlange, 'equal-holes': 'fails not-equal' },
  },
  {
    says: 'a pitch circle of 84 against 86',
    faces: [flangeOfDifferential, { ...flangeOfShaft, pcd: '86 mm' }],
    outcome: 'fails',
    checks: { ...heldFlange, pcd: 'fails pcd-differs' },
  },
  {
    says: 'bolts of M10 in holes for M8',
    faces: [flangeOfDifferential, { ...flangeOfShaft, bolt: 'M10x1.5' }],
    outcome: 'fails',
    checks: { ...heldFlange, 'equal-bolt': 'fails not-equal' },
  },
  {
    says: 'an inch spline of the gear and a metric one of the shaft',
    faces: [{ ...differential, family: 'ansi-b92-1' }, shaft],
    outcome: 'fails',
    checks: { ...heldStub, 'equal-family': 'fails not-equal' },
  },
  {
    says: 'a stub against the stub of the gear',
    faces: [{ ...stubOfDifferential, recess: '48.0 ±0.1 mm' }, shaft],
    outcome: 'fails',
    checks: { ...heldWithoutSeal, 'equal-style': 'fails not-equal' },
  },
  {
    says: 'a shaft that a bolt holds, in a gear with a recess for a ring',
    faces: [differential, { ...shaft, retention: 'bolt' }],
    outcome: 'fails',
    checks: withoutRing({ ...heldStub, 'equal-retention': 'fails not-equal' }),
  },
  {
    says: 'a stub at a differential with a flange: its spline is not recorded',
    faces: [flangeOfDifferential, shaft],
    outcome: 'fails',
    checks: {
      'equal-style': 'fails not-equal',
      'known-style': 'holds',
      'known-family': 'holds',
      'known-retention': 'open not-recorded',
      'equal-family': 'open not-recorded',
      'equal-teeth': 'open not-recorded',
      'equal-module': 'open not-recorded',
      'equal-retention': 'open not-recorded',
      ring: 'open not-recorded',
    },
    missing: ['family', 'teeth', 'module', 'retention', 'recess'].map((name) => `left.${name}`),
  },
];

function withoutRing({ ring: __, ...others }: Readonly<Record<string, string>>) {
  return others;
}
