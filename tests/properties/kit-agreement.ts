/**
 * Compares the routes that two resolvers find for one question.
 *
 * Which of several equally good ways of changing the same positions is shown is left to the
 * program, as long as it is one of them. Where there are more than it was asked for, those that
 * it lists must cost what the best ones cost.
 */

import type { Kits, Route } from '../../src/domain/kit/route.js';
import type { KitAsk } from '../oracle/kit-ask.js';
import { nameOf } from '../oracle/kit-change.js';
import { compareRanks, type KitRoute, ranked } from '../oracle/kit-order.js';
import type { OracleKits } from '../oracle/kit-routes.js';
import { nameOfRoute } from './real-kits.js';

/** As many as one may ask for. */
const MOST_ROUTES = 20;

/** Every difference in words; empty where the two agree. */
export function kitDifferences(oracle: OracleKits, kits: Kits, ask: KitAsk): string[] {
  const expected = inOrder(oracle.routes, ask);
  const isCut = expected.length > MOST_ROUTES;
  const due = isCut ? expected.slice(0, MOST_ROUTES) : expected;
  const rest = kits.hasMore === isCut ? [] : [`more: ${isCut} by the oracle, ${kits.hasMore}`];
  if (!kits.isComplete) rest.push('the search has not come to its end');
  return [
    ...(isCut ? costsIn(due, kits) : routesIn(expected, kits)),
    ...orderIn(kits, ask),
    ...rest,
  ];
}

/** Proven before open, then by what the question prefers. */
export function inOrder(routes: readonly KitRoute[], ask: KitAsk): KitRoute[] {
  const rankOf = ({ best }: KitRoute) => best.slice(0, 1).flatMap((one) => ranked(one, ask));
  return [...routes].sort((a, b) => {
    if (a.grade !== b.grade) return a.grade === 'proven' ? -1 : 1;
    return compareRanks(rankOf(a), rankOf(b));
  });
}

function costOfRoute({ best }: KitRoute): string {
  const [first] = best;
  return first === undefined ? '' : `${first.cost.unpriced} unpriced, ${first.cost.money}`;
}

function costOfReal({ basket: { totals } }: Route): string {
  return `${totals.unpriced.length} unpriced, ${totals.cost}`;
}

function costsIn(due: readonly KitRoute[], { routes }: Kits): string[] {
  const expected = due.map((route) => `${route.grade}: ${costOfRoute(route)}`);
  const given = routes.map((route) => `${route.grade}: ${costOfReal(route)}`);
  if (expected.join() === given.join()) return [];
  return [`costs: ${expected.join('; ')} by the oracle, ${given.join('; ')}`];
}

function routesIn(expected: readonly KitRoute[], { routes }: Kits): string[] {
  const left = new Map(routes.map((route) => [`${route.grade} ${touchedBy(route).join()}`, route]));
  const differences = expected.flatMap((route) => {
    const name = `${route.grade} ${route.touched.join()}`;
    const own = left.get(name);
    left.delete(name);
    const cost = costOfRoute(route);
    if (own === undefined) return [`missing: ${name} for ${cost}, ${namesOf(route)}`];
    const given = costOfReal(own);
    if (given !== cost) {
      return [
        `${name}: ${cost} by the oracle, ${given}; ${namesOf(route)} and ${nameOfRoute(own)}`,
      ];
    }
    const isOneOfThem = route.best.some(({ change }) => nameOf(change) === nameOfRoute(own));
    return isOneOfThem ? [] : [`${name}: none but ${namesOf(route)}; ${nameOfRoute(own)}`];
  });
  const more = [...left].map(
    ([name, route]) => `too many: ${name}, ${costOfReal(route)}, ${nameOfRoute(route)}`,
  );
  return [...differences, ...more];
}

/** Where something is put in, taken out or worked on, in the order of the layout. */
function touchedBy({ basket, judgement }: Route): string[] {
  const lines = basket.lines.filter(({ action }) => action !== 'open');
  const touched = new Set(lines.map(({ position }) => position));
  return [...judgement.configuration.layout.positions.keys()].filter((id) => touched.has(id));
}

function namesOf({ best }: KitRoute): string {
  return best.map(({ change }) => nameOf(change)).join(' or ');
}

/** What the program lists comes in the order that it is asked for. */
function orderIn({ routes }: Kits, { prefer }: KitAsk): string[] {
  return routes.flatMap((route, index) => {
    const before = routes[index - 1];
    if (before === undefined || before.grade !== route.grade) {
      return before?.grade === 'open' ? ['open before proven'] : [];
    }
    const [a, b] = [before, route].map(({ basket: { totals } }) => {
      const changes = totals.changedPositions;
      const money = [totals.unpriced.length, totals.cost];
      return prefer === 'changed-positions' ? [changes, ...money] : [...money, changes];
    });
    if (prefer === 'labour-hours' || a === undefined || b === undefined) return [];
    const at = a.findIndex((number, lane) => number !== b[lane]);
    return at >= 0 && (a[at] ?? 0) > (b[at] ?? 0) ? [`route ${index} is before a better one`] : [];
  });
}
