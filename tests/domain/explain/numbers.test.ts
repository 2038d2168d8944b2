/**
 * Numbers as each language writes them, computed and as recorded.
 */

import { describe, expect, test } from 'vitest';
import { ENGLISH_NUMBERS, GERMAN_NUMBERS } from '../../../src/domain/explain/number-words.js';
import {
  shownValue,
  systemOf,
  writePoint,
  writeRecorded,
} from '../../../src/domain/explain/numbers.js';
import {
  closed,
  EVERYTHING,
  type Interval,
  interval,
  point,
} from '../../../src/domain/quantity/interval.js';
import { rational } from '../../../src/domain/quantity/rational.js';

function between(low: string, high: string): Interval {
  return closed(rational(low), rational(high));
}

describe('German', () => {
  const half = rational('0.5');

  test.each([
    [point(rational('56.05')), 'length', '56,05 mm'],
    [point(rational('1/3')), 'length', 'etwa 0,3333 mm'],
    [between('56.05', '56.15'), 'length', '56,10 ±0,05 mm'],
    [between('0.25', '20'), 'length', '0,25 bis 20 mm'],
    [interval(half, null), 'length', 'mindestens 0,5 mm'],
    [interval(half, null, { lowOpen: true }), 'length', 'über 0,5 mm'],
    [interval(null, half), 'length', 'höchstens 0,5 mm'],
    [interval(null, half, { highOpen: true }), 'length', 'unter 0,5 mm'],
    [interval(half, rational(6), { lowOpen: true, highOpen: true }), '1', 'über 0,5 bis unter 6'],
    [EVERYTHING, 'length', 'beliebig'],
    [point(rational('43/12')), '1', '43/12'],
    [point(rational('250.5')), 'torque', '250,5 Nm'],
    [point(rational('22.5')), 'angle', '22,5°'],
    [point(rational(-40)), 'temperature', '-40 °C'],
    [point(rational('12.5')), 'viscosity', '12,5 mm²/s'],
  ])('%o of a %s is %s', (set, dimension, text) => {
    const german = shownValue(set, dimension, { system: 'metric', words: GERMAN_NUMBERS });
    expect(german.text).toBe(text);
    const english = shownValue(set, dimension, { system: 'metric', words: ENGLISH_NUMBERS });
    expect({ ...german, text: '' }).toEqual({ ...english, text: '' });
  });

  test.each([
    ['56.10 ±0.05 mm', '56,10 ±0,05 mm'],
    ['56.1 +0.05/-0.1 mm', '56,1 +0,05/-0,1 mm'],
    ['600.5 to 610 mm', '600,5 bis 610 mm'],
    ['600.5 mm to 1900 mm', '600,5 mm bis 1900 mm'],
    ['47 H7', '47 H7'],
    ['47.5 mm H7', '47,5 H7'],
    ['4.5in', '4,5 Zoll'],
    ['400 Nm', '400 Nm'],
    ['12.5 deg', '12,5°'],
    ['3.583', '3,583'],
    ['43/12', '43/12'],
    ['24', '24'],
    // What is no quantity stays as it is.
    ['M10x1.25', 'M10x1.25'],
    ['2 cables', '2 cables'],
    ['from 2.5 to 3.5', 'from 2.5 to 3.5'],
  ])('recorded %s is %s', (recorded, text) => {
    expect(writeRecorded(recorded, GERMAN_NUMBERS)).toBe(text);
    expect(writeRecorded(recorded, ENGLISH_NUMBERS)).toBe(recorded);
  });

  test('has no comma between the two lengths of a point', () => {
    expect(writePoint('120.50, -45.00 mm', GERMAN_NUMBERS)).toBe('120,50 | -45,00 mm');
    expect(writePoint('1.5 ±0.1, -45 ±0.1 mm', GERMAN_NUMBERS)).toBe('1,5 ±0,1 | -45 ±0,1 mm');
    expect(writePoint('120.50, -45.00 mm', ENGLISH_NUMBERS)).toBe('120.50, -45.00 mm');
  });
});

test.each([
  ['56.1 mm', 'metric'],
  ['47 H7', 'metric'],
  ['600 mm to 1900 mm', 'metric'],
  ['600 to 610 mm', 'metric'],
  ['4.5 in', 'imperial'],
  ['400 lb-ft', 'imperial'],
  ['30 deg', null],
  ['24', null],
  ['5 %', null],
  ['two cables', null],
])('%s was recorded in units that are %s', (text, system) => {
  expect(systemOf(text)).toBe(system);
});
