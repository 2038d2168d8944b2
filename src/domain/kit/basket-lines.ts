/**
 * The lines of a basket, once it is known which lots are bought: every draft with where its goods
 * come from, one line for each source, and the lots with what of them is left over.
 */

import { fraction, multiply, rational, subtract, ZERO } from '../quantity/rational.js';
import { ACTIONS, type Line } from './basket.js';
import { type Draft, lineOf, type Need } from './drafts.js';
import type { Item } from './items.js';
import type { Good } from './market.js';
import {
  type BoughtLot,
  leftOverOf,
  needsByGood,
  type Purchase,
  type Share,
  sharesOf,
} from './purchase.js';
import type { Money } from './question.js';

/** In the order of the actions, and within it in that of the items. */
export function basketLines(
  items: readonly Item[],
  { lots }: Purchase,
  rate: Money | null,
): Line[] {
  const shares = new Map<Need, readonly Share[]>();
  const used = new Map<BoughtLot, Map<Good, number>>(lots.map((lot) => [lot, new Map()]));
  for (const [good, ofGood] of needsByGood(items.flatMap(({ needs }) => needs))) {
    for (const [need, own] of sharesOf(ofGood, lots)) {
      shares.set(need, own);
      for (const { from, units } of own) {
        if (typeof from === 'string') continue;
        const ofLot = used.get(from);
        ofLot?.set(good, (ofLot.get(good) ?? 0) + units);
      }
    }
  }
  const lines = [
    ...items.flatMap(({ drafts }) => drafts.flatMap((draft) => linesOf(draft, shares, rate))),
    ...lots.map((lot) => lotLine(lot, used.get(lot) ?? new Map<Good, number>(), rate)),
  ];
  return ACTIONS.flatMap((action) => lines.filter((line) => line.action === action));
}

/** The last source has the key and the labour; pieces of other sources are named after theirs. */
function linesOf(
  { line, need }: Draft,
  shares: ReadonlyMap<Need, readonly Share[]>,
  rate: Money | null,
): Line[] {
  if (need === null) return [line];
  const own = shares.get(need) ?? [];
  return own.map((share, index) => {
    const sourced = { ...line, ...sourceOf(share, need.good) };
    if (index === own.length - 1) return sourced;
    const { from } = share;
    const key = `${line.key}:${typeof from === 'string' ? from : `lot:${from.lot.id}`}`;
    return lineOf({ ...sourced, key, labourHours: ZERO }, rate);
  });
}

function sourceOf(share: Share, good: Good): Partial<Line> {
  const { from, units, bought } = share;
  const quantity = good.quantityOf(units);
  if (from === 'owned') return { quantity, source: from, leadDays: 0 };
  if (typeof from !== 'string') {
    return { quantity, source: 'lot', fromLot: from.lot.id, leadDays: leadDaysOf(from) };
  }
  if (bought === null) return { quantity, source: 'unpriced', price: null };
  const { offer, packs, price } = bought;
  const over = fraction(BigInt(share.over), BigInt(good.scale));
  const leadDays = offer.record.leadDays ?? null;
  return { quantity, source: 'offer', offer, packs, over, unitPrice: offer.price, price, leadDays };
}

function lotLine(one: BoughtLot, used: ReadonlyMap<Good, number>, rate: Money | null): Line {
  const { lot, copies, bought } = one;
  const said = {
    key: `lot:${lot.id}`,
    action: 'lot',
    lot: lot.id,
    quantity: rational(copies),
    leftOver: leftOverOf(one, used),
  } as const;
  if (bought === null) return lineOf({ ...said, source: 'unpriced', price: null }, rate);
  const { offer, packs, price } = bought;
  const over = subtract(multiply(offer.pack.value, rational(packs)), rational(copies));
  const sold = { offer, packs, over, unitPrice: offer.price, price };
  return lineOf({ ...said, source: 'offer', ...sold, leadDays: leadDaysOf(one) }, rate);
}

function leadDaysOf({ bought }: BoughtLot): number | null {
  return bought?.offer.record.leadDays ?? null;
}
