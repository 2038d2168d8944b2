/**
 * Random rationals and intervals, small enough that equal ends, zeros and points really occur.
 */

import fc from 'fast-check';
import type { Interval } from '../../../src/domain/quantity/interval.js';
import { interval, point } from '../../../src/domain/quantity/interval.js';
import type { Rational } from '../../../src/domain/quantity/rational.js';
import {
  add,
  compare,
  equals,
  fraction,
  multiply,
  ONE,
  rational,
  subtract,
} from '../../../src/domain/quantity/rational.js';

export function rationals(): fc.Arbitrary<Rational> {
  return fc
    .tuple(fc.bigInt({ min: -10_000n, max: 10_000n }), fc.bigInt({ min: 1n, max: 400n }))
    .map(([numerator, denominator]) => fraction(numerator, denominator));
}

function ends(): fc.Arbitrary<Rational> {
  return fc
    .tuple(fc.bigInt({ min: -4n, max: 4n }), fc.bigInt({ min: 1n, max: 2n }))
    .map(([numerator, denominator]) => fraction(numerator, denominator));
}

/** Any interval: points, half lines, open and closed, with and without zero. */
export function intervals(): fc.Arbitrary<Interval> {
  const end = fc.option(ends(), { freq: 5 });
  return fc.tuple(end, end, fc.boolean(), fc.boolean()).map(([a, b, lowOpen, highOpen]) => {
    if (a === null || b === null) return interval(a, b, { lowOpen, highOpen });
    if (equals(a, b)) return point(a);
    const [low, high] = compare(a, b) < 0 ? [a, b] : [b, a];
    return interval(low, high, { lowOpen, highOpen });
  });
}

/** Some values of an interval: its ends where they belong to it, and values between. */
export function samplesOf(i: Interval): Rational[] {
  const samples: Rational[] = [];
  if (i.low !== null && !i.lowOpen) samples.push(i.low);
  if (i.high !== null && !i.highOpen) samples.push(i.high);
  const low = i.low ?? (i.high === null ? rational(-9) : subtract(i.high, rational(9)));
  const high = i.high ?? add(low, rational(18));
  for (const part of ['1/1000', '1/7', '1/2', '6/7', '999/1000']) {
    const share = rational(part);
    const between = add(multiply(low, subtract(ONE, share)), multiply(high, share));
    if (compare(low, high) < 0) samples.push(between);
  }
  return samples;
}
