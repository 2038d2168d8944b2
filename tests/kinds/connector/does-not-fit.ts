/**
 * Each way in which a plug does not suit a socket, one at a time, and what is only a caution.
 */

import type { Fixture } from '../fixture.js';
import { held, plug, socket } from './fits.js';

export const fixtures: readonly Fixture[] = [
  {
    says: 'the same shape with another pinout: it plugs in, and needs a loom between',
    faces: [plug, { ...socket, pinout: 'gearbox-switches-1' }],
    outcome: 'fails',
    checks: { ...held, 'equal-pinout': 'fails another-pinout' },
  },
  {
    says: 'another family',
    faces: [{ ...plug, family: 'flat-unsealed' }, socket],
    outcome: 'fails',
    checks: { ...held, 'equal-family': 'fails not-equal' },
  },
  {
    says: 'four poles in six',
    faces: [{ ...plug, poles: 4 }, socket],
    outcome: 'fails',
    checks: { ...held, 'equal-poles': 'fails not-equal' },
  },
  {
    says: 'key a in key b',
    faces: [{ ...plug, key: 'a' }, socket],
    outcome: 'fails',
    checks: { ...held, 'equal-key': 'fails key-keeps-out' },
  },
  {
    says: 'contacts of 1.5 mm on blades of 2.8',
    source: 'ISO 8092, from memory: 2.8 mm is one of its tab widths',
    faces: [
      { ...plug, 'contact-width': '1.5 mm' },
      { ...socket, 'contact-width': '2.8 mm' },
    ],
    outcome: 'fails',
    checks: { ...held, 'equal-contact-width': 'fails contacts-do-not-meet' },
  },
  {
    says: 'a plug that does not lock: a caution',
    faces: [
      { ...plug, lock: 'tab' },
      { ...socket, lock: 'slide' },
    ],
    outcome: 'holds',
    checks: { ...held, 'equal-lock': 'fails does-not-lock' },
  },
  {
    says: 'a sealed plug in an open socket: a caution',
    faces: [
      { ...plug, seal: 'wire-seals' },
      { ...socket, seal: 'unsealed' },
    ],
    outcome: 'holds',
    checks: { ...held, 'equal-seal': 'fails not-sealed' },
  },
  {
    says: 'a pump that draws more than a pole bears: a caution',
    faces: [
      { ...plug, 'current-rating': '12 A' },
      { ...socket, 'current-drawn': '30 A' },
    ],
    outcome: 'holds',
    checks: { ...held, current: 'fails pole-runs-hot' },
  },
];
