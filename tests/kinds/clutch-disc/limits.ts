/**
 * Just inside, exactly on and just outside each limit of a disc against its plate.
 */

import type { InterfaceRecord } from '../../../src/domain/catalogue/document.js';
import type { Outcome } from '../../../src/domain/check/state.js';
import type { Expected, Fixture } from '../fixture.js';
import { flywheel, heldCover, heldFlywheel, pressurePlate, toCover, toFlywheel } from './fits.js';

interface Limit {
  readonly says: string;
  readonly pair: readonly [InterfaceRecord, InterfaceRecord];
  readonly held: Expected;
  /** The value of the disc, and the parameter of the plate that goes past its limit. */
  readonly disc: readonly [parameter: string, value: string];
  readonly parameter: string;
  readonly check: string;
  readonly values: readonly (readonly [string, string])[];
}

const onFlywheel = { pair: [toFlywheel, flywheel], held: heldFlywheel } as const;
const onCover = { pair: [toCover, pressurePlate], held: heldCover } as const;

const CAUTIONS = ['smaller-lining', 'protrusion-worn'];

const limits: readonly Limit[] = [
  {
    ...onFlywheel,
    says: 'flywheel for a lining of 228 mm',
    disc: ['lining-outer', '228'],
    parameter: 'friction-outer',
    check: 'lining-on-flywheel',
    values: [
      ['230.001', 'holds'],
      ['230', 'holds'],
      ['229.999', 'fails lining-overhangs'],
    ],
  },
  {
    ...onCover,
    says: 'pressure plate for a lining of 228 mm',
    disc: ['lining-outer', '228'],
    parameter: 'friction-outer',
    check: 'lining-on-pressure-plate',
    values: [
      ['228.001', 'holds'],
      ['228', 'holds'],
      ['227.999', 'fails lining-overhangs-pressure-plate'],
    ],
  },
  {
    ...onCover,
    says: 'pressure plate much larger than a lining of 228 mm',
    disc: ['lining-outer', '228'],
    parameter: 'friction-outer',
    check: 'smaller-lining',
    values: [
      ['233.999', 'holds'],
      ['234', 'holds'],
      ['234.001', 'fails plate-for-larger-disc'],
    ],
  },
  {
    ...onFlywheel,
    says: 'inner edge for a lining from 150 mm',
    disc: ['lining-inner', '150'],
    parameter: 'friction-inner',
    check: 'lining-inside',
    values: [
      ['149.999', 'holds'],
      ['150', 'holds'],
      ['150.001', 'fails lining-overhangs-inside'],
    ],
  },
  {
    ...onCover,
    says: 'thickness against a disc of 8.3 mm',
    disc: ['thickness', '8.3'],
    parameter: 'thickness',
    check: 'thickness',
    values: [
      ['8.599', 'holds'],
      ['8.6', 'holds'],
      ['8.601', 'fails thickness-differs'],
      ['8.0', 'holds'],
      ['7.999', 'fails thickness-differs'],
    ],
  },
  {
    ...onFlywheel,
    says: 'room for a hub that stands out 6 mm, once worn',
    disc: ['protrusion', '6'],
    parameter: 'room',
    check: 'protrusion-worn',
    values: [
      ['7.501', 'holds'],
      ['7.5', 'holds'],
      ['7.499', 'fails hub-touches-when-worn'],
    ],
  },
  {
    ...onFlywheel,
    says: 'opening for a damper of 118 mm',
    disc: ['damper-diameter', '118'],
    parameter: 'opening',
    check: 'opening',
    values: [
      ['119.001', 'holds'],
      ['119', 'holds'],
      ['118.999', 'fails damper-touches-edge'],
    ],
  },
];

const touchesWhenWorn = { 'protrusion-worn': 'fails hub-touches-when-worn' };

function atTheBolts(room: string, verdict: string): Fixture {
  return {
    says: `room for a hub that stands out 6 mm: ${room} mm`,
    faces: [
      { ...toFlywheel, protrusion: '6 ±0 mm' },
      { ...flywheel, room: `${room} ±0 mm` },
    ],
    outcome: verdict.split(' ')[0] as Outcome,
    checks: { ...heldFlywheel, ...touchesWhenWorn, protrusion: verdict },
  };
}

export const fixtures: readonly Fixture[] = [
  ...limits.flatMap(({ says, pair, held, disc, parameter, check, values }) =>
    values.map(([value, verdict]): Fixture => {
      const [left, right] = pair;
      const outcome = CAUTIONS.includes(check) ? 'holds' : (verdict.split(' ')[0] as Outcome);
      return {
        says: `${says}: ${value} mm`,
        faces: [
          { ...left, [disc[0]]: `${disc[1]} ±0 mm` },
          { ...right, [parameter]: `${value} ±0 mm` },
        ],
        outcome,
        checks: { ...held, [check]: verdict },
      };
    }),
  ),
  atTheBolts('6.001', 'holds'),
  atTheBolts('6', 'holds'),
  atTheBolts('5.999', 'fails hub-touches'),
  {
    says: 'a thickness by the steel tape cannot tell 0.3 mm',
    faces: [{ ...toCover, thickness: { is: '8 mm', tool: 'tape' } }, pressurePlate],
    outcome: 'open',
    checks: { ...heldCover, thickness: 'open not-precise-enough' },
  },
];
