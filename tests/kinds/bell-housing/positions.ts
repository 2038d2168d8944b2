/**
 * Bell-housings told by where their holes and dowels are, as a scan of both faces gives it. Made
 * up; the rules of clearance are those of the kind.
 */

import { type Expected, type Fixture, without } from '../fixture.js';

/** Seen from the gearbox, in no order. */
export const block = {
  kind: 'bell-housing',
  'hole-positions': [
    '-152.00 ±0, 88.00 ±0 mm',
    '-60.00 ±0, 170.00 ±0 mm',
    '60.00 ±0, 170.00 ±0 mm',
    '152.00 ±0, 88.00 ±0 mm',
    '140.00 ±0, -95.00 ±0 mm',
    '-140.00 ±0, -95.00 ±0 mm',
  ],
  // Threaded: the thread stands for the hole.
  'bolt-hole': '10 ±0 mm',
  'bolt-diameter': '10 mm',
  'dowel-positions': ['-150.00 ±0, -20.00 ±0 mm', '150.00 ±0, -20.00 ±0 mm'],
} as const;

/** Half a millimetre of play around each bolt. */
const gearbox = { ...block, 'bolt-hole': '11 ±0 mm' } as const;

const held: Expected = {
  'holes-line-up': 'holds',
  'bolts-pass': 'holds',
  'dowels-line-up': 'holds',
};

function moved(position: string) {
  return { ...gearbox, 'hole-positions': [position, ...block['hole-positions'].slice(1)] };
}

function dowelAt(position: string) {
  return { ...gearbox, 'dowel-positions': [position, block['dowel-positions'][1]] };
}

type Row = readonly [string, object, string, string];

/** What it says, the gearbox, the check, what becomes of it. */
const rows: readonly Row[] = [
  ['holes on holes', gearbox, 'holes-line-up', 'holds'],
  [
    'in another order',
    { ...gearbox, 'hole-positions': [...block['hole-positions']].reverse() },
    'holes-line-up',
    'holds',
  ],
  ['one hole 0.499 mm off', moved('-152.499 ±0, 88 ±0 mm'), 'holes-line-up', 'holds'],
  ['one hole 0.5 mm off, aslant', moved('-152.3 ±0, 88.4 ±0 mm'), 'holes-line-up', 'holds'],
  [
    'one hole 0.501 mm off',
    moved('-152.501 ±0, 88 ±0 mm'),
    'holes-line-up',
    'fails holes-do-not-line-up',
  ],
  [
    'one hole 0.4 mm off both ways is too far, though neither way alone is',
    moved('-152.4 ±0, 88.4 ±0 mm'),
    'holes-line-up',
    'fails holes-do-not-line-up',
  ],
  [
    'five of six holes line up',
    moved('-120 ±0, 130 ±0 mm'),
    'holes-line-up',
    'fails holes-do-not-line-up',
  ],
  [
    'a hole too few',
    { ...gearbox, 'hole-positions': block['hole-positions'].slice(1) },
    'holes-line-up',
    'fails holes-do-not-line-up',
  ],
  [
    'a hole exactly as wide as the bolt takes it, with no play',
    { ...gearbox, 'bolt-hole': '10 ±0 mm' },
    'bolts-pass',
    'holds',
  ],
  [
    'one hole read with a tape',
    moved('-152 ±1, 88 ±1 mm'),
    'holes-line-up',
    'open not-precise-enough',
  ],
  ['a dowel 0.049 mm off', dowelAt('-150.049 ±0, -20 ±0 mm'), 'dowels-line-up', 'holds'],
  ['a dowel 0.05 mm off', dowelAt('-150.05 ±0, -20 ±0 mm'), 'dowels-line-up', 'holds'],
  [
    'a dowel 0.051 mm off',
    dowelAt('-150.051 ±0, -20 ±0 mm'),
    'dowels-line-up',
    'fails dowels-do-not-line-up',
  ],
];

export const fixtures: readonly Fixture[] = [
  ...rows.map(([says, right, check, verdict]): Fixture => {
    const outcome = verdict.startsWith('fails') ? 'fails' : 'open';
    return {
      says,
      faces: [block, right as typeof gearbox],
      outcome: verdict === 'holds' ? 'holds' : outcome,
      checks: { ...held, [check]: verdict },
    };
  }),
  {
    says: 'holes that are smaller than the bolts, on one side',
    faces: [block, { ...gearbox, 'bolt-hole': '9.8 ±0 mm' }],
    outcome: 'fails',
    checks: {
      ...held,
      'bolts-pass': 'fails bolts-do-not-pass',
      'holes-line-up': 'fails holes-do-not-line-up',
    },
  },
  {
    says: 'positions without those of the dowels do not stand in for the name',
    faces: [block, without(gearbox, 'dowel-positions')],
    outcome: 'open',
    checks: {
      'holes-line-up': 'holds',
      'bolts-pass': 'holds',
      'equal-pattern': 'open not-recorded',
      'equal-dowels': 'open not-recorded',
      dowel: 'open not-recorded',
    },
    missing: ['pattern', 'dowels', 'dowel'].flatMap((name) => [`left.${name}`, `right.${name}`]),
  },
  {
    says: 'names that differ are not mended by positions that agree',
    faces: [
      { ...block, pattern: 'h-2' },
      { ...gearbox, pattern: 'h-3' },
    ],
    outcome: 'fails',
    checks: { ...held, 'equal-pattern': 'fails not-equal' },
  },
];
