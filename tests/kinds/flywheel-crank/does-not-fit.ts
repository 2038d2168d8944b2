/**
 * Each way in which a flywheel does not go on a crankshaft.
 */

import type { Fixture } from '../fixture.js';
import {
  common,
  crankshaft,
  dowelCrankshaft,
  dowelFlywheel,
  flywheel,
  held,
  heldDowel,
  heldOffset,
  offsetCrankshaft,
  offsetFlywheel,
} from './fits.js';

export const fixtures: readonly Fixture[] = [
  {
    says: 'six bolts and eight',
    faces: [{ ...crankshaft, holes: 6 }, flywheel],
    outcome: 'fails',
    checks: { ...held, 'equal-holes': 'fails not-equal' },
  },
  {
    says: 'pitch circles of 75 and 78 mm: no bolt finds its thread',
    faces: [crankshaft, { ...flywheel, pcd: '78 mm' }],
    outcome: 'fails',
    checks: { ...held, pcd: 'fails pcd-differs', 'bolt-play': 'fails bolts-do-not-enter' },
  },
  {
    says: 'a bore smaller than the spigot',
    faces: [crankshaft, { ...flywheel, bore: '51.50 ±0.01 mm' }],
    outcome: 'fails',
    checks: { ...held, register: 'fails too-small' },
  },
  {
    says: 'the trap of the loose register: every bolt goes in, and the flywheel runs out',
    faces: [crankshaft, { ...flywheel, bore: '54.00 ±0.01 mm' }],
    outcome: 'fails',
    checks: { ...held, register: 'fails too-large' },
  },
  {
    says: 'bolts of 12 mm and holes for M10',
    faces: [crankshaft, { ...flywheel, 'bolt-hole': '10.5 ±0.1 mm' }],
    outcome: 'fails',
    checks: {
      ...held,
      'bolt-hole': 'fails bolt-hole-too-small',
      'bolt-play': 'fails bolts-do-not-enter',
    },
  },
  {
    says: 'bolts of M12x1.5 with the flywheel for threads of M12x1.25: they start and strip',
    source: 'ISO 965, from memory: pitches must be equal',
    faces: [
      { ...crankshaft, bolt: 'm12x1.25' },
      { ...flywheel, bolt: 'm12x1.5' },
    ],
    outcome: 'fails',
    checks: { ...held, 'equal-bolt': 'fails not-equal' },
  },
  {
    says: 'the trap of the odd hole: all bolts but one go in',
    faces: [offsetCrankshaft, flywheel],
    outcome: 'fails',
    checks: { ...common, 'equal-position': 'fails not-equal' },
  },
  {
    says: 'the odd hole on the flywheel, none on the crankshaft',
    faces: [crankshaft, offsetFlywheel],
    outcome: 'fails',
    checks: { ...held, 'equal-position': 'fails not-equal' },
  },
  {
    says: 'odd holes on both, out of place on opposite sides',
    faces: [offsetCrankshaft, { ...offsetFlywheel, 'odd-distance': '26.4 ±0.05 mm' }],
    outcome: 'fails',
    checks: { ...heldOffset, 'odd-hole': 'fails odd-hole-elsewhere' },
  },
  {
    says: 'a dowel in the crankshaft and no hole for it',
    faces: [dowelCrankshaft, flywheel],
    outcome: 'fails',
    checks: { ...common, 'equal-position': 'fails not-equal' },
  },
  {
    says: 'a dowel of 8 mm and a hole of 6 mm',
    faces: [dowelCrankshaft, { ...dowelFlywheel, 'dowel-hole': '6 H7' }],
    outcome: 'fails',
    checks: { ...heldDowel, dowel: 'fails dowel-does-not-enter' },
  },
];
