/**
 * Each way in which a gear set does not go into an axle, one at a time.
 */

import type { Fixture } from '../fixture.js';
import { carrier, crownWheel, heldCrown, heldPinion, housing, pinion } from './fits.js';

export const fixtures: readonly Fixture[] = [
  {
    says: 'a crown wheel where the pinion goes',
    faces: [crownWheel, housing],
    outcome: 'fails',
    checks: { 'equal-place': 'fails not-equal', 'known-place': 'holds' },
  },
  {
    says: 'a place that no axle has',
    faces: [
      { ...crownWheel, place: 'side' },
      { ...carrier, place: 'side' },
    ],
    outcome: 'fails',
    checks: { 'equal-place': 'holds', 'known-place': 'fails neither-crown-nor-pinion' },
  },
  {
    says: '43/12 in the same housing takes another carrier, though every bolt fits',
    faces: [{ ...crownWheel, 'carrier-ratio': '43/12' }, carrier],
    outcome: 'fails',
    checks: { ...heldCrown, 'above-lowest': 'fails below-carrier-break' },
  },
  {
    says: '43/9 with a crown wheel of usual thickness is above the carrier break',
    faces: [{ ...crownWheel, 'carrier-ratio': '43/9' }, carrier],
    outcome: 'fails',
    checks: { ...heldCrown, 'below-highest': 'fails above-carrier-break' },
  },
  {
    says: 'eight bolts against ten',
    faces: [{ ...crownWheel, 'crown-bolts': 8 }, carrier],
    outcome: 'fails',
    checks: { ...heldCrown, 'equal-crown-bolts': 'fails not-equal' },
  },
  {
    says: 'a pitch circle of 128 against 132',
    faces: [{ ...crownWheel, 'crown-pcd': '132 mm' }, carrier],
    outcome: 'fails',
    checks: { ...heldCrown, 'crown-pcd': 'fails pcd-differs' },
  },
  {
    says: 'crown-wheel bolts with a left-hand thread',
    faces: [{ ...crownWheel, 'crown-thread': 'M10x1.25-lh' }, carrier],
    outcome: 'fails',
    checks: { ...heldCrown, 'equal-crown-thread': 'fails not-equal' },
  },
  {
    says: 'a register of another carrier',
    faces: [{ ...crownWheel, register: '112.00 ±0.01 mm' }, carrier],
    outcome: 'fails',
    checks: { ...heldCrown, register: 'fails register-differs' },
  },
  {
    says: 'a set for a pinion above the crown wheel has the other spiral',
    faces: [{ ...pinion, spiral: 'right' }, housing],
    outcome: 'fails',
    checks: { ...heldPinion, 'equal-spiral': 'fails not-equal' },
  },
  {
    says: 'an offset of 32 against 38.1',
    faces: [{ ...pinion, offset: '38.1 mm' }, housing],
    outcome: 'fails',
    checks: { ...heldPinion, 'equal-offset': 'fails not-equal' },
  },
  {
    says: 'a thicker stem at the head',
    faces: [{ ...pinion, head: '38 m6' }, housing],
    outcome: 'fails',
    checks: { ...heldPinion, head: 'fails head-bearing-differs' },
  },
  {
    says: 'a thinner stem at the tail',
    faces: [{ ...pinion, tail: '25 k6' }, housing],
    outcome: 'fails',
    checks: { ...heldPinion, tail: 'fails tail-bearing-differs' },
  },
  {
    says: 'a longer pinion than any shim makes up for',
    faces: [{ ...pinion, 'mounting-distance': '106.00 ±0.05 mm' }, housing],
    outcome: 'fails',
    checks: { ...heldPinion, 'mounting-distance': 'fails beyond-shims' },
  },
  {
    says: 'a pinion where the crown wheel goes',
    faces: [pinion, carrier],
    outcome: 'fails',
    checks: { 'equal-place': 'fails not-equal', 'known-place': 'holds' },
  },
];
