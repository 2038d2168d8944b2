/**
 * Bearing units that go on their knuckles, and the faces that the other fixtures start from.
 */

import type { Expected, Fixture } from '../fixture.js';

export const unit = {
  kind: 'bearing-unit',
  side: 'unit',
  holes: 4,
  pcd: '115 mm',
  'hole-distance': '70 mm',
  bolt: 'm12x1.5',
  'threaded-end': 'unit',
  spigot: '77.95 ±0.01 mm',
  'spigot-length': '24.0 ±0.1 mm',
  'stand-off': '46.0 ±0.05 mm',
  'sensor-exit': 'top',
} as const;

export const knuckle = {
  kind: 'bearing-unit',
  side: 'knuckle',
  holes: 4,
  pcd: '115 mm',
  'hole-distance': '70 mm',
  bolt: 'm12x1.5',
  'threaded-end': 'unit',
  bore: '78.00 ±0.01 mm',
  'bore-depth': '30.0 ±0.1 mm',
  'stand-off': '46.0 ±0.05 mm',
  'sensor-exit': 'top',
} as const;

const common: Expected = {
  'equal-holes': 'holds',
  pcd: 'holds',
  'hole-distance': 'holds',
  'equal-bolt': 'holds',
  'equal-threaded-end': 'holds',
  'known-threaded-end': 'holds',
  spigot: 'holds',
  'spigot-depth': 'holds',
  'stand-off': 'holds',
};

export const held: Expected = { ...common, 'equal-sensor-exit': 'holds' };

/** For a unit without a sensor. */
export const heldWithoutCable: Expected = { ...common, 'sensor-missing': 'holds' };

export const fixtures: readonly Fixture[] = [
  {
    says: 'four M12x1.5 on a rectangle, spigot of 77.95 in 78.00, the cable at the top',
    faces: [unit, knuckle],
    outcome: 'holds',
    checks: held,
  },
  ...['knuckle', 'nuts'].map(
    (end): Fixture => ({
      says: `the same with its threads in the ${end}`,
      faces: [
        { ...unit, 'threaded-end': end },
        { ...knuckle, 'threaded-end': end },
      ],
      outcome: 'holds',
      checks: held,
    }),
  ),
  {
    says: 'no sensor, and no room for one',
    faces: [
      { ...unit, 'sensor-exit': 'none' },
      { ...knuckle, 'sensor-exit': 'none' },
    ],
    outcome: 'holds',
    checks: heldWithoutCable,
  },
  {
    says: 'a unit without its sensor bolts on, and a wheel speed is missing: a caution',
    faces: [{ ...unit, 'sensor-exit': 'none' }, knuckle],
    outcome: 'holds',
    checks: { ...heldWithoutCable, 'sensor-missing': 'fails no-sensor-built-in' },
  },
];
