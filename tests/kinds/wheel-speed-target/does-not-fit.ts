/**
 * Each way in which a ring does not suit a sensor.
 */

import type { Expected, Fixture } from '../fixture.js';
import { held, heldPoles, poleRing, poleSensor, ring, sensor } from './fits.js';

type Row = readonly [says: string, faces: Fixture['faces'], checks: Expected];

const { teeth: _teeth, ...heldOfNoTarget } = held;
const { 'radial-room': _room, 'radial-gap': _gap, ...heldOfNoDirection } = held;

const rows: readonly Row[] = [
  [
    'the half-shaft of another car: 44 teeth where 48 are expected',
    [{ ...ring, teeth: 44 }, sensor],
    { ...held, teeth: 'fails teeth-differ' },
  ],
  [
    'the trap of the poles: 48 poles are 24 pulses',
    [{ ...poleRing, poles: 48 }, poleSensor],
    { ...heldPoles, poles: 'fails poles-differ' },
  ],
  [
    'a sensor for poles over teeth',
    [ring, { ...sensor, target: 'magnetic', sensor: 'active' }],
    { ...held, 'equal-target': 'fails not-equal' },
  ],
  [
    'a passive sensor over poles',
    [poleRing, { ...poleSensor, sensor: 'passive' }],
    { ...heldPoles, 'sensor-for-poles': 'fails passive-on-poles' },
  ],
  [
    'a ring of neither teeth nor poles',
    [
      { ...ring, target: 'slotted-glass' },
      { ...sensor, target: 'slotted-glass' },
    ],
    { ...heldOfNoTarget, 'known-target': 'fails neither-teeth-nor-poles' },
  ],
  [
    'a sensor that is neither passive nor active',
    [ring, { ...sensor, sensor: 'mechanical' }],
    { ...held, 'known-sensor': 'fails neither-passive-nor-active' },
  ],
  [
    'teeth outside, and a sensor that looks at the face',
    [ring, { ...sensor, direction: 'axial' }],
    { ...held, 'equal-direction': 'fails not-equal' },
  ],
  [
    'a ring that is read neither radially nor axially',
    [
      { ...ring, direction: 'aslant' },
      { ...sensor, direction: 'aslant' },
    ],
    { ...heldOfNoDirection, 'known-direction': 'fails neither-radial-nor-axial' },
  ],
  [
    'a ring larger than the place before the sensor: it shears off the tip',
    [{ ...ring, diameter: '100.0 ±0.1 mm' }, sensor],
    { ...held, 'radial-room': 'fails radial-gap-too-narrow' },
  ],
  [
    'the right number of teeth on a ring that is too small',
    [{ ...ring, diameter: '92.0 ±0.1 mm' }, sensor],
    { ...held, 'radial-gap': 'fails radial-gap-too-wide' },
  ],
  [
    'a seal that stands out to the sensor',
    [{ ...poleRing, 'face-distance': '50.9 ±0.1 mm' }, poleSensor],
    { ...heldPoles, 'axial-room': 'fails axial-gap-too-narrow' },
  ],
  [
    'the trap of the bearing put in the wrong way round: the poles are far away',
    [{ ...poleRing, 'face-distance': '20.0 ±0.1 mm' }, poleSensor],
    { ...heldPoles, 'axial-gap': 'fails axial-gap-too-wide' },
  ],
  [
    'a tip outside the track',
    [poleRing, { ...poleSensor, 'tip-circle': '80.0 ±0.5 mm' }],
    { ...heldPoles, 'track-outside': 'fails outside-the-track' },
  ],
  [
    'a tip inside the track',
    [poleRing, { ...poleSensor, 'tip-circle': '48.0 ±0.5 mm' }],
    { ...heldPoles, 'track-inside': 'fails inside-the-track' },
  ],
];

export const fixtures: readonly Fixture[] = rows.map(([says, faces, checks]) => ({
  says,
  faces,
  outcome: 'fails',
  checks,
}));
