/**
 * Three-valued comparisons of sets of values: what holds for all, for none, or for some.
 */

import type { Outcome } from '../check/state.js';
import {
  type Interval,
  isWithin,
  NON_NEGATIVE,
  overlaps,
  POSITIVE,
  subtractIntervals,
} from '../quantity/interval.js';

/** Whether each value of `a` is at most each of `b`. */
export function notAbove(a: Interval, b: Interval): Outcome {
  return within(subtractIntervals(b, a), NON_NEGATIVE);
}

/** Whether each value of `a` is less than each of `b`. */
export function isBelow(a: Interval, b: Interval): Outcome {
  return within(subtractIntervals(b, a), POSITIVE);
}

/** Whether each value lies in a set. */
export function within(set: Interval, limits: Interval): Outcome {
  if (isWithin(set, limits)) return 'holds';
  return overlaps(set, limits) ? 'open' : 'fails';
}
