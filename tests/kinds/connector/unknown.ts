/**
 * What nobody recorded keeps a connector open and is named.
 */

import { type Fixture, without } from '../fixture.js';
import { held, plug, socket } from './fits.js';

export const fixtures: readonly Fixture[] = [
  {
    says: 'the pinout: that the plug goes in is no proof',
    faces: [plug, without(socket, 'pinout')],
    outcome: 'open',
    checks: { ...held, 'equal-pinout': 'open not-recorded' },
    missing: ['right.pinout'],
  },
  {
    says: 'the key',
    faces: [without(plug, 'key'), socket],
    outcome: 'open',
    checks: { ...held, 'equal-key': 'open not-recorded' },
    missing: ['left.key'],
  },
  {
    says: 'the family',
    faces: [without(plug, 'family'), socket],
    outcome: 'open',
    checks: { ...held, 'equal-family': 'open not-recorded' },
    missing: ['left.family'],
  },
  {
    says: 'the number of poles',
    faces: [plug, without(socket, 'poles')],
    outcome: 'open',
    checks: { ...held, 'equal-poles': 'open not-recorded' },
    missing: ['right.poles'],
  },
  {
    says: 'a seal on one half only is not compared',
    faces: [{ ...plug, seal: 'wire-seals', 'current-rating': '12 A' }, socket],
    outcome: 'holds',
    checks: held,
  },
];
