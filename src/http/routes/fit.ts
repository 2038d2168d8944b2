/**
 * Does this part fit this vehicle? In a URL, or in a body.
 */

import { checkFitOperation, type FitQuestion, fitQuestionSchema } from '../../contract/fit.js';
import type { NamingInput } from '../../usecases/asked-parts.js';
import type { FitInput } from '../../usecases/check-fit.js';
import { pointerCalled, questionInBody } from '../body.js';
import type { Exchange } from '../exchange.js';
import { type App, mount } from '../mount.js';
import { answerNaming } from '../naming.js';
import { parameterCalled, questionInUrl } from '../query.js';
import type { Service } from '../service.js';
import { vehicleInput } from '../vehicle-input.js';

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
  const { checkFit: judge } = service.useCases;
  // Whatever is changed around the part has a price.
  const hasPrices = asked.changes !== 'no';
  return answerNaming(service, exchange, { path, query, asked, inputOf, judge, hasPrices });
}

function inputOf(question: FitQuestion, common: NamingInput): FitInput {
  const { part, position, with: companions, changes, steps } = question;
  return {
    ...vehicleInput(question, common),
    part,
    position: position ?? null,
    with: companions ?? {},
    changes: changes ?? 'yes',
    ...(steps === undefined ? {} : { steps }),
  };
}
