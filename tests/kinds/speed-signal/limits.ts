/**
 * Nothing of a speed signal has a tolerance: one pulse more or less is another signal.
 */

import type { Outcome } from '../../../src/domain/check/state.js';
import type { Fixture } from '../fixture.js';
import { coil, coilReceiver, heldCoil } from './fits.js';

const rows: readonly (readonly [pulses: number, verdict: string])[] = [
  [7, 'fails not-equal'],
  [8, 'holds'],
  [9, 'fails not-equal'],
];

export const fixtures: readonly Fixture[] = rows.map(([pulses, verdict]) => ({
  says: `eight pulses given, ${pulses} expected`,
  faces: [coil, { ...coilReceiver, pulses }],
  outcome: verdict.split(' ')[0] as Outcome,
  checks: { ...heldCoil, 'equal-pulses': verdict },
}));
