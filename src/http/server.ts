/**
 * Listens, and stops without cutting anybody short.
 */

import { createServer, type IncomingMessage, type Server } from 'node:http';
import { setTimeout as sleep } from 'node:timers/promises';
import { getRequestListener } from '@hono/node-server';
import type { Logger } from 'pino';
import { type LimitsInForce, limitsInForce } from '../contract/limits.js';
import { OPERATIONS } from '../contract/operations.js';
import { isRefused, refuseEarly, unreadable } from './early.js';
import type { App } from './mount.js';
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
  /** What is taken other than usual. */
  readonly limits?: Partial<Pick<LimitsInForce, 'arrivalMs' | 'stallMs'>>;
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
  const limits = limitsInForce(options.limits);
  const bindings = { lifecycle, limits };
  const early = { limits, log };
  const listener = getRequestListener((request) => app.fetch(request, bindings), {
    // What was written before HTTP/1.1 names no host, and need not.
    hostname: 'localhost',
    errorHandler: (error) => unreadable(error, early),
  });
  const settings = {
    // Of bodies that are to arrive in time, see `inTime`: a stream takes as long as it takes.
    requestTimeout: 0,
    headersTimeout: limits.arrivalMs,
    connectionsCheckingInterval: Math.min(limits.arrivalMs, LATE_MS),
    // Node refuses what is as large, and takes what is smaller.
    maxHeaderSize: limits.headerBytes + 1,
    requireHostHeader: false,
  };
  const server = createServer(settings, (incoming, outgoing) => {
    if (isRefused(incoming, outgoing, early)) return;
    if (!isStreamed(incoming)) inTime(server, incoming, limits.arrivalMs);
    void listener(incoming, outgoing);
  });
  // Who reads nothing would otherwise hold the connection, and the answer, for ever.
  server.timeout = limits.stallMs;
  // Node lets those beyond it fall without a word: one more is seen, and refused.
  server.maxHeadersCount = limits.headerCount + 1;
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

/** Paths whose questions come as long as their answers are taken: they stall, or are not late. */
const STREAMED: ReadonlySet<string> = new Set(
  OPERATIONS.filter(({ lines }) => lines !== undefined).map(({ path }) => path),
);

function isStreamed({ url = '' }: IncomingMessage): boolean {
  const [path = ''] = url.split('?');
  return STREAMED.has(path);
}

/** Tells of a body that has not arrived in time, as Node itself does of a head. */
function inTime(server: Server, incoming: IncomingMessage, ms: number): void {
  const { socket } = incoming;
  const late = setTimeout(() => {
    if (incoming.complete) return;
    const code = 'ERR_HTTP_REQUEST_TIMEOUT';
    server.emit('clientError', Object.assign(new Error('the body is late'), { code }), socket);
  }, ms);
  // A request that is answered, or gone, is no longer waited for.
  for (const event of ['end', 'close']) incoming.once(event, () => clearTimeout(late));
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
