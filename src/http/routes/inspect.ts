/**
 * Is this vehicle right as it stands?
 */

import { inspectOperation, inspectQuestionSchema } from '../../contract/inspect.js';
import { vehicleInput } from '../../contract/vehicle-input.js';
import { pointerCalled, questionInBody } from '../body.js';
import type { Exchange } from '../exchange.js';
import { type App, mount } from '../mount.js';
import { answerNaming } from '../naming.js';
import type { Service } from '../service.js';

const { path } = inspectOperation;

export function mountInspect(app: App, service: Service): void {
  mount(app, service, path, {
    mediaType: 'application/json',
    ask: { placeOf: pointerCalled, answer: (exchange) => inspect(exchange, service) },
  });
}

async function inspect(exchange: Exchange, service: Service): Promise<Response> {
  const asked = await questionInBody(exchange, inspectQuestionSchema);
  const { inspectVehicle: judge } = service.useCases;
  const question = { path, query: null, asked, inputOf: vehicleInput, judge };
  return answerNaming(service, exchange, question);
}
