/**
 * Each way in which a half-shaft and a hub do not go together, one at a time.
 */

import type { Fixture } from '../fixture.js';
import { held, hub, shaft } from './fits.js';

export const fixtures: readonly Fixture[] = [
  {
    says: 'a shaft of 25 teeth in a hub of 27',
    faces: [{ ...shaft, teeth: 25 }, hub],
    outcome: 'fails',
    checks: { ...held, 'equal-teeth': 'fails not-equal' },
  },
  {
    says: 'a coarser module',
    faces: [{ ...shaft, module: '1.25 mm' }, hub],
    outcome: 'fails',
    checks: { ...held, 'equal-module': 'fails not-equal' },
  },
  {
    says: 'splines of two standards',
    faces: [{ ...shaft, family: 'din-5480' }, hub],
    outcome: 'fails',
    checks: { ...held, 'equal-family': 'fails not-equal' },
  },
  {
    says: 'a nut of M24x1.5 on a stem of M24x2 starts and strips',
    source: 'ISO 965, from memory: pitches must be equal',
    faces: [{ ...shaft, 'nut-thread': 'M24x2' }, hub],
    outcome: 'fails',
    checks: { ...held, 'equal-nut-thread': 'fails not-equal' },
  },
  {
    says: 'the spline fits, and the shoulder falls into the inner ring: the bearing comes apart',
    faces: [{ ...shaft, shoulder: '38.0 ±0.2 mm' }, hub],
    outcome: 'fails',
    checks: { ...held, 'shoulder-on-ring': 'fails shoulder-too-small' },
  },
  {
    says: 'the spline fits, and the shoulder rubs on the seal',
    faces: [{ ...shaft, shoulder: '54.0 ±0.2 mm' }, hub],
    outcome: 'fails',
    checks: { ...held, 'shoulder-in-seal': 'fails shoulder-on-seal' },
  },
  {
    says: 'a short stem leaves the nut half empty',
    faces: [{ ...shaft, 'stem-length': '72.0 ±0.3 mm' }, hub],
    outcome: 'fails',
    checks: { ...held, 'nut-engages': 'fails too-little-thread' },
  },
  {
    says: 'a stem for a thicker hub: the nut is tight on the plain stem and clamps nothing',
    faces: [{ ...shaft, 'stem-length': '96.0 ±0.3 mm', 'thread-start': '66.0 ±0.5 mm' }, hub],
    outcome: 'fails',
    checks: { ...held, 'nut-clamps': 'fails nut-stops-on-stem' },
  },
  {
    says: 'a speed ring of 44 teeth for a sensor that counts 48',
    faces: [
      { ...shaft, 'speed-ring': 44 },
      { ...hub, 'speed-ring': 48 },
    ],
    outcome: 'fails',
    checks: { ...held, 'equal-speed-ring': 'fails speed-ring-differs' },
  },
  {
    says: 'a sensor in the hub and no ring on the shaft',
    faces: [
      { ...shaft, 'speed-ring': 0 },
      { ...hub, 'speed-ring': 48 },
    ],
    outcome: 'fails',
    checks: { ...held, 'equal-speed-ring': 'fails speed-ring-differs' },
  },
  {
    says: 'splines of two standards, the other way round',
    faces: [shaft, { ...hub, family: 'din-5480' }],
    outcome: 'fails',
    checks: { ...held, 'equal-family': 'fails not-equal' },
  },
];
