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
  'lowest-voltage': '2.00 V',
  'highest-voltage': '9.00 V',
};

/** The unit takes a little more than the sensor gives. */
export const engineUnit = {
  ...pedal,
  side: 'unit',
  'lowest-voltage': '1.80 V',
  'highest-voltage': '9.20 V',
};
export const pedalSensor = { ...pedal, side: 'source' };

const level = { kind, signal: 'fuel-level', type: 'resistance', sense: 'falling' };

export const gauge = { ...level, side: 'unit', lowest: '10', highest: '180' };
export const tankSender = { ...level, side: 'source', lowest: '10', highest: '180' };

export const heldAsVoltage: Expected = {
  ...common,
  'equal-sense': 'holds',
  'voltage-lowest': 'holds',
  'voltage-highest': 'holds',
  'voltage-scale': 'holds',
};

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
    says: 'a pedal sensor of two to nine volts',
    faces: [engineUnit, pedalSensor],
    outcome: 'holds',
    checks: heldAsVoltage,
  },
  {
    says: 'on the supply that it is made for',
    faces: [
      { ...engineUnit, supply: '12 V' },
      { ...pedalSensor, supply: '12 V' },
    ],
    outcome: 'holds',
    checks: { ...heldAsVoltage, 'equal-supply': 'holds' },
  },
  {
    says: 'a tank sender and a gauge that read the same ohms',
    faces: [gauge, tankSender],
    outcome: 'holds',
    checks: heldAsValue,
  },
  {
    says: 'two units on one bus',
    faces: [busUnit, busSource],
    outcome: 'holds',
    checks: heldAsBus,
  },
  {
    says: 'a wheel speed of 20 to 2000 hertz',
    faces: [
      { ...gauge, signal: 'wheel-speed', type: 'frequency', lowest: '20', highest: '2000' },
      { ...tankSender, signal: 'wheel-speed', type: 'frequency', lowest: '20', highest: '2000' },
    ],
    outcome: 'holds',
    checks: heldAsValue,
  },
];
