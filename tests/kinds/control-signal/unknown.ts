/**
 * What nobody recorded keeps a signal open and is named.
 */

import { type Expected, type Fixture, without } from '../fixture.js';
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

function open(all: Expected, ...checks: readonly string[]): Expected {
  return { ...all, ...Object.fromEntries(checks.map((check) => [check, 'open not-recorded'])) };
}

export const fixtures: readonly Fixture[] = [
  {
    says: 'the sense of a switch: look at both wiring diagrams',
    faces: [lamp, without(reverseSwitch, 'sense')],
    outcome: 'open',
    checks: open(heldAsSwitch, 'equal-sense'),
    missing: ['right.sense'],
  },
  {
    says: 'what a switch switches',
    faces: [without(lamp, 'level'), reverseSwitch],
    outcome: 'open',
    checks: open(heldAsSwitch, 'equal-level'),
    missing: ['left.level'],
  },
  {
    says: 'the signal',
    faces: [lamp, without(reverseSwitch, 'signal')],
    outcome: 'open',
    checks: open(heldAsSwitch, 'equal-signal'),
    missing: ['right.signal'],
  },
  {
    says: 'the type, of a switch with all that a switch has',
    faces: [lamp, without(reverseSwitch, 'type')],
    outcome: 'open',
    checks: open(heldAsSwitch, 'equal-type'),
    missing: ['right.type'],
  },
  {
    says: 'the highest voltage that the unit takes',
    faces: [without(engineUnit, 'highest-voltage'), pedalSensor],
    outcome: 'open',
    checks: open(heldAsVoltage, 'voltage-highest', 'voltage-scale'),
    missing: ['left.highest-voltage'],
  },
  {
    says: 'how many ohms an empty tank has',
    faces: [gauge, without(tankSender, 'highest')],
    outcome: 'open',
    checks: open(heldAsValue, 'highest', 'scale'),
    missing: ['right.highest'],
  },
  {
    says: 'the protocol',
    faces: [busUnit, without(busSource, 'protocol')],
    outcome: 'open',
    checks: open(heldAsBus, 'equal-protocol'),
    missing: ['right.protocol'],
  },
  {
    says: 'a supply on one end only is not compared',
    faces: [{ ...engineUnit, supply: '12 V' }, pedalSensor],
    outcome: 'holds',
    checks: heldAsVoltage,
  },
];
