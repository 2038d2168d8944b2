/**
 * Check values of the torque that a clutch carries.
 */

import type { Vector } from '../vector.js';

const TEXTBOOK = {
  calculation: 'clutch-capacity',
  source: 'machine-design textbook companion, clutch chapter worked examples',
  basis: 'read',
} as const;

/** One pair of faces of 100 and 200 mm at 1 MPa. */
const pair = {
  outerDiameter: '200 mm',
  innerDiameter: '100 mm',
  friction: '0.2',
  pressure: '1 MPa',
  pairs: 1,
};
const worn = { ...pair, model: 'uniform-wear' };
const fresh = { ...pair, model: 'uniform-pressure' };

const disc = {
  outerDiameter: '250 mm',
  innerDiameter: '175 mm',
  friction: '0.35',
  clampLoad: '7200 N',
  pairs: 2,
  engineTorque: '250 N.m',
};

const early = {
  outerDiameter: '235 mm',
  innerDiameter: '150 mm',
  friction: '0.3',
  clampLoad: '6500 N',
  engineTorque: '320 N.m',
};
const late = { ...early, outerDiameter: '240 mm', innerDiameter: '155 mm', clampLoad: '7400 N' };

const INVENTED = {
  calculation: 'clutch-capacity',
  source: 'invented clutch, uniform wear by hand',
  basis: 'read, computed',
} as const;

export const CLUTCH_CAPACITY: readonly Vector[] = [
  {
    ...TEXTBOOK,
    id: 'clutch-01',
    given: worn,
    output: 'capacity',
    expected: { near: 235.619449019, within: 1e-6 },
  },
  {
    ...TEXTBOOK,
    id: 'clutch-01 (clamp load)',
    given: worn,
    output: 'clampForce',
    expected: { near: 15707.963268, within: 0.001 },
  },
  {
    ...TEXTBOOK,
    id: 'clutch-02',
    given: fresh,
    output: 'capacity',
    expected: { near: 366.519142919, within: 1e-6 },
  },
  {
    ...TEXTBOOK,
    id: 'clutch-02 (clamp load)',
    given: fresh,
    output: 'clampForce',
    expected: { near: 23561.944902, within: 0.001 },
  },
  {
    ...TEXTBOOK,
    id: 'clutch-04',
    given: { ...disc, model: 'uniform-wear' },
    output: 'reserve',
    expected: { near: 2.142, within: 1e-6 },
  },
  {
    ...INVENTED,
    id: 'demo-09',
    given: early,
    output: 'capacity',
    expected: { near: 375.375, within: 0.0001 },
  },
  {
    ...INVENTED,
    id: 'demo-09 (reserve)',
    given: early,
    output: 'reserve',
    expected: { near: 1.173046875, within: 0.0001 },
  },
  {
    ...TEXTBOOK,
    id: 'clutch-own-1',
    given: { ...disc, model: 'uniform-pressure' },
    output: 'reserve',
    expected: { near: 2.164, within: 0.0005 },
  },
  {
    ...INVENTED,
    id: 'clutch-own-2',
    given: late,
    output: 'capacity',
    // 2 x 0.3 x 7400 N x 98.75 mm = 438.45 N.m
    expected: { exactly: '8769/20' },
  },
  {
    ...INVENTED,
    id: 'clutch-own-3',
    given: { ...early, model: 'uniform-pressure', innerDiameter: '0.001 mm' },
    output: 'capacity',
    // Without a hole the arm is a third of the diameter: 2 x 0.3 x 6500 N x 235/3 mm.
    expected: { near: 305.5, within: 0.001 },
    source: 'friction of a full disc under even pressure, integral by hand',
    basis: 'arithmetic',
  },
];
