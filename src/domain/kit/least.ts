/**
 * The least that one item adds to any bill. Goods that are at hand, or in some lot, may cost
 * nothing, and packs may have been opened already for something else.
 */

import type { Position } from '../catalogue/catalogue.js';
import {
  add,
  larger,
  multiply,
  type Rational,
  rational,
  subtract,
  ZERO,
} from '../quantity/rational.js';
import type { SeatChange } from './basket.js';
import { labourPriceDown } from './drafts.js';
import type { Item, Workshop } from './items.js';
import type { Lanes } from './lanes.js';

export type Least = Omit<Lanes, 'preferred'> & { readonly hours: number };

/** Where nothing is done yet at the place or the mating of the item; it may be opened already. */
export function leastOfItem(item: Item, opened: Item | null): Least {
  const goods = leastGoods(item);
  return {
    unpriced: item.unpriced + goods.unpriced,
    // An opened place has labour already, and never more than its change has.
    money: item.money - (opened?.money ?? 0) + goods.money,
    hours: item.hours - (opened?.hours ?? 0),
    changed: item.isChanged ? 1 : 0,
  };
}

/**
 * One hand of a place where something may be done for the other hand already: they may share a
 * line, a pack and the time to get the place out of the way. Two amounts of labour on one line are
 * rounded once, so each of them is rounded down here.
 */
export function leastOfHand(item: Item, change: SeatChange, workshop: Workshop): Least {
  const { market, packing, question } = workshop;
  const { position, pieces } = change;
  let { money } = leastGoods(item);
  let hours = item.drafts.length === 0 ? ZERO : labourBeyondAccess(position, pieces);
  money += labourPriceDown(hours, question.labourRate);
  for (const { line } of item.drafts) {
    if (line.work === null) continue;
    const labour = line.labourHours ?? ZERO;
    hours = add(hours, labour);
    money += labourPriceDown(labour, question.labourRate);
    money += market.goods(line.work, '1').leastMore(pieces);
  }
  return { unpriced: 0, money, hours: packing.hours(hours), changed: 0 };
}

function labourBeyondAccess({ labour, access }: Position, pieces: number): Rational {
  if (labour === null) return ZERO;
  return larger(ZERO, subtract(multiply(labour, rational(pieces)), access ?? ZERO));
}

function leastGoods({ needs }: Item): { readonly unpriced: number; readonly money: number } {
  let [unpriced, money] = [0, 0];
  for (const { good, units } of needs) {
    const missing = units - good.owned;
    if (missing <= 0 || good.inLots.size > 0) continue;
    if (good.isOffered) money += good.leastMore(missing);
    else unpriced += 1;
  }
  return { unpriced, money };
}
