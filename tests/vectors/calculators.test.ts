/**
 * Every check value of every calculator, and that each has some.
 */

import { describe, expect, test } from 'vitest';
import { CALCULATIONS } from '../../src/domain/driveline/registry.js';
import { VECTORS } from './calculators/index.js';
import { agrees, gotOf, type Vector } from './vector.js';

/** Beside the check values that the trade's own examples give, so many more of each. */
const FEWEST = 3;

describe('check values', () => {
  test.each(VECTORS.map((one): [string, string, Vector] => [one.id, one.source, one]))(
    '%s (%s)',
    (_id, _source, vector) => {
      const got = gotOf(vector);
      expect([got, agrees(vector, got)]).toEqual([got, true]);
    },
  );

  test('each has a name of its own', () => {
    const ids = VECTORS.map(({ id, output }) => `${id} ${output}`);
    expect(ids.filter((id, index) => ids.indexOf(id) !== index)).toEqual([]);
  });

  test.each(CALCULATIONS.map(({ name }) => name))('%s has some', (name) => {
    const own = VECTORS.filter(({ calculation }) => calculation === name);
    expect(own.length).toBeGreaterThanOrEqual(FEWEST);
  });
});
