/**
 * The directory of parts works out what it compares once for each catalogue: counted, not timed.
 */

import { expect, test } from 'vitest';
import type { Part } from '../../src/domain/catalogue/catalogue.js';
import { folded } from '../../src/domain/catalogue/folded.js';
import { listParts } from '../../src/usecases/list-parts.js';
import {
  PartDirectory,
  type PartFilter,
  partDirectory,
} from '../../src/usecases/part-directory.js';
import { CART } from '../cli/catalogue.js';
import { libraryOf } from '../memory-store.js';

const ANY: PartFilter = {
  role: null,
  kind: null,
  maker: null,
  number: null,
  text: null,
  superseded: null,
};

/** The parts of the cart under many ids. */
function many(count: number): ReadonlyMap<string, Part> {
  const { catalogue } = libraryOf(CART).edition(null);
  const parts = [...catalogue.parts.values()];
  const ids = Array.from({ length: count }, (_, index) => `p-${String(index).padStart(6, '0')}`);
  return new Map(
    ids.map((id, index) => {
      const part = parts[index % parts.length];
      if (part === undefined) throw new Error('the cart has parts');
      return [id, { ...part, id }];
    }),
  );
}

test('each part is folded once, however often words are looked for', () => {
  const parts = many(1000);
  let folds = 0;
  const directory = new PartDirectory({ parts }, (text) => {
    folds += 1;
    return folded(text);
  });
  expect(directory.find(ANY)).toHaveLength(1000);
  expect(folds).toBe(0);
  for (const text of ['box', 'shaft', 'box a', 'nothing']) directory.find({ ...ANY, text });
  expect(folds).toBe(1000 + 4);
});

test('only those are folded of which the rest is true', () => {
  const parts = many(900);
  let folds = 0;
  const directory = new PartDirectory({ parts }, (text) => {
    folds += 1;
    return folded(text);
  });
  expect(directory.find({ ...ANY, text: 'long', role: 'shaft' })).toHaveLength(100);
  expect(folds).toBe(100 + 1);
});

test('nothing is sorted or searched for a page of all parts, nor for one of a role', () => {
  const directory = new PartDirectory({ parts: many(500) });
  expect(directory.find(ANY)).toBe(directory.find(ANY));
  const ofRole = { ...ANY, role: 'gearbox' };
  expect(directory.find(ofRole)).toBe(directory.find(ofRole));
  expect(directory.countOfRole('gearbox')).toBe(directory.find(ofRole).length);
});

test('a catalogue has one directory, and another edition has its own', () => {
  const other = { ...CART, parts: [...CART.parts, { id: 'hook', name: 'hook', roles: ['plate'] }] };
  const library = libraryOf(CART, other);
  const [first, second] = [1, 2].map((number) => library.edition(number).catalogue);
  if (first === undefined || second === undefined) throw new Error('there are two editions');
  expect(partDirectory(first)).toBe(partDirectory(first));
  expect(partDirectory(first)).not.toBe(partDirectory(second));
  const asked = { ...ANY, lang: 'en', limit: 200, after: null };
  const totals = [1, 2].map((edition) => listParts(library, { ...asked, edition }).counts.total);
  expect(totals).toEqual([CART.parts.length, CART.parts.length + 1]);
});
