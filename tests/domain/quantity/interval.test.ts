/**
 * Interval arithmetic, by hand and against membership found from the side of the result.
 *
 * Length: one notation for sets serves all the tables.
 */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Interval } from '../../../src/domain/quantity/interval.js';
import {
  absoluteInterval,
  addIntervals,
  alwaysAtLeast,
  closed,
  contains,
  divideIntervals,
  EVERYTHING,
  equalIntervals,
  hull,
  intersect,
  interval,
  isEverything,
  isPoint,
  isWithin,
  maximumInterval,
  middle,
  minimumInterval,
  multiplyIntervals,
  NON_NEGATIVE,
  negateInterval,
  neverAtLeast,
  overlaps,
  POSITIVE,
  point,
  powerInterval,
  reciprocalInterval,
  scaleInterval,
  subtractIntervals,
  width,
} from '../../../src/domain/quantity/interval.js';
import type { Rational } from '../../../src/domain/quantity/rational.js';
import {
  absolute,
  add,
  compare,
  divide,
  equals,
  exactText,
  isZero,
  larger,
  multiply,
  negate,
  ONE,
  power,
  rational,
  smaller,
  subtract,
  ZERO,
} from '../../../src/domain/quantity/rational.js';
import { intervals, samplesOf } from './arbitraries.js';

/** Reads `[1, 2)`, `(-inf, 3]`, so that the tables below look like mathematics. */
function set(text: string): Interval {
  const match = /^([[(])(\S+), (\S+)([\])])$/.exec(text);
  if (match === null) throw new Error(`Not an interval: ${text}`);
  const [, left, low = '', high = '', right] = match;
  return interval(low === '-inf' ? null : rational(low), high === 'inf' ? null : rational(high), {
    lowOpen: left === '(',
    highOpen: right === ')',
  });
}

function show(i: Interval | null): string {
  if (i === null) return 'none';
  const low = i.low === null ? '-inf' : exactText(i.low);
  const high = i.high === null ? 'inf' : exactText(i.high);
  return `${i.lowOpen ? '(' : '['}${low}, ${high}${i.highOpen ? ')' : ']'}`;
}

describe('making intervals', () => {
  it('marks unbounded ends as open, also when they were said to be closed', () => {
    const made = interval(null, null, { lowOpen: false, highOpen: false });
    expect(made).toEqual({ low: null, lowOpen: true, high: null, highOpen: true });
    expect(show(POSITIVE)).toBe('(0, inf)');
    expect(show(NON_NEGATIVE)).toBe('[0, inf)');
  });

  it('refuses a set without values', () => {
    expect(() => closed(rational(2), rational(1))).toThrow(RangeError);
    expect(() => interval(ONE, ONE, { lowOpen: true })).toThrow(RangeError);
    expect(() => interval(ONE, ONE, { highOpen: true })).toThrow(RangeError);
    expect(show(interval(ONE, ONE))).toBe('[1, 1]');
  });

  it('knows a point and everything', () => {
    expect(isPoint(point(ONE))).toBe(true);
    expect(isPoint(set('[1, 2]'))).toBe(false);
    expect(isPoint(EVERYTHING)).toBe(false);
    expect(isEverything(EVERYTHING)).toBe(true);
    expect(isEverything(POSITIVE)).toBe(false);
  });
});

describe('comparing sets', () => {
  it.each([
    ['[1, 2]', '[2, 3]', '[2, 2]'],
    ['[1, 2)', '[2, 3]', 'none'],
    ['[1, 2]', '(2, 3]', 'none'],
    ['[1, 3)', '(1, 3]', '(1, 3)'],
    ['(-inf, 5]', '[1, inf)', '[1, 5]'],
    ['[1, 2]', '[3, 4]', 'none'],
  ])('%s and %s share %s', (a, b, shared) => {
    expect(show(intersect(set(a), set(b)))).toBe(shared);
    expect(show(intersect(set(b), set(a)))).toBe(shared);
    expect(overlaps(set(a), set(b))).toBe(shared !== 'none');
  });

  it.each([
    ['[1, 2)', '[1, 2]', true],
    ['[1, 2]', '[1, 2)', false],
    ['(1, 2]', '[1, 2]', true],
    ['[1, 2]', '(1, 2]', false],
    ['[1, 2]', '(-inf, inf)', true],
    ['(-inf, inf)', '[1, inf)', false],
    ['(-inf, 1)', '(-inf, 1]', true],
  ])('%s lies within %s: %s', (inner, outer, within) => {
    expect(isWithin(set(inner), set(outer))).toBe(within);
  });

  it.each([
    ['[1, 2)', '(3, 4]', '[1, 4]'],
    ['(1, 2)', '[1, 2)', '[1, 2)'],
    ['(-inf, 2)', '[1, 2]', '(-inf, 2]'],
  ])('the hull of %s and %s is %s', (a, b, both) => {
    expect(show(hull(set(a), set(b)))).toBe(both);
    expect(show(hull(set(b), set(a)))).toBe(both);
  });

  it.each([
    ['[5, 6]', '5', true, false],
    ['(5, 6]', '5', true, false],
    ['[4, 5]', '5', false, false],
    ['[4, 5)', '5', false, true],
    ['[4, 4.9]', '5', false, true],
    ['(-inf, inf)', '5', false, false],
    ['(-inf, 5)', '5', false, true],
  ])('of %s, every value is %s or more: %s; none is: %s', (i, r, always, never) => {
    expect(alwaysAtLeast(set(i), rational(r))).toBe(always);
    expect(neverAtLeast(set(i), rational(r))).toBe(never);
  });

  it('gives width and middle, or null for an unbounded set', () => {
    expect(width(set('(1, 4]'))).toEqual(rational(3));
    expect(middle(set('(1, 4]'))).toEqual(rational('2.5'));
    expect(width(POSITIVE)).toBeNull();
    expect(middle(POSITIVE)).toBeNull();
  });

  it('agrees with membership on all samples', () => {
    fc.assert(
      fc.property(intervals(), intervals(), (a, b) => {
        const shared = intersect(a, b);
        for (const r of [...samplesOf(a), ...samplesOf(b)]) {
          const inBoth = contains(a, r) && contains(b, r);
          expect(shared !== null && contains(shared, r)).toBe(inBoth);
          if (contains(a, r) || contains(b, r)) expect(contains(hull(a, b), r)).toBe(true);
          if (isWithin(a, b) && contains(a, r)) expect(contains(b, r)).toBe(true);
        }
        expect(isWithin(a, b) && isWithin(b, a)).toBe(equalIntervals(a, b));
        expect(isWithin(a, b)).toBe(shared !== null && equalIntervals(shared, a));
      }),
    );
  });
});

describe('arithmetic, worked by hand', () => {
  it.each([
    ['[0, 1]', '(2, inf)', '[0, inf)', 'zero annihilates an unbounded factor'],
    ['(0, 1]', '(2, inf)', '(0, inf)', 'zero is only approached'],
    ['[0, 0]', '(-inf, inf)', '[0, 0]', 'zero times anything is zero'],
    ['(0, 1)', '[0, 5)', '[0, 5)', 'a zero in the other factor is enough'],
    ['[2, 3)', '[4, 5]', '[8, 15)', 'an open end opens its product'],
    ['[-2, 3)', '(-1, 4]', '[-8, 12)', 'mixed signs'],
    ['[-2, 2)', '[-3, 3]', '[-6, 6]', 'an end reached by one of two corners is reached'],
    ['(-inf, 1]', '[-1, 2]', '(-inf, inf)', 'both directions'],
    ['(-inf, -1]', '[-2, -1)', '(1, inf)', 'two negatives'],
    ['(-1, 0]', '[5, inf)', '(-inf, 0]', 'a closed zero at the top'],
  ])('%s times %s is %s: %s', (a, b, product) => {
    expect(show(multiplyIntervals(set(a), set(b)))).toBe(product);
    expect(show(multiplyIntervals(set(b), set(a)))).toBe(product);
  });

  it.each([
    ['(0, 4]', '[0.25, inf)'],
    ['(0, inf)', '(0, inf)'],
    ['[2, 4)', '(0.25, 0.5]'],
    ['[-4, 0)', '(-inf, -0.25]'],
    ['(-inf, -2]', '[-0.5, 0)'],
    ['[5, inf)', '(0, 0.2]'],
  ])('one by %s is %s', (i, reciprocal) => {
    expect(show(reciprocalInterval(set(i)))).toBe(reciprocal);
  });

  it.each(['[0, 1]', '[0, 0]', '(-1, 1)', '(-inf, inf)', '[-3, 0]'])(
    'nothing is known of a number by %s, and one by it is refused',
    (i) => {
      expect(show(divideIntervals(set('[1, 2]'), set(i)))).toBe('(-inf, inf)');
      expect(show(powerInterval(set(i), -2))).toBe('(-inf, inf)');
      expect(() => reciprocalInterval(set(i))).toThrow(RangeError);
    },
  );

  it.each([
    ['[-2, 3)', 2, '[0, 9)'],
    ['(-3, 2]', 2, '[0, 9)'],
    ['(-3, -2]', 2, '[4, 9)'],
    ['(-3, 3]', 2, '[0, 9]'],
    ['[-2, 3)', 3, '[-8, 27)'],
    ['(0, 2]', -1, '[0.5, inf)'],
    ['(0, 2]', -2, '[0.25, inf)'],
    ['[-2, 0)', -3, '(-inf, -0.125]'],
    ['(-inf, 1)', 2, '[0, inf)'],
    ['(-1, 7)', 0, '[1, 1]'],
  ])('%s to the power %d is %s', (i, exponent, result) => {
    expect(show(powerInterval(set(i), exponent))).toBe(result);
  });

  it('refuses exponents that are no small integers, also of unbounded sets', () => {
    for (const exponent of [0.5, 65, -65]) {
      expect(() => powerInterval(EVERYTHING, exponent)).toThrow(RangeError);
      expect(() => powerInterval(set('[1, 2]'), exponent)).toThrow(RangeError);
    }
  });

  it('turns and scales', () => {
    expect(show(scaleInterval(set('[1, 2)'), rational(-2)))).toBe('(-4, -2]');
    expect(show(scaleInterval(EVERYTHING, ZERO))).toBe('[0, 0]');
    expect(show(negateInterval(set('(1, inf)')))).toBe('(-inf, -1)');
    expect(show(subtractIntervals(set('[1, 2)'), set('[1, inf)')))).toBe('(-inf, 1)');
    expect(show(divideIntervals(set('[1, 2)'), set('(0, 4]')))).toBe('[0.25, inf)');
    expect(show(absoluteInterval(set('(-3, 2]')))).toBe('[0, 3)');
    expect(show(absoluteInterval(set('[-3, 0)')))).toBe('(0, 3]');
    expect(show(minimumInterval(set('(1, 5]'), set('[1, 4)')))).toBe('[1, 4)');
    expect(show(maximumInterval(set('(1, 5]'), set('[1, 4)')))).toBe('(1, 5]');
  });
});

type Operation = (a: Interval, b: Interval) => Interval;
type OnValues = (x: Rational, y: Rational) => Rational;
type Reaches = (z: Rational, a: Interval, b: Interval) => boolean;

/** Whether some x in `a` and y in `b` with x * y = z exist, found from the side of the result. */
function productReaches(z: Rational, a: Interval, b: Interval): boolean {
  if (isZero(z)) return contains(a, ZERO) || contains(b, ZERO);
  return [POSITIVE, negateInterval(POSITIVE)].some((side) => {
    const part = intersect(a, side);
    return part !== null && overlaps(scaleInterval(reciprocalInterval(part), z), b);
  });
}

function atLeast(r: Rational): Interval {
  return interval(r, null);
}

const binary: readonly (readonly [string, Operation, OnValues, Reaches])[] = [
  ['sum', addIntervals, add, (z, a, b) => overlaps(a, subtractIntervals(point(z), b))],
  ['difference', subtractIntervals, subtract, (z, a, b) => overlaps(a, addIntervals(point(z), b))],
  ['product', multiplyIntervals, multiply, productReaches],
  [
    'minimum',
    minimumInterval,
    smaller,
    (z, a, b) =>
      (contains(a, z) && overlaps(b, atLeast(z))) || (contains(b, z) && overlaps(a, atLeast(z))),
  ],
  [
    'maximum',
    maximumInterval,
    larger,
    (z, a, b) => {
      const atMost = interval(null, z);
      return (contains(a, z) && overlaps(b, atMost)) || (contains(b, z) && overlaps(a, atMost));
    },
  ],
];

/** Both ends, and values a little within and without them. */
function aroundEnds(i: Interval): Rational[] {
  const step = rational('1/1024');
  return [i.low, i.high].flatMap((end) =>
    end === null ? [] : [end, add(end, step), subtract(end, step)],
  );
}

describe('arithmetic on sets is sound and tight', () => {
  it.each(binary)('%s: every pair of values lands inside', (_, onSets, onValues) => {
    fc.assert(
      fc.property(intervals(), intervals(), (a, b) => {
        const result = onSets(a, b);
        for (const x of samplesOf(a)) {
          for (const y of samplesOf(b)) expect(contains(result, onValues(x, y))).toBe(true);
        }
      }),
    );
  });

  it.each(binary)('%s: at its ends it holds just the values that are reached', (_, ...rest) => {
    const [onSets, , reaches] = rest;
    fc.assert(
      fc.property(intervals(), intervals(), (a, b) => {
        const result = onSets(a, b);
        for (const z of [...aroundEnds(result), ZERO, ONE]) {
          expect(contains(result, z)).toBe(reaches(z, a, b));
        }
        // What the result leaves unbounded really has no bound.
        const far = rational(1_000_000);
        if (result.high === null) expect(reaches(far, a, b)).toBe(true);
        if (result.low === null) expect(reaches(negate(far), a, b)).toBe(true);
      }),
      { numRuns: 400 },
    );
  });

  it('quotient: values land inside, and its ends are reached just when they belong to it', () => {
    fc.assert(
      fc.property(intervals(), intervals(), (a, b) => {
        const result = divideIntervals(a, b);
        for (const x of samplesOf(a)) {
          for (const y of samplesOf(b)) {
            if (!isZero(y)) expect(contains(result, divide(x, y))).toBe(true);
          }
        }
        if (contains(b, ZERO)) return;
        for (const z of aroundEnds(result)) {
          // x / y = z for some pair just when x = z * y for it.
          expect(contains(result, z)).toBe(overlaps(a, scaleInterval(b, z)));
        }
      }),
      { numRuns: 400 },
    );
  });

  it.each([-3, -2, -1, 1, 2, 3])('power %d: inside and tight', (exponent) => {
    fc.assert(
      fc.property(intervals(), (i) => {
        fc.pre(exponent > 0 || !contains(i, ZERO));
        const result = powerInterval(i, exponent);
        for (const x of samplesOf(i)) expect(contains(result, power(x, exponent))).toBe(true);
        const roots = [i.low, i.high, ZERO].flatMap((r) => (r === null ? [] : [r, negate(r)]));
        for (const end of [result.low, result.high]) {
          if (end === null) continue;
          const isReached = roots.some(
            (r) =>
              contains(i, r) && (exponent > 0 || !isZero(r)) && equals(power(r, exponent), end),
          );
          expect(contains(result, end)).toBe(isReached);
        }
      }),
    );
  });

  it('absolute value: inside and tight', () => {
    fc.assert(
      fc.property(intervals(), (i) => {
        const result = absoluteInterval(i);
        for (const x of samplesOf(i)) expect(contains(result, absolute(x))).toBe(true);
        for (const z of aroundEnds(result)) {
          const isReached = compare(z, ZERO) >= 0 && (contains(i, z) || contains(i, negate(z)));
          expect(contains(result, z)).toBe(isReached);
        }
      }),
    );
  });

  it('a narrower operand never widens the result', () => {
    fc.assert(
      fc.property(intervals(), intervals(), intervals(), (a, b, c) => {
        const narrow = intersect(a, c);
        fc.pre(narrow !== null);
        for (const [, onSets] of binary) {
          expect(isWithin(onSets(narrow, b), onSets(a, b))).toBe(true);
        }
        expect(isWithin(divideIntervals(b, narrow), divideIntervals(b, a))).toBe(true);
      }),
    );
  });
});
