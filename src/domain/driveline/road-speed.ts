/**
 * How fast a wheel's turning moves a vehicle, and how fast a road speed turns what drives it: each
 * formula once for all calculators. Circumferences are in mm, speeds in km/h, rotation in rpm.
 *
 * Left out: the slip of tyres, 1 to 3 per cent under drive (common practice).
 */

import {
  divideIntervals,
  type Interval,
  multiplyIntervals,
  scaleInterval,
} from '../quantity/interval.js';
import { fraction } from '../quantity/rational.js';

/** 60 minutes by 1 000 000 mm: what a millimetre a minute is in km/h. */
const MM_A_MINUTE = fraction(60n, 1_000_000n);

/** Of what turns so fast, a ratio ahead of wheels that roll so far at each turn. */
export function roadSpeed(rotation: Interval, ratio: Interval, circumference: Interval): Interval {
  const rolled = scaleInterval(multiplyIntervals(rotation, circumference), MM_A_MINUTE);
  return divideIntervals(rolled, ratio);
}

/** How fast that turns at a road speed. */
export function rotationAt(speed: Interval, ratio: Interval, circumference: Interval): Interval {
  const turns = divideIntervals(speed, scaleInterval(circumference, MM_A_MINUTE));
  return multiplyIntervals(turns, ratio);
}
