/**
 * Axle loops: what differs, in which sense, what bears it, and what was turned by hand.
 */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { DEFAULT_COUPLINGS } from '../../../src/domain/check/coupling.js';
import { isWithin } from '../../../src/domain/quantity/interval.js';
import { about, asked } from './asked.js';

const RUNS = { seed: 417, numRuns: 200 };
const USES = ['road', 'off-road', 'competition'] as const;
const COUPLINGS = [...DEFAULT_COUPLINGS.keys()];
const LOCKING = COUPLINGS.filter((one) => one !== 'open' && one !== 'planetary');

const teeth = fc.integer({ min: 8, max: 60 });
const stage = fc.tuple(teeth, teeth).map(([driven, driving]) => `${driven}/${driving}`);
const stages = fc.array(stage, { minLength: 1, maxLength: 3 });

type Given = Parameters<typeof asked>[1];
const loop = (given: Given) => asked('axle-loop', given);
/** A rear path that lets the front run ahead by so many thousandths. */
const ahead = (perMille: number, given: Given = {}) =>
  loop({ frontStages: ['1'], rearStages: [`${1000 + perMille}/1000`], ...given });

describe('the mismatch', () => {
  test('is none with the rear path that is named, whatever the tyres', () => {
    fc.assert(
      fc.property(stages, fc.integer({ min: 1500, max: 2500 }), (frontStages, millimetres) => {
        const tyres = { frontCircumference: `${millimetres} mm`, rearCircumference: '2000 mm' };
        const matching = loop({ frontStages, ...tyres }).set('matchingRearRatio');
        const rearStages = [matching.low?.toFraction() ?? ''];
        const closed = loop({ frontStages, rearStages, ...tyres });
        expect(closed.word('sense')).toBe('equal');
        expect(about(closed.set('mismatch'))).toBe(0);
      }),
      RUNS,
    );
  });

  test('seen from the other axle is its counterpart', () => {
    fc.assert(
      fc.property(stages, stages, (one, other) => {
        const there = about(loop({ frontStages: one, rearStages: other }).set('mismatch'));
        const back = about(loop({ frontStages: other, rearStages: one }).set('mismatch'));
        expect((1 + there / 100) * (1 + back / 100)).toBeCloseTo(1, 9);
      }),
      RUNS,
    );
  });

  test('of readings contains that of every value read', () => {
    const paths = { frontStages: ['39/10'], rearStages: ['11/10', '39/11'] };
    const of = (front: string, rear: string) =>
      loop({ ...paths, frontCircumference: front, rearCircumference: rear }).set('mismatch');
    const whole = of('1927 ±5 mm', '1931 ±5 mm');
    const inner = fc.integer({ min: -50, max: 50 });
    fc.assert(
      fc.property(inner, inner, (front, rear) => {
        const one = of(`${1927 + front / 10} mm`, `${1931 + rear / 10} mm`);
        expect(isWithin(one, whole)).toBe(true);
      }),
      RUNS,
    );
  });

  test('is the same in inches', () => {
    const paths = { frontStages: ['39/10'], rearStages: ['39/11'] };
    const of = (front: string, rear: string) =>
      loop({ ...paths, frontCircumference: front, rearCircumference: rear }).set('mismatch');
    expect(of('76 in', '75 in')).toEqual(of('1930.4 mm', '1905 mm'));
  });

  test('goes with larger tyres in front', () => {
    const of = (frontTyre: string) =>
      about(
        loop({ frontStages: ['1'], rearStages: ['1'], frontTyre, rearTyre: '205/55R16' }).set(
          'mismatch',
        ),
      );
    expect(of('205/55R16')).toBe(0);
    expect(of('215/55R16')).toBeGreaterThan(0);
    expect(of('195/55R16')).toBeLessThan(0);
    // A bias tyre of the same name rolls less far.
    expect(of('205/55-16')).toBeCloseTo(100 * (2.99 / 3.05 - 1), 9);
  });

  test('has a sense, which readings may leave open', () => {
    expect(ahead(0).word('sense')).toBe('equal');
    expect(ahead(1).word('sense')).toBe('front-faster');
    expect(ahead(-1).word('sense')).toBe('front-slower');
    const open = loop({ frontStages: ['39/10'], rearStages: ['3.9'] });
    expect(open.word('sense')).toBe('undecided');
    expect(open.warnings).toEqual(['not-proven']);
  });
});

describe('what bears it', () => {
  test.each(USES)('by the bands of the couplings, ends included: %s', (use) => {
    for (const [coupling, { warn, refuse }] of DEFAULT_COUPLINGS) {
      const limit = Math.round((use === 'road' ? warn : refuse).valueOf() * 1000);
      const of = (perMille: number) => ahead(perMille, { coupling, use }).outcome('bearsMismatch');
      expect([limit, limit + 1, -limit, -limit - 1].map(of)).toEqual([
        'holds',
        'fails',
        'holds',
        'fails',
      ]);
    }
  });

  test('is open where readings lie on both sides of a limit', () => {
    const given = { coupling: 'locked', rearStages: ['1'], rearCircumference: '2000 mm' };
    const of = (frontCircumference: string) =>
      loop({ frontStages: ['1'], ...given, frontCircumference }).outcome('bearsMismatch');
    expect(of('2020 ±5 mm')).toBe('open');
    expect(of('2005 ±5 mm')).toBe('holds');
    expect(of('2030 ±5 mm')).toBe('fails');
  });

  test('is asked of the road where nothing else is told', () => {
    expect(ahead(15, { coupling: 'clutch' }).outcome('bearsMismatch')).toBe('fails');
    expect(ahead(15, { coupling: 'clutch', use: 'off-road' }).outcome('bearsMismatch')).toBe(
      'holds',
    );
  });

  test('is never told of a coupling that is not named', () => {
    expect(ahead(0).has('bearsMismatch')).toBe(false);
  });

  // loop-05b: tractors lead with the front axle by 1 to 5 per cent; that is no tolerance of a car.
  test.each(COUPLINGS)('a lead as tractors have it: %s', (coupling) => {
    for (const use of USES) {
      expect(ahead(50, { coupling, use }).outcome('bearsMismatch')).toBe('fails');
      for (let lead = 10; lead <= 50; lead += 5) {
        expect(ahead(lead, { coupling, use }).warnings).not.toEqual([]);
      }
    }
    if (LOCKING.includes(coupling)) {
      expect(ahead(11, { coupling, use: 'road' }).outcome('bearsMismatch')).toBe('fails');
    }
  });
});

describe('warnings', () => {
  test('an open centre turns all the time, unless nothing is out', () => {
    for (const coupling of ['open', 'planetary']) {
      expect(ahead(1, { coupling }).warnings).toEqual(['turns-all-the-time']);
      expect(ahead(0, { coupling }).warnings).toEqual([]);
    }
  });

  test.each(LOCKING)(
    '%s winds up above 0.5 per cent, on loose ground alone above 1',
    (coupling) => {
      expect(ahead(5, { coupling }).warnings).toEqual([]);
      expect(ahead(6, { coupling }).warnings).toEqual(['winds-up']);
      expect(ahead(-6, { coupling }).warnings).toEqual(['winds-up']);
      expect(ahead(10, { coupling, use: 'competition' }).warnings).toEqual(['winds-up']);
      expect(ahead(11, { coupling, use: 'competition' }).warnings).toEqual([
        'winds-up',
        'loose-ground-only',
      ]);
      expect(ahead(11, { coupling, use: 'road' }).warnings).toEqual(['winds-up']);
    },
  );

  test('a measured tyre beside one that is computed', () => {
    const given = { frontTyre: '205/55R16', rearCircumference: '1927 mm' };
    expect(ahead(0, given).warnings).toEqual(['measured-beside-computed']);
    expect(ahead(0, { frontTyre: '205/55R16', rearTyre: '205/55R16' }).warnings).toEqual([]);
  });
});

describe('turns counted by hand', () => {
  test('match the stages where they may', () => {
    const given = { frontStages: ['10'], rearStages: ['27/2'], rearTurns: '10' };
    const of = (frontTurns: string) => loop({ ...given, frontTurns }).word('turnsMatch');
    expect(of('13.5')).toBe('consistent');
    expect(of('13.4 ±0.2')).toBe('consistent');
    expect(of('13.4 ±0.05')).toBe('does-not-match');
  });

  test('give the mismatch without any teeth', () => {
    const turned = loop({ rearTurns: '10', frontTurns: '10.2' });
    expect(about(turned.set('measuredMismatch'))).toBeCloseTo(2, 9);
    expect(turned.has('turnsMatch')).toBe(false);
    const worn = { frontTyre: '205/55R16', frontWear: '6 mm', rearTyre: '205/55R16' };
    const tyred = loop({ rearTurns: '10', frontTurns: '10', ...worn });
    expect(about(tyred.set('measuredMismatch'))).toBeCloseTo(-1.899, 3);
  });
});

describe('what cannot be', () => {
  test.each<[Given, RegExp]>([
    [{ frontTyre: '?', rearTyre: '205/55R16' }, /no size of a car tyre/],
    [{ rearTyre: '155R13', frontTyre: '205/55R16' }, /no size of a car tyre/],
    [{ frontTyre: '205/55R16' }, /The tyre of the other axle is told/],
    [{ rearCircumference: '1900 mm' }, /The tyre of the other axle is told/],
    [{ frontTyre: '205/55R16', frontCircumference: '1900 mm' }, /not both/],
    [{ frontCircumference: '1900 mm', frontWear: '1 mm' }, /what was measured has it/],
    [{ rearWear: '1 mm' }, /what was measured has it/],
    [{ frontTurns: '0', rearTurns: '1' }, /impossible/],
  ])('%j', (given, said) => {
    expect(() => loop(given)).toThrow(said);
  });
});
