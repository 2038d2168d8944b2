/**
 * A body of many lines: of which type it is, and its bytes as they come, unpacked where they are
 * packed. Nothing is read ahead of whoever takes the bytes but a chunk or two, and a body that
 * unpacks to more than anybody can mean is given up.
 */

import { pipeline, Readable } from 'node:stream';
import { createGunzip } from 'node:zlib';
import { LineRefused } from '../batch/line-refused.js';
import { LINE_TYPES, type LineType } from '../contract/fit-batch.js';
import { LIMITS } from '../contract/limits.js';
import type { Fault } from '../contract/problems/fault.js';
import { Refusal } from './problem.js';

export interface LineBody {
  readonly type: LineType;
  readonly chunks: AsyncIterable<Uint8Array>;
}

const CODINGS = 'gzip, identity';

/** Throws `Refusal` where the headers say that it is nothing that is read here. */
export function lineBody({ headers, body }: Request): LineBody {
  const type = lineType(headers.get('content-type') ?? '');
  if (type === null) {
    const types = LINE_TYPES.join(', ');
    throw unsupported({ code: 'body-type-not-taken', data: { types } }, { accept: types });
  }
  const coding = (headers.get('content-encoding') ?? 'identity').trim().toLowerCase();
  const chunks = bytesOf(body);
  if (coding === 'identity') return { type, chunks };
  // RFC 9110 section 8.4.1.3: the same under its older name.
  if (coding === 'gzip' || coding === 'x-gzip') return { type, chunks: unpacked(chunks) };
  const fault = { code: 'coding-not-taken', data: { codings: CODINGS } } as const;
  throw unsupported(fault, { 'accept-encoding': CODINGS });
}

/** The type, if its charset is UTF-8 or not said. */
function lineType(header: string): LineType | null {
  const [named = '', ...parameters] = header.split(';').map((one) => one.trim().toLowerCase());
  const charsets = parameters.filter((one) => one.startsWith('charset='));
  if (charsets.some((one) => !/^charset=(utf-?8|"utf-?8")$/.test(one))) return null;
  return LINE_TYPES.find((type) => type === named) ?? null;
}

function unsupported(fault: Fault, headers: Readonly<Record<string, string>>): Refusal {
  return new Refusal('unsupported-media-type', [fault], { headers });
}

async function* bytesOf(body: ReadableStream<Uint8Array> | null): AsyncGenerator<Uint8Array> {
  if (body === null) return;
  try {
    yield* body;
  } catch (error) {
    const fault = { code: 'body-ended-early', data: {} } as const;
    throw new LineRefused('malformed-request', [fault], { cause: error });
  }
}

/** Bytes that any body may unpack to, whatever its size. */
const ANY_BYTES = 1_000_000;

const MOST_TIMES = LIMITS.gzipExpansion.value;

async function* unpacked(packed: AsyncIterable<Uint8Array>): AsyncGenerator<Uint8Array> {
  let arrived = 0;
  async function* counted(): AsyncGenerator<Uint8Array> {
    for await (const chunk of packed) {
      arrived += chunk.length;
      yield chunk;
    }
  }
  const gunzip = createGunzip();
  // What goes wrong ends the stream that is read below, and is thrown there.
  pipeline(Readable.from(counted(), { objectMode: false }), gunzip, () => undefined);
  let given = 0;
  try {
    for await (const chunk of gunzip as AsyncIterable<Uint8Array>) {
      given += chunk.length;
      if (given > ANY_BYTES && given > MOST_TIMES * arrived) throw expandsTooFar();
      yield chunk;
    }
  } catch (error) {
    throw isOfGzip(error) ? notGzip(error) : error;
  } finally {
    gunzip.destroy();
  }
}

function expandsTooFar(): LineRefused {
  const data = { most: MOST_TIMES, limit: 'gzipExpansion' } as const;
  return new LineRefused('body-too-large', [{ code: 'expands-too-far', data }]);
}

/** The codes of zlib: bytes that are none of gzip's, or an end before its own. */
function isOfGzip(error: unknown): boolean {
  return (
    error instanceof Error && 'code' in error && /^Z_(DATA|BUF)_ERROR$/.test(String(error.code))
  );
}

function notGzip(error: unknown): LineRefused {
  return new LineRefused('malformed-request', [{ code: 'not-gzip', data: {} }], { cause: error });
}
