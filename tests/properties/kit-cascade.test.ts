/**
 * The reasons of every route form a cascade that begins at the wish or at the vehicle: no line
 * comes after itself, and what the first reason of a change names really is wrong while only the
 * changes before it are made. And no group of changes could go back together.
 *
 * Whether something is wrong an oracle says that shares no code with the resolver. More are drawn
 * by hand: raise CASES, or change SEED.
 */

import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import { resolveKits } from '../../src/domain/kit/resolve.js';
import type { Route, Why, WhyCode } from '../../src/domain/kit/route.js';
import { demoQuestion, demoWishes } from '../domain/kit/demo-question.js';
import { TooManyWorlds } from '../oracle/decide.js';
import { Checked, unrooted } from './kit-cascade.js';
import { kitCases } from './kit-case.js';
import { askReal } from './real-kits.js';

const CASES = 250;
const SEED = 21;
const ROUTES = 6;
/** Of so many cases the reasons are looked at in another order too. */
const TURNED = 50;
/** What must be met for this to show anything. */
const OFTEN = ['wanted', 'present-fails', 'mating-fails', 'needed-empty', 'becomes-open'] as const;

/** With the last line first. */
function reversed(route: Route): Route {
  return { ...route, why: new Map([...route.why].reverse()) };
}

describe('the reasons of a route', () => {
  const wrong: { readonly at: string; readonly what: readonly string[] }[] = [];
  const codes = new Map<WhyCode, number>();
  let routes = 0;
  let givenUp = 0;
  let seenReversed = 0;

  beforeAll(() => {
    const cases = fc.sample(kitCases(), { numRuns: CASES, seed: SEED });
    for (const [at, one] of cases.entries()) {
      const checked = new Checked(one);
      for (const [index, route] of askReal(one, { routes: ROUTES }).routes.entries()) {
        routes += 1;
        for (const { code } of [...route.why.values()].flat()) {
          codes.set(code, (codes.get(code) ?? 0) + 1);
        }
        const what = unrooted(route);
        try {
          what.push(...checked.untrue(route), ...checked.redundant(route));
          const isTurned = at < TURNED && checked.untrue(reversed(route)).length > 0;
          if (isTurned) seenReversed += 1;
        } catch (error) {
          if (!(error instanceof TooManyWorlds)) throw error;
          givenUp += 1;
        }
        if (what.length > 0) wrong.push({ at: `${SEED}/${at}, route ${index}`, what });
      }
    }
  }, 3_600_000);

  it('form a cascade, are so, and leave nothing that could go back', () => {
    expect(wrong).toEqual([]);
  });

  it('are of many sorts, and hardly ever more than can be tried', () => {
    expect(routes).toBeGreaterThan(CASES / 2);
    expect(givenUp).toBeLessThan(routes / 20);
    for (const code of OFTEN) expect(codes.get(code), code).toBeGreaterThan(CASES / 50);
  });

  it('are often not so in another order', () => {
    expect(seenReversed).toBeGreaterThan(TURNED / 50);
  });
});

describe('what is no cascade is told', () => {
  const wish = { vehicle: 'lirren-1', part: 'gearbox-6-late', position: 'gearbox' };
  const why = (after: string | null): Why => {
    return { code: 'rule', after, constraint: null, name: null };
  };

  it('where two lines are the reason of each other, and where none begins', () => {
    const [route] = resolveKits(demoQuestion(wish)).routes;
    const [line] = route?.basket.lines ?? [];
    if (route === undefined || line === undefined) throw new Error('nothing is to be done');
    const basket = { ...route.basket, lines: ['a', 'b'].map((key) => ({ ...line, key })) };
    const told = (a: Why, b: Why) =>
      unrooted({
        ...route,
        basket,
        why: new Map([
          ['a', [a]],
          ['b', [b]],
        ]),
      });
    expect(told(why('b'), why('a'))).toContain('a < b: goes round');
    expect(told(why(null), why('a'))).toContain('b < a: begins with rule');
    expect(told({ ...why(null), code: 'wanted' }, why('c'))).toContain(
      'b: after c, which is no line',
    );
    expect(told({ ...why(null), code: 'wanted' }, why('a'))).toEqual([]);
  });
});

describe('the reasons of the demo', () => {
  it('form a cascade', () => {
    let lines = 0;
    for (const wish of demoWishes(40)) {
      const { routes } = resolveKits(demoQuestion(wish, { routes: ROUTES }));
      for (const route of routes) {
        lines += route.why.size;
        expect(unrooted(route), `${wish.part} on ${wish.vehicle}`).toEqual([]);
      }
    }
    expect(lines).toBeGreaterThan(20);
  });
});
