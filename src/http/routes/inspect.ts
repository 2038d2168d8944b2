/**
 * Is this vehicle right as it stands?
 */

import { inspectOperation, inspectQuestionSchema } from '../../contract/inspect.js';
import { answerIn, settle } from '../asked.js';
import { pointerAt, pointerCalled, readBody } from '../body.js';
import type { Exchange } from '../exchange.js';
import { checkForm } from '../form.js';
import { type App, mount } from '../mount.js';
import { refuseParameters } from '../query.js';
import type { Service } from '../service.js';
import { vehicleInput } from '../vehicle-input.js';

const { path } = inspectOperation;

export function mountInspect(app: App, service: Service): void {
  mount(app, service, path, {
    mediaType: 'application/json',
    post: { placeOf: pointerCalled, answer: (exchange) => inspect(exchange, service) },
  });
}

async function inspect(exchange: Exchange, service: Service): Promise<Response> {
  const { useCases } = service;
  refuseParameters(exchange.search);
  const read = await readBody(exchange.request);
  const question = checkForm(inspectQuestionSchema, read, pointerAt);
  const settled = settle(service, exchange, question);
  const input = vehicleInput(question, settled);
  return answerIn(service, exchange, settled, { path, input, judge: useCases.inspectVehicle });
}
