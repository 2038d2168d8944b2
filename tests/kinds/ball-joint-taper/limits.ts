/**
 * Just inside, exactly on and just outside each limit of a ball-joint stem.
 */

import type { Outcome } from '../../../src/domain/check/state.js';
import type { Fixture } from '../fixture.js';
import { eye, held, heldPinch, pinchEye, pinchedStem, stem } from './fits.js';

type Row = readonly [string, object, object, string, string];

/** 0.2 mm over the mouth at 1 in 10: the taper ends 16 mm deep, where the eye of 16 mm ends. */
const exactStem = { 'large-end': '15.5 ±0 mm', 'seat-length': '18 ±0 mm' };
const exactEye = { 'large-end': '15.3 ±0 mm' };

function ends(says: string, length: string, verdict: string): Row {
  const own = { ...exactEye, 'seat-length': `${length} ±0 mm` };
  return [`taper in the eye: ${says}`, exactStem, own, 'nut-draws', verdict];
}

function seat(says: string, length: string, verdict: string): Row {
  const own = { ...exactEye, 'seat-length': '20 ±0 mm' };
  const short = { ...exactStem, 'seat-length': `${length} ±0 mm` };
  return [`seat in an eye of 20 mm: ${says}`, short, own, 'seat', verdict];
}

function sunk(says: string, length: string, verdict: string): Row {
  const own = { 'large-end': '15.6 ±0 mm', 'seat-length': '20 ±0 mm' };
  const short = { ...exactStem, 'seat-length': `${length} ±0 mm` };
  return [`stem that sinks by 1 mm: ${says}`, short, own, 'stem-length', verdict];
}

function pin(says: string, hole: string, verdict: string): Row {
  const own = { ...exactStem, 'pin-hole': `${hole} ±0 mm` };
  return [`split pin: ${says}`, own, { ...exactEye, 'pin-hole': '30 ±0 mm' }, 'pin-hole', verdict];
}

function ball(says: string, height: string, verdict: string): Row {
  const own = { ...exactStem, 'ball-height': `${height} ±0 mm` };
  const wanted = { ...exactEye, 'ball-height': '22 ±0 mm' };
  return [`ball: ${says}`, own, wanted, 'ball-height', verdict];
}

/** What it says, on the stem, on the eye, the check, what becomes of it. */
const tapers: readonly Row[] = [
  ends('a thousandth short of the end of the eye', '16.001', 'holds'),
  ends('exactly to the end', '16', 'holds'),
  ends('a thousandth beyond', '15.999', 'fails taper-passes-through'),
  seat('a thousandth over 15 mm carry', '17.001', 'holds'),
  seat('exactly 15 mm carry', '17', 'holds'),
  seat('a thousandth less than 15 mm carry', '16.999', 'fails too-little-seat'),
  sunk('a thousandth over 15 mm carry', '15.001', 'holds'),
  sunk('exactly 15 mm carry', '15', 'holds'),
  sunk('a thousandth less than 15 mm carry', '14.999', 'fails taper-too-short'),
  pin('0.999 mm too high', '32.999', 'holds'),
  pin('1 mm too high', '33', 'holds'),
  pin('1.001 mm too high', '33.001', 'fails pin-misses-the-nut'),
  pin('0.999 mm too low', '31.001', 'holds'),
  pin('1 mm too low', '31', 'holds'),
  pin('1.001 mm too low', '30.999', 'fails pin-misses-the-nut'),
  ball('0.999 mm too far', '20.999', 'holds'),
  ball('1 mm too far', '21', 'holds'),
  ball('1.001 mm too far', '21.001', 'fails ball-centre-moves'),
  ball('0.999 mm too near', '19.001', 'holds'),
  ball('1 mm too near', '19', 'holds'),
  ball('1.001 mm too near', '18.999', 'fails ball-centre-moves'),
  [
    'taper: a decimal is a reading',
    { taper: '0.100' },
    {},
    'equal-taper',
    'open not-precise-enough',
  ],
];

function pinch(says: string, bore: string, check: string, verdict: string): Row {
  const own = { 'pinch-diameter': '18 ±0 mm' };
  return [`pinch: ${says}`, own, { 'pinch-diameter': `${bore} ±0 mm` }, check, verdict];
}

function groove(says: string, height: string, verdict: string): Row {
  const own = { groove: `${height} ±0 mm` };
  return [`groove: ${says}`, own, { groove: '14 ±0 mm' }, 'groove', verdict];
}

const pinches: readonly Row[] = [
  pinch('a thousandth of play', '18.001', 'stem-goes-in', 'holds'),
  pinch('no play', '18', 'stem-goes-in', 'holds'),
  pinch('a thousandth too tight', '17.999', 'stem-goes-in', 'fails stem-too-thick'),
  pinch('0.049 mm of play', '18.049', 'pinch-play', 'holds'),
  pinch('0.050 mm of play', '18.05', 'pinch-play', 'holds'),
  pinch('0.051 mm of play', '18.051', 'pinch-play', 'fails stem-too-thin'),
  groove('0.499 mm too high', '14.499', 'holds'),
  groove('0.5 mm too high', '14.5', 'holds'),
  groove('0.501 mm too high', '14.501', 'fails groove-misses-the-bolt'),
  groove('0.499 mm too low', '13.501', 'holds'),
  groove('0.5 mm too low', '13.5', 'holds'),
  groove('0.501 mm too low', '13.499', 'fails groove-misses-the-bolt'),
];

function outcomeOf(check: string, verdict: string): Outcome {
  return check === 'ball-height' ? 'holds' : (verdict.split(' ')[0] as Outcome);
}

export const fixtures: readonly Fixture[] = [
  ...tapers.map(([says, left, right, check, verdict]) => ({
    says,
    faces: [
      { ...stem, ...left },
      { ...eye, ...right },
    ] as const,
    outcome: outcomeOf(check, verdict),
    checks: { ...held, [check]: verdict },
  })),
  ...pinches.map(([says, left, right, check, verdict]) => ({
    says,
    faces: [
      { ...pinchedStem, ...left },
      { ...pinchEye, ...right },
    ] as const,
    outcome: outcomeOf(check, verdict),
    checks: { ...heldPinch, [check]: verdict },
  })),
];
