/**
 * Connectors that go together and work, and the two faces that the other fixtures start from.
 */

import type { Expected, Fixture } from '../fixture.js';

export const plug = {
  kind: 'connector',
  side: 'plug',
  family: 'oval-sealed',
  poles: 6,
  key: 'b',
  pinout: 'gearbox-switches-2',
} as const;

export const socket = { ...plug, side: 'socket' } as const;

export const held: Expected = {
  'equal-family': 'holds',
  'equal-poles': 'holds',
  'equal-key': 'holds',
  'equal-pinout': 'holds',
};

const { 'equal-key': _, ...heldWithoutKey } = held;

export const fixtures: readonly Fixture[] = [
  {
    says: 'six poles of one family, key and pinout',
    faces: [plug, socket],
    outcome: 'holds',
    checks: held,
  },
  {
    says: 'a socket that takes every key of its family',
    faces: [plug, { ...socket, key: 'universal' }],
    outcome: 'holds',
    checks: heldWithoutKey,
  },
  {
    says: 'a universal plug in a keyed socket',
    faces: [{ ...plug, key: 'universal' }, socket],
    outcome: 'holds',
    checks: heldWithoutKey,
  },
  {
    says: 'contacts, lock, seal and current recorded on both halves',
    faces: [
      {
        ...plug,
        'contact-width': '2.8 mm',
        lock: 'tab',
        seal: 'wire-seals',
        'current-rating': '20 A',
      },
      {
        ...socket,
        'contact-width': '2.8 mm',
        lock: 'tab',
        seal: 'wire-seals',
        'current-drawn': '8 A',
      },
    ],
    outcome: 'holds',
    checks: {
      ...held,
      'equal-contact-width': 'holds',
      'equal-lock': 'holds',
      'equal-seal': 'holds',
      current: 'holds',
    },
  },
  {
    says: 'a single pole for a reverse lamp switch',
    faces: [
      { ...plug, poles: 1, key: 'plain', pinout: 'one-pole' },
      { ...socket, poles: 1, key: 'plain', pinout: 'one-pole' },
    ],
    outcome: 'holds',
    checks: held,
  },
];
