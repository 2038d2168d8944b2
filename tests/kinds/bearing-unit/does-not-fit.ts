/**
 * Each way in which a bearing unit does not go on a knuckle.
 */

import type { Expected, Fixture } from '../fixture.js';
import { held, knuckle, unit } from './fits.js';

type Row = readonly [says: string, onUnit: object, onKnuckle: object, changed: Expected];

const rows: readonly Row[] = [
  ['three bolts and four', { holes: 3 }, {}, { 'equal-holes': 'fails not-equal' }],
  [
    'a wheel pattern is no unit pattern: pitch circles of 112 and 115 mm',
    { pcd: '112 mm' },
    {},
    { pcd: 'fails pcd-differs' },
  ],
  [
    'the trap of the rectangle: four holes on one pitch circle, spaced evenly on the unit only',
    { 'hole-distance': '81.3 mm' },
    {},
    { 'hole-distance': 'fails holes-spaced-otherwise' },
  ],
  [
    'M12x1.25 in M12x1.5: it starts and strips',
    { bolt: 'm12x1.25' },
    {},
    { 'equal-bolt': 'fails not-equal' },
  ],
  [
    'threads in both: no bolt pulls them together',
    {},
    { 'threaded-end': 'knuckle' },
    { 'equal-threaded-end': 'fails not-equal' },
  ],
  [
    'a thread that is nowhere',
    { 'threaded-end': 'weld' },
    { 'threaded-end': 'weld' },
    { 'known-threaded-end': 'fails no-such-thread' },
  ],
  [
    'a spigot of 82 for a bore of 78',
    { spigot: '81.95 ±0.01 mm' },
    {},
    { spigot: 'fails too-small' },
  ],
  [
    'a spigot of 77 in a bore of 78: the bolts would carry the car',
    { spigot: '76.95 ±0.01 mm' },
    {},
    { spigot: 'fails too-large' },
  ],
  [
    'a spigot longer than the bore is deep',
    { 'spigot-length': '36.0 ±0.1 mm' },
    {},
    { 'spigot-depth': 'fails spigot-bottoms' },
  ],
  [
    'the trap of the stand-off: everything bolts up, and the disc is 4 mm off in its caliper',
    { 'stand-off': '50.0 ±0.05 mm' },
    {},
    { 'stand-off': 'fails moves-wheel-and-disc' },
  ],
  [
    'a cable at the top, and room for it at the rear',
    {},
    { 'sensor-exit': 'rear' },
    { 'equal-sensor-exit': 'fails not-equal' },
  ],
  [
    'a unit with a sensor, and a knuckle without room for a cable',
    {},
    { 'sensor-exit': 'none' },
    { 'equal-sensor-exit': 'fails not-equal' },
  ],
];

export const fixtures: readonly Fixture[] = rows.map(([says, onUnit, onKnuckle, changed]) => ({
  says,
  faces: [
    { ...unit, ...onUnit },
    { ...knuckle, ...onKnuckle },
  ],
  outcome: 'fails',
  checks: { ...held, ...changed },
}));
