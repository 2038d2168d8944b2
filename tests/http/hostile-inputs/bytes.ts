/**
 * Requests as the bytes that go over the wire, so that no client tidies them on the way.
 */

import { Buffer } from 'node:buffer';

/** Each character is one byte, as far as there are bytes for it. */
export function bytes(text: string): Buffer {
  return Buffer.from(text, 'latin1');
}

/** A head and a body. The connection ends behind it, so that the answer has an end. */
function request(first: string, headers: readonly string[], body: string | Buffer): Buffer {
  const lines = [first, 'Host: x', 'Connection: close', ...headers];
  return Buffer.concat([bytes(`${lines.join('\r\n')}\r\n\r\n`), Buffer.from(body)]);
}

/** A request without a body, by GET where `method` is left out. */
export function get(target: string, headers: readonly string[] = [], method = 'GET'): Buffer {
  return request(`${method} ${target} HTTP/1.1`, headers, '');
}

const JSON_BODY = ['Content-Type: application/json'];

export interface Posting {
  readonly to?: string;
  readonly method?: string;
  /** Instead of the one that says that the body is JSON. */
  readonly headers?: readonly string[];
}

/** A question in a body, to `/v1/inspect` where it is left out. */
export function post(body: string | Buffer, posting: Posting = {}): Buffer {
  const { to = '/v1/inspect', method = 'POST', headers = JSON_BODY } = posting;
  const length = `Content-Length: ${Buffer.byteLength(body)}`;
  return request(`${method} ${to} HTTP/1.1`, [...headers, length], body);
}

/** A body that comes in pieces, which are written as they are given. */
export function chunked(pieces: string, headers: readonly string[] = JSON_BODY): Buffer {
  const coding = 'Transfer-Encoding: chunked';
  return request('POST /v1/inspect HTTP/1.1', [...headers, coding], pieces);
}

/** A question that has an answer, in a URL and in a body. */
export const FIT = '/v1/fit?vehicle=cart-1&part=box-c';
export const CART = '{"vehicle":"cart-1"}';

export type Inputs = Readonly<Record<string, Buffer>>;
