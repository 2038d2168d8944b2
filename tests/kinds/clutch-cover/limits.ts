/**
 * Just inside, exactly on and just outside each limit of a cover on its flywheel.
 */

import type { InterfaceRecord } from '../../../src/domain/catalogue/document.js';
import type { Outcome } from '../../../src/domain/check/state.js';
import type { Expected, Fixture } from '../fixture.js';
import {
  cover,
  fittedCover,
  fittedFlywheel,
  flywheel,
  held,
  heldFitted,
  heldRegister,
  heldStepped,
  registerCover,
  registerFlywheel,
  steppedCover,
  steppedFlywheel,
} from './fits.js';

interface Limit {
  readonly says: string;
  readonly pair: readonly [InterfaceRecord, InterfaceRecord];
  readonly checks: Expected;
  readonly onFlywheel: object;
  /** The parameter of the cover, the rest of its value, and which values give what. */
  readonly parameter: string;
  readonly rest: string;
  readonly check: string;
  readonly values: readonly (readonly [string, string])[];
  readonly onCover?: object;
}

const dowelled = { pair: [flywheel, cover], checks: held, onFlywheel: {} } as const;

const limits: readonly Limit[] = [
  {
    ...dowelled,
    says: 'pitch circle',
    parameter: 'pcd',
    rest: ' mm',
    check: 'pcd',
    values: [
      ['255.199', 'holds'],
      ['255.2', 'holds'],
      ['255.201', 'fails pcd-differs'],
      ['254.8', 'holds'],
      ['254.799', 'fails pcd-differs'],
    ],
  },
  {
    ...dowelled,
    says: 'nearest holes',
    parameter: 'hole-distance',
    rest: ' mm',
    check: 'hole-distance',
    values: [
      ['127.699', 'holds'],
      ['127.7', 'holds'],
      ['127.701', 'fails holes-spaced-otherwise'],
      ['127.3', 'holds'],
      ['127.299', 'fails holes-spaced-otherwise'],
    ],
  },
  {
    ...dowelled,
    says: 'bolts with 0.1 mm of play',
    onCover: { 'bolt-hole': '8.1 ±0 mm' },
    parameter: 'pcd',
    rest: ' mm',
    check: 'bolt-play',
    values: [
      ['255.099', 'holds'],
      ['255.1', 'holds'],
      ['255.101', 'fails bolts-do-not-enter'],
    ],
  },
  {
    ...dowelled,
    says: 'bolt hole',
    parameter: 'bolt-hole',
    rest: ' ±0 mm',
    check: 'bolt-hole',
    values: [
      ['8.001', 'holds'],
      ['8', 'holds'],
    ],
  },
  {
    ...dowelled,
    says: 'pitch circle of the dowels',
    parameter: 'dowel-pcd',
    rest: ' mm',
    check: 'dowel-pcd',
    values: [
      ['255.099', 'holds'],
      ['255.1', 'holds'],
      ['255.101', 'fails dowel-pcd-differs'],
      ['254.9', 'holds'],
      ['254.899', 'fails dowel-pcd-differs'],
    ],
  },
  {
    ...dowelled,
    says: 'dowel',
    onFlywheel: { dowel: '8.000 ±0 mm' },
    parameter: 'dowel-hole',
    rest: ' ±0 mm',
    check: 'dowel',
    values: [
      ['8.001', 'holds'],
      ['8.000', 'holds'],
      ['7.999', 'fails too-small'],
      ['8.099', 'holds'],
      ['8.100', 'holds'],
      ['8.101', 'fails too-large'],
    ],
  },
  {
    pair: [registerFlywheel, registerCover],
    checks: heldRegister,
    says: 'register',
    onFlywheel: { register: '274.000 ±0 mm' },
    parameter: 'register',
    rest: ' ±0 mm',
    check: 'register',
    values: [
      ['273.999', 'holds'],
      ['274.000', 'holds'],
      ['274.001', 'fails too-small'],
      ['273.901', 'holds'],
      ['273.900', 'holds'],
      ['273.899', 'fails too-large'],
    ],
  },
  {
    pair: [fittedFlywheel, fittedCover],
    checks: heldFitted,
    says: 'fitted bolts',
    onFlywheel: {},
    parameter: 'bolt-hole',
    rest: ' ±0 mm',
    check: 'fitted-bolts',
    values: [
      ['8.099', 'holds'],
      ['8.100', 'holds'],
      ['8.101', 'fails bolts-do-not-centre'],
    ],
  },
  {
    pair: [steppedFlywheel, steppedCover],
    checks: heldStepped,
    says: 'step',
    onFlywheel: { step: '24.00 ±0 mm' },
    parameter: 'step',
    rest: ' ±0 mm',
    check: 'step',
    values: [
      ['24.099', 'holds'],
      ['24.100', 'holds'],
      ['24.101', 'fails step-differs'],
      ['23.900', 'holds'],
      ['23.899', 'fails step-differs'],
    ],
  },
  {
    ...dowelled,
    says: 'disc on a face of 240 mm',
    onFlywheel: { 'friction-outer': '240 ±0 mm' },
    parameter: 'disc-outer',
    rest: ' mm',
    check: 'disc-room',
    values: [
      ['237.999', 'holds'],
      ['238', 'holds'],
      ['238.001', 'fails disc-overhangs'],
    ],
  },
  {
    ...dowelled,
    says: 'face of 240 mm by a caliper that tells half a millimetre, disc',
    parameter: 'disc-outer',
    rest: ' mm',
    check: 'disc-room',
    values: [['238', 'open not-precise-enough']],
  },
  {
    ...dowelled,
    says: 'inner edge of a lining on a face from 150 mm',
    onFlywheel: { 'friction-inner': '150 ±0 mm' },
    parameter: 'disc-inner',
    rest: ' mm',
    check: 'lining-inside',
    values: [
      ['150.001', 'holds'],
      ['150', 'holds'],
      ['149.999', 'fails lining-overhangs-inside'],
    ],
  },
];

export const fixtures: readonly Fixture[] = limits.flatMap((limit) =>
  limit.values.map(([value, verdict]): Fixture => {
    const [left, right] = limit.pair;
    const changed = { [limit.parameter]: `${value}${limit.rest}` };
    return {
      says: `${limit.says}: ${value} mm`,
      faces: [
        { ...left, ...limit.onFlywheel },
        { ...right, ...limit.onCover, ...changed },
      ],
      outcome: verdict.split(' ')[0] as Outcome,
      checks: { ...limit.checks, [limit.check]: verdict },
    };
  }),
);
