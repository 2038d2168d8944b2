/** Finding where a text stops being JSON: as strict as `JSON.parse`, with line and column. */

import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readJson } from '../../src/contract/json-text.js';
import { sayStop } from '../../src/contract/problems/words.js';

/** Where and why a text is refused; empty where it is JSON. */
function faultOf(text: string): string {
  const read = readJson(text);
  if (read.isJson) return '';
  const { line, column } = read.stop;
  return `line ${line}, column ${column}: ${sayStop(read.stop, 'en')}`;
}

function pointersOf(text: string, code: string): string[] {
  const read = readJson(text);
  const faults = read.isJson ? read.faults : [];
  return faults.filter((fault) => fault.code === code).map(({ pointer }) => pointer);
}

describe('a text that is JSON', () => {
  test('is read as JSON.parse reads it', () => {
    fc.assert(
      fc.property(fc.json(), fc.nat(2), (text, indent) => {
        const spaced = JSON.stringify(JSON.parse(text), null, indent);
        expect(readJson(spaced)).toMatchObject({ isJson: true, value: JSON.parse(text) });
      }),
    );
  });

  test('as deep as one likes', () => {
    const deep = 20_000;
    expect(faultOf(`${'['.repeat(deep)}${']'.repeat(deep)}`)).toBe('');
    expect(faultOf('['.repeat(deep))).toContain('line 1, column 20001');
  });

  test('with names that are twice, each at its pointer', () => {
    const text = '{"a": [0, {"b/c": 1, "b~": 2, "b/c": 3}], "\\u0061": 4, "b~": {"a": 5}}';
    expect(pointersOf(text, 'repeated-name')).toEqual(['/a/1/b~1c', '/a']);
    expect(pointersOf('[{"a": 1}, {"a": 1}]', 'repeated-name')).toEqual([]);
  });
});

describe('a text that is not', () => {
  test('is refused exactly where JSON.parse refuses it', () => {
    const signs = [
      ...Array.from('{}[],:"\\/0123456789.-+eE tfn\n\t\u0001é'),
      'true',
      'null',
      '\\u00e9',
      '"a"',
    ];
    const mutated = fc
      .tuple(fc.json(), fc.nat(), fc.nat(3), fc.constantFrom(...signs))
      .map(([text, at, cut, sign]) => {
        const place = at % (text.length + 1);
        return text.slice(0, place) + sign + text.slice(place + cut);
      });
    let refused = 0;
    fc.assert(
      fc.property(
        fc.oneof(
          mutated,
          fc.array(fc.constantFrom(...signs)).map((a) => a.join('')),
        ),
        (text) => {
          const isRefused = faultOf(text) !== '';
          refused += isRefused ? 1 : 0;
          expect(isRefused).toBe(!isJson(text));
        },
      ),
      { numRuns: 3000 },
    );
    expect(refused).toBeGreaterThan(500);
  });

  test.each([
    ['{"a": tru}', 7, 'a value', '"tru"'],
    ['{"a": 01}', 7, 'a value', '"01"'],
    ['{"a": 1,}', 9, 'a name in double quotes', '"}"'],
    ['[1, ]', 5, 'a value', '"]"'],
    ['["é", 2 3]', 9, 'a comma or "]"', '"3"'],
    ['["a\nb"]', 4, 'a closing double quote', 'the end of the line'],
    ['["a\\x"]', 4, 'an escape', '"\\"'],
    ['["a', 4, 'a closing double quote', 'the end of the text'],
    ['{"a" 1}', 6, 'a colon', '"1"'],
    ["['a']", 2, 'a value', 'a single quote'],
    ['[1] "a"', 5, 'the end of the document', 'a double quote'],
    ['[NaN]', 2, 'a value', '"NaN"'],
  ])('%j', (text, column, expected, found) => {
    const said = faultOf(text).toLowerCase();
    expect(said).toContain(`line 1, column ${column}: ${expected}`);
    expect(said).toContain(`not ${found.toLowerCase()}`);
  });

  test('lines and columns are counted from 1, columns in characters', () => {
    expect(faultOf('{\r\n\t"a": "😀" x}')).toContain('line 2, column 11');
  });
});

function isJson(text: string): boolean {
  try {
    JSON.parse(text);
    return true;
  } catch {
    return false;
  }
}
