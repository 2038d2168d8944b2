/**
 * The page on writing a catalogue is true: what it quotes stands in the example, its table says
 * what values stand for, its listings are what the program says, and its links lead somewhere.
 */

import { existsSync, readFileSync } from 'node:fs';
import { isDeepStrictEqual } from 'node:util';
import { describe, expect, test } from 'vitest';
import { DOCUMENT_FIELDS } from '../src/domain/catalogue/shape.js';
import { BASES } from '../src/domain/check/state.js';
import { type Interval, isPoint } from '../src/domain/quantity/interval.js';
import { isFault, parseQuantity } from '../src/domain/quantity/quantity.js';
import { compare, type Rational, rational, shortText } from '../src/domain/quantity/rational.js';
import { freshDatabase, run } from './cli/terminal.js';

const folder = new URL('../db/', import.meta.url);
const read = (path: string) => readFileSync(new URL(path, folder), 'utf8');
const page = read('catalogue.md');
const example: unknown = JSON.parse(read('example.json'));
const blocksOf = (language: string) =>
  [...page.matchAll(new RegExp(`\`\`\`${language}\n(.*?)\n\`\`\``, 'gs'))].map(
    ([, block = '']) => block,
  );

/** Every object in a value, however deep. */
function objectsIn(raw: unknown): Readonly<Record<string, unknown>>[] {
  if (typeof raw !== 'object' || raw === null) return [];
  const own = Array.isArray(raw) ? [] : [raw as Readonly<Record<string, unknown>>];
  return [...own, ...Object.values(raw).flatMap(objectsIn)];
}

const objects = objectsIn(example);

/** Whether an object, or one of its fields, stands in the example. */
function isInExample(quote: string): boolean {
  const isField = quote.startsWith('"');
  const raw: unknown = JSON.parse(isField ? `{${quote}}` : quote);
  if (!isField) return objects.some((one) => isDeepStrictEqual(one, raw));
  return Object.entries(raw as object).every(([name, value]) =>
    objects.some((one) => Object.hasOwn(one, name) && isDeepStrictEqual(one[name], value)),
  );
}

function said(interval: Interval): string {
  const { low, high, highOpen } = interval;
  if (low === null || high === null) throw new Error('what is recorded has two ends');
  const [from, to] = [low, high].map(shown);
  if (isPoint(interval)) return `${from}`;
  return highOpen ? `${from} to below ${to}` : `${from} to ${to}`;
}

/** As a decimal where that is exact. */
function shown(value: Rational): string {
  const decimal = shortText(value);
  return compare(rational(decimal), value) === 0 ? decimal : value.toFraction();
}

describe('the page on writing a catalogue', () => {
  test.each(blocksOf('json'))('quotes %s', (block) => {
    expect(isInExample(block)).toBe(true);
  });

  test('a quote that stands nowhere is seen', () => {
    expect(isInExample('"rear-drive": "12/11"')).toBe(false);
    expect(isInExample('{ "absent": false }')).toBe(false);
  });

  test('quotes of fitted parts as they are', () => {
    const rows = [...page.matchAll(/^\| `("[^`]+)` \|/gm)].map(([, quote = '']) => quote);
    expect(rows.length).toBeGreaterThan(4);
    expect(rows.filter((quote) => !isInExample(quote))).toEqual([]);
  });

  const row = /^\| `([^`]+)`(?:, read \w+ (?:a )?`([a-z-]+)`)? \| (\w+) \| ([^|]+) \|$/gm;
  const values = [...page.matchAll(row)].map(([, ...cells]) => cells as (string | undefined)[]);

  test.each(values)('%s, tool %s, %s: %s', (text = '', tool, type = '', meaning) => {
    const isType = type === 'count' || type === 'designation' || type === 'ratio';
    const asked = isType ? type : 'measured';
    const dimension = asked === 'count' || asked === 'ratio' ? '1' : 'length';
    const quantity = parseQuantity(text, { type: asked, dimension, tool });
    if (isFault(quantity)) throw new Error(quantity.text);
    expect(said(quantity.interval)).toBe(meaning);
  });

  test('shows a value of each type that is a number', () => {
    expect(values.length).toBeGreaterThanOrEqual(15);
    const types = new Set(values.map(([, , type]) => type));
    expect(types).toEqual(new Set(['count', 'designation', 'measured', 'ratio']));
  });

  test('shows the forty faults as they are listed', () => {
    expect(blocksOf('text')).toContain(read('../tests/cli/forty-faults.txt').trimEnd());
  });

  test('shows lines, and what is said of them', async () => {
    const [lines = '', listing = ''] = blocksOf('text');
    const { out } = await run(['lint', 'hubs.ndjson'], { files: { 'hubs.ndjson': lines } });
    expect(out.trimEnd()).toBe(listing);
  });

  test('says what to order, and what a worked part is called', async () => {
    const database = freshDatabase();
    const files = { 'example.json': read('example.json') };
    await run(['publish', 'example.json'], { files, database });
    const beside = ['linkage=link-6', 'prop-shaft=prop-auto', 'rear-final-drive=axle-b'];
    const words = ['fit', 'tarn-1', 'gb6-late', ...beside.flatMap((one) => ['--with', one])];
    const { out } = await run(words, { database });
    expect(out).toContain('1360 ±1 mm');
    expect(page).toContain('1360 ±1 mm');
    expect(page).toContain('faying fit tarn-1 hub-106+redrill');
    const worked = await run(['fit', 'tarn-1', 'hub-106+redrill'], { database });
    expect([worked.code, worked.err]).toEqual([0, '']);
  });

  test('names every list and every basis', () => {
    for (const basis of BASES) expect(page).toContain(`| \`${basis}\` |`);
    for (const [name, { shape }] of Object.entries(DOCUMENT_FIELDS)) {
      if (shape.is === 'list') expect(page).toContain(`\`${name}\``);
    }
  });

  test.each([...page.matchAll(/\]\(([^)]+)\)/g)].map(([, path = '']) => path))(
    'links to %s',
    (path) => {
      expect(existsSync(new URL(path, folder))).toBe(true);
    },
  );
});
