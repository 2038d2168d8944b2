/**
 * What nobody recorded keeps a speed signal open and is named.
 */

import { type Expected, type Fixture, without } from '../fixture.js';
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

type Row = readonly [says: string, faces: Fixture['faces'], missing: string, checks: Expected];

const OPEN = 'open not-recorded';

const rows: readonly Row[] = [
  [
    'what the control unit counts',
    [coil, without(coilReceiver, 'pulses')],
    'right.pulses',
    { ...heldCoil, 'equal-pulses': OPEN },
  ],
  [
    'which way the cable turns',
    [without(cableDrive, 'sense'), cableInstrument],
    'left.sense',
    { ...heldCable, 'equal-sense': OPEN },
  ],
  [
    'the nut of the cable',
    [cableDrive, without(cableInstrument, 'cable-nut')],
    'right.cable-nut',
    { ...heldCable, 'equal-cable-nut': OPEN },
  ],
  [
    'the core of the cable',
    [cableDrive, without(cableInstrument, 'cable-core')],
    'right.cable-core',
    { ...heldCable, 'equal-cable-core': OPEN },
  ],
  [
    'the supply',
    [without(hallSender, 'supply'), hallReceiver],
    'left.supply',
    { ...heldHall, 'equal-supply': OPEN },
  ],
  [
    'the output: eight pulses alone say too little',
    [hallSender, without(hallReceiver, 'output')],
    'right.output',
    { ...heldHall, 'equal-output': OPEN },
  ],
  [
    'what the receiver takes',
    [coil, without(coilReceiver, 'drive')],
    'right.drive',
    { ...heldCoil, 'equal-drive': OPEN },
  ],
];

export const fixtures: readonly Fixture[] = rows.map(([says, faces, missing, checks]) => ({
  says,
  faces,
  outcome: 'open',
  checks,
  missing: [missing],
}));
