/**
 * Just inside, exactly on and just outside each limit of a disc on its hub.
 */

import type { Outcome } from '../../../src/domain/check/state.js';
import type { Fixture } from '../fixture.js';
import { disc, held, hub } from './fits.js';

type Row = readonly [string, object, object, string, string];

function pcd(says: string, value: string, verdict: string): Row {
  return [`pitch circle: ${says}`, {}, { pcd: value }, 'pcd', verdict];
}

/** A tenth of play: a hole of 12.1 mm over a stud of 12 mm. */
function stud(says: string, value: string, verdict: string): Row {
  const holes = { pcd: value, 'stud-hole': '12.1 ±0 mm' };
  return [`studs with 0.1 mm of play: ${says}`, { stud: '12 mm' }, holes, 'stud-hole', verdict];
}

function bore(says: string, value: string, check: string, verdict: string): Row {
  return [`bore: ${says}`, { pilot: '57 ±0 mm' }, { bore: `${value} ±0 mm` }, check, verdict];
}

function hat(says: string, value: string, verdict: string): Row {
  return [`hat: ${says}`, { hat: '36 ±0 mm' }, { hat: `${value} ±0 mm` }, 'hat', verdict];
}

function diameter(says: string, value: string, verdict: string): Row {
  return [`diameter: ${says}`, {}, { diameter: value }, 'diameter', verdict];
}

function thickness(says: string, value: string, check: string, verdict: string): Row {
  const caliper = { 'thickest-disc': '20.5 ±0 mm', 'wear-limit': '17.5 ±0 mm' };
  return [`thickness: ${says}`, caliper, { thickness: `${value} ±0 mm` }, check, verdict];
}

/** A disc with a stamped minimum half a millimetre below what the caliper bears. */
function worn(says: string, value: string, verdict: string): Row {
  const own = { thickness: `${value} ±0 mm`, 'minimum-thickness': '17 mm' };
  return [`worn: ${says}`, { 'wear-limit': '17.5 ±0 mm' }, own, 'thin-disc', verdict];
}

function limit(says: string, value: string, verdict: string): Row {
  const own = { 'minimum-thickness': value };
  return [`minimum: ${says}`, { 'wear-limit': '17.5 ±0 mm' }, own, 'wear-limit', verdict];
}

const past = 'fails wears-past-the-caliper';
/** So as to be worn only by the caliper's limit, the disc has a lower one of its own. */
const wearing = { 'wear-limit': past };

/** What it says, on the hub, on the disc, the check, what becomes of it. */
const rows: readonly Row[] = [
  pcd('0.199 mm more', '106.199 mm', 'holds'),
  pcd('0.2 mm more', '106.2 mm', 'holds'),
  pcd('0.201 mm more', '106.201 mm', 'fails pcd-differs'),
  pcd('0.199 mm less', '105.801 mm', 'holds'),
  pcd('0.2 mm less', '105.8 mm', 'holds'),
  pcd('0.201 mm less', '105.799 mm', 'fails pcd-differs'),
  stud('0.099 mm apart', '106.099 mm', 'holds'),
  stud('0.100 mm apart', '106.1 mm', 'holds'),
  stud('0.101 mm apart', '106.101 mm', 'fails studs-do-not-pass'),
  bore('a thousandth larger than the pilot', '57.001', 'bore', 'holds'),
  bore('exactly the pilot', '57', 'bore', 'holds'),
  bore('a thousandth smaller than the pilot', '56.999', 'bore', 'fails bore-too-small'),
  bore('0.099 mm of play', '57.099', 'centring', 'holds'),
  bore('0.100 mm of play', '57.1', 'centring', 'holds'),
  bore('0.101 mm of play', '57.101', 'centring', 'fails not-centred'),
  [
    'bore: read with a vernier caliper',
    { pilot: { is: '57.05 mm', tool: 'caliper' } },
    { bore: '57.15 ±0.01 mm' },
    'centring',
    'open not-precise-enough',
  ],
  hat('0.249 mm higher', '36.249', 'holds'),
  hat('0.250 mm higher', '36.25', 'holds'),
  hat('0.251 mm higher', '36.251', 'fails disc-not-centred'),
  hat('0.249 mm lower', '35.751', 'holds'),
  hat('0.250 mm lower', '35.75', 'holds'),
  hat('0.251 mm lower', '35.749', 'fails disc-not-centred'),
  diameter('0.999 mm more', '266.999 mm', 'holds'),
  diameter('1 mm more', '267 mm', 'holds'),
  diameter('1.001 mm more', '267.001 mm', 'fails diameter-differs'),
  diameter('0.999 mm less', '265.001 mm', 'holds'),
  diameter('1 mm less', '265 mm', 'holds'),
  diameter('1.001 mm less', '264.999 mm', 'fails diameter-differs'),
  thickness('a thousandth under the thickest', '20.499', 'thick-disc', 'holds'),
  thickness('exactly the thickest', '20.5', 'thick-disc', 'holds'),
  thickness('a thousandth over the thickest', '20.501', 'thick-disc', 'fails disc-too-thick'),
  thickness('a thousandth over the stamped minimum', '18.001', 'worn-disc', 'holds'),
  thickness('exactly the stamped minimum', '18', 'worn-disc', 'holds'),
  thickness('a thousandth under the stamped minimum', '17.999', 'worn-disc', 'fails disc-worn-out'),
  worn('a thousandth over what the caliper bears', '17.501', 'holds'),
  worn('exactly what the caliper bears', '17.5', 'holds'),
  worn('a thousandth under what the caliper bears', '17.499', 'fails disc-too-thin'),
  limit('a thousandth above what the caliper bears', '17.501 mm', 'holds'),
  limit('exactly what the caliper bears', '17.5 mm', 'holds'),
  limit('a thousandth below what the caliper bears', '17.499 mm', past),
];

export const fixtures: readonly Fixture[] = rows.map(([says, left, right, check, verdict]) => ({
  says,
  faces: [
    { ...hub, ...left },
    { ...disc, ...right },
  ],
  outcome: check === 'wear-limit' ? 'holds' : (verdict.split(' ')[0] as Outcome),
  checks: { ...held, ...(says.startsWith('worn') ? wearing : {}), [check]: verdict },
}));
