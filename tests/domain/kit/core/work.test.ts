/**
 * How much work a search does, counted in steps and in what it asks, never in time; and what it
 * says where the work is more than its budget.
 */

import { describe, expect, test } from 'vitest';
import type { Budget, Found, Problem } from '../../../../src/domain/kit/core/problem.js';
import { Search } from '../../../../src/domain/kit/core/search.js';
import { Tables } from '../../../../src/domain/kit/core/tables.js';
import { chain, familyOf, holdsWhere } from './chains.js';

interface Work {
  readonly found: readonly Found[];
  readonly search: Search;
  readonly steps: number;
  readonly asked: number;
}

function work(problem: Problem, left: number, most = Infinity): Work {
  const budget: Budget = { left };
  const tables = new Tables(problem);
  const search = new Search(tables, 'proven', budget);
  const found: Found[] = [];
  while (found.length < most) {
    const next = search.next();
    if (next === null) break;
    found.push(next);
  }
  const asked = tables.tables.reduce((sum, table) => sum + table.countAsked, 0);
  return { found, search, steps: left - budget.left, asked };
}

const row = { places: 20, parts: 29, loose: [], adapters: new Map<number, number>(), more: [] };

describe('a row of 20 places with 29 parts for each', () => {
  test('all of which have to change is found and left', () => {
    const { found, search, steps, asked } = work(chain(row), 1e5);
    expect(found.map(({ values }) => values)).toEqual([Array(20).fill(1)]);
    // There are 10 parts for each place that would do; all else changes the same places.
    expect(search.isExhausted).toBe(true);
    expect(steps).toBeLessThanOrEqual(150);
    expect(asked).toBeLessThanOrEqual(1500);
  });

  test('of which eight have to change asks nothing about the others', () => {
    const problem = chain({ ...row, loose: [7] });
    const { found, search, steps, asked } = work(problem, 1e5);
    expect(found.map(({ values }) => values.filter((value) => value !== 0).length)).toEqual([8]);
    expect(search.isExhausted).toBe(true);
    expect(steps).toBeLessThanOrEqual(60);
    expect(asked).toBeLessThanOrEqual(600);
  });

  test('with adapters on the way gives each place where the change can end', () => {
    const adapters = new Map([
      [3, 900],
      [6, 500],
      [11, 10],
    ]);
    const { found, search, steps } = work(chain({ ...row, adapters }), 1e5);
    const ends = found.map(({ values }) => values.slice(0, 20).lastIndexOf(1));
    expect(ends).toEqual([6, 3, 11, 19]);
    expect(search.isExhausted).toBe(true);
    expect(steps).toBeLessThanOrEqual(4000);
  });
});

describe('where nothing can be found', () => {
  /** Whatever the first and the last place have, it is not enough. */
  const never = {
    name: 'never',
    scope: [0, 5, 19],
    classes: [0, 1, 2].map(() => Array.from({ length: 30 }, (_, value) => Math.min(value, 1))),
    ask: ([first = 0]: readonly number[]) => ({ state: holdsWhere(first === 0), blame: [0] }),
  };

  test('it is said at once where one relation shows it', () => {
    const { found, search, steps } = work(chain({ ...row, more: [never] }), 1e5);
    expect([found, search.isExhausted, search.bound]).toEqual([[], true, Infinity]);
    expect(steps).toBeLessThanOrEqual(60);
  });

  test('and the budget ends first, the bound goes up and says nothing untrue', () => {
    // Of three places each two exclude each other: no relation shows it alone.
    const three = [5, 11, 17];
    const modulus = (value: number): number => (familyOf(value) === 1 ? value % 2 : 2);
    const more = [
      [5, 11],
      [11, 17],
      [5, 17],
    ].map((scope) => ({
      name: `unlike ${scope.join(' ')}`,
      scope,
      classes: scope.map(() => Array.from({ length: 30 }, (_, value) => modulus(value))),
      ask: ([one = 0, other = 0]: readonly number[]) => ({
        state: holdsWhere(modulus(one) === 2 || modulus(one) !== modulus(other)),
        blame: scope,
      }),
    }));
    const problem = chain({ ...row, more });
    expect(three.every((place) => place < row.places)).toBe(true);
    let before = 0;
    for (const left of [1, 10, 100, 1000, 3000]) {
      const { found, search, steps } = work(problem, left);
      expect([found, search.isExhausted, steps]).toEqual([[], false, left]);
      expect(search.bound).toBeGreaterThanOrEqual(before);
      expect(search.bound).toBeLessThan(Infinity);
      before = search.bound;
    }
    expect(before).toBeGreaterThan(20 * 107);
  });
});

test('a budget that others use up too ends the search between two results', () => {
  const adapters = new Map([
    [3, 900],
    [6, 500],
  ]);
  const budget: Budget = { left: 1e5 };
  const search = new Search(chain({ ...row, adapters }), 'proven', budget);
  const first = search.next();
  budget.left = 0;
  expect(search.next()).toBeNull();
  expect(search.isExhausted).toBe(false);
  expect(search.bound).toBeGreaterThanOrEqual(first?.cost ?? Infinity);
  budget.left = 1e5;
  const second = search.next();
  expect(second?.cost).toBeGreaterThan(first?.cost ?? Infinity);
});
