/**
 * Check values of limits and fits, in mm. One page that was read lists 30 H7 with +25; by the
 * standard it is +21, since ranges are up to and including their upper limit.
 */

import type { Vector } from '../vector.js';

const ISO_286 = {
  calculation: 'fit',
  source: 'ISO 286-1/-2',
  basis: 'read',
} as const;

type Limits = readonly [string, string];

function limits(
  id: string,
  fit: string,
  of: { hole: Limits; shaft: Limits; clearance: Limits },
  more: Partial<Vector> = {},
): Vector[] {
  const [hole = '', shaft = ''] = fit.split('/');
  const given = { size: '50 mm', hole, shaft };
  const rows: readonly [string, Limits][] = [
    ['holeDeviation', of.hole],
    ['shaftDeviation', of.shaft],
    ['clearance', of.clearance],
  ];
  return rows.map(([output, [low, high]]) => ({
    ...ISO_286,
    id: `${id} (${output})`,
    given,
    output,
    expected: { exactly: `${low} to ${high}` },
    ...more,
  }));
}

export const FIT: readonly Vector[] = [
  {
    ...ISO_286,
    id: 'fit-01',
    given: { size: '50 mm', hole: 'H7' },
    output: 'toleranceFactor',
    expected: { near: 0.001561243, within: 0.000005 },
    basis: 'read, computed',
  },
  {
    ...ISO_286,
    id: 'fit-02',
    given: { size: '50 mm', hole: 'H7' },
    output: 'tolerances',
    expected: { near: [0.011, 0.016, 0.025, 0.039, 0.062, 0.1, 0.16], within: 0 },
  },
  ...limits(
    'fit-05',
    'H8/f7',
    { hole: ['0', '39/1000'], shaft: ['-1/20', '-1/40'], clearance: ['1/40', '89/1000'] },
    { source: 'ISO 286-2 preferred fits' },
  ),
  ...limits(
    'fit-07',
    'H7/h6',
    { hole: ['0', '1/40'], shaft: ['-2/125', '0'], clearance: ['0', '41/1000'] },
    { basis: 'read, computed' },
  ),
  ...limits(
    'fit-08',
    'H7/g6',
    { hole: ['0', '1/40'], shaft: ['-1/40', '-9/1000'], clearance: ['9/1000', '1/20'] },
    { basis: 'from memory' },
  ),
  // 25 H7/g6: 7 to 41 micrometres.
  {
    ...ISO_286,
    id: 'fit-06',
    given: { size: '25 mm', hole: 'H7', shaft: 'g6' },
    output: 'clearance',
    expected: { exactly: '7/1000 to 41/1000' },
    source: 'ISO 286-2 preferred fits',
  },
  {
    ...ISO_286,
    id: 'fit-own-1 (30 belongs to the range up to 30)',
    given: { size: '30 mm', hole: 'H7' },
    output: 'holeDeviation',
    expected: { exactly: '0 to 21/1000' },
    basis: 'from memory',
  },
  {
    ...ISO_286,
    id: 'fit-own-2 (a press fit)',
    given: { size: '50 mm', hole: 'H7', shaft: 'p6' },
    output: 'clearance',
    expected: { exactly: '-21/500 to -1/1000' },
    basis: 'from memory',
  },
];
