/**
 * Each way in which a lever and a gearbox do not go together, one at a time.
 */

import type { Fixture } from '../fixture.js';
import { gearbox, held, heldUnlocked, heldWithLockAtLever, lever } from './fits.js';

export const fixtures: readonly Fixture[] = [
  {
    says: 'rods at a gearbox that takes two cables',
    faces: [gearbox, { ...lever, type: 'rods' }],
    outcome: 'fails',
    checks: { ...held, 'equal-type': 'fails not-equal' },
  },
  {
    says: 'a type that only its name tells, with a caution',
    faces: [
      { ...gearbox, type: 'hydraulic' },
      { ...lever, type: 'hydraulic' },
    ],
    outcome: 'holds',
    checks: { ...held, 'known-type': 'fails other-type' },
  },
  {
    says: 'a five-speed lever on a six-speed box: the sixth gear needs a sixth place',
    faces: [gearbox, { ...lever, gates: 3 }],
    outcome: 'fails',
    checks: { ...held, gates: 'fails gate-missing' },
  },
  {
    says: 'reverse on the other side of the pattern',
    faces: [gearbox, { ...lever, reverse: 'right-back' }],
    outcome: 'fails',
    checks: { ...held, 'equal-reverse': 'fails not-equal' },
  },
  {
    says: 'nobody locks out reverse: it is found at speed',
    faces: [{ ...gearbox, 'reverse-lock': 'at-lever' }, lever],
    outcome: 'fails',
    checks: { ...heldUnlocked, 'lock-out': 'fails reverse-not-locked-out' },
  },
  {
    says: 'a lock that is neither in the box nor at the lever',
    faces: [
      { ...gearbox, 'reverse-lock': 'in-the-cable' },
      { ...lever, 'lock-out': 'lift-ring' },
    ],
    outcome: 'fails',
    checks: { ...heldWithLockAtLever, 'known-reverse-lock': 'fails reverse-lock-not-named' },
  },
  {
    says: 'the linkage turns the shift round: first gear is second',
    faces: [gearbox, { ...lever, 'shift-sense': 'pull' }],
    outcome: 'fails',
    checks: { ...held, 'equal-shift-sense': 'fails not-equal' },
  },
  {
    says: 'the linkage turns the selection round: first gear is fifth',
    faces: [gearbox, { ...lever, 'gate-sense': 'push' }],
    outcome: 'fails',
    checks: { ...held, 'equal-gate-sense': 'fails not-equal' },
  },
  {
    says: 'too short a throw leaves the gears half engaged',
    faces: [gearbox, { ...lever, 'shift-travel': '18.0 ±0.5 mm' }],
    outcome: 'fails',
    checks: { ...held, 'shift-travel': 'fails too-little-travel' },
  },
  {
    says: 'too little selection never finds the outer gate',
    faces: [
      { ...gearbox, 'gate-travel': '32 ±0.5 mm' },
      { ...lever, 'gate-travel': '24 ±0.5 mm' },
    ],
    outcome: 'fails',
    checks: { ...held, 'gate-travel': 'fails too-little-selection' },
  },
  {
    says: 'an eye against a ball',
    faces: [gearbox, { ...lever, end: 'eye' }],
    outcome: 'fails',
    checks: { ...held, 'equal-end': 'fails not-equal' },
  },
  {
    says: 'a ball of 13 mm and a socket of 10 mm',
    faces: [
      { ...gearbox, pin: '13.0 ±0.05 mm' },
      { ...lever, eye: '10.1 ±0.05 mm' },
    ],
    outcome: 'fails',
    checks: { ...held, pin: 'fails pin-does-not-go-in', 'pin-play': 'holds' },
  },
  {
    says: 'a lever for the top of a box, and a box that takes cables',
    faces: [gearbox, { ...lever, type: 'direct' }],
    outcome: 'fails',
    checks: { ...held, 'equal-type': 'fails not-equal' },
  },
  {
    says: 'cables, and a box with its lever on top',
    faces: [{ ...gearbox, type: 'direct' }, lever],
    outcome: 'fails',
    checks: { ...held, 'equal-type': 'fails not-equal' },
  },
];
