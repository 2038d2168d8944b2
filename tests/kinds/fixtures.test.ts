/**
 * Runs every fixture of every kind: two faces, and what becomes of each check between them.
 */

import { describe, expect, test } from 'vitest';
import { BUILT_IN_KINDS } from '../../src/domain/kinds/registry.js';
import { meet, unrecordedIn, verdictOf } from './bench.js';
import { allFixtures, fixtureFolders } from './fixture.js';

const files = await allFixtures();

test('each built-in kind has a folder of fixtures, and no other folder is there', () => {
  expect(fixtureFolders()).toEqual(BUILT_IN_KINDS.map(({ id }) => id).sort());
});

describe.each(files)('$file', ({ kind, fixtures }) => {
  test('has fixtures of its kind, and each expects something', () => {
    expect(fixtures.length).toBeGreaterThan(0);
    for (const { faces, checks, outcome, says } of fixtures) {
      expect(faces.map((face) => face.kind)).toEqual([kind, kind]);
      expect(says.length).toBeGreaterThan(0);
      expect(Object.keys(checks).length).toBeGreaterThan(0);
      if (outcome !== 'holds') expect(Object.values(checks).join()).toContain(outcome);
    }
  });

  test.each(fixtures.map((fixture) => [fixture.says, fixture] as const))('%s', (_, fixture) => {
    const meeting = meet(...fixture.faces);
    const found = [...meeting.checks].map(([id, result]) => [id, verdictOf(result)]);
    expect(Object.fromEntries(found)).toEqual(fixture.checks);
    expect(meeting.outcome).toBe(fixture.outcome);
    const missing = [...meeting.checks.values()].flatMap((result) =>
      result.outcome === 'open' ? unrecordedIn(result) : [],
    );
    const named = [...(fixture.missing ?? [])].sort();
    expect([...new Set(missing)].sort()).toEqual(named);
  });
});

test('no two fixtures of a file say the same', () => {
  for (const { file, fixtures } of files) {
    const said = fixtures.map(({ says }) => says);
    expect([file, new Set(said).size]).toEqual([file, said.length]);
  }
});
