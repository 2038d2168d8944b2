/**
 * What is said of documents: each row of the tables of broken and doubtful documents, word for
 * word as the text file beside the table has it.
 */

import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
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
