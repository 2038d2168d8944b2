/**
 * The canonical form: one text for equal content, whatever the order in which it was written; and
 * another text for another content.
 */

import { createHash } from 'node:crypto';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { canonicalDocument, canonicalJson } from '../../../src/domain/catalogue/canonical.js';
import { type CatalogueDocument, ENTITY_LISTS } from '../../../src/domain/catalogue/document.js';
import { changed, from, GONE, saidOf, sampleDocument } from './sample-document.js';

const NUMBERED = '{"10":3,"9":4,"B":2,"a":1}';
const ESCAPED = '"\\u0000\\u001f\\"\\\\/\u007f\u2028é"';

function canonical(document: object): string {
  return canonicalJson(canonicalDocument(document as CatalogueDocument));
}

function hashOf(document: object): string {
  return createHash('sha256').update(canonical(document)).digest('hex');
}

/** The same with the keys of every object in another order, drawn by `order`. */
function rekeyed(value: unknown, order: () => number): unknown {
  if (Array.isArray(value)) return value.map((item) => rekeyed(item, order));
  if (typeof value !== 'object' || value === null) return value;
  const entries = Object.entries(value).map(([key, item]) => {
    return { rank: order(), entry: [key, rekeyed(item, order)] as const };
  });
  return Object.fromEntries(entries.sort((a, b) => a.rank - b.rank).map(({ entry }) => entry));
}

describe('one content', () => {
  const whole = canonical(sampleDocument());

  it('has one text and one hash, whatever the order of its keys', () => {
    fc.assert(
      fc.property(fc.infiniteStream(fc.nat(1000)), (ranks) => {
        const order = () => Number(ranks.next().value);
        const document = rekeyed(sampleDocument(), order) as object;
        expect(saidOf(document).faults).toEqual([]);
        expect(canonical(document)).toBe(whole);
        expect(hashOf(document)).toBe(hashOf(sampleDocument()));
      }),
      { seed: 8785, numRuns: 50 },
    );
  });

  it.each(ENTITY_LISTS.filter((list) => list !== 'offers'))(
    'has one text, whatever the order of its %s',
    (list) => {
      const items = from(`/${list}`) as unknown[];
      expect(canonical(changed({ [`/${list}`]: items.toReversed() }))).toBe(whole);
    },
  );

  it('has one text, whatever it is offered for, and with lists that are empty', () => {
    expect(canonical(changed({ '/offers': GONE }))).toBe(whole);
    expect(canonical(changed({ '/offers/0/price': '1.00' }))).toBe(whole);
    const without = { '/rules': GONE, '/statements': GONE };
    expect(canonical(changed({ '/rules': [], '/statements': [] }))).toBe(
      canonical(changed(without)),
    );
  });

  it('comes back from its text: read again, it is whole and has the same text', () => {
    const again = JSON.parse(whole) as object;
    const { faults, warnings } = saidOf(again);
    expect([...faults, ...warnings]).toEqual([]);
    expect(canonical(again)).toBe(whole);
    expect({ ...again, offers: from('/offers') }).toEqual({
      ...sampleDocument(),
      ...Object.fromEntries(
        ['facts', 'kinds', 'roles', 'parts', 'vehicles', 'rules'].map((list) => [
          list,
          sortedById(from(`/${list}`)),
        ]),
      ),
    });
  });
});

function sortedById(list: unknown) {
  return (list as { id: string }[]).toSorted((a, b) => (a.id < b.id ? -1 : 1));
}

describe('another content', () => {
  it.each([
    ['a value', { '/parts/0/values/torque': '251 N.m' }],
    ['the same length in another unit, which is another text', { '/parts/4/values/length': '1 m' }],
    ['a text that only looks alike', { '/parts/0/maker': 'Orrin\u00a0Works' }],
    ['a list whose order means something', { '/parts/0/values/gears': ['45/19', '40/11'] }],
    ['the places of a layout in another order', reversed('/layouts/0/positions')],
    ['what is in a lot in another order', reversed('/lots/0/contains')],
    ['what a vehicle is like', { '/vehicles/2/like': 'tarn-2' }],
    ['a time in another unit, which is another text', { '/works/0/labour': '120 min' }],
    ['a default that is written out', { '/parts/1/interfaces/input/optional': false }],
    ['the evidence of everything', { '/evidence/basis': 'measured' }],
  ])('%s', (_, changes) => {
    const document = changed(changes);
    expect(canonical(document)).not.toBe(canonical(sampleDocument()));
    expect(hashOf(document)).not.toBe(hashOf(sampleDocument()));
  });
});

function reversed(pointer: string) {
  return { [pointer]: (from(pointer) as unknown[]).toReversed() };
}

describe('the text', () => {
  it.each([
    [
      'keys by UTF-16 code unit, not by code point',
      { '\ufb33': 1, '😀': 2 },
      '{"😀":2,"\ufb33":1}',
    ],
    ['small letters after capitals, numbers before', { a: 1, B: 2, 10: 3, 9: 4 }, NUMBERED],
    ['nothing for a field that is undefined', { a: undefined, b: 1 }, '{"b":1}'],
    ['a key named __proto__', JSON.parse('{"b": 1, "__proto__": 2}'), '{"__proto__":2,"b":1}'],
    ['minus zero as zero', [-0], '[0]'],
    ['escapes as RFC 8785 has them', '\u0000\u001f"\\/\u007f\u2028é', ESCAPED],
    ['the largest exact number', 2 ** 53 - 1, '9007199254740991'],
  ])('has %s', (_, value, text) => {
    expect(canonicalJson(value)).toBe(text);
  });

  it.each([
    ['a number beyond 2^53', 2 ** 53],
    ['a number that is not whole', 0.1],
    ['no number', Number.NaN],
    ['an endless number', Number.POSITIVE_INFINITY],
    ['half a character', 'x\ud800'],
    ['half a character in a key', { '\udc00': 1 }],
    ['nothing in a list', [undefined]],
    ['a hole in a list', Array(1)],
    ['a big integer', 1n],
    ['a function', () => 1],
    ['lists nested too deep', nested(600)],
    ['lists nested deeper than any stack', nested(100_000)],
  ])('is refused for %s', (_, value) => {
    expect(() => canonicalJson(value)).toThrow(RangeError);
  });
});

function nested(layers: number): unknown {
  let value: unknown = [];
  for (let layer = 0; layer < layers; layer += 1) value = [value];
  return value;
}
