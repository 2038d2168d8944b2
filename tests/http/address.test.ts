/**
 * The address of an answer: the same for the same question, and it leads back to that question.
 */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { checkFitOperation, fitQuestionSchema } from '../../src/contract/fit.js';
import { mateFacesOperation } from '../../src/contract/mate.js';
import { canonicalSearch, readQuery } from '../../src/http/query.js';

const { query } = checkFitOperation;
const answer = { edition: 3, lang: 'en' };

const name = fc.string({ minLength: 1, maxLength: 8, unit: 'grapheme' });
const place = fc.stringMatching(/^[a-z][a-z0-9-]{0,6}$/);
const places = (value: fc.Arbitrary<unknown>) => fc.dictionary(place, value, { maxKeys: 10 });
const hands = fc.record({ left: name, right: name });

const question = fc
  .record(
    {
      vehicle: name,
      part: name,
      position: place,
      with: places(fc.oneof(name, hands)),
      facts: places(name),
      fitted: places(name),
      adapters: places(fc.array(name, { minLength: 1, maxLength: 3 })),
      torque: name,
      use: fc.constantFrom('road', 'off-road'),
      ignorePresent: fc.boolean(),
      changes: fc.constantFrom('no', 'yes'),
    },
    { requiredKeys: ['vehicle', 'part'] },
  )
  .filter((one) => fitQuestionSchema.safeParse(one).success);

/** What is so anyway, and what names nothing, is not written down. */
function bare(asked: object): object {
  const said = Object.entries(asked).filter(
    ([field, value]) =>
      !(typeof value === 'object' && Object.keys(value ?? {}).length === 0) &&
      !(field === 'changes' && value === 'yes') &&
      !(field === 'ignorePresent' && value === false),
  );
  return Object.fromEntries(said);
}

describe('the address of a question', () => {
  test('is read as that question, where there is one', () => {
    let written = 0;
    let unwritten = 0;
    fc.assert(
      fc.property(question, (asked) => {
        const search = canonicalSearch(asked, query, answer);
        if (search === null) {
          unwritten += 1;
          return;
        }
        written += 1;
        const { value, faults } = readQuery(search, query);
        expect(faults).toEqual([]);
        expect(value).toEqual({ ...bare(asked), ...answer });
        const names = search.split('&').map((pair) => decodeURIComponent(pair.split('=')[0] ?? ''));
        expect(names).toEqual([...names].sort());
      }),
      { numRuns: 500 },
    );
    expect(Math.min(written, unwritten)).toBeGreaterThan(50);
  });

  test.each([
    ['a part for each hand', { with: { hub: { left: 'a', right: 'b' } } }],
    ['a comma in a list', { adapters: { joint: ['a,b'] } }],
    ['more places than a URL takes', { with: named(9) }],
    ['a field that no URL has', { other: 'x' }],
  ])('there is none for %s', (_, more) => {
    const asked = { vehicle: 'v', part: 'p', ...more };
    expect(canonicalSearch(asked, query, answer)).toBeNull();
  });

  test.each([
    ['a comma in a name', { part: 'a,b' }, 'part=a%2Cb'],
    ['a worked part', { part: 'a+b' }, 'part=a%2Bb'],
    ['signs of a URL', { part: '&=#?/%' }, 'part=%26%3D%23%3F%2F%25'],
    ['letters beyond those of English', { part: 'ü' }, 'part=%C3%BC'],
    ['as many places as a URL takes', { with: named(8) }, 'with.p7=x'],
  ])('there is one for %s', (_, more, said) => {
    const asked = { vehicle: 'v', part: 'p', ...more };
    expect(canonicalSearch(asked, query, answer)).toContain(said);
  });

  test('nor is there one for a face that is written out', () => {
    const grammar = mateFacesOperation.query;
    const recorded = { part: 'a', interface: 'rear' };
    expect(canonicalSearch({ a: recorded, b: { part: 'b' } }, grammar, answer)).toBe(
      'a=a&a.face=rear&b=b&edition=3&lang=en',
    );
    const inline = { kind: 'k', side: 's' };
    expect(canonicalSearch({ a: recorded, b: { inline } }, grammar, answer)).toBeNull();
  });
});

function named(count: number): Record<string, string> {
  return Object.fromEntries(Array.from({ length: count }, (_, index) => [`p${index}`, 'x']));
}
