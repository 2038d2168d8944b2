/**
 * Check values of the critical speed of propeller shafts.
 */

import type { Vector } from '../vector.js';

const PRACTICE = {
  calculation: 'propeller-shaft',
  source: 'propeller-shaft design practice, n = 1.21e8 sqrt(D2+d2)/L2, 0.7 limit',
  basis: 'read, computed',
} as const;

const tube = (length: string) => ({
  outerDiameter: '76 mm',
  innerDiameter: '70.8 mm',
  length: [length],
});

export const PROPELLER_SHAFT: readonly Vector[] = [
  {
    ...PRACTICE,
    id: 'prop-01',
    given: tube('1400 mm'),
    output: 'criticalSpeed',
    expected: { near: 6412.282534736712, within: 1 },
  },
  {
    ...PRACTICE,
    id: 'prop-01 (limit)',
    given: tube('1400 mm'),
    output: 'limit',
    expected: { near: 4488.597774315698, within: 1 },
  },
  {
    ...PRACTICE,
    id: 'demo-03',
    given: tube('1374 mm'),
    output: 'criticalSpeed',
    expected: { near: 6657.25596812712, within: 1 },
  },
  {
    ...PRACTICE,
    id: 'demo-03 (limit)',
    given: tube('1374 mm'),
    output: 'limit',
    expected: { near: 4660.079177688984, within: 1 },
  },
  {
    ...PRACTICE,
    id: 'demo-12',
    given: tube('734 mm'),
    output: 'criticalSpeed',
    expected: { near: 23327.951369606933, within: 1 },
  },
  {
    ...PRACTICE,
    id: 'demo-12 (limit)',
    given: tube('734 mm'),
    output: 'limit',
    expected: { near: 16329.565958724852, within: 1 },
  },
  {
    ...PRACTICE,
    id: 'prop-03',
    given: { ...tube('1400 mm'), elasticModulus: '210 GPa', density: '7850 kg/m3' },
    output: 'constant',
    expected: { near: 121_866_953.6558578, within: 10_000 },
    source: "Roark's Formulas for Stress and Strain, pinned beam",
    basis: 'from memory',
  },
  // By the formula alone: 1.21e8 x 25 / 1000^2; twice the length turns a quarter as fast.
  {
    ...PRACTICE,
    id: 'prop-own-1 (solid)',
    given: { outerDiameter: '25 mm', innerDiameter: '0 mm', length: ['1000 mm', '2000 mm'] },
    output: 'criticalSpeed',
    expected: { near: [3025, 756.25], within: 0.001 },
    basis: 'arithmetic',
  },
  {
    ...PRACTICE,
    id: 'prop-own-2 (industry)',
    given: { ...tube('1400 mm'), duty: 'industrial' },
    output: 'limit',
    expected: { near: 0.65 * 6412.282534736712, within: 1 },
  },
  // The longest piece at its own limit is that piece.
  {
    ...PRACTICE,
    id: 'prop-own-3 (longest)',
    given: { ...tube('1400 mm'), speed: '4488.597774 rpm' },
    output: 'longestLength',
    expected: { near: 1400, within: 0.001 },
    basis: 'arithmetic',
  },
];
