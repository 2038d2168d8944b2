/** Times of one solver on the instances of a cell, and what is printed of them. */

export interface Times {
  readonly median: number;
  readonly max: number;
}

/** How long it took, in milliseconds. */
export function timed<Result>(run: () => Result): { readonly ms: number; readonly result: Result } {
  const start = performance.now();
  const result = run();
  return { ms: performance.now() - start, result };
}

/** Of several rounds on each instance the shortest counts: what is longer, something else took. */
export function timesOf(rounds: readonly (readonly number[])[]): Times {
  const each = rounds.map((own) => Math.min(...own)).sort((a, b) => a - b);
  return { median: medianOf(each), max: each.at(-1) ?? 0 };
}

/** The middle of numbers that are in order; of two in the middle the greater. */
export function medianOf(ordered: readonly number[]): number {
  return ordered[Math.floor(ordered.length / 2)] ?? 0;
}
