/**
 * Each way in which a unit does not understand its signal, one at a time.
 */

import type { Expected, Fixture } from '../fixture.js';
import {
  busSource,
  busUnit,
  engineUnit,
  gauge,
  heldAsBus,
  heldAsSwitch,
  heldAsValue,
  heldAsVoltage,
  lamp,
  pedalSensor,
  reverseSwitch,
  tankSender,
} from './fits.js';

const { 'equal-level': _, 'equal-sense': __, ...heldByName } = heldAsSwitch;

const everyEnd = {
  'lowest-voltage': '2.00 V',
  'highest-voltage': '9.00 V',
  lowest: '10',
  highest: '180',
  level: 'battery',
  protocol: 'drive-bus-3',
};

/** Only what both types have is compared where they differ, whatever else is recorded. */
function otherType(expected: string, given: string, common: Expected): Fixture {
  return {
    says: `a ${given} for a ${expected}, with everything recorded`,
    faces: [
      { ...lamp, ...everyEnd, type: expected },
      { ...reverseSwitch, ...everyEnd, type: given },
    ],
    outcome: 'fails',
    checks: { ...heldByName, 'equal-type': 'fails not-equal', ...common },
  };
}

export const fixtures: readonly Fixture[] = [
  {
    says: 'a switch that opens in reverse: the lamp burns all day, but not in reverse',
    faces: [lamp, { ...reverseSwitch, sense: 'open' }],
    outcome: 'fails',
    checks: { ...heldAsSwitch, 'equal-sense': 'fails sense-reversed' },
  },
  {
    says: 'a switch to ground where battery is switched',
    faces: [lamp, { ...reverseSwitch, level: 'ground' }],
    outcome: 'fails',
    checks: { ...heldAsSwitch, 'equal-level': 'fails switches-the-other-pole' },
  },
  {
    says: 'a neutral switch for the reverse lamp',
    faces: [lamp, { ...reverseSwitch, signal: 'neutral' }],
    outcome: 'fails',
    checks: { ...heldAsSwitch, 'equal-signal': 'fails not-equal' },
  },
  {
    says: 'a switch for a unit that waits for a message on the bus',
    faces: [{ ...busUnit, signal: 'reverse' }, reverseSwitch],
    outcome: 'fails',
    checks: { ...heldByName, 'equal-type': 'fails not-equal' },
  },
  {
    says: 'a pedal sensor that falls where one that rises is expected',
    faces: [engineUnit, { ...pedalSensor, sense: 'falling' }],
    outcome: 'fails',
    checks: { ...heldAsVoltage, 'equal-sense': 'fails sense-reversed' },
  },
  {
    says: 'a sensor that begins too low: the unit takes it for a broken wire',
    faces: [engineUnit, { ...pedalSensor, 'lowest-voltage': '1.60 V' }],
    outcome: 'fails',
    checks: { ...heldAsVoltage, 'voltage-lowest': 'fails below-the-range' },
  },
  {
    says: 'a sensor that runs up to twelve volts',
    faces: [engineUnit, { ...pedalSensor, 'highest-voltage': '12.0 V' }],
    outcome: 'fails',
    checks: { ...heldAsVoltage, 'voltage-highest': 'fails above-the-range' },
  },
  {
    says: 'a sensor that gives half the range is read as half: a caution',
    faces: [engineUnit, { ...pedalSensor, 'highest-voltage': '5.50 V' }],
    outcome: 'holds',
    checks: { ...heldAsVoltage, 'voltage-scale': 'fails reads-too-little' },
  },
  {
    says: 'a tank sender that runs below the gauge',
    faces: [gauge, { ...tankSender, lowest: '3' }],
    outcome: 'fails',
    checks: { ...heldAsValue, lowest: 'fails below-the-range' },
  },
  {
    says: 'a tank sender that runs above it',
    faces: [gauge, { ...tankSender, highest: '240' }],
    outcome: 'fails',
    checks: { ...heldAsValue, highest: 'fails above-the-range' },
  },
  {
    says: 'a tank sender that never shows full: a caution',
    faces: [gauge, { ...tankSender, lowest: '70' }],
    outcome: 'holds',
    checks: { ...heldAsValue, scale: 'fails reads-too-little' },
  },
  {
    says: 'two protocols on one bus',
    faces: [busUnit, { ...busSource, protocol: 'drive-bus-2' }],
    outcome: 'fails',
    checks: { ...heldAsBus, 'equal-protocol': 'fails another-protocol' },
  },
  {
    says: 'a sensor for twelve volts on a supply of five',
    faces: [
      { ...engineUnit, supply: '5 V' },
      { ...pedalSensor, supply: '12 V' },
    ],
    outcome: 'fails',
    checks: { ...heldAsVoltage, 'equal-supply': 'fails another-supply' },
  },
  {
    says: 'a signal of another type goes by its name, with a caution',
    faces: [
      { ...lamp, type: 'vacuum' },
      { ...reverseSwitch, type: 'vacuum' },
    ],
    outcome: 'holds',
    checks: { ...heldByName, 'known-type': 'fails other-signal-type' },
  },
  otherType('voltage', 'resistance', { 'equal-sense': 'holds' }),
  otherType('resistance', 'voltage', { 'equal-sense': 'holds' }),
  otherType('frequency', 'switch', { 'equal-sense': 'holds' }),
  otherType('switch', 'frequency', { 'equal-sense': 'holds' }),
  otherType('switch', 'bus', {}),
  otherType('bus', 'switch', {}),
];
