/**
 * Documents that mean harm, or that a program garbled: whatever is put anywhere, the reader says
 * what is wrong with it, at a place that there is, in the order of the document, and never throws.
 */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { canonicalDocument, canonicalJson } from '../../../src/domain/catalogue/canonical.js';
import { compileDocument } from '../../../src/domain/catalogue/compile.js';
import type { CatalogueDocument } from '../../../src/domain/catalogue/document.js';
import { NASTY, PLACES, pointersOf, spoilt, spoiltAt } from './nasty-values.js';
import { SPLINE, saidOf, valueAt } from './sample-document.js';

const SEED = 4156;

/** Compiles a document and holds what is true of every answer of the reader. */
function compiled(document: unknown) {
  const answer = compileDocument(document, [SPLINE]);
  const { catalogue, faults, warnings } = answer;
  expect(catalogue === null).toBe(faults.length > 0);
  expect(answer.document).toBe(catalogue === null ? null : document);
  for (const { pointer, code, text } of [...faults, ...warnings]) {
    // Throws where there is no such place.
    valueAt(document, pointer);
    const isSaid = /^[\p{Lu}"“\d][^\p{C}]*[.?]$/u.test(text) && text.length < 700;
    if (!isSaid || !/^[a-z-]+$/.test(code)) throw new Error(`${pointer}: ${code}: ${text}`);
  }
  return answer;
}

function canonical(document: object): string {
  return canonicalJson(canonicalDocument(document as CatalogueDocument));
}

/** Each value takes every so many places, and its neighbour those beside them. */
const STRIDE = 37;

describe('whatever stands somewhere', () => {
  it.each([...NASTY.entries()])('nasty value %i', (index, value) => {
    const places = PLACES.filter((_, place) => place % STRIDE === index % STRIDE);
    expect(places.length).toBeGreaterThan(5);
    for (const place of places) compiled(spoiltAt([[place, value]]));
  });

  it('and no place is left out', () => {
    expect(NASTY.length).toBeGreaterThan(2 * STRIDE);
  });

  it('and in several places at once, is said in the order of the document', () => {
    fc.assert(
      fc.property(spoilt(), (document) => {
        const { catalogue, faults, warnings } = compiled(document);
        const order = new Map(pointersOf(document).map((pointer, index) => [pointer, index]));
        for (const list of [faults, warnings]) {
          const places = list.map(({ pointer }) => order.get(pointer) ?? Number.NaN);
          expect(places).toEqual(places.toSorted((a, b) => a - b));
        }
        if (catalogue === null) return;
        const text = canonical(document);
        const again = JSON.parse(text) as object;
        expect(saidOf(again).faults).toEqual([]);
        expect(canonical(again)).toBe(text);
      }),
      { seed: SEED, numRuns: 300 },
    );
  });

  it('says the same of the same document each time, and leaves it as it was', () => {
    fc.assert(
      fc.property(spoilt(), (document) => {
        const before = structuredClone(document);
        const first = saidOf(document);
        expect(document).toStrictEqual(before);
        expect(saidOf(document)).toEqual(first);
      }),
      { seed: SEED, numRuns: 50 },
    );
  });
});

describe('what is no document', () => {
  it.each([
    ['nothing', null],
    ['a list', []],
    ['a text', 'catalogue'],
    ['a number', 1],
    ['a truth', true],
    ['what no JSON holds', undefined],
  ])('%s', (_, raw) => {
    const text = 'A catalogue document is a JSON object.';
    const fault = { pointer: '', code: 'not-a-document', text };
    expect(compileDocument(raw, [SPLINE])).toEqual({
      catalogue: null,
      document: null,
      faults: [fault],
      warnings: [],
    });
  });

  it('an object that has nothing of its own lacks all that must be there', () => {
    const heir: unknown = Object.create({ catalogue: 1, lang: 'en', evidence: { basis: 'maker' } });
    expect(saidOf(heir).faults.map(({ code }) => code)).toEqual(Array(3).fill('missing-field'));
  });
});

describe('names that every object has', () => {
  it('are read as any other name, and change nothing else', () => {
    const document: unknown = JSON.parse('{"__proto__": {"lang": "en"}, "constructor": 1}');
    const codes = saidOf(document).faults.map(({ code, pointer }) => `${code} ${pointer}`);
    expect(codes).toContain('unknown-field /__proto__');
    expect(codes).toContain('unknown-field /constructor');
    expect(codes.filter((code) => code === 'missing-field ')).toHaveLength(3);
    expect(Object.hasOwn(Object.prototype, 'lang')).toBe(false);
  });
});
