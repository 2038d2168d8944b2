/**
 * How far a batch has come, on one line that is written over: only where a person reads along.
 */

import type { FitLines } from '../batch/fit-lines.js';
import type { Input, World } from './world.js';

/** Columns of the bar itself. */
const WIDTH = 24;

/** Back to the first column, and the line wiped: ECMA-48, section 8.3.41. */
const WIPED = '\r\u001b[2K';

export class Progress {
  readonly #input: Input;
  readonly #lines: FitLines;
  readonly #err: World['err'];
  #read = 0;
  #shown = '';

  constructor(input: Input, lines: FitLines, { err }: World) {
    this.#input = input;
    this.#lines = lines;
    this.#err = err;
  }

  /** The chunks of the input, counted as they are read. */
  async *counted(): AsyncGenerator<Uint8Array> {
    for await (const chunk of this.#input.chunks) {
      this.#read += chunk.length;
      yield chunk;
    }
  }

  show(): void {
    if (!this.#err.isTerminal) return;
    const { errors } = this.#lines.counts;
    const faulty = errors === 0 ? '' : `, ${errors} with faults`;
    const text = `${this.#bar()}${this.#lines.next - 1} lines${faulty}`;
    if (text !== this.#shown) this.#err.write(WIPED + text);
    this.#shown = text;
  }

  clear(): void {
    if (this.#shown !== '') this.#err.write(WIPED);
    this.#shown = '';
  }

  /** Nothing where nobody knows how much there is. */
  #bar(): string {
    const { bytes } = this.#input;
    if (bytes === null) return '';
    const share = Math.min(1, this.#read / bytes);
    const done = '#'.repeat(Math.floor(share * WIDTH)).padEnd(WIDTH, '.');
    return `[${done}] ${Math.floor(share * 100)} %, `;
  }
}
