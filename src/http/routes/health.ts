/**
 * Whether the service lives, and whether it can answer. Whoever asks acts on the status alone, so
 * parameters are let pass here.
 */

import {
  type LiveAnswer,
  liveOperation,
  type ReadyAnswer,
  readyOperation,
} from '../../contract/health.js';
import { type Exchange, jsonReply, vary } from '../exchange.js';
import { type App, mount } from '../mount.js';
import { Refusal } from '../problem.js';
import type { Service } from '../service.js';

export function mountHealth(app: App, service: Service): void {
  const mediaType = 'application/json';
  const live = { placeOf: null, answer: isLive };
  const ready = { placeOf: null, answer: (exchange: Exchange) => isReady(exchange, service) };
  mount(app, service, liveOperation.path, { mediaType, get: live });
  mount(app, service, readyOperation.path, { mediaType, get: ready });
}

function isLive(exchange: Exchange): Response {
  return said(exchange, { status: 'live' });
}

function isReady(exchange: Exchange, { library }: Service): Response {
  if (exchange.isStopping) {
    throw new Refusal('stopping');
  }
  return said(exchange, { status: 'ready', edition: library.edition(null).head.number });
}

function said(exchange: Exchange, answer: LiveAnswer | ReadyAnswer): Response {
  const headers = { 'cache-control': 'no-store', ...vary(exchange) };
  return jsonReply(exchange, JSON.stringify(answer), headers);
}
