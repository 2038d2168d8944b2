/**
 * Tyres by their designation: how it is read, what follows from it, and what it is held against.
 */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readTyre, rimDiameter } from '../../../src/domain/driveline/tyre-size.js';
import {
  GREATEST_LOAD_INDEX,
  LEAST_LOAD_INDEX,
  loadOf,
} from '../../../src/domain/driveline/tyre-tables.js';
import { isWithin } from '../../../src/domain/quantity/interval.js';
import { rational } from '../../../src/domain/quantity/rational.js';
import { about, asked } from './asked.js';

const RUNS = { seed: 5516, numRuns: 200 };
type Given = Parameters<typeof asked>[1];
const tyre = (designation: string, given: Given = {}) => asked('tyre', { designation, ...given });

const width = fc.integer({ min: 27, max: 67 }).map((steps) => steps * 5);
const aspect = fc.integer({ min: 5, max: 17 }).map((steps) => steps * 5);
const rim = fc.integer({ min: 12, max: 22 });

describe('a designation', () => {
  test.each([
    ['205/55R16', '205/55R16'],
    ['205/55 R 16 91 v', '205/55R16 91V'],
    ['205/55R1691V', '205/55R16 91V'],
    ['P205/55R16 91V', '205/55R16 91V'],
    ['205/55R16 94V XL', '205/55R16 94V'],
    ['205/55 R16 94V EXTRA LOAD', '205/55R16 94V'],
    ['245/40ZR18', '245/40ZR18'],
    ['245/40 ZR 18 (97Y)', '245/40ZR18 (97Y)'],
    ['205/70-14', '205/70-14'],
    ['205/70D14', '205/70D14'],
    ['205/70B14', '205/70B14'],
    ['305/55R19.5', '305/55R19.5'],
  ])('%s is written %s', (given, written) => {
    expect(tyre(given).word('written')).toBe(written);
  });

  test.each([
    '?',
    '',
    '155R13',
    'LT205/75R16',
    '195/70R15C',
    '205/55R16C 91V',
    '220/55R390',
    '205/55R16 9V',
    '205/55R16 49V',
    '205/55R16 127V',
    '205/55R16 91O',
    '205/55R16 (91V)',
    '205/55R16 (91Y',
    '205/00R16',
    '205/55R00',
    '205/55R16.3',
    '205-55R16',
    '-205/55R16',
  ])('is not “%s”', (given) => {
    expect(readTyre(given)).toBeNull();
    expect(() => tyre(given)).toThrow(/no size of a car tyre/);
    expect(() => tyre('205/55R16', { formerTyre: given })).toThrow(/no size of a car tyre/);
  });

  test.each([
    ['205/55R16', 'radial', 3.05],
    ['205/55ZR16', 'radial', 3.05],
    ['205/55B16', 'bias-belted', 2.99],
    ['205/55D16', 'bias', 2.99],
    ['205/55-16', 'bias', 2.99],
  ])('%s is %s', (given, construction, factor) => {
    const found = tyre(given);
    expect(found.word('construction')).toBe(construction);
    expect(about(found.set('rollingFactor'))).toBeCloseTo(factor, 12);
    expect(found.warnings.includes('not-radial')).toBe(construction !== 'radial');
  });
});

describe('sizes', () => {
  test('grow with width, height and rim, and shrink by twice the wear', () => {
    fc.assert(
      fc.property(width, aspect, rim, fc.integer({ min: 1, max: 7 }), (w, a, r, worn) => {
        const of = (text: string, given: Given = {}) =>
          about(tyre(text, given).set('freeDiameter'));
        const one = of(`${w}/${a}R${r}`);
        expect(of(`${w + 10}/${a}R${r}`)).toBeGreaterThan(one);
        expect(of(`${w}/${a + 5}R${r}`)).toBeGreaterThan(one);
        expect(of(`${w}/${a}R${r + 1}`) - one).toBeCloseTo(25.4, 9);
        expect(one - of(`${w}/${a}R${r}`, { wear: `${worn} mm` })).toBeCloseTo(2 * worn, 9);
      }),
      RUNS,
    );
  });

  test('roll as far as a rigid wheel of their radius', () => {
    fc.assert(
      fc.property(width, aspect, rim, (w, a, r) => {
        const found = tyre(`${w}/${a}R${r}`);
        const rolled = about(found.set('rollingCircumference'));
        expect(2 * Math.PI * about(found.set('rollingRadius'))).toBeCloseTo(rolled, 6);
        expect(rolled).toBeCloseTo(3.05 * about(found.set('freeDiameter')), 6);
      }),
      RUNS,
    );
  });

  test('of a tread read as a set contain those of each reading, in any unit', () => {
    const of = (wear: string) => tyre('205/55R16', { wear }).set('rollingCircumference');
    const whole = of('2 ±0.5 mm');
    for (const one of ['1.5 mm', '2 mm', '2.5 mm', '0.08 in']) {
      expect(isWithin(of(one), whole)).toBe(true);
    }
    expect(isWithin(of('2.6 mm'), whole)).toBe(false);
    expect(of('0.1 in')).toEqual(of('2.54 mm'));
  });

  // From memory of UN Regulation 30: what its tables call d.
  test.each([
    ['10', 254],
    ['12', 305],
    ['13', 330],
    ['14', 356],
    ['15', 381],
    ['16', 406],
    ['17', 432],
    ['18', 457],
    ['19', 483],
    ['20', 508],
    ['21', 533],
    ['22', 559],
  ])('a rim of %s may count as %i mm', (code, millimetres) => {
    expect(rimDiameter(rational(code), 'whole')).toEqual(rational(millimetres));
    expect(Math.abs(rimDiameter(rational(code)).valueOf() - millimetres)).toBeLessThanOrEqual(0.5);
  });
});

describe('load indices', () => {
  test('all follow the series that they were rounded from, so that 103 is never 857', () => {
    const loads: number[] = [];
    for (let index = LEAST_LOAD_INDEX; index <= GREATEST_LOAD_INDEX; index += 1) {
      const load = loadOf(index)?.valueOf() ?? Number.NaN;
      // 80 steps of the index are a factor of ten, with 450 kg at 80.
      const series = 450 * 10 ** ((index - 80) / 80);
      expect([index, Math.abs(load / series - 1) < 0.018]).toEqual([index, true]);
      loads.push(load);
    }
    // A step of the series is 2.9 per cent; 850 to 857 would be less than one.
    const isStep = (from: number, to: number) => to / from > 1.022 && to / from < 1.037;
    loads.slice(1).forEach((load, index) => {
      expect([load, isStep(loads[index] ?? Number.NaN, load)]).toEqual([load, true]);
    });
    expect(isStep(850, 857)).toBe(false);
  });

  test('end where the table does', () => {
    expect(loadOf(LEAST_LOAD_INDEX)).toEqual(rational(190));
    expect(loadOf(GREATEST_LOAD_INDEX)).toEqual(rational(1700));
    expect([loadOf(LEAST_LOAD_INDEX - 1), loadOf(GREATEST_LOAD_INDEX + 1)]).toEqual([null, null]);
    expect(() => tyre('205/55R16', { loadIndex: 49 })).toThrow(/impossible/);
    expect(() => tyre('205/55R16', { loadIndex: 127 })).toThrow(/impossible/);
  });

  test('carry an axle by two', () => {
    const of = (axleLoad: string) => tyre('205/55R16 91V', { axleLoad }).outcome('carriesAxle');
    expect(of('1230 kg')).toBe('holds');
    expect(of('1225 ±10 kg')).toBe('open');
    expect(of('1231 kg')).toBe('fails');
  });

  test('are told once', () => {
    expect(tyre('205/55R16').has('load')).toBe(false);
    expect(tyre('205/55R16', { loadIndex: 91 }).has('carriesAxle')).toBe(false);
    expect(tyre('205/55R16 91V', { loadIndex: 91, speedSymbol: 'V' }).has('load')).toBe(true);
    expect(() => tyre('205/55R16 91V', { loadIndex: 92 })).toThrow(/already says 91/);
    expect(() => tyre('205/55R16 91V', { speedSymbol: 'H' })).toThrow(/already says V/);
  });
});

describe('speeds', () => {
  const rated = (designation: string, topSpeed: string) =>
    tyre(designation, { topSpeed }).outcome('ratedForSpeed');

  test('hold up to that of the symbol', () => {
    expect(rated('205/55R16 91H', '210 km/h')).toBe('holds');
    expect(rated('205/55R16 91H', '210 ±1 km/h')).toBe('open');
    expect(rated('205/55R16 91H', '211 km/h')).toBe('fails');
    expect(rated('205/55R16 91H', '130 mph')).toBe('holds');
    expect(tyre('205/55R16').has('speed')).toBe(false);
  });

  test('are open above what ZR and brackets say', () => {
    expect(rated('245/40ZR18', '240 km/h')).toBe('holds');
    expect(rated('245/40ZR18', '241 km/h')).toBe('open');
    expect(rated('245/40ZR18 (97Y)', '300 km/h')).toBe('holds');
    expect(rated('245/40ZR18 (97Y)', '320 km/h')).toBe('open');
    expect(tyre('245/40ZR18').warnings).toEqual(['speed-of-maker']);
    const told = tyre('245/40ZR18', { speedSymbol: 'W' });
    expect(about(told.set('speed'))).toBe(270);
    expect(told.warnings).toEqual([]);
  });

  test.each([
    ['H', '210 km/h', '211 km/h'],
    ['V', '210 km/h', '211 km/h'],
    ['W', '240 km/h', '241 km/h'],
    ['Y', '270 km/h', '271 km/h'],
  ])('%s bears its whole load up to %s', (symbol, slow, fast) => {
    const of = (topSpeed: string) => tyre(`205/55R16 91${symbol}`, { topSpeed }).warnings;
    expect(of(slow)).toEqual([]);
    expect(of(fast)).toEqual(['bears-less-when-fast']);
  });
});

describe('rims', () => {
  const span = { narrowestRim: '5.5 in', widestRim: '7.5 in' };
  const fits = (rimWidth: string) => tyre('205/55R16', { ...span, rimWidth }).outcome('rimFits');

  test('fit from the narrowest to the widest', () => {
    expect(['5.5 in', '6.5 in', '7.5 in', '165.1 mm'].map(fits)).toEqual(Array(4).fill('holds'));
    expect(['5 in', '8 in'].map(fits)).toEqual(['fails', 'fails']);
    expect(fits('190 ±2 mm')).toBe('open');
    expect(tyre('205/55R16', { rimWidth: '6 in' }).has('rimFits')).toBe(false);
  });

  test('have no span that runs backwards', () => {
    const backwards = { rimWidth: '6 in', narrowestRim: '7 in', widestRim: '6 in' };
    expect(() => tyre('205/55R16', backwards)).toThrow(/narrower than the narrowest/);
  });
});

describe('in place of another tyre', () => {
  test('is accepted within three per cent, ends included', () => {
    const of = (text: string, given: Given = {}) =>
      tyre(text, { formerTyre: '205/55R16', ...given }).outcome('changeAccepted');
    expect(of('215/55R16')).toBe('holds');
    expect(of('225/55R16')).toBe('fails');
    expect(of('185/55R16')).toBe('fails');
    // 3 per cent of 631.9 mm are 18.957 mm, half of it on each side.
    expect(of('205/55R16', { wear: '9.4785 mm' })).toBe('holds');
    expect(of('205/55R16', { wear: '9.4786 mm' })).toBe('fails');
    expect(of('205/55R16', { wear: '9.4 ±0.2 mm' })).toBe('open');
  });

  test('on another rim is said', () => {
    expect(tyre('205/50R17', { formerTyre: '205/55R16' }).warnings).toEqual(['other-rim-code']);
    expect(tyre('225/50R16', { formerTyre: '205/55R16' }).warnings).toEqual([]);
  });
});
