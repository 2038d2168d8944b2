/**
 * Questions in which parts are named. What an order code is of, the price and stock list says,
 * which has a counter of its own: an answer that looked one up is of both counters, and caches may
 * keep it no longer than one of the newest edition.
 */

import type { NamingInput } from '../usecases/asked-parts.js';
import { isSku } from '../usecases/part-names.js';
import {
  type Asked,
  answerTo,
  FLOATING,
  JUDGED,
  type Lifetimes,
  type Question,
  settle,
} from './asked.js';
import type { Exchange } from './exchange.js';
import type { Service } from './service.js';

/** What is asked of a use-case that names parts. */
interface NamingQuestion<Wire extends Asked, Input extends NamingInput>
  extends Pick<Question<Input>, 'path' | 'query' | 'judge' | 'isConfidential'> {
  /** As the client said it. */
  readonly asked: Wire;
  /** The same as the use-case takes it; `common` is what all such questions have. */
  readonly inputOf: (asked: Wire, common: NamingInput) => Input;
  /** The answer has prices in it, whatever parts are named. */
  readonly hasPrices?: boolean;
}

export function answerNaming<Wire extends Asked, Input extends NamingInput>(
  service: Service,
  exchange: Exchange,
  { asked, inputOf, hasPrices, ...question }: NamingQuestion<Wire, Input>,
): Response {
  const settled = settle(service, exchange, asked, { path: question.path });
  const offers = hasPrices ? offersNow(service) : offersFor(asked, service);
  const { head, lang } = settled;
  // The number and not "the newest": another edition may be published in between.
  const input = inputOf(asked, { edition: head.number, lang, ...offers });
  const lifetimes = lifetimesOf(offers);
  return answerTo(service, exchange, settled, { ...question, asked, lifetimes, input });
}

/** Of the price and stock list; left out where no name needs it. */
export type Offers = Pick<NamingInput, 'offers'>;

/** Has the list at hand, so that it is this one that answers. */
export function offersFor(question: object, service: Service): Offers {
  return namesSku(question) ? offersNow(service) : {};
}

/** The list as it stands, for what has prices in it. */
export function offersNow({ offersNumber }: Service): Required<Offers> {
  return { offers: offersNumber() };
}

function namesSku(value: unknown): boolean {
  if (typeof value === 'string') return isSku(value);
  if (typeof value !== 'object' || value === null) return false;
  return Object.values(value).some(namesSku);
}

const UNTIL_OFFERED: Lifetimes = { pinned: FLOATING, floating: FLOATING };

export function lifetimesOf({ offers }: Offers, usual: Lifetimes = JUDGED): Lifetimes {
  return offers === undefined ? usual : UNTIL_OFFERED;
}
