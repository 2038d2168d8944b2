/**
 * Just inside, exactly on and just outside each limit of a drum parking brake.
 */

import type { InterfaceRecord } from '../../../src/domain/catalogue/document.js';
import type { Outcome } from '../../../src/domain/check/state.js';
import type { Expected, Fixture } from '../fixture.js';
import {
  cable,
  drum,
  heldCable,
  heldDrum,
  heldPlate,
  knuckle,
  lever,
  plate,
  shoes,
} from './fits.js';

type Row = readonly [string, object, object, string, string];

/** What it says, on the brake, on its place, the check, what becomes of it. */
function inDrum(says: string, diameter: string, check: string, verdict: string): Row {
  const own = { 'drum-diameter': `${diameter} ±0 mm`, 'drum-limit': '173.5 mm' };
  return [`drum: ${says}`, {}, own, check, verdict];
}

function limit(says: string, diameter: string, verdict: string): Row {
  const own = { 'drum-diameter': `${diameter} ±0 mm`, 'drum-limit': '172.8 mm' };
  return [`stamped limit: ${says}`, {}, own, 'drum-limit', verdict];
}

function width(says: string, value: string, verdict: string): Row {
  const own = { 'shoe-width': '20 ±0 mm' };
  return [`width: ${says}`, own, { 'drum-width': `${value} ±0 mm` }, 'width', verdict];
}

const drums: readonly Row[] = [
  inDrum('0.299 mm under the shoes', '171.701', 'shoes-go-in', 'holds'),
  inDrum('0.300 mm under the shoes', '171.7', 'shoes-go-in', 'holds'),
  inDrum('0.301 mm under the shoes', '171.699', 'shoes-go-in', 'fails drum-too-small'),
  inDrum('0.999 mm over the shoes', '172.999', 'shoes-bear', 'holds'),
  inDrum('1 mm over the shoes', '173', 'shoes-bear', 'holds'),
  inDrum('1.001 mm over the shoes', '173.001', 'shoes-bear', 'fails drum-too-large'),
  limit('a thousandth below', '172.799', 'holds'),
  limit('exactly on it', '172.8', 'holds'),
  limit('a thousandth beyond', '172.801', 'fails drum-worn-out'),
  width('a thousandth wider than the shoes', '20.001', 'holds'),
  width('as wide as the shoes', '20', 'holds'),
  width('a thousandth narrower than the shoes', '19.999', 'fails shoes-too-wide'),
  [
    'drum: by the tape',
    {},
    { 'drum-diameter': { is: '172 mm', tool: 'tape' }, 'drum-limit': '173.5 mm' },
    'shoes-go-in',
    'open not-precise-enough',
  ],
];

/** 0.4 mm of play: holes of 8.4 mm over threads of 8 mm. */
function pcd(says: string, value: string, verdict: string): Row {
  const own = { pcd: '104 ±0 mm', hole: '8.4 ±0 mm' };
  return [`pitch circle: ${says}`, own, { pcd: `${value} ±0 mm` }, 'pcd', verdict];
}

function bore(says: string, value: string, check: string, verdict: string): Row {
  return [`bore: ${says}`, { bore: `${value} ±0 mm` }, { spigot: '72 ±0 mm' }, check, verdict];
}

const alike = { pcd: '104 ±0 mm' };
const roomy = { ...alike, hole: '8.4 ±0 mm' };

function plateHole(says: string, value: string, verdict: string): Row {
  const own = { ...alike, hole: `${value} ±0 mm` };
  return [`hole of the plate: ${says}`, own, roomy, 'backplate-hole', verdict];
}

function knuckleHole(says: string, value: string, verdict: string): Row {
  const own = { ...alike, hole: `${value} ±0 mm` };
  return [`hole of the knuckle: ${says}`, alike, own, 'knuckle-hole', verdict];
}

const plates: readonly Row[] = [
  pcd('0.399 mm more', '104.399', 'holds'),
  pcd('0.4 mm more', '104.4', 'holds'),
  pcd('0.401 mm more', '104.401', 'fails pcd-differs'),
  pcd('0.399 mm less', '103.601', 'holds'),
  pcd('0.4 mm less', '103.6', 'holds'),
  pcd('0.401 mm less', '103.599', 'fails pcd-differs'),
  bore('a thousandth over the spigot', '72.001', 'bore', 'holds'),
  bore('exactly the spigot', '72', 'bore', 'holds'),
  bore('a thousandth under the spigot', '71.999', 'bore', 'fails bore-too-small'),
  bore('0.499 mm of play', '72.499', 'centring', 'holds'),
  bore('0.500 mm of play', '72.5', 'centring', 'holds'),
  bore('0.501 mm of play', '72.501', 'centring', 'fails not-centred'),
  plateHole('a thousandth of room', '8.001', 'holds'),
  plateHole('exactly the bolt', '8', 'holds'),
  plateHole('a thousandth too small', '7.999', 'fails hole-too-small'),
  knuckleHole('a thousandth of room', '8.001', 'holds'),
  knuckleHole('exactly the bolt', '8', 'holds'),
  knuckleHole('a thousandth too small', '7.999', 'fails thread-too-small'),
];

function travel(says: string, value: string, verdict: string): Row {
  const own = { 'travel-needed': '18 ±0 mm' };
  return [`travel: ${says}`, own, { travel: `${value} ±0 mm` }, 'travel', verdict];
}

const cables: readonly Row[] = [
  travel('a thousandth more than needed', '18.001', 'holds'),
  travel('exactly what is needed', '18', 'holds'),
  travel('a thousandth too little', '17.999', 'fails too-little-travel'),
];

type Ends = readonly [InterfaceRecord, InterfaceRecord];

function fixturesOf(rows: readonly Row[], ends: Ends, held: Expected): Fixture[] {
  return rows.map(([says, left, right, check, verdict]) => ({
    says,
    faces: [
      { ...ends[0], ...left },
      { ...ends[1], ...right },
    ],
    outcome: verdict.split(' ')[0] as Outcome,
    checks: { ...held, [check]: verdict },
  }));
}

export const fixtures: readonly Fixture[] = [
  ...fixturesOf(drums, [shoes, drum], heldDrum),
  ...fixturesOf(plates, [plate, knuckle], heldPlate),
  ...fixturesOf(cables, [lever, cable], heldCable),
];
