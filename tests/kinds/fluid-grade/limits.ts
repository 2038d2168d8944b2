/**
 * Just inside, exactly on and just outside each limit of a fluid.
 */

import type { Expected, Fixture } from '../fixture.js';
import {
  axle,
  brakeCan,
  brakeCircuit,
  gearbox,
  gearOil,
  heldInAxle,
  heldInBrakes,
  heldWithBrass,
} from './fits.js';

type Value = readonly [value: string, verdict: string];

function rows(
  parameter: string,
  faces: Fixture['faces'],
  all: Expected,
  values: readonly Value[],
): Fixture[] {
  const [fluid, part] = faces;
  return values.map(([value, verdict]) => ({
    says: `${parameter}: ${value}`,
    faces: [{ ...fluid, [parameter]: value }, part],
    outcome: verdict === 'holds' ? 'holds' : 'fails',
    checks: { ...all, [parameter]: verdict },
  }));
}

export const fixtures: readonly Fixture[] = [
  ...rows('dry-boiling-point', [brakeCan, brakeCircuit], heldInBrakes, [
    ['230.1 degC', 'holds'],
    ['230 degC', 'holds'],
    ['229.9 degC', 'fails boils-too-early'],
  ]),
  ...rows('wet-boiling-point', [brakeCan, brakeCircuit], heldInBrakes, [
    ['155.1 degC', 'holds'],
    ['155 degC', 'holds'],
    ['154.9 degC', 'fails boils-too-early-when-wet'],
  ]),
  ...rows(
    'cold-viscosity',
    [brakeCan, { ...brakeCircuit, 'cold-viscosity': '750 mm2/s' }],
    heldInBrakes,
    [
      ['749 mm2/s', 'holds'],
      ['750 mm2/s', 'holds'],
      ['751 mm2/s', 'fails too-thick-in-the-cold'],
    ],
  ),
  ...rows('winter-grade', [gearOil, { ...gearbox, 'winter-grade': '75' }], heldWithBrass, [
    ['70', 'holds'],
    ['75', 'holds'],
    ['80', 'fails too-thick-in-winter'],
  ]),
  ...rows('sae-grade', [gearOil, gearbox], heldWithBrass, [
    ['90', 'holds'],
    ['85', 'fails too-thin'],
  ]),
  {
    says: 'sae-grade: 110 for 90',
    faces: [{ ...gearOil, 'sae-grade': '110' }, gearbox],
    outcome: 'holds',
    checks: { ...heldWithBrass, thicker: 'fails thicker-than-asked' },
  },
  ...rows('gear-oil-class', [gearOil, axle], heldInAxle, [
    ['5', 'holds'],
    ['4', 'fails too-little-additive'],
  ]),
  {
    says: 'a boiling point that was tested to a degree straddles the limit',
    faces: [{ ...brakeCan, 'wet-boiling-point': '155 ±1 degC' }, brakeCircuit],
    outcome: 'open',
    checks: { ...heldInBrakes, 'wet-boiling-point': 'open not-precise-enough' },
  },
];
