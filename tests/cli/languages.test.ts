/**
 * The language around the sentences: what the commands themselves print follows `--lang`, in the
 * words of that language and no other.
 */

import { beforeAll, describe, expect, test } from 'vitest';
import { ENGLISH } from '../../src/cli/words/english.js';
import { GERMAN } from '../../src/cli/words/german.js';
import { demoDocument } from '../memory-store.js';
import { cartDatabase, freshDatabase, run } from './terminal.js';

let cart: string;
let demo: string;
beforeAll(async () => {
  cart = await cartDatabase();
  demo = freshDatabase();
  const { code, err } = await run(['publish', '-'], {
    database: demo,
    input: JSON.stringify(demoDocument()),
  });
  if (code !== 0) throw new Error(err);
});

async function page(line: string, database = demo): Promise<string> {
  const { code, out, err } = await run(line.split(' '), { database });
  expect([line, code, err]).toEqual([line, 0, '']);
  return out.replaceAll(/\s+/g, ' ');
}

/** All texts in a table of words; of those that are made, what they are made of. */
function textsIn(words: unknown): string[] {
  if (typeof words === 'string') return [words];
  if (typeof words !== 'object' || words === null) return [];
  return Object.values(words).flatMap(textsIn);
}

const QUESTIONS = [
  'fit lirren-1 gearbox-6-late',
  'fit lirren-1 gearbox-6-late --position gearbox --fitted prop-shaft=unknown',
  'fit lirren-1 gearbox-5-early',
  'fit lirren-1 bracket-20',
  'fit hulvane wheel-15-106',
  'inspect hulvane --fitted gearbox=gearbox-6-late',
  'inspect ordale-2',
  'mate gearbox-6-late prop-early --a-face rear --b-face front --adapter adapter-70-65',
];

describe('what is printed around the sentences', () => {
  // Words of a few letters stand in other words, and some are the same in both languages.
  const english = textsIn([ENGLISH.answer, ENGLISH.finding, ENGLISH.fit]);
  const german = new Set(textsIn(GERMAN));
  const own = english.filter((text) => text.length > 5 && !german.has(text));

  test('has headings to be looked for', () => {
    expect(own).toContain('To measure or find out:');
    expect(own.length).toBeGreaterThan(12);
  });

  test.each(QUESTIONS)('%s', async (line) => {
    const [said, gesagt] = [await page(line), await page(`${line} --lang de`)];
    expect(own.filter((text) => said.includes(text))).not.toEqual([]);
    expect(own.filter((text) => gesagt.includes(text))).toEqual([]);
    expect(said).toMatch(/ Edition 1, engine [\d.]+\. $/);
    expect(gesagt).toMatch(/ Ausgabe 1, Programm [\d.]+\. $/);
    expect([/“[^”]*”/.test(said), /„[^“]*“/.test(gesagt), gesagt.includes('”')]).toEqual([
      said.includes('“'),
      gesagt.includes('„'),
      false,
    ]);
  });

  test('is English where a language is not spoken, as the sentences are', async () => {
    const [line] = QUESTIONS;
    expect(await page(`${line} --lang tlh`)).toBe(await page(`${line}`));
    expect(await page(`${line} --lang de-AT`)).toBe(await page(`${line} --lang de`));
  });
});

describe('values behind a sentence', () => {
  test('stand there where it leaves them out, by name and in its language', async () => {
    // By its name, which is not its id.
    expect(await page('fit hulvane gearbox-6-late')).toContain(
      ' (front shaft torque 1066.1 ±1.8 N.m)',
    );
    expect(await page('fit hulvane gearbox-6-late --lang de')).toContain(
      ' (Moment an der vorderen Antriebswelle 1066,1 ±1,8 Nm)',
    );
  });

  test('do not where it has them, rounded as a computed value is said', async () => {
    const open = await page('fit cart-1 box-c', cart);
    expect(open).toContain(', to compare with 60.10 ±0.02 mm (“long shaft a”).');
    expect(open).not.toContain('(register 60.10');
    const out = await page('fit lirren-1 engine-late');
    const [, after] =
      /is less than what it must bear: 1078\.6 to 1082\.1 N\.m\.(.{3})/.exec(out) ?? [];
    expect(after).toBe(' - ');
    expect(out).not.toContain('rear shaft torque');
  });
});
