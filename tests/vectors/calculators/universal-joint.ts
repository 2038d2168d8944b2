/**
 * Check values of universal joints.
 */

import type { Vector } from '../vector.js';

const JOINT = {
  calculation: 'universal-joint',
  source: 'kinematics of the universal joint',
  basis: 'read, computed',
} as const;
const PROBLEM = {
  ...JOINT,
  given: { speed: '1200 rpm', fluctuation: '100 rpm' },
  source: 'worked problem of a universal joint, 1200 rpm with 100 rpm in all',
  basis: 'read',
} as const;

export const UNIVERSAL_JOINT: readonly Vector[] = [
  {
    ...PROBLEM,
    id: 'uj-01',
    output: 'slowestShare',
    expected: { near: 0.9592, within: 1e-4 },
  },
  { ...PROBLEM, id: 'uj-01 (fastest)', output: 'fastest', expected: { near: 1251, within: 0.5 } },
  { ...PROBLEM, id: 'uj-01 (slowest)', output: 'slowest', expected: { near: 1151, within: 0.5 } },
  {
    ...PROBLEM,
    id: 'uj-02',
    output: 'workingAngle',
    expected: { near: 16.42290792771023, within: 1e-9 },
    basis: 'arithmetic',
  },
  {
    ...JOINT,
    id: 'uj-05',
    given: { angle: ['3 deg'] },
    output: 'irregularity',
    expected: { near: 0.0027428112433471033, within: 1e-9 },
  },
  {
    ...JOINT,
    id: 'uj-06',
    given: { angle: ['6 deg', '4.5 deg'], phasing: 'one-plane' },
    output: 'residualAngle',
    expected: { near: 3.968626966596886, within: 1e-9 },
    source: 'Universal Joints and Driveshafts (handbook)',
    basis: 'from memory',
  },
  {
    ...JOINT,
    id: 'uj-07',
    given: { angle: ['4 deg', '4 deg'] },
    output: 'residualAngle',
    expected: { exactly: '0' },
  },
  {
    ...JOINT,
    id: 'uj-08',
    given: { angle: ['6.5 deg', '6 deg'] },
    output: 'keepsRule',
    expected: { exactly: 'fails' },
    source: 'driveline working-angle practice, 6 and 1.5 degrees',
  },
  {
    ...JOINT,
    id: 'uj-own-1',
    given: { angle: ['30 deg'] },
    output: 'fastestShare',
    // 2 / sqrt 3
    expected: { near: 1.1547005383792515, within: 1e-12 },
    source: 'the cosine of 30 degrees is half the root of three',
    basis: 'arithmetic',
  },
  {
    ...JOINT,
    id: 'uj-own-2',
    given: { sideAngle: ['45 deg'], planAngle: ['45 deg'] },
    output: 'workingAngle',
    // arctan sqrt 2, the angle between an edge and the diagonal of a cube
    expected: { near: 54.735610317245346, within: 1e-12 },
    source: 'the diagonal of a cube',
    basis: 'arithmetic',
  },
  {
    ...JOINT,
    id: 'uj-own-3',
    given: { angle: ['3 deg', '4 deg'], phasing: 'quarter-turn' },
    output: 'residualAngle',
    expected: { exactly: '5' },
    source: 'the triangle of 3, 4 and 5',
    basis: 'arithmetic',
  },
];
