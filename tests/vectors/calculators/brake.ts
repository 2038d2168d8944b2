/**
 * Check values of brakes: torque, balance, pedal travel, room in the wheel, fluid.
 */

import type { Vector } from '../vector.js';

const TORQUE = {
  calculation: 'brake-torque',
  source: 'disc brake torque T = 2 mu F r',
  basis: 'read, computed',
} as const;
const BY_HAND = { source: 'exact arithmetic or geometry', basis: 'arithmetic' } as const;

const onDisc = { pressure: '8 MPa', pistons: ['54 mm'], friction: '0.38', radius: '115 mm' };

const band = (
  id: string,
  how: string,
  [padInner, padOuter]: readonly [string, string],
  near: number,
): Vector => ({
  id,
  calculation: 'brake-torque',
  given: { pistons: ['54 mm'], friction: '0.38', padInner, padOuter, band: how },
  output: 'effectiveRadius',
  expected: { near, within: 1e-9 },
  ...BY_HAND,
});

export const BRAKE_TORQUE: readonly Vector[] = [
  {
    id: 'brake-01',
    calculation: 'brake-torque',
    given: {
      pedalForce: '360 N',
      pedalRatio: '8',
      masterBore: '30 mm',
      pistons: ['32 mm'],
      friction: '0.4',
    },
    output: 'force',
    expected: { exactly: '16384/5' },
    source: 'worked example of hydraulic brakes, 360 N x 8 from 30 mm on 32 mm: 3277 N',
    basis: 'read, computed',
  },
  {
    ...TORQUE,
    id: 'brake-02 (area)',
    given: onDisc,
    output: 'pistonArea',
    expected: { near: 2290.221044466959, within: 0.1 },
  },
  {
    ...TORQUE,
    id: 'brake-02 (force)',
    given: onDisc,
    output: 'force',
    expected: { near: 18321.768355735672, within: 1 },
  },
  {
    ...TORQUE,
    id: 'brake-02',
    given: onDisc,
    output: 'torque',
    expected: { near: 1601.3225542912978, within: 0.5 },
  },
  band('torque-own-1', 'middle', ['90 mm', '140 mm'], 115),
  // 2/3 (140^3 - 90^3) / (140^2 - 90^2) = 2/3 x 2015000 / 11500
  band('torque-own-2', 'even-pressure', ['90 mm', '140 mm'], (2 / 3) * (2_015_000 / 11_500)),
  {
    id: 'torque-own-3',
    calculation: 'brake-torque',
    given: {
      pedalForce: '100 N',
      pedalRatio: '4',
      boost: '5',
      masterBore: '20 mm',
      pistons: ['40 mm'],
      friction: '0.4',
      radius: '100 mm',
    },
    output: 'torque',
    // 2000 N on a bore of half the diameter are 8000 N, times 2 x 0.4 x 0.1 m.
    expected: { exactly: '640' },
    ...BY_HAND,
  },
];

const onDrum = {
  pressure: '6 MPa',
  wheelCylinder: '20 mm',
  brakeFactor: '2',
  drumDiameter: '200 mm',
};

export const DRUM_BRAKE_TORQUE: readonly Vector[] = [
  {
    id: 'drum-own-1',
    calculation: 'drum-brake-torque',
    given: onDrum,
    output: 'force',
    // 6 x 100 pi
    expected: { near: 1884.9555921538758, within: 1e-9 },
    ...BY_HAND,
  },
  {
    id: 'drum-own-2',
    calculation: 'drum-brake-torque',
    given: onDrum,
    output: 'torque',
    expected: { near: 376.99111843077515, within: 1e-9 },
    source: 'drum brakes by the brake factor, T = C* F r',
    basis: 'from memory',
  },
  {
    id: 'drum-own-3',
    calculation: 'drum-brake-torque',
    given: {
      pedalForce: '100 N',
      pedalRatio: '5',
      masterBore: '20 mm',
      wheelCylinder: '20 mm',
      brakeFactor: '2',
      drumDiameter: '200 mm',
    },
    output: 'torque',
    // Equal bores hand on 500 N, times 2 x 0.1 m.
    expected: { exactly: '100' },
    ...BY_HAND,
  },
];

const onRoad = {
  frontTorque: '750 N.m',
  rearTorque: '250 N.m',
  staticFrontShare: '58 %',
  centreOfGravityHeight: '0.5 m',
  wheelbase: '2.5 m',
  deceleration: '0.8',
};

const balance = (
  id: string,
  output: string,
  expected: Vector['expected'],
  given: Vector['given'] = onRoad,
): Vector => ({ ...BY_HAND, id, calculation: 'brake-balance', given, output, expected });

export const BRAKE_BALANCE: readonly Vector[] = [
  balance('balance-own-7', 'frontLoadShare', { exactly: '74' }),
  balance('balance-own-1', 'balancedDeceleration', { exactly: '85' }),
  // 0.8 x 0.75 / 0.74 and 0.8 x 0.25 / 0.26
  balance('balance-own-2', 'frontGripUsed', { exactly: '3000/37' }),
  balance('balance-own-3', 'rearGripUsed', { exactly: '1000/13' }),
  balance('balance-own-4', 'locksFirst', { exactly: 'front' }),
  balance('balance-own-5', 'locksFirst', { exactly: 'rear' }, { ...onRoad, deceleration: '0.9' }),
  balance('balance-own-6', 'locksFirst', { exactly: 'both' }, { ...onRoad, deceleration: '0.85' }),
];

// A front and a rear brake on each side.
const onPedal = {
  frontPistons: ['54 mm', '54 mm'],
  frontTravel: '0.6 mm',
  rearPistons: ['38 mm', '38 mm'],
  rearTravel: '0.7 mm',
  masterBore: '23.81 mm',
  pedalRatio: '4.2',
};

const travel = (
  id: string,
  output: string,
  expected: Vector['expected'],
  given: Vector['given'] = onPedal,
): Vector => ({ ...BY_HAND, id, calculation: 'pedal-travel', given, output, expected });

export const PEDAL_TRAVEL: readonly Vector[] = [
  travel('brake-04', 'pedalTravel', { near: 40.9008669889601, within: 0.1 }),
  travel('brake-04 (stroke)', 'masterStroke', { near: 9.738301664038119, within: 0.1 }),
  travel('brake-04 (volume)', 'volume', { near: 4336.026180484632, within: 0.1 }),
  travel(
    'pedal-own-1',
    'failedTravel',
    // 10 mm dead, then 10^2 x 4 / 20^2 = 1 mm behind, or 20^2 x 2 / 20^2 = 2 mm in front.
    { exactly: ['44', '48'] },
    {
      frontPistons: ['20 mm'],
      frontTravel: '2 mm',
      rearPistons: ['10 mm'],
      rearTravel: '4 mm',
      masterBore: '20 mm',
      pedalRatio: '4',
      split: 'front-rear',
      deadStroke: '10 mm',
    },
  ),
  travel(
    'pedal-own-2',
    'brakingLeft',
    { exactly: ['28', '72'] },
    { ...onPedal, split: 'front-rear', frontBrakeShare: '72 %' },
  ),
  travel(
    'pedal-own-3',
    'brakingLeft',
    { exactly: ['50'] },
    { ...onPedal, split: 'diagonal', frontBrakeShare: '72 %' },
  ),
];

const inRim = { discDiameter: '300 mm', caliperRadius: '172 mm', rimInnerRadius: '178 mm' };

const room = (
  id: string,
  [output, exactly]: readonly [string, string],
  given: Vector['given'] = { ...inRim, gapNeeded: '3 mm' },
): Vector => ({
  id,
  calculation: 'disc-in-rim',
  given,
  output,
  expected: { exactly },
  source: 'common practice, no source',
  basis: 'from memory',
});

export const DISC_IN_RIM: readonly Vector[] = [
  room('brake-06', ['radialGap', '6']),
  room('brake-06 (fits)', ['clearsRim', 'holds']),
  room('rim-own-1', ['clearsRim', 'holds'], { ...inRim, rimInnerRadius: '175 mm' }),
  room('rim-own-2', ['clearsRim', 'fails'], { ...inRim, rimInnerRadius: '174.9 mm' }),
  room('rim-own-3', ['spokeGap', '4'], { ...inRim, spokeFace: '48 mm', caliperFace: '44 mm' }),
];

const FLUID = {
  calculation: 'brake-fluid',
  source: 'FMVSS 116, 49 CFR 571.116',
  basis: 'read',
} as const;

const grades = ['dot-3', 'dot-4', 'dot-5', 'dot-5-1'];

export const BRAKE_FLUID: readonly Vector[] = [
  {
    ...FLUID,
    id: 'brake-05 (dry)',
    given: { grades },
    output: 'dry',
    expected: { exactly: ['205', '230', '260', '260'] },
  },
  {
    ...FLUID,
    id: 'brake-05 (wet)',
    given: { grades },
    output: 'wet',
    expected: { exactly: ['140', '155', '180', '180'] },
  },
  {
    ...FLUID,
    id: 'fluid-own-1',
    given: { grades: ['dot-5-1'], asked: 'dot-4' },
    output: 'serves',
    expected: { exactly: 'holds' },
  },
  {
    ...FLUID,
    id: 'fluid-own-2',
    given: { grades: ['dot-5'], asked: 'dot-5-1' },
    output: 'serves',
    expected: { exactly: 'fails' },
    basis: 'from memory',
  },
];
