/**
 * What centres a wheel.
 */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { GivenTexts } from '../../../src/domain/driveline/read-given.js';
import { asked } from './asked.js';

const RUNS = { seed: 5410, numRuns: 200 };

const centring = (bore: string, more: GivenTexts = {}) =>
  asked('wheel-centring', { spigot: '66.6 mm', bore, ...more });

describe('a bore over a spigot of 66.6 mm', () => {
  test.each([
    ['66.59 mm', 'fails', 'fails', 'none'],
    ['66.6 mm', 'holds', 'holds', 'hub'],
    ['66.7 mm', 'holds', 'holds', 'hub'],
    ['66.71 mm', 'holds', 'fails', 'ring-or-seats'],
    ['66.6 ±0.05 mm', 'open', 'open', 'open'],
    ['66.7 ±0.05 mm', 'holds', 'open', 'open'],
    ['67 ±0.05 mm', 'holds', 'fails', 'ring-or-seats'],
  ])('of %s', (bore, passes, hub, by) => {
    const result = centring(bore);
    expect(result.outcome('borePasses')).toBe(passes);
    expect(result.outcome('isHubCentric')).toBe(hub);
    expect(result.word('centring')).toBe(by);
  });

  test('is centred by hubs only where it passes, whatever the sizes', () => {
    fc.assert(
      fc.property(fc.integer({ min: -30, max: 30 }), (hundredths) => {
        const result = centring(`${(66.6 + hundredths / 100).toFixed(2)} mm`);
        expect(result.outcome('borePasses')).toBe(hundredths >= 0 ? 'holds' : 'fails');
        const isHub = hundredths >= 0 && hundredths <= 10;
        expect(result.outcome('isHubCentric')).toBe(isHub ? 'holds' : 'fails');
        expect(result.word('centring') === 'hub').toBe(isHub);
      }),
      RUNS,
    );
  });

  test('says the same in other units', () => {
    const inches = asked('wheel-centring', { spigot: '2.6 in', bore: '2.7 in' });
    const metric = asked('wheel-centring', { spigot: '66.04 mm', bore: '68.58 mm' });
    expect(inches.set('play')).toEqual(metric.set('play'));
  });

  test('with flat seats takes nothing but a ring', () => {
    const flat = centring('67.1 mm', { seat: 'flat' });
    expect(flat.word('centring')).toBe('ring');
    expect(flat.warnings).toEqual(['flat-seats-do-not-centre']);
    expect(centring('66.65 mm', { seat: 'flat' }).warnings).toEqual([]);
  });

  test('is warned of where it is too small, or seats centre alone', () => {
    expect(centring('66.5 mm').warnings).toEqual(['bore-too-small']);
    expect(centring('66.6 ±0.05 mm').warnings).toEqual(['bore-too-small']);
    expect(centring('67.1 mm').warnings).toEqual(['seats-centre-alone']);
  });

  test.each([
    [{ ringInner: '66.65 mm', ringOuter: '67.05 mm' }, 'holds', []],
    [{ ringInner: '66.75 mm', ringOuter: '67.05 mm' }, 'fails', ['seats-centre-alone']],
    [{ ringInner: '66.65 mm', ringOuter: '67.15 mm' }, 'fails', ['seats-centre-alone']],
    [{ ringInner: '66.65 ±0.1 mm', ringOuter: '67.05 mm' }, 'open', ['seats-centre-alone']],
  ])('of 67.1 mm with the ring %j: %s', (ring, outcome, warnings) => {
    const result = centring('67.1 mm', ring);
    expect(result.outcome('ringCentres')).toBe(outcome);
    expect(result.warnings).toEqual(warnings);
  });

  test('takes no ring that is wider inside than outside', () => {
    expect(() => centring('67.1 mm', { ringInner: '68 mm', ringOuter: '67 mm' })).toThrow(
      /smaller than its outer/,
    );
  });
});
