/**
 * Check values of round shafts in torsion.
 */

import type { Vector } from '../vector.js';

const MECHANICS = {
  calculation: 'shaft',
  source: 'Mechanics of Materials, example of a shaft as a bar and as a tube',
  basis: 'read, computed',
} as const;

const solid = { outerDiameter: '26 mm', torque: '1200 N.m', length: '400 mm' };
const wide = { outerDiameter: '200 mm', allowableStress: '75 MPa' };

export const SHAFT: readonly Vector[] = [
  {
    ...MECHANICS,
    id: 'shaft-02',
    given: wide,
    output: 'allowableTorque',
    expected: { near: 117_809.724509617, within: 10 },
  },
  {
    ...MECHANICS,
    id: 'shaft-03',
    given: { ...wide, innerDiameter: '150 mm' },
    output: 'allowableTorque',
    expected: { near: 80_533.991363996, within: 10 },
  },
  {
    ...MECHANICS,
    id: 'shaft-05',
    given: solid,
    output: 'stress',
    expected: { near: 347.7213139923066, within: 0.01 },
    source: 'solid round shaft in torsion, G = 80 GPa',
  },
  {
    ...MECHANICS,
    id: 'shaft-05 (twist)',
    given: { ...solid, shearModulus: '80000 MPa' },
    output: 'twist',
    expected: { near: 7.662678360962488, within: 0.01 },
    source: 'solid round shaft in torsion, G = 80 GPa',
  },
  {
    ...MECHANICS,
    id: 'shaft-own-1',
    given: { outerDiameter: '40 mm', innerDiameter: '30 mm' },
    output: 'polarMoment',
    expected: { near: 171_805.85, within: 0.005 },
    source: 'Mechanics of Materials, tube of 40 and 30 mm',
    basis: 'read',
  },
  {
    ...MECHANICS,
    id: 'shaft-own-2',
    given: { ...solid, allowableStress: '600 MPa', notchFactor: '2' },
    output: 'allowableTorque',
    // 600 MPa x pi x 26^3 / 16 / 2
    expected: { near: 1035.3, within: 0.1 },
    source: 'torsion modulus of a round bar, by hand',
    basis: 'arithmetic',
  },
  {
    ...MECHANICS,
    id: 'shaft-own-3',
    given: { ...solid, outerDiameter: '52 mm' },
    output: 'twist',
    // Twice the diameter twists a sixteenth.
    expected: { near: 7.662678360962488 / 16, within: 1e-6 },
    source: 'fourth power of the diameter, by hand',
    basis: 'arithmetic',
  },
];
