/**
 * Comparisons of codes that are open one by one, and whether all of them can be true.
 */

import { describe, expect, it } from 'vitest';
import { type CodeComparison, codeClash } from '../../../src/domain/check/codes.js';
import { type CodeReading, NOWHERE } from '../../../src/domain/check/reading.js';

/** `'a'` in quotes is that code, `p` an unknown one of that name, `p:a,b` one of two. */
function code(text: string): CodeReading {
  const [name = '', among] = text.split(':');
  const isKnown = name.startsWith("'");
  const codes = isKnown ? [name.replaceAll("'", '')] : (among?.split(',') ?? null);
  const key = isKnown ? null : name;
  return { form: 'code', key, codes, basis: null, address: NOWHERE, text: null, tool: null };
}

/** `p = q` or `p in a,b`. */
function comparison(text: string): CodeComparison {
  const [left = '', word, right = ''] = text.split(' ');
  if (word === 'in') return { is: 'one-of', code: code(left), among: right.split(',') };
  return { is: 'equal', sides: [code(left), code(right)] };
}

describe('comparisons of codes', () => {
  it.each([
    [[]],
    [["p = 'a'"]],
    [["p = 'a'", "q = 'b'"]],
    [["p = 'a'", 'p in a,b']],
    [['p = q', 'q = r', "r = 'a'", "p = 'a'"]],
    [['p:a,b = q:b,c', "q:b,c = 'b'"]],
  ])('%j can all be true', (texts) => {
    expect(codeClash(texts.map(comparison))).toBeNull();
  });

  it.each([
    [
      ["p = 'a'", "p = 'b'"],
      [0, 1],
    ],
    [
      ["p = 'a'", "r = 'c'", 'p in b,c'],
      [0, 2],
    ],
    [
      ["p = 'a'", "q = 'b'", 'p = q'],
      [0, 1, 2],
    ],
    [
      ['p = q', "q = 'b'", "s = 'b'", "p = 'a'"],
      [0, 1, 3],
    ],
    [
      ['p:a,b = q:b,c', "q:b,c = 'c'"],
      [0, 1],
    ],
  ])('%j cannot, by those at %j', (texts, from) => {
    expect(codeClash(texts.map(comparison))).toEqual(from);
  });
});
