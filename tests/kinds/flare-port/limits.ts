/**
 * Just inside, exactly on and just outside each limit of a flared pipe.
 */

import type { Fixture } from '../fixture.js';
import { held, pipe, port } from './fits.js';

function ofPipe(diameter: string, verdict: string): Fixture {
  return {
    says: `a pipe of ${diameter}`,
    faces: [{ ...pipe, 'pipe-diameter': diameter }, port],
    outcome: verdict === 'holds' ? 'holds' : 'fails',
    checks: { ...held, 'pipe-diameter': verdict },
  };
}

function ofReach(reach: string, verdict: string): Fixture {
  return {
    says: `a nut that reaches ${reach} to a seat 14 mm deep`,
    faces: [
      { ...pipe, reach },
      { ...port, 'seat-depth': '14 ±0 mm' },
    ],
    outcome: verdict === 'holds' ? 'holds' : 'fails',
    checks: { ...held, reach: verdict },
  };
}

export const fixtures: readonly Fixture[] = [
  ofPipe('4.849 mm', 'holds'),
  ofPipe('4.85 mm', 'holds'),
  ofPipe('4.8501 mm', 'fails another-pipe'),
  ofPipe('4.651 mm', 'holds'),
  ofPipe('4.65 mm', 'holds'),
  ofPipe('4.6499 mm', 'fails another-pipe'),
  ofPipe('5 mm', 'fails another-pipe'),
  ofReach('14.501 ±0 mm', 'holds'),
  ofReach('14.5 ±0 mm', 'holds'),
  ofReach('14.499 ±0 mm', 'fails hexagon-stands-on-port'),
  {
    says: 'a pipe that was measured under paint',
    faces: [{ ...pipe, 'pipe-diameter': '4.8 ±0.1 mm' }, port],
    outcome: 'open',
    checks: { ...held, 'pipe-diameter': 'open not-precise-enough' },
  },
];
