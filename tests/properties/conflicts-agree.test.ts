/**
 * Conflicts against an oracle that asks every set of demands by trying everything, and shares no
 * code with the resolver: the same smallest conflict, the same smallest ways out and what the best
 * route then costs, for each demand of the conflict a way out that is no larger than it must be;
 * and with nothing kept of the layout but what the path cites there is still no route.
 *
 * What needs too much trying is left out. More are drawn by hand: raise CASES, or change SEED.
 */

import fc from 'fast-check';
import { beforeAll, describe, expect, it } from 'vitest';
import type { CatalogueDocument } from '../../src/domain/catalogue/document.js';
import { type Conflict, conflictOf } from '../../src/domain/kit/conflict.js';
import { type Demand, keyOfDemand } from '../../src/domain/kit/demands.js';
import { resolveKits } from '../../src/domain/kit/resolve.js';
import type { Route } from '../../src/domain/kit/route.js';
import { TooManyWorlds } from '../oracle/decide.js';
import { conflictBy, type OracleConflict, TooManyDemands } from '../oracle/kit-conflict.js';
import { askKits, TooManyChanges } from '../oracle/kit-routes.js';
import { conflictCases } from './conflict-case.js';
import { inOrder } from './kit-agreement.js';
import type { KitCase } from './kit-case.js';
import { questionOf } from './real-kits.js';

const CASES = 200;
const SEED = 1;

function isTooMuch(error: unknown): boolean {
  return [TooManyWorlds, TooManyChanges, TooManyDemands].some((known) => error instanceof known);
}

/** Null where there is a route, or nobody can try everything. */
function oracleOf(one: KitCase): OracleConflict | null {
  try {
    return askKits(one.document, one.ask).routes.length > 0 ? null : conflictBy(one);
  } catch (error) {
    if (isTooMuch(error)) return null;
    throw error;
  }
}

function differencesIn(one: KitCase, oracle: OracleConflict): string[] {
  const question = questionOf(one);
  const { routes, isComplete } = resolveKits(question);
  if (routes.length > 0 || !isComplete) return ['the resolver finds a route'];
  const found = conflictOf(question);
  const keyOf = ({ is, name }: Demand): string => {
    if (is !== 'ruleset-check') return keyOfDemand({ is, name });
    const demanded = question.ruleset?.demands.get(question.vehicle.layout.id)?.checks ?? [];
    return `ruleset-check ${demanded.findIndex(({ id }) => id === name)}`;
  };
  const conflict = found.demands.map(keyOf);
  const differences: string[] = [];
  const say = (what: string, expected: unknown, given: unknown): void => {
    const [a, b] = [JSON.stringify(expected), JSON.stringify(given)];
    if (a !== b) differences.push(`${what}: ${a} by the oracle, ${b}`);
  };
  say('conflict', oracle.conflict, conflict);
  if (!found.isSmallest || found.path === null) differences.push('cut short');
  const told = found.relaxations.map(({ dropped, route }) => {
    return { keys: dropped.map(keyOf), route };
  });
  const size = oracle.smallest[0]?.keys.length ?? 0;
  const smallest = told.filter(({ keys }) => keys.length === size);
  if (!found.hasMore) {
    say(
      'smallest ways out',
      oracle.smallest.map(({ keys }) => keys.join()).sort(),
      smallest.map(({ keys }) => keys.join()).sort(),
    );
    const sizes = oracle.conflict.map((key) =>
      Math.min(...told.filter(({ keys }) => keys.includes(key)).map(({ keys }) => keys.length)),
    );
    say('ways out with each', oracle.sizes, sizes);
  }
  for (const { keys, route } of smallest) {
    const way = oracle.smallest.find((other) => other.keys.join() === keys.join());
    // Where one limit is taken back, the route is the one that passes it least.
    if (keys.some((key) => key.startsWith('limit')) || way === undefined) continue;
    const [best] = inOrder(way.routes, one.ask);
    const cost = best?.best[0]?.cost;
    say(`cost without ${keys.join()}`, [best?.grade, cost?.unpriced, cost?.money], costOf(route));
  }
  if (hasRouteWithOnly(one, found)) differences.push('with only what is cited there is a route');
  return differences;
}

function costOf(route: Route | null) {
  const totals = route?.basket.totals;
  return [route?.grade, totals?.unpriced.length, totals?.cost];
}

/** Whether there is a route where nothing is kept but the demands and the path of a conflict. */
function hasRouteWithOnly({ document, ask }: KitCase, { demands, path }: Conflict): boolean {
  const cited = (path ?? []).flatMap(({ relation }) => relation.id.split('+'));
  const isCited = (id: string | undefined): boolean => id !== undefined && cited.includes(id);
  const has = (key: string): boolean => demands.some((one) => keyOfDemand(one) === key);
  // A wish for a margin speaks of a check.
  const wished = ask.wants.flatMap((want) => (want.is === 'load' ? [want.load] : []));
  const layouts = (document.layouts ?? []).map((layout) => ({
    ...layout,
    checks: (layout.checks ?? []).filter((check) => {
      const { id = '' } = check as { id?: string };
      return isCited(id) || wished.includes(id);
    }),
  }));
  const reduced: CatalogueDocument = {
    ...document,
    layouts,
    rules: (document.rules ?? []).filter((rule) => isCited(rule.id) || 'consumes' in rule),
  };
  const fewer = {
    ...ask,
    wants: ask.wants.filter((_, index) => has(`want ${index}`)),
    keep: ask.keep.filter((id) => has(`keep ${id}`)),
    avoid: ask.avoid.filter((id) => has(`avoid-part ${id}`)),
    costLimit: has('limit cost') ? ask.costLimit : null,
    changesLimit: has('limit changedPositions') ? ask.changesLimit : null,
    refusesUnknowns: ask.refusesUnknowns && has('unknowns '),
  };
  try {
    return askKits(reduced, fewer).routes.length > 0;
  } catch (error) {
    if (isTooMuch(error)) return false;
    throw error;
  }
}

describe('conflicts', () => {
  const different: { readonly at: string; readonly differences: readonly string[] }[] = [];
  let compared = 0;
  let several = 0;

  beforeAll(() => {
    for (let first = 0; first < CASES; first += 100) {
      const numRuns = Math.min(100, CASES - first);
      const some = fc.sample(conflictCases(), { numRuns, seed: SEED * 1000 + first / 100 });
      for (const [index, one] of some.entries()) {
        const oracle = oracleOf(one);
        if (oracle === null) continue;
        compared += 1;
        if (oracle.conflict.length > 1) several += 1;
        const differences = differencesIn(one, oracle);
        const at = `${SEED}/${first + index}`;
        if (differences.length > 0) different.push({ at, differences });
      }
    }
  }, 3_600_000);

  it('are the smallest there are, with every smallest way out of them', () => {
    expect(different).toEqual([]);
  });

  it('are met often enough, and of several demands', () => {
    expect(compared).toBeGreaterThan(0.2 * CASES);
    expect(several).toBeGreaterThan(0.25 * compared);
  });
});
