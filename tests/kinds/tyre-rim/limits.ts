/**
 * Just inside, exactly on and just outside each limit of a tyre on its rim.
 */

import type { Outcome } from '../../../src/domain/check/state.js';
import type { Fixture } from '../fixture.js';
import { held, rim, tyre } from './fits.js';

type Row = readonly [says: string, onTyre: object, onRim: object, check: string, verdict: string];

const rows: readonly Row[] = [
  ['a hundredth wider than the narrowest', {}, { width: '5.51 in' }, 'not-too-narrow', 'holds'],
  ['the narrowest', {}, { width: '5.5 in' }, 'not-too-narrow', 'holds'],
  ['the narrowest, in millimetres', {}, { width: '139.7 mm' }, 'not-too-narrow', 'holds'],
  [
    'a hundredth narrower than the narrowest',
    {},
    { width: '5.49 in' },
    'not-too-narrow',
    'fails rim-too-narrow',
  ],
  ['a hundredth narrower than the widest', {}, { width: '6.99 in' }, 'not-too-wide', 'holds'],
  ['the widest', {}, { width: '7 in' }, 'not-too-wide', 'holds'],
  [
    'a hundredth wider than the widest',
    {},
    { width: '7.01 in' },
    'not-too-wide',
    'fails rim-too-wide',
  ],
  [
    'a width that somebody read with a tape',
    {},
    { width: '7 ±0.1 in' },
    'not-too-wide',
    'open not-precise-enough',
  ],
  ['a code with a nought behind it is the same code', {}, { 'diameter-code': '15.0' }, '', ''],
];

export const fixtures: readonly Fixture[] = rows.map(([says, onTyre, onRim, check, verdict]) => ({
  says,
  faces: [
    { ...tyre, ...onTyre },
    { ...rim, ...onRim },
  ],
  outcome: verdict === '' ? 'holds' : (verdict.split(' ')[0] as Outcome),
  checks: check === '' ? held : { ...held, [check]: verdict },
}));
