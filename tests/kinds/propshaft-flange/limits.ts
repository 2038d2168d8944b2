/**
 * Just inside, exactly on and just outside each limit of a flange.
 */

import type { Outcome } from '../../../src/domain/check/state.js';
import type { Fixture } from '../fixture.js';
import { held, recess, spigot } from './fits.js';

type Row = readonly [string, object, object, string, string];

/** What it says, on the spigot, on the recess, the check, what becomes of it. */
const rows: readonly Row[] = [
  ['pitch circle: 0.199 mm more', {}, { pcd: '70.199 mm' }, 'pcd', 'holds'],
  ['pitch circle: 0.2 mm more', {}, { pcd: '70.2 mm' }, 'pcd', 'holds'],
  ['pitch circle: 0.201 mm more', {}, { pcd: '70.201 mm' }, 'pcd', 'fails pcd-differs'],
  ['pitch circle: 0.199 mm less', {}, { pcd: '69.801 mm' }, 'pcd', 'holds'],
  ['pitch circle: 0.2 mm less', {}, { pcd: '69.8 mm' }, 'pcd', 'holds'],
  ['pitch circle: 0.201 mm less', {}, { pcd: '69.799 mm' }, 'pcd', 'fails pcd-differs'],
  ['pitch circle: a reading', {}, { pcd: '70 ±0.3 mm' }, 'pcd', 'open not-precise-enough'],
  ...registers([
    ['a thousandth of play', '50.001', 'holds'],
    ['no play', '50.000', 'holds'],
    ['a thousandth too tight', '49.999', 'fails too-small'],
    ['0.099 mm of play', '50.099', 'holds'],
    ['0.100 mm of play', '50.100', 'holds'],
    ['0.101 mm of play', '50.101', 'fails too-large'],
  ]),
  [
    'register: both read with a vernier caliper',
    { register: { is: '50.00 mm', tool: 'caliper' } },
    { register: { is: '50.05 mm', tool: 'caliper' } },
    'register',
    'open not-precise-enough',
  ],
  ...depths([
    ['a thousandth deeper than the register is high', '2.501', 'holds'],
    ['as deep as the register is high', '2.500', 'holds'],
    ['a thousandth too shallow', '2.499', 'fails register-bottoms'],
  ]),
  ...plays([
    ['0.099 mm apart', '70.099 mm', 'holds'],
    ['0.100 mm apart', '70.100 mm', 'holds'],
    ['0.101 mm apart', '70.101 mm', 'fails bolts-do-not-pass'],
  ]),
];

function registers(values: readonly (readonly [string, string, string])[]): Row[] {
  return values.map(([says, bore, verdict]) => [
    `register: ${says}`,
    { register: '50.000 ±0 mm' },
    { register: `${bore} ±0 mm` },
    'register',
    verdict,
  ]);
}

function depths(values: readonly (readonly [string, string, string])[]): Row[] {
  return values.map(([says, depth, verdict]) => [
    `recess: ${says}`,
    { 'register-depth': '2.5 ±0 mm' },
    { 'register-depth': `${depth} ±0 mm` },
    'register-depth',
    verdict,
  ]);
}

/** A tenth of play: a hole of 10.1 mm over a thread of 10 mm. */
function plays(values: readonly (readonly [string, string, string])[]): Row[] {
  const bolt = { 'bolt-diameter': '10 mm' };
  return values.map(([says, pcd, verdict]) => [
    `bolts with 0.1 mm of play: pitch circles ${says}`,
    { ...bolt, 'bolt-hole': '10.1 ±0 mm' },
    { ...bolt, 'bolt-hole': '10 ±0 mm', pcd },
    'bolt-play',
    verdict,
  ]);
}

const PASS = { 'bolts-pass': 'holds' };

export const fixtures: readonly Fixture[] = rows.map(([says, left, right, check, verdict]) => {
  const outcome = verdict.split(' ')[0] as Outcome;
  return {
    says,
    faces: [
      { ...spigot, ...left },
      { ...recess, ...right },
    ],
    outcome,
    checks: { ...held, ...(check === 'bolt-play' ? PASS : {}), [check]: verdict },
  };
});
