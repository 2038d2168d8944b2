/**
 * Just inside, exactly on and just outside each limit of a pilot bearing.
 */

import type { Outcome } from '../../../src/domain/check/state.js';
import type { Expected, Fixture } from '../fixture.js';
import { bareCrankshaft, bearing, crankshaft, nose, pressed, runs } from './fits.js';

interface Limit {
  readonly says: string;
  readonly faces: Fixture['faces'];
  readonly held: Expected;
  /** The parameter of the nose or bearing, with the values inside, on and outside. */
  readonly parameter: string;
  readonly values: readonly [string, string, string];
  readonly check: string;
  readonly failure: string;
  readonly isCaution?: true;
}

const running: Fixture['faces'] = [
  {
    ...crankshaft,
    bore: '15.000 ±0 mm',
    'bearing-width': '10 ±0 mm',
    'bearing-depth': '20 ±0 mm',
    'hole-depth': '34 ±0 mm',
  },
  nose,
];
const pressing: Fixture['faces'] = [
  { ...bareCrankshaft, bore: '32.000 ±0 mm', 'seat-length': '10 ±0 mm' },
  { ...bearing, diameter: '32.02 ±0 mm' },
];

const limits: readonly Limit[] = [
  {
    says: 'least play of the nose',
    faces: running,
    held: runs,
    parameter: 'diameter',
    values: ['14.989', '14.990', '14.991'],
    check: 'goes-in',
    failure: 'fails nose-does-not-run',
  },
  {
    says: 'most play of the nose',
    faces: running,
    held: runs,
    parameter: 'diameter',
    values: ['14.941', '14.940', '14.939'],
    check: 'guides',
    failure: 'fails nose-not-guided',
  },
  {
    says: 'reach over 60 % of the bearing',
    faces: running,
    held: runs,
    parameter: 'reach',
    values: ['26.001', '26.000', '25.999'],
    check: 'reach',
    failure: 'fails nose-too-short',
  },
  {
    says: 'bottom of the hole',
    faces: running,
    held: runs,
    parameter: 'reach',
    values: ['32.999', '33.000', '33.001'],
    check: 'bottom',
    failure: 'fails nose-bottoms',
  },
  {
    says: 'least grip of the bearing',
    faces: pressing,
    held: pressed,
    parameter: 'diameter',
    values: ['31.996', '31.995', '31.994'],
    check: 'grip',
    failure: 'fails loose-in-crankshaft',
  },
  {
    says: 'most grip of the bearing',
    faces: pressing,
    held: pressed,
    parameter: 'diameter',
    values: ['32.059', '32.060', '32.061'],
    check: 'press',
    failure: 'fails too-tight-to-press',
  },
  {
    says: 'width of the bearing in its seat',
    faces: pressing,
    held: pressed,
    parameter: 'bearing-width',
    values: ['9.999', '10.000', '10.001'],
    check: 'seat-length',
    failure: 'fails bearing-stands-proud',
    isCaution: true,
  },
];

const WHERE = ['just inside', 'exactly on it', 'just outside'];

export const fixtures: readonly Fixture[] = limits.flatMap(
  ({ says, faces, held, parameter, values, check, failure, isCaution }) =>
    values.map((value, index) => {
      const isOutside = index === 2;
      const outcome: Outcome = isOutside && isCaution !== true ? 'fails' : 'holds';
      const [left, right] = faces;
      return {
        says: `${says}: ${WHERE[index]}`,
        faces: [left, { ...right, [parameter]: `${value} ±0 mm` }],
        outcome,
        checks: { ...held, [check]: isOutside ? failure : 'holds' },
      };
    }),
);
