/**
 * What nobody recorded keeps a track-rod end open and is named.
 */

import type { InterfaceRecord } from '../../../src/domain/catalogue/document.js';
import { type Expected, type Fixture, without } from '../fixture.js';
import { arm, end, held, heldThread, rod, screwed } from './fits.js';

const unread = 'open not-recorded';

/** The end that does not record it, the parameter, and the checks that stay open. */
type Row = readonly ['left' | 'right', string, string, readonly string[]];
type Ends = readonly [InterfaceRecord, InterfaceRecord];

const deep = ['nut-draws', 'seat', 'height-below'];

const stems: readonly Row[] = [
  ['left', 'taper', 'the taper: the large end alone proves nothing', ['equal-taper', ...deep]],
  ['right', 'large-end', 'the mouth of the eye', deep],
  ['left', 'seat-length', 'the length of the taper', ['nut-draws', 'seat', 'stem-length']],
  ['right', 'arm-length', 'the length of the arm: a taper that fits is not enough', ['arm-length']],
  ['left', 'height', 'the height that the steering needs', ['height-below']],
];

const threads: readonly Row[] = [
  ['right', 'thread', 'the thread of the rod', ['equal-thread']],
  ['left', 'hand', 'the hand of the thread', ['equal-hand']],
];

function fixturesOf(rows: readonly Row[], [left, right]: Ends, all: Expected): Fixture[] {
  return rows.map(([side, parameter, says, checks]) => ({
    says,
    faces: [
      side === 'left' ? without(left, parameter) : left,
      side === 'right' ? without(right, parameter) : right,
    ],
    outcome: 'open',
    checks: { ...all, ...Object.fromEntries(checks.map((check) => [check, unread])) },
    missing: [`${side}.${parameter}`],
  }));
}

export const fixtures: readonly Fixture[] = [
  ...fixturesOf(stems, [end, arm], held),
  ...fixturesOf(threads, [screwed, rod], heldThread),
  {
    says: 'a nut alone is not compared',
    faces: [end, { ...arm, 'nut-thread': 'M12x1.25' }],
    outcome: 'holds',
    checks: held,
  },
];
