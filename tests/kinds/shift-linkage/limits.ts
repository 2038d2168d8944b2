/**
 * Just inside, exactly on and just outside each limit of a shift linkage.
 */

import type { Expected, Fixture } from '../fixture.js';
import { gearbox, held, lever } from './fits.js';

interface Limit {
  readonly says: string;
  readonly onGearbox: object;
  /** The parameter of the lever, with the values inside, on and outside. */
  readonly parameter: string;
  readonly values: readonly [string, string, string];
  readonly check: string;
  readonly failure: string;
  readonly isCaution?: true;
  /** Other checks that the same values bring in. */
  readonly besides?: Expected;
}

const limits: readonly Limit[] = [
  {
    says: 'travel that the box needs',
    onGearbox: { 'shift-travel': '24 ±0 mm' },
    parameter: 'shift-travel',
    values: ['24.001 ±0 mm', '24.000 ±0 mm', '23.999 ±0 mm'],
    check: 'shift-travel',
    failure: 'fails too-little-travel',
  },
  {
    says: 'travel that the stops bear',
    onGearbox: { 'shift-travel': '24 ±0 mm' },
    parameter: 'shift-travel',
    values: ['29.999 ±0 mm', '30.000 ±0 mm', '30.001 ±0 mm'],
    check: 'shift-over-travel',
    failure: 'fails needs-stop',
    isCaution: true,
  },
  {
    says: 'selection over all gates',
    onGearbox: { 'gate-travel': '32 ±0 mm' },
    parameter: 'gate-travel',
    values: ['32.001 ±0 mm', '32.000 ±0 mm', '31.999 ±0 mm'],
    check: 'gate-travel',
    failure: 'fails too-little-selection',
  },
  {
    says: 'pin in its eye',
    onGearbox: { pin: '10 ±0 mm' },
    parameter: 'eye',
    values: ['10.001 ±0 mm', '10.000 ±0 mm', '9.999 ±0 mm'],
    check: 'pin',
    failure: 'fails pin-does-not-go-in',
    besides: { 'pin-play': 'holds' },
  },
  {
    says: 'play of the pin',
    onGearbox: { pin: '10 ±0 mm' },
    parameter: 'eye',
    values: ['10.299 ±0 mm', '10.300 ±0 mm', '10.301 ±0 mm'],
    check: 'pin-play',
    failure: 'fails loose-on-pin',
    isCaution: true,
    besides: { pin: 'holds' },
  },
];

const WHERE = ['just inside', 'exactly on it', 'just outside'];

export const fixtures: readonly Fixture[] = limits.flatMap((limit) =>
  limit.values.map((value, index): Fixture => {
    const isOutside = index === 2;
    const { says, onGearbox, parameter, check, failure, besides } = limit;
    return {
      says: `${says}: ${WHERE[index]}`,
      faces: [
        { ...gearbox, ...onGearbox },
        { ...lever, [parameter]: value },
      ],
      outcome: isOutside && limit.isCaution !== true ? 'fails' : 'holds',
      checks: { ...held, ...besides, [check]: isOutside ? failure : 'holds' },
    };
  }),
);
