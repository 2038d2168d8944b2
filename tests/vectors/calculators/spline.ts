/**
 * Check values of involute splines: diameters, modules, and what their teeth carry.
 */

import type { Vector } from '../vector.js';

const INCH = {
  calculation: 'spline',
  given: { family: 'ansi-b92-1', teeth: 24, pitch: '24' },
  source: 'ANSI B92.1',
  basis: 'read, computed',
} as const;

const METRIC = {
  calculation: 'spline',
  given: { family: 'iso-4156', teeth: 24, module: '1 mm' },
  source: 'ANSI B92.2M',
  basis: 'read, computed',
} as const;

const DIN = {
  calculation: 'spline',
  given: { family: 'din-5480', teeth: 38, module: '3 mm', referenceDiameter: '120 mm' },
  source: 'DIN 5480-1:2006',
  basis: 'from memory',
} as const;

const inches = (value: number) => ({ near: value * 25.4, within: 25.4e-6 });
const mm = (value: number) => ({ near: value, within: 1e-9 });

const HANDBOOK = {
  ...METRIC,
  given: {
    ...METRIC.given,
    torque: '500 N.m',
    engagedLength: '25 mm',
    applicationFactor: '1.2',
    allowableShear: '101.9 MPa',
    allowableBearing: '500 MPa',
  },
  source: "Machinery's Handbook, shear in the teeth of splines",
} as const;

export const SPLINE: readonly Vector[] = [
  { ...INCH, id: 'spline-01', output: 'pitchDiameter', expected: inches(1) },
  { ...INCH, id: 'spline-01 (shaft)', output: 'shaftMajor', expected: inches(1.0416666666666667) },
  { ...INCH, id: 'spline-01 (hub)', output: 'hubMinor', expected: inches(0.9583333333333334) },
  { ...INCH, id: 'spline-01 (hub root)', output: 'hubMajor', expected: inches(1.05625) },
  { ...METRIC, id: 'spline-02', output: 'pitchDiameter', expected: mm(24) },
  { ...METRIC, id: 'spline-02 (shaft)', output: 'shaftMajor', expected: mm(25) },
  { ...METRIC, id: 'spline-02 (hub root)', output: 'hubMajor', expected: mm(25.5) },
  { ...METRIC, id: 'spline-02 (shaft root)', output: 'shaftMinor', expected: mm(22.5) },
  {
    ...METRIC,
    id: 'spline-04',
    given: { ...METRIC.given, module: '1.25 mm', pressureAngle: '30' },
    output: 'isStandard',
    expected: { exactly: 'holds' },
    source: 'ISO 4156',
    basis: 'read',
  },
  { ...DIN, id: 'spline-06', output: 'pitchDiameter', expected: mm(114) },
  { ...DIN, id: 'spline-06 (shaft)', output: 'shaftMajor', expected: mm(119.4) },
  { ...DIN, id: 'spline-06 (hub)', output: 'hubMinor', expected: mm(114) },
  {
    ...HANDBOOK,
    id: 'spline-own-1',
    output: 'shearStress',
    // 4 x 500 000 x 1.2 / (24 x 24 x 25 x pi / 2); with a diameter of 25 mm it is 101.9 MPa.
    expected: { near: (101.859 * 25) / 24, within: 0.01 },
  },
  {
    ...HANDBOOK,
    id: 'spline-own-2',
    output: 'bearingStress',
    // 2 x 500 000 x 1.2 / (24 x 24 x 25 x 0.9)
    expected: { near: 92.5926, within: 0.0001 },
    source: "Machinery's Handbook, bearing of the flanks of splines",
    basis: 'from memory',
  },
  {
    ...HANDBOOK,
    id: 'spline-own-3',
    output: 'neededLength',
    // 25 mm carry 106.1 MPa, so 101.9 MPa take longer by as much.
    expected: { near: (25 * 106.103) / 101.9, within: 0.001 },
    source: 'stress and length in proportion, by hand',
    basis: 'arithmetic',
  },
  {
    ...METRIC,
    id: 'spline-own-4',
    output: 'hubMinor',
    // Half of base circle 10.3923, along the line of action 6 - 1.2; doubled, and 0.2.
    expected: { near: 2 * Math.hypot(12 * Math.cos(Math.PI / 6), 4.8) + 0.2, within: 1e-9 },
    source: 'ISO 4156-1, form diameter and form clearance',
    basis: 'from memory',
  },
  {
    ...METRIC,
    id: 'spline-own-5',
    given: { ...METRIC.given, pressureAngle: '45' },
    output: 'hubMajor',
    expected: mm(25.2),
  },
  {
    ...METRIC,
    id: 'spline-own-6',
    given: { ...METRIC.given, pressureAngle: '37.5' },
    output: 'shaftMajor',
    expected: mm(24.9),
  },
];
