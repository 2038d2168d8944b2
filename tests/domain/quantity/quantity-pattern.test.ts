/**
 * The published pattern of quantities and the reader agree, text by text. What is refused for its
 * size alone, or for a class that no table has, is written as a quantity is.
 */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readLiteral } from '../../../src/domain/check/term.js';
import { parsePoint } from '../../../src/domain/quantity/plane-point.js';
import { isFault, parseQuantity } from '../../../src/domain/quantity/quantity.js';
import {
  literalPattern,
  pointPattern,
  quantityPattern,
} from '../../../src/domain/quantity/quantity-pattern.js';
import { spellingsOf, unitOf } from '../../../src/domain/quantity/unit.js';

const DIMENSIONS = [...new Set(spellingsOf().map((one) => unitOf(one)?.dimension ?? ''))];

const UNSEEN = ['out-of-range', 'unknown-class'];

function isWritten(result: object | { readonly code: string }): boolean {
  return !('code' in result) || UNSEEN.includes(result.code);
}

function isMeasured(text: string, dimension: string): boolean {
  return isWritten(parseQuantity(text, { type: 'measured', dimension }));
}

function isName(text: string, dimension: string): boolean {
  return isWritten(parseQuantity(text, { type: 'designation', dimension }));
}

const ANY = quantityPattern();
const MEASURED = new Map(DIMENSIONS.map((one) => [one, quantityPattern({ dimension: one })]));
const NAMED = new Map(
  DIMENSIONS.map((one) => [one, quantityPattern({ dimension: one, isName: true })]),
);

/** For each dimension, and for any, whether pattern and reader say the same. */
function expectAgreement(text: string): void {
  const read = DIMENSIONS.filter((one) => isMeasured(text, one));
  const matched = DIMENSIONS.filter((one) => MEASURED.get(one)?.test(text));
  expect(matched, text).toEqual(read);
  const named = DIMENSIONS.filter((one) => NAMED.get(one)?.test(text));
  expect(named, text).toEqual(DIMENSIONS.filter((one) => isName(text, one)));
  expect(ANY.test(text), text).toBe(read.length > 0);
}

describe('pattern and reader agree', () => {
  test.each([
    ['56.1 mm', true],
    ['56.10 ±0.05 mm', true],
    ['56.1±0.05mm', true],
    ['56.1 +/- 0.05 mm', true],
    ['56.1 +-0.05 mm', true],
    ['56.1 +0.05/-0.1 mm', true],
    ['50 -0.009 / -0.025 mm', true],
    ['600 to 610 mm', true],
    ['610 to 600 mm', true],
    ['−38 mm', true],
    ['  56.1\u00a0\u202fmm ', true],
    ['4.5"', true],
    ['1/2 ±1/64 in', true],
    ['50 H7', true],
    ['50H7', true],
    ['50 mm H7', true],
    ['50 e8', true],
    ['50 t6', true],
    ['600 H7', true],
    ['400 lbf ft', true],
    ['400 N−m', true],
    ['518 1/km', true],
    ['518/km', true],
    ['3 mm2', true],
    ['43/12', true],
    ['24', true],
    ['33.3 %', true],
    [`${'1'.repeat(30)} mm`, true],
    [`${'1'.repeat(31)} mm`, false],
    [`0.${'1'.repeat(30)} mm`, false],
    [`1/${'1'.repeat(31)} mm`, false],
    ['', false],
    ['   ', false],
    ['56,1 mm', false],
    ["1'200 mm", false],
    ['1 200 mm', false],
    ['1e3 mm', false],
    ['50e8', false],
    ['4 1/2 in', false],
    ['.5 mm', false],
    ['5. mm', false],
    ['+5 mm', false],
    ['5.5/2 mm', false],
    ['--5 mm', false],
    ['H7', false],
    ['about 5 mm', false],
    ['5 ±-0.1 mm', false],
    ['1/0 mm', false],
    ['5 ±1/00 mm', false],
    ['56.10 mm ±0.05 mm', false],
    ['600 mm to 610 mm', false],
    ['5 ft 6 in', false],
    ['50 H7/g6', false],
    ['12 MM', false],
    ['5 furlong', false],
    ['2 in H7', false],
    ['43/12/2', false],
  ])('on %s', (text, is) => {
    expectAgreement(text);
    expect(ANY.test(text)).toBe(is);
  });

  test('on texts put together from the pieces that quantities are made of', () => {
    const number = fc.oneof(
      fc.constantFrom('0', '5', '56.10', '43/12', '1/0', '007', '5.', '.5', '-3', '−2', '1/08'),
      fc.nat({ max: 9999 }).map(String),
    );
    const between = fc.constantFrom(
      '',
      '',
      ' ',
      '  ',
      '\u00a0',
      ' to ',
      '±',
      ' ±',
      '+/-',
      '+-',
      '/',
    );
    const sign = fc.constantFrom('', '', '+', '-', '/-', '/+', ',', "'", 'e', 'E');
    const unit = fc.oneof(
      fc.constantFrom(...spellingsOf()),
      fc.constantFrom('H7', 'e8', 'mm H7', 'mmH7', 'mm mm2', 'zz9', 'furlong', 'MM', 'to', ''),
    );
    const pieces = fc.tuple(number, between, sign, fc.option(number), between, sign, unit, between);
    const texts = fc.oneof(
      pieces.map((parts) => parts.map((part) => part ?? '').join('')),
      fc.tuple(number, between, number, unit).map((parts) => parts.join('')),
      fc.tuple(number, fc.constantFrom('', ' '), unit).map((parts) => parts.join('')),
    );
    const counts = { read: 0, refused: 0 };
    fc.assert(
      fc.property(texts, (text) => {
        fc.pre(text.length <= 64);
        expectAgreement(text);
        counts[ANY.test(text) ? 'read' : 'refused'] += 1;
      }),
      { numRuns: 3000 },
    );
    // Both happen often, or nothing was tried.
    expect(Math.min(counts.read, counts.refused)).toBeGreaterThan(300);
  });

  test('on quantities with one character changed', () => {
    const texts = fc.constantFrom(
      '56.10 ±0.05 mm',
      '56.1 +0.05/-0.1 mm',
      '600 to 610 mm',
      '50 e8',
      '518 1/km',
      '1/2 ±1/64 in',
    );
    const characters = ['0', '1', '5', '9', '.', ',', '/', '+', '-', '−', '±', ' ', '%', '"', '°'];
    const character = fc.constantFrom(...characters, 'e', 'E', 't', 'o', 'm', 'N', '²', '');
    const edits = fc.tuple(texts, fc.nat({ max: 20 }), fc.nat({ max: 1 }), character);
    fc.assert(
      fc.property(edits, ([text, place, removed, put]) => {
        expectAgreement(`${text.slice(0, place)}${put}${text.slice(place + removed)}`);
      }),
      { numRuns: 3000 },
    );
  });
});

test.each([
  ['120.50, -45.00 mm', true],
  ['120.5 ±0.1, -45 ±0.1 mm', true],
  ['-10.0,0.0 mm', true],
  ['1 mm, 2 mm', true],
  ['1/2, 3/4 in', true],
  ['1 to 2, 3 to 4 mm', true],
  ['1, 2', false],
  ['1 mm, 2', false],
  ['1, 2, 3 mm', false],
  ['1 2 mm', false],
  ['1,5, 2,5 mm', false],
  ['1, 2 N.m', false],
])('pattern and reader agree on the point %s', (text, is) => {
  const result = parsePoint(text, { dimension: 'length' });
  expect(isFault(result)).toBe(!is);
  expect(pointPattern().test(text)).toBe(is);
});

describe('pattern and reader agree on what stands for itself', () => {
  const LITERAL = literalPattern();

  test.each([
    ['6 h', true],
    ['-5', true],
    ['+0.5 %', true],
    ['0.5%', true],
    ['4.5"', true],
    ['30°', true],
    ['1/2', true],
    ['3 N m', true],
    [' 2 l ', true],
    ['6h', false],
    ['3 N  m', false],
    ['1.5/2', false],
    ['1/0', false],
    ['5 ±1 mm', false],
    ['5 furlong', false],
    ['', false],
  ])('on %s: %s', (text, is) => {
    expect(readLiteral(text) !== null).toBe(is);
    expect(LITERAL.test(text)).toBe(is);
  });

  test('on texts put together from its pieces', () => {
    const pieces = ['5', '0', '12', '.', '/', '+', '-', ' ', '%', '°', '"', 'mm', 'h', 'N', '1/km'];
    const texts = fc
      .array(fc.constantFrom(...pieces, ' ', 'm'), { minLength: 1, maxLength: 7 })
      .map((all) => all.join(''));
    fc.assert(
      fc.property(texts, (text) => {
        expect(LITERAL.test(text), text).toBe(readLiteral(text) !== null);
      }),
      { numRuns: 5000 },
    );
  });
});
