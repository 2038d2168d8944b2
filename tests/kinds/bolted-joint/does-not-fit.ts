/**
 * Each way in which a bolt does not do, one at a time.
 */

import type { Fixture } from '../fixture.js';
import { bolt, held, heldInMagnesium, heldInNut, heldInSteel, joint, nut } from './fits.js';

const { 'reach-in-casting': _, 'depth-in-casting': __, ...heldBesideMaterial } = held;
const { bottom: ___, ...heldBesideBottom } = held;
const { bottom: ____, ...heldThroughSteel } = heldInSteel;
const { bottom: _____, ...heldThroughMagnesium } = heldInMagnesium;

function softest(asked: string): Fixture {
  return {
    says: `class 4.6 where ${asked} is asked`,
    faces: [
      { ...bolt, 'strength-class': '4.6' },
      { ...joint, 'strength-class': asked },
    ],
    outcome: 'fails',
    checks: { ...held, 'strength-class': 'fails weaker-than-original' },
  };
}

export const fixtures: readonly Fixture[] = [
  {
    says: 'm10x1.5 into m10x1.25: starts and strips',
    faces: [bolt, { ...joint, thread: 'm10x1.25' }],
    outcome: 'fails',
    checks: { ...held, 'equal-thread': 'fails not-equal' },
  },
  {
    says: 'class 8.8 where the works used 10.9',
    source: 'ISO 898-1, read in a secondary copy: proof stress 580 against 830 MPa',
    faces: [bolt, { ...joint, 'strength-class': '10.9' }],
    outcome: 'fails',
    checks: { ...held, 'strength-class': 'fails weaker-than-original' },
  },
  {
    says: 'class 5.6 for one of 4.8: the higher number, and yet it yields earlier',
    source: 'ISO 898-1, read in a secondary copy: proof stress 280 against 310 MPa',
    faces: [
      { ...bolt, 'strength-class': '5.6' },
      { ...joint, 'strength-class': '4.8' },
    ],
    outcome: 'fails',
    checks: { ...held, harder: 'fails harder-than-original', yield: 'fails yields-earlier' },
  },
  {
    says: 'an inch grade 8 is no class 8.8, though it is the stronger one',
    source: 'SAE J429, from memory: grade 8 is near class 10.9',
    faces: [{ ...bolt, 'strength-class': '8' }, joint],
    outcome: 'fails',
    checks: {
      ...held,
      'strength-class': 'fails weaker-than-original',
      'bolt-class': 'fails not-an-iso-class',
    },
  },
  {
    says: 'class 8.8 where an inch grade 8 is asked: the higher number, and the weaker bolt',
    source: 'SAE J429, from memory: grade 8 is near class 10.9',
    faces: [bolt, { ...joint, 'strength-class': '8' }],
    outcome: 'fails',
    checks: {
      ...held,
      harder: 'fails harder-than-original',
      'joint-class': 'fails not-an-iso-class-asked',
    },
  },
  {
    says: 'a long shank in a thinner flange: the head stops before anything is clamped',
    faces: [{ ...bolt, 'thread-length': '18.0 mm' }, joint],
    outcome: 'fails',
    checks: { ...held, shank: 'fails runs-out-of-thread' },
  },
  {
    says: 'a bolt that stands on the bottom of its hole',
    faces: [{ ...bolt, length: '55.0 mm', 'thread-length': '32.0 mm' }, joint],
    outcome: 'fails',
    checks: { ...held, bottom: 'fails bottoms' },
  },
  {
    says: 'the same bolt with an adapter plate of ten millimetres in the grip',
    faces: [
      { ...bolt, length: '55.0 mm', 'thread-length': '32.0 mm' },
      { ...joint, grip: '35.0 mm' },
    ],
    outcome: 'holds',
    checks: held,
  },
  {
    says: 'the old bolt with that plate stays short in the aluminium',
    faces: [bolt, { ...joint, grip: '35.0 mm' }],
    outcome: 'fails',
    checks: { ...held, 'reach-in-casting': 'fails stays-short' },
  },
  {
    says: 'and shorter than one diameter, in steel too',
    faces: [bolt, { ...joint, grip: '38.0 mm', material: 'steel' }],
    outcome: 'fails',
    checks: { ...heldInSteel, 'reach-in-steel': 'fails stays-short' },
  },
  {
    says: 'what holds in aluminium pulls out of magnesium',
    faces: [
      { ...bolt, length: '43.0 mm' },
      { ...joint, material: 'magnesium' },
    ],
    outcome: 'fails',
    checks: { ...heldInMagnesium, 'reach-in-magnesium': 'fails stays-short' },
  },
  {
    says: 'a thin lug of magnesium, however long the bolt',
    faces: [
      { ...bolt, length: '47.0 mm' },
      { ...joint, material: 'magnesium', hole: 'through', 'thread-depth': '16.0 mm' },
    ],
    outcome: 'fails',
    checks: {
      ...heldThroughMagnesium,
      'depth-in-magnesium': 'fails too-little-thread',
    },
  },
  {
    says: 'a thin plate of aluminium, tapped through',
    faces: [bolt, { ...joint, hole: 'through', 'thread-depth': '12.0 mm' }],
    outcome: 'fails',
    checks: { ...heldBesideBottom, 'depth-in-casting': 'fails too-little-thread' },
  },
  {
    says: 'a sheet of steel with a few turns of thread',
    faces: [bolt, { ...joint, material: 'steel', hole: 'through', 'thread-depth': '4.0 mm' }],
    outcome: 'fails',
    checks: { ...heldThroughSteel, 'depth-in-steel': 'fails too-little-thread' },
  },
  {
    says: 'a thread in plastic, for which there is no rule here',
    faces: [bolt, { ...joint, material: 'plastic' }],
    outcome: 'fails',
    checks: { ...heldBesideMaterial, 'known-material': 'fails no-rule-for-this-material' },
  },
  {
    says: 'a nut that is not filled',
    faces: [{ ...bolt, length: '31.0 mm' }, nut],
    outcome: 'fails',
    checks: { ...heldInNut, 'through-the-nut': 'fails nut-not-filled' },
  },
  {
    says: 'a hole that is neither blind nor goes through',
    faces: [bolt, { ...joint, hole: 'open' }],
    outcome: 'fails',
    checks: { ...heldBesideBottom, 'known-hole': 'fails neither-blind-nor-through' },
  },
  {
    says: 'a bolt of ten in a hole of nine',
    faces: [bolt, { ...joint, 'clearance-hole': '9.0 mm' }],
    outcome: 'fails',
    checks: { ...held, 'clearance-hole': 'fails bolt-does-not-pass' },
  },
  {
    says: 'a flanged head on a small spot face',
    faces: [
      { ...bolt, 'head-diameter': '21.0 mm' },
      { ...joint, 'seat-diameter': '18 mm' },
    ],
    outcome: 'fails',
    checks: { ...held, 'head-seat': 'fails head-does-not-sit' },
  },
  {
    says: 'a cap screw for a low head, under a clutch that turns',
    faces: [
      { ...bolt, 'head-height': '10.0 mm' },
      { ...joint, 'head-room': '7.5 mm' },
    ],
    outcome: 'fails',
    checks: { ...held, 'head-room': 'fails head-fouls' },
  },
  {
    says: 'a number on the head that is no class, however high',
    faces: [{ ...bolt, 'strength-class': '10' }, joint],
    outcome: 'fails',
    checks: {
      ...held,
      harder: 'fails harder-than-original',
      'bolt-class': 'fails not-an-iso-class',
    },
  },
  {
    says: 'class 4.6 in place of 4.8',
    faces: [
      { ...bolt, 'strength-class': '4.6' },
      { ...joint, 'strength-class': '4.8' },
    ],
    outcome: 'fails',
    checks: { ...held, 'strength-class': 'fails weaker-than-original', yield: 'holds' },
  },
  ...['5.6', '5.8', '6.8', '8.8', '12.9'].map(softest),
];
