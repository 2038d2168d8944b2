/**
 * Rings that suit their seats, and the faces that the other fixtures start from.
 */

import { type Expected, type Fixture, without } from '../fixture.js';

const bearing = {
  kind: 'hub-bearing',
  side: 'bearing',
  width: '15 mm',
  preload: 'none',
  'clearance-class': 'cn',
  seals: 'both-sides',
} as const;

const seat = {
  kind: 'hub-bearing',
  side: 'seat',
  width: '15 mm',
  preload: 'none',
  'clearance-class': 'cn',
  seals: 'both-sides',
} as const;

/** The bearing 6205: 25 x 52 x 15. */
export const innerRing = { ...bearing, ring: 'inner', diameter: '25 +0/-0.010 mm' } as const;
export const outerRing = { ...bearing, ring: 'outer', diameter: '52 +0/-0.013 mm' } as const;

export const turningJournal = {
  ...seat,
  ring: 'inner',
  motion: 'turning',
  diameter: '25 k6',
} as const;

export const standingHousing = {
  ...seat,
  ring: 'outer',
  motion: 'standing',
  diameter: '52 H7',
} as const;

export const turningHousing = { ...standingHousing, motion: 'turning', diameter: '52 N7' } as const;

export const standingJournal = {
  ...turningJournal,
  motion: 'standing',
  diameter: '25 g6',
} as const;

/** A tapered bearing that a nut adjusts, on a fixed stub axle. */
export const cone = {
  ...without(innerRing, 'clearance-class'),
  kind: 'hub-bearing',
  preload: 'adjusted',
  seals: 'none',
};

export const stubAxle = {
  ...without(standingJournal, 'clearance-class'),
  kind: 'hub-bearing',
  preload: 'adjusted',
  seals: 'none',
};

/** A double-row unit with built-in preload, pressed into a knuckle. */
export const pressedRing = {
  ...without(outerRing, 'clearance-class'),
  kind: 'hub-bearing',
  diameter: '72 +0/-0.013 mm',
  width: '33 mm',
  preload: 'built-in',
};

export const knuckle = {
  ...without(standingHousing, 'clearance-class'),
  kind: 'hub-bearing',
  diameter: '72 -0.064/-0.094 mm',
  width: '33 mm',
  preload: 'built-in',
};

const always: Expected = {
  'equal-ring': 'holds',
  'known-ring': 'holds',
  'known-motion': 'holds',
  'equal-width': 'holds',
  'equal-preload': 'holds',
  'known-preload': 'holds',
};

const common: Expected = { ...always, 'known-class': 'holds' };

export const heldTurningJournal: Expected = {
  ...common,
  'inner-goes-on': 'holds',
  'inner-turning': 'holds',
};

export const heldStandingHousing: Expected = {
  ...common,
  'outer-goes-in': 'holds',
  'outer-standing': 'holds',
};

export const heldTurningHousing: Expected = {
  ...common,
  'outer-goes-in': 'holds',
  'outer-turning': 'holds',
};

export const heldStandingJournal: Expected = {
  ...common,
  'inner-goes-on': 'holds',
  'inner-standing': 'holds',
};

export const heldStubAxle: Expected = {
  ...always,
  'inner-goes-on': 'holds',
  'inner-standing': 'holds',
  'inner-slides': 'holds',
};

export const heldKnuckle: Expected = {
  ...always,
  'outer-goes-in': 'holds',
  'outer-standing': 'holds',
  'outer-pressed': 'holds',
};

const NORMAL = 'ISO 492, normal class, from memory: 25 mm is 0/-10, 52 mm is 0/-13 thousandths';

export const fixtures: readonly Fixture[] = [
  {
    says: 'the inner ring of a 6205 on a journal of k6 that turns',
    source: `ISO 15: 6205 is 25 x 52 x 15. ${NORMAL}; ISO 286-2: 25 k6 is +15/+2`,
    faces: [innerRing, turningJournal],
    outcome: 'holds',
    checks: heldTurningJournal,
  },
  {
    says: 'its outer ring in a housing of H7 that stands',
    source: `${NORMAL}; ISO 286-2: 52 H7 is +30/0, so 0 to 0.043 mm of play`,
    faces: [outerRing, standingHousing],
    outcome: 'holds',
    checks: heldStandingHousing,
  },
  {
    says: 'the outer ring in a hub of N7 that turns about a fixed axle',
    source: `${NORMAL}; ISO 286-2: 52 N7 is -9/-39, so 0.004 mm of play at most`,
    faces: [outerRing, turningHousing],
    outcome: 'holds',
    checks: heldTurningHousing,
  },
  {
    says: 'the inner ring on a fixed axle of g6',
    source: `${NORMAL}; ISO 286-2: 25 g6 is -7/-20, so 0.020 mm of play at most`,
    faces: [innerRing, standingJournal],
    outcome: 'holds',
    checks: heldStandingJournal,
  },
  {
    says: 'the cone of a tapered bearing on a stub axle, adjusted by a nut: no class is asked',
    faces: [cone, stubAxle],
    outcome: 'holds',
    checks: heldStubAxle,
  },
  {
    says: 'a double-row unit pressed into a knuckle of T7',
    source: 'T7 at 72 mm is -64/-94 thousandths, in a table of a maker of wheel bearings',
    faces: [pressedRing, knuckle],
    outcome: 'holds',
    checks: heldKnuckle,
  },
  {
    says: 'the same unit in a housing with play goes in, and its maker should be asked',
    faces: [pressedRing, { ...knuckle, diameter: '72.02 ±0.01 mm' }],
    outcome: 'holds',
    checks: { ...heldKnuckle, 'outer-pressed': 'fails preload-wants-press-fit' },
  },
  {
    says: 'a cone that is pressed on a stub axle can hardly be adjusted: a caution',
    faces: [cone, { ...stubAxle, diameter: '25.050 ±0.005 mm' }],
    outcome: 'holds',
    checks: { ...heldStubAxle, 'inner-slides': 'fails cannot-be-adjusted' },
  },
  {
    says: 'the cup of a tapered bearing pressed into a housing: it need not slide',
    source: 'ISO 286-2: 52 R7 is -30/-60 thousandths',
    faces: [
      { ...outerRing, preload: 'adjusted' },
      { ...standingHousing, preload: 'adjusted', diameter: '52 R7' },
    ],
    outcome: 'holds',
    checks: { ...always, 'outer-goes-in': 'holds', 'outer-standing': 'holds' },
  },
  {
    says: 'a double-row unit in a hub that turns, pressed as it must be',
    faces: [pressedRing, { ...knuckle, motion: 'turning' }],
    outcome: 'holds',
    checks: { ...always, 'outer-goes-in': 'holds', 'outer-turning': 'holds' },
  },
  {
    says: 'its inner ring on a spindle that stands: play is as it should be',
    faces: [
      { ...innerRing, preload: 'built-in' },
      { ...standingJournal, preload: 'built-in' },
    ],
    outcome: 'holds',
    checks: { ...always, 'inner-goes-on': 'holds', 'inner-standing': 'holds' },
  },
  ...['c2', 'c3', 'c4', 'c5'].map(
    (name): Fixture => ({
      says: `a bearing of ${name} where the maker wants it`,
      source: 'ISO 5753-1, from memory: the groups are 2, N, 3, 4 and 5',
      faces: [
        { ...innerRing, 'clearance-class': name },
        { ...turningJournal, 'clearance-class': name },
      ],
      outcome: 'holds',
      checks: heldTurningJournal,
    }),
  ),
  {
    says: 'a bearing of C3 where the maker allows it besides CN',
    faces: [
      { ...innerRing, 'clearance-class': 'c3' },
      { ...turningJournal, 'other-class': 'c3' },
    ],
    outcome: 'holds',
    checks: { ...heldTurningJournal, 'other-class': 'holds' },
  },
  {
    says: 'one sealed side where one is needed',
    faces: [
      { ...innerRing, seals: 'one-side' },
      { ...turningJournal, seals: 'one-side' },
    ],
    outcome: 'holds',
    checks: { ...heldTurningJournal, 'equal-seals': 'holds' },
  },
  {
    says: 'an open bearing in a hub that seals by itself, with type, width and corner recorded',
    source: 'ISO 355, from memory: 30205 has an assembled width of 16.25 mm',
    faces: [
      { ...cone, type: 'tapered', 'assembled-width': '16.25 mm', chamfer: '1.0 ±0.1 mm' },
      { ...stubAxle, type: 'tapered', 'assembled-width': '16.25 mm', fillet: '0.8 ±0.1 mm' },
    ],
    outcome: 'holds',
    checks: {
      ...heldStubAxle,
      'equal-type': 'holds',
      'equal-assembled-width': 'holds',
      corner: 'holds',
    },
  },
  {
    says: 'another type of bearing in the same size: a caution',
    faces: [
      { ...innerRing, type: 'ball' },
      { ...turningJournal, type: 'cylindrical-roller' },
    ],
    outcome: 'holds',
    checks: { ...heldTurningJournal, 'equal-type': 'fails not-equal' },
  },
];
