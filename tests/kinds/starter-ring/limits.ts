/**
 * Just inside, exactly on and just outside each limit of a starter and its ring gear.
 */

import type { Expected, Fixture } from '../fixture.js';
import { held, ring, starter } from './fits.js';

interface Limit {
  readonly says: string;
  readonly onRing?: object;
  /** The parameter of the starter, with the values inside, on and outside. */
  readonly parameter: string;
  readonly values: readonly [string, string, string];
  readonly check: string;
  readonly failure: string;
  readonly isCaution?: true;
  /** Other checks that the same values fail. */
  readonly besides?: Expected;
}

const tight = { backlash: 'fails needs-thinned-teeth' };

const limits: readonly Limit[] = [
  {
    says: 'centres without spread',
    parameter: 'centre-distance',
    values: ['141.251', '141.250', '141.249'],
    check: 'mesh',
    failure: 'fails gears-too-close',
    besides: tight,
  },
  {
    says: 'most spread of the centres, 0.040 in',
    parameter: 'centre-distance',
    values: ['142.265', '142.266', '142.267'],
    check: 'depth-of-mesh',
    failure: 'fails gears-too-far-apart',
  },
  {
    says: 'least spread without thinned teeth, 0.020 in',
    parameter: 'centre-distance',
    values: ['141.759', '141.758', '141.757'],
    check: 'backlash',
    failure: 'fails needs-thinned-teeth',
    isCaution: true,
  },
  {
    says: 'tip circle over that of the blank',
    parameter: 'tip-diameter',
    values: ['30.499', '30.500', '30.501'],
    check: 'blank',
    failure: 'fails not-this-blank',
    isCaution: true,
  },
  {
    says: 'tip circle under that of the blank',
    parameter: 'tip-diameter',
    values: ['29.501', '29.500', '29.499'],
    check: 'blank',
    failure: 'fails not-this-blank',
    isCaution: true,
  },
  {
    says: 'pinion at rest',
    onRing: { 'face-distance': '20 ±0 mm' },
    parameter: 'rest-distance',
    values: ['18.499', '18.500', '18.501'],
    check: 'rest',
    failure: 'fails pinion-drags',
  },
  {
    says: 'pinion thrown out',
    onRing: { 'face-distance': '20 ±0 mm', 'ring-width': '12 ±0 mm' },
    parameter: 'thrown-distance',
    values: ['28.001', '28.000', '27.999'],
    check: 'throw',
    failure: 'fails pinion-does-not-reach',
  },
];

const WHERE = ['just inside', 'exactly on it', 'just outside'];

const trios = limits.flatMap((limit) =>
  limit.values.map((value, index): Fixture => {
    const isOutside = index === 2;
    const { says, parameter, check, failure, besides } = limit;
    return {
      says: `${says}: ${WHERE[index]}`,
      faces: [
        { ...ring, ...limit.onRing },
        { ...starter, [parameter]: `${value} ±0 mm` },
      ],
      outcome: isOutside && limit.isCaution !== true ? 'fails' : 'holds',
      checks: { ...held, ...besides, [check]: isOutside ? failure : 'holds' },
    };
  }),
);

export const fixtures: readonly Fixture[] = [
  ...trios,
  {
    says: 'a centre distance by the tape is too coarse for a mesh',
    faces: [ring, { ...starter, 'centre-distance': { is: '142 mm', tool: 'tape' } }],
    outcome: 'open',
    checks: {
      ...held,
      mesh: 'open not-precise-enough',
      'depth-of-mesh': 'open not-precise-enough',
      backlash: 'open not-precise-enough',
    },
  },
];
