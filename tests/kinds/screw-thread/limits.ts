/**
 * Just inside, exactly on and just outside each limit of a thread.
 */

import type { Outcome } from '../../../src/domain/check/state.js';
import type { Expected, Fixture } from '../fixture.js';
import { external, held, internal } from './fits.js';

function row(says: string, outside: object, inside: object, changed: Expected): Fixture {
  const outcome: Outcome = Object.values(changed).some((verdict) => verdict !== 'holds')
    ? 'fails'
    : 'holds';
  return {
    says,
    faces: [
      { ...external, ...outside },
      { ...internal, ...inside },
    ],
    outcome,
    checks: { ...held, ...changed },
  };
}

/** A thread that goes in a thousandth further than it must, just as far, and a thousandth less. */
function engaged(inside: object, check: string, limitMm: number, code: string): Fixture[] {
  const lengthOf = (microns: number) => `${(limitMm * 1000 + microns) / 1000} ±0 mm`;
  return [
    row(`${check}: more`, { length: lengthOf(1) }, inside, { [check]: 'holds' }),
    row(`${check}: just enough`, { length: lengthOf(0) }, inside, { [check]: 'holds' }),
    row(`${check}: too little`, { length: lengthOf(-1) }, inside, { [check]: `fails ${code}` }),
  ];
}

/** An internal diameter a thousandth larger than the external one, as large, and smaller. */
function clearing(parameter: string, basicMm: number, check: string, code: string): Fixture[] {
  const sizeOf = (microns: number) => {
    return { [parameter]: `${(basicMm * 1000 + microns) / 1000} ±0 mm` };
  };
  return [
    row(`${check}: a thousandth of room`, sizeOf(0), sizeOf(1), { [check]: 'holds' }),
    row(`${check}: no room to spare`, sizeOf(0), sizeOf(0), { [check]: 'holds' }),
    row(`${check}: a thousandth too tight`, sizeOf(0), sizeOf(-1), { [check]: `fails ${code}` }),
  ];
}

const inSteel = { 'length-in-steel': '60 mm' };
const inCasting = { 'length-in-casting': '60 mm' };
const inNut = { 'nut-height': '10.8 ±0 mm' };

export const fixtures: readonly Fixture[] = [
  // ISO 724: the pitch diameter of M12x1.25, and the root of its external thread.
  ...clearing('pitch-diameter', 11.188, 'flanks', 'flanks-bind'),
  ...clearing('minor-diameter', 10.466, 'crests', 'crests-touch-roots'),
  ...engaged(inSteel, 'engaged-in-steel', 12, 'too-little-thread'),
  ...engaged(inCasting, 'engaged-in-casting', 18, 'pulls-out-of-the-casting'),
  ...engaged(inNut, 'through-the-nut', 10.8, 'nut-not-filled'),
  row(
    'the shorter of the two threads counts, and it is the hole',
    { length: '40 ±0 mm' },
    { 'length-in-steel': '11.999 ±0 mm' },
    { 'engaged-in-steel': 'fails too-little-thread' },
  ),
  {
    ...row('a length to the millimetre straddles the limit', { length: '12 mm' }, inSteel, {}),
    outcome: 'open',
    checks: { ...held, 'engaged-in-steel': 'open not-precise-enough' },
  },
  {
    ...row('a diameter read as 12 mm, give or take a tenth', { diameter: '12 ±0.1 mm' }, {}, {}),
    outcome: 'open',
    checks: { ...held, 'equal-diameter': 'open not-precise-enough' },
  },
];
