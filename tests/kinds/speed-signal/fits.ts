/**
 * Senders that suit their receivers, and the faces that the other fixtures start from.
 */

import type { Expected, Fixture } from '../fixture.js';

export const cableDrive = {
  kind: 'speed-signal',
  side: 'sender',
  drive: 'mechanical',
  sense: 'clockwise',
  'cable-nut': 'm18x1.5',
  'cable-core': 'square-2.6',
} as const;

export const cableInstrument = { ...cableDrive, side: 'receiver' } as const;

export const coil = {
  kind: 'speed-signal',
  side: 'sender',
  drive: 'variable-reluctance',
  pulses: 8,
} as const;

export const coilReceiver = { ...coil, side: 'receiver' } as const;

export const hallSender = {
  kind: 'speed-signal',
  side: 'sender',
  drive: 'hall',
  pulses: 8,
  supply: '12 V',
  output: 'pulled-low',
} as const;

export const hallReceiver = { ...hallSender, side: 'receiver' } as const;

const common: Expected = { 'equal-drive': 'holds', 'known-drive': 'holds' };

export const heldCable: Expected = {
  ...common,
  'equal-sense': 'holds',
  'equal-cable-nut': 'holds',
  'equal-cable-core': 'holds',
};

export const heldCoil: Expected = { ...common, 'equal-pulses': 'holds' };

export const heldHall: Expected = {
  ...heldCoil,
  'equal-supply': 'holds',
  'equal-output': 'holds',
};

export const fixtures: readonly Fixture[] = [
  {
    says: 'a cable with its nut and square, turning clockwise',
    faces: [cableDrive, cableInstrument],
    outcome: 'holds',
    checks: heldCable,
  },
  {
    says: 'a coil of eight pulses',
    faces: [coil, coilReceiver],
    outcome: 'holds',
    checks: heldCoil,
  },
  {
    says: 'a Hall sender of eight pulses at 12 V that pulls its output low',
    faces: [hallSender, hallReceiver],
    outcome: 'holds',
    checks: heldHall,
  },
  {
    says: 'a reed contact on both ends: a caution that only name and pulses were compared',
    faces: [
      { ...coil, drive: 'reed' },
      { ...coilReceiver, drive: 'reed' },
    ],
    outcome: 'holds',
    checks: { ...heldCoil, 'known-drive': 'fails other-drive' },
  },
];
