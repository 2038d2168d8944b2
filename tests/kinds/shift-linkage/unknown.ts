/**
 * What nobody recorded keeps a shift linkage open and is named.
 */

import { type Expected, type Fixture, without } from '../fixture.js';
import { gearbox, held, heldUnlocked, lever } from './fits.js';

/** The parameter of the gearbox, and the checks that it leaves open. */
const ofGearbox: readonly (readonly [string, readonly string[]])[] = [
  ['type', ['equal-type', 'known-type']],
  ['gates', ['gates', 'spare-gate']],
  ['reverse', ['equal-reverse']],
  ['shift-sense', ['equal-shift-sense']],
  ['gate-sense', ['equal-gate-sense']],
  ['shift-travel', ['shift-travel', 'shift-over-travel']],
  ['end', ['equal-end']],
];

function open(all: Expected, checks: readonly string[]): Expected {
  return { ...all, ...Object.fromEntries(checks.map((check) => [check, 'open not-recorded'])) };
}

export const fixtures: readonly Fixture[] = [
  ...ofGearbox.map(([name, checks]): Fixture => {
    return {
      says: `${name} of the gearbox`,
      faces: [without(gearbox, name), lever],
      outcome: 'open',
      checks: open(held, checks),
      missing: [`left.${name}`],
    };
  }),
  {
    says: 'where reverse is locked out, with a lever that does not',
    faces: [without(gearbox, 'reverse-lock'), lever],
    outcome: 'open',
    checks: open(held, ['known-reverse-lock', 'lock-out']),
    missing: ['left.reverse-lock'],
  },
  {
    says: 'whether the lever has the lock that the gearbox relies on',
    faces: [{ ...gearbox, 'reverse-lock': 'at-lever' }, without(lever, 'lock-out')],
    outcome: 'open',
    checks: { ...heldUnlocked, 'lock-out': 'open may-not-apply' },
  },
  {
    says: 'a pin without its eye is not compared',
    faces: [{ ...gearbox, pin: '10 mm' }, lever],
    outcome: 'holds',
    checks: held,
  },
];
