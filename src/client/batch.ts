/**
 * A batch of fit questions: NDJSON that streams out and in, a question a line and an answer a
 * line, in their order.
 *
 * An array of questions goes out in one piece, and may be sent again where the service is busy.
 * Anything else that can be iterated goes out while answers come in, a question whenever the
 * connection takes one: that needs a platform whose `fetch` can send a stream, such as Node.
 */

import type { FitBatchAnswer, FitBatchEnd, FitBatchStart, FitLine, Schemas } from './contract.js';

export type FitLines = Iterable<FitLine> | AsyncIterable<FitLine>;

/** Sends the body, and gives the stream of the answer; rejects where there is none. */
export type SendBatch = (
  body: BatchBody,
  signal: AbortSignal,
) => Promise<ReadableStream<Uint8Array>>;

/** A text, or a stream of bytes. */
export type BatchBody = string | ReadableStream<Uint8Array>;

/** The stream ended without saying so: the answers so far are right, others are missing. */
export class BatchBrokenOff extends Error {
  override readonly name = 'BatchBrokenOff';
  /** The line of the last question that was answered, from 1; 0 where none was. */
  readonly lastLine: number;

  constructor(lastLine: number, options: ErrorOptions = {}) {
    super(`The batch was broken off behind the answer to line ${lastLine}`, options);
    this.lastLine = lastLine;
  }
}

/**
 * The answers, to be iterated once. It is asked when iterating begins, and iterating ends without
 * an error only where the service has said that this was all.
 */
export class FitBatch implements AsyncIterable<FitBatchAnswer> {
  /** What is settled for all lines; null until the first answer. */
  start: FitBatchStart | null = null;
  /** How many there were of what; null until all answers have been taken. */
  end: FitBatchEnd | null = null;
  readonly #questions: FitLines;
  readonly #send: SendBatch;
  readonly #signal: AbortSignal | null;
  #lastLine = 0;

  constructor(questions: FitLines, send: SendBatch, signal: AbortSignal | null) {
    this.#questions = questions;
    this.#send = send;
    this.#signal = signal;
  }

  /**
   * @throws FayingProblem where the whole batch is refused, `BatchBrokenOff` where the connection
   *   ends too soon, the reason of the signal where it is aborted, and what the questions throw.
   */
  async *[Symbol.asyncIterator](): AsyncGenerator<FitBatchAnswer, void, undefined> {
    const ending = new AbortController();
    const signals = this.#signal === null ? [] : [this.#signal];
    const source = new Questions(this.#questions);
    try {
      const signal = AbortSignal.any([ending.signal, ...signals]);
      const stream = await this.#send(source.body(), signal);
      yield* this.#answers(stream);
      if (this.end === null) throw new BatchBrokenOff(this.#lastLine);
    } catch (error) {
      if (source.failure !== null) throw source.failure.error;
      this.#signal?.throwIfAborted();
      throw error;
    } finally {
      // Whoever stops early neither asks nor is answered any more.
      ending.abort();
      source.end();
    }
  }

  async *#answers(
    stream: ReadableStream<Uint8Array>,
  ): AsyncGenerator<FitBatchAnswer, void, undefined> {
    for await (const text of this.#lines(stream)) {
      const line = JSON.parse(text) as Schemas['FitBatchLine'];
      if ('start' in line) this.start = line.start;
      else if ('end' in line) this.end = line.end;
      else {
        this.#lastLine = line.line;
        yield line;
      }
    }
  }

  /** Whole lines only: a piece of one at the end is no line. */
  async *#lines(stream: ReadableStream<Uint8Array>): AsyncGenerator<string, void, undefined> {
    const reader = stream.getReader();
    const decoder = new TextDecoder();
    let rest = '';
    for (;;) {
      const { done, value } = await reader.read().catch((error: unknown) => {
        throw new BatchBrokenOff(this.#lastLine, { cause: error });
      });
      if (done) return;
      const lines = `${rest}${decoder.decode(value, { stream: true })}`.split('\n');
      rest = lines.pop() ?? '';
      yield* lines;
    }
  }
}

/** The questions as a body, and what went wrong where they come from. */
class Questions {
  /** What the questions threw; null where they did not. */
  failure: { readonly error: unknown } | null = null;
  readonly #questions: FitLines;
  readonly #each: AsyncGenerator<FitLine, void, undefined>;

  constructor(questions: FitLines) {
    this.#questions = questions;
    this.#each = each(questions);
  }

  body(): BatchBody {
    return Array.isArray(this.#questions) ? this.#questions.map(lineOf).join('') : this.#stream();
  }

  /** Not every platform tells a stream that nobody reads it any more. */
  end(): void {
    void this.#each.return();
  }

  #stream(): ReadableStream<Uint8Array> {
    const pieces = piecesOf(this.#each);
    const encoder = new TextEncoder();
    return new ReadableStream({
      pull: async (controller) => {
        try {
          const { done, value } = await pieces.next();
          if (done === true) controller.close();
          else controller.enqueue(encoder.encode(value));
        } catch (error) {
          this.failure = { error };
          controller.error(error);
        }
      },
    });
  }
}

/** Characters of lines that are sent together where they come quickly. */
const PIECE_CHARACTERS = 16_384;

/** Lines together as far as they come without waiting: none is held back for the next one. */
async function* piecesOf(
  questions: AsyncGenerator<FitLine, void, undefined>,
): AsyncGenerator<string, void, undefined> {
  let coming: Promise<IteratorResult<FitLine, void>> | null = null;
  for (;;) {
    let piece = '';
    let soon: Promise<null> | null = null;
    while (piece.length < PIECE_CHARACTERS) {
      coming ??= questions.next();
      const come: IteratorResult<FitLine, void> | null = await (soon === null
        ? coming
        : Promise.race([coming, soon]));
      if (come === null) break;
      coming = null;
      if (come.done === true) {
        if (piece !== '') yield piece;
        return;
      }
      piece += lineOf(come.value);
      soon ??= new Promise((resolve) => setTimeout(resolve, 0, null));
    }
    yield piece;
  }
}

async function* each(questions: FitLines): AsyncGenerator<FitLine, void, undefined> {
  yield* questions;
}

function lineOf(question: FitLine): string {
  return `${JSON.stringify(question)}\n`;
}
