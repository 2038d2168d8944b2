/**
 * How far something long has come, on one line that is written over: only where a person reads
 * along.
 */

import type { World } from './world.js';

/** Columns of the bar itself. */
const WIDTH = 24;

/** Back to the first column, and the line wiped: ECMA-48, section 8.3.41. */
const WIPED = '\r\u001b[2K';

export interface HowFar {
  /** From 0 to 1; null where nobody knows how much there is. */
  readonly share: number | null;
  readonly text: string;
}

export class Progress {
  readonly #err: World['err'];
  readonly #howFar: () => HowFar;
  #shown = '';

  constructor({ err }: Pick<World, 'err'>, howFar: () => HowFar) {
    this.#err = err;
    this.#howFar = howFar;
  }

  show(): void {
    if (!this.#err.isTerminal) return;
    const { share, text: said } = this.#howFar();
    const text = `${share === null ? '' : barOf(share)}${said}`;
    if (text !== this.#shown) this.#err.write(WIPED + text);
    this.#shown = text;
  }

  clear(): void {
    if (this.#shown !== '') this.#err.write(WIPED);
    this.#shown = '';
  }
}

function barOf(share: number): string {
  const known = Math.min(1, share);
  const done = '#'.repeat(Math.floor(known * WIDTH)).padEnd(WIDTH, '.');
  return `[${done}] ${Math.floor(known * 100)} %, `;
}
