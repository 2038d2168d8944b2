/**
 * Just inside, exactly on and just outside each limit of a signal.
 */

import type { Expected, Fixture } from '../fixture.js';
import { engineUnit, gauge, heldAsValue, heldAsVoltage, pedalSensor, tankSender } from './fits.js';

const unit = { ...engineUnit, 'lowest-voltage': '2 ±0 V', 'highest-voltage': '9 ±0 V' };
const source = { ...pedalSensor, 'lowest-voltage': '2 ±0 V', 'highest-voltage': '9 ±0 V' };

function outcomeOf(changed: Expected): 'holds' | 'fails' {
  const failing = Object.entries(changed).filter(([, verdict]) => verdict !== 'holds');
  return failing.some(([check]) => !check.endsWith('scale')) ? 'fails' : 'holds';
}

function ofVoltage(given: Readonly<Record<string, string>>, changed: Expected): Fixture {
  return {
    says: `a sensor: ${Object.entries(given).flat().join(' ')}`,
    faces: [unit, { ...source, ...given }],
    outcome: outcomeOf(changed),
    checks: { ...heldAsVoltage, ...changed },
  };
}

function ofOhms(given: Readonly<Record<string, string>>, changed: Expected): Fixture {
  return {
    says: `a sender: ${Object.entries(given).flat().join(' ')}`,
    faces: [gauge, { ...tankSender, ...given }],
    outcome: outcomeOf(changed),
    checks: { ...heldAsValue, ...changed },
  };
}

const below = 'fails below-the-range';
const above = 'fails above-the-range';
const little = 'fails reads-too-little';

export const fixtures: readonly Fixture[] = [
  ofVoltage({ 'lowest-voltage': '2.01 ±0 V' }, { 'voltage-lowest': 'holds' }),
  ofVoltage({ 'lowest-voltage': '2.00 ±0 V' }, { 'voltage-lowest': 'holds' }),
  ofVoltage({ 'lowest-voltage': '1.99 ±0 V' }, { 'voltage-lowest': below }),
  ofVoltage({ 'highest-voltage': '8.99 ±0 V' }, { 'voltage-highest': 'holds' }),
  ofVoltage({ 'highest-voltage': '9.00 ±0 V' }, { 'voltage-highest': 'holds' }),
  ofVoltage({ 'highest-voltage': '9.01 ±0 V' }, { 'voltage-highest': above }),
  ofVoltage({ 'highest-voltage': '8.31 ±0 V' }, { 'voltage-scale': 'holds' }),
  ofVoltage({ 'highest-voltage': '8.30 ±0 V' }, { 'voltage-scale': 'holds' }),
  ofVoltage({ 'highest-voltage': '8.29 ±0 V' }, { 'voltage-scale': little }),
  ofOhms({ lowest: '11' }, { lowest: 'holds' }),
  ofOhms({ lowest: '10' }, { lowest: 'holds' }),
  ofOhms({ lowest: '9' }, { lowest: below }),
  ofOhms({ highest: '179' }, { highest: 'holds' }),
  ofOhms({ highest: '180' }, { highest: 'holds' }),
  ofOhms({ highest: '181' }, { highest: above }),
  ofOhms({ highest: '164' }, { scale: 'holds' }),
  ofOhms({ highest: '163' }, { scale: 'holds' }),
  ofOhms({ highest: '162' }, { scale: little }),
  {
    says: 'a voltage that was measured to a tenth straddles the limit',
    faces: [unit, { ...source, 'lowest-voltage': '2.0 V' }],
    outcome: 'open',
    checks: { ...heldAsVoltage, 'voltage-lowest': 'open not-precise-enough' },
  },
];
