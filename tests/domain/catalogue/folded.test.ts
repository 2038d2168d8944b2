/**
 * How words that people type are compared.
 */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { folded } from '../../../src/domain/catalogue/folded.js';

describe('texts that are one when folded', () => {
  test.each([
    ['Corrablyn', 'CORRABLYN', '  corrablyn\t'],
    ['Škárrel', 'Skarrel', 'SKA\u0301RREL'],
    ['Straße', 'STRASSE', 'STRAẞE', 'strasse'],
    // The two i of Turkish, and the two small s of Greek.
    ['İlk', 'ilk', 'ILK', 'ılk'],
    ['ΟΔΟΣ', 'οδος', 'οδοσ', 'ΌΔΟΣ'],
    ['Ёлка', 'елка'],
  ])('%s', (...texts) => {
    expect(new Set(texts.map(folded)).size).toBe(1);
  });

  test('what is no letter, and what stands inside, counts', () => {
    const texts = ['200', '2000', '2 00', '200-', 'Ørd', 'ord', 'a b', 'a  b'];
    expect(new Set(texts.map(folded)).size).toBe(texts.length);
  });

  test('folded once is folded', () => {
    const text = fc.string({ unit: 'grapheme' });
    fc.assert(
      fc.property(text, (one) => {
        expect(folded(folded(one))).toBe(folded(one));
      }),
      { numRuns: 2000, seed: 3 },
    );
  });
});
