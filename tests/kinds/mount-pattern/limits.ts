/**
 * Just inside, exactly on and just outside each limit of a mount.
 */

import type { Outcome } from '../../../src/domain/check/state.js';
import type { Fixture } from '../fixture.js';
import { body, held, mount } from './fits.js';

type Row = readonly [string, object, object, Readonly<Record<string, string>>];

/** One millimetre of play: holes of 11 mm over threads of 10 mm. */
const exact = { hole: '11 ±0 mm', along: '80 ±0 mm', across: '420 ±0 mm' };
const square = { hole: '10 ±0 mm', along: '80 ±0 mm', across: '420 ±0 mm' };
const both = 'fails spacing-differs-both-ways';

function spacing(way: 'along' | 'across', says: string, value: string, fails = false): Row {
  const own = { ...square, [way]: `${value} ±0 mm` };
  const changed = fails ? { [way]: `fails spacing-differs-${way}`, 'both-ways': both } : {};
  return [`${way}: ${says}`, exact, own, changed];
}

function slotted(way: 'along' | 'across', says: string, value: string, fails = false): Row {
  const [, , own, changed] = spacing(way, says, value, fails);
  const slot = { ...exact, [`slot-${way}`]: '5 ±0 mm' };
  return [`${way}, with slots of 5 mm: ${says}`, slot, own, changed];
}

function corner(says: string, along: string, across: string, fails = false): Row {
  const own = { ...square, along: `${along} ±0 mm`, across: `${across} ±0 mm` };
  return [`both ways: ${says}`, exact, own, fails ? { 'both-ways': both } : {}];
}

function hole(end: 'mount' | 'body', says: string, value: string, fails = false): Row {
  const own = { ...square, hole: `${value} ±0 mm` };
  const sides = end === 'mount' ? ([own, exact] as const) : ([exact, own] as const);
  const changed = fails ? { [`${end}-hole`]: `fails ${end}-hole-too-small` } : {};
  return [`hole of the ${end}: ${says}`, ...sides, changed];
}

function bush(says: string, value: string, failing: Readonly<Record<string, string>> = {}): Row {
  const own = { bush: `${value} ±0 mm` };
  const changed = { 'bush-holds': 'holds', 'bush-goes-in': 'holds', ...failing };
  return [`bush: ${says}`, own, { eye: '60 ±0 mm' }, changed];
}

function height(says: string, value: string, verdict: string): Row {
  const own = { height: `${value} ±0 mm` };
  return [`height: ${says}`, own, { height: '45 ±0 mm' }, { height: verdict }];
}

/** What it says, on the mount, on the body, the checks that are not as they were. */
const rows: readonly Row[] = [
  spacing('along', '0.999 mm more', '80.999'),
  spacing('along', '1 mm more', '81'),
  spacing('along', '1.001 mm more', '81.001', true),
  spacing('along', '0.999 mm less', '79.001'),
  spacing('along', '1 mm less', '79'),
  spacing('along', '1.001 mm less', '78.999', true),
  spacing('across', '0.999 mm more', '420.999'),
  spacing('across', '1 mm more', '421'),
  spacing('across', '1.001 mm more', '421.001', true),
  spacing('across', '0.999 mm less', '419.001'),
  spacing('across', '1 mm less', '419'),
  spacing('across', '1.001 mm less', '418.999', true),
  slotted('along', '5.999 mm more', '85.999'),
  slotted('along', '6 mm more', '86'),
  slotted('along', '6.001 mm more', '86.001', true),
  slotted('across', '5.999 mm less', '414.001'),
  slotted('across', '6 mm less', '414'),
  slotted('across', '6.001 mm less', '413.999', true),
  corner('0.6 and 0.799 mm', '80.6', '420.799'),
  corner('0.6 and 0.8 mm are 1 mm', '80.6', '420.8'),
  corner('0.6 and 0.801 mm', '80.6', '420.801', true),
  corner('0.8 and 0.6 mm less are 1 mm', '79.2', '419.4'),
  corner('0.801 and 0.6 mm less', '79.199', '419.4', true),
  [
    'along: by the tape',
    { along: { is: '80 mm', tool: 'tape' } },
    {},
    { along: 'open not-precise-enough', 'both-ways': 'open not-precise-enough' },
  ],
  hole('mount', 'a thousandth of room', '10.001'),
  hole('mount', 'exactly the bolt', '10'),
  hole('mount', 'a thousandth too small', '9.999', true),
  hole('body', 'a thousandth of room', '10.001'),
  hole('body', 'exactly the bolt', '10'),
  hole('body', 'a thousandth too small', '9.999', true),
  bush('a thousandth over the eye', '60.001'),
  bush('exactly the eye', '60'),
  bush('a thousandth under the eye', '59.999', { 'bush-holds': 'fails bush-loose' }),
  bush('0.299 mm over the eye', '60.299'),
  bush('0.300 mm over the eye', '60.3'),
  bush('0.301 mm over the eye', '60.301', { 'bush-goes-in': 'fails bush-too-large' }),
  height('1.999 mm more', '46.999', 'holds'),
  height('2 mm more', '47', 'holds'),
  height('2.001 mm more', '47.001', 'fails height-differs'),
  height('1.999 mm less', '43.001', 'holds'),
  height('2 mm less', '43', 'holds'),
  height('2.001 mm less', '42.999', 'fails height-differs'),
];

/** What the joint comes to: a height alone is a caution. */
function outcomeOf(changed: Readonly<Record<string, string>>): Outcome {
  const verdicts = Object.entries(changed).filter(([check]) => check !== 'height');
  if (verdicts.some(([, verdict]) => verdict.startsWith('fails'))) return 'fails';
  return verdicts.some(([, verdict]) => verdict.startsWith('open')) ? 'open' : 'holds';
}

export const fixtures: readonly Fixture[] = rows.map(([says, left, right, changed]) => ({
  says,
  faces: [
    { ...mount, ...left },
    { ...body, ...right },
  ],
  outcome: outcomeOf(changed),
  checks: { ...held, ...changed },
}));
