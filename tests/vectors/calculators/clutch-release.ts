/**
 * Check values of hydraulic clutch releases.
 */

import type { Vector } from '../vector.js';

const GEOMETRY = {
  calculation: 'clutch-release',
  source: 'exact arithmetic or geometry',
  basis: 'arithmetic',
} as const;

const fork = {
  type: 'push',
  pedalTravel: '130 mm',
  freePlay: '5 mm',
  pedalRatio: '6/1',
  masterDiameter: '19.05 mm',
  slaveDiameter: '22.2 mm',
  forkRatio: '8/5',
};

/** A ring of 50 and 30 mm has the area of a piston of 40 mm; the master is half as wide. */
const concentric = {
  type: 'pull',
  pedalTravel: '160 mm',
  pedalRatio: '5/1',
  masterDiameter: '20 mm',
  slaveDiameter: '50 mm',
  slaveInnerDiameter: '30 mm',
};

export const CLUTCH_RELEASE: readonly Vector[] = [
  {
    ...GEOMETRY,
    id: 'clutch-06',
    given: fork,
    output: 'slaveTravel',
    expected: { near: 15.340615108351596, within: 0.01 },
  },
  {
    ...GEOMETRY,
    id: 'clutch-06 (bearing)',
    given: fork,
    output: 'bearingTravel',
    expected: { near: 9.587884442719746, within: 0.01 },
  },
  {
    ...GEOMETRY,
    id: 'release-own-1',
    given: fork,
    output: 'towardsGearbox',
    expected: { near: -9.587884442719746, within: 1e-9 },
    source: 'a push bearing goes towards the engine: the sign of clutch-06, by hand',
  },
  {
    ...GEOMETRY,
    id: 'release-own-2',
    given: concentric,
    output: 'towardsGearbox',
    // 160 / 5 / 4
    expected: { exactly: '8' },
    source: '50² − 30² = 40², by hand',
  },
  {
    ...GEOMETRY,
    id: 'release-own-3',
    given: { ...concentric, releaseLoad: '2000 N', efficiency: '0.8' },
    output: 'pedalForce',
    // 2000 / (5 x 4 x 0.8)
    expected: { exactly: '125' },
    source: 'work in and out of the same system, by hand',
  },
];
