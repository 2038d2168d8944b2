/**
 * Just inside, exactly on and just outside each limit of a wheel mount.
 */

import type { Outcome } from '../../../src/domain/check/state.js';
import type { Fixture } from '../fixture.js';
import { held, heldFlat, hub, wheel } from './fits.js';

const flatHub = { ...hub, seat: 'flat' };
const flatWheel = { ...wheel, seat: 'flat' };

function row(says: string, onHub: object, onWheel: object, changed: Record<string, string>) {
  const failing = Object.entries(changed).filter(([id]) => id !== 'centring');
  const outcome: Outcome = failing.some(([, verdict]) => verdict !== 'holds') ? 'fails' : 'holds';
  return {
    says,
    faces: [
      { ...hub, ...onHub },
      { ...wheel, ...onWheel },
    ],
    outcome,
    checks: { ...held, ...changed },
  } as const;
}

const pcdFails = { pcd: 'fails pcd-differs' };
const ring = { centring: 'fails needs-centring-ring' };
const exact = { spigot: '56.00 ±0 mm' };

export const fixtures: readonly Fixture[] = [
  row('pitch circle: 0.199 mm more', {}, { pcd: '114.499 mm' }, {}),
  row('pitch circle: 0.2 mm more', {}, { pcd: '114.5 mm' }, {}),
  row('pitch circle: 0.201 mm more', {}, { pcd: '114.501 mm' }, pcdFails),
  row('pitch circle: 0.199 mm less', {}, { pcd: '114.101 mm' }, {}),
  row('pitch circle: 0.2 mm less', {}, { pcd: '114.1 mm' }, {}),
  row('pitch circle: 0.201 mm less', {}, { pcd: '114.099 mm' }, pcdFails),
  {
    ...row('pitch circle: a reading that straddles the limit', {}, { pcd: '114.5 ±0.01 mm' }, {}),
    outcome: 'open',
    checks: { ...held, pcd: 'open not-precise-enough' },
  },
  row('bore: a thousandth larger than the spigot', exact, { bore: '56.001 ±0 mm' }, {}),
  row('bore: exactly the size of the spigot', exact, { bore: '56.00 ±0 mm' }, {}),
  row(
    'bore: a thousandth smaller than the spigot',
    exact,
    { bore: '55.999 ±0 mm' },
    { bore: 'fails bore-too-small' },
  ),
  {
    ...row('bore: both read to a tenth, and nominally equal', { spigot: '56.1 mm' }, {}, {}),
    faces: [
      { ...hub, spigot: '56.1 mm' },
      { ...wheel, bore: '56.1 mm' },
    ],
    outcome: 'open',
    checks: { ...held, bore: 'open not-precise-enough' },
  },
  {
    ...row('bore: 56 mm by the tape', {}, {}, {}),
    faces: [{ ...hub, spigot: { is: '56 mm', tool: 'tape' } }, wheel],
    outcome: 'open',
    checks: {
      ...held,
      bore: 'open not-precise-enough',
      centring: 'open not-precise-enough',
    },
  },
  row('centring: 0.099 mm of play', exact, { bore: '56.099 ±0 mm' }, {}),
  row('centring: 0.100 mm of play', exact, { bore: '56.100 ±0 mm' }, {}),
  row('centring: 0.101 mm of play', exact, { bore: '56.101 ±0 mm' }, ring),
  {
    says: 'flat seats: 0.099 mm of play',
    faces: [
      { ...flatHub, ...exact },
      { ...flatWheel, bore: '56.099 ±0 mm' },
    ],
    outcome: 'holds',
    checks: heldFlat,
  },
  {
    says: 'flat seats: 0.100 mm of play',
    faces: [
      { ...flatHub, ...exact },
      { ...flatWheel, bore: '56.100 ±0 mm' },
    ],
    outcome: 'holds',
    checks: heldFlat,
  },
  {
    says: 'flat seats: 0.101 mm of play',
    faces: [
      { ...flatHub, ...exact },
      { ...flatWheel, bore: '56.101 ±0 mm' },
    ],
    outcome: 'fails',
    checks: { ...heldFlat, 'flat-seat-centring': 'fails not-centred' },
  },
  row(
    'stud hole: a thousandth of room',
    { stud: '12 mm' },
    { 'stud-hole': '12.001 ±0 mm' },
    { 'stud-hole': 'holds' },
  ),
  row(
    'stud hole: exactly the stud',
    { stud: '1/2 in' },
    { 'stud-hole': '12.7 ±0 mm' },
    { 'stud-hole': 'holds' },
  ),
  row(
    'stud hole: a thousandth too small',
    { stud: '12 mm' },
    { 'stud-hole': '11.999 ±0 mm' },
    { 'stud-hole': 'fails stud-hole-too-small' },
  ),
  row(
    'thread: a thousandth more than one diameter',
    { stud: '12 mm', 'stud-length': '22.001 ±0 mm' },
    { 'seat-thickness': '10 ±0 mm' },
    { engagement: 'holds' },
  ),
  row(
    'thread: exactly one diameter',
    { stud: '12 mm', 'stud-length': '22 ±0 mm' },
    { 'seat-thickness': '10 ±0 mm' },
    { engagement: 'holds' },
  ),
  row(
    'thread: a thousandth less than one diameter',
    { stud: '12 mm', 'stud-length': '21.999 ±0 mm' },
    { 'seat-thickness': '10 ±0 mm' },
    { engagement: 'fails too-little-thread' },
  ),
];
