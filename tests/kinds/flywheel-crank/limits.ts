/**
 * Just inside, exactly on and just outside each limit of a flywheel on its crankshaft.
 */

import type { Outcome } from '../../../src/domain/check/state.js';
import type { Expected, Fixture } from '../fixture.js';
import {
  crankshaft,
  dowelCrankshaft,
  dowelFlywheel,
  flywheel,
  held,
  heldDowel,
  heldOffset,
  offsetCrankshaft,
  offsetFlywheel,
} from './fits.js';

/** What it says, on the crankshaft, on the flywheel, what becomes of which checks. */
type Row = readonly [says: string, crank: object, wheel: object, changed: Expected];

const CAUTIONS = ['bolt-hole-width', 'friction-height'];

function outcomeOf(changed: Expected): Outcome {
  const musts = Object.entries(changed).filter(([id]) => !CAUTIONS.includes(id));
  const told = musts.map(([, verdict]) => verdict.split(' ')[0]);
  return told.includes('fails') ? 'fails' : told.includes('open') ? 'open' : 'holds';
}

function rowsOn(pair: readonly [object, object], checks: Expected, rows: readonly Row[]) {
  return rows.map(([says, crank, wheel, changed]): Fixture => {
    const [left, right] = pair as Fixture['faces'];
    const faces = [
      { ...left, ...crank },
      { ...right, ...wheel },
    ] as const;
    return { says, faces, outcome: outcomeOf(changed), checks: { ...checks, ...changed } };
  });
}

const exactSpigot = { spigot: '52.000 ±0 mm' };
const pcdFails = { pcd: 'fails pcd-differs' };
/** A hole of 12.1 mm leaves a bolt of 12 mm a tenth. */
const closeHole = { 'bolt-hole': '12.1 ±0 mm' };
const height = { 'friction-height': '32.0 ±0 mm' };

const plain: readonly Row[] = [
  ['pitch circle: 0.199 mm more', {}, { pcd: '75.199 mm' }, {}],
  ['pitch circle: 0.2 mm more', {}, { pcd: '75.2 mm' }, {}],
  ['pitch circle: 0.201 mm more', {}, { pcd: '75.201 mm' }, pcdFails],
  ['pitch circle: 0.199 mm less', {}, { pcd: '74.801 mm' }, {}],
  ['pitch circle: 0.2 mm less', {}, { pcd: '74.8 mm' }, {}],
  ['pitch circle: 0.201 mm less', {}, { pcd: '74.799 mm' }, pcdFails],
  ['register: a thousandth of play', exactSpigot, { bore: '52.001 ±0 mm' }, {}],
  ['register: no play', exactSpigot, { bore: '52.000 ±0 mm' }, {}],
  [
    'register: a thousandth too tight',
    exactSpigot,
    { bore: '51.999 ±0 mm' },
    { register: 'fails too-small' },
  ],
  ['register: 0.049 mm of play', exactSpigot, { bore: '52.049 ±0 mm' }, {}],
  ['register: 0.050 mm of play', exactSpigot, { bore: '52.050 ±0 mm' }, {}],
  [
    'register: 0.051 mm of play',
    exactSpigot,
    { bore: '52.051 ±0 mm' },
    { register: 'fails too-large' },
  ],
  [
    'register: both read with a vernier caliper, which cannot tell 0.05 mm',
    { spigot: { is: '52.00 mm', tool: 'caliper' } },
    { bore: { is: '52.03 mm', tool: 'caliper' } },
    { register: 'open not-precise-enough' },
  ],
  ['bolt hole: a thousandth of room', {}, { 'bolt-hole': '12.001 ±0 mm' }, {}],
  ['bolt hole: exactly the bolt', {}, { 'bolt-hole': '12 ±0 mm' }, {}],
  [
    'bolt hole: a thousandth too small',
    {},
    { 'bolt-hole': '11.999 ±0 mm' },
    { 'bolt-hole': 'fails bolt-hole-too-small', 'bolt-play': 'fails bolts-do-not-enter' },
  ],
  ['bolts with a tenth of play: 0.099 mm apart', {}, { ...closeHole, pcd: '75.099 mm' }, {}],
  ['bolts with a tenth of play: 0.1 mm apart', {}, { ...closeHole, pcd: '75.1 mm' }, {}],
  [
    'bolts with a tenth of play: 0.101 mm apart',
    {},
    { ...closeHole, pcd: '75.101 mm' },
    { 'bolt-play': 'fails bolts-do-not-enter' },
  ],
  ['bolt hole: 0.999 mm wider', {}, { 'bolt-hole': '12.999 ±0 mm' }, {}],
  ['bolt hole: 1 mm wider', {}, { 'bolt-hole': '13 ±0 mm' }, {}],
  [
    'bolt hole: 1.001 mm wider',
    {},
    { 'bolt-hole': '13.001 ±0 mm' },
    { 'bolt-hole-width': 'fails holes-for-larger-bolts' },
  ],
  ...heights([
    ['0.999 mm higher', '32.999', 'holds'],
    ['1 mm higher', '33.000', 'holds'],
    ['1.001 mm higher', '33.001', 'fails moves-release-bearing'],
    ['0.999 mm lower', '31.001', 'holds'],
    ['1 mm lower', '31.000', 'holds'],
    ['1.001 mm lower', '30.999', 'fails moves-release-bearing'],
  ]),
];

function heights(values: readonly (readonly [string, string, string])[]): Row[] {
  return values.map(([says, value, verdict]) => [
    `friction face: ${says}`,
    height,
    { 'friction-height': `${value} ±0 mm` },
    { 'friction-height': verdict },
  ]);
}

const exactOdd = { 'odd-distance': '31.0 ±0 mm' };
const oddFails = { 'odd-hole': 'fails odd-hole-elsewhere' };

const offset: readonly Row[] = [
  ['odd hole: 0.199 mm further on', exactOdd, { 'odd-distance': '31.199 ±0 mm' }, {}],
  ['odd hole: 0.2 mm further on', exactOdd, { 'odd-distance': '31.2 ±0 mm' }, {}],
  ['odd hole: 0.201 mm further on', exactOdd, { 'odd-distance': '31.201 ±0 mm' }, oddFails],
  ['odd hole: 0.2 mm nearer', exactOdd, { 'odd-distance': '30.8 ±0 mm' }, {}],
  ['odd hole: 0.201 mm nearer', exactOdd, { 'odd-distance': '30.799 ±0 mm' }, oddFails],
];

const exactDowel = { dowel: '8.000 ±0 mm' };

const dowel: readonly Row[] = [
  ['dowel: a thousandth of play', exactDowel, { 'dowel-hole': '8.001 ±0 mm' }, {}],
  ['dowel: no play', exactDowel, { 'dowel-hole': '8.000 ±0 mm' }, {}],
  [
    'dowel: a thousandth too tight',
    exactDowel,
    { 'dowel-hole': '7.999 ±0 mm' },
    { dowel: 'fails dowel-does-not-enter' },
  ],
];

export const fixtures: readonly Fixture[] = [
  ...rowsOn([crankshaft, flywheel], held, plain),
  ...rowsOn([offsetCrankshaft, offsetFlywheel], heldOffset, offset),
  ...rowsOn([dowelCrankshaft, dowelFlywheel], heldDowel, dowel),
];
