/**
 * Just inside, exactly on and just outside what a connector is compared by.
 */

import type { Fixture } from '../fixture.js';
import { held, plug, socket } from './fits.js';

function ofPoles(poles: number, verdict: string): Fixture {
  return {
    says: `${poles} poles in 6`,
    faces: [{ ...plug, poles }, socket],
    outcome: verdict === 'holds' ? 'holds' : 'fails',
    checks: { ...held, 'equal-poles': verdict },
  };
}

function ofCurrent(drawn: string, verdict: string): Fixture {
  return {
    says: `${drawn} A on a pole for 20`,
    faces: [
      { ...plug, 'current-rating': '20 A' },
      { ...socket, 'current-drawn': `${drawn} ±0 A` },
    ],
    outcome: 'holds',
    checks: { ...held, current: verdict },
  };
}

export const fixtures: readonly Fixture[] = [
  ofPoles(5, 'fails not-equal'),
  ofPoles(6, 'holds'),
  ofPoles(7, 'fails not-equal'),
  ofCurrent('19.9', 'holds'),
  ofCurrent('20', 'holds'),
  ofCurrent('20.1', 'fails pole-runs-hot'),
  {
    says: 'contacts that were measured in the socket, give or take two tenths',
    faces: [
      { ...plug, 'contact-width': '2.8 mm' },
      { ...socket, 'contact-width': '2.7 ±0.2 mm' },
    ],
    outcome: 'open',
    checks: { ...held, 'equal-contact-width': 'open not-precise-enough' },
  },
];
