/**
 * Questions in which parts are named. What an order code is of, the price and stock list says,
 * which has a counter of its own: an answer that looked one up is of both counters, and caches may
 * keep it no longer than one of the newest edition.
 */

import { isSku } from '../usecases/part-names.js';
import { type Asked, FLOATING, JUDGED, type Lifetimes, type Settled, settle } from './asked.js';
import type { Exchange } from './exchange.js';
import type { Service } from './service.js';

export interface NamingSettled extends Settled {
  /** Of the price and stock list; null where no name needs it. */
  readonly offers: number | null;
}

export function settleNaming(service: Service, exchange: Exchange, question: Asked): NamingSettled {
  return { ...settle(service, exchange, question), offers: offersFor(question, service) };
}

/** Has the list at hand, so that it is this one that answers. */
export function offersFor(question: object, { library }: Service): number | null {
  return namesSku(question) ? library.skus(null).number : null;
}

function namesSku(value: unknown): boolean {
  if (typeof value === 'string') return isSku(value);
  if (typeof value !== 'object' || value === null) return false;
  return Object.values(value).some(namesSku);
}

const UNTIL_OFFERED: Lifetimes = { pinned: FLOATING, floating: FLOATING };

export function lifetimesOf(
  { offers }: Pick<NamingSettled, 'offers'>,
  usual: Lifetimes = JUDGED,
): Lifetimes {
  return offers === null ? usual : UNTIL_OFFERED;
}
