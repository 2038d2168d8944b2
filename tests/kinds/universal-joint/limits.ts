/**
 * Just inside, exactly on and just outside each limit of a universal joint.
 */

import type { Expected, Fixture } from '../fixture.js';
import { cross, held, heldWings, wingedCross, wingedYoke, yoke } from './fits.js';

const exactCross = { ...cross, cap: '27 ±0 mm', span: '74.5 ±0 mm' };
const exactYoke = { ...yoke, bore: '27 ±0 mm', span: '74.5 ±0 mm' };

interface Limit {
  readonly says: string;
  /** The parameter of the yoke, with the values inside, on and outside. */
  readonly parameter: string;
  readonly values: readonly [string, string, string];
  readonly check: string;
  readonly failure: string;
  readonly isCaution?: true;
  /** Other checks that the same values fail. */
  readonly besides?: Expected;
}

const limits: readonly Limit[] = [
  {
    says: 'most grip of a cap',
    parameter: 'bore',
    values: ['26.951', '26.950', '26.949'],
    check: 'cap-goes-in',
    failure: 'fails cap-too-large',
  },
  {
    says: 'most play of a cap',
    parameter: 'bore',
    values: ['27.019', '27.020', '27.021'],
    check: 'cap-sits',
    failure: 'fails cap-loose',
  },
  {
    says: 'least span',
    parameter: 'span',
    values: ['74.501', '74.500', '74.499'],
    check: 'span',
    failure: 'fails span-differs',
  },
  {
    says: 'most span that rings take up',
    parameter: 'span',
    values: ['74.799', '74.800', '74.801'],
    check: 'span',
    failure: 'fails span-differs',
    besides: { 'end-play': 'fails needs-thicker-rings' },
  },
  {
    says: 'most end play',
    parameter: 'span',
    values: ['74.549', '74.550', '74.551'],
    check: 'end-play',
    failure: 'fails needs-thicker-rings',
    isCaution: true,
  },
];

const WHERE = ['just inside', 'exactly on it', 'just outside'];

const trios = limits.flatMap(({ says, parameter, values, check, failure, isCaution, besides }) =>
  values.map((value, index): Fixture => {
    const isOutside = index === 2;
    return {
      says: `${says}: ${WHERE[index]}`,
      faces: [exactCross, { ...exactYoke, [parameter]: `${value} ±0 mm` }],
      outcome: isOutside && isCaution !== true ? 'fails' : 'holds',
      checks: { ...held, ...besides, [check]: isOutside ? failure : 'holds' },
    };
  }),
);

const spacings = ['43.099 mm', '43.1 mm', '43.101 mm'].map((spacing, index): Fixture => {
  const isOutside = index === 2;
  return {
    says: `holes of wings: ${WHERE[index]}`,
    faces: [wingedCross, { ...wingedYoke, 'hole-spacing': spacing }],
    outcome: isOutside ? 'fails' : 'holds',
    checks: { ...heldWings, 'hole-spacing': isOutside ? 'fails holes-do-not-meet' : 'holds' },
  };
});

export const fixtures: readonly Fixture[] = [
  ...trios,
  ...spacings,
  {
    says: 'caps by the vernier caliper are too coarse for their fit',
    faces: [{ ...cross, cap: { is: '27.00 mm', tool: 'caliper' } }, yoke],
    outcome: 'open',
    checks: {
      ...held,
      'cap-goes-in': 'open not-precise-enough',
      'cap-sits': 'open not-precise-enough',
    },
  },
];
