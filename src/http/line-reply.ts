/**
 * An answer of many lines as it goes out: in pieces, each made when the one before it has been
 * taken, packed where the client takes that.
 */

import { pipeline, Readable } from 'node:stream';
import { constants, createGzip } from 'node:zlib';

/** A client that goes away ends the pieces, and so the work. */
export function lineStream(
  pieces: AsyncGenerator<string, void, undefined>,
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

async function* encoded(
  pieces: AsyncGenerator<string, void, undefined>,
): AsyncGenerator<Uint8Array, void, undefined> {
  const encoder = new TextEncoder();
  for await (const piece of pieces) yield encoder.encode(piece);
}

async function* packed(
  pieces: AsyncGenerator<string, void, undefined>,
): AsyncGenerator<Uint8Array, void, undefined> {
  // Each piece leaves as it comes: who asks on by what was answered would else wait for ever.
  const gzip = createGzip({ flush: constants.Z_SYNC_FLUSH });
  // What goes wrong ends the stream that is read below, and is thrown there.
  pipeline(Readable.from(encoded(pieces), { objectMode: false }), gzip, () => undefined);
  yield* gzip as AsyncIterable<Uint8Array>;
}
