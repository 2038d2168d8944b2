/**
 * What nobody recorded keeps a bearing unit open and is named.
 */

import { type Fixture, without } from '../fixture.js';
import { held, heldWithoutCable, knuckle, unit } from './fits.js';

const OPEN = 'open not-recorded';

/** What is missing on the knuckle, and the checks that need it. */
const ofKnuckle: readonly (readonly [parameter: string, checks: readonly string[]])[] = [
  ['holes', ['equal-holes']],
  ['pcd', ['pcd']],
  ['hole-distance', ['hole-distance']],
  ['bolt', ['equal-bolt']],
  ['threaded-end', ['equal-threaded-end']],
  ['bore', ['spigot']],
  ['bore-depth', ['spigot-depth']],
  ['stand-off', ['stand-off']],
  ['sensor-exit', ['equal-sensor-exit']],
];

const ofUnit: typeof ofKnuckle = [
  ['threaded-end', ['equal-threaded-end', 'known-threaded-end']],
  ['spigot', ['spigot']],
  ['spigot-length', ['spigot-depth']],
];

function opened(checks: readonly string[]) {
  return { ...held, ...Object.fromEntries(checks.map((check) => [check, OPEN])) };
}

export const fixtures: readonly Fixture[] = [
  ...ofKnuckle.map(
    ([parameter, checks]): Fixture => ({
      says: `of the knuckle: ${parameter}`,
      faces: [unit, without(knuckle, parameter)],
      outcome: 'open',
      checks: opened(checks),
      missing: [`right.${parameter}`],
    }),
  ),
  ...ofUnit.map(
    ([parameter, checks]): Fixture => ({
      says: `of the unit: ${parameter}`,
      faces: [without(unit, parameter), knuckle],
      outcome: 'open',
      checks: opened(checks),
      missing: [`left.${parameter}`],
    }),
  ),
  {
    says: 'whether the unit has a sensor, on a knuckle without room for its cable',
    faces: [without(unit, 'sensor-exit'), { ...knuckle, 'sensor-exit': 'none' }],
    outcome: 'open',
    checks: { ...heldWithoutCable, 'equal-sensor-exit': OPEN, 'sensor-missing': OPEN },
    missing: ['left.sensor-exit'],
  },
];
