/**
 * What of a route has to be bought, as a cart or an order takes it. Lines whose goods are there
 * already, come out of a lot that has its own line, or are only work are no goods to buy.
 */

import type { KitLine } from './contract.js';

export interface OrderLine {
  /** Key of the line of the route; equal in every route, edition and language. */
  readonly key: string;
  /** Code that the goods are sold under; null where the catalogue has none. */
  readonly sku: string | null;
  /** How many packs; null where nobody knows how much it takes, or nobody offers it. */
  readonly packs: number | null;
  readonly part: string | null;
  readonly lot: string | null;
  readonly name: string;
  /** For all packs, a decimal; null where it is not known or not shown. */
  readonly price: string | null;
}

/** In the order of the lines. What nobody offers is among them, without packs and price. */
export function orderLines(lines: readonly KitLine[]): OrderLine[] {
  return lines
    .filter(({ offer, source }) => offer !== null || source === 'unpriced')
    .map(({ key, offer, skus, part, lot, name, price }) => ({
      key,
      sku: offer?.sku ?? skus[0] ?? null,
      packs: offer?.packs ?? null,
      part,
      lot,
      name,
      price: price ?? null,
    }));
}
