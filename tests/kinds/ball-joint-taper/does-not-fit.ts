/**
 * Each way in which a ball joint does not go into an eye, one at a time.
 */

import type { Fixture } from '../fixture.js';
import { eye, held, heldPinch, pinchEye, pinchedStem, stem } from './fits.js';

const ofTaper = { 'nut-thread': 'M12x1.25', 'pin-hole': '32 mm', 'ball-height': '20 mm' };

export const fixtures: readonly Fixture[] = [
  {
    says: 'a taper of 1 in 8 in an eye of 1 in 10 sits on a ring and works loose',
    faces: [{ ...stem, taper: '1/8' }, eye],
    outcome: 'fails',
    checks: { ...held, 'equal-taper': 'fails not-equal' },
  },
  {
    says: 'a stem 1 mm thinner goes through until the nut is on its last thread',
    source: 'arithmetic: 1 mm of diameter are 10 mm of length at 1 in 10',
    faces: [{ ...stem, 'large-end': '14.50 ±0.02 mm' }, eye],
    outcome: 'fails',
    checks: { ...held, 'nut-draws': 'fails taper-passes-through' },
  },
  {
    says: 'a stem 1 mm thicker carries at its tip alone',
    faces: [{ ...stem, 'large-end': '16.50 ±0.02 mm' }, eye],
    outcome: 'fails',
    checks: { ...held, seat: 'fails too-little-seat' },
  },
  {
    says: 'a short stem that sinks into a long eye',
    faces: [
      { ...stem, 'seat-length': '12.0 ±0.1 mm' },
      { ...eye, 'large-end': '15.80 ±0.02 mm' },
    ],
    outcome: 'fails',
    checks: { ...held, 'stem-length': 'fails taper-too-short' },
  },
  {
    says: 'a split-pin hole 4 mm above the slots of the nut',
    faces: [
      { ...stem, 'pin-hole': '36.0 mm' },
      { ...eye, 'pin-hole': '30.0 mm' },
    ],
    outcome: 'fails',
    checks: { ...held, 'pin-hole': 'fails pin-misses-the-nut' },
  },
  {
    says: 'a nut of M12x1.5 on a stem of M12x1.25: it starts and strips',
    source: 'ISO 965, from memory: pitches must be equal',
    faces: [
      { ...stem, 'nut-thread': 'M12x1.25' },
      { ...eye, 'nut-thread': 'M12x1.5' },
    ],
    outcome: 'fails',
    checks: { ...held, 'equal-nut-thread': 'fails not-equal' },
  },
  {
    says: 'a tapered stem in an eye with a pinch bolt',
    faces: [stem, pinchEye],
    outcome: 'fails',
    checks: { 'equal-form': 'fails not-equal', 'known-form': 'holds' },
  },
  {
    says: 'a pinched stem in an eye with a taper',
    faces: [pinchedStem, eye],
    outcome: 'fails',
    checks: { 'equal-form': 'fails not-equal', 'known-form': 'holds' },
  },
  {
    says: 'nor is a nut or a split pin compared where one of the two is pinched',
    faces: [
      { ...stem, ...ofTaper },
      { ...pinchEye, 'nut-thread': 'M14x1.5', 'pin-hole': '60 mm', 'ball-height': '40 mm' },
    ],
    outcome: 'fails',
    checks: { 'equal-form': 'fails not-equal', 'known-form': 'holds' },
  },
  {
    says: 'and not the other way round either',
    faces: [
      { ...pinchedStem, ...ofTaper },
      { ...eye, 'nut-thread': 'M14x1.5', 'pin-hole': '60 mm', 'ball-height': '40 mm' },
    ],
    outcome: 'fails',
    checks: { 'equal-form': 'fails not-equal', 'known-form': 'holds' },
  },
  {
    says: 'joints that are riveted on are another kind',
    faces: [
      { ...pinchedStem, form: 'riveted' },
      { ...pinchEye, form: 'riveted' },
    ],
    outcome: 'fails',
    checks: { 'equal-form': 'holds', 'known-form': 'fails neither-taper-nor-pinch' },
  },
  {
    says: 'a pinched stem of 19 in an eye of 18',
    faces: [{ ...pinchedStem, 'pinch-diameter': '18.98 ±0.01 mm' }, pinchEye],
    outcome: 'fails',
    checks: { ...heldPinch, 'stem-goes-in': 'fails stem-too-thick' },
  },
  {
    says: 'a pinched stem of 17 in an eye of 18: the bolt passes, nothing clamps',
    faces: [{ ...pinchedStem, 'pinch-diameter': '16.98 ±0.01 mm' }, pinchEye],
    outcome: 'fails',
    checks: { ...heldPinch, 'pinch-play': 'fails stem-too-thin' },
  },
  {
    says: 'a groove 2 mm below the bolt',
    faces: [{ ...pinchedStem, groove: '16.2 ±0.1 mm' }, pinchEye],
    outcome: 'fails',
    checks: { ...heldPinch, groove: 'fails groove-misses-the-bolt' },
  },
  {
    says: 'a groove for M10 in an eye with M12',
    faces: [pinchedStem, { ...pinchEye, 'pinch-bolt': 'M12x1.5' }],
    outcome: 'fails',
    checks: { ...heldPinch, 'equal-pinch-bolt': 'fails not-equal' },
  },
];
