/**
 * Just inside, exactly on and just outside each limit of a bearing unit on its knuckle.
 */

import type { Outcome } from '../../../src/domain/check/state.js';
import type { Fixture } from '../fixture.js';
import { held, knuckle, unit } from './fits.js';

interface Limit {
  readonly says: string;
  readonly onUnit: object;
  /** The parameter of the knuckle, what follows its number, and which number gives what. */
  readonly parameter: string;
  readonly rest: string;
  readonly check: string;
  readonly values: readonly (readonly [string, string])[];
}

const limits: readonly Limit[] = [
  {
    says: 'pitch circle of 115 mm',
    onUnit: {},
    parameter: 'pcd',
    rest: ' mm',
    check: 'pcd',
    values: [
      ['115.199', 'holds'],
      ['115.2', 'holds'],
      ['115.201', 'fails pcd-differs'],
      ['114.801', 'holds'],
      ['114.8', 'holds'],
      ['114.799', 'fails pcd-differs'],
    ],
  },
  {
    says: 'holes 70 mm apart',
    onUnit: {},
    parameter: 'hole-distance',
    rest: ' mm',
    check: 'hole-distance',
    values: [
      ['70.199', 'holds'],
      ['70.2', 'holds'],
      ['70.201', 'fails holes-spaced-otherwise'],
      ['69.8', 'holds'],
      ['69.799', 'fails holes-spaced-otherwise'],
    ],
  },
  {
    says: 'spigot of 78 mm',
    onUnit: { spigot: '78 ±0 mm' },
    parameter: 'bore',
    rest: ' ±0 mm',
    check: 'spigot',
    values: [
      ['78.001', 'holds'],
      ['78', 'holds'],
      ['77.999', 'fails too-small'],
      ['78.099', 'holds'],
      ['78.1', 'holds'],
      ['78.101', 'fails too-large'],
    ],
  },
  {
    says: 'spigot that is 24 mm long',
    onUnit: { 'spigot-length': '24 ±0 mm' },
    parameter: 'bore-depth',
    rest: ' ±0 mm',
    check: 'spigot-depth',
    values: [
      ['24.001', 'holds'],
      ['24', 'holds'],
      ['23.999', 'fails spigot-bottoms'],
    ],
  },
  {
    says: 'stand-off of 46 mm',
    onUnit: { 'stand-off': '46 ±0 mm' },
    parameter: 'stand-off',
    rest: ' ±0 mm',
    check: 'stand-off',
    values: [
      ['46.199', 'holds'],
      ['46.2', 'holds'],
      ['46.201', 'fails moves-wheel-and-disc'],
      ['45.801', 'holds'],
      ['45.8', 'holds'],
      ['45.799', 'fails moves-wheel-and-disc'],
    ],
  },
  {
    says: 'stand-off of 46 mm, read to half a millimetre',
    onUnit: {},
    parameter: 'stand-off',
    rest: ' ±0.5 mm',
    check: 'stand-off',
    values: [['46', 'open not-precise-enough']],
  },
];

export const fixtures: readonly Fixture[] = limits.flatMap(
  ({ says, onUnit, parameter, rest, check, values }) =>
    values.map(
      ([value, verdict]): Fixture => ({
        says: `${says}: ${value} mm on the knuckle`,
        faces: [
          { ...unit, ...onUnit },
          { ...knuckle, [parameter]: `${value}${rest}` },
        ],
        outcome: verdict.split(' ')[0] as Outcome,
        checks: { ...held, [check]: verdict },
      }),
    ),
);
