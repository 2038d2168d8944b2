/**
 * One request and what every answer to it has in common: its id, whether a browser's page may
 * read it, and that nobody may take it for anything but what it is.
 */

import type { Language } from '../contract/language.js';
import { LIMITS, type LimitsInForce } from '../contract/limits.js';
import type { ProblemWire } from '../contract/problem.js';
import { languageTag } from '../contract/question.js';
import { type Access, accessOf, isOpenToAll, keptFor } from './access.js';
import { spokenTo } from './negotiation.js';
import { problemOf, type Refusal } from './problem.js';
import { langIn } from './query.js';
import type { ServerState, Service } from './service.js';

export interface Exchange {
  readonly request: Request;
  readonly id: string;
  /** The path as it was asked, and what stands after the question mark. */
  readonly path: string;
  readonly search: string;
  /** Headers of every answer to this request. */
  readonly headers: Readonly<Record<string, string>>;
  /** Which requests get another answer: names of headers for `Vary`. */
  readonly varies: readonly string[];
  readonly isStopping: boolean;
  readonly limits: LimitsInForce;
  /** What the request may do, or why nothing can be said of that. */
  readonly access: Access | Error;
  /** What a body says its answer is to be spoken in, once the body has been read. */
  readonly said: { lang?: unknown };
}

export type Headers = Readonly<Record<string, string>>;

const REQUEST_ID = new RegExp(`^[\\w.:-]{1,${LIMITS.requestIdCharacters.value}}$`);

/** Headers that a page of another origin may read beside those that it always may. */
const EXPOSED =
  'ETag, Link, Content-Location, Faying-Edition, Faying-View, RateLimit, Retry-After, ' +
  'WWW-Authenticate, X-Request-Id';

/** Seconds after which asking again makes sense; a publication or a restart takes about as long. */
const RETRY_AFTER = '5';

/** Seconds that a missing thing is taken for missing: it may be published the next moment. */
const MISSING_FOR = 30;

/** `standing` are the headers of every answer of the path. */
export function openExchange(
  request: Request,
  service: Service,
  { isStopping, limits }: ServerState,
  standing: Headers,
): Exchange {
  const { path, search } = targetOf(request.url);
  const sent = request.headers.get('x-request-id');
  const id = sent !== null && REQUEST_ID.test(sent) ? sent : service.newRequestId();
  const { open, corsOrigins } = service.config;
  const { access, pages } = grantedTo(request, service);
  const origins = [...corsOrigins, ...pages];
  const cors = origins.length === 0 ? null : corsHeaders(request, origins);
  const headers = {
    'x-request-id': id,
    'x-content-type-options': 'nosniff',
    'content-security-policy': "default-src 'none'",
    ...standing,
    ...cors,
  };
  return {
    request,
    id,
    path,
    search,
    headers,
    varies: [...(cors === null ? [] : ['Origin']), ...(isOpenToAll(open) ? [] : ['Authorization'])],
    isStopping,
    limits,
    access,
    said: {},
  };
}

interface Granted {
  readonly access: Access | Error;
  /** Origins of the pages that have a key: a browser asks them before it shows one. */
  readonly pages: readonly string[];
}

/** That a store cannot be read is told where the request is answered. */
function grantedTo(request: Request, { keys, config, pages }: Service): Granted {
  try {
    return { access: accessOf(request, { keys, open: config.open }), pages: pages() };
  } catch (error) {
    if (error instanceof Error) return { access: error, pages: [] };
    throw error;
  }
}

/** Of an absolute URL, since hono knows no other. */
function targetOf(url: string): { path: string; search: string } {
  const start = url.indexOf('/', url.indexOf('://') + 3);
  const target = start === -1 ? '/' : url.slice(start);
  const hash = target.indexOf('#');
  const bare = hash === -1 ? target : target.slice(0, hash);
  const mark = bare.indexOf('?');
  if (mark === -1) return { path: bare, search: '' };
  return { path: bare.slice(0, mark), search: bare.slice(mark + 1) };
}

function corsHeaders(request: Request, origins: readonly string[]): Headers {
  const origin = request.headers.get('origin');
  if (origin === null || !origins.includes(origin)) return {};
  return { 'access-control-allow-origin': origin, 'access-control-expose-headers': EXPOSED };
}

/** `Vary` for an answer that besides depends on `names`; nothing where it depends on none. */
export function vary(exchange: Exchange, names: readonly string[] = []): Headers {
  const all = [...exchange.varies, ...names];
  return all.length === 0 ? {} : { vary: all.join(', ') };
}

/** The form of all answers; a question in a body has it too. */
export const JSON_TYPE = 'application/json';

/** An answer in JSON. The headers are set here and never after, which halves hono's work. */
export function jsonReply(exchange: Exchange, body: string, headers: Headers): Response {
  return new Response(body, {
    status: 200,
    headers: { 'content-type': JSON_TYPE, ...exchange.headers, ...headers },
  });
}

/** A page for people. */
export function textReply(exchange: Exchange, body: string, headers: Headers): Response {
  return new Response(body, {
    status: 200,
    headers: { 'content-type': 'text/plain; charset=utf-8', ...exchange.headers, ...headers },
  });
}

/** What a language is asked by: `lang` if it can be read, else the header of the client. */
interface Spoken {
  readonly lang: Language;
  /** Names of headers that decide it. */
  readonly by: readonly string[];
}

/** The language of what is said to a request that has no answer to a question. */
export function spokenIn({ request, search, said }: Exchange): Spoken {
  const lang = languageTag(said.lang) ?? langIn(search);
  return {
    lang: spokenTo(lang, request.headers.get('accept-language')),
    by: lang === undefined ? ['Accept-Language'] : [],
  };
}

export function problemReply(exchange: Exchange, refusal: Refusal): Response {
  const { lang, by } = spokenIn(exchange);
  const problem = problemOf(refusal, { instance: exchange.id, lang, limits: exchange.limits });
  const own = problemHeaders(problem, exchange.request.method);
  const headers = {
    ...exchange.headers,
    ...own,
    'cache-control': keptFor(exchange, own['cache-control']),
    ...vary(exchange, by),
    ...refusal.headers,
  };
  return new Response(JSON.stringify(problem), { status: problem.status, headers });
}

/** Methods that change nothing and say so: what they lead to may be kept on the way. */
const SHARED: ReadonlySet<string> = new Set(['GET', 'HEAD', 'QUERY']);

/** Statuses of names that are of nothing, of several things, or of what was replaced. */
const NAMED_WRONGLY: ReadonlySet<number> = new Set([404, 409, 410]);

/** The headers that follow from a problem alone. */
export function problemHeaders(
  problem: ProblemWire,
  method: string,
): Headers & { readonly 'cache-control': string } {
  const isShared = NAMED_WRONGLY.has(problem.status) && SHARED.has(method);
  return {
    'content-type': 'application/problem+json',
    'content-language': problem.lang,
    'cache-control': isShared ? `public, max-age=${MISSING_FOR}` : 'no-store',
    ...(problem.status === 503 ? { 'retry-after': RETRY_AFTER } : {}),
  };
}

/** What a browser asks before it sends a request from another page. */
export function optionsReply(exchange: Exchange, allow: string): Response {
  const isPreflight =
    'access-control-allow-origin' in exchange.headers &&
    exchange.request.headers.has('access-control-request-method');
  const preflight = {
    'access-control-allow-methods': allow,
    'access-control-allow-headers': 'Authorization, Content-Type, If-None-Match, X-Request-Id',
    'access-control-max-age': '86400',
  };
  const headers = { allow, ...exchange.headers, ...vary(exchange), ...(isPreflight && preflight) };
  return new Response(null, { status: 204, headers });
}
