/**
 * How unevenly a universal joint turns what it drives, and the angles that working practice allows.
 *
 * A joint of the usual kind turns its second shaft faster and slower twice a turn, between the
 * cosine of the angle and its inverse; the irregularity is tan b sin b, half of that difference.
 * Limits of 6 degrees for each and 1.5 degrees between two that even each other out are working
 * practice for propeller shafts.
 */

import { sineInterval, tangentInterval } from '../quantity/enclosure.js';
import { type Interval, multiplyIntervals, point } from '../quantity/interval.js';
import { rational } from '../quantity/rational.js';

/** In degrees. */
export const GREATEST_ANGLE: Interval = point(rational(6));
export const GREATEST_DIFFERENCE: Interval = point(rational('1.5'));

/** Of an angle from 0 to below 90 degrees: both factors rise with it, so the ends are exact. */
export function irregularity(angle: Interval): Interval {
  return multiplyIntervals(tangentInterval(angle), sineInterval(angle));
}
