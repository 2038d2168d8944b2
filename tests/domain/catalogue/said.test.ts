/**
 * What is said of documents: each row of the tables of broken and doubtful documents, word for
 * word as the text file beside the table has it; and every code that can be said has its row.
 */

import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { DOUBT_CODES, FAULT_CODES } from '../../../src/domain/catalogue/fault-codes.js';
import { BROKEN_FORMS } from './broken-forms.js';
import { BROKEN_MEANINGS } from './broken-meanings.js';
import { DOUBTFUL_DOCUMENTS } from './doubtful-documents.js';
import { RUINED } from './ruined-document.js';
import { type Changes, changed, linesOf, saidOf, sampleDocument } from './sample-document.js';

const TABLES: Readonly<Record<string, Readonly<Record<string, Changes>>>> = {
  'broken-forms': BROKEN_FORMS,
  'broken-meanings': BROKEN_MEANINGS,
  'doubtful-documents': DOUBTFUL_DOCUMENTS,
  'ruined-document': RUINED,
};

/** The paragraphs of a text file by their headings. */
function paragraphsOf(table: string): Map<string, string> {
  const text = readFileSync(new URL(`./${table}.txt`, import.meta.url), 'utf8');
  const paragraphs = text.split(/^# /m).slice(1);
  return new Map(
    paragraphs.map((paragraph) => {
      const end = paragraph.indexOf('\n');
      const lines = paragraph.slice(end + 1).trimEnd();
      return [paragraph.slice(0, end), lines === '' ? '' : `${lines}\n`];
    }),
  );
}

it('nothing is said of the whole sample', () => {
  expect(linesOf(saidOf(sampleDocument()))).toBe('');
});

describe.each(Object.entries(TABLES))('%s', (name, table) => {
  const paragraphs = paragraphsOf(name);

  it('has one paragraph for each row, in the same order', () => {
    expect([...paragraphs.keys()]).toEqual(Object.keys(table));
  });

  it.each(Object.entries(table))('%s', (row, changes) => {
    expect(linesOf(saidOf(changed(changes)))).toBe(paragraphs.get(row));
  });
});

describe('the codes', () => {
  const texts = Object.keys(TABLES).flatMap((name) => [...paragraphsOf(name).values()]);
  const reached = (sort: string) =>
    new Set(
      texts.flatMap((text) => {
        return [...text.matchAll(/^(\w+) ([a-z-]+) /gm)]
          .filter(([, word]) => word === sort)
          .map(([, , code]) => code);
      }),
    );

  // Said of what is no document at all, or has more than can be listed: held in
  // `hostile.test.ts` and `counted.test.ts`.
  const elsewhere = ['not-a-document', 'too-many-faults', 'too-many-doubts'];

  it('of faults all have a row, and no other code is said', () => {
    const wanted = FAULT_CODES.filter((code) => !elsewhere.includes(code));
    expect(reached('fault')).toEqual(new Set(wanted));
  });

  it('of doubts all have a row, and no other code is said', () => {
    const wanted = DOUBT_CODES.filter((code) => !elsewhere.includes(code));
    expect(reached('doubt')).toEqual(new Set(wanted));
  });

  it('are each declared once, in words of small letters and dashes', () => {
    for (const codes of [FAULT_CODES, DOUBT_CODES]) {
      expect(new Set(codes).size).toBe(codes.length);
      for (const code of codes) expect(code).toMatch(/^[a-z]+(-[a-z]+)*$/);
    }
  });
});
