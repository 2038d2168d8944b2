/**
 * Each way in which a wheel does not go on a hub, one at a time.
 */

import type { Fixture } from '../fixture.js';
import { held, heldBall, heldFlat, hub, wheel } from './fits.js';

const ball = { seat: 'ball', 'seat-radius': '12 mm' };

const { 'equal-seat-angle': _, ...heldWithoutAngle } = held;

export const fixtures: readonly Fixture[] = [
  {
    says: 'four holes on five studs',
    faces: [hub, { ...wheel, holes: 4 }],
    outcome: 'fails',
    checks: { ...held, 'equal-holes': 'fails not-equal' },
  },
  {
    says: '112 and 114.3 are never close enough',
    faces: [{ ...hub, pcd: '112 mm' }, wheel],
    outcome: 'fails',
    checks: { ...held, pcd: 'fails pcd-differs' },
  },
  {
    says: 'a hub that is drilled for two pitch circles, and a wheel of neither',
    faces: [{ ...hub, alternatives: [{ pcd: '100 mm' }, { pcd: '112 mm' }] }, wheel],
    outcome: 'fails',
    checks: { ...held, pcd: 'fails pcd-differs' },
  },
  {
    says: 'a bore of 54.1 on a spigot of 56.1',
    source: 'arithmetic: the bore is 2 mm smaller',
    faces: [
      { ...hub, spigot: '56.1 mm' },
      { ...wheel, bore: '54.1 mm' },
    ],
    outcome: 'fails',
    checks: { ...held, bore: 'fails bore-too-small' },
  },
  {
    says: 'a cone in a ball seat',
    faces: [hub, { ...wheel, ...ball }],
    outcome: 'fails',
    checks: { ...heldWithoutAngle, 'equal-seat': 'fails not-equal' },
  },
  {
    says: 'a cone of 60 degrees in one of 90',
    faces: [hub, { ...wheel, 'seat-angle': '90 deg' }],
    outcome: 'fails',
    checks: { ...held, 'equal-seat-angle': 'fails not-equal' },
  },
  {
    says: 'a ball of radius 12 in one of 14',
    faces: [
      { ...hub, ...ball },
      { ...wheel, ...ball, 'seat-radius': '14 mm' },
    ],
    outcome: 'fails',
    checks: { ...heldBall, 'equal-seat-radius': 'fails not-equal' },
  },
  {
    says: 'flat seats and a loose bore: nothing centres the wheel',
    faces: [
      { ...hub, seat: 'flat', spigot: '54.1 mm' },
      { ...wheel, seat: 'flat' },
    ],
    outcome: 'fails',
    checks: { ...heldFlat, 'flat-seat-centring': 'fails not-centred' },
  },
  {
    says: 'nuts of M12x1.5 with the wheel, studs of M12x1.25: they start together and strip',
    source: 'ISO 965, from memory: pitches must be equal',
    faces: [
      { ...hub, thread: 'M12x1.25' },
      { ...wheel, thread: 'M12x1.5' },
    ],
    outcome: 'fails',
    checks: { ...held, 'equal-thread': 'fails not-equal' },
  },
  {
    says: 'studs of 14 mm in holes of 13 mm',
    faces: [
      { ...hub, stud: '14 mm' },
      { ...wheel, 'stud-hole': '13.0 mm' },
    ],
    outcome: 'fails',
    checks: { ...held, 'stud-hole': 'fails stud-hole-too-small' },
  },
  {
    says: 'studs too short for a thick wheel',
    faces: [
      { ...hub, stud: '12 mm', 'stud-length': '28 mm' },
      { ...wheel, 'seat-thickness': '20 mm' },
    ],
    outcome: 'fails',
    checks: { ...held, engagement: 'fails too-little-thread' },
  },
  {
    says: 'a seat of another form fits by its name, with a caution that only the name was compared',
    faces: [
      { ...hub, seat: 'shank' },
      { ...wheel, seat: 'shank' },
    ],
    outcome: 'holds',
    checks: { ...heldWithoutAngle, 'known-seat': 'fails other-seat-form' },
  },
];
