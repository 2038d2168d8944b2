/**
 * Listens, and stops without cutting anybody short. What Node itself refuses, before there is a
 * request to speak of, is refused in the same form as everything else.
 */

import { randomUUID } from 'node:crypto';
import {
  createServer,
  IncomingMessage,
  type Server,
  ServerResponse,
  STATUS_CODES,
} from 'node:http';
import type { Duplex } from 'node:stream';
import { setTimeout as sleep } from 'node:timers/promises';
import { getRequestListener, RequestError } from '@hono/node-server';
import type { Logger } from 'pino';
import { FALLBACK_LANGUAGE, type Language } from '../contract/language.js';
import { type LimitName, type LimitsInForce, limitsInForce } from '../contract/limits.js';
import type { ProblemCode } from '../contract/problems/problem-type.js';
import { problemHeaders } from './exchange.js';
import type { App } from './mount.js';
import { spokenTo } from './negotiation.js';
import { problemOf, Refusal, type Told } from './problem.js';
import { langIn } from './query.js';
import { Lifecycle } from './service.js';

export interface ServerOptions {
  /** 0 for any port that is free. */
  readonly port: number;
  readonly host: string;
  readonly log: Logger;
  /** Milliseconds between "not ready" and taking no more connections. */
  readonly drainMs?: number;
  /** Milliseconds that answers under way are waited for. */
  readonly deadlineMs?: number;
  /** Milliseconds for a request to arrive whole. */
  readonly arrivalMs?: number;
}

export interface RunningServer {
  /** Such as `http://127.0.0.1:8080`. */
  readonly url: string;
  /** Answers what it has begun to answer, then ends. Calling it again waits for the same end. */
  close(): Promise<void>;
}

const DEADLINE_MS = 10_000;

/** Milliseconds between looking whether a request is late. */
const LATE_MS = 1000;

/** Milliseconds between looking whether connections have become idle. */
const LOOK_MS = 20;

/** Rejects with Node's own error where the port cannot be had. */
export async function startServer(app: App, options: ServerOptions): Promise<RunningServer> {
  const { port, host, log } = options;
  const lifecycle = new Lifecycle();
  const arrival = options.arrivalMs === undefined ? {} : { arrivalMs: options.arrivalMs };
  const limits = limitsInForce(arrival);
  const bindings = { lifecycle, limits };
  const early = { limits, log };
  const listener = getRequestListener((request) => app.fetch(request, bindings), {
    errorHandler: (error) => unreadable(error, early),
  });
  const settings = {
    requestTimeout: limits.arrivalMs,
    headersTimeout: limits.arrivalMs,
    connectionsCheckingInterval: Math.min(limits.arrivalMs, LATE_MS),
    // Node refuses what is as large, and takes what is smaller.
    maxHeaderSize: limits.headerBytes + 1,
    requireHostHeader: false,
  };
  const server = createServer(settings, (...both) => void listener(...both));
  refuseEarly(server, early);
  await listening(server, port, host);
  const url = urlOf(server, host);
  log.info({ url }, 'listening');
  let ending: Promise<void> | null = null;
  const close = (): Promise<void> => {
    lifecycle.isStopping = true;
    ending ??= end(server, options);
    return ending;
  };
  return { url, close };
}

function listening(server: Server, port: number, host: string): Promise<void> {
  return new Promise((resolve, reject) => {
    server.once('error', reject);
    server.listen(port, host, () => {
      server.off('error', reject);
      resolve();
    });
  });
}

function urlOf(server: Server, host: string): string {
  const address = server.address();
  if (address === null || typeof address === 'string') throw new Error('a port is listened on');
  return `http://${host.includes(':') ? `[${host}]` : host}:${address.port}`;
}

async function end(server: Server, { log, drainMs, deadlineMs }: ServerOptions): Promise<void> {
  log.info('stopping');
  await sleep(drainMs ?? 0);
  const closed = new Promise<void>((resolve, reject) => {
    server.close((error) => (error === undefined ? resolve() : reject(error)));
  });
  // A connection becomes idle when its answer is out, and would then be kept open by the client.
  const look = setInterval(() => server.closeIdleConnections(), LOOK_MS);
  const deadline = setTimeout(() => {
    log.warn('connections are cut: the deadline is over');
    server.closeAllConnections();
  }, deadlineMs ?? DEADLINE_MS);
  try {
    await closed;
  } finally {
    clearInterval(look);
    clearTimeout(deadline);
  }
  log.info('stopped');
}

/** What the adapter could make no request of, for its host or its URL. */
function unreadable(error: unknown, { log, limits }: Early): Response {
  const isTheirs = error instanceof RequestError;
  const code: ProblemCode = isTheirs ? 'malformed-request' : 'internal-error';
  const id = randomUUID();
  if (!isTheirs) log.error({ err: error, requestId: id }, code);
  const { status, headers, body } = earlyReply(code, {
    instance: id,
    lang: FALLBACK_LANGUAGE,
    limits,
  });
  log.info({ method: null, route: 'none', status, requestId: id }, 'answered');
  return new Response(body, { status, headers });
}

/** What it takes to refuse what never becomes a request. */
interface Early {
  readonly limits: LimitsInForce;
  readonly log: Logger;
}

function refuseEarly(server: Server, early: Early): void {
  server.on('clientError', (error: NodeJS.ErrnoException, socket) => {
    if (error.code === 'ECONNRESET' || !socket.writable || isAnswering(socket)) socket.destroy();
    else refuseOn(socket, EARLY.get(error.code ?? '') ?? 'malformed-request', early);
  });
  // A tunnel: Node would close the connection without a word.
  server.on('connect', (_, socket) => {
    // Node has let go of it: an error of the line that nobody hears would end the service.
    socket.on('error', () => socket.destroy());
    refuseOn(socket, 'malformed-request', early);
  });
  server.on('checkExpectation', (request, response) => {
    const id = randomUUID();
    const { status, headers, body } = earlyReply('expectation-failed', {
      instance: id,
      lang: languageOf(request),
      limits: early.limits,
    });
    response.writeHead(status, headers).end(body);
    early.log.info({ method: request.method, route: 'none', status, requestId: id }, 'answered');
  });
}

/** Says it and ends the connection: what would come after it cannot be told from the rest. */
function refuseOn(socket: Duplex, code: ProblemCode, { log, limits }: Early): void {
  const id = randomUUID();
  const told = { instance: id, lang: FALLBACK_LANGUAGE, limits };
  const { status, headers, body } = earlyReply(code, told);
  const lines = Object.entries(headers).map(([name, value]) => `${name}: ${value}\r\n`);
  const first = `HTTP/1.1 ${status} ${STATUS_CODES[status] ?? ''}\r\n`;
  const length = `content-length: ${Buffer.byteLength(body)}\r\nconnection: close\r\n\r\n`;
  socket.end(`${first}${lines.join('')}${length}${body}`);
  log.info({ method: null, route: 'none', status, requestId: id }, 'answered');
}

const EARLY: ReadonlyMap<string, ProblemCode> = new Map([
  ['HPE_HEADER_OVERFLOW', 'headers-too-large'],
  ['ERR_HTTP_REQUEST_TIMEOUT', 'request-timeout'],
]);

/**
 * Whether an answer to an earlier request of this connection is under way: a refusal would be
 * taken for it. Node keeps that answer at the socket, under a name that it does not promise. Where
 * its request has not arrived whole and nothing of it is out, it is this very request that failed.
 */
function isAnswering(socket: Duplex): boolean {
  const answer: unknown = Reflect.get(socket, '_httpMessage');
  if (!(answer instanceof ServerResponse)) return false;
  const request: unknown = answer.req;
  return answer.headersSent || !(request instanceof IncomingMessage) || request.complete;
}

const EARLY_LIMITS: Readonly<Partial<Record<ProblemCode, { readonly limit: LimitName }>>> = {
  'headers-too-large': { limit: 'headerBytes' },
  'request-timeout': { limit: 'arrivalMs' },
};

interface EarlyReply {
  readonly status: number;
  readonly headers: Record<string, string>;
  readonly body: string;
}

/** Of a request that was read but goes to no route. */
function languageOf({ url = '', headers }: IncomingMessage): Language {
  const [, search = ''] = url.split('?');
  return spokenTo(langIn(search), headers['accept-language'] ?? null);
}

function earlyReply(code: ProblemCode, told: Told): EarlyReply {
  const problem = problemOf(new Refusal(code, [], EARLY_LIMITS[code]), told);
  const headers = {
    ...problemHeaders(problem, ''),
    vary: 'Accept-Language',
    'x-request-id': told.instance,
    'x-content-type-options': 'nosniff',
    'content-security-policy': "default-src 'none'",
  };
  return { status: problem.status, headers, body: JSON.stringify(problem) };
}
