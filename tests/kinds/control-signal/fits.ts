/**
 * Signals that a unit understands, and the faces that the other fixtures start from.
 */

import type { Expected, Fixture } from '../fixture.js';

const kind = 'control-signal';

const reverse = { kind, signal: 'reverse', type: 'switch', sense: 'closed', level: 'battery' };

export const lamp = { ...reverse, side: 'unit' };
export const reverseSwitch = { ...reverse, side: 'source' };

const common: Expected = { 'equal-signal': 'holds', 'equal-type': 'holds', 'known-type': 'holds' };

export const heldAsSwitch: Expected = {
  ...common,
  'equal-sense': 'holds',
  'equal-level': 'holds',
};

const pedal = {
  kind,
  signal: 'pedal-position',
  type: 'voltage',
  sense: 'rising',
  lowest: '0.5',
  highest: '4.5',
};

export const engineUnit = { ...pedal, side: 'unit' };
export const pedalSensor = { ...pedal, side: 'source' };

export const heldAsValue: Expected = {
  ...common,
  'equal-sense': 'holds',
  lowest: 'holds',
  highest: 'holds',
  scale: 'holds',
};

const bus = { kind, signal: 'gear-engaged', type: 'bus', protocol: 'drive-bus-3' };

export const busUnit = { ...bus, side: 'unit' };
export const busSource = { ...bus, side: 'source' };

export const heldAsBus: Expected = { ...common, 'equal-protocol': 'holds' };

export const fixtures: readonly Fixture[] = [
  {
    says: 'a switch that closes in reverse, for a reverse lamp on battery',
    faces: [lamp, reverseSwitch],
    outcome: 'holds',
    checks: heldAsSwitch,
  },
  {
    says: 'a neutral switch that opens in neutral and switches ground',
    faces: [
      { ...lamp, signal: 'neutral', sense: 'open', level: 'ground' },
      { ...reverseSwitch, signal: 'neutral', sense: 'open', level: 'ground' },
    ],
    outcome: 'holds',
    checks: heldAsSwitch,
  },
  {
    says: 'a pedal sensor of 0.5 to 4.5 volts',
    faces: [engineUnit, pedalSensor],
    outcome: 'holds',
    checks: heldAsValue,
  },
  {
    says: 'on the supply that it is made for',
    faces: [
      { ...engineUnit, supply: '5' },
      { ...pedalSensor, supply: '5' },
    ],
    outcome: 'holds',
    checks: { ...heldAsValue, 'equal-supply': 'holds' },
  },
  {
    says: 'two units on one bus',
    faces: [busUnit, busSource],
    outcome: 'holds',
    checks: heldAsBus,
  },
];
