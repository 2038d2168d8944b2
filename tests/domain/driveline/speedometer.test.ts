/**
 * Speedometers: the band of UN Regulation 39, before and after a change.
 */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { isWithin } from '../../../src/domain/quantity/interval.js';
import { about, asked } from './asked.js';

const RUNS = { seed: 39, numRuns: 200 };
type Given = Parameters<typeof asked>[1];
const speedometer = (given: Given) => asked('speedometer', given);
const at = (trueSpeed: string, shownSpeed: string, given: Given = {}) =>
  speedometer({ trueSpeed: [trueSpeed], shownSpeed: [shownSpeed], ...given });

const kmh = fc.integer({ min: 1, max: 250 });

describe('the band', () => {
  test('holds at its ends and a tenth of a km/h inside, and fails as much outside', () => {
    fc.assert(
      fc.property(kmh, (speed) => {
        const most = (11 * speed + 40) / 10;
        const of = (shown: number) => {
          const found = at(`${speed} km/h`, `${shown.toFixed(1)} km/h`);
          return `${found.outcome('isInBand')} ${found.word('finding')}`;
        };
        expect([speed, speed + 0.1, most - 0.1, most].map(of)).toEqual(
          Array(4).fill('holds within'),
        );
        expect(of(speed - 0.1)).toBe('fails under-reads');
        expect(of(most + 0.1)).toBe('fails over-reads');
      }),
      RUNS,
    );
  });

  test('is the same in miles', () => {
    expect(at('96.56064 km/h', '100 km/h').set('mostShown')).toEqual(
      at('60 mph', '100 km/h').set('mostShown'),
    );
    expect(at('60 mph', '60 mph').outcome('isInBand')).toBe('holds');
    expect(at('60 mph', '59.9 mph').outcome('isInBand')).toBe('fails');
  });

  test('is open where a reading lies on both sides of an end', () => {
    for (const shown of ['100 ±1 km/h', '114 ±1 km/h']) {
      expect(at('100 km/h', shown).outcome('isInBand')).toBe('open');
      expect(at('100 km/h', shown).word('finding')).toBe('undecided');
    }
    expect(at('100 ±1 km/h', '105 km/h').outcome('isInBand')).toBe('holds');
    expect(at('100 ±6 km/h', '105 km/h').outcome('isInBand')).toBe('open');
  });

  test('is kept only if it is at every speed, and too little is the graver', () => {
    const of = (shownSpeed: string[]) =>
      speedometer({ trueSpeed: ['50 km/h', '100 km/h'], shownSpeed });
    expect(of(['52 km/h', '104 km/h']).outcome('isInBand')).toBe('holds');
    expect(of(['52 km/h', '99 km/h']).outcome('isInBand')).toBe('fails');
    expect(of(['60 km/h', '104 km/h']).word('finding')).toBe('over-reads');
    expect(of(['60 km/h', '99 km/h']).word('finding')).toBe('under-reads');
  });
});

describe('after a change', () => {
  test('is what it was, by tyres and driven ratio', () => {
    fc.assert(
      fc.property(kmh, fc.integer({ min: 1500, max: 2700 }), (speed, rolled) => {
        const found = at(`${speed} km/h`, `${speed + 2} km/h`, {
          circumference: '2000 mm',
          newCircumference: `${rolled} mm`,
          drivenRatio: '43/11',
          newDrivenRatio: '43/12',
        });
        const factor = (2000 / rolled) * (11 / 12);
        expect(about(found.set('shownAfter'))).toBeCloseTo((speed + 2) * factor, 9);
        expect(about(found.set('changeOfShown'))).toBeCloseTo(100 * (factor - 1), 9);
      }),
      RUNS,
    );
  });

  test('and back is as before', () => {
    const there = { tyre: '195/60R15', newTyre: '205/55R16' };
    const back = { tyre: '205/55R16', newTyre: '195/60R15' };
    const of = (given: Given) => about(at('100 km/h', '104 km/h', given).set('changeOfShown'));
    expect((1 + of(there) / 100) * (1 + of(back) / 100)).toBeCloseTo(1, 12);
    expect(of({ tyre: '205/55R16', newTyre: '205/55R16' })).toBe(0);
  });

  test('of readings contains that of every value read', () => {
    const of = (shown: string, newCircumference: string) =>
      at('100 km/h', shown, { circumference: '1900 mm', newCircumference }).set('shownAfter');
    const whole = of('104 ±1 km/h', '1950 ±10 mm');
    expect(isWithin(of('103.2 km/h', '1941 mm'), whole)).toBe(true);
    expect(isWithin(of('105 km/h', '1940 mm'), whole)).toBe(true);
    expect(isWithin(of('105.1 km/h', '1940 mm'), whole)).toBe(false);
  });

  test('holds, is open or fails by the same band', () => {
    const of = (newCircumference: string) =>
      at('100 km/h', '104 km/h', { circumference: '2000 mm', newCircumference });
    expect(of('2080 mm').outcome('isInBandAfter')).toBe('holds');
    expect(of('2080 ±1 mm').outcome('isInBandAfter')).toBe('open');
    expect(of('2081 mm').outcome('isInBandAfter')).toBe('fails');
    expect(of('2081 mm').word('findingAfter')).toBe('under-reads');
    expect(of('1700 mm').word('findingAfter')).toBe('over-reads');
    expect(at('100 km/h', '104 km/h').has('isInBandAfter')).toBe(false);
  });

  test('changes nothing of what is shown before', () => {
    const found = at('100 km/h', '104 km/h', { drivenRatio: '4', newDrivenRatio: '5' });
    expect(found.outcome('isInBand')).toBe('holds');
    expect(found.outcome('isInBandAfter')).toBe('fails');
    const bare = speedometer({ trueSpeed: ['50 km/h'], drivenRatio: '4', newDrivenRatio: '5' });
    expect(about(bare.set('changeOfShown'))).toBe(25);
    expect(bare.has('shownAfter')).toBe(false);
  });
});

describe('warnings', () => {
  test('too little is said of before and after', () => {
    const change = { drivenRatio: '39/10', newDrivenRatio: '39/11' };
    expect(at('100 km/h', '99 km/h').warnings).toEqual(['shows-too-little']);
    expect(at('100 km/h', '100 ±1 km/h').warnings).toEqual(['shows-too-little']);
    expect(at('100 km/h', '104 km/h').warnings).toEqual([]);
    expect(at('100 km/h', '120 km/h').warnings).toEqual([]);
    expect(at('100 km/h', '104 km/h', change).warnings).toEqual(['shows-too-little-after']);
  });

  test('a measured tyre beside one that is computed', () => {
    const mixed = { tyre: '205/55R16', newCircumference: '1927 mm' };
    expect(at('100 km/h', '104 km/h', mixed).warnings).toEqual(['measured-beside-computed']);
    const alike = { tyre: '205/55R16', newTyre: '215/55R16' };
    expect(at('100 km/h', '104 km/h', alike).warnings).toEqual([]);
  });
});

describe('what cannot be', () => {
  test.each<[Given, RegExp]>([
    [{ tyre: '?', newTyre: '205/55R16' }, /no size of a car tyre/],
    [{ tyre: '205/55R16', newTyre: '205/55' }, /no size of a car tyre/],
    [{ tyre: '205/55R16', circumference: '1900 mm', newTyre: '205/55R16' }, /not both/],
    [{ tyre: '205/55R16' }, /or neither/],
    [{ newTyre: '205/55R16' }, /or neither/],
    [{ drivenRatio: '4' }, /or neither/],
    [{ newDrivenRatio: '4' }, /or neither/],
    [{ shownSpeed: ['50 km/h', '60 km/h'] }, /Shown: 2, true: 1/],
    [{ trueSpeed: ['0 km/h'] }, /impossible/],
  ])('%j', (given, said) => {
    expect(() => speedometer({ trueSpeed: ['50 km/h'], ...given })).toThrow(said);
  });
});
