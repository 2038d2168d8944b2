/**
 * Just inside, exactly on and just outside each limit of a signal.
 */

import type { Expected, Fixture } from '../fixture.js';
import { engineUnit, heldAsValue, pedalSensor } from './fits.js';

function row(says: string, given: object, changed: Expected): Fixture {
  const isFailing = Object.entries(changed).some(
    ([check, verdict]) => check !== 'scale' && verdict !== 'holds',
  );
  return {
    says,
    faces: [engineUnit, { ...pedalSensor, ...given }],
    outcome: isFailing ? 'fails' : 'holds',
    checks: { ...heldAsValue, ...changed },
  };
}

export const fixtures: readonly Fixture[] = [
  row('lowest: a hundredth inside', { lowest: '0.51' }, { lowest: 'holds' }),
  row('lowest: exactly on', { lowest: '0.50' }, { lowest: 'holds' }),
  row('lowest: a hundredth outside', { lowest: '0.49' }, { lowest: 'fails below-the-range' }),
  row('highest: a hundredth inside', { highest: '4.49' }, { highest: 'holds' }),
  row('highest: exactly on', { highest: '4.50' }, { highest: 'holds' }),
  row('highest: a hundredth outside', { highest: '4.51' }, { highest: 'fails above-the-range' }),
  row('scale: a hundredth more than nine tenths', { highest: '4.11' }, { scale: 'holds' }),
  row('scale: exactly nine tenths', { highest: '4.1' }, { scale: 'holds' }),
  row('scale: a hundredth less', { highest: '4.09' }, { scale: 'fails reads-too-little' }),
  {
    ...row('a value that was measured to a tenth straddles the limit', {}, {}),
    faces: [engineUnit, { ...pedalSensor, lowest: '0.5 ±0.1' }],
    outcome: 'open',
    checks: { ...heldAsValue, lowest: 'open not-precise-enough' },
  },
];
