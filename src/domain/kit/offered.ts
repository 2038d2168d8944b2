/**
 * Offers as a kit question takes them: the price a number, and what it buys an amount.
 */

import { type Amount, readAmount } from '../catalogue/amount.js';
import type { OfferRecord } from '../catalogue/document.js';
import { FaultList } from '../catalogue/faults.js';
import { ONE } from '../quantity/rational.js';
import { moneyOf } from './money.js';
import type { Offer } from './question.js';

/** What one price buys where the offer does not say. */
export const ONE_PIECE: Amount = { value: ONE, dimension: '1', text: '1' };

/** Of a record that has been checked. */
export function offerOf(record: OfferRecord): Offer {
  const price = moneyOf(record.price);
  const { pack } = record;
  const amount = pack === undefined ? ONE_PIECE : readAmount(pack, '', new FaultList());
  if (price === null || amount === null) {
    throw new Error(`the offer ${record.id} was not checked before it was stored`);
  }
  return { record, price, pack: amount };
}
