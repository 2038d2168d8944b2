/**
 * Check values of tractive effort and of traction limits.
 */

import type { Vector } from '../vector.js';

const COURSE = {
  calculation: 'traction',
  source: 'vehicle dynamics course, traction limits',
  basis: 'read, computed',
} as const;

/** 2.6 m of wheelbase, the centre of gravity half way and 0.7 m high, grip 0.7. */
const balance = {
  grip: '0.7',
  wheelbase: '2.6 m',
  gravityToFront: '1.3 m',
  gravityHeight: '0.7 m',
  gravity: '9.81 m/s2',
};

export const TRACTION: readonly Vector[] = [
  {
    ...COURSE,
    id: 'force-02',
    given: {
      drive: 'all-locked',
      grip: '0.8',
      torque: '115 N.m',
      stages: ['10/1'],
      efficiency: '1',
      rollingRadius: '0.4 m',
    },
    output: 'tractiveEffort',
    expected: { near: 2875, within: 0.5 },
    source: 'tractive-effort worked inputs',
  },
  {
    ...COURSE,
    id: 'force-03',
    given: { drive: 'fixed-share', grip: '0.6', drivenShare: '0.48', gravity: '9.8 m/s2' },
    output: 'greatestAcceleration',
    expected: { near: 2.82, within: 0.01 },
    source: 'physics textbook problem, driven-wheel share of weight',
    basis: 'read',
  },
  {
    ...COURSE,
    id: 'force-05',
    given: { ...balance, drive: 'rear' },
    output: 'greatestAcceleration',
    expected: { near: 4.23085308056872, within: 0.002 },
  },
  {
    ...COURSE,
    id: 'force-06',
    given: { drive: 'all-locked', grip: '0.7', gravity: '9.81 m/s2' },
    output: 'greatestAcceleration',
    expected: { near: 6.867, within: 1e-9 },
  },
  {
    ...COURSE,
    id: 'traction-own-1',
    given: { ...balance, drive: 'front' },
    output: 'greatestAcceleration',
    // 0.7 x 9.81 x 1.3 / (2.6 + 0.49)
    expected: { near: 2.889, within: 0.0005 },
    basis: 'read',
  },
  {
    ...COURSE,
    id: 'traction-own-2',
    given: {
      drive: 'all-locked',
      grip: '0.8',
      torque: '606 lbf.ft',
      stages: ['529/10'],
      efficiency: '0.7225',
      rollingRadius: '19.5 in',
    },
    output: 'tractiveEffort',
    // 606 x 52.9 x 0.85 x 0.85 x 12 / 19.5 = 14 253 lbf.
    expected: { near: 14253 * 4.4482216152605, within: 5 },
    source: 'worked example of the tractive effort of a truck, in pounds and inches',
    basis: 'read',
  },
  {
    ...COURSE,
    id: 'traction-own-3',
    given: { ...balance, drive: 'rear', mass: '1000 kg' },
    output: 'greatestEffort',
    // The rear axle carries m (g b + a h) / L; at the limit 0.7 of that moves the car.
    expected: { near: (0.7 * 1000 * (9.81 * 1.3 + 4.23085308056872 * 0.7)) / 2.6, within: 0.001 },
    source: 'moments about the front tyre, by hand',
    basis: 'arithmetic',
  },
  {
    ...COURSE,
    id: 'traction-own-4',
    given: { ...balance, drive: 'rear', gravityToFront: '2.3 m', grip: '1' },
    output: 'greatestAcceleration',
    // 0.3 m before the rear axle and 0.7 m high: the front is light at g x 3/7.
    expected: { near: (9.81 * 3) / 7, within: 1e-9 },
    source: 'moments about the rear tyre, by hand',
    basis: 'arithmetic',
  },
];
