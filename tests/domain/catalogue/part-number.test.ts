/**
 * Part numbers as people write them: what makes two texts one number, and whose number it is.
 */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Part } from '../../../src/domain/catalogue/catalogue.js';
import { numberKey, PartNumbers } from '../../../src/domain/catalogue/part-number.js';

function part(id: string, maker: string | null, ...numbers: [number: string, of: string][]): Part {
  return {
    id,
    roles: ['piece'],
    name: id,
    maker,
    numbers: numbers.map(([number, of]) => ({ number, of })),
    built: [null, null],
    supersededBy: null,
    hand: null,
    spans: null,
    faces: new Map(),
    values: new Map(),
    evidence: { basis: 'maker' },
  };
}

describe('two texts are one number', () => {
  test.each([
    ['44/10 077', '44/10-077'],
    ['44/10 077', ' 44/10.077 '],
    ['4410-077', '4410077'],
    // Non-breaking, thin and ideographic space, tab, next line.
    ['4410 077', '44\u00a010\u2009077\u3000\t\u0085'],
    // Soft hyphen, hyphen, non-breaking hyphen, figure, en and em dash, minus; full-width ones.
    ['4410-077', '4\u00ad4\u20101\u20110\u20120\u20137\u20147\u2212'],
    ['4410-077', '４４１０－０７７'],
    ['44.10', '44·10'],
    // A byte order mark and a zero-width space, as pasted out of a page.
    ['4410-077', '\ufeff4410\u200b077'],
    ['cl 151', 'CL151'],
    ['Straße 5', 'STRASSE-5'],
    ['Straße 5', 'STRAẞE 5'],
    ['pim 20', 'PİM 20'],
    ['PIM 20', 'pım 20'],
    ['ß', 'ss'],
    ['ΟΔΟΣ', 'οδος'],
    ['Ångström', 'A\u030angstro\u0308m'],
    ['ﬁ-2', 'FI2'],
  ])('%j and %j', (a, b) => {
    expect(numberKey(a)).toBe(numberKey(b));
  });

  test.each([
    ['4410-077', '4410-078'],
    ['44/10', '4410'],
    ['44,10', '4410'],
    ['4410+077', '4410077'],
    ['4410@077', '4410077'],
    ['O10', '010'],
    ['Ä1', 'A1'],
  ])('but not %j and %j', (a, b) => {
    expect(numberKey(a)).not.toBe(numberKey(b));
  });

  // No plane above has letter case.
  test('whatever language the case is of, for each character of two planes', () => {
    const differing: string[] = [];
    // Many at once, since asking for each takes long; no two of them side by side.
    for (let first = 0; first <= 0x1ffff; first += 0x400) {
      const points = Array.from({ length: 0x400 }, (_, index) => first + index);
      const text = points.map((point) => `a${String.fromCodePoint(point)}1`).join('/');
      const key = numberKey(text);
      const written = [
        text.toUpperCase(),
        text.toLowerCase(),
        text.toLocaleUpperCase('tr'),
        text.toLocaleLowerCase('tr'),
        text.normalize('NFC'),
        text.normalize('NFKC'),
        key,
      ];
      if (written.some((one) => numberKey(one) !== key)) differing.push(first.toString(16));
    }
    expect(differing).toEqual([]);
  });

  test('with spaces, dots and dashes anywhere in it', () => {
    const between = fc.constantFrom('', '', '', ' ', '.', '-', '\u2013', '\u00a0', '\u2212');
    const signs = fc.array(
      fc.tuple(fc.constantFrom('a', 'Z', '0', '9', 'ß', '/', ',', '@', '+', 'é'), between),
    );
    fc.assert(
      fc.property(signs, (written) => {
        const bare = written.map(([sign]) => sign).join('');
        expect(numberKey(written.flat().join(''))).toBe(numberKey(bare));
      }),
    );
  });
});

describe('a number is looked up', () => {
  const parts = [
    part('a', 'Skarrel Driveline', ['44/10 077', 'maker'], ['4410-077', 'Corrablyn']),
    part('b', 'Corrablyn', ['4410.077', 'Corrablyn']),
    part('c', null, ['9-1', 'maker'], ['9 1', 'Maker'], ['--', 'maker']),
    part('d', 'Fennuld', ['12@7', 'maker'], ['12', 'maker'], ['5,5+2', 'Maker']),
    part('e', '7', ['12', 'maker']),
  ];
  const numbers = new PartNumbers(parts);
  const found = (text: string) => numbers.find(text).map(({ id }) => id);

  test.each([
    ['44/10-077', ['a']],
    ['4410077', ['a', 'b']],
    ['4410 077@corrablyn', ['a', 'b']],
    // Whose number it is, and not who makes the part: of Skarrel this is another number.
    ['4410-077@Skarrel Driveline', []],
    ['44/10-077@skarrel-driveline', ['a']],
    ['4410077@Fennuld', []],
    ['9-1', ['c']],
    ['9-1@maker', []],
    ['12@Fennuld', ['d']],
    ['12', ['d', 'e']],
    // The whole is a number; only behind a further sign is it that of somebody.
    ['12@7', ['d']],
    ['12@7@fennuld', ['d']],
    ['5,5+2', ['d']],
    ['5,5+2@Fennuld', ['d']],
    ['--', []],
    ['', []],
    ['@', []],
    ['12@', []],
  ])('%j', (text, ids) => {
    expect(found(text)).toEqual(ids);
  });

  test.each([
    [[part('a', null)], 0],
    [[part('a', 'Fennuld', ['5', 'maker'])], 0],
    [[part('a', 'Fennuld', ['5+2', 'maker']), part('b', null, ['5＋2＋1', 'Fennuld'])], 2],
    // Behind a number there may be whose it is.
    [[part('a', 'Fennuld + Sons', ['5+2', 'maker'])], 2],
  ])('so many plus signs may be in one', (some, most) => {
    expect(new PartNumbers(some).plusSigns).toBe(most);
  });

  test('a part that has it twice is there once', () => {
    expect(found('91')).toEqual(['c']);
  });

  test.each([
    ['4410-078', '4410-077'],
    ['4410-078@Corrablyn', '4410-077@Corrablyn'],
    ['44/10-007', '44/10 077'],
    ['44/10 077@Scarrel', '44/10 077@Skarrel Driveline'],
    ['9-1@Fennuld', '9-1'],
    ['123456789', null],
  ])('near %j is %j', (text, near) => {
    expect(numbers.near(text)).toBe(near);
  });
});
