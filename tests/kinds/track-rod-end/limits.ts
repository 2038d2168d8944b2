/**
 * Just inside, exactly on and just outside each limit of a track-rod end.
 */

import type { Outcome } from '../../../src/domain/check/state.js';
import type { Fixture } from '../fixture.js';
import { arm, end, held, heldAbove } from './fits.js';

type Row = readonly [string, object, object, string, string];

/** 0.2 mm over the mouth at 1 in 10: the stem stands out by 2 mm and ends 16 mm deep. */
const exactEnd = { 'large-end': '13.2 ±0 mm', 'seat-length': '18 ±0 mm', height: '58 ±0 mm' };
const exactArm = { 'large-end': '13 ±0 mm', 'seat-length': '18 ±0 mm', height: '60 ±0 mm' };

function ends(says: string, length: string, verdict: string): Row {
  const own = { ...exactArm, 'seat-length': `${length} ±0 mm` };
  return [`taper in the eye: ${says}`, exactEnd, own, 'nut-draws', verdict];
}

function seat(says: string, length: string, verdict: string): Row {
  const own = { ...exactArm, 'seat-length': '20 ±0 mm' };
  const short = { ...exactEnd, 'seat-length': `${length} ±0 mm` };
  return [`seat in an eye of 20 mm: ${says}`, short, own, 'seat', verdict];
}

function sunk(says: string, length: string, verdict: string): Row {
  const own = { 'large-end': '13.3 ±0 mm', 'seat-length': '20 ±0 mm', height: '57 ±0 mm' };
  const short = { ...exactEnd, 'seat-length': `${length} ±0 mm` };
  return [`stem that sinks by 1 mm: ${says}`, short, own, 'stem-length', verdict];
}

function length(says: string, value: string, verdict: string): Row {
  const own = { 'arm-length': `${value} ±0 mm` };
  return [`arm: ${says}`, { 'arm-length': '120 ±0 mm' }, own, 'arm-length', verdict];
}

function below(says: string, value: string, verdict: string): Row {
  const own = { ...exactArm, height: `${value} ±0 mm` };
  return [`height, from below: ${says}`, exactEnd, own, 'height-below', verdict];
}

function above(says: string, value: string, verdict: string): Row {
  const own = { ...exactEnd, entry: 'from-above', height: '62 ±0 mm' };
  const other = { ...exactArm, entry: 'from-above', height: `${value} ±0 mm` };
  return [`height, from above: ${says}`, own, other, 'height-above', verdict];
}

const springs = 'fails steers-as-it-springs';

/** What it says, on the end, on the arm, the check, what becomes of it. */
const rows: readonly Row[] = [
  ends('a thousandth short of the end of the eye', '16.001', 'holds'),
  ends('exactly to the end', '16', 'holds'),
  ends('a thousandth beyond', '15.999', 'fails taper-passes-through'),
  seat('a thousandth over 15 mm carry', '17.001', 'holds'),
  seat('exactly 15 mm carry', '17', 'holds'),
  seat('a thousandth less than 15 mm carry', '16.999', 'fails too-little-seat'),
  sunk('a thousandth over 15 mm carry', '15.001', 'holds'),
  sunk('exactly 15 mm carry', '15', 'holds'),
  sunk('a thousandth less than 15 mm carry', '14.999', 'fails taper-too-short'),
  length('0.999 mm longer', '120.999', 'holds'),
  length('1 mm longer', '121', 'holds'),
  length('1.001 mm longer', '121.001', 'fails arm-length-differs'),
  length('0.999 mm shorter', '119.001', 'holds'),
  length('1 mm shorter', '119', 'holds'),
  length('1.001 mm shorter', '118.999', 'fails arm-length-differs'),
  [
    'arm: by the tape',
    {},
    { 'arm-length': { is: '120 mm', tool: 'tape' } },
    'arm-length',
    'open not-precise-enough',
  ],
  below('1.999 mm too high', '61.999', 'holds'),
  below('2 mm too high', '62', 'holds'),
  below('2.001 mm too high', '62.001', springs),
  below('1.999 mm too low', '58.001', 'holds'),
  below('2 mm too low', '58', 'holds'),
  below('2.001 mm too low', '57.999', springs),
  above('1.999 mm too high', '61.999', 'holds'),
  above('2 mm too high', '62', 'holds'),
  above('2.001 mm too high', '62.001', springs),
  above('1.999 mm too low', '58.001', 'holds'),
  above('2 mm too low', '58', 'holds'),
  above('2.001 mm too low', '57.999', springs),
  [
    'taper: a decimal is a reading',
    { taper: '0.100' },
    {},
    'equal-taper',
    'open not-precise-enough',
  ],
];

export const fixtures: readonly Fixture[] = rows.map(([says, left, right, check, verdict]) => ({
  says,
  faces: [
    { ...end, ...left },
    { ...arm, ...right },
  ],
  outcome: verdict.split(' ')[0] as Outcome,
  checks: { ...(check === 'height-above' ? heldAbove : held), [check]: verdict },
}));
