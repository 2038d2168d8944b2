/**
 * Sends a request over a socket byte by byte, broken off or silent where it is to be so, and takes
 * the answer apart.
 */

import { connect } from 'node:net';
import type { SentRequest } from '../../src/contract/sent-request.js';

export interface Answered {
  readonly status: string;
  /** By name in small letters. */
  readonly headers: ReadonlyMap<string, string>;
  readonly body: string;
}

/** Speaks to the service at `url`, in a connection of its own. */
export async function send(url: string, request: SentRequest): Promise<Answered> {
  return answeredIn(await exchanged(new URL(url), request));
}

function exchanged({ hostname, port, host }: URL, request: SentRequest): Promise<string> {
  const { stops } = request;
  return new Promise((resolve, reject) => {
    const socket = connect(Number(port), hostname, () => {
      socket.write(bytesOf(request, host));
      if (stops?.by === 'breaking-off') socket.end();
    });
    let text = '';
    socket.setEncoding('utf8').on('data', (chunk: string) => {
      text += chunk;
    });
    socket.on('end', () => resolve(text));
    // Whoever refuses a request before all of it has come may cut it off, having said so.
    socket.on('error', (error) => (text === '' ? reject(error) : resolve(text)));
  });
}

/** The headers that a client sends by itself, and as much of the body as is to arrive. */
function bytesOf({ method, target, headers, body, stops }: SentRequest, host: string): string {
  const length = body === null ? [] : [`content-length: ${Buffer.byteLength(body)}`];
  const lines = [
    `${method} ${target} HTTP/1.1`,
    `host: ${host}`,
    'connection: close',
    ...length,
    ...Object.entries(headers).map(([name, value]) => `${name}: ${value}`),
  ];
  return `${lines.join('\r\n')}\r\n\r\n${(body ?? '').slice(0, stops?.after)}`;
}

export function answeredIn(text: string): Answered {
  const split = text.indexOf('\r\n\r\n');
  if (split === -1) throw new Error(`no HTTP came back: ${text.slice(0, 100)}`);
  const [first = '', ...lines] = text.slice(0, split).split('\r\n');
  const headers = new Map(
    lines.map((line) => {
      const colon = line.indexOf(':');
      return [line.slice(0, colon).toLowerCase(), line.slice(colon + 1).trim()] as const;
    }),
  );
  const sent = text.slice(split + 4);
  const isChunked = headers.get('transfer-encoding') === 'chunked';
  const [, status = ''] = first.split(' ');
  return { status, headers, body: isChunked ? dechunked(sent) : sent };
}

/** RFC 9112 section 7.1: pieces, each with its number of bytes before it. */
function dechunked(text: string): string {
  const bytes = Buffer.from(text, 'utf8');
  const chunks: Buffer[] = [];
  for (let at = 0; ; ) {
    const line = bytes.indexOf('\r\n', at);
    const size = Number.parseInt(bytes.toString('latin1', at, line), 16);
    if (!(size > 0)) return Buffer.concat(chunks).toString('utf8');
    chunks.push(bytes.subarray(line + 2, line + 2 + size));
    at = line + 2 + size + 2;
  }
}
