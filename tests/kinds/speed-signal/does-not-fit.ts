/**
 * Each way in which a sender does not suit a receiver.
 */

import type { Expected, Fixture } from '../fixture.js';
import {
  cableDrive,
  cableInstrument,
  coil,
  coilReceiver,
  hallReceiver,
  hallSender,
  heldCable,
  heldCoil,
  heldHall,
} from './fits.js';

type Row = readonly [says: string, faces: Fixture['faces'], checks: Expected];

const rows: readonly Row[] = [
  [
    'the later gearbox gives pulses, and the instrument has a cable: a converter is needed',
    [hallSender, { ...cableInstrument, pulses: 8 }],
    { ...heldCoil, 'equal-drive': 'fails not-equal' },
  ],
  [
    'the earlier gearbox turns a cable, and the instrument counts pulses',
    [{ ...cableDrive, pulses: 8 }, hallReceiver],
    { ...heldCoil, 'equal-drive': 'fails not-equal' },
  ],
  [
    'a coil on a receiver for Hall senders: no edge at low speed',
    [coil, hallReceiver],
    { ...heldCoil, 'equal-drive': 'fails not-equal' },
  ],
  [
    'four pulses where eight are counted: half the speed is shown',
    [{ ...hallSender, pulses: 4 }, hallReceiver],
    { ...heldHall, 'equal-pulses': 'fails not-equal' },
  ],
  [
    'a coil of another number of pulses',
    [coil, { ...coilReceiver, pulses: 10 }],
    { ...heldCoil, 'equal-pulses': 'fails not-equal' },
  ],
  [
    'the trap of the drive from the other side of the shaft: the cable turns backwards',
    [{ ...cableDrive, sense: 'anticlockwise' }, cableInstrument],
    { ...heldCable, 'equal-sense': 'fails not-equal' },
  ],
  [
    'a cable with a clip, and a drive with a thread',
    [cableDrive, { ...cableInstrument, 'cable-nut': 'clip' }],
    { ...heldCable, 'equal-cable-nut': 'fails not-equal' },
  ],
  [
    'a core with a blade, and a drive for a square',
    [cableDrive, { ...cableInstrument, 'cable-core': 'blade' }],
    { ...heldCable, 'equal-cable-core': 'fails not-equal' },
  ],
  [
    'a sender for 5 V on 12 V',
    [{ ...hallSender, supply: '5 V' }, hallReceiver],
    { ...heldHall, 'equal-supply': 'fails not-equal' },
  ],
  [
    'two wires that signal by current, and a receiver that waits for a voltage',
    [{ ...hallSender, output: 'current' }, hallReceiver],
    { ...heldHall, 'equal-output': 'fails not-equal' },
  ],
];

export const fixtures: readonly Fixture[] = rows.map(([says, faces, checks]) => ({
  says,
  faces,
  outcome: 'fails',
  checks,
}));
