/**
 * Check values of the slip and plunge of shafts.
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
    given: { rideLength: '1400 mm', rise: '60 mm' },
    output: 'changeAtRise',
    expected: { near: 1.285124448268789, within: 0.005 },
  },
  // A half-shaft of 382.10 mm static and 373.21 mm at bump.
  {
    ...GEOMETRY,
    id: 'plunge-02',
    given: { rideLength: '382.10 mm', otherLengths: ['373.21 mm'] },
    output: 'changes',
    expected: { exactly: '-889/100' },
  },
  {
    ...GEOMETRY,
    id: 'plunge-02 (slip)',
    given: { rideLength: '382.10 mm', otherLengths: ['373.21 mm'] },
    output: 'slipNeeded',
    expected: { exactly: '889/100' },
  },
  // The triangle of 3, 4 and 5.
  {
    ...GEOMETRY,
    id: 'plunge-own-1',
    given: { rideLength: '400 mm', rise: '300 mm' },
    output: 'lengthAtRise',
    expected: { exactly: '500' },
  },
  {
    ...GEOMETRY,
    id: 'plunge-own-2 (inwards)',
    given: {
      rideLength: '400 mm',
      otherLengths: ['390 mm', '405 mm'],
      compressedLength: '380 mm',
      mountMovement: '4 mm',
    },
    output: 'reserveInwards',
    expected: { exactly: '6' },
  },
  {
    ...GEOMETRY,
    id: 'plunge-own-3 (outwards)',
    given: {
      rideLength: '400 mm',
      otherLengths: ['390 mm', '405 mm'],
      extendedLength: '412 mm',
      mountMovement: '4 mm',
    },
    output: 'reserveOutwards',
    expected: { exactly: '3' },
  },
];
