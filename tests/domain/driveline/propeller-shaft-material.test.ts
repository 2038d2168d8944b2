/**
 * Propeller shafts of other materials than steel.
 */

import { expect, test } from 'vitest';
import { about, asked } from './asked.js';

const TUBE = { outerDiameter: '90 mm', innerDiameter: '84 mm', length: ['1400 mm'] };

test('a material is told by modulus and density; half of it is taken for steel', () => {
  const steel = asked('propeller-shaft', TUBE);
  const half = asked('propeller-shaft', { ...TUBE, density: '2700 kg/m3' });
  expect([half.warnings, half.set('constant')]).toEqual([
    ['taken-for-steel'],
    steel.set('constant'),
  ]);
});

test('four times the modulus, or a quarter of the density, turns twice as fast', () => {
  const of = (elasticModulus: string, density: string) =>
    about(asked('propeller-shaft', { ...TUBE, elasticModulus, density }).set('criticalSpeed'));
  const once = of('70 GPa', '2700 kg/m3');
  expect(of('280 GPa', '2700 kg/m3') / once).toBeCloseTo(2, 9);
  expect(of('70000 MPa', '675 kg/m3') / once).toBeCloseTo(2, 9);
});
