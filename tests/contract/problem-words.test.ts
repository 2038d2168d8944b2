/**
 * Every language says of problems and of faults what the others say: each code has a sentence of
 * its own, which names what its data names.
 */

import { describe, expect, test } from 'vitest';
import { SPOKEN_LANGUAGES } from '../../src/contract/language.js';
import type { Fault, FaultCode, JsonStop } from '../../src/contract/problems/fault.js';
import { FAULT_EXAMPLES } from '../../src/contract/problems/fault-examples.js';
import {
  problemWords,
  saidFault,
  sayDetail,
  sayFault,
  sayStop,
} from '../../src/contract/problems/words.js';

const CODES = Object.keys(FAULT_EXAMPLES) as FaultCode[];

function sample(code: FaultCode): Fault {
  return { code, data: FAULT_EXAMPLES[code] } as Fault;
}

/** A fault as it is where nothing can be guessed. */
function unguessed(code: FaultCode): Fault {
  const { data } = sample(code);
  return { code, data: 'meant' in data ? { ...data, meant: null } : data } as Fault;
}

/** Which of the data a sentence names. */
function namedIn(sentence: string, { data }: Fault): string[] {
  return Object.entries(data)
    .filter(([, value]) => [value].flat().every((one) => sentence.includes(String(one))))
    .map(([name]) => name);
}

/** The words of the domain are those of documents, and come in one language. */
const QUOTED: readonly FaultCode[] = [
  'not-a-torque',
  'face-at-fault',
  'amount-at-fault',
  'condition-at-fault',
  'reading-at-fault',
  'input-at-fault',
];

describe.each(SPOKEN_LANGUAGES)('%s', (lang) => {
  test.each(CODES)('%s', (code) => {
    for (const fault of [sample(code), unguessed(code)]) {
      const said = sayFault(fault, lang);
      expect(said).toMatch(/^[\p{Lu}„“"/].*[.?]$/u);
      expect(said).not.toMatch(/undefined|null|\[object|\s[.,;]| {2}/);
      expect(namedIn(said, fault)).toEqual(namedIn(sayFault(fault, 'en'), fault));
    }
  });

  test('titles and what types mean', () => {
    const types = Object.values(problemWords(lang).problems);
    for (const { title, about } of types) {
      expect(title).toMatch(/^\p{Lu}.*[^.]$/u);
      expect(about).toMatch(/^\S.*\.$/);
    }
    expect(new Set(types.map(({ title }) => title)).size).toBe(types.length);
  });
});

test.each(CODES.filter((code) => !QUOTED.includes(code)))('%s is said in another way', (code) => {
  const [english, ...others] = SPOKEN_LANGUAGES.map((lang) => sayFault(sample(code), lang));
  for (const other of others) expect(other).not.toBe(english);
});

test.each(QUOTED)('%s quotes the domain, and tells in which language', (code) => {
  const { data } = sample(code);
  if (!('because' in data)) throw new Error(`${code} quotes nothing`);
  const { because, text } = data;
  expect(saidFault(sample(code), 'en')).toEqual({ code, data: { because }, text });
  expect(saidFault(sample(code), 'de')).toEqual({ code, data: { because }, text, lang: 'en' });
});

test('what is missing where a text stops being JSON is said in words', () => {
  const stop: JsonStop = {
    line: 1,
    column: 1,
    offset: 0,
    expected: 'comma-or-brace',
    found: 'end-of-text',
    sign: null,
  };
  expect(sayStop(stop, 'en')).toBe('a comma or "}" is expected, not the end of the text');
  expect(sayStop(stop, 'de')).toBe(
    'erwartet wird ein Komma oder „}“, dort steht das Ende des Textes',
  );
});

test('the first fault of form is said at its place, with how many others there are', () => {
  const faults = (count: number) =>
    Array.from({ length: count }, () => ({ ...sample('missing'), parameter: 'part' }));
  const said = (count: number, lang: 'en' | 'de') =>
    sayDetail('invalid-request', faults(count), lang);
  expect([said(1, 'en'), said(1, 'de')]).toEqual([
    'part: It is missing.',
    'part: Die Angabe fehlt.',
  ]);
  expect([said(2, 'en'), said(2, 'de')]).toEqual([
    'part: It is missing. And 1 more fault.',
    'part: Die Angabe fehlt. Und ein weiterer Fehler.',
  ]);
  expect([said(3, 'en'), said(3, 'de')]).toEqual([
    'part: It is missing. And 2 more faults.',
    'part: Die Angabe fehlt. Und 2 weitere Fehler.',
  ]);
  expect([said(70, 'en'), said(70, 'de')]).toEqual([
    'part: It is missing. And more than 49 others.',
    'part: Die Angabe fehlt. Und mehr als 49 weitere.',
  ]);
});

test('a long name is not sent back whole', () => {
  const fault = { code: 'unknown-part', data: { name: 'x'.repeat(200), meant: null } } as const;
  const { data, text } = saidFault(fault, 'en');
  expect(data.name).toBe(`${'x'.repeat(64)}…`);
  expect(text.length).toBeLessThan(100);
});
