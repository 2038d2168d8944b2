/**
 * Check values of the plunge of shafts.
 */

import type { Vector } from '../vector.js';

const GEOMETRY = {
  calculation: 'plunge',
  source: 'exact arithmetic or geometry',
  basis: 'arithmetic',
} as const;

export const PLUNGE: readonly Vector[] = [
  {
    ...GEOMETRY,
    id: 'plunge-01',
    given: { length: ['1400 mm'], rise: ['60 mm'] },
    output: 'lengthening',
    expected: { near: 1.285124448268789, within: 1e-9 },
  },
  {
    ...GEOMETRY,
    id: 'plunge-01 (slip)',
    given: { length: ['1400 mm'], rise: ['60 mm', '-60 mm'] },
    output: 'slip',
    expected: { near: 1.285124448268789, within: 1e-9 },
  },
  {
    ...GEOMETRY,
    id: 'plunge-own-1',
    given: { length: ['382.1 mm', '373.21 mm'] },
    output: 'shortening',
    expected: { exactly: '889/100' },
    source: '382.10 less 373.21, by hand',
  },
  {
    ...GEOMETRY,
    id: 'plunge-own-2',
    given: { along: ['3 mm', '2 mm'], across: ['4 mm', '3 mm'], up: ['12 mm', '6 mm'] },
    output: 'lengths',
    expected: { exactly: ['13', '7'] },
    source: 'boxes of 3, 4, 12 and of 2, 3, 6, whose diagonals are 13 and 7',
  },
  {
    ...GEOMETRY,
    id: 'plunge-own-3',
    given: { length: ['400 mm'], rise: ['300 mm'] },
    output: 'slip',
    expected: { exactly: '100' },
    source: 'the triangle of 3, 4 and 5',
  },
  {
    ...GEOMETRY,
    id: 'plunge-own-4',
    given: { length: ['382.1 mm', '373.21 mm'], compressedLength: '365 mm' },
    output: 'roomInwards',
    expected: { exactly: '821/100' },
    source: '373.21 less 365, by hand',
  },
];
