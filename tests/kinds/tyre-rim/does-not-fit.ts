/**
 * Each way in which a tyre does not go on a rim.
 */

import type { Expected, Fixture } from '../fixture.js';
import { always, held, heldSpoked, rim, spokedRim, tyre } from './fits.js';

type Row = readonly [says: string, faces: Fixture['faces'], checks: Expected];

const { 'known-rim': _, ...withoutRim } = always;

const rows: readonly Row[] = [
  [
    'a tyre of 15 on a rim of 16',
    [tyre, { ...rim, 'diameter-code': '16' }],
    { ...held, 'equal-diameter-code': 'fails not-equal' },
  ],
  [
    'the trap that kills: a tyre of 16 on a rim of 16.5',
    [
      { ...tyre, 'diameter-code': '16' },
      { ...rim, 'diameter-code': '16.5' },
    ],
    { ...held, 'equal-diameter-code': 'fails not-equal' },
  ],
  [
    'a rim of the metric system: 365 is no 14.4',
    [tyre, { ...rim, 'diameter-code': '365' }],
    { ...held, 'equal-diameter-code': 'fails not-equal' },
  ],
  [
    'a rim of 5 inches for a tyre of 5.5 to 7',
    [tyre, { ...rim, width: '5 in' }],
    { ...held, 'not-too-narrow': 'fails rim-too-narrow' },
  ],
  [
    'a stretched tyre: 8 inches for one of 5.5 to 7',
    [tyre, { ...rim, width: '8 in' }],
    { ...held, 'not-too-wide': 'fails rim-too-wide' },
  ],
  [
    'a tyre that is bound to flange K, on a rim of J',
    [
      { ...tyre, flange: 'k' },
      { ...rim, flange: 'j' },
    ],
    { ...held, 'equal-flange': 'fails not-equal' },
  ],
  [
    'a tubeless tyre on an old rim without humps',
    [tyre, { ...rim, humps: 0 }],
    { ...held, hump: 'fails no-hump', 'second-hump': 'fails one-hump-only' },
  ],
  [
    'a tubeless tyre on spokes, and its maker allows no tube',
    [{ ...tyre, 'tube-allowed': 'no' }, spokedRim],
    { ...heldSpoked, 'tube-allowed': 'fails tube-not-allowed' },
  ],
  [
    'a tyre of which nobody can say what holds its air',
    [{ ...tyre, air: 'solid' }, spokedRim],
    { ...always, 'known-tyre': 'fails no-such-tyre' },
  ],
  [
    'a rim of which nobody can say whether it holds air',
    [tyre, { ...rim, air: 'split' }],
    { ...withoutRim, 'known-rim': 'fails no-such-rim' },
  ],
];

export const fixtures: readonly Fixture[] = rows.map(([says, faces, checks]) => ({
  says,
  faces,
  outcome: 'fails',
  checks,
}));
