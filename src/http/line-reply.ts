/**
 * An answer of many lines as it goes out: in pieces, each made when the one before it has been
 * taken, packed where the client takes that.
 */

import { pipeline, Readable } from 'node:stream';
import { constants, createGzip } from 'node:zlib';
import { CSV_TYPE, type LineType, NDJSON_TYPE } from '../contract/fit-batch.js';
import type { Exchange, Headers } from './exchange.js';
import type { Service } from './service.js';

/** A piece of text for each pull. */
export type Pieces = AsyncGenerator<string, void, undefined>;

/** Which of two answers in lines it is that a client takes. */
export interface LineForm {
  readonly type: LineType;
  readonly isPacked: boolean;
}

/** Headers of the request that decide the form. */
export const LINE_VARIES = ['Accept', 'Accept-Encoding'] as const;

const CONTENT_TYPES: Readonly<Record<LineType, string>> = {
  [NDJSON_TYPE]: NDJSON_TYPE,
  [CSV_TYPE]: `${CSV_TYPE}; charset=utf-8; header=present`,
};

export function lineReply(
  exchange: Exchange,
  pieces: Pieces,
  { type, isPacked }: LineForm,
  headers: Headers,
): Response {
  return new Response(lineStream(pieces, { isPacked }), {
    status: 200,
    headers: {
      'content-type': CONTENT_TYPES[type],
      ...exchange.headers,
      ...(isPacked ? { 'content-encoding': 'gzip' } : {}),
      ...headers,
    },
  });
}

/**
 * With a word to the log when the last piece is taken, or nobody takes any more. What goes wrong in
 * between breaks the answer off: nobody else would be told.
 */
export async function* logged(
  pieces: Pieces,
  { id: requestId }: Exchange,
  { log }: Service,
  { word, counts }: { readonly word: string; readonly counts: () => object },
): Pieces {
  try {
    yield* pieces;
  } catch (err) {
    log.error({ err, requestId }, 'internal-error');
    throw err;
  } finally {
    log.info({ requestId, ...counts() }, word);
  }
}

/** A client that goes away ends the pieces, and so the work. */
function lineStream(
  pieces: Pieces,
  { isPacked }: { readonly isPacked: boolean },
): ReadableStream<Uint8Array> {
  const bytes = isPacked ? packed(pieces) : encoded(pieces);
  return new ReadableStream(
    {
      async pull(controller) {
        const { value, done } = await bytes.next();
        if (done === true) controller.close();
        else controller.enqueue(value);
      },
      async cancel() {
        await bytes.return();
      },
    },
    { highWaterMark: 0 },
  );
}

async function* encoded(pieces: Pieces): AsyncGenerator<Uint8Array, void, undefined> {
  const encoder = new TextEncoder();
  for await (const piece of pieces) yield encoder.encode(piece);
}

async function* packed(pieces: Pieces): AsyncGenerator<Uint8Array, void, undefined> {
  // Each piece leaves as it comes: who asks on by what was answered would else wait for ever.
  const gzip = createGzip({ flush: constants.Z_SYNC_FLUSH });
  // What goes wrong ends the stream that is read below, and is thrown there.
  pipeline(Readable.from(encoded(pieces), { objectMode: false }), gzip, () => undefined);
  yield* gzip as AsyncIterable<Uint8Array>;
}
