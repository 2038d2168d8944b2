/**
 * Whether the random kit questions still reach what they are for, so that agreement on them means
 * much: a change of the generators that lets something fade away is found here.
 */

import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { TooManyWorlds } from '../oracle/decide.js';
import { askKits, TooManyChanges } from '../oracle/kit-routes.js';
import { type KitCase, kitCases } from './kit-case.js';
import { type AskedKits, REACHED_KITS } from './kit-reach.js';

const CASES = 250;

function asked(one: KitCase): AskedKits[] {
  try {
    return [{ ...one, kits: askKits(one.document, one.ask) }];
  } catch (error) {
    if (error instanceof TooManyWorlds || error instanceof TooManyChanges) return [];
    throw error;
  }
}

describe('the random kit questions reach', () => {
  const all = fc.sample(kitCases(), { numRuns: CASES, seed: 7 }).flatMap(asked);

  it.each(REACHED_KITS.map(([name, least, test]) => ({ name, least, test })))(
    '$name in $least of a hundred',
    ({ least, test }) => {
      const share = (100 * all.filter(test).length) / all.length;
      expect(share).toBeGreaterThanOrEqual(least);
    },
  );
});
