/**
 * How far the two paths of an axle loop may differ, by what couples them.
 *
 * `pass`, `warn`, `refuse` are limits on the mismatch of the two axles' ground speeds, as pure
 * numbers (1/100 = one per cent): up to `pass` nothing is said, above it a caution, above
 * `refuse` the loop fails. Between `warn` and `refuse` a coupling that can wind up is fit for
 * loose ground only, so a question about road use refuses there.
 *
 * Source of the default limits: common practice, no source. They are for cars and light vans;
 * tractors run their front axle 1 to 5 per cent fast on purpose and are not meant here. A
 * catalogue can set its own.
 */

import { fraction, type Rational } from '../quantity/rational.js';

export interface Band {
  readonly pass: Rational;
  readonly warn: Rational;
  readonly refuse: Rational;
}

export type Couplings = ReadonlyMap<string, Band>;

export type Use = 'road' | 'off-road' | 'competition';

const perMille = (value: bigint): Rational => fraction(value, 1000n);

/** An open centre takes up any mismatch, but then its differential turns and heats all day. */
const OPEN: Band = { pass: perMille(10n), warn: perMille(30n), refuse: perMille(30n) };

/** Whatever can lock, drags or locks: mismatch becomes tyre slip and wind-up. */
const LOCKING: Band = { pass: perMille(5n), warn: perMille(10n), refuse: perMille(20n) };

export const DEFAULT_COUPLINGS: Couplings = new Map([
  ['open', OPEN],
  ['planetary', OPEN],
  ['locked', LOCKING],
  ['part-time', LOCKING],
  ['viscous', LOCKING],
  ['clutch', LOCKING],
]);

/** The mismatch above which a loop fails, for this use. */
export function refusalOf(band: Band, use: Use | null): Rational {
  return use === 'road' ? band.warn : band.refuse;
}
