/**
 * The table of limits: every one is told by its own name, and whoever holds it takes its number
 * from the table.
 */

import { expect, test } from 'vitest';
import { LIMIT_NAMES, LIMITS } from '../../src/contract/limits.js';
import { codeOf, filesOf } from '../source-text.js';

/** What the domain holds, since it knows no contract; the table takes the number from it. */
const HELD_BY_THE_DOMAIN = ['numberDigits', 'faceAlternatives', 'facePoints'];

test.each(LIMIT_NAMES)('%s is a whole number of something', (name) => {
  expect(name).toMatch(/^[a-z]+([A-Z][a-z]+)*$/);
  const { value, unit, about } = LIMITS[name];
  expect(Number.isSafeInteger(value) && value > 0).toBe(true);
  expect(unit).not.toBe('');
  expect(about).toMatch(/^[A-Z].*\.$/);
});

test('whoever holds a limit takes its number from the table', () => {
  const code = filesOf('src', /\.ts$/)
    .filter(({ path }) => path !== 'src/contract/limits.ts')
    .map(({ text }) => codeOf(text))
    .join('\n');
  const held = LIMIT_NAMES.filter((name) => code.includes(`LIMITS.${name}.value`));
  const others = LIMIT_NAMES.filter((name) => !held.includes(name));
  expect(others).toEqual(HELD_BY_THE_DOMAIN);
});
