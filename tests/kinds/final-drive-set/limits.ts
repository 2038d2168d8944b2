/**
 * Just inside, exactly on and just outside each limit of a gear set.
 */

import type { Expected, Fixture } from '../fixture.js';
import { carrier, crownWheel, heldCrown, heldPinion, housing, pinion } from './fits.js';

interface Limit {
  readonly says: string;
  readonly faces: Fixture['faces'];
  readonly held: Expected;
  /** The parameter of the set, with the values inside, on and outside. */
  readonly parameter: string;
  readonly values: readonly [string, string, string];
  readonly check: string;
  readonly failure: string;
}

const crown = {
  faces: [
    crownWheel,
    { ...carrier, register: '110 ±0 mm', 'lowest-ratio': '37/10', 'highest-ratio': '43/10' },
  ],
  held: heldCrown,
} as const;
const stem = {
  faces: [
    { ...pinion, head: '35.02 ±0 mm' },
    { ...housing, head: '35 ±0 mm', tail: '28 ±0 mm', 'mounting-distance': '104 ±0 mm' },
  ],
  held: heldPinion,
} as const;

const limits: readonly Limit[] = [
  {
    says: 'lowest ratio of the carrier',
    ...crown,
    parameter: 'carrier-ratio',
    values: ['3691/1000', '369/100', '3689/1000'],
    check: 'above-lowest',
    failure: 'fails below-carrier-break',
  },
  {
    says: 'highest ratio of the carrier',
    ...crown,
    parameter: 'carrier-ratio',
    values: ['4309/1000', '431/100', '4311/1000'],
    check: 'below-highest',
    failure: 'fails above-carrier-break',
  },
  {
    says: 'larger pitch circle',
    ...crown,
    parameter: 'crown-pcd',
    values: ['128.199 mm', '128.2 mm', '128.201 mm'],
    check: 'crown-pcd',
    failure: 'fails pcd-differs',
  },
  {
    says: 'smaller pitch circle',
    ...crown,
    parameter: 'crown-pcd',
    values: ['127.801 mm', '127.8 mm', '127.799 mm'],
    check: 'crown-pcd',
    failure: 'fails pcd-differs',
  },
  {
    says: 'play on the register',
    ...crown,
    parameter: 'register',
    values: ['110.049 ±0 mm', '110.050 ±0 mm', '110.051 ±0 mm'],
    check: 'register',
    failure: 'fails register-differs',
  },
  {
    says: 'grip on the register',
    ...crown,
    parameter: 'register',
    values: ['109.951 ±0 mm', '109.950 ±0 mm', '109.949 ±0 mm'],
    check: 'register',
    failure: 'fails register-differs',
  },
  {
    says: 'least grip at the head',
    ...stem,
    parameter: 'head',
    values: ['35.001 ±0 mm', '35.000 ±0 mm', '34.999 ±0 mm'],
    check: 'head',
    failure: 'fails head-bearing-differs',
  },
  {
    says: 'most grip at the head',
    ...stem,
    parameter: 'head',
    values: ['35.059 ±0 mm', '35.060 ±0 mm', '35.061 ±0 mm'],
    check: 'head',
    failure: 'fails head-bearing-differs',
  },
  {
    says: 'play at the tail',
    ...stem,
    parameter: 'tail',
    values: ['27.971 ±0 mm', '27.970 ±0 mm', '27.969 ±0 mm'],
    check: 'tail',
    failure: 'fails tail-bearing-differs',
  },
  {
    says: 'grip at the tail',
    ...stem,
    parameter: 'tail',
    values: ['28.029 ±0 mm', '28.030 ±0 mm', '28.031 ±0 mm'],
    check: 'tail',
    failure: 'fails tail-bearing-differs',
  },
  {
    says: 'longer mounting distance',
    ...stem,
    parameter: 'mounting-distance',
    values: ['104.599 ±0 mm', '104.600 ±0 mm', '104.601 ±0 mm'],
    check: 'mounting-distance',
    failure: 'fails beyond-shims',
  },
  {
    says: 'shorter mounting distance',
    ...stem,
    parameter: 'mounting-distance',
    values: ['103.401 ±0 mm', '103.400 ±0 mm', '103.399 ±0 mm'],
    check: 'mounting-distance',
    failure: 'fails beyond-shims',
  },
];

const WHERE = ['just inside', 'exactly on it', 'just outside'];

export const fixtures: readonly Fixture[] = limits.flatMap(
  ({ says, faces, held, parameter, values, check, failure }) =>
    values.map((value, index): Fixture => {
      const isOutside = index === 2;
      const [left, right] = faces;
      return {
        says: `${says}: ${WHERE[index]}`,
        faces: [{ ...left, [parameter]: value }, right],
        outcome: isOutside ? 'fails' : 'holds',
        checks: { ...held, [check]: isOutside ? failure : 'holds' },
      };
    }),
);
