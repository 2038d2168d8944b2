/**
 * The word that was probably meant, held against the distance as it is defined: every place of the
 * two words with every other.
 */

import fc from 'fast-check';
import { expect, test } from 'vitest';
import { nearest } from '../../../src/domain/catalogue/likeness.js';

/** Optimal string alignment, straight from its recurrence. */
function distance(a: string, b: string): number {
  const of = (i: number, j: number): number => {
    if (i === 0 || j === 0) return i + j;
    const change = of(i - 1, j - 1) + (a[i - 1] === b[j - 1] ? 0 : 1);
    const swap =
      i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1]
        ? of(i - 2, j - 2) + 1
        : Number.POSITIVE_INFINITY;
    return Math.min(change, swap, of(i - 1, j) + 1, of(i, j - 1) + 1);
  };
  return of(a.length, b.length);
}

/** The first of those that are nearest, if it is near enough. */
function nearestByDefinition(word: string, known: readonly string[]): string | null {
  const allowed = word.length < 3 ? 0 : word.length < 6 ? 1 : 2;
  const distances = known.map((one) => distance(word, one));
  const least = Math.min(...distances);
  return least > allowed ? null : (known[distances.indexOf(least)] ?? null);
}

test('is the first of those with the fewest slips', () => {
  // Two letters alone, so that most words are near one another and many letters are swapped.
  const letters = fc.array(fc.constantFrom('a', 'b'), { maxLength: 7 });
  const words = letters.map((some) => some.join(''));
  let found = 0;
  fc.assert(
    fc.property(words, fc.array(words, { maxLength: 6 }), (word, known) => {
      const meant = nearest(word, known);
      if (meant !== null) found += 1;
      expect(meant).toBe(nearestByDefinition(word, known));
    }),
    { numRuns: 1000 },
  );
  expect(found).toBeGreaterThan(100);
});

test.each([
  ['gearbox', 'gaerbox'],
  ['gearbox', 'earbox'],
  ['gearbox', 'ggearboxx'],
  ['gearbox', 'xearboy'],
  ['gearbox', 'GEARBOX'],
])('%s is meant by %s', (known, typed) => {
  expect(nearest(typed, ['half-shaft', known])).toBe(known);
});

test.each(['gexarxobx', 'aerbox1', 'box', ''])('nothing is meant by %j', (typed) => {
  expect(nearest(typed, ['gearbox'])).toBeNull();
});
