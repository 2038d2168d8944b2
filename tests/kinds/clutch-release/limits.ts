/**
 * Just inside, exactly on and just outside each limit of a clutch release.
 */

import type { Fixture } from '../fixture.js';
import { actuator, cover, held } from './fits.js';

interface Limit {
  readonly says: string;
  readonly onCover: object;
  /** The parameter of the actuator, with the values inside, on and outside. */
  readonly parameter: string;
  readonly values: readonly [string, string, string];
  readonly check: string;
  readonly failure: string;
  /** Other checks that the same values bring in, which hold. */
  readonly besides?: readonly string[];
  readonly isCaution?: true;
}

const limits: readonly Limit[] = [
  {
    says: 'travel that is needed',
    onCover: { 'travel-needed': '8.00 ±0 mm' },
    parameter: 'travel',
    values: ['8.001', '8.000', '7.999'],
    check: 'travel',
    failure: 'fails too-little-travel',
  },
  {
    says: 'travel that the cover bears',
    onCover: { 'travel-limit': '11.00 ±0 mm' },
    parameter: 'travel',
    values: ['10.999', '11.000', '11.001'],
    check: 'over-travel',
    failure: 'fails needs-stop',
    isCaution: true,
  },
  {
    says: 'bearing on the guide tube',
    onCover: { 'bearing-bore': '35.00 ±0 mm' },
    parameter: 'quill',
    values: ['34.999', '35.000', '35.001'],
    check: 'quill',
    failure: 'fails bearing-does-not-go-on',
    besides: ['quill-play'],
  },
  {
    says: 'play on the guide tube',
    onCover: { 'bearing-bore': '35.00 ±0 mm' },
    parameter: 'quill',
    values: ['34.501', '34.500', '34.499'],
    check: 'quill-play',
    failure: 'fails loose-on-quill',
    besides: ['quill'],
    isCaution: true,
  },
  {
    says: 'inner end of the finger tips',
    onCover: { 'tips-inner': '40.0 ±0 mm' },
    parameter: 'contact-diameter',
    values: ['40.001', '40.000', '39.999'],
    check: 'contact-inner',
    failure: 'fails misses-the-tips',
  },
  {
    says: 'outer end of the finger tips',
    onCover: { 'tips-outer': '60.0 ±0 mm' },
    parameter: 'contact-diameter',
    values: ['59.999', '60.000', '60.001'],
    check: 'contact-outer',
    failure: 'fails outside-the-tips',
  },
];

const places = ['just inside', 'exactly on', 'just outside'];

export const fixtures: readonly Fixture[] = [
  ...limits.flatMap((limit) =>
    limit.values.map((value, index): Fixture => {
      const isOutside = index === 2;
      const verdict = isOutside ? limit.failure : 'holds';
      const besides = Object.fromEntries((limit.besides ?? []).map((id) => [id, 'holds']));
      return {
        says: `${limit.says}: ${places[index]}`,
        faces: [
          { ...cover, ...limit.onCover },
          { ...actuator, [limit.parameter]: `${value} ±0 mm` },
        ],
        outcome: isOutside && limit.isCaution !== true ? 'fails' : 'holds',
        checks: { ...held, ...besides, [limit.check]: verdict },
      };
    }),
  ),
  {
    says: 'travel read by the tape is too coarse',
    faces: [cover, { ...actuator, travel: { is: '8.5 mm', tool: 'tape' } }],
    outcome: 'open',
    checks: { ...held, travel: 'open not-precise-enough' },
  },
];
