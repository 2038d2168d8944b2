/**
 * Answers that were given lately, as the texts that went out, so that a question which many ask is
 * judged once. The key holds everything that decides the text (`question-key.ts`), so nothing here
 * grows stale: a new edition or program asks under other keys, and what is asked no more goes.
 *
 * Left out: problems. They cost little, and would let a stranger push the answers out.
 */

import { LRUCache } from 'lru-cache';

/** Bytes of a character: V8 keeps a text with any beyond Latin-1, such as a quotation mark, so. */
const CHARACTER_BYTES = 2;

/** About what a key and its place in the list take, in bytes. */
const ENTRY_BYTES = 500;

export class AnswerCache {
  readonly #kept: LRUCache<string, string> | null;

  /** Keeps no more than so many bytes; nothing where it is 0. */
  constructor(bytes: number) {
    const sizeCalculation = (text: string) => ENTRY_BYTES + text.length * CHARACTER_BYTES;
    this.#kept = bytes === 0 ? null : new LRUCache({ maxSize: bytes, sizeCalculation });
  }

  /** The text that is kept, else what `write` writes, which is then kept. */
  text(key: string, write: () => string): string {
    const known = this.find(key);
    if (known !== undefined) return known;
    const text = write();
    this.keep(key, text);
    return text;
  }

  find(key: string): string | undefined {
    return this.#kept?.get(key);
  }

  keep(key: string, text: string): void {
    this.#kept?.set(key, text);
  }
}
