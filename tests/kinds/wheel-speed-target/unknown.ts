/**
 * What nobody recorded keeps a ring and its sensor open and is named.
 */

import { type Expected, type Fixture, without } from '../fixture.js';
import { held, heldPoles, poleRing, poleSensor, ring, sensor } from './fits.js';

type Row = readonly [says: string, faces: Fixture['faces'], missing: string, checks: Expected];

const OPEN = 'open not-recorded';
const gaps = { 'radial-room': OPEN, 'radial-gap': OPEN };

const rows: readonly Row[] = [
  [
    'what the sensor is made to read',
    [ring, without(sensor, 'target')],
    'right.target',
    { ...held, 'equal-target': OPEN },
  ],
  ['the teeth', [without(ring, 'teeth'), sensor], 'left.teeth', { ...held, teeth: OPEN }],
  [
    'the poles',
    [without(poleRing, 'poles'), poleSensor],
    'left.poles',
    { ...heldPoles, poles: OPEN },
  ],
  [
    'what the control unit expects',
    [ring, without(sensor, 'pulses')],
    'right.pulses',
    { ...held, teeth: OPEN },
  ],
  [
    'whether the sensor is passive: over poles that decides',
    [poleRing, without(poleSensor, 'sensor')],
    'right.sensor',
    { ...heldPoles, 'known-sensor': OPEN, 'sensor-for-poles': OPEN },
  ],
  [
    'where the sensor looks',
    [ring, without(sensor, 'direction')],
    'right.direction',
    { ...held, 'equal-direction': OPEN },
  ],
  [
    'the diameter of the ring',
    [without(ring, 'diameter'), sensor],
    'left.diameter',
    { ...held, ...gaps },
  ],
  [
    'where the tip stands',
    [ring, without(sensor, 'tip-circle')],
    'right.tip-circle',
    { ...held, ...gaps },
  ],
  [
    'how far in the poles are',
    [without(poleRing, 'face-distance'), poleSensor],
    'left.face-distance',
    { ...heldPoles, 'axial-room': OPEN, 'axial-gap': OPEN },
  ],
  [
    'the inner edge of the track',
    [without(poleRing, 'inner-diameter'), poleSensor],
    'left.inner-diameter',
    { ...heldPoles, 'track-inside': OPEN },
  ],
];

export const fixtures: readonly Fixture[] = rows.map(([says, faces, missing, checks]) => ({
  says,
  faces,
  outcome: 'open',
  checks,
  missing: [missing],
}));
