/**
 * The search behind a kit question, saved as text and run again without the catalogue.
 */

import { expect, test } from 'vitest';
import { replayKits, type SavedKits, saveKits } from '../../../src/domain/kit/saved-kits.js';
import { demoQuestion } from './demo-question.js';

const wish = { vehicle: 'lirren-1', part: 'gearbox-6-late', position: 'gearbox' };
const saved = saveKits(demoQuestion(wish));
const asText = JSON.stringify(saved);

test('a replay finds what was found, in as many steps', () => {
  const replayed = replayKits(JSON.parse(asText) as SavedKits);
  expect(replayed.isSame).toBe(true);
  expect(replayed.results).toEqual(saved.outcome.results);
  expect(replayed.results.length).toBeGreaterThan(3);
  expect(replayed.results[0]?.changes).toContain('gearbox: gearbox-6-late');
});

test('saved twice, the text is the same', () => {
  expect(JSON.stringify(saveKits(demoQuestion(wish)))).toBe(asText);
});

test('a replay is not the same as what was never found', () => {
  const other = JSON.parse(asText) as { outcome: { stepsTaken: number } } & SavedKits;
  other.outcome.stepsTaken += 1;
  expect(replayKits(other).isSame).toBe(false);
});

test('what was never asked cannot be answered', () => {
  const short = JSON.parse(asText) as SavedKits;
  const less = { ...short, problem: { ...short.problem, exacts: [] } };
  expect(() => replayKits(less)).toThrow('the saved problem was never asked: exact price');
});
