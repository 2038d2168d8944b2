/**
 * Check values of three-valued logic, and of predicates on sets.
 */

import { describe, expect, it } from 'vitest';
import { allOf, type Outcome } from '../../src/domain/check/state.js';
import { world } from '../rules/sketch.js';
import { judged, stateOf } from '../rules/world.js';

const WORDS = { fits: 'holds', unknown: 'open', 'does-not-fit': 'fails' } as const;
type Word = keyof typeof WORDS;

describe('the conjunction of three values', () => {
  const KLEENE = { source: 'strong Kleene three-valued logic', basis: 'value read in the source' };

  it.each([
    { id: 'logic-01', terms: ['fits', 'fits', 'unknown'], verdict: 'unknown', ...KLEENE },
    {
      id: 'logic-02',
      terms: ['fits', 'does-not-fit', 'unknown'],
      verdict: 'does-not-fit',
      ...KLEENE,
    },
  ] satisfies { terms: Word[]; verdict: Word; [field: string]: unknown }[])(
    '$id ($source; $basis)',
    ({ terms, verdict }) => {
      const outcomes: Outcome[] = terms.map((term: Word) => WORDS[term]);
      expect(allOf(outcomes)).toBe(WORDS[verdict]);
      expect(allOf(outcomes.toReversed())).toBe(WORDS[verdict]);
    },
  );
});

describe('a predicate on sets', () => {
  it('logic-04 (exact arithmetic or geometry; arithmetic): every bore clears every spigot', () => {
    const cars = world({
      roles: { hub: { spigot: 'length' }, wheel: { bore: 'length' } },
      places: ['hub', 'wheel'],
      checks: [{ id: 'bore', 'at-least': ['wheel.bore', 'hub.spigot'] }],
      parts: { 'hub-a': { spigot: '54.0 to 54.1 mm' }, 'wheel-a': { bore: '56.1 to 56.15 mm' } },
      cars: { car: {} },
    });
    const one = judged(cars, { put: { hub: 'hub-a', wheel: 'wheel-a' } });
    expect(stateOf(one, 'bore')).toBe('holds clears');
  });
});
