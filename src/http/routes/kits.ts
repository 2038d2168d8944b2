/**
 * What does the conversion take? In a URL, or in a body. The answer has prices in it, so it is of
 * the price and stock list as well.
 */

import { nearestTo } from '../../contract/json-pointer.js';
import { kitFields } from '../../contract/kit-input.js';
import {
  type KitQuestion,
  kitQuestionSchema,
  kitUrlQuestionSchema,
} from '../../contract/kit-question.js';
import { KITS_PATH, KITS_QUERY } from '../../contract/kits.js';
import { knownOf } from '../../contract/known-vehicle.js';
import { besideVehicle } from '../../contract/vehicle-input.js';
import type { NamingInput } from '../../usecases/asked-parts.js';
import { type KitInput, USUAL_KIT } from '../../usecases/kit-input.js';
import type { PartlyKitInput } from '../../usecases/resolve-kits-partly.js';
import { viewFor } from '../access.js';
import { pointerCalled, questionInBody } from '../body.js';
import type { Exchange } from '../exchange.js';
import { type App, mount } from '../mount.js';
import { answerNaming } from '../naming.js';
import { type Place, Refusal } from '../problem.js';
import { parameterCalled, questionInUrl } from '../query.js';
import type { Service } from '../service.js';

export function mountKits(app: App, service: Service): void {
  mount(app, service, KITS_PATH, {
    mediaType: 'application/json',
    get: {
      placeOf: (at) => parameterCalled(at, KITS_QUERY),
      answer: (exchange) => findKits(exchange, service),
    },
    ask: { placeOf: placeInBody, answer: (exchange) => askKits(exchange, service) },
  });
}

function findKits(exchange: Exchange, service: Service): Response {
  return answer(exchange, questionInUrl(exchange, KITS_QUERY, kitUrlQuestionSchema), service);
}

async function askKits(exchange: Exchange, service: Service): Promise<Response> {
  return answer(exchange, await questionInBody(exchange, kitQuestionSchema), service);
}

function answer(exchange: Exchange, asked: KitQuestion, service: Service): Response {
  checkWishes(exchange, asked);
  const { resolveKitQuestion: ofOne, resolveKitsPartly: ofSome } = service.useCases;
  const isConfidential = hasOwnPrices(asked);
  const of = {
    path: KITS_PATH,
    query: KITS_QUERY,
    asked,
    hasPrices: true,
    isConfidential,
  } as const;
  const { vehicle } = asked;
  if (vehicle === undefined) {
    const inputOf = (_: KitQuestion, common: NamingInput): PartlyKitInput => {
      return { ...besideOf(asked, common), known: knownOf(asked) };
    };
    return answerNaming(service, exchange, { ...of, inputOf, judge: ofSome });
  }
  const inputOf = (_: KitQuestion, common: NamingInput): KitInput => {
    return { ...besideOf(asked, common), vehicle };
  };
  return answerNaming(service, exchange, { ...of, inputOf, judge: ofOne });
}

/**
 * What a view does not show is not to be found out by asking whether there is a way with it, or
 * which way comes first.
 */
function checkWishes(exchange: Exchange, asked: KitQuestion): void {
  const view = viewFor(exchange, asked.view, KITS_PATH);
  if (view !== 'public') return;
  const { limits = {}, want = [], avoid = [] } = asked;
  const wishes = { offers: asked.offers, labourRate: asked.labourRate, measured: asked.measured };
  const fields = [
    ...Object.entries(wishes).flatMap(([field, wish]) => (wish === undefined ? [] : [field])),
    ...(Object.keys(limits).length === 0 ? [] : ['limits']),
    ...(want.some((one) => asksForValues(one)) ? ['want'] : []),
    ...(avoid.some((one) => asksForValues(one)) ? ['avoid'] : []),
  ];
  if (fields.length === 0) return;
  const isInUrl = exchange.request.method === 'GET' || exchange.request.method === 'HEAD';
  const faults = fields.map((field) => ({
    ...(isInUrl ? { parameter: field } : { pointer: `/${field}` }),
    code: 'wish-not-in-view' as const,
    data: { view, field },
  }));
  throw new Refusal('not-granted', faults);
}

function asksForValues(wish: object): boolean {
  return 'condition' in wish || 'load' in wish || 'supplier' in wish;
}

function hasOwnPrices({ offers = [], labourRate }: KitQuestion): boolean {
  return offers.length > 0 || labourRate !== undefined;
}

/** All but which vehicle it is. */
function besideOf(question: KitQuestion, common: NamingInput): Omit<KitInput, 'vehicle'> {
  return { ...besideVehicle(question, common), ...kitFields(question, USUAL_KIT) };
}

/** The use-case points into conditions, which the question writes out. */
function placeInBody(at: string): Place {
  return at.startsWith('/') ? { pointer: nearestTo(at) } : pointerCalled(at);
}
