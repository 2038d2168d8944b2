/** Reads what a route of a kit buys, for tests that add it up by hand. */

import type { KitAnswer, KitLineView, RouteView } from '../../src/usecases/kit-answer.js';

export function routeAt({ routes }: KitAnswer, index: number): RouteView {
  const route = routes[index];
  if (route === undefined) throw new Error(`there are ${routes.length} routes, and none ${index}`);
  return route;
}

export function onlyRoute(answer: KitAnswer): RouteView {
  if (answer.routes.length !== 1) throw new Error(`${answer.routes.length} routes, not one`);
  return routeAt(answer, 0);
}

/** In cents, so that nothing is lost in binary. */
export function cents(price: string): number {
  return Math.round(Number(price) * 100);
}

export function sumOf(prices: readonly string[]): number {
  return prices.reduce((sum, price) => sum + cents(price), 0);
}

const goods = ({ lot, work, part }: KitLineView) => lot ?? work ?? part ?? '';

/** What costs something, each with all that is paid for it; two places of one part are added. */
export function bought({ lines }: RouteView): Record<string, string> {
  const sums = new Map<string, number>();
  for (const line of lines) {
    const paid = cents(line.price ?? '0');
    if (paid > 0) sums.set(goods(line), (sums.get(goods(line)) ?? 0) + paid);
  }
  return Object.fromEntries([...sums].map(([id, paid]) => [id, (paid / 100).toFixed(2)]));
}

/** Parts put in, of one source, place by place. */
export function added({ lines }: RouteView, source: string): (string | null)[] {
  const from = lines.filter((line) => line.action === 'add' && line.source === source);
  return from.map(({ part }) => part);
}

export function opened({ lines }: RouteView): (string | null)[] {
  return lines.filter(({ action }) => action === 'open').map(({ position }) => position);
}

export function leftOver({ lines }: RouteView): string[] {
  return lines.flatMap((line) =>
    line.leftOver.map(({ quantity, part }) => `${quantity.value} ${part}`),
  );
}
