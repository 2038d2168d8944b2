/**
 * Splines of ANSI B92.1: the pitch P is recorded as the module 1/P in, exactly.
 */

import type { Fixture } from '../fixture.js';
import { held, hub, shaft } from './fits.js';

const inchShaft = { ...shaft, family: 'ansi-b92-1', module: '1/24 in' };
const inchHub = { ...hub, family: 'ansi-b92-1', module: '1/24 in' };

export const fixtures: readonly Fixture[] = [
  {
    says: '24 teeth of 24/48 pitch: pitch diameter 1 in, with the diameters of the standard',
    source: 'ANSI B92.1: N/P, (N+1)/P, (N-1)/P read in a secondary copy, values computed',
    faces: [
      { ...inchShaft, 'major-diameter': '1.0417 in', 'minor-diameter': '0.9375 in' },
      { ...inchHub, 'major-diameter': '1.05625 in', 'minor-diameter': '0.9583 in' },
    ],
    outcome: 'holds',
    checks: { ...held, 'major-diameter': 'holds', 'minor-diameter': 'holds' },
  },
  {
    says: '1/24 in and 127/120 mm are one module',
    faces: [inchShaft, { ...inchHub, module: '127/120 mm' }],
    outcome: 'holds',
    checks: held,
  },
  {
    says: 'a rounded 1.058 mm is another module than 1/24 in',
    faces: [inchShaft, { ...inchHub, module: '1.058 mm' }],
    outcome: 'fails',
    checks: { ...held, 'equal-module': 'fails not-equal' },
  },
  {
    says: 'a module read as 1.058 ±0.001 mm leaves it open',
    faces: [inchShaft, { ...inchHub, module: '1.058 ±0.001 mm' }],
    outcome: 'open',
    checks: { ...held, 'equal-module': 'open not-precise-enough' },
  },
];
