/**
 * Puts a path into the application with everything that each path does alike: methods, limits,
 * what the client accepts, errors, and one line in the log.
 */

import type { Context, Hono } from 'hono';
import { LIMITS } from '../contract/limits.js';
import { checkAccess } from './access.js';
import {
  type Exchange,
  type Headers,
  openExchange,
  optionsReply,
  problemReply,
} from './exchange.js';
import { accepts } from './negotiation.js';
import { type PlaceOf, Refusal, refusalOf } from './problem.js';
import { type Service, type ServiceEnv, stateOf } from './service.js';

export type App = Hono<ServiceEnv>;
export type Reply = Response | Promise<Response>;

export interface Handling {
  readonly answer: (exchange: Exchange) => Reply;
  /** Where the use-case's names of fields stand in the request. */
  readonly placeOf: PlaceOf | null;
}

export interface Methods {
  readonly get?: Handling;
  /** A question in a body: by POST, and by QUERY, which says besides that it changes nothing. */
  readonly ask?: Handling;
  /** What the answers of this path are; of several the client chooses one. */
  readonly mediaType: string | readonly string[];
}

/** Safe and idempotent, with a body: draft-ietf-httpbis-safe-method-w-body. */
const QUERY = 'QUERY';

interface Route {
  /** As the log names it. */
  readonly path: string;
  /** Headers of every answer of this path. */
  readonly headers: Headers;
}

const NO_ROUTE: Route = { path: 'none', headers: {} };

export function mount(app: App, service: Service, path: string, methods: Methods): void {
  const { get, ask } = methods;
  const mediaTypes = [methods.mediaType].flat();
  const allow = [...(get ? ['GET', 'HEAD'] : []), ...(ask ? ['POST', QUERY] : []), 'OPTIONS'].join(
    ', ',
  );
  // The same draft, section 3: of what types the body of a QUERY may be; the answer has the same.
  const route = { path, headers: ask ? { 'accept-query': mediaTypes.join(', ') } : {} };
  const documented = path.replace(/:(\w+)/g, '{$1}');
  const on = (handling: Handling) => (context: Context<ServiceEnv>) =>
    handle(context, service, route, {
      placeOf: handling.placeOf,
      answer: (exchange) => {
        checkTarget(exchange);
        checkAccept(exchange, mediaTypes);
        checkAccess(exchange, documented);
        return handling.answer(exchange);
      },
    });
  const options = { answer: (exchange: Exchange) => optionsReply(exchange, allow), placeOf: null };
  const others = { answer: (exchange: Exchange) => refuseMethod(exchange, allow), placeOf: null };
  if (get) app.get(path, on(get));
  if (ask) app.on(['POST', QUERY], path, on(ask));
  app.options(path, (context) => handle(context, service, route, options));
  app.all(path, (context) => handle(context, service, route, others));
}

/** Whatever no path took. */
export function mountRest(app: App, service: Service): void {
  const rest = { answer: refusePath, placeOf: null };
  app.notFound((context) => handle(context, service, NO_ROUTE, rest));
  // Handlers catch what they throw, so what arrives here was thrown by the framework itself.
  app.onError((error, context) => {
    const answer = () => Promise.reject(error);
    return handle(context, service, NO_ROUTE, { answer, placeOf: null });
  });
}

const URL_LIMIT = LIMITS.urlBytes.value;

function checkTarget({ path, search }: Exchange): void {
  if (path.length + 1 + search.length <= URL_LIMIT) return;
  const fault = { code: 'url-too-long', data: { most: URL_LIMIT, limit: 'urlBytes' } } as const;
  throw new Refusal('url-too-long', [fault]);
}

function checkAccept({ request }: Exchange, mediaTypes: readonly string[]): void {
  const accept = request.headers.get('accept');
  if (mediaTypes.some((mediaType) => accepts(accept, mediaType))) return;
  const type = mediaTypes.join(', ');
  throw new Refusal('not-acceptable', [{ code: 'type-not-accepted', data: { type } }]);
}

function refuseMethod({ request, path }: Exchange, allow: string): never {
  const data = { path, method: request.method, allow };
  throw new Refusal('method-not-allowed', [{ code: 'method-not-taken', data }], {
    headers: { allow },
  });
}

function refusePath(exchange: Exchange): never {
  checkTarget(exchange);
  throw new Refusal('unknown-path', [{ code: 'nothing-at-path', data: { path: exchange.path } }]);
}

function handle(
  context: Context<ServiceEnv>,
  service: Service,
  { path: route, headers }: Route,
  { answer, placeOf }: Handling,
): Reply {
  const started = service.stopwatch();
  const exchange = openExchange(context.req.raw, service, stateOf(context.env), headers);
  const end = (response: Response): Response => {
    const { method } = exchange.request;
    const ms = Math.round((service.stopwatch() - started) * 1000) / 1000;
    const { status } = response;
    service.log.info({ method, route, status, ms, requestId: exchange.id }, 'answered');
    return response;
  };
  const fail = (error: unknown): Response => end(failed(error, exchange, service, placeOf));
  try {
    const reply = answer(exchange);
    return reply instanceof Promise ? reply.then(end, fail) : end(reply);
  } catch (error) {
    return fail(error);
  }
}

/** What is the service's own fault goes into the log with everything there is to know of it. */
function failed(
  error: unknown,
  exchange: Exchange,
  { log }: Service,
  placeOf: PlaceOf | null,
): Response {
  const refusal = refusalOf(error, placeOf);
  if (refusal.code === 'internal-error' || refusal.code === 'store-fault') {
    log.error({ err: error, requestId: exchange.id }, refusal.code);
  }
  return problemReply(exchange, refusal);
}
