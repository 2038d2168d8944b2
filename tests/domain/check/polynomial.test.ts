/**
 * Ranges of polynomials: exact where the head of the module says so, enclosing everywhere.
 */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  constant,
  minus,
  type Polynomial,
  plus,
  quotient,
  rangeOf,
  signatureOf,
  times,
  timesNumber,
  unknownOf,
  valueAt,
} from '../../../src/domain/check/polynomial.js';
import {
  closed,
  contains,
  type Interval,
  interval,
} from '../../../src/domain/quantity/interval.js';
import { fraction, type Rational, rational } from '../../../src/domain/quantity/rational.js';

const NAMES = ['x', 'y', 'z'] as const;
const r = (text: string): Rational => rational(text);

const small = fc.integer({ min: -6, max: 6 });
const monomials = fc.array(
  fc.record({
    coefficient: small,
    powers: fc.record({ x: fc.nat(1), y: fc.nat(1), z: fc.nat(1) }),
  }),
  { maxLength: 5 },
);

function build(parts: readonly { coefficient: number; powers: Record<string, number> }[]) {
  let sum: Polynomial = [];
  for (const { coefficient, powers } of parts) {
    let term: Polynomial = constant(rational(coefficient));
    for (const name of NAMES) if (powers[name] === 1) term = times(term, unknownOf(name));
    sum = plus(sum, term);
  }
  return sum;
}

const box = fc.record({
  x: fc.tuple(small, fc.nat(4)),
  y: fc.tuple(small, fc.nat(4)),
  z: fc.tuple(small, fc.nat(4)),
});

describe('range of a multilinear polynomial', () => {
  it('contains every sampled value, and attains its ends', () => {
    fc.assert(
      fc.property(monomials, box, (parts, ends) => {
        const polynomial = build(parts);
        const domain = (name: string): Interval => {
          const [low, width] = ends[name as 'x'];
          return closed(rational(low), rational(low + width));
        };
        const range = rangeOf(polynomial, domain);
        const seen: Rational[] = [];
        for (const at of grid(ends, 2)) seen.push(valueAt(polynomial, at));
        for (const value of seen) expect(contains(range, value)).toBe(true);
        const lowest = seen.reduce((a, b) => (a.compare(b) <= 0 ? a : b));
        const highest = seen.reduce((a, b) => (a.compare(b) >= 0 ? a : b));
        expect(range.low?.toFraction()).toBe(lowest.toFraction());
        expect(range.high?.toFraction()).toBe(highest.toFraction());
      }),
      { numRuns: 300 },
    );
  });
});

/** Points of the box, `steps` stretches to each side; its corners are among them. */
function* grid(ends: Record<'x' | 'y' | 'z', [number, number]>, steps: number) {
  const axis = ([low, width]: [number, number]) =>
    Array.from({ length: steps + 1 }, (_, index) =>
      rational(low).add(fraction(BigInt(width * index), BigInt(steps))),
    );
  for (const x of axis(ends.x)) {
    for (const y of axis(ends.y)) {
      for (const z of axis(ends.z)) {
        yield new Map([
          ['x', x],
          ['y', y],
          ['z', z],
        ]);
      }
    }
  }
}

describe('cancelling', () => {
  it('leaves nothing of an unknown that both sides have', () => {
    const front = times(unknownOf('transfer'), constant(r('39/10')));
    const rear = times(unknownOf('transfer'), constant(r('39/10')));
    expect(signatureOf(quotient(rear, front) ?? [])).toBe(signatureOf(constant(r('1'))));
    expect(minus(rear, front)).toEqual([]);
  });

  it('has no quotient by a sum or by nothing', () => {
    expect(quotient(unknownOf('x'), plus(unknownOf('x'), unknownOf('y')))).toBeNull();
    expect(quotient(unknownOf('x'), [])).toBeNull();
  });
});

describe('ends of a range', () => {
  const domains = (name: string): Interval =>
    name === 'open'
      ? interval(r('0'), r('1'), { lowOpen: true, highOpen: true })
      : closed(r('0'), r('1'));

  it('are open where only an open corner attains them', () => {
    const range = rangeOf(minus(unknownOf('open'), constant(r('1'))), domains);
    expect(range.lowOpen && range.highOpen).toBe(true);
  });

  it('are closed where an edge of the box attains them, though its corners are open', () => {
    // open * shut - open: 0 for shut = 1 whatever open is, and the same unknown twice.
    const polynomial = minus(times(unknownOf('open'), unknownOf('shut')), unknownOf('open'));
    const range = rangeOf(polynomial, domains);
    expect(range.high?.toFraction()).toBe('0');
    expect(range.highOpen).toBe(false);
  });

  it('are unbounded where an unknown is', () => {
    const range = rangeOf(timesNumber(unknownOf('x'), r('-2')), () => interval(r('3'), null));
    expect(range.low).toBeNull();
    expect(range.high?.toFraction()).toBe('-6');
  });
});

describe('repeated unknowns that are not multilinear', () => {
  it('are enclosed, never narrowed', () => {
    // x / y + y / x >= 2 for positive x, y; the enclosure may be wider but must contain it.
    const ratio = quotient(unknownOf('x'), unknownOf('y')) ?? [];
    const inverse = quotient(unknownOf('y'), unknownOf('x')) ?? [];
    const range = rangeOf(plus(ratio, inverse), () => closed(r('1'), r('2')));
    expect(contains(range, r('2'))).toBe(true);
    expect(contains(range, r('5/2'))).toBe(true);
  });
});
