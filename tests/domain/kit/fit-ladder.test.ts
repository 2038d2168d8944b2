/**
 * The ladder from what the part does alone, and what the search for changes found, to the verdict.
 */

import { describe, expect, test } from 'vitest';
import type { Outcome } from '../../../src/domain/check/state.js';
import {
  type ChangedVerdict,
  overallOf,
  type Rung,
  rungOf,
} from '../../../src/domain/kit/fit-ladder.js';
import type { Kits, Route, RouteGrade } from '../../../src/domain/kit/route.js';

/** Routes of these grades; `…` where the search ended early. */
function kits(text: string): Kits {
  const grades = text.replace('…', '').trim().split(' ');
  const routes = grades.flatMap((grade) =>
    grade === '' ? [] : ({ grade: grade as RouteGrade } as Route),
  );
  const isComplete = !text.includes('…');
  return { routes, isComplete, hasMore: false, bound: null, steps: 1 };
}

describe('at one place', () => {
  test.each<readonly [Outcome, string, ChangedVerdict, string, boolean]>([
    ['open', 'proven open', 'unknown', 'the first', true],
    ['open', 'open', 'unknown', 'none', true],
    ['open', '', 'unknown', 'none', true],
    ['open', '…', 'unknown', 'none', false],
    ['fails', 'proven', 'fits-with-changes', 'the first', true],
    ['fails', 'proven …', 'fits-with-changes', 'the first', false],
    ['fails', 'open', 'unknown', 'the first', true],
    ['fails', 'open …', 'unknown', 'the first', false],
    ['fails', '', 'does-not-fit', 'none', true],
    ['fails', '…', 'unknown', 'none', false],
  ])('alone %s, routes "%s": %s, kit %s', (alone, text, verdict, kit, isComplete) => {
    const found = kits(text);
    const rung = rungOf(alone, found);
    const route = kit === 'none' ? null : (found.routes[0] ?? null);
    expect(rung).toEqual({ verdict, route, isComplete });
  });

  test('what holds alone fits, and nothing is looked for', () => {
    expect(rungOf('holds', null)).toEqual({ verdict: 'fits', route: null, isComplete: true });
  });

  test('what nobody looked for is never said not to fit', () => {
    expect(rungOf('fails', null).verdict).toBe('unknown');
  });
});

describe('over all places', () => {
  const rungs = (verdicts: readonly ChangedVerdict[]): Rung[] =>
    verdicts.map((verdict) => ({ verdict, route: null, isComplete: true }));

  test.each<readonly [readonly ChangedVerdict[], ChangedVerdict, readonly number[], boolean]>([
    [['does-not-fit', 'fits'], 'fits', [1], true],
    [['fits-with-changes', 'unknown', 'fits-with-changes'], 'fits-with-changes', [0, 2], true],
    [['unknown', 'does-not-fit'], 'unknown', [0], true],
    [['does-not-fit', 'does-not-fit'], 'does-not-fit', [0, 1], false],
    [[], 'does-not-fit', [], false],
  ])('%s: the best is %s', (verdicts, verdict, at, isAmbiguous) => {
    expect(overallOf(rungs(verdicts))).toEqual({ verdict, at, isAmbiguous });
  });
});
