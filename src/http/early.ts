/**
 * What never becomes a question: no HTTP, too much of it, too late, or with a head that can be read
 * in two ways. It is refused in the same form as everything else, and in its turn: whoever asked
 * something before on the same connection has that answer first.
 */

import { randomUUID } from 'node:crypto';
import { IncomingMessage, type Server, ServerResponse, STATUS_CODES } from 'node:http';
import type { Duplex } from 'node:stream';
import { RequestError } from '@hono/node-server';
import type { Logger } from 'pino';
import { FALLBACK_LANGUAGE, type Language } from '../contract/language.js';
import type { LimitsInForce } from '../contract/limits.js';
import { problemHeaders } from './exchange.js';
import { spokenTo } from './negotiation.js';
import { problemOf, Refusal } from './problem.js';
import { langIn } from './query.js';

/** What it takes to refuse anything here. */
export interface Early {
  readonly limits: LimitsInForce;
  readonly log: Logger;
}

/** Milliseconds for the client to read why, before a connection is cut with bytes unread. */
const LINGER_MS = 1000;

/** Refuses what Node finds to be no request. */
export function refuseEarly(server: Server, early: Early): void {
  const refused = new WeakSet<Duplex>();
  server.on('clientError', (error: NodeJS.ErrnoException, socket) => {
    // Node tells of every piece that arrives after the one that it could not read.
    if (refused.has(socket)) return;
    refused.add(socket);
    if (error.code === 'ECONNRESET') socket.destroy();
    else refuseInTurn(socket, refusalFor(error), early);
  });
  // A tunnel: Node would close the connection without a word.
  server.on('connect', (_, socket) => {
    // Node has let go of it: an error of the line that nobody hears would end the service.
    socket.on('error', () => socket.destroy());
    refuseInTurn(socket, new Refusal('malformed-request'), early);
  });
  server.on('checkExpectation', (request, response) => {
    refuseRequest(request, response, new Refusal('expectation-failed'), early);
  });
}

function refusalFor({ code }: NodeJS.ErrnoException): Refusal {
  switch (code) {
    case 'HPE_HEADER_OVERFLOW':
      return new Refusal('headers-too-large', [], { limit: 'headerBytes' });
    case 'ERR_HTTP_REQUEST_TIMEOUT':
      return new Refusal('request-timeout', [], { limit: 'arrivalMs' });
    default:
      return new Refusal('malformed-request');
  }
}

/** Whether the head of the request has something wrong that Node lets pass; then it is refused. */
export function isRefused(
  request: IncomingMessage,
  response: ServerResponse,
  early: Early,
): boolean {
  const refusal = headRefusal(request, early);
  if (refusal !== null) refuseRequest(request, response, refusal, early);
  return refusal !== null;
}

function headRefusal(
  { rawHeaders, headers, httpVersion, url = '' }: IncomingMessage,
  { limits }: Early,
): Refusal | null {
  const names = rawHeaders.filter((_, index) => index % 2 === 0);
  if (names.length > limits.headerCount) {
    return new Refusal('headers-too-large', [], { limit: 'headerCount' });
  }
  const hosts = names.filter((name) => name.toLowerCase() === 'host').length;
  const isHosted = hosts === 0 ? httpVersion === '1.0' : hosts === 1 && headers.host !== '';
  // A number sign in a name that is not encoded would cut the question off, and ask another one.
  return isHosted && !url.includes('#') ? null : new Refusal('malformed-request');
}

/** What the adapter could make no request of, for its host or its URL. */
export function unreadable(error: unknown, early: Early): Response {
  const isTheirs = error instanceof RequestError;
  const refusal = new Refusal(isTheirs ? 'malformed-request' : 'internal-error');
  const { status, headers, body, id } = replyTo(refusal, FALLBACK_LANGUAGE, early);
  if (!isTheirs) early.log.error({ err: error, requestId: id }, refusal.code);
  logged(early, null, status, id);
  return new Response(body, { status, headers });
}

function refuseRequest(
  request: IncomingMessage,
  response: ServerResponse,
  refusal: Refusal,
  early: Early,
): void {
  const { status, headers, body, id } = replyTo(refusal, languageOf(request), early);
  const length = { 'content-length': Buffer.byteLength(body) };
  response.writeHead(status, { ...headers, ...length }).end(body);
  logged(early, request.method ?? null, status, id);
}

/** The language that a request asks for which goes to no route. */
function languageOf({ url = '', headers }: IncomingMessage): Language {
  const [, search = ''] = url.split('?');
  return spokenTo(langIn(search), headers['accept-language'] ?? null);
}

/** Waits for the answers under way, since a refusal would be taken for one of them. */
function refuseInTurn(socket: Duplex, refusal: Refusal, early: Early): void {
  const answer = answerUnderWay(socket);
  if (answer !== null) answer.once('close', () => refuseInTurn(socket, refusal, early));
  else if (socket.writable) refuseOn(socket, refusal, early);
  else socket.destroy();
}

/**
 * The answer to an earlier request of this connection, as far as it is not out. Node keeps it at
 * the socket, under a name that it does not promise. Where its request has not arrived whole and
 * nothing of it is out, it is this very request that failed.
 */
function answerUnderWay(socket: Duplex): ServerResponse | null {
  const answer: unknown = Reflect.get(socket, '_httpMessage');
  if (!(answer instanceof ServerResponse)) return null;
  const request: unknown = answer.req;
  const isOfAnother =
    answer.headersSent || !(request instanceof IncomingMessage) || request.complete;
  return isOfAnother ? answer : null;
}

/** Says it and ends the connection: what would come after it cannot be told from the rest. */
function refuseOn(socket: Duplex, refusal: Refusal, early: Early): void {
  const { status, headers, body, id } = replyTo(refusal, FALLBACK_LANGUAGE, early);
  const lines = Object.entries(headers).map(([name, value]) => `${name}: ${value}\r\n`);
  const first = `HTTP/1.1 ${status} ${STATUS_CODES[status] ?? ''}\r\n`;
  const length = `content-length: ${Buffer.byteLength(body)}\r\nconnection: close\r\n\r\n`;
  socket.end(`${first}${lines.join('')}${length}${body}`);
  const cut = setTimeout(() => socket.destroy(), LINGER_MS);
  socket.once('close', () => clearTimeout(cut));
  logged(early, null, status, id);
}

interface Reply {
  readonly status: number;
  readonly headers: Record<string, string>;
  readonly body: string;
  /** Of the request, as the problem and the log name it. */
  readonly id: string;
}

function replyTo(refusal: Refusal, lang: Language, { limits }: Early): Reply {
  const id = randomUUID();
  const problem = problemOf(refusal, { instance: id, lang, limits });
  const headers = {
    ...problemHeaders(problem, ''),
    vary: 'Accept-Language',
    'x-request-id': id,
    'x-content-type-options': 'nosniff',
    'content-security-policy': "default-src 'none'",
  };
  return { status: problem.status, headers, body: JSON.stringify(problem), id };
}

function logged({ log }: Early, method: string | null, status: number, requestId: string): void {
  log.info({ method, route: 'none', status, requestId }, 'answered');
}
