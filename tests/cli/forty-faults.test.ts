/**
 * A document with forty mistakes that people make when they write their first catalogue: all of
 * them are said at once, each once, each at its place, in words that say how to mend it.
 */

import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { run } from './terminal.js';

const file = 'forty-faults.json';
const text = readFileSync(new URL(file, import.meta.url), 'utf8');

test('forty faults are listed as they read here', async () => {
  const { code, out, err } = await run(['lint', file], { files: { [file]: text } });
  expect([code, err]).toEqual([2, '']);
  const [head, ...lines] = out.trimEnd().split('\n');
  expect(head).toBe('forty-faults.json: 40 faults, 0 warnings');
  expect(new Set(lines.map((line) => line.split(': ')[0])).size).toBe(40);
  await expect(out).toMatchFileSnapshot('forty-faults.txt');
});
