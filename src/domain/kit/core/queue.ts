/**
 * A queue that always gives the least entry first: a binary heap, where no entry is less than the
 * one above it. Equal entries must not occur; the order that is given has to be total.
 */

export class Queue<Entry> {
  readonly #heap: Entry[] = [];
  readonly #compare: (one: Entry, other: Entry) => number;

  constructor(compare: (one: Entry, other: Entry) => number) {
    this.#compare = compare;
  }

  get least(): Entry | undefined {
    return this.#heap[0];
  }

  push(entry: Entry): void {
    const heap = this.#heap;
    let place = heap.length;
    while (place > 0) {
      const above = (place - 1) >> 1;
      const parent = heap[above] as Entry;
      if (this.#compare(parent, entry) <= 0) break;
      heap[place] = parent;
      place = above;
    }
    heap[place] = entry;
  }

  pop(): Entry | undefined {
    const heap = this.#heap;
    const least = heap[0];
    const last = heap.pop();
    if (last !== undefined && heap.length > 0) this.#sink(last);
    return least;
  }

  /** Puts an entry at the top, and lets it sink to where it belongs. */
  #sink(entry: Entry): void {
    const heap = this.#heap;
    let place = 0;
    for (;;) {
      let below = 2 * place + 1;
      if (below >= heap.length) break;
      const right = below + 1;
      if (right < heap.length && this.#compare(heap[right] as Entry, heap[below] as Entry) < 0) {
        below = right;
      }
      if (this.#compare(entry, heap[below] as Entry) <= 0) break;
      heap[place] = heap[below] as Entry;
      place = below;
    }
    heap[place] = entry;
  }
}
