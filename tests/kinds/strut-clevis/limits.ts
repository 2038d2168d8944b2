/**
 * Just inside, exactly on and just outside each limit of a strut bracket.
 */

import type { Outcome } from '../../../src/domain/check/state.js';
import type { Fixture } from '../fixture.js';
import { held, knuckle, strut } from './fits.js';

type Row = readonly [string, object, object, string, string];

/** Half a millimetre of play: holes of 12.2 and 12.3 mm over bolts of 12 mm. */
const play = { hole: '12.2 ±0 mm', spacing: '54 ±0 mm' };
const exactGap = { gap: '32 ±0 mm' };

function spacing(says: string, value: string, verdict: string): Row {
  const other = { hole: '12.3 ±0 mm', spacing: `${value} ±0 mm` };
  return [`spacing: ${says}`, play, other, 'spacing', verdict];
}

function gap(says: string, ear: string, check: string, verdict: string): Row {
  return [`gap: ${says}`, exactGap, { ear: `${ear} ±0 mm` }, check, verdict];
}

const alike = { spacing: '54 ±0 mm' };

/** The hole of one end, with bolts of 12 mm. */
function hole(end: 'strut' | 'knuckle', says: string, value: string, verdict: string): Row {
  const own = { ...alike, hole: `${value} ±0 mm` };
  const sides = end === 'strut' ? ([own, alike] as const) : ([alike, own] as const);
  const check = verdict.endsWith('wide') ? `${end}-play` : `${end}-hole`;
  return [`hole of the ${end}: ${says}`, ...sides, check, verdict];
}

function offset(says: string, value: string, verdict: string): Row {
  return [`offset: ${says}`, { offset: '50 ±0 mm' }, { offset: value }, 'offset', verdict];
}

function angle(says: string, value: string, verdict: string): Row {
  return [`angle: ${says}`, { angle: '3 ±0 deg' }, { angle: value }, 'angle', verdict];
}

/** What it says, on the strut, on the knuckle, the check, what becomes of it. */
const rows: readonly Row[] = [
  spacing('0.499 mm more with 0.5 mm of play', '54.499', 'holds'),
  spacing('0.5 mm more', '54.5', 'holds'),
  spacing('0.501 mm more', '54.501', 'fails spacing-differs'),
  spacing('0.499 mm less with 0.5 mm of play', '53.501', 'holds'),
  spacing('0.5 mm less', '53.5', 'holds'),
  spacing('0.501 mm less', '53.499', 'fails spacing-differs'),
  [
    'spacing: by the tape',
    { spacing: { is: '54 mm', tool: 'tape' } },
    {},
    'spacing',
    'open not-precise-enough',
  ],
  gap('a thousandth of play', '31.999', 'ear-goes-in', 'holds'),
  gap('no play', '32', 'ear-goes-in', 'holds'),
  gap('a thousandth too tight', '32.001', 'ear-goes-in', 'fails ear-too-thick'),
  gap('0.299 mm of play', '31.701', 'ear-play', 'holds'),
  gap('0.300 mm of play', '31.7', 'ear-play', 'holds'),
  gap('0.301 mm of play', '31.699', 'ear-play', 'fails gap-too-wide'),
  hole('strut', 'a thousandth of room', '12.001', 'holds'),
  hole('strut', 'exactly the bolt', '12', 'holds'),
  hole('strut', 'a thousandth too small', '11.999', 'fails strut-hole-too-small'),
  hole('knuckle', 'a thousandth of room', '12.001', 'holds'),
  hole('knuckle', 'exactly the bolt', '12', 'holds'),
  hole('knuckle', 'a thousandth too small', '11.999', 'fails knuckle-hole-too-small'),
  hole('strut', '1.499 mm of play', '13.499', 'holds'),
  hole('strut', '1.5 mm of play', '13.5', 'holds'),
  hole('strut', '1.501 mm of play', '13.501', 'fails strut-hole-too-wide'),
  hole('knuckle', '1.499 mm of play', '13.499', 'holds'),
  hole('knuckle', '1.5 mm of play', '13.5', 'holds'),
  hole('knuckle', '1.501 mm of play', '13.501', 'fails knuckle-hole-too-wide'),
  offset('0.999 mm', '50.999 ±0 mm', 'holds'),
  offset('1 mm', '51 ±0 mm', 'holds'),
  offset('1.001 mm', '51.001 ±0 mm', 'fails wheel-moves'),
  offset('0.999 mm the other way', '49.001 ±0 mm', 'holds'),
  offset('1 mm the other way', '49 ±0 mm', 'holds'),
  offset('1.001 mm the other way', '48.999 ±0 mm', 'fails wheel-moves'),
  angle('0.499 degrees', '3.499 ±0 deg', 'holds'),
  angle('0.5 degrees', '3.5 ±0 deg', 'holds'),
  angle('0.501 degrees', '3.501 ±0 deg', 'fails camber-changes'),
  angle('0.499 degrees the other way', '2.501 ±0 deg', 'holds'),
  angle('0.5 degrees the other way', '2.5 ±0 deg', 'holds'),
  angle('0.501 degrees the other way', '2.499 ±0 deg', 'fails camber-changes'),
];

const CAUTIONS = ['offset', 'angle'];

export const fixtures: readonly Fixture[] = rows.map(([says, left, right, check, verdict]) => {
  const outcome = CAUTIONS.includes(check) ? 'holds' : (verdict.split(' ')[0] as Outcome);
  return {
    says,
    faces: [
      { ...strut, ...left },
      { ...knuckle, ...right },
    ],
    outcome,
    checks: { ...held, [check]: verdict },
  };
});
