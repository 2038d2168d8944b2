/**
 * Each way in which a parking brake does not go together, one at a time.
 */

import type { Fixture } from '../fixture.js';
import {
  cable,
  drum,
  heldCable,
  heldDrum,
  heldPlate,
  knuckle,
  lever,
  plate,
  shoes,
} from './fits.js';

export const fixtures: readonly Fixture[] = [
  {
    says: 'a backplate with a pattern of another name',
    faces: [
      { ...plate, pattern: 'r-4' },
      { ...knuckle, pattern: 'r-5' },
    ],
    outcome: 'fails',
    checks: { ...heldPlate, 'equal-pattern': 'fails not-equal' },
  },
  {
    says: 'shoes of 190 in a drum of 172',
    faces: [{ ...shoes, 'shoe-diameter': '190 mm' }, drum],
    outcome: 'fails',
    checks: { ...heldDrum, 'shoes-go-in': 'fails drum-too-small' },
  },
  {
    says: 'shoes of 160 in a drum of 172 go in, and never bear',
    faces: [{ ...shoes, 'shoe-diameter': '160 mm' }, drum],
    outcome: 'fails',
    checks: { ...heldDrum, 'shoes-bear': 'fails drum-too-large' },
  },
  {
    says: 'a drum worn beyond the limit that is stamped on it',
    source: '49 CFR 570: drums within embossed limits, read in an excerpt',
    faces: [shoes, { ...drum, 'drum-diameter': '172.9 ±0.05 mm', 'drum-limit': '172.8 mm' }],
    outcome: 'fails',
    checks: { ...heldDrum, 'drum-limit': 'fails drum-worn-out' },
  },
  {
    says: 'shoes of 25 in a drum with 24 of braking surface',
    faces: [{ ...shoes, 'shoe-width': '25.0 mm' }, drum],
    outcome: 'fails',
    checks: { ...heldDrum, width: 'fails shoes-too-wide' },
  },
  {
    says: 'three holes on a knuckle with four',
    faces: [{ ...plate, holes: 3 }, knuckle],
    outcome: 'fails',
    checks: { ...heldPlate, 'equal-holes': 'fails not-equal' },
  },
  {
    says: 'a pitch circle of 110 on one of 104',
    faces: [{ ...plate, pcd: '110.0 ±0.05 mm' }, knuckle],
    outcome: 'fails',
    checks: { ...heldPlate, pcd: 'fails pcd-differs' },
  },
  {
    says: 'bolts of M8x1 with the plate, threads of M8x1.25: they start and strip',
    source: 'ISO 965, from memory: pitches must be equal',
    faces: [{ ...plate, bolt: 'M8x1' }, knuckle],
    outcome: 'fails',
    checks: { ...heldPlate, 'equal-bolt': 'fails not-equal' },
  },
  {
    says: 'bolts of 10 through holes for 8',
    faces: [plate, { ...knuckle, hole: '10 ±0 mm', bolt: 'M10x1.25', 'bolt-diameter': '10 mm' }],
    outcome: 'fails',
    checks: {
      ...heldPlate,
      'equal-bolt': 'fails not-equal',
      'backplate-hole': 'fails hole-too-small',
    },
  },
  {
    says: 'bolts of 8 into threads of 6',
    faces: [plate, { ...knuckle, hole: '6 ±0 mm', bolt: 'M6', 'bolt-diameter': '6 mm' }],
    outcome: 'fails',
    checks: {
      ...heldPlate,
      'equal-bolt': 'fails not-equal',
      'knuckle-hole': 'fails thread-too-small',
    },
  },
  {
    says: 'a backplate with a bore of 68 on a spigot of 72',
    faces: [{ ...plate, bore: '68.2 ±0.02 mm' }, knuckle],
    outcome: 'fails',
    checks: { ...heldPlate, bore: 'fails bore-too-small' },
  },
  {
    says: 'a backplate with a bore of 76 on a spigot of 72: the shoes stand beside the middle',
    faces: [{ ...plate, bore: '76.2 ±0.02 mm' }, knuckle],
    outcome: 'fails',
    checks: { ...heldPlate, centring: 'fails not-centred' },
  },
  {
    says: 'a cable with an eye on a lever for a ball',
    faces: [lever, { ...cable, 'cable-end': 'eye-6' }],
    outcome: 'fails',
    checks: { ...heldCable, 'equal-cable-end': 'fails not-equal' },
  },
  {
    says: 'a cable that pulls 12 mm on a lever that needs 18',
    faces: [lever, { ...cable, travel: '12 ±1 mm' }],
    outcome: 'fails',
    checks: { ...heldCable, travel: 'fails too-little-travel' },
  },
  {
    says: 'the drum is no place for the backplate',
    faces: [plate, drum],
    outcome: 'fails',
    checks: { 'equal-joint': 'fails not-equal', 'known-joint': 'holds' },
  },
  {
    says: 'the cable is no place for the shoes',
    faces: [shoes, cable],
    outcome: 'fails',
    checks: { 'equal-joint': 'fails not-equal', 'known-joint': 'holds' },
  },
  {
    says: 'the knuckle is no place for the lever',
    faces: [lever, knuckle],
    outcome: 'fails',
    checks: { 'equal-joint': 'fails not-equal', 'known-joint': 'holds' },
  },
  {
    says: 'a pattern is compared only where a backplate meets a knuckle',
    faces: [
      { ...plate, pattern: 'r-4' },
      { ...drum, pattern: 'r-5' },
    ],
    outcome: 'fails',
    checks: { 'equal-joint': 'fails not-equal', 'known-joint': 'holds' },
  },
  {
    says: 'and not the other way round either',
    faces: [
      { ...lever, pattern: 'r-4' },
      { ...knuckle, pattern: 'r-5' },
    ],
    outcome: 'fails',
    checks: { 'equal-joint': 'fails not-equal', 'known-joint': 'holds' },
  },
  {
    says: 'a joint by any other name is none',
    faces: [
      { ...shoes, joint: 'shoes' },
      { ...drum, joint: 'shoes' },
    ],
    outcome: 'fails',
    checks: { 'equal-joint': 'holds', 'known-joint': 'fails no-such-joint' },
  },
];
