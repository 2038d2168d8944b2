/**
 * What is in a lot: parts, and what the works fitted at places of a vehicle that is taken apart.
 * Where nobody recorded what stands at such a place, it is an article of its own that is to be had
 * out of that lot alone.
 */

import type { Catalogue, Position } from '../catalogue/catalogue.js';
import type { Lot, LotItem } from '../catalogue/trade.js';
import { add, ONE, type Rational, rational } from '../quantity/rational.js';
import type { Dimension } from '../quantity/unit.js';

export interface Quantity {
  readonly part: string;
  readonly quantity: Rational;
  readonly dimension: Dimension;
}

/** What stands at a position of a vehicle that is taken apart, and nobody recorded what it is. */
export function articleOutOf(lot: string, position: string): string {
  return `donor:${lot}:${position}`;
}

/** No id of a part has a colon in it. */
export function isOutOfLotOnly(article: string): boolean {
  return article.includes(':');
}

/** What a lot holds, as far as it is known; each article once, in the order of the lot. */
export function contentsOf({ id, contains }: Lot, catalogue: Catalogue): Quantity[] {
  const found = new Map<string, Quantity>();
  const seen = new Set<string>();
  for (const item of contains) {
    for (const one of itemContents(item, id, catalogue, seen)) {
      const key = `${one.part} ${one.dimension}`;
      const known = found.get(key);
      const quantity = known === undefined ? one.quantity : add(known.quantity, one.quantity);
      found.set(key, { ...one, quantity });
    }
  }
  return [...found.values()];
}

/** A part that fills several places is in the lot once, whichever of them the lot names. */
function itemContents(
  item: LotItem,
  lot: string,
  catalogue: Catalogue,
  seen: Set<string>,
): Quantity[] {
  if (item.is === 'part') {
    const { value, dimension } = item.amount;
    return [{ part: item.part, quantity: value, dimension }];
  }
  const vehicle = catalogue.vehicles.get(item.vehicle);
  const position = vehicle?.layout.positions.get(item.position);
  if (position === undefined) return [];
  const unknown = { part: articleOutOf(lot, item.position), quantity: ONE, dimension: '1' };
  const fitted = vehicle?.fitted.get(item.position);
  if (fitted === undefined) return [unknown];
  const occupants = fitted.hands ? [fitted.left, fitted.right] : [fitted.occupant];
  const pieces = rational(piecesOf(position) / occupants.length);
  const isUnknown = occupants.some(({ is }) => is === 'as-found' || is === 'option');
  const known = occupants.flatMap((one): Quantity[] => {
    if (one.is !== 'part') return [];
    const spans = catalogue.parts.get(one.part)?.spans ?? null;
    const key = `${item.vehicle}/${one.part}`;
    if (spans?.includes(item.position) === true) {
      if (seen.has(key)) return [];
      seen.add(key);
    }
    return [{ part: one.part, quantity: pieces, dimension: '1' }];
  });
  return isUnknown ? [...known, unknown] : known;
}

/** Both hands together; a pair is two even where its position does not say so. */
function piecesOf({ count, isHanded }: Position): number {
  return isHanded ? Math.max(2, count) : count;
}
