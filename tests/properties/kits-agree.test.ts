/**
 * The resolver against an oracle that tries everything and shares no code with it, over random
 * small catalogues with trade in them: the same routes, told apart by what they change and by
 * what is proven, each at the same cost, and each shown in one of the cheapest ways of doing it.
 *
 * What needs too much trying is left out, and must be little. More are drawn by hand: raise CASES,
 * or change SEED.
 */

import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import { TooManyWorlds } from '../oracle/decide.js';
import { askKits, type OracleKits, TooManyChanges } from '../oracle/kit-routes.js';
import { kitDifferences } from './kit-agreement.js';
import { type KitCase, kitCases } from './kit-case.js';
import { askReal } from './real-kits.js';

const CASES = 1000;
const SEED = 1;

/** Drawn by the hundred, so that a long run need not hold all of them at once. */
function* drawn(): Generator<readonly [number, KitCase]> {
  for (let first = 0; first < CASES; first += 100) {
    const numRuns = Math.min(100, CASES - first);
    const some = fc.sample(kitCases(), { numRuns, seed: SEED * 1000 + first / 100 });
    for (const [index, one] of some.entries()) yield [first + index, one];
  }
}

function answerOf({ document, ask }: KitCase): OracleKits | null {
  try {
    return askKits(document, ask);
  } catch (error) {
    if (error instanceof TooManyWorlds || error instanceof TooManyChanges) return null;
    throw error;
  }
}

/** Where choices are taken together they may still differ from the oracle's, one by one. */
function differencesIn(one: KitCase, oracle: OracleKits): string[] {
  try {
    const kits = askReal(one);
    const differences = kitDifferences(oracle, kits, one.ask);
    if (differences.length === 0) return [];
    const together = askKits(one.document, one.ask, 'together');
    return kitDifferences(together, kits, one.ask).length === 0 ? [] : differences;
  } catch (error) {
    if (!(error instanceof Error)) throw error;
    return [`no answer: ${error.message}`];
  }
}

describe('two resolvers', () => {
  const different: { readonly at: string; readonly differences: readonly string[] }[] = [];
  let compared = 0;

  beforeAll(() => {
    for (const [at, one] of drawn()) {
      const oracle = answerOf(one);
      if (oracle === null) continue;
      compared += 1;
      const differences = differencesIn(one, oracle);
      if (differences.length > 0) different.push({ at: `${SEED}/${at}`, differences });
    }
  }, 3_600_000);

  it('find the same routes at the same cost', () => {
    expect(different).toEqual([]);
  });

  it('the oracle gives up on few', () => {
    expect(compared).toBeGreaterThan(0.9 * CASES);
  });
});
