/**
 * What a caution says to look out for is said only while there is something to look out for.
 */

import { expect, test } from 'vitest';
import type { JudgedView } from '../../src/usecases/answer.js';
import { fits } from './questions.js';
import { transverse } from './transverse.js';

const answers = [
  ...Object.values(fits).map((ask) => ask()),
  ...Object.values(transverse).map(({ ask }) => ask()),
];
const judged: readonly JudgedView[] = answers.flatMap((answer) =>
  'positions' in answer ? answer.positions : [],
);

const cautions = judged
  .flatMap(({ matings, checks }) => [...matings, ...checks])
  .flatMap(({ checks }) => checks)
  .filter(({ severity }) => severity === 'caution');

test('nothing is told to be the matter with what holds', () => {
  const held = cautions.filter(({ state }) => state === 'holds');
  expect(held.length).toBeGreaterThan(20);
  for (const { data } of held) expect(data.says).toBeUndefined();
  const current = held.find(({ check }) => check === 'current');
  expect(current?.text).toMatch(/^Current /);
  expect(current?.text).toContain('within limits');
});

test('what does not hold says what is the matter', () => {
  const others = cautions.filter(({ state }) => state !== 'holds');
  expect(others.length).toBeGreaterThan(0);
  for (const { data, text } of others) expect(text).toContain(data.says);
});
