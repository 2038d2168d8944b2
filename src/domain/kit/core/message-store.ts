/**
 * Messages of the bound that have been computed, by way and by what is decided beyond it. Most of
 * a node is as it was in another one, and only what is new has to be computed.
 */

/** A message that has not been computed. */
export const unknown = -1;
/** The number of what is known where nothing beyond a way is decided. */
export const nothingDecided = 0;

/** So many are kept for each way at the most; then all are forgotten. */
const mostKept = 256;

export interface Known {
  /** Another for everything else that may be decided. */
  readonly number: number;
  /** By value of the variable that the way leads to. */
  readonly messages: Float64Array;
}

export class MessageStore {
  readonly #sizes: readonly number[];
  readonly #clear: readonly Known[];
  readonly #known: readonly Map<string, Known>[];
  #count = nothingDecided;

  /** By way: how many values the variable has that it leads to. */
  constructor(sizes: readonly number[]) {
    this.#sizes = sizes;
    this.#clear = sizes.map((size) => ({
      number: nothingDecided,
      messages: new Float64Array(size).fill(unknown),
    }));
    this.#known = sizes.map(() => new Map());
  }

  /** What is known of a way; `decided` tells all that is decided beyond it. */
  of(way: number, decided: string): Known {
    if (decided === '') return this.#clear[way] as Known;
    const known = this.#known[way] as Map<string, Known>;
    const found = known.get(decided);
    if (found !== undefined) return found;
    if (known.size >= mostKept) known.clear();
    this.#count += 1;
    const messages = new Float64Array(this.#sizes[way] ?? 0).fill(unknown);
    const made = { number: this.#count, messages };
    known.set(decided, made);
    return made;
  }
}
