/**
 * Short rows of places with adapters between them, against a look at every assignment: here most
 * of what there is are other ways of changing the same places, which must be passed over, and
 * nothing else with them.
 */

import { expect, test } from 'vitest';
import type { Relation } from '../../../../src/domain/kit/core/problem.js';
import { Search } from '../../../../src/domain/kit/core/search.js';
import { chain, familyOf, holdsWhere } from './chains.js';
import { everyResult } from './every-assignment.js';
import { chance, whole } from './random-problem.js';

/** A relation of three places that weighs their parts, as a load or a loop does. */
function weighing(next: () => number, places: number, size: number): Relation {
  const first = whole(next, places - 2);
  const scope = [first, first + 1, first + 2];
  const least = 3 + whole(next, 4);
  const weights = Array.from({ length: size }, () => whole(next, 5));
  const classes = weights.map((weight, value) => (value === 0 ? -1 : 3 * weight + familyOf(value)));
  return {
    name: 'weighing',
    scope,
    classes: scope.map(() => classes),
    ask: (values) => {
      const total = values.reduce((sum, value) => sum + (weights[value] ?? 0), 0);
      const stands = values.every((value) => value === 0);
      const isOpen = values.some((value) => familyOf(value) === 2) && total > least;
      const state = isOpen ? 1 : holdsWhere(stands || total >= least);
      return { state, blame: scope };
    },
  };
}

test('sets that were given are passed over, and nothing besides', () => {
  let several = 0;
  for (let seed = 1; seed <= 150; seed += 1) {
    const next = chance(seed);
    const places = 3 + whole(next, 2);
    const parts = places === 3 ? 6 : 4;
    const joints = Array.from({ length: places - 1 }, (_, joint) => joint);
    const loose = joints.filter(() => next() < 0.15);
    const adapters = new Map(
      joints
        .filter((joint) => !loose.includes(joint) && next() < 0.6)
        .map((joint) => [joint, whole(next, 400)]),
    );
    const more = next() < 0.7 ? [weighing(next, places, 1 + parts)] : [];
    const problem = chain({ places, parts, loose, adapters, more });
    for (const phase of ['proven', 'open'] as const) {
      const search = new Search(problem, phase, { left: 1e6 });
      const found: string[] = [];
      for (let one = search.next(); one !== null; one = search.next()) {
        found.push(`${one.cost}: ${one.values.join(' ')}`);
      }
      const expected = everyResult(problem, phase).map(
        ({ values, cost }) => `${cost}: ${values.join(' ')}`,
      );
      expect(found.sort(), `seed ${seed}, ${phase}`).toEqual(expected.sort());
      if (found.length > 2) several += 1;
    }
  }
  expect(several).toBeGreaterThan(40);
});
