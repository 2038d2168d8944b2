/**
 * What nobody recorded keeps a mount open and is named.
 */

import { type Fixture, without } from '../fixture.js';
import { body, held, mount } from './fits.js';

const unread = 'open not-recorded';

/** The end that does not record it, the parameter, and the checks that stay open. */
const rows: readonly (readonly ['left' | 'right', string, string, readonly string[]])[] = [
  ['left', 'holes', 'the number of holes', ['equal-holes', 'outer-holes']],
  ['right', 'bolt', 'the thread of the bolts', ['equal-bolt']],
  ['right', 'along', 'the spacing along', ['along', 'both-ways']],
  ['left', 'across', 'the spacing across', ['across', 'both-ways']],
  ['right', 'slot-across', 'whether the holes are slots across', ['across', 'both-ways']],
  ['left', 'hole', 'the holes', ['mount-hole', 'along', 'across', 'both-ways']],
  ['right', 'bolt-diameter', 'the bolts', ['mount-hole', 'along', 'across', 'both-ways']],
];

export const fixtures: readonly Fixture[] = [
  ...rows.map(([end, parameter, says, checks]) => ({
    says,
    faces: [
      end === 'left' ? without(mount, parameter) : mount,
      end === 'right' ? without(body, parameter) : body,
    ] as const,
    outcome: 'open' as const,
    checks: { ...held, ...Object.fromEntries(checks.map((check) => [check, unread])) },
    missing: [`${end}.${parameter}`],
  })),
  {
    says: 'whether the holes are slots, and how far they reach',
    faces: [without(mount, 'slot-along'), { ...body, along: '90.0 mm' }],
    outcome: 'open',
    checks: { ...held, along: unread, 'both-ways': unread },
    missing: ['left.slot-along'],
  },
  {
    says: 'a bush without its eye is not compared, nor a height of one end alone',
    faces: [{ ...mount, bush: '60.15 mm', height: '45 mm' }, body],
    outcome: 'holds',
    checks: held,
  },
];
