/**
 * What nobody recorded keeps a wheel open and is named.
 */

import { type Fixture, without } from '../fixture.js';
import { held, heldBall, hub, wheel } from './fits.js';

const ball = { seat: 'ball', 'seat-radius': '12 mm' };
const { 'equal-seat-angle': _, ...heldWithoutAngle } = held;

export const fixtures: readonly Fixture[] = [
  {
    says: 'the number of holes',
    faces: [hub, without(wheel, 'holes')],
    outcome: 'open',
    checks: { ...held, 'equal-holes': 'open not-recorded' },
    missing: ['right.holes'],
  },
  {
    says: 'the pitch circle of the hub',
    faces: [without(hub, 'pcd'), wheel],
    outcome: 'open',
    checks: { ...held, pcd: 'open not-recorded' },
    missing: ['left.pcd'],
  },
  {
    says: 'the spigot',
    faces: [without(hub, 'spigot'), wheel],
    outcome: 'open',
    checks: { ...held, bore: 'open not-recorded', centring: 'open not-recorded' },
    missing: ['left.spigot'],
  },
  {
    says: 'the centre bore',
    faces: [hub, without(wheel, 'bore')],
    outcome: 'open',
    checks: { ...held, bore: 'open not-recorded', centring: 'open not-recorded' },
    missing: ['right.bore'],
  },
  {
    says: 'the seat of the nuts',
    faces: [without(hub, 'seat'), wheel],
    outcome: 'open',
    checks: { ...held, 'equal-seat': 'open not-recorded', 'known-seat': 'open not-recorded' },
    missing: ['left.seat'],
  },
  {
    says: 'the angle of a cone',
    faces: [hub, without(wheel, 'seat-angle')],
    outcome: 'open',
    checks: { ...held, 'equal-seat-angle': 'open not-recorded' },
    missing: ['right.seat-angle'],
  },
  {
    says: 'the radius of a ball: a ball seat alone says too little',
    faces: [
      { ...hub, seat: 'ball' },
      { ...wheel, ...ball },
    ],
    outcome: 'open',
    checks: { ...heldBall, 'equal-seat-radius': 'open not-recorded' },
    missing: ['left.seat-radius'],
  },
  {
    says: 'the angle is not asked of balls, nor the radius of cones',
    faces: [without(hub, 'seat-angle'), { ...without(wheel, 'seat-angle'), ...ball }],
    outcome: 'fails',
    checks: { ...heldWithoutAngle, 'equal-seat': 'fails not-equal' },
  },
  {
    says: 'the studs: whether they pass and hold by enough thread',
    faces: [without(hub, 'stud'), wheel],
    outcome: 'open',
    checks: { ...held, 'stud-hole': 'open not-recorded', engagement: 'open not-recorded' },
    missing: ['left.stud'],
  },
  {
    says: 'the holes for the studs',
    faces: [hub, without(wheel, 'stud-hole')],
    outcome: 'open',
    checks: { ...held, 'stud-hole': 'open not-recorded' },
    missing: ['right.stud-hole'],
  },
  {
    says: 'the length of the studs: a thick wheel may leave the nuts too little thread',
    faces: [without(hub, 'stud-length'), wheel],
    outcome: 'open',
    checks: { ...held, engagement: 'open not-recorded' },
    missing: ['left.stud-length'],
  },
  {
    says: 'the thickness of the wheel under its seats',
    faces: [hub, without(wheel, 'seat-thickness')],
    outcome: 'open',
    checks: { ...held, engagement: 'open not-recorded' },
    missing: ['right.seat-thickness'],
  },
];
