/**
 * Does this part fit this vehicle? In a URL, or in a body.
 */

import { checkFitOperation, type FitQuestion, fitQuestionSchema } from '../../contract/fit.js';
import { knownOf } from '../../contract/known-vehicle.js';
import { besideVehicle } from '../../contract/vehicle-input.js';
import type { NamingInput } from '../../usecases/asked-parts.js';
import type { FitInput } from '../../usecases/check-fit.js';
import type { PartlyFitInput } from '../../usecases/check-fit-partly.js';
import { pointerCalled, questionInBody } from '../body.js';
import type { Exchange } from '../exchange.js';
import { type App, mount } from '../mount.js';
import { answerNaming } from '../naming.js';
import { parameterCalled, questionInUrl } from '../query.js';
import type { Service } from '../service.js';

const { path, query } = checkFitOperation;

export function mountFit(app: App, service: Service): void {
  mount(app, service, path, {
    mediaType: 'application/json',
    get: {
      placeOf: (at) => parameterCalled(at, query),
      answer: (exchange) => checkFit(exchange, service),
    },
    ask: { placeOf: pointerCalled, answer: (exchange) => askFit(exchange, service) },
  });
}

function checkFit(exchange: Exchange, service: Service): Response {
  return answer(exchange, questionInUrl(exchange, query, fitQuestionSchema), service);
}

async function askFit(exchange: Exchange, service: Service): Promise<Response> {
  return answer(exchange, await questionInBody(exchange, fitQuestionSchema), service);
}

function answer(exchange: Exchange, asked: FitQuestion, service: Service): Response {
  const { checkFit: ofOne, checkFitPartly: ofSome } = service.useCases;
  // Whatever is changed around the part has a price.
  const hasPrices = asked.changes !== 'no';
  const question = { path, query, asked, hasPrices };
  const { vehicle } = asked;
  if (vehicle === undefined) {
    const inputOf = (_: FitQuestion, common: NamingInput): PartlyFitInput => {
      return { ...besideOf(asked, common), known: knownOf(asked) };
    };
    return answerNaming(service, exchange, { ...question, inputOf, judge: ofSome });
  }
  const inputOf = (_: FitQuestion, common: NamingInput): FitInput => {
    return { ...besideOf(asked, common), vehicle };
  };
  return answerNaming(service, exchange, { ...question, inputOf, judge: ofOne });
}

/** All but which vehicle it is. */
function besideOf(question: FitQuestion, common: NamingInput): Omit<FitInput, 'vehicle'> {
  const { part, position, with: companions, changes, steps } = question;
  return {
    ...besideVehicle(question, common),
    part,
    position: position ?? null,
    with: companions ?? {},
    changes: changes ?? 'yes',
    ...(steps === undefined ? {} : { steps }),
  };
}
