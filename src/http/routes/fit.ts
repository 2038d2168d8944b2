/**
 * Does this part fit this vehicle? In a URL, or in a body.
 */

import { checkFitOperation, type FitQuestion, fitQuestionSchema } from '../../contract/fit.js';
import type { FitInput } from '../../usecases/check-fit.js';
import { answerTo } from '../asked.js';
import { pointerAt, pointerCalled, readBody } from '../body.js';
import type { Exchange } from '../exchange.js';
import { checkForm } from '../form.js';
import { type App, mount } from '../mount.js';
import { lifetimesOf, type NamingSettled, settleNaming } from '../naming.js';
import { parameterAt, parameterCalled, readQuery, refuseParameters } from '../query.js';
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
  const read = readQuery(exchange.search, query);
  const question = checkForm(fitQuestionSchema, read, (at) => parameterAt(at, query));
  return answer(exchange, question, service);
}

async function askFit(exchange: Exchange, service: Service): Promise<Response> {
  refuseParameters(exchange.search);
  const read = await readBody(exchange);
  const question = checkForm(fitQuestionSchema, read, pointerAt);
  return answer(exchange, question, service);
}

function answer(exchange: Exchange, asked: FitQuestion, service: Service): Response {
  const settled = settleNaming(service, exchange, asked);
  const input = inputOf(asked, settled);
  const { checkFit: judge } = service.useCases;
  return answerTo(service, exchange, settled, {
    path,
    query,
    asked,
    lifetimes: lifetimesOf(settled),
    input,
    judge,
  });
}

function inputOf(question: FitQuestion, settled: NamingSettled): FitInput {
  const { part, position, with: companions, changes } = question;
  return {
    ...vehicleInput(question, settled),
    part,
    position: position ?? null,
    with: companions ?? {},
    changes: changes ?? 'no',
  };
}
