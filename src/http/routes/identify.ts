/**
 * Which vehicle is this, and which part? Nothing of a question about somebody's vehicle is kept,
 * logged or made a validator of.
 */

import { identifyPartOperation } from '../../contract/identify-part.js';
import {
  type IdentifyAnswerWire,
  identifyQuestionSchema,
  identifyVehicleOperation,
} from '../../contract/identify-vehicle.js';
import { knownOf } from '../../contract/known-vehicle.js';
import {
  type IdentifyPartQuestion,
  identifyPartFilters,
  identifyPartQuestionSchema,
} from '../../contract/piece-question.js';
import type { Frozen } from '../../contract/wire.js';
import type { IdentifyPartInput } from '../../usecases/identify-part.js';
import { JUDGED, settle } from '../asked.js';
import { pointerCalled, questionInBody } from '../body.js';
import { type Exchange, jsonReply, vary } from '../exchange.js';
import { mountList } from '../listed.js';
import { type App, mount } from '../mount.js';
import type { Service } from '../service.js';

export function mountIdentify(app: App, service: Service): void {
  mount(app, service, identifyVehicleOperation.path, {
    mediaType: 'application/json',
    ask: { placeOf: pointerCalled, answer: (exchange) => identify(exchange, service) },
  });
  mountList<IdentifyPartQuestion, IdentifyPartInput>(app, service, {
    operation: identifyPartOperation,
    schema: identifyPartQuestionSchema,
    filters: identifyPartFilters,
    list: service.useCases.identifyPart,
    lifetimes: JUDGED,
  });
}

async function identify(exchange: Exchange, service: Service): Promise<Response> {
  const asked = await questionInBody(exchange, identifyQuestionSchema);
  const { path } = identifyVehicleOperation;
  const { head, lang, view } = settle(service, exchange, asked, { path });
  const answer = service.useCases.identifyVehicle(service.library, {
    edition: head.number,
    lang,
    vin: asked.vin ?? null,
    ...knownOf(asked),
    facts: asked.facts ?? {},
  });
  const shown = service.shown.answer(path, view, answer satisfies Frozen<IdentifyAnswerWire>);
  return jsonReply(exchange, JSON.stringify(shown), {
    'faying-edition': String(head.number),
    'faying-view': view,
    'content-language': lang,
    'cache-control': 'no-store',
    ...vary(exchange, asked.lang === undefined ? ['Accept-Language'] : []),
  });
}
