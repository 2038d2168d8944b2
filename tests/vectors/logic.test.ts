/**
 * Check values of three-valued logic, of predicates on sets, and of hubs in wheels.
 */

import { describe, expect, it } from 'vitest';
import { allOf, type Outcome } from '../../src/domain/check/state.js';
import { world } from '../rules/sketch.js';
import { found, judged, stateOf } from '../rules/world.js';

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

describe('a wheel on a hub', () => {
  function mount(spigot: string, bore: string) {
    const common = {
      kind: 'wheel-mount',
      holes: 5,
      pcd: '112 mm',
      seat: 'cone',
      'seat-angle': '60 deg',
    };
    const cars = world({
      places: ['hub', 'wheel'],
      matings: ['hub.wheel = wheel.hub'],
      parts: {
        'hub-a': { wheel: { ...common, side: 'hub', spigot } },
        'wheel-a': { hub: { ...common, side: 'wheel', bore } },
      },
      cars: { car: {} },
    });
    const mating = found(judged(cars, { put: { hub: 'hub-a', wheel: 'wheel-a' } }), 'hub-wheel');
    return {
      state: `${mating?.state} ${mating?.code}`,
      check: (id: string) => {
        const check = mating?.checks.find((one) => one.check.id === id);
        return `${check?.outcome} ${check?.code}`;
      },
    };
  }

  it('wheel-06 (common practice, no source; from memory): passes, wants a centring ring', () => {
    const { state, check } = mount('54.1 mm', '56.1 mm');
    expect(state).toBe('holds meets');
    expect(check('bore')).toBe('holds clears');
    expect(check('centring')).toBe('fails needs-centring-ring');
  });

  it('wheel-07 (exact arithmetic or geometry; arithmetic): the bore does not pass', () => {
    const { state, check } = mount('56.1 mm', '54.1 mm');
    expect(state).toBe('fails bore-too-small');
    expect(check('bore')).toBe('fails bore-too-small');
  });
});
