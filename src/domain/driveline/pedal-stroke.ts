/**
 * How far a brake pedal goes until the brakes grip: what its pistons take, by the master cylinder.
 * Lines and fluid are taken for rigid, and both circuits for one.
 */

import {
  addIntervals,
  divideIntervals,
  type Interval,
  multiplyIntervals,
  point,
} from '../quantity/interval.js';
import { ZERO } from '../quantity/rational.js';

export interface Pedal {
  /** Piston area of the master cylinder, in mm2. */
  readonly master: Interval;
  /** Travel of the pedal for one of the master cylinder. */
  readonly ratio: Interval;
  /** Of each axle, or of each wheel: area in mm2, travel in mm. */
  readonly pistons: readonly { readonly area: Interval; readonly travel: Interval }[];
}

/** In mm. */
export function pedalTravel({ master, ratio, pistons }: Pedal): Interval {
  const volume = pistons
    .map(({ area, travel }) => multiplyIntervals(area, travel))
    .reduce(addIntervals, point(ZERO));
  return multiplyIntervals(divideIntervals(volume, master), ratio);
}
