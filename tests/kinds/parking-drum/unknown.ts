/**
 * What nobody recorded keeps a parking brake open and is named.
 */

import type { InterfaceRecord } from '../../../src/domain/catalogue/document.js';
import { type Expected, type Fixture, without } from '../fixture.js';
import {
  cable,
  drum,
  heldCable,
  heldDrum,
  heldPlate,
  knuckle,
  lever,
  plate,
  shoes,
} from './fits.js';

const unread = 'open not-recorded';

/** The end that does not record it, the parameter, and the checks that stay open. */
type Row = readonly ['left' | 'right', string, string, readonly string[]];
type Ends = readonly [InterfaceRecord, InterfaceRecord];

const drums: readonly Row[] = [
  ['left', 'shoe-diameter', 'the diameter of the shoes', ['shoes-go-in', 'shoes-bear']],
  ['left', 'shoe-width', 'the width of the shoes', ['width']],
  [
    'right',
    'drum-diameter',
    'the diameter of the drum',
    ['shoes-go-in', 'shoes-bear', 'drum-limit'],
  ],
  ['right', 'drum-limit', 'how far the drum may wear', ['drum-limit']],
  ['right', 'drum-width', 'the width of the drum', ['width']],
];

const plates: readonly Row[] = [
  ['right', 'holes', 'the number of holes', ['equal-holes']],
  ['left', 'pcd', 'the pitch circle', ['pcd']],
  ['left', 'hole', 'the holes of the plate', ['backplate-hole', 'pcd']],
  ['right', 'bolt', 'the threads of the knuckle', ['equal-bolt']],
  ['left', 'bolt-diameter', 'the bolts of the plate', ['knuckle-hole', 'pcd']],
  ['left', 'bore', 'the bore of the plate', ['bore', 'centring']],
  ['right', 'spigot', 'the spigot of the knuckle', ['bore', 'centring']],
];

const cables: readonly Row[] = [
  ['right', 'cable-end', 'the end of the cable', ['equal-cable-end']],
  ['left', 'travel-needed', 'the travel that the lever needs', ['travel']],
  ['right', 'travel', 'the travel of the cable', ['travel']],
];

function fixturesOf(rows: readonly Row[], [left, right]: Ends, held: Expected): Fixture[] {
  return rows.map(([end, parameter, says, checks]) => ({
    says,
    faces: [
      end === 'left' ? without(left, parameter) : left,
      end === 'right' ? without(right, parameter) : right,
    ],
    outcome: 'open',
    checks: { ...held, ...Object.fromEntries(checks.map((check) => [check, unread])) },
    missing: [`${end}.${parameter}`],
  }));
}

export const fixtures: readonly Fixture[] = [
  ...fixturesOf(drums, [shoes, drum], heldDrum),
  ...fixturesOf(plates, [plate, knuckle], heldPlate),
  ...fixturesOf(cables, [lever, cable], heldCable),
  {
    says: 'a pattern that only one end names is not compared',
    faces: [{ ...plate, pattern: 'r-4' }, knuckle],
    outcome: 'holds',
    checks: heldPlate,
  },
];
