/**
 * Every language says what the others say: each code has a sentence of its own, and nobody is told
 * that a part is safe or legal.
 */

import { describe, expect, test } from 'vitest';
import { ENGLISH } from '../../../src/domain/explain/english.js';
import { GERMAN } from '../../../src/domain/explain/german.js';
import {
  CAUTION_GROUPS,
  type Named,
  type NamedValue,
  REASON_CODES,
  type ReasonData,
  type ShownValue,
} from '../../../src/domain/explain/reason.js';
import type { Words } from '../../../src/domain/explain/sentence.js';
import {
  languageFor,
  partOfQuestion,
  SPOKEN,
  say,
  sayBuilt,
  sayCaution,
  sayField,
  sayPoints,
  spokenFor,
} from '../../../src/domain/explain/words.js';
import { TOOLS } from '../../../src/domain/quantity/quantity.js';

const TABLES: readonly (readonly [string, Words])[] = [
  ['en', ENGLISH],
  ['de', GERMAN],
];

const named: Named = {
  position: 'p',
  positionName: 'Qplace',
  hand: 'left',
  part: 'q',
  partName: 'Qpart',
  interface: 'qface-f',
  kindName: 'Qkind',
};

function value(parameterName: string, text: string | null): NamedValue {
  return { ...named, parameter: 'x', parameterName, value: text === null ? null : shown(text) };
}

function shown(text: string): ShownValue {
  return { text, low: '1', high: '2', unit: 'mm' };
}

/** As little as an answer ever gives. */
const LEAST: ReasonData = {
  choices: [value('Qgamma', '7 mm'), value('Qdelta', null)],
  text: 'Qtext',
  names: ['Qname'],
  asked: shown('8 mm'),
};

/** Data with every field but the choices, which two sentences turn on. */
const UNCHOSEN: ReasonData = {
  left: value('Qalpha', '1 mm'),
  right: value('Qbeta', '2 mm'),
  missing: [value('Qgamma', null), { ...value('Qdelta', null), part: null, partName: null }],
  odd: {
    of: 'left',
    point: { text: '(3, 4) mm', x: shown('3 mm'), y: shown('4 mm') },
    apart: shown('5 mm'),
  },
  says: 'Qsays.',
  a: named,
  b: { ...named, partName: 'Qother' },
  adapters: ['Qplate'],
  part: named,
  margin: shown('6 mm'),
  vehicles: ['Qcar'],
  basis: 'maker',
  because: 'Qbecause.',
  statement: 'qstatement',
  between: ['one', 'two'],
  order: shown('8 mm'),
  text: 'Qtext',
  count: 9,
  needed: shown('±0.1 mm'),
  tool: 'Qtool',
  names: ['Qname'],
  asked: shown('8 mm'),
  takes: shown('9 mm'),
};

const FULL: ReasonData = { ...UNCHOSEN, ...LEAST };

/** What a sentence names of the data. */
const NAMED = /q[a-z]+|\d mm|\(3, 4\)|±0\.1|\b9\b|\bleft\b|\blinks\b|maker|hersteller/gi;
const ENGLISH_OF: Readonly<Record<string, string>> = { links: 'left', hersteller: 'maker' };

function namedIn(sentence: string): string[] {
  const words = sentence.match(NAMED) ?? [];
  return [
    ...new Set(words.map((word) => ENGLISH_OF[word.toLowerCase()] ?? word.toLowerCase())),
  ].sort();
}

/** Words that no answer may use of a part or of work on it. */
const FORBIDDEN =
  /\b(un)?safe|\blegal|\ballowed|\bpermitted|\b(un)?sicher|zulässig|gesetzlich|erlaubt|zugelassen/i;

test('the tables are those that are spoken', () => {
  expect(TABLES.map(([lang]) => lang)).toEqual(SPOKEN);
});

describe.each(TABLES)('%s', (lang, words) => {
  test.each(REASON_CODES.map((code) => [code]))('%s', (code) => {
    const full = say({ code, data: FULL }, lang);
    const least = say({ code, data: LEAST }, lang);
    for (const sentence of [full, least]) {
      expect(sentence).toMatch(/^[\p{Lu}„“]/u);
      expect(sentence).not.toMatch(/undefined|null|\[object|\s[.,;:]|\.\.|,,/);
      expect(sentence).not.toMatch(FORBIDDEN);
    }
  });

  test('cautions', () => {
    const said = CAUTION_GROUPS.map((group) => sayCaution(group, lang));
    expect(new Set(said).size).toBe(CAUTION_GROUPS.length);
    for (const caution of said) expect(caution).not.toMatch(FORBIDDEN);
    expect(sayCaution('no group', lang)).toBe(words.cautions.general);
  });

  test('tools', () => {
    const names = Object.values(TOOLS).map(({ name }) => name[lang]);
    expect(names).not.toContain(undefined);
    expect(new Set(names).size).toBe(names.length);
  });
});

describe('German beside English', () => {
  test.each(REASON_CODES.map((code) => [code]))('%s names the same things', (code) => {
    const open = { ...FULL, a: { ...named, part: null, partName: null } };
    for (const data of [FULL, LEAST, open, UNCHOSEN]) {
      const [english, german] = ['en', 'de'].map((lang) => say({ code, data }, lang));
      expect(namedIn(german ?? '')).toEqual(namedIn(english ?? ''));
    }
  });

  test.each(REASON_CODES.map((code) => [code]))('%s is another sentence', (code) => {
    // The sentence of a rule that is met, and of a caution, is the catalogue's own.
    const data = { ...FULL, because: undefined, text: undefined } as unknown as ReasonData;
    expect(say({ code, data }, 'de')).not.toBe(say({ code, data }, 'en'));
  });

  test('counts points, and names what a question writes out', () => {
    expect([sayPoints(1, 'de'), sayPoints(5, 'de')]).toEqual(['1 Punkt', '5 Punkte']);
    expect([sayPoints(1, 'en'), sayPoints(5, 'en')]).toEqual(['1 point', '5 points']);
    expect(partOfQuestion('b')).toEqual({ en: 'part b of the question', de: 'Teil b der Frage' });
  });
});

describe('which language is spoken', () => {
  test.each([
    ['de', 'de'],
    ['DE-at', 'de'],
    ['en-GB', 'en'],
    ['den', null],
    ['', null],
    ['fr', null],
  ])('%s: %s', (tag, lang) => {
    expect(languageFor(tag)).toBe(lang);
    expect(spokenFor(tag)).toBe(lang ?? 'en');
  });
});

describe('what is asked of vehicles', () => {
  test.each(TABLES)('%s has a name for each, and a hint for the same ones', (lang) => {
    const fields = ['make', 'model', 'variant', 'year', 'built'] as const;
    const said = fields.map((field) => sayField(field, lang));
    expect(new Set(said.map(({ name }) => name)).size).toBe(fields.length);
    expect(said.map(({ how }) => how !== null)).toEqual([false, false, false, true, true]);
    expect(said.every(({ how }) => how === null || how.endsWith('.'))).toBe(true);
  });

  test.each([
    [['2002-09', '2005-08'], '09/2002 to 08/2005', '09/2002 bis 08/2005'],
    [['2002-09', null], 'from 09/2002', 'ab 09/2002'],
    [[null, '2005-08'], 'until 08/2005', 'bis 08/2005'],
    [[null, null], null, null],
  ] as const)('%j', (built, english, german) => {
    expect([sayBuilt(built, 'en'), sayBuilt(built, 'de')]).toEqual([english, german]);
  });
});
