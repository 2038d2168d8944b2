/**
 * What the command line prints to kit questions, whole and in both languages: ways with the reasons
 * of each line, and why there is none where a ratio, a load, a length, a price or a gap in the
 * records is in the way. The README of the demo tells each of them, with numbers that are printed.
 */

import { readFileSync } from 'node:fs';
import { beforeAll, describe, expect, test } from 'vitest';
import { freshDatabase, run } from '../cli/terminal.js';
import { KIT_PAGES } from './kit-pages.js';

const demo = new URL('../../db/demo/', import.meta.url);
const read = (name: string): string => readFileSync(new URL(name, demo), 'utf8');

const database = freshDatabase();
beforeAll(async () => {
  const files = { 'demo.ndjson': read('catalogue.ndjson') };
  await run(['publish', 'demo.ndjson'], { files, database });
});

const questions = Object.entries(KIT_PAGES).flatMap(([layout, pages]) =>
  Object.entries(pages).map(([id, line]) => ({ name: `${layout}/${id}`, line })),
);

async function pageOf(line: string, lang: string): Promise<string> {
  const words = ['kits', ...line.split(' '), '--lang', lang];
  const { code, out, err } = await run(words, { database, columns: 100 });
  expect([code, err]).toEqual([0, '']);
  // The version of the program grows.
  return out.replace(/\d+\.\d+\.\d+(?=\. )/, 'x.y.z');
}

/** What the README says of each question: under `Kit question`, with the layout of its section. */
const told = read('README.md')
  .split('\n## ')
  .flatMap((section) => {
    const layout = /^[^\n]*\(`([a-z0-9-]+)`\)\n/u.exec(section)?.[1] ?? '';
    const table = section.split('\n\n').find((text) => text.startsWith('| Kit question |')) ?? '';
    return table
      .trim()
      .split('\n')
      .slice(2)
      .map((row) => {
        const [, id = '', asked = '', answer = ''] = row.split('|').map((cell) => cell.trim());
        return { name: `${layout}/${id.replaceAll('`', '')}`, asked, answer };
      });
  });

describe.each(questions)('$name', ({ name, line }) => {
  test('in English, as the README of the demo tells it', async () => {
    const page = await pageOf(line, 'en');
    await expect(page).toMatchFileSnapshot(`golden/kits/${name}.txt`);
    const { asked, answer } = told.find((one) => one.name === name) ?? { asked: '', answer: '' };
    const named = [...asked.matchAll(/`([^`]+)`/gu)].map(([, word = '']) => word);
    expect(named.length).toBeGreaterThan(0);
    expect(named.filter((word) => !line.split(/[ @]/).includes(word))).toEqual([]);
    const numbers = answer.match(/\d+(?:\.\d+)?/gu) ?? [];
    expect(numbers.length).toBeGreaterThan(0);
    const flat = page.replaceAll(/\s+/gu, ' ');
    expect(numbers.filter((number) => !flat.includes(number))).toEqual([]);
  });

  test('in German', async () => {
    const page = await pageOf(line, 'de');
    await expect(page).toMatchFileSnapshot(`golden/de/kits/${name}.txt`);
    const prose = page.replaceAll(/\([a-z0-9+-]+\)/gu, '');
    expect(prose).not.toMatch(/\b(path|length|torque|demand|shaft|axle|place|with|would)\b/);
  });
});

test('the README tells these questions and no others', () => {
  expect(told.map(({ name }) => name)).toEqual(questions.map(({ name }) => name));
});
