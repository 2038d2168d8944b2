/**
 * Numbers that were read in part: which recorded ones they can be, held against a plain search, and
 * which parts they leave out.
 */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { numberKey } from '../../../src/domain/catalogue/part-number.js';
import {
  canBeNumber,
  isPartlyRead,
  saysAnything,
} from '../../../src/domain/identify/read-number.js';
import { leftBy, saidOf } from './bench.js';

/** Every way of giving signs to what was not read, one after the other. */
function plainly(pattern: string, key: string): boolean {
  const [sign = '', ...rest] = Array.from(pattern);
  const behind = rest.join('');
  if (pattern === '') return key === '';
  if (sign === '…') return plainly(behind, key) || (key !== '' && plainly(pattern, key.slice(1)));
  return key !== '' && (sign === '*' || sign === key[0]) && plainly(behind, key.slice(1));
}

const signs = (...all: string[]) => fc.array(fc.constantFrom(...all), { maxLength: 8 });

describe('a number', () => {
  test('is what a plain search finds', () => {
    fc.assert(
      fc.property(signs('a', 'b', '*', '…'), signs('a', 'b'), (pattern, key) => {
        const text = pattern.join('');
        expect(canBeNumber(text)(key.join(''))).toBe(plainly(text, key.join('')));
      }),
      { numRuns: 2000 },
    );
  });

  test('of many gaps is looked for in no time', () => {
    expect(canBeNumber('a…'.repeat(60))('a'.repeat(59) + 'b'.repeat(5))).toBe(false);
  });

  test.each([
    ['44/10-0*7', '44/10 077', true],
    ['44/10…', '44/10 077', true],
    ['...077', '44/10 077', true],
    ['44*', '44/10 077', false],
    ['44.10', '4410', true],
    ['44…44', '44', false],
  ])('%s can be %s: %s', (read, recorded, isAlike) => {
    expect(canBeNumber(read)(numberKey(recorded))).toBe(isAlike);
  });

  test('of unread signs alone says nothing', () => {
    expect(['*', '* - *', '…', '-'].map(saysAnything)).toEqual([false, false, false, false]);
    expect(saysAnything('*7')).toBe(true);
    expect([isPartlyRead('AB-1'), isPartlyRead('AB…'), isPartlyRead('A*')]).toEqual([
      false,
      true,
      true,
    ]);
  });
});

describe('parts', () => {
  test('with another number of the same owner are left out, and no others', () => {
    expect(leftBy({ numbers: ['bx 10 a'] })).toEqual([
      'box-a',
      'box-c',
      'odd-a',
      'shaft-a',
      'shaft-b',
      'shaft-c',
    ]);
    expect(saidOf('box-b', { numbers: ['bx 10 a'] })).toEqual(['other-number']);
    expect(saidOf('box-c', { numbers: ['bx 10 a'] })).toEqual(['number-not-recorded']);
  });

  test('are none left out by a number that nobody recorded', () => {
    expect(leftBy({ role: 'box', numbers: ['ZZ-1'] })).toEqual(['box-a', 'box-b', 'box-c']);
  });

  test('of either number are left where it is read in part, and whose it is may be told', () => {
    expect(leftBy({ role: 'box', numbers: ['BX…'] })).toEqual(['box-a', 'box-b', 'box-c']);
    expect(saidOf('box-a', { numbers: ['BX…@Orrel'] })).toEqual(['number-not-recorded']);
    expect(saidOf('box-c', { numbers: ['O*@Orrel'] })).toEqual(['number-agrees']);
  });
});
