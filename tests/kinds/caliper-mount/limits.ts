/**
 * Just inside, exactly on and just outside each limit of a caliper mount.
 */

import type { Outcome } from '../../../src/domain/check/state.js';
import type { Fixture } from '../fixture.js';
import { caliper, held, knuckle } from './fits.js';

type Row = readonly [string, object, object, string, string];

/** 0.4 mm of play: a hole of 12.4 mm, a thread of 12 mm. */
const play = { hole: '12.4 ±0 mm', spacing: '130 ±0 mm' };

function spacing(says: string, value: string, verdict: string): Row {
  return [`spacing: ${says}`, play, { spacing: `${value} ±0 mm` }, 'spacing', verdict];
}

/** The hole of one end, with bolts of 12 mm and room in the other end. */
function hole(end: 'knuckle' | 'caliper', says: string, value: string, verdict: string): Row {
  const other = { spacing: '130 ±0 mm', hole: '12.4 ±0 mm' };
  const own = { ...other, hole: `${value} ±0 mm` };
  const sides = end === 'knuckle' ? ([own, other] as const) : ([other, own] as const);
  const check = verdict.endsWith('wide') ? `${end}-play` : `${end}-hole`;
  return [`hole of the ${end}: ${says}`, ...sides, check, verdict];
}

/** One parameter of both ends, exactly. */
function pair(check: string, says: string, is: string, wanted: string, verdict: string): Row {
  const [own, other] = [{ [check]: `${is} ±0 mm` }, { [check]: `${wanted} ±0 mm` }];
  return [`${check}: ${says}`, own, other, check, verdict];
}

function thickness(says: string, is: string, check: string, verdict: string): Row {
  const span = { 'thinnest-disc': '19.5 ±0 mm', 'thickest-disc': '20.5 ±0 mm' };
  return [`thickness: ${says}`, { 'disc-thickness': `${is} ±0 mm` }, span, check, verdict];
}

const far = 'fails radius-differs';
const off = 'fails disc-not-centred';
const other = 'fails disc-diameter-differs';

/** What it says, on the knuckle, on the caliper, the check, what becomes of it. */
const rows: readonly Row[] = [
  spacing('0.399 mm more with 0.4 mm of play', '130.399', 'holds'),
  spacing('0.4 mm more', '130.4', 'holds'),
  spacing('0.401 mm more', '130.401', 'fails spacing-differs'),
  spacing('0.399 mm less with 0.4 mm of play', '129.601', 'holds'),
  spacing('0.4 mm less', '129.6', 'holds'),
  spacing('0.401 mm less', '129.599', 'fails spacing-differs'),
  [
    'spacing: by the tape',
    { spacing: { is: '130 mm', tool: 'tape' } },
    {},
    'spacing',
    'open not-precise-enough',
  ],
  hole('knuckle', 'a thousandth of room', '12.001', 'holds'),
  hole('knuckle', 'exactly the bolt', '12', 'holds'),
  hole('knuckle', 'a thousandth too small', '11.999', 'fails knuckle-hole-too-small'),
  hole('caliper', 'a thousandth of room', '12.001', 'holds'),
  hole('caliper', 'exactly the bolt', '12', 'holds'),
  hole('caliper', 'a thousandth too small', '11.999', 'fails caliper-hole-too-small'),
  hole('knuckle', '1.499 mm of play', '13.499', 'holds'),
  hole('knuckle', '1.5 mm of play', '13.5', 'holds'),
  hole('knuckle', '1.501 mm of play', '13.501', 'fails knuckle-hole-too-wide'),
  hole('caliper', '1.499 mm of play', '13.499', 'holds'),
  hole('caliper', '1.5 mm of play', '13.5', 'holds'),
  hole('caliper', '1.501 mm of play', '13.501', 'fails caliper-hole-too-wide'),
  pair('radius', '0.999 mm too far out', '98.999', '98', 'holds'),
  pair('radius', '1 mm too far out', '99', '98', 'holds'),
  pair('radius', '1.001 mm too far out', '99.001', '98', far),
  pair('radius', '0.999 mm too far in', '97.001', '98', 'holds'),
  pair('radius', '1 mm too far in', '97', '98', 'holds'),
  pair('radius', '1.001 mm too far in', '96.999', '98', far),
  pair('offset', '0.249 mm inwards', '31.749', '31.5', 'holds'),
  pair('offset', '0.250 mm inwards', '31.75', '31.5', 'holds'),
  pair('offset', '0.251 mm inwards', '31.751', '31.5', off),
  pair('offset', '0.249 mm outwards', '31.251', '31.5', 'holds'),
  pair('offset', '0.250 mm outwards', '31.25', '31.5', 'holds'),
  pair('offset', '0.251 mm outwards', '31.249', '31.5', off),
  pair('disc-diameter', '0.999 mm more', '266.999', '266', 'holds'),
  pair('disc-diameter', '1 mm more', '267', '266', 'holds'),
  pair('disc-diameter', '1.001 mm more', '267.001', '266', other),
  pair('disc-diameter', '0.999 mm less', '265.001', '266', 'holds'),
  pair('disc-diameter', '1 mm less', '265', '266', 'holds'),
  pair('disc-diameter', '1.001 mm less', '264.999', '266', other),
  thickness('a thousandth under the thickest', '20.499', 'thick-disc', 'holds'),
  thickness('exactly the thickest', '20.5', 'thick-disc', 'holds'),
  thickness('a thousandth over the thickest', '20.501', 'thick-disc', 'fails disc-too-thick'),
  thickness('a thousandth over the thinnest', '19.501', 'thin-disc', 'holds'),
  thickness('exactly the thinnest', '19.5', 'thin-disc', 'holds'),
  thickness('a thousandth under the thinnest', '19.499', 'thin-disc', 'fails disc-too-thin'),
];

export const fixtures: readonly Fixture[] = rows.map(([says, left, right, check, verdict]) => ({
  says,
  faces: [
    { ...knuckle, ...left },
    { ...caliper, ...right },
  ],
  outcome: verdict.split(' ')[0] as Outcome,
  checks: { ...held, [check]: verdict },
}));
