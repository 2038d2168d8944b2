/**
 * What it takes to ask each question: which view at least shows what it is about, and whether a
 * scope beside the views is needed.
 */

import type { Scope, View } from '../domain/access.js';

export interface Need {
  /** The narrowest view that has the question; null where no view has a say. */
  readonly view: View | null;
  /** What is needed besides. */
  readonly scope?: Scope;
}

/** What anybody may ask: it is of the program, or says only that the service is there. */
const OPEN: Need = { view: null };

const OF_PUBLIC: Need = { view: 'public' };

/** Dimensions, ratings and margins are what the answer is made of. */
const OF_TRADE: Need = { view: 'trade' };

/** By path, as the document spells it. */
const NEEDS: Readonly<Record<string, Need>> = {
  '/v1/fit': OF_PUBLIC,
  '/v1/fit/batch': { view: 'public', scope: 'batch' },
  '/v1/vehicles/{id}/fits': OF_PUBLIC,
  '/v1/parts/{id}/fits': OF_PUBLIC,
  '/v1/kits': OF_PUBLIC,
  '/v1/inspect': OF_PUBLIC,
  '/v1/driveline': OF_TRADE,
  '/v1/mate': OF_TRADE,
  '/v1/parts': OF_PUBLIC,
  '/v1/parts/{id}': OF_PUBLIC,
  '/v1/parts/identify': OF_TRADE,
  '/v1/roles': OF_PUBLIC,
  '/v1/roles/{id}': OF_PUBLIC,
  '/v1/kinds': OF_TRADE,
  '/v1/kinds/{id}': OF_TRADE,
  '/v1/vehicles': OF_PUBLIC,
  '/v1/vehicles/{id}': OF_PUBLIC,
  '/v1/vehicles/identify': OF_PUBLIC,
  '/v1/layouts': OF_TRADE,
  '/v1/layouts/{id}': OF_TRADE,
  '/v1/editions': OF_TRADE,
  '/v1/editions/{number}': OF_PUBLIC,
  '/v1/editions/{number}/fits': { view: 'trade', scope: 'batch' },
  '/v1/codes': OPEN,
  '/v1/limits': OPEN,
  '/v1/calculate': OPEN,
  '/v1/calculate/{name}': OPEN,
  '/livez': OPEN,
  '/readyz': OPEN,
};

const BELOW_VERSION = '/v1/';
const CALCULATOR = /^\/v1\/calculate\/[^/]+$/;

/** Of a path of the contract. What is below `/v1` and not in the table, nobody may ask. */
export function needOf(path: string): Need {
  const known = CALCULATOR.test(path) ? NEEDS['/v1/calculate/{name}'] : NEEDS[path];
  if (known !== undefined) return known;
  if (path.startsWith(BELOW_VERSION)) throw new Error(`nothing says who may ask ${path}`);
  return OPEN;
}
