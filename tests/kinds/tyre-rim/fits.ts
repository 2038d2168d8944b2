/**
 * Tyres that go on their rims, and the faces that the other fixtures start from.
 */

import { type Expected, type Fixture, without } from '../fixture.js';

/** 195/60R15 and the like. */
export const tyre = {
  kind: 'tyre-rim',
  side: 'tyre',
  'diameter-code': '15',
  'narrowest-rim': '5.5 in',
  'widest-rim': '7 in',
  air: 'tubeless',
} as const;

/** 15 x 6 J H2. */
export const rim = {
  kind: 'tyre-rim',
  side: 'rim',
  'diameter-code': '15',
  width: '6 in',
  air: 'tubeless',
  humps: 2,
} as const;

export const spokedRim = {
  ...without(rim, 'humps'),
  kind: 'tyre-rim',
  air: 'tube',
};

export const always: Expected = {
  'equal-diameter-code': 'holds',
  'not-too-narrow': 'holds',
  'not-too-wide': 'holds',
  'known-tyre': 'holds',
  'known-rim': 'holds',
};

export const held: Expected = {
  ...always,
  hump: 'holds',
  'second-hump': 'holds',
  tube: 'holds',
};

export const heldSpoked: Expected = { ...always, 'tube-allowed': 'holds' };

export const fixtures: readonly Fixture[] = [
  {
    says: '195/60R15 on 15 x 6 J H2',
    source: 'ETRTO manual, from memory: 195/60R15 may have rims of 5.5 to 7 inches',
    faces: [tyre, rim],
    outcome: 'holds',
    checks: held,
  },
  {
    says: '205/55R16 on 16 x 6.5 J H2',
    source: 'ETRTO manual, from memory: 205/55R16 may have rims of 5.5 to 7.5 inches',
    faces: [
      { ...tyre, 'diameter-code': '16', 'widest-rim': '7.5 in' },
      { ...rim, 'diameter-code': '16', width: '6.5 in' },
    ],
    outcome: 'holds',
    checks: held,
  },
  {
    says: 'a rim with one hump: a caution',
    source: 'ISO 4000-2:2007, note to 5.2, in an excerpt: the second is preferred',
    faces: [tyre, { ...rim, humps: 1 }],
    outcome: 'holds',
    checks: { ...held, 'second-hump': 'fails one-hump-only' },
  },
  {
    says: 'a tyre with a tube on a tubeless rim: a caution, and no hump is asked',
    faces: [{ ...tyre, air: 'tube' }, rim],
    outcome: 'holds',
    checks: { ...always, tube: 'fails needs-tube' },
  },
  {
    says: 'a tubeless tyre on spokes, with a tube that its maker allows',
    faces: [{ ...tyre, 'tube-allowed': 'yes' }, spokedRim],
    outcome: 'holds',
    checks: heldSpoked,
  },
  {
    says: 'a tyre with a tube on spokes',
    faces: [{ ...tyre, air: 'tube' }, spokedRim],
    outcome: 'holds',
    checks: always,
  },
  {
    says: 'a tyre that may have flange B or J, on a rim of J',
    faces: [
      { ...tyre, alternatives: [{ flange: 'b' }, { flange: 'j' }] },
      { ...rim, flange: 'j' },
    ],
    outcome: 'holds',
    checks: { ...held, 'equal-flange': 'holds' },
  },
];
