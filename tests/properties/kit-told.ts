/**
 * Routes compared: all that is told of one, and which is better.
 */

import { expect } from 'vitest';
import type { Kits, Route } from '../../src/domain/kit/route.js';
import { compare } from '../../src/domain/quantity/rational.js';
import type { KitAsk } from '../oracle/kit-ask.js';
import { nameOfRoute } from './real-kits.js';

/** All that is told of a route, but for its reasons. */
export function told(route: Route): string {
  const { grade, changes, basket } = route;
  const lines = basket.lines.map((line) => {
    const amount = line.quantity?.toFraction() ?? '?';
    const from = [line.source, line.fromLot, line.offer?.record.id, line.packs].join();
    return `${line.key} ${amount} ${from} ${line.price} ${line.labourPrice}`;
  });
  const { cost, unpriced, labourHours } = basket.totals;
  const sums = `${cost} ${unpriced.join()} ${labourHours.toFraction()}`;
  return [grade, changes.join(), nameOfRoute(route), ...lines, sums].join('\n');
}

/** What comes first counts first; lower is better. */
function isNoWorse(a: Route | undefined, b: Route | undefined, prefer: KitAsk['prefer']): boolean {
  if (b === undefined) return true;
  if (a === undefined) return false;
  const [x, y] = [a.basket.totals, b.basket.totals];
  const money = [x.unpriced.length - y.unpriced.length, x.cost - y.cost];
  const changes = x.changedPositions - y.changedPositions;
  const hours = compare(x.labourHours, y.labourHours);
  const orders = {
    cost: [...money, changes],
    'changed-positions': [changes, ...money],
    'labour-hours': [hours, ...money, changes],
  }[prefer];
  const [first = 0] = orders.filter((order) => order !== 0);
  return first <= 0;
}

/** The best that is proven, and the best of all. */
function bestOf({ routes }: Kits, prefer: KitAsk['prefer']): readonly (Route | undefined)[] {
  const best = (some: readonly Route[]) =>
    some.reduce<Route | undefined>((a, b) => (isNoWorse(a, b, prefer) ? a : b), undefined);
  return [best(routes.filter(({ grade }) => grade === 'proven')), best(routes)];
}

export function expectNoDearer(more: Kits, fewer: Kits, prefer: KitAsk['prefer']): void {
  const before = bestOf(fewer, prefer);
  for (const [index, best] of bestOf(more, prefer).entries()) {
    const isSo = isNoWorse(best, before[index], prefer);
    expect([isSo, isSo || before.map((one) => one && told(one))]).toEqual([true, true]);
  }
}
