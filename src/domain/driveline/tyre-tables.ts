/**
 * What load indices and speed symbols stand for: the tables of ISO 4000-1.
 *
 * From memory; the indices 91 and 95 and the symbols Q, T, H, V, W, Y were compared with a public
 * copy. Index 103 is 875 kg: copies are about that print 857, two digits turned round. The tests
 * hold every index against the series that they were rounded from. Loads are for one tyre at the
 * pressure of the standard.
 *
 * Left out: indices of motorcycles and lorries, the symbols A1 to A8.
 */

import { type Interval, interval, point } from '../quantity/interval.js';
import { type Rational, rational } from '../quantity/rational.js';

export const LEAST_LOAD_INDEX = 50;

/** In kg, from index 50 on. */
const LOADS: readonly number[] = [
  190, 195, 200, 206, 212, 218, 224, 230, 236, 243, 250, 257, 265, 272, 280, 290, 300, 307, 315,
  325, 335, 345, 355, 365, 375, 387, 400, 412, 425, 437, 450, 462, 475, 487, 500, 515, 530, 545,
  560, 580, 600, 615, 630, 650, 670, 690, 710, 730, 750, 775, 800, 825, 850, 875, 900, 925, 950,
  975, 1000, 1030, 1060, 1090, 1120, 1150, 1180, 1215, 1250, 1285, 1320, 1360, 1400, 1450, 1500,
  1550, 1600, 1650, 1700,
];

export const GREATEST_LOAD_INDEX = LEAST_LOAD_INDEX + LOADS.length - 1;

/** What one tyre bears, in kg; null where there is no such index. */
export function loadOf(index: number): Rational | null {
  const load = LOADS[index - LEAST_LOAD_INDEX];
  return load === undefined ? null : rational(load);
}

/** In km/h. */
const SPEEDS = {
  L: 120,
  M: 130,
  N: 140,
  P: 150,
  Q: 160,
  R: 170,
  S: 180,
  T: 190,
  U: 200,
  H: 210,
  V: 240,
  W: 270,
  Y: 300,
} as const;

export type SpeedSymbol = keyof typeof SPEEDS;

export function isSpeedSymbol(text: string): text is SpeedSymbol {
  return Object.hasOwn(SPEEDS, text);
}

export function speedOf(symbol: SpeedSymbol): Interval {
  return point(rational(SPEEDS[symbol]));
}

/** Some speed above a number of km/h, which only the maker of the tyre can say: ZR, and (Y). */
export function speedAbove(kmh: number): Interval {
  return interval(rational(kmh), null, { lowOpen: true });
}

/** Up to which speed, in km/h, a tyre bears all that its index says; above, its maker is asked. */
export function fullLoadSpeedOf(symbol: SpeedSymbol): Rational {
  const faster = { V: 210, W: 240, Y: 270 } as const;
  return rational(symbol in faster ? faster[symbol as keyof typeof faster] : SPEEDS[symbol]);
}
