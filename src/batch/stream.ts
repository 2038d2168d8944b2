/**
 * Drives a batch over a stream: a chunk is read when the pieces of the last one have been taken, so
 * that whoever writes is held up by whoever does not read. Between pieces others have their turn.
 */

import { setImmediate } from 'node:timers/promises';
import type { FitLines } from './fit-lines.js';
import { LineRefused } from './line-refused.js';

/** Between two pieces others have their turn; an empty one is nothing else. */
export async function* inTurns(pieces: Iterable<string>): AsyncGenerator<string, void, undefined> {
  for (const piece of pieces) {
    if (piece !== '') yield piece;
    await setImmediate();
  }
}

/**
 * The text of the answers, in pieces.
 *
 * @throws LineRefused where the batch is refused before anything was said of it; what breaks it off
 * later is its last line.
 */
export async function* answersTo(
  chunks: AsyncIterable<Uint8Array>,
  lines: FitLines,
): AsyncGenerator<string, void, undefined> {
  let hasBegun = false;
  try {
    for await (const chunk of chunks) {
      for await (const piece of inTurns(lines.push(chunk))) {
        hasBegun = true;
        yield piece;
      }
    }
  } catch (error) {
    if (!hasBegun || !(error instanceof LineRefused)) throw error;
    yield lines.brokenOff(error);
    return;
  }
  yield* lines.end();
}
