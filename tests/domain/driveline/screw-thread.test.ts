/**
 * Metric threads beyond their check values.
 */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { preloadOf, tighteningTorque } from '../../../src/domain/driveline/bolted-joint.js';
import {
  meetingOf,
  readThread,
  stressArea,
  threadDiameters,
} from '../../../src/domain/driveline/screw-thread.js';
import { isWithin, point } from '../../../src/domain/quantity/interval.js';
import { compare, fraction } from '../../../src/domain/quantity/rational.js';
import { about, asked } from './asked.js';

const RUNS = { numRuns: 300, seed: 7 };

const threads = fc
  .tuple(fc.bigInt({ min: 3n, max: 60n }), fc.bigInt({ min: 1n, max: 8n }))
  .map(([diameter, quarters]) => ({
    diameter: fraction(diameter, 1n),
    pitch: fraction(quarters, 4n),
  }))
  .filter(({ diameter, pitch }) => compare(pitch.mul(3), diameter) < 0);

describe('a thread', () => {
  test.each([
    ['M12x1.25', 'm12 × 1.250'],
    ['M10', 'M10x1.5'],
  ])('%s is %s', (one, other) => {
    expect(asked('screw-thread', { thread: one, other }).outcome('mates')).toBe('holds');
  });

  test.each(['?', 'G1/2', 'M12x0', 'M12x11', 'M13', 'M1x'])('%s is none', (text) => {
    expect(readThread(text)).toBeNull();
    expect(() => asked('screw-thread', { thread: text })).toThrow('no metric thread');
  });

  test('of the same diameter and another pitch starts and strips', () => {
    const near = asked('screw-thread', { thread: 'M12x1.25', other: 'M12x1.5' });
    expect([near.outcome('mates'), near.warnings]).toEqual(['fails', ['starts-and-strips']]);
    const far = asked('screw-thread', { thread: 'M12x1.25', other: 'M10x1.25' });
    expect([far.outcome('mates'), far.warnings]).toEqual(['fails', []]);
  });

  test('mates with another as that does with it', () => {
    fc.assert(
      fc.property(threads, threads, (a, b) => {
        expect(meetingOf(a, b)).toBe(meetingOf(b, a));
      }),
      RUNS,
    );
  });

  test('has its stress area between core and pitch diameter', () => {
    fc.assert(
      fc.property(threads, (thread) => {
        const { pitch, externalMinor } = threadDiameters(thread);
        const area = about(stressArea(thread));
        const circle = (diameter: number) => (Math.PI / 4) * diameter ** 2;
        expect(area).toBeGreaterThan(circle(externalMinor.valueOf()));
        expect(area).toBeLessThan(circle(pitch.valueOf()));
      }),
      RUNS,
    );
  });

  test('M12x1 has 96.1 mm2, not the 98.0 that one copy of a table prints', () => {
    const area = about(asked('screw-thread', { thread: 'M12x1' }).set('stressArea'));
    expect(area).toBeCloseTo(96.1, 1);
    expect(Math.abs(area - 98)).toBeGreaterThan(1.5);
  });
});

describe('a bolt', () => {
  const bolt = { thread: 'M12x1.75', strengthClass: '8.8' };

  test('is told each time that the maker comes first', () => {
    expect(asked('bolted-joint', bolt).warnings).toEqual(['makers-figure-wins']);
  });

  test('may reach its proof load at a torque that only the scatter carries there', () => {
    const outcomes = ['60 N.m', '110 N.m', '200 N.m'].map((torque) => {
      const result = asked('bolted-joint', { ...bolt, torque });
      return [result.outcome('staysBelowProof'), result.warnings.includes('may-yield')];
    });
    expect(outcomes).toEqual([
      ['holds', false],
      ['open', true],
      ['fails', true],
    ]);
  });

  test('takes a nut factor for more than a state, and says so', () => {
    const both = asked('bolted-joint', { ...bolt, condition: 'black', nutFactor: '0.15' });
    expect(both.warnings).toContain('factor-wins');
    expect(about(both.set('nutFactorTaken'))).toBe(0.15);
  });

  test('gives the preload back that its torque was for', () => {
    const positive = fc.bigInt({ min: 1n, max: 100_000n }).map((n) => point(fraction(n, 100n)));
    fc.assert(
      fc.property(positive, positive, positive, (factor, preload, diameter) => {
        const torque = tighteningTorque(factor, preload, diameter);
        expect(isWithin(preload, preloadOf(torque, factor, diameter))).toBe(true);
      }),
      RUNS,
    );
  });

  test('bolt-07: in inches and pounds, 0.2 x 1275 lbf x 0.19 in is 48.5 lbf.in', () => {
    // Mechanical Fastening, Joining, and Assembly, p. 85; value read in the source.
    const [pound, inch] = [4.4482216152605, 25.4];
    const [factor, force, diameter] = [fraction(1n, 5n), 1275 * pound, 0.19 * inch];
    const rounded = (value: number) => point(fraction(BigInt(Math.round(value * 1e9)), 10n ** 9n));
    const torque = tighteningTorque(point(factor), rounded(force), rounded(diameter));
    expect(about(torque) / (pound * inch * 0.001)).toBeCloseTo(48.45, 2);
  });

  test('of an unreadable thread is refused', () => {
    expect(() => asked('bolted-joint', { ...bolt, thread: '?' })).toThrow('no metric thread');
  });
});
