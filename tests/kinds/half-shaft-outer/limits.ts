/**
 * Just inside, exactly on and just outside each limit of an outer end.
 */

import type { Fixture } from '../fixture.js';
import { held, hub, shaft } from './fits.js';

interface Limit {
  readonly says: string;
  readonly onHub: object;
  /** The parameter of the shaft, with the values inside, on and outside. */
  readonly parameter: string;
  readonly values: readonly [string, string, string];
  readonly check: string;
  readonly failure: string;
}

const limits: readonly Limit[] = [
  {
    says: 'shoulder on the inner ring',
    onHub: { 'ring-bore': '38 ±0 mm' },
    parameter: 'shoulder',
    values: ['40.001', '40.000', '39.999'],
    check: 'shoulder-on-ring',
    failure: 'fails shoulder-too-small',
  },
  {
    says: 'shoulder inside the seal',
    onHub: { 'ring-face': '50 ±0 mm' },
    parameter: 'shoulder',
    values: ['49.999', '50.000', '50.001'],
    check: 'shoulder-in-seal',
    failure: 'fails shoulder-on-seal',
  },
  {
    says: 'thread in the nut',
    onHub: { 'clamped-length': '62 ±0 mm', 'nut-height': '20 ±0 mm' },
    parameter: 'stem-length',
    values: ['82.001', '82.000', '81.999'],
    check: 'nut-engages',
    failure: 'fails too-little-thread',
  },
  {
    says: 'thread under the nut',
    onHub: { 'clamped-length': '62 ±0 mm' },
    parameter: 'thread-start',
    values: ['61.999', '62.000', '62.001'],
    check: 'nut-clamps',
    failure: 'fails nut-stops-on-stem',
  },
];

const WHERE = ['just inside', 'exactly on it', 'just outside'];

const trios = limits.flatMap(({ says, onHub, parameter, values, check, failure }) =>
  values.map((value, index): Fixture => {
    const isOutside = index === 2;
    return {
      says: `${says}: ${WHERE[index]}`,
      faces: [
        { ...shaft, [parameter]: `${value} ±0 mm` },
        { ...hub, ...onHub },
      ],
      outcome: isOutside ? 'fails' : 'holds',
      checks: { ...held, [check]: isOutside ? failure : 'holds' },
    };
  }),
);

export const fixtures: readonly Fixture[] = [
  ...trios,
  {
    says: 'a stem by the tape, near the limit, must be measured finer',
    faces: [{ ...shaft, 'stem-length': { is: '82 mm', tool: 'tape' } }, hub],
    outcome: 'open',
    checks: { ...held, 'nut-engages': 'open not-precise-enough' },
  },
];
