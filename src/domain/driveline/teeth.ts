/**
 * Teeth and the ratios that they make, each formula once for all calculators.
 *
 * A ratio is driven teeth over driving teeth, exact as a fraction. A decimal is a set: all that is
 * written so. Two gears of one module on fixed centres keep the sum of their teeth, unless their
 * profiles are shifted. No standard governs this; it is arithmetic.
 *
 * Left out: profile shift, helix angles, which of several pairs was ever cut.
 */

import type { Outcome } from '../check/state.js';
import {
  contains,
  hull,
  type Interval,
  isPoint,
  multiplyIntervals,
  overlaps,
  point,
} from '../quantity/interval.js';
import {
  add,
  divide,
  fraction,
  multiply,
  ONE,
  type Rational,
  rational,
  roundDown,
  roundUp,
} from '../quantity/rational.js';
import { roundedInterval, truncatedInterval } from '../quantity/rounding.js';

/** Of a chain; of no stage at all it is 1. */
export function overallRatio(stages: readonly Interval[]): Interval {
  return stages.reduce(multiplyIntervals, point(ONE));
}

export type DecimalReading = 'rounded' | 'truncated' | 'either';

/** What a decimal such as `3.545` stands for, in the way that it was written down. */
export function decimalRatio(text: string, reading: DecimalReading): Interval {
  if (reading === 'rounded') return roundedInterval(text);
  const truncated = truncatedInterval(text);
  // The two overlap, so that nothing lies between them.
  return reading === 'truncated' ? truncated : hull(roundedInterval(text), truncated);
}

export type Comparison = 'equal' | 'consistent' | 'does-not-match';

/** Only exact ratios can be equal: a decimal is at best consistent with another ratio. */
export function comparedRatios(a: Interval, b: Interval): Comparison {
  if (!overlaps(a, b)) return 'does-not-match';
  return isPoint(a) && isPoint(b) ? 'equal' : 'consistent';
}

export interface ToothPair {
  readonly driven: bigint;
  readonly driving: bigint;
}

/** The pairs whose ratio is in a set that has two ends, the smallest pinion first. */
export function toothPairs(
  ratio: Interval,
  { pinions, most }: { readonly pinions: readonly [bigint, bigint]; readonly most: bigint },
): readonly ToothPair[] {
  const pairs: ToothPair[] = [];
  if (ratio.low === null || ratio.high === null) return pairs;
  for (let driving = pinions[0]; driving <= pinions[1]; driving += 1n) {
    const least = wholeUp(multiply(ratio.low, rational(driving)));
    const greatest = wholeDown(multiply(ratio.high, rational(driving)));
    for (let driven = least; driven <= greatest && driven <= most; driven += 1n) {
      if (contains(ratio, fraction(driven, driving))) pairs.push({ driven, driving });
    }
  }
  return pairs;
}

/**
 * The pairs with so many teeth together that come nearest to a ratio, from below and above; one
 * alone where it has the ratio, or where a wheel would have no tooth.
 */
export function nearestPairs(sum: bigint, ratio: Rational): readonly ToothPair[] {
  const driving = divide(rational(sum), add(ONE, ratio));
  const [down, up] = [wholeDown(driving), wholeUp(driving)];
  return [...new Set([down, up])]
    .filter((one) => one > 0n && one < sum)
    .map((one) => ({ driven: sum - one, driving: one }));
}

/** Whether a pair with so many teeth together has a ratio; open where the ratio is not exact. */
export function hasPair(sum: bigint, ratio: Interval): Outcome {
  for (let driving = 1n; driving < sum; driving += 1n) {
    if (!contains(ratio, fraction(sum - driving, driving))) continue;
    return isPoint(ratio) ? 'holds' : 'open';
  }
  return 'fails';
}

/** The greatest whole number that is not above a value. */
export function wholeDown(value: Rational): bigint {
  const whole = roundDown(value, 0);
  return whole.s * whole.n;
}

function wholeUp(value: Rational): bigint {
  const whole = roundUp(value, 0);
  return whole.s * whole.n;
}

export function ratioOfPair({ driven, driving }: ToothPair): Rational {
  return fraction(driven, driving);
}

export function pairText({ driven, driving }: ToothPair): string {
  return `${driven}/${driving}`;
}
