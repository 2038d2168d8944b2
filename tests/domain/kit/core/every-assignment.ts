/**
 * What a search has to find, by looking at every assignment and at every group of its changes. It
 * follows the definitions word by word and shares nothing with the search.
 */

import type { Found, Phase, Problem, State } from '../../../../src/domain/kit/core/problem.js';
import { combinations } from './random-problem.js';

export function everyResult(problem: Problem, phase: Phase): Found[] {
  const results: Found[] = [];
  for (const values of combinations(problem.variables.map(({ size }) => size))) {
    const states = statesOf(problem, values);
    const cost = problem.prices.exact(values);
    if (cost === Infinity || !isValid(states, phase)) continue;
    if (canPutBack(problem, values, states)) continue;
    const open = [...states.keys()].filter((relation) => states[relation] === 1);
    results.push({ values, cost, open });
  }
  const least = new Map<string, number>();
  for (const { values, cost } of results) {
    const places = placesOf(problem, values);
    least.set(places, Math.min(cost, least.get(places) ?? Infinity));
  }
  return results.filter(({ values, cost }) => least.get(placesOf(problem, values)) === cost);
}

function statesOf(problem: Problem, values: readonly number[]): State[] {
  return problem.relations.map(
    ({ scope, ask }) => ask(scope.map((variable) => values[variable] ?? 0)).state,
  );
}

function isValid(states: readonly State[], phase: Phase): boolean {
  if (states.some((state) => state === 0)) return false;
  return states.some((state) => state === 1) === (phase === 'open');
}

function canPutBack(
  problem: Problem,
  values: readonly number[],
  states: readonly State[],
): boolean {
  const changed = [...values.keys()].filter((variable) => values[variable] !== 0);
  for (const isBack of combinations(changed.map(() => 2))) {
    const back = new Set(changed.filter((_, index) => isBack[index] === 1));
    if (back.size === 0) continue;
    const after = statesOf(
      problem,
      values.map((value, variable) => (back.has(variable) ? 0 : value)),
    );
    const isNoWorse = after.every(
      (state, relation) => state === 2 || (state === 1 && states[relation] === 1),
    );
    if (isNoWorse) return true;
  }
  return false;
}

function placesOf(problem: Problem, values: readonly number[]): string {
  const places = [...values.keys()].filter((one) => problem.variables[one]?.isPlace);
  return places.filter((one) => values[one] !== 0).join();
}
