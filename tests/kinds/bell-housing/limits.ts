/**
 * Just inside, exactly on and just outside each limit of a bell-housing, to both sides.
 */

import type { Outcome } from '../../../src/domain/check/state.js';
import type { Fixture } from '../fixture.js';
import { full, held } from './fits.js';

/** Parameter, its failure, and the values inside, on and outside, above and below. */
const limits: readonly (readonly [string, string, readonly string[], readonly string[]])[] = [
  ['pcd', 'pcd-differs', ['381.199', '381.2', '381.201'], ['380.801', '380.8', '380.799']],
  ['dowel', 'dowel-differs', ['12.049', '12.05', '12.051'], ['11.951', '11.95', '11.949']],
  [
    'dowel-spacing',
    'dowel-spacing-differs',
    ['381.049', '381.05', '381.051'],
    ['380.951', '380.95', '380.949'],
  ],
  ['pilot', 'pilot-differs', ['362.199', '362.2', '362.201'], ['361.701', '361.7', '361.699']],
  [
    'face-depth',
    'depth-differs',
    ['101.099 ±0', '101.1 ±0', '101.101 ±0'],
    ['99.101 ±0', '99.1 ±0', '99.099 ±0'],
  ],
];

const places = ['inside', 'on', 'outside'];

export const fixtures: readonly Fixture[] = [
  ...limits.flatMap(([parameter, failure, above, below]) =>
    [...above, ...below].map((value, index): Fixture => {
      const isOutside = index % 3 === 2;
      const isCaution = parameter === 'face-depth';
      const outcome: Outcome = isOutside && !isCaution ? 'fails' : 'holds';
      return {
        says: `${parameter}: ${places[index % 3]} the limit, ${index < 3 ? 'above' : 'below'}`,
        faces: [
          { ...full, 'face-depth': '100.10 ±0 mm' },
          { ...full, 'face-depth': '100.10 ±0 mm', [parameter]: `${value} mm` },
        ],
        outcome,
        checks: { ...held, [parameter]: isOutside ? `fails ${failure}` : 'holds' },
      };
    }),
  ),
  {
    says: 'a distance of dowels read to a tenth is too coarse',
    faces: [full, { ...full, 'dowel-spacing': '381.0 ±0.1 mm' }],
    outcome: 'open',
    checks: { ...held, 'dowel-spacing': 'open not-precise-enough' },
  },
];
