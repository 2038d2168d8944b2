/**
 * Just inside, exactly on and just outside each limit of an inner end.
 */

import type { Fixture } from '../fixture.js';
import {
  differential,
  flangeOfDifferential,
  flangeOfShaft,
  heldFlange,
  heldStub,
  shaft,
} from './fits.js';

type Row = readonly [string, object, object, string, string];

/** What it says, of the differential, of the shaft, the check, what becomes of it. */
const rows: readonly Row[] = [
  ...trio('ring beyond its recess', ['48.299', '48.300', '48.301'], (ring) => [
    { recess: '48 ±0 mm' },
    { ring: `${ring} ±0 mm` },
    'ring',
    'fails ring-misses-recess',
  ]),
  ...trio('ring before its recess', ['47.701', '47.700', '47.699'], (ring) => [
    { recess: '48 ±0 mm' },
    { ring: `${ring} ±0 mm` },
    'ring',
    'fails ring-misses-recess',
  ]),
  ...trio('largest journal', ['39.999', '40.000', '40.001'], (journal) => [
    {},
    { journal: `${journal} ±0 mm` },
    'seal',
    'fails seal-does-not-suit',
  ]),
  ...trio('smallest journal', ['39.841', '39.840', '39.839'], (journal) => [
    {},
    { journal: `${journal} ±0 mm` },
    'seal',
    'fails seal-does-not-suit',
  ]),
  ...trio('stub and bottom', ['69.999', '70.000', '70.001'], (length) => [
    { depth: '70 ±0 mm' },
    { 'stub-length': `${length} ±0 mm` },
    'depth',
    'fails stub-bottoms',
  ]),
  ['a journal by the vernier', {}, { journal: '39.9 mm' }, 'seal', 'holds'],
  ['a journal by the tape', {}, { journal: '40 ±1 mm' }, 'seal', 'open not-precise-enough'],
];

function trio(
  says: string,
  values: readonly [string, string, string],
  row: (value: string) => readonly [object, object, string, string],
): Row[] {
  const where = ['just inside', 'exactly on it', 'just outside'];
  return values.map((value, index) => {
    const [left, right, check, failure] = row(value);
    return [`${says}: ${where[index]}`, left, right, check, index === 2 ? failure : 'holds'];
  });
}

function outcomeOf(verdict: string) {
  if (verdict === 'holds') return 'holds';
  return verdict.startsWith('open') ? 'open' : 'fails';
}

const stubs = rows.map(([says, left, right, check, verdict]): Fixture => {
  return {
    says,
    faces: [
      { ...differential, ...left },
      { ...shaft, ...right },
    ],
    outcome: outcomeOf(verdict),
    checks: { ...heldStub, [check]: verdict },
  };
});

const circles: readonly (readonly [string, string, string])[] = [
  ['0.199 mm more', '84.199 mm', 'holds'],
  ['0.200 mm more', '84.2 mm', 'holds'],
  ['0.201 mm more', '84.201 mm', 'fails pcd-differs'],
  ['0.199 mm less', '83.801 mm', 'holds'],
  ['0.200 mm less', '83.8 mm', 'holds'],
  ['0.201 mm less', '83.799 mm', 'fails pcd-differs'],
];

const flanges = circles.map(([says, pcd, verdict]): Fixture => {
  return {
    says: `pitch circle: ${says}`,
    faces: [flangeOfDifferential, { ...flangeOfShaft, pcd }],
    outcome: outcomeOf(verdict),
    checks: { ...heldFlange, pcd: verdict },
  };
});

export const fixtures: readonly Fixture[] = [...stubs, ...flanges];
