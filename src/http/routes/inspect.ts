/**
 * Is this vehicle right as it stands?
 */

import { inspectOperation, inspectQuestionSchema } from '../../contract/inspect.js';
import { answerTo } from '../asked.js';
import { pointerAt, pointerCalled, readBody } from '../body.js';
import type { Exchange } from '../exchange.js';
import { checkForm } from '../form.js';
import { type App, mount } from '../mount.js';
import { lifetimesOf, settleNaming } from '../naming.js';
import { refuseParameters } from '../query.js';
import type { Service } from '../service.js';
import { vehicleInput } from '../vehicle-input.js';

const { path } = inspectOperation;

export function mountInspect(app: App, service: Service): void {
  mount(app, service, path, {
    mediaType: 'application/json',
    ask: { placeOf: pointerCalled, answer: (exchange) => inspect(exchange, service) },
  });
}

async function inspect(exchange: Exchange, service: Service): Promise<Response> {
  refuseParameters(exchange.search);
  const read = await readBody(exchange);
  const asked = checkForm(inspectQuestionSchema, read, pointerAt);
  const settled = settleNaming(service, exchange, asked);
  const input = vehicleInput(asked, settled);
  const { inspectVehicle: judge } = service.useCases;
  return answerTo(service, exchange, settled, {
    path,
    query: null,
    asked,
    lifetimes: lifetimesOf(settled),
    input,
    judge,
  });
}
