/**
 * What is in a lot: parts, and what the works fitted at places of a vehicle that is taken apart,
 * recorded or not.
 */

import type { Catalogue } from '../catalogue/catalogue.js';
import { donorArticleId, handsTaken } from '../catalogue/donor-article.js';
import type { Lot, LotItem } from '../catalogue/trade.js';
import { add, type Rational, rational } from '../quantity/rational.js';
import type { Dimension } from '../quantity/unit.js';

export interface Quantity {
  readonly part: string;
  readonly quantity: Rational;
  readonly dimension: Dimension;
}

/** So much of an article in a lot. */
export interface LotPieces extends Quantity {
  /** Where it stood on the vehicle that it comes out of; null for what comes by itself. */
  readonly position: string | null;
}

/** What a lot holds; each article once, in the order of the lot. */
export function contentsOf(lot: Lot, catalogue: Catalogue): Quantity[] {
  const found = new Map<string, Quantity>();
  for (const { part, quantity: more, dimension } of piecesIn(lot, catalogue)) {
    const key = `${part} ${dimension}`;
    const known = found.get(key);
    const quantity = known === undefined ? more : add(known.quantity, more);
    found.set(key, { part, quantity, dimension });
  }
  return [...found.values()];
}

/** The same, item by item: an article may be there several times. */
export function piecesIn(lot: Lot, catalogue: Catalogue): LotPieces[] {
  const seen = new Set<string>();
  return lot.contains.flatMap((item) => {
    if (item.is === 'position') return piecesTaken(item, lot, catalogue, seen);
    const { value: quantity, dimension } = item.amount;
    return [{ part: item.part, quantity, dimension, position: null }];
  });
}

/** A part that fills several places is in the lot once, whichever of them the lot names. */
function piecesTaken(
  { vehicle: from, position: id }: LotItem & { readonly is: 'position' },
  lot: Lot,
  catalogue: Catalogue,
  seen: Set<string>,
): LotPieces[] {
  const vehicle = catalogue.vehicles.get(from);
  const position = vehicle?.layout.positions.get(id);
  if (vehicle === undefined || position === undefined) return [];
  return handsTaken(vehicle.fitted.get(id), position).flatMap(({ hand, occupant, pieces }) => {
    if (occupant.is === 'empty') return [];
    const place = { vehicle: from, position: id, hand };
    const part = occupant.is === 'part' ? occupant.part : donorArticleId(lot, place);
    const spans = catalogue.parts.get(part)?.spans ?? null;
    const key = `${from}/${part}`;
    if (spans?.includes(id) === true) {
      if (seen.has(key)) return [];
      seen.add(key);
    }
    return [{ part, quantity: rational(pieces), dimension: '1', position: id }];
  });
}
